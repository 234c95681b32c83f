/** Compares plans, finds the thinnest margins, and keeps what was signed to what was seen. */
@NullMarked
package setwright.review;

import org.jspecify.annotations.NullMarked;
