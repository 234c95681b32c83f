/** The next line at the foot, and the caution that it opens. */
@NullMarked
package setwright.window.view.next;

import org.jspecify.annotations.NullMarked;
