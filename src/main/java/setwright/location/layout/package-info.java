/** Finding edges, centres, circles and triangles; millimetres and radians. */
@NullMarked
package setwright.location.layout;

import org.jspecify.annotations.NullMarked;
