/**
 * Grip: what holds a part as contacts, vise, straps and screws in closed form, and what a hold factor means. Millimetres,
 * newtons, newton millimetres; x right, y away, z up.
 */
@NullMarked
package setwright.holding;

import org.jspecify.annotations.NullMarked;
