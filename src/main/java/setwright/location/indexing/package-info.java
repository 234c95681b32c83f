/** Dividing a turn: crank and plate, change gears, rotary tables, all in exact fractions. */
@NullMarked
package setwright.location.indexing;

import org.jspecify.annotations.NullMarked;
