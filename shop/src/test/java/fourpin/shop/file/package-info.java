@NullMarked
package fourpin.shop.file;

import org.jspecify.annotations.NullMarked;
