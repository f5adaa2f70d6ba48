/** Text into a tree with the place of every key and value; refuses what no job file needs. */
@NullMarked
package fourpin.shop.yaml;

import org.jspecify.annotations.NullMarked;
