/**
 * The job: what people decided (ink) and recorded; every change as {@code Job -> Job}. Numbers stay as typed; the
 * part frame is x length, y depth, z height of the blank as drawn, origin at its left-front-bottom corner.
 */
@NullMarked
package setwright.job;

import org.jspecify.annotations.NullMarked;
