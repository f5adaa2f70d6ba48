package fourpin.plan;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.cutting.Part;
import fourpin.cutting.Unplaced;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** A part that no stock of its material gives, with its size, the largest stock, and the cures. */
record NotLaidOut(Wanted wanted, LengthStyle style, Unplaced unplaced) {

  static final String KIND = "not-laid-out";

  Finding finding() {
    Optional<Sizes> sizes = sizes();
    return new Finding(
        Severity.ERROR,
        KIND,
        unplaced.count()
            + " of line "
            + unplaced.mark()
            + " can't be cut from "
            + wanted.material()
            + ": "
            + why()
            + sizes.map(s -> " (" + words(s) + ")").orElse(""),
        sizes.map(this::figure).stream().toList(),
        Place.JOB,
        remedies());
  }

  private String why() {
    return switch (unplaced.reason()) {
      case TOO_LONG -> "it is longer than any of the stock, trimmed";
      case TOO_WIDE -> "it is wider than any of the stock, trimmed";
      case NO_SHEET_BOTH_WAYS -> "no piece of stock is both long and wide enough";
      case SAW_LIMITS -> "no cuts within the limits of the saw get it out of the stock";
      case GRAIN_FORBIDS_TURNING -> "it would fit only across the grain";
      case NOT_ON_ONE_SHEET ->
          "the parts that must share a sheet find no room on any one that is left";
      case NO_SHEETS_LEFT -> "the stock is used up";
    };
  }

  /** Of a part that is too large for the stock. */
  private record Sizes(Part part, Stock stock) {}

  private Optional<Sizes> sizes() {
    return switch (unplaced.reason()) {
      case TOO_LONG, TOO_WIDE, NO_SHEET_BOTH_WAYS, SAW_LIMITS, GRAIN_FORBIDS_TURNING ->
          wanted.parts().stream()
              .filter(p -> p.mark().equals(unplaced.mark()))
              .findFirst()
              .flatMap(p -> largest().map(stock -> new Sizes(p, stock)));
      case NOT_ON_ONE_SHEET, NO_SHEETS_LEFT -> Optional.empty();
    };
  }

  private Optional<Stock> largest() {
    return wanted.stock().stream()
        .max(Comparator.comparingDouble(s -> s.length().mm() * s.width().mm()));
  }

  private String words(Sizes sizes) {
    return "it is "
        + size(sizes.part().length(), sizes.part().width())
        + ", the largest of the stock "
        + size(sizes.stock().length(), sizes.stock().width());
  }

  private String size(Length length, Length width) {
    return style.number(length) + " x " + style.text(width);
  }

  private Figure figure(Sizes sizes) {
    Part part = sizes.part();
    return new Figure(
        Figure.id("job", KIND, unplaced.mark()),
        "length of " + unplaced.mark() + ", as it is cut",
        Quantity.of(part.length()),
        "l and w, held against L and W",
        List.of(
            input("l", "length of the part", part.length(), Source.GEOMETRY),
            input("w", "width of the part", part.width(), Source.GEOMETRY),
            input("L", "length of the largest stock", sizes.stock().length(), Source.STATED),
            input("W", "width of the largest stock", sizes.stock().width(), Source.STATED)),
        Source.GEOMETRY);
  }

  private static Input input(String symbol, String meaning, Length length, Source source) {
    return new Input(symbol, meaning, Quantity.of(length), source);
  }

  private List<Remedy> remedies() {
    Remedy smaller = new Remedy("make the case smaller, or divide the part", "looks");
    Remedy first =
        unplaced.reason() == Unplaced.Reason.SAW_LIMITS
            ? new Remedy(
                "cut it by other means, and set longest-rip, widest-crosscut, first-cut or"
                    + " cut-stages to what these can do",
                "time")
            : new Remedy("state more or larger stock of " + wanted.material(), "its price");
    return List.of(first, smaller);
  }
}
