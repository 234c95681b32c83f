/** The quick check: one page, nine fields, answers as they are typed. */
@NullMarked
package setwright.window.view.quick;

import org.jspecify.annotations.NullMarked;
