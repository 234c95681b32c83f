/**
 * Jobs and the shop from and to JSON: every problem with its place, older versions, safe writing; with its sub-rooms the
 * only room that knows Jackson.
 */
@NullMarked
package setwright.file;

import org.jspecify.annotations.NullMarked;
