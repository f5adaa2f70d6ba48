/** Tests of who may ask what. */
@NullMarked
package fourpin.shop.web.guard;

import org.jspecify.annotations.NullMarked;
