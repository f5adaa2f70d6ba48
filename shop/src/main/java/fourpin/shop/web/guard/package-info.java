/** Who may ask what of the server: plain rules on what a request says of itself, and pairing. */
@NullMarked
package fourpin.shop.web.guard;

import org.jspecify.annotations.NullMarked;
