/** The bench: the drawing of the set-up, and what is done on it. */
@NullMarked
package setwright.window.view.bench;

import org.jspecify.annotations.NullMarked;
