/** Small parts that several views are put together from. */
@NullMarked
package setwright.window.view.part;

import org.jspecify.annotations.NullMarked;
