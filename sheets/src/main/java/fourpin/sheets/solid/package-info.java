/** Cases as bodies with surfaces, for pictures in three dimensions. */
@NullMarked
package fourpin.sheets.solid;

import org.jspecify.annotations.NullMarked;
