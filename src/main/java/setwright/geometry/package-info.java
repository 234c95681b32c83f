/** Outlines, solids, shadows, paths and clearances in millimetres; the only room that knows JTS. */
@NullMarked
package setwright.geometry;

import org.jspecify.annotations.NullMarked;
