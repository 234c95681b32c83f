/** What has to be read before it goes on. */
@NullMarked
package setwright.window.view.notice;

import org.jspecify.annotations.NullMarked;
