@NullMarked
package fourpin.shop.yaml;

import org.jspecify.annotations.NullMarked;
