package fourpin.boring;

import fourpin.casework.Box;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Words findings about one case in the units of its job. */
record Reporter(String caseName, LengthStyle style, Trials trials) {

  String text(Length length) {
    return style.text(length);
  }

  /** A diameter as it stands on the bit. */
  String across(Length diameter) {
    return style.diameter(diameter);
  }

  /** Rounded up as far as the style prints, for what must not be less. */
  String atLeast(Length length) {
    return text(roundedUp(length));
  }

  Length roundedUp(Length length) {
    Length shown = style.rounded(length);
    return shown.isLessThan(length) ? shown.plus(finest()) : shown;
  }

  /** Rounded down as far as the style prints, for what must not be more. */
  String atMost(Length length) {
    return text(roundedDown(length));
  }

  Length roundedDown(Length length) {
    Length shown = style.rounded(length);
    return shown.isMoreThan(length) ? shown.minus(finest()) : shown;
  }

  private Length finest() {
    return Length.of(1, style.unit()).over(style.parts());
  }

  static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }

  Finding caseFinding(Severity severity, String kind, String what, List<Remedy> remedies) {
    return new Finding(severity, kind, what, List.of(), Place.of(caseName), remedies);
  }

  Finding finding(
      Severity severity,
      String kind,
      String what,
      List<Figure> figures,
      Optional<String> part,
      Box spot,
      List<Remedy> remedies) {
    Place place = new Place(caseName, part, Optional.of(spot));
    return new Finding(severity, kind, what, figures, place, remedies);
  }

  /** A length with its working. @param name tells it from the others of the case */
  Figure figure(
      String name, String title, Length value, String formula, List<Figure.Input> inputs) {
    return new Figure(
        Figure.id(caseName, "boring", name),
        title,
        Quantity.of(value),
        formula,
        inputs,
        Source.GEOMETRY);
  }

  static Figure.Input input(String symbol, String meaning, Length value, Source source) {
    return new Figure.Input(symbol, meaning, Quantity.of(value), source);
  }

  static Remedy remedy(String what, String cost) {
    return new Remedy(what, cost);
  }
}
