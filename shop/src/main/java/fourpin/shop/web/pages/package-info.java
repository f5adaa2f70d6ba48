/** The templates of {@code src/main/jte}, as classes; written by the build. */
@NullMarked
package fourpin.shop.web.pages;

import org.jspecify.annotations.NullMarked;
