/**
 * How far tools and their mounting give and what they bear: beams on springs, stress, buckling. Kernels take and give
 * millimetres, newtons, N/mm, N/mm² and radians.
 */
@NullMarked
package setwright.rigidity;

import org.jspecify.annotations.NullMarked;
