/**
 * The part in each set-up: where it sits, its stock before and after every operation, paths and tool stacks.
 *
 * <p>What an operation takes from the stock is exact for faces, steps, slots of every kind, pockets, outlines, keyseats,
 * kerfs and Woodruff seats (what the cutter really sweeps, with its own radius where a corner is sharper and its own width
 * where it is wider than the slot), holes with the point of their drill, spots, counterbores, countersinks, wedges and
 * mouths that are chamfered, dovetails, flats up to four round a lying axis and any number round a standing one. On the
 * side of caution nothing counts as gone of rounded corners, teeth, splines, lines scribed, and chamfers along pockets
 * and profiles: the stock is then shown larger than it is, never smaller. A tilted part counts as the box around it.
 */
@NullMarked
package setwright.plan.part;

import org.jspecify.annotations.NullMarked;
