/** The part in each set-up: where it sits, its stock before and after every operation, paths and tool stacks. */
@NullMarked
package setwright.plan.part;

import org.jspecify.annotations.NullMarked;
