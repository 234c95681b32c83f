/** JSON as a tree that remembers where every value stood, read under limits and written the same way every time. */
@NullMarked
package setwright.file.json;

import org.jspecify.annotations.NullMarked;
