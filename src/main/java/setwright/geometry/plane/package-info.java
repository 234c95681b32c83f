/** The plane in millimetres: edges straight and round, outlines, regions, their distances, areas and booleans. */
@NullMarked
package setwright.geometry.plane;

import org.jspecify.annotations.NullMarked;
