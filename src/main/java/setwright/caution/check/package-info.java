/** The checks, each looking for one way in which a set-up goes wrong. */
@NullMarked
package setwright.caution.check;

import org.jspecify.annotations.NullMarked;
