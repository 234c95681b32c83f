/** Speeds, feeds, loads, spring and limits of every operation. */
@NullMarked
package setwright.plan.cut;

import org.jspecify.annotations.NullMarked;
