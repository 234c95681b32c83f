/** Ranks what the shop owns for a place in the plan, kept or dropped with the reason. */
@NullMarked
package setwright.plan.choose;

import org.jspecify.annotations.NullMarked;
