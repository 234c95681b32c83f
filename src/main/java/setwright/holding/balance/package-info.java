/**
 * The friction balance: contacts, loads, and the certified programme that finds how many times a load they bear.
 * Millimetres, newtons, newton millimetres; x right, y away, z up.
 */
@NullMarked
package setwright.holding.balance;

import org.jspecify.annotations.NullMarked;
