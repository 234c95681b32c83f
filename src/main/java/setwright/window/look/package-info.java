/** Paper, ink and pencil: colours, type and the marks of the drawing office. */
@NullMarked
package setwright.window.look;

import org.jspecify.annotations.NullMarked;
