/** Sizes of gear teeth by their module. */
@NullMarked
package setwright.quantity.gear;

import org.jspecify.annotations.NullMarked;
