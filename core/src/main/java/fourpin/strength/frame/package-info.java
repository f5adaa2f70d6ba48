/** Frames of panels that are pushed out of square; knows no furniture. */
@NullMarked
package fourpin.strength.frame;

import org.jspecify.annotations.NullMarked;
