@NullMarked
package fourpin.shop.line;

import org.jspecify.annotations.NullMarked;
