/** The head: how the plan stands, and the ways of working. */
@NullMarked
package setwright.window.view.head;

import org.jspecify.annotations.NullMarked;
