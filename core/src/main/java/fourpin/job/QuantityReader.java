package fourpin.job;

import fourpin.measure.Gravity;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Reading;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a number with a unit that is never left out, as makers write one: {@code 25 lb/ft}, {@code
 * 40 lb/sq ft}, {@code 12.3 GPa}. Independent of locale.
 *
 * @param what it is: "a load"
 * @param names of the units, as a maker is told them
 * @param units in small letters, with the quantity that one of each makes
 */
public record QuantityReader(String what, String names, Map<String, Quantity> units) {

  private static final double KG_PER_LB = 0.45359237;
  private static final double M_PER_FOOT = 0.3048;
  private static final double SQUARE_M_PER_SQUARE_FOOT = M_PER_FOOT * M_PER_FOOT;
  private static final double CUBIC_M_PER_CUBIC_FOOT = SQUARE_M_PER_SQUARE_FOOT * M_PER_FOOT;
  private static final double MPA_PER_PSI = KG_PER_LB * Gravity.STANDARD / 645.16;
  private static final double PER_THOUSAND = 1e-3;

  /** A line load (1 N/m is 0.001 N/mm) or an area load (1 N/m² is 0.001 kPa). */
  public static final QuantityReader LOAD =
      new QuantityReader(
          "a load",
          "lb/ft, lb/sq ft, psf, kg/m, kg/m2, N/m, N/m2, kN/m2 or kPa",
          units(
              one(
                  QuantityUnit.LINE_LOAD,
                  KG_PER_LB * Gravity.STANDARD / M_PER_FOOT * PER_THOUSAND,
                  "lb/ft",
                  "lb/foot"),
              one(QuantityUnit.LINE_LOAD, Gravity.STANDARD * PER_THOUSAND, "kg/m"),
              one(QuantityUnit.LINE_LOAD, PER_THOUSAND, "n/m"),
              one(
                  QuantityUnit.AREA_LOAD,
                  KG_PER_LB * Gravity.STANDARD / SQUARE_M_PER_SQUARE_FOOT * PER_THOUSAND,
                  "lb/sq ft",
                  "lb/ft2",
                  "lbf/sq ft",
                  "psf"),
              one(QuantityUnit.AREA_LOAD, Gravity.STANDARD * PER_THOUSAND, "kg/m2"),
              one(QuantityUnit.AREA_LOAD, PER_THOUSAND, "n/m2"),
              one(QuantityUnit.AREA_LOAD, 1, "kn/m2", "kpa")));

  /** A modulus of elasticity. */
  public static final QuantityReader STIFFNESS =
      new QuantityReader(
          "a modulus of elasticity",
          "GPa, MPa, N/mm2 or psi",
          units(
              one(QuantityUnit.STRESS, 1 / PER_THOUSAND, "gpa"),
              one(QuantityUnit.STRESS, 1, "mpa", "n/mm2"),
              one(QuantityUnit.STRESS, MPA_PER_PSI, "psi")));

  /** A stress at which something breaks. */
  public static final QuantityReader STRENGTH =
      new QuantityReader("a strength", STIFFNESS.names(), STIFFNESS.units());

  public static final QuantityReader DENSITY =
      new QuantityReader(
          "a density",
          "kg/m3 or lb/cu ft",
          units(
              one(QuantityUnit.DENSITY, 1, "kg/m3"),
              one(QuantityUnit.DENSITY, KG_PER_LB / CUBIC_M_PER_CUBIC_FOOT, "lb/cu ft", "lb/ft3")));

  public static final QuantityReader MASS =
      new QuantityReader(
          "a weight",
          "kg or lb",
          units(one(QuantityUnit.MASS, 1, "kg"), one(QuantityUnit.MASS, KG_PER_LB, "lb", "lbs")));

  private static final Pattern FORM =
      Pattern.compile("(\\d{1,9}(?:\\.\\d{1,6})?)\\s*([a-z][a-z0-9/ ]*)");

  private record One(Quantity quantity, List<String> symbols) {}

  private static One one(QuantityUnit unit, double value, String... symbols) {
    return new One(Quantity.of(value, unit), List.of(symbols));
  }

  private static Map<String, Quantity> units(One... all) {
    Map<String, Quantity> units = new LinkedHashMap<>();
    for (One one : all) {
      one.symbols().forEach(symbol -> units.put(symbol, one.quantity()));
    }
    return units;
  }

  public QuantityReader {
    units = Map.copyOf(units);
  }

  /** Reads a number of zero or more with its unit. */
  public Reading<Quantity> read(String text) {
    String plain = text.strip().toLowerCase(Locale.ROOT).replace("²", "2").replace("³", "3");
    Matcher m = FORM.matcher(plain);
    if (!m.matches()) {
      return Reading.bad("this is not " + what, "write a number and one of " + names);
    }
    String symbol = m.group(2).strip();
    double number = Double.parseDouble(m.group(1));
    return Optional.ofNullable(units.get(symbol))
        .map(one -> Reading.good(Quantity.of(number * one.value(), one.unit())))
        .orElseGet(
            () ->
                Reading.bad(
                    "'" + symbol + "' is not a unit of " + what.substring(2), "use " + names));
  }
}
