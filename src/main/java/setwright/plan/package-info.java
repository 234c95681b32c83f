/** Draws a job up and works it out into one immutable plan. Sub-rooms do one thing each; {@link setwright.plan.Plan} gathers. */
@NullMarked
package setwright.plan;

import org.jspecify.annotations.NullMarked;
