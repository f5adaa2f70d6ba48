@NullMarked
package fourpin.measure;

import org.jspecify.annotations.NullMarked;
