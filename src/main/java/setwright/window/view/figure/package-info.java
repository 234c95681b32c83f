/** The page of bench figures. */
@NullMarked
package setwright.window.view.figure;

import org.jspecify.annotations.NullMarked;
