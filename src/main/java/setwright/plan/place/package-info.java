/** The error budget of every located feature. */
@NullMarked
package setwright.plan.place;

import org.jspecify.annotations.NullMarked;
