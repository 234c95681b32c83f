/**
 * When a cut rings: the first mode of a tool on its springs, the zero-order border of stability with its lobes, and the
 * delayed map of one tooth period where that border is not to be trusted. Kernels take and give millimetres, newtons,
 * N/mm, N/mm², seconds and radians; the angles are those of {@link setwright.cutting.Engagement}, x runs along the feed.
 */
@NullMarked
package setwright.rigidity.stability;

import org.jspecify.annotations.NullMarked;
