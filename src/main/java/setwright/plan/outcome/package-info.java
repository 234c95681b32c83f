/** What comes out otherwise than drawn: left standing, cut too much, pieces that come loose, kerfs that close. */
@NullMarked
package setwright.plan.outcome;

import org.jspecify.annotations.NullMarked;
