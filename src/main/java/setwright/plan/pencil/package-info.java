/** Fills in pencil what nobody inked, in one fixed pass; each step sees only earlier ones, ties go by row id. */
@NullMarked
package setwright.plan.pencil;

import org.jspecify.annotations.NullMarked;
