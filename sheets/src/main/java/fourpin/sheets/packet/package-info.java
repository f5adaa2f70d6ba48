/** The packet for the bench, composed from the plan alone. */
@NullMarked
package fourpin.sheets.packet;

import org.jspecify.annotations.NullMarked;
