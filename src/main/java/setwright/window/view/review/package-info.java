/** Review: what to look at before a name is put under it. */
@NullMarked
package setwright.window.view.review;

import org.jspecify.annotations.NullMarked;
