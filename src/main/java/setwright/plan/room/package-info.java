/** Heights, knee and quill, tool changing, and what comes how near to what. */
@NullMarked
package setwright.plan.room;

import org.jspecify.annotations.NullMarked;
