/** Seats of keys, each standard with its own datum of depth. */
@NullMarked
package setwright.location.key;

import org.jspecify.annotations.NullMarked;
