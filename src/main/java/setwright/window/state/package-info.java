/** What the workbench knows: the history of the job, what is chosen, how it is shown, and what was worked out last. */
@NullMarked
package setwright.window.state;

import org.jspecify.annotations.NullMarked;
