/**
 * Wood about fasteners and in moist air, by published formulas; knows no furniture. N, mm, MPa, °C,
 * per cent.
 */
@NullMarked
package fourpin.strength.wood;

import org.jspecify.annotations.NullMarked;
