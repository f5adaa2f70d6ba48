package fourpin.plan;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.casework.Place;
import fourpin.cutting.Fit;
import fourpin.cutting.Layout;
import fourpin.cutting.Matched;
import fourpin.cutting.SawLimits;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StockSheet;
import fourpin.cutting.Together;
import fourpin.cutting.Trim;
import fourpin.cutting.Unplaced;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A part that no stock of its material gives, with the true reason in figures, and the cures.
 *
 * @param problem as it was laid out
 * @param layout that leaves the part out
 * @param bars of the problem
 */
record NotLaidOut(
    Wanted wanted,
    LengthStyle style,
    SheetProblem problem,
    Layout layout,
    GroupBars bars,
    Unplaced unplaced) {

  static final String KIND = "not-laid-out";

  private static final double PER_CENT = 100;

  private static final Remedy GLUED =
      new Remedy(
          "glue it up from strips, edge to edge: write their least and greatest width under glue-up"
              + " in the table of parts, as in 2 in..4 1/2 in",
          "time");

  Finding finding() {
    return new Finding(
        Severity.ERROR,
        KIND,
        unplaced.count()
            + " of line "
            + unplaced.mark()
            + " can't be cut from "
            + wanted.material()
            + ": "
            + why(),
        isBySize() ? List.of(figure()) : List.of(),
        Place.JOB,
        remedies());
  }

  private boolean isBySize() {
    return switch (unplaced.reason()) {
      case TOO_LONG, TOO_WIDE, NO_SHEET_BOTH_WAYS, SAW_LIMITS, GRAIN_FORBIDS_TURNING, DEFECTS ->
          true;
      case TOO_MUCH_FOR_ONE_SHEET, NOT_ON_ONE_SHEET, NO_SHEETS_LEFT -> false;
    };
  }

  private String why() {
    return switch (unplaced.reason()) {
      case TOO_LONG -> it() + " is longer than any of the stock, trimmed" + sizes();
      case TOO_WIDE -> it() + " is wider than any of the stock, trimmed" + sizes();
      case NO_SHEET_BOTH_WAYS -> "no piece of stock is both long and wide enough" + sizes();
      case SAW_LIMITS ->
          "no cuts within the limits of the saw ("
              + limits()
              + ") get it out of the stock"
              + sizes();
      case GRAIN_FORBIDS_TURNING -> it() + " would fit only across the grain" + sizes();
      case DEFECTS -> String.join("; ", barred());
      case TOO_MUCH_FOR_ONE_SHEET ->
          hindering()
              .map(other -> "it has to share a sheet with line " + other.told())
              .or(this::lack)
              .or(() -> bar().map(this::barredAsGroup))
              .orElseGet(
                  () ->
                      "no one sheet was found to hold "
                          + group()
                          + ", not even a whole one"
                          + share()
                          + howFar());
      case NOT_ON_ONE_SHEET ->
          "no layout was found that has room on one sheet for all of " + group();
      case NO_SHEETS_LEFT -> usedUp();
    };
  }

  private Optional<String> lack() {
    return problem
        .ties()
        .together(unplaced.mark())
        .flatMap(new GroupLacks(problem, style)::of)
        .map(told -> "no one sheet can hold " + group() + ": " + told);
  }

  /** Only a search says so, which can't try all ways to cut defects out. */
  private String howFar() {
    return problem.stock().stream().anyMatch(sheet -> !sheet.defects().isEmpty())
        ? "; each board was tried by itself, with its defects cut out in some of all ways"
        : "";
  }

  private String barredAsGroup(GroupBars.Bar bar) {
    String lifted =
        switch (bar.alone()) {
          case ANY -> bar.limits().size() == 1 ? "without that limit" : "without any one of these";
          case ALL -> bar.limits().size() == 1 ? "without that limit" : "without all of these";
        };
    return "no one sheet was found to hold "
        + group()
        + " within the limits of the saw ("
        + SawLimit.told(bar.limits())
        + "), not even a whole one; "
        + lifted
        + " they fit on one "
        + bar.sheet();
  }

  private Optional<GroupBars.Bar> bar() {
    return problem.ties().together(unplaced.mark()).flatMap(bars::of);
  }

  private String told() {
    return unplaced.mark() + ", which can't be cut: " + why();
  }

  /** A part that is to share its sheet and fits on none, so that none was looked for. */
  private Optional<NotLaidOut> hindering() {
    List<String> marks =
        problem.ties().together(unplaced.mark()).map(Together::marks).orElse(List.of());
    return layout.unplaced().stream()
        .filter(other -> marks.contains(other.mark()))
        .map(other -> new NotLaidOut(wanted, style, problem, layout, bars, other))
        .filter(NotLaidOut::isBySize)
        .findFirst();
  }

  /** A matched strip is cut as one part is. */
  private String it() {
    return set().map(set -> "its " + set.name()).orElse("it");
  }

  private Optional<Matched> set() {
    return problem.ties().matched(unplaced.mark());
  }

  private Fit.Size size() {
    return Fit.size(problem, unplaced.mark());
  }

  private StockSheet largest() {
    return problem.stock().stream()
        .max(Comparator.comparingDouble(s -> s.length().mm() * s.width().mm()))
        .orElseThrow();
  }

  private String sizes() {
    StockSheet sheet = largest();
    return " ("
        + (set().isPresent() ? "with the kerfs between its parts it is " : "it is ")
        + size(size().length(), size().width())
        + ", the largest of the stock "
        + size(sheet.length(), sheet.width())
        + ", trimmed "
        + size(trimmedLength(sheet), trimmedWidth(sheet).plus(sheet.roughEdge()))
        + ripped(sheet)
        + ")";
  }

  private String ripped(StockSheet sheet) {
    return sheet.roughEdge().isZero()
        ? ""
        : ", and " + style.text(trimmedWidth(sheet)) + " wide where it is ripped";
  }

  private Length trimmedLength(StockSheet sheet) {
    Trim trim = problem.saw().trim();
    return sheet.length().minus(trim.nearEnd()).minus(trim.farEnd());
  }

  /** As wide as it can be ripped. */
  private Length trimmedWidth(StockSheet sheet) {
    Trim trim = problem.saw().trim();
    return sheet.width().minus(trim.nearEdge()).minus(trim.farEdge()).minus(sheet.roughEdge());
  }

  private String size(Length length, Length width) {
    return style.number(length) + " x " + style.text(width);
  }

  /** Those any one of which bars it; where only several together do, all. */
  private String limits() {
    List<SawLimit> stated = SawLimit.stated(problem.saw().limits(), wanted.kind(), style);
    List<SawLimit> barring = stated.stream().filter(limit -> fitting(limit.others()) > 0).toList();
    return SawLimit.told(barring.isEmpty() ? stated : barring);
  }

  /** How many more stocks a saw with other limits cuts it from. */
  private long fitting(SawLimits others) {
    return cutFrom(problem.with(others)) - cutFrom(problem);
  }

  private long cutFrom(SheetProblem some) {
    return Fit.of(some, unplaced.mark()).stream()
        .filter(fit -> fit.verdict() == Fit.Verdict.CAN_BE_CUT)
        .count();
  }

  private String group() {
    return problem
        .ties()
        .together(unplaced.mark())
        .map(g -> "lines " + String.join(", ", g.marks()) + " (" + g.name() + ")")
        .orElse("all that share it");
  }

  /** Of the largest sheet, by area. */
  private String share() {
    List<String> marks =
        problem.ties().together(unplaced.mark()).map(Together::marks).orElse(List.of());
    double wood =
        problem.parts().stream()
            .filter(part -> marks.contains(part.mark()))
            .mapToDouble(part -> part.count() * part.length().mm() * part.width().mm())
            .sum();
    double sheet = trimmedLength(largest()).mm() * trimmedWidth(largest()).mm();
    return ": its parts are "
        + Math.round(PER_CENT * wood / sheet)
        + " % of the largest, "
        + size(largest().length(), largest().width())
        + ", trimmed";
  }

  private String usedUp() {
    List<String> told = new ArrayList<>();
    List<Fit> fits = Fit.of(problem, unplaced.mark());
    String all = words(fits, Fit.Verdict.CAN_BE_CUT);
    told.add(
        all.isEmpty()
            ? "nothing of the stock gives it"
            : "the stock for it is used up (" + all + ")");
    told.addAll(barred());
    return String.join("; ", told);
  }

  /** What each of the stock that does not give it has against it. */
  private List<String> barred() {
    List<String> told = new ArrayList<>();
    List<Fit> fits = Fit.of(problem, unplaced.mark());
    String knotty = words(fits, Fit.Verdict.DEFECTS_IN_THE_WAY);
    if (!knotty.isEmpty()) {
      told.add(
          "between the defects of "
              + knotty
              + " no place is clear for "
              + it()
              + ", "
              + size(size().length(), size().width()));
    }
    String beyond = words(fits, Fit.Verdict.BEYOND_THE_SAW);
    if (!beyond.isEmpty()) {
      told.add("the limits of the saw (" + limits() + ") bar it from " + beyond);
    }
    String small = words(fits, Fit.Verdict.TOO_SMALL);
    if (!small.isEmpty()) {
      told.add(size(size().length(), size().width()) + " does not fit " + small);
    }
    return told;
  }

  private String words(List<Fit> fits, Fit.Verdict verdict) {
    return fits.stream()
        .filter(fit -> fit.verdict() == verdict)
        .map(Fit::sheet)
        .map(sheet -> verdict == Fit.Verdict.CAN_BE_CUT ? used(sheet) : sheet.name())
        .collect(Collectors.joining("; "));
  }

  private String used(StockSheet sheet) {
    long used =
        layout.patterns().stream()
            .filter(p -> p.sheet().name().equals(sheet.name()))
            .mapToLong(SheetPattern::quantity)
            .sum();
    return sheet.name() + ": " + used + " of " + sheet.supply().most() + " used";
  }

  private Figure figure() {
    return new Figure(
        Figure.id("job", KIND, unplaced.mark()),
        "length of " + unplaced.mark() + ", as it is cut",
        Quantity.of(size().length()),
        "l and w, held against L and W",
        List.of(
            input("l", "length, of a matched strip all of it", size().length(), Source.GEOMETRY),
            input("w", "width", size().width(), Source.GEOMETRY),
            input("L", "length of the largest stock", largest().length(), Source.STATED),
            input("W", "width of the largest stock", largest().width(), Source.STATED)),
        Source.GEOMETRY);
  }

  private static Input input(String symbol, String meaning, Length length, Source source) {
    return new Input(symbol, meaning, Quantity.of(length), source);
  }

  private List<Remedy> remedies() {
    Remedy smaller = new Remedy("make it smaller, or divide it", "looks");
    Remedy stock = new Remedy("state more or larger stock of " + wanted.material(), "its price");
    Remedy saw =
        new Remedy(
            "cut it by other means, and set longest-rip, widest-crosscut, "
                + SawLimit.firstCut(wanted.kind())
                + " or cut-stages to what these can do",
            "time");
    Remedy fewer = new Remedy("ask fewer parts to come from one sheet", "colour or thickness");
    return switch (unplaced.reason()) {
      case SAW_LIMITS -> List.of(saw, smaller);
      case TOO_MUCH_FOR_ONE_SHEET ->
          hindering()
              .map(NotLaidOut::remedies)
              .orElseGet(
                  () ->
                      lack().isEmpty() && bar().isPresent()
                          ? List.of(saw, fewer, stock)
                          : List.of(fewer, stock));
      case NOT_ON_ONE_SHEET -> List.of(stock, fewer);
      case NO_SHEETS_LEFT -> isBarred() ? List.of(stock, saw) : List.of(stock, smaller);
      case TOO_WIDE, NO_SHEET_BOTH_WAYS, GRAIN_FORBIDS_TURNING ->
          canBeGlued() ? List.of(GLUED, stock, smaller) : List.of(stock, smaller);
      case TOO_LONG, DEFECTS -> List.of(stock, smaller);
    };
  }

  /** A board is long enough for its strips; those of a matched strip are never glued. */
  private boolean canBeGlued() {
    return wanted.kind() == Wanted.Kind.BOARDS
        && set().isEmpty()
        && problem.stock().stream().anyMatch(s -> trimmedLength(s).isAtLeast(size().length()));
  }

  private boolean isBarred() {
    return Fit.of(problem, unplaced.mark()).stream()
        .anyMatch(fit -> fit.verdict() == Fit.Verdict.BEYOND_THE_SAW);
  }
}
