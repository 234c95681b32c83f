/** Limits of size: tolerance grades and tolerance classes of ISO 286 for a nominal size. */
@NullMarked
package setwright.quantity.fit;

import org.jspecify.annotations.NullMarked;
