@NullMarked
package fourpin.plan;

import org.jspecify.annotations.NullMarked;
