/** The Swing workbench: one state, presentation models, views. */
@NullMarked
package setwright.window;

import org.jspecify.annotations.NullMarked;
