/**
 * Reads drawing notes, one a line, as they stand on a drawing ({@code 4x M6 thru}), into features of the job; the grammar is
 * our own, its words are common practice on drawings.
 */
@NullMarked
package setwright.job.note;

import org.jspecify.annotations.NullMarked;
