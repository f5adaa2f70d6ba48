/** The faces that makers meet: job files, command line, store. */
@NullMarked
package fourpin.shop;

import org.jspecify.annotations.NullMarked;
