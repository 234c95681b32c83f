/** Angles set with blocks, bars, tilted heads and tables; radians and millimetres. */
@NullMarked
package setwright.location.angle;

import org.jspecify.annotations.NullMarked;
