@NullMarked
package fourpin.shop.packet;

import org.jspecify.annotations.NullMarked;
