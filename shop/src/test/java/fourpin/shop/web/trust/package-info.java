/** Tests of the certificates of the shop's own. */
@NullMarked
package fourpin.shop.web.trust;

import org.jspecify.annotations.NullMarked;
