/** Walk through: one step a page. */
@NullMarked
package setwright.window.view.walk;

import org.jspecify.annotations.NullMarked;
