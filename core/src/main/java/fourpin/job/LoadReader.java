package fourpin.job;

import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Reading;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a load as makers write one: {@code 25 lb/ft}, {@code 40 lb/sq ft}, {@code 37 kg/m}, {@code
 * 50 kg/m2}. The unit is never left out.
 */
public final class LoadReader {

  private static final double GRAVITY = 9.80665;
  private static final double KG_PER_LB = 0.45359237;
  private static final double MM_PER_FOOT = 304.8;
  private static final double MM_PER_M = 1000;

  private static final Pattern FORM =
      Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*([a-z][a-z0-9/² ]*)");
  private static final String UNITS = "lb/ft, lb/sq ft, kg/m, kg/m2, N/m or N/m2";

  private static final Map<String, Quantity> ONE =
      Map.of(
          "lb/ft", line(KG_PER_LB * GRAVITY / MM_PER_FOOT),
          "lb/foot", line(KG_PER_LB * GRAVITY / MM_PER_FOOT),
          "kg/m", line(GRAVITY / MM_PER_M),
          "n/m", line(1 / MM_PER_M),
          "lb/sq ft", area(KG_PER_LB * GRAVITY / (MM_PER_FOOT * MM_PER_FOOT)),
          "lb/ft2", area(KG_PER_LB * GRAVITY / (MM_PER_FOOT * MM_PER_FOOT)),
          "kg/m2", area(GRAVITY / (MM_PER_M * MM_PER_M)),
          "n/m2", area(1 / (MM_PER_M * MM_PER_M)));

  private LoadReader() {}

  /** Reads a line load (N/mm) or an area load (kPa). */
  public static Reading<Quantity> read(String text) {
    Matcher m = FORM.matcher(text.strip().toLowerCase(java.util.Locale.ROOT).replace("²", "2"));
    if (!m.matches()) {
      return Reading.bad("this is not a load", "write a number and one of " + UNITS);
    }
    Quantity one = ONE.get(m.group(2).strip());
    if (one == null) {
      return Reading.bad("'" + m.group(2).strip() + "' is not a unit of load", "use " + UNITS);
    }
    return Reading.good(Quantity.of(Double.parseDouble(m.group(1)) * one.value(), one.unit()));
  }

  private static Quantity line(double newtonPerMm) {
    return Quantity.of(newtonPerMm, QuantityUnit.LINE_LOAD);
  }

  /** Area loads are kept in kPa: 1 N/mm² is 1000 kPa. */
  private static Quantity area(double newtonPerSquareMm) {
    return Quantity.of(newtonPerSquareMm * 1000, QuantityUnit.AREA_LOAD);
  }
}
