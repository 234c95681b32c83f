/** A new job as it stands on the drawing: title block, then notes, one a line, beside the plan that they make. */
@NullMarked
package setwright.window.view.entry;

import org.jspecify.annotations.NullMarked;
