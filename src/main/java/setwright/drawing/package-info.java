/** Drawings of a plan: marks in millimetres, each with the role it has on a drawing-office sheet; nothing is painted here. */
@NullMarked
package setwright.drawing;

import org.jspecify.annotations.NullMarked;
