package fourpin.shop.cut;

import fourpin.cutting.Grain;
import fourpin.cutting.Part;
import fourpin.cutting.SoFar;
import fourpin.measure.Length;
import fourpin.plan.Stock;
import fourpin.plan.Wanted;
import fourpin.shop.yaml.Place;
import fourpin.shop.yaml.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Reads what has become of an earlier cutting: its layouts, and the maker's notes on each sheet.
 */
public final class SoFarReader {

  /** Bytes that either file may have. */
  public static final int MOST_BYTES = CsvTable.Size.WRITTEN.bytes();

  private static final List<Column> LAYOUTS =
      List.of(
          Column.required("material"),
          Column.required("cut from"),
          Column.required("layout"),
          Column.required("alike"),
          Column.optional("stock"),
          Column.required("what"),
          Column.required("part"),
          Column.optional("length"),
          Column.optional("width"),
          Column.optional("x mm"),
          Column.optional("y mm"),
          Column.required("length mm"),
          Column.required("width mm"));
  private static final List<Column> PROGRESS =
      List.of(
          Column.optional("cutting"),
          Column.required("material"),
          Column.required("cut from"),
          Column.required("layout"),
          Column.required("sheet"),
          Column.required("stock"),
          Column.required("state"),
          Column.required("except"));

  /** What a sheet may be; nothing written means that it is whole, be it bought or not. */
  private enum State {
    WHOLE,
    BOUGHT,
    CUT,
    SPOILT
  }

  private static final Map<String, State> STATES =
      new TreeMap<>(Map.of("bought", State.BOUGHT, "cut", State.CUT, "spoilt", State.SPOILT));

  private static final String LEAVE = "leave all cells of a line before state as they were";

  /** The name of a layout; of other names no number is known. */
  private static final Pattern SHEET = Pattern.compile("S(\\d{1,6})");

  /** Sizes are printed in so many millimetres. */
  private static final double SAME = 0.01;

  private final Map<String, Part> parts;
  private final Map<String, List<String>> stock;
  private final List<Problem> ofLayouts = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();
  private final Cells cells = new Cells(Optional.empty(), problems);
  private final List<String> changed = new ArrayList<>();

  /** A part as it lies on a layout. */
  private record Laid(String mark, double length, double width) {}

  /** A layout, and how many sheets of which stock are cut by it. */
  private record LaidOut(int alike, String stock, List<Laid> parts) {}

  /** What came of it. */
  public sealed interface Outcome {

    /**
     * @param byMaterial what is cut and used of each material; where some of its sheets are, the
     *     others are taken to be bought, and whole; else those that are noted so
     * @param bare sheets of each material of which none has a note
     * @param last number of a sheet of each material
     * @param changed in words: parts that were cut in a size that is no longer asked for, and
     *     sheets of stock that is no longer there
     */
    record Good(
        Map<String, SoFar> byMaterial,
        Map<String, SoFar> bare,
        Map<String, Integer> last,
        List<String> changed)
        implements Outcome {}

    /** All that is wrong in either file. */
    record Refused(List<Problem> ofLayouts, List<Problem> ofProgress) implements Outcome {}
  }

  private SoFarReader(List<Wanted> wanted) {
    this.parts =
        wanted.stream()
            .flatMap(each -> each.parts().stream())
            .collect(Collectors.toMap(Part::mark, Function.identity()));
    this.stock =
        wanted.stream()
            .collect(
                Collectors.toMap(
                    Wanted::material, each -> each.stock().stream().map(Stock::name).toList()));
  }

  /**
   * Reads one earlier cutting.
   *
   * @param wanted what the tables ask for now
   * @param place its place among the earlier ones, from 1
   * @param layouts its layouts.csv
   * @param progress its progress.csv, with the maker's notes
   */
  public static Outcome read(List<Wanted> wanted, int place, byte[] layouts, byte[] progress) {
    return new SoFarReader(wanted).read(place, layouts, progress);
  }

