@NullMarked
package fourpin.shop;

import org.jspecify.annotations.NullMarked;
