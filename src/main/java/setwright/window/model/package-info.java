/** What stands on the screen, as text and standing, worked out from job, plan and settings without any Swing. */
@NullMarked
package setwright.window.model;

import org.jspecify.annotations.NullMarked;
