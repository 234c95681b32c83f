/** Pages as data: set-up sheet, kit, steps at the machine; and the sheet as plain text. */
@NullMarked
package setwright.sheet;

import org.jspecify.annotations.NullMarked;
