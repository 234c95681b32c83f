/** Divided features: where crank or handle stands at every division, and what to measure. */
@NullMarked
package setwright.plan.index;

import org.jspecify.annotations.NullMarked;
