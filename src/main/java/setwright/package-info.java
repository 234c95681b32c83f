/** The door of the program: a window without arguments, else a command. */
@NullMarked
package setwright;

import org.jspecify.annotations.NullMarked;
