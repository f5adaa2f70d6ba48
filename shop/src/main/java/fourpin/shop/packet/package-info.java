/** The packet on disk: its files, and how they are put there all or not at all. */
@NullMarked
package fourpin.shop.packet;

import org.jspecify.annotations.NullMarked;
