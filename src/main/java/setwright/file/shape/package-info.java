/**
 * How records look in a file: one shape for each kind of component, which checks a tree, makes the value of it, writes
 * the value back, and says what it accepts as a schema.
 */
@NullMarked
package setwright.file.shape;

import org.jspecify.annotations.NullMarked;
