/** Gears cut with form cutters: which cutter, how deep, and what to measure. */
@NullMarked
package setwright.location.gear;

import org.jspecify.annotations.NullMarked;
