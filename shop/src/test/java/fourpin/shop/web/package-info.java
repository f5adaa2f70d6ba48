@NullMarked
package fourpin.shop.web;

import org.jspecify.annotations.NullMarked;
