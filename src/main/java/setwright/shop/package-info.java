/** What the shop owns: plain rows, each with its source and where it is kept. Rows hold what was typed. */
@NullMarked
package setwright.shop;

import org.jspecify.annotations.NullMarked;
