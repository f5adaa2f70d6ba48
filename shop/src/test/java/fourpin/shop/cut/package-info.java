@NullMarked
package fourpin.shop.cut;

import org.jspecify.annotations.NullMarked;
