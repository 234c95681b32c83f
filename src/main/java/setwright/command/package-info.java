/** The command line: runs without a display, for scripts, for checks over a folder of jobs, for printing from a terminal. */
@NullMarked
package setwright.command;

import org.jspecify.annotations.NullMarked;