  private Outcome read(int place, byte[] layouts, byte[] progress) {
    Map<List<String>, LaidOut> laid = new LinkedHashMap<>();
    for (CsvTable.Row row :
        CsvTable.read(layouts, LAYOUTS, CsvTable.Size.WRITTEN, ofLayouts).rows()) {
      LaidOut its =
          laid.computeIfAbsent(
              layout(row),
              _ ->
                  new LaidOut(
                      (int) number(row.cell("alike")),
                      row.cell("stock").text(),
                      new ArrayList<>()));
      if (row.cell("what").text().equals("part")) {
        its.parts.add(laid(row));
      }
    }
    Map<String, SoFar> soFar = new LinkedHashMap<>();
    Map<String, SoFar> bought = new LinkedHashMap<>();
    Map<String, SoFar> whole = new LinkedHashMap<>();
    Set<List<String>> sheets = new LinkedHashSet<>();
    CsvTable.Read table = CsvTable.read(progress, PROGRESS, CsvTable.Size.WRITTEN, problems);
    List<CsvTable.Row> rows = table.rows();
    inPlace(rows, place);
    for (CsvTable.Row row : rows) {
      State state = cells.word("state", row.cell("state"), State.WHOLE, STATES).orElse(State.WHOLE);
      onceEach(row, sheets);
      String material = row.cell("material").text();
      Optional<LaidOut> its = of(row, laid);
      switch (state) {
        case WHOLE -> whole.merge(material, whole(row), SoFar::and);
        case BOUGHT -> bought.merge(material, whole(row), SoFar::and);
        case CUT, SPOILT ->
            its.ifPresent(by -> soFar.merge(material, sheet(row, state, by.parts), SoFar::and));
      }
    }
    if (!rows.isEmpty() && table.extent() == CsvTable.Extent.WHOLE) {
      laid.forEach((layout, its) -> allThere(layout, its.alike, sheets));
    }
    soFar.replaceAll((material, its) -> its.and(whole.getOrDefault(material, SoFar.NOTHING)));
    bought.forEach((material, its) -> soFar.merge(material, its, SoFar::and));
    whole.keySet().removeAll(soFar.keySet());
    return problems.isEmpty() && ofLayouts.isEmpty()
        ? new Outcome.Good(soFar, whole, last(laid.keySet()), changed)
        : new Outcome.Refused(List.copyOf(ofLayouts), List.copyOf(problems));
  }

  /** Cuttings build on each other, so that none may be left out, or stand before another. */
  private void inPlace(List<CsvTable.Row> rows, int place) {
    List<Cell> stated =
        rows.stream().map(row -> row.cell("cutting")).filter(cell -> !cell.isEmpty()).toList();
    stated.stream()
        .filter(cell -> !cell.text().equals(Integer.toString(place)))
        .findFirst()
        .ifPresent(
            cell ->
                cells.wrong(
                    "cutting",
                    cell,
                    "it is named in place " + place + " of the earlier cuttings",
                    "name all earlier cuttings, each behind an --after, the first one first"));
    if (stated.isEmpty() && !rows.isEmpty()) {
      changed("Nothing says which cutting the earlier one in place " + place + " is.");
    }
  }

  /** A sheet without a line would neither be cut nor bought. */
  private void allThere(List<String> layout, int alike, Set<List<String>> sheets) {
    List<String> gone =
        numbers(alike).stream()
            .filter(
                number ->
                    !sheets.contains(Stream.concat(layout.stream(), Stream.of(number)).toList()))
            .toList();
    if (!gone.isEmpty()) {
      problems.add(
          new Problem(
              Place.START,
              "layout " + layout.getLast() + " of " + layout.getFirst(),
              gone.size()
                  + " of its "
                  + alike
                  + " sheets have no line here, the first is sheet "
                  + gone.getFirst(),
              "put the lines back, with nothing under state where a sheet is whole"));
    }
  }

  private static Map<String, Integer> last(Set<List<String>> layouts) {
    Map<String, Integer> last = new LinkedHashMap<>();
    for (List<String> layout : layouts) {
      Matcher number = SHEET.matcher(layout.getLast());
      if (number.matches()) {
        last.merge(layout.getFirst(), Integer.parseInt(number.group(1)), Math::max);
      }
    }
    return last;
  }

  private void onceEach(CsvTable.Row row, Set<List<String>> sheets) {
    List<String> sheet = new ArrayList<>(layout(row));
    sheet.add(row.cell("sheet").text());
    if (!sheets.add(sheet)) {
      cells.wrong("sheet", row.cell("sheet"), "that sheet has a line already", "leave it one line");
    }
  }

  private SoFar whole(CsvTable.Row row) {
    if (!row.cell("except").isEmpty()) {
      boolean bought = !row.cell("state").isEmpty();
      cells.wrong(
          "except",
          row.cell("except"),
          bought
              ? "a sheet that is only bought is whole, with no part cut"
              : "nothing is said of that sheet under state",
          "write cut or spoilt there, or nothing here");
    }
    return SoFar.whole(from(row));
  }

