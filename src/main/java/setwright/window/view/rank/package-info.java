/** The ranking of the chosen line. */
@NullMarked
package setwright.window.view.rank;

import org.jspecify.annotations.NullMarked;
