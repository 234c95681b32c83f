/** The Swing views: each shows what a presentation model says and hands back what a person does. */
@NullMarked
package setwright.window.view;

import org.jspecify.annotations.NullMarked;
