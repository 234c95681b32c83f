/** What can be done at the workbench, without any Swing: every action takes the one state to the next. */
@NullMarked
package setwright.window.desk;

import org.jspecify.annotations.NullMarked;
