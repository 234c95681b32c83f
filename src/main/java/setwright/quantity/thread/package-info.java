/** Screw threads as named sizes: reading their designations, their basic dimensions, and the drills that go before a tap. */
@NullMarked
package setwright.quantity.thread;

import org.jspecify.annotations.NullMarked;
