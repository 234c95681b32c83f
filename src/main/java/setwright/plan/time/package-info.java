/** The time of every operation, set-up and the batch. */
@NullMarked
package setwright.plan.time;

import org.jspecify.annotations.NullMarked;
