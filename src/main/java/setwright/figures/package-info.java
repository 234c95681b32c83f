/** Bench figures: a registry of single questions over the rules that the plan uses. */
@NullMarked
package setwright.figures;

import org.jspecify.annotations.NullMarked;
