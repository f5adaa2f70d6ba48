/** Certificates of the shop's own, so that devices of its network reach it encrypted. */
@NullMarked
package fourpin.shop.web.trust;

import org.jspecify.annotations.NullMarked;
