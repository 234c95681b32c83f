/** What a job takes in time: operations, hand work, orders of passes through the batch, and the break-even quantity. */
@NullMarked
package setwright.batch;

import org.jspecify.annotations.NullMarked;
