@NullMarked
package fourpin.shop.edit;

import org.jspecify.annotations.NullMarked;
