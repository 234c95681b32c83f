/** What goes into an error budget: how a datum is found, a part seated, a size got; what a process usually reaches. */
@NullMarked
package setwright.location.budget;

import org.jspecify.annotations.NullMarked;
