/** Ranks what the shop owns for a place in the plan: each is tried on a copy of the job, judged, and kept or dropped with reasons. */
@NullMarked
package setwright.caution.choice;

import org.jspecify.annotations.NullMarked;
