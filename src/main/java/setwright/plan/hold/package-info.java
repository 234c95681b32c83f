/** Whether each operation's load is held. */
@NullMarked
package setwright.plan.hold;

import org.jspecify.annotations.NullMarked;
