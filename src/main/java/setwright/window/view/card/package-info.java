/** The card: a set-up's operations as lines, the chosen one unfolded into fields and figures. */
@NullMarked
package setwright.window.view.card;

import org.jspecify.annotations.NullMarked;
