/** Where things are and how surely: hole patterns, dials, thermal growth, and the budget of errors against a tolerance. */
@NullMarked
package setwright.location;

import org.jspecify.annotations.NullMarked;
