/**
 * Numbers with units: small records, reading and printing them as people write them, and worked values that carry
 * their rule, inputs and source. Inside every record: millimetres, newtons, seconds, radians, watts, kilograms.
 */
@NullMarked
package setwright.quantity;

import org.jspecify.annotations.NullMarked;
