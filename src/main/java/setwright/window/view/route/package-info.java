/** The route: the set-ups as cards in working order. */
@NullMarked
package setwright.window.view.route;

import org.jspecify.annotations.NullMarked;
