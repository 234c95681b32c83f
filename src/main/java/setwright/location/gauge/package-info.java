/** Gauge blocks and what they stack up to. */
@NullMarked
package setwright.location.gauge;

import org.jspecify.annotations.NullMarked;
