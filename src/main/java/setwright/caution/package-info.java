/** Judges a plan: one class per check, an explanation page each, and remedies that are tried before they are offered. */
@NullMarked
package setwright.caution;

import org.jspecify.annotations.NullMarked;
