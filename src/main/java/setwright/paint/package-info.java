/** Puts drawings on Graphics2D, on paper, at night or as they print. */
@NullMarked
package setwright.paint;

import org.jspecify.annotations.NullMarked;
