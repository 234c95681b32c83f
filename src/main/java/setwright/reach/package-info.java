/** Heights from the table to the nose: stack-up, knee and quill, room to change a tool, depths with point and over-run, travels. */
@NullMarked
package setwright.reach;

import org.jspecify.annotations.NullMarked;