  /** The layout by which a sheet was cut. */
  private Optional<LaidOut> of(CsvTable.Row row, Map<List<String>, LaidOut> laid) {
    Optional<LaidOut> its = Optional.ofNullable(laid.get(layout(row)));
    Cell sheet = row.cell("sheet");
    if (its.isEmpty()) {
      cells.wrong("layout", row.cell("layout"), "layouts.csv beside it has no such layout", LEAVE);
    } else if (!numbers(its.get().alike).contains(sheet.text())) {
      cells.wrong("sheet", sheet, "by that layout " + its.get().alike + " are cut", LEAVE);
    } else if (!its.get().stock.isEmpty() && !its.get().stock.equals(row.cell("stock").text())) {
      cells.wrong(
          "stock", row.cell("stock"), "that layout is cut from '" + its.get().stock + "'", LEAVE);
    }
    return its;
  }

  private static List<String> numbers(int most) {
    return IntStream.rangeClosed(1, most).mapToObj(Integer::toString).toList();
  }

  private static List<String> layout(CsvTable.Row row) {
    return List.of(
        row.cell("material").text(), row.cell("cut from").text(), row.cell("layout").text());
  }

  private Laid laid(CsvTable.Row row) {
    return new Laid(
        row.cell("part").text(), number(row.cell("length mm")), number(row.cell("width mm")));
  }

  private double number(Cell cell) {
    try {
      return Double.parseDouble(cell.number());
    } catch (NumberFormatException e) {
      new Cells(Optional.empty(), ofLayouts)
          .wrong("size", cell, "it is a number of millimetres", "leave layouts.csv as it was");
      return 0;
    }
  }

  /** What one sheet that is cut or spoilt came to. */
  private SoFar sheet(CsvTable.Row row, State state, List<Laid> laid) {
    List<Laid> named = new ArrayList<>();
    List<Laid> others = new ArrayList<>(laid);
    Set<String> unknown = new LinkedHashSet<>();
    for (String line : row.cell("except").text().split("[,;\\s]+")) {
      others.stream()
          .filter(part -> part.mark.startsWith(line + " "))
          .findFirst()
          .ifPresentOrElse(
              part -> {
                named.add(part);
                others.remove(part);
              },
              () -> unknown.add(line));
    }
    unknown.forEach(line -> unknown(row, line));
    Map<String, Integer> good = new LinkedHashMap<>();
    for (Laid part : state == State.CUT ? others : named) {
      if (isStillAsked(part)) {
        good.merge(part.mark, 1, Integer::sum);
      }
    }
    isStillThere(row.cell("material").text(), from(row));
    return new SoFar(good, Map.of(from(row), 1));
  }

  private static String from(CsvTable.Row row) {
    return Stock.stated(row.cell("stock").text());
  }

  private void isStillThere(String material, String from) {
    if (!stock.getOrDefault(material, List.of(from)).contains(from)) {
      changed(
          "'"
              + from
              + "' is used, but the stock of "
              + material
              + " has no such line any more: nothing is taken off its counts. Where it has another"
              + " place, size or unit now, lower its count yourself, or put it as it was");
    }
  }

  private void unknown(CsvTable.Row row, String line) {
    if (!line.isEmpty()) {
      cells.wrong(
          "except",
          row.cell("except"),
          "line " + line + " is not on that sheet so often",
          "write the numbers that stand before the parts on its layout, 2 5 5");
    }
  }

  private boolean isStillAsked(Laid laid) {
    if (!parts.containsKey(laid.mark)) {
      changed("'" + laid.mark + "' is cut, but the parts have no such line any more");
      return false;
    }
    Part part = Objects.requireNonNull(parts.get(laid.mark));
    boolean asItLies = is(part.length(), laid.length) && is(part.width(), laid.width);
    boolean turned = is(part.length(), laid.width) && is(part.width(), laid.length);
    boolean same = asItLies || (turned && part.grain() == Grain.FREE);
    if (!same) {
      String what = turned ? "with its grain across" : "in another size than it has now";
      changed("'" + laid.mark + "' was cut " + what + ", and is cut again");
    }
    return same;
  }

  /** Each thing once. */
  private void changed(String what) {
    if (!changed.contains(what)) {
      changed.add(what);
    }
  }

  private static boolean is(Length length, double mm) {
    return Math.abs(length.mm() - mm) < SAME;
  }
}
