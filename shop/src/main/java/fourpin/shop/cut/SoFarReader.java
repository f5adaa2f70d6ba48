package fourpin.shop.cut;

import fourpin.cutting.Part;
import fourpin.cutting.SoFar;
import fourpin.measure.Length;
import fourpin.plan.Wanted;
import fourpin.shop.yaml.Problem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Reads what has become of an earlier cutting: its layouts, and the maker's notes on each sheet.
 */
public final class SoFarReader {

  private static final List<Column> LAYOUTS =
      List.of(
          Column.required("material"),
          Column.required("cut from"),
          Column.required("layout"),
          Column.optional("alike"),
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
          Column.required("material"),
          Column.required("cut from"),
          Column.required("layout"),
          Column.optional("sheet"),
          Column.required("stock"),
          Column.required("state"),
          Column.required("except"));

  /** What a sheet may be; nothing written means that it is still whole. */
  private enum State {
    WHOLE,
    CUT,
    SPOILT
  }

  private static final Map<String, State> STATES =
      new TreeMap<>(Map.of("cut", State.CUT, "spoilt", State.SPOILT));

  /** Sizes are printed in so many millimetres. */
  private static final double SAME = 0.01;

  private final Map<String, Part> parts;
  private final List<Problem> problems = new ArrayList<>();
  private final Cells cells = new Cells(Optional.empty(), problems);
  private final List<String> changed = new ArrayList<>();

  /** A part as it lies on a layout. */
  private record Laid(String mark, double length, double width) {}

  /** What came of it. */
  public sealed interface Outcome {

    /**
     * @param byMaterial what is cut and used of each material
     * @param changed in words: parts that were cut in a size that is no longer asked for
     */
    record Good(Map<String, SoFar> byMaterial, List<String> changed) implements Outcome {}

    /** All that is wrong in the notes. */
    record Refused(List<Problem> problems) implements Outcome {}
  }

  private SoFarReader(List<Wanted> wanted) {
    this.parts =
        wanted.stream()
            .flatMap(each -> each.parts().stream())
            .collect(Collectors.toMap(Part::mark, Function.identity()));
  }

  /**
   * Reads one earlier cutting.
   *
   * @param wanted what the tables ask for now
   * @param layouts its layouts.csv
   * @param progress its progress.csv, with the maker's notes
   */
  public static Outcome read(List<Wanted> wanted, byte[] layouts, byte[] progress) {
    return new SoFarReader(wanted).read(layouts, progress);
  }

  private Outcome read(byte[] layouts, byte[] progress) {
    Map<List<String>, List<Laid>> laid = new LinkedHashMap<>();
    for (CsvTable.Row row : CsvTable.read(layouts, LAYOUTS, problems)) {
      if (row.cell("what").text().equals("part")) {
        laid.computeIfAbsent(layout(row), _ -> new ArrayList<>()).add(laid(row));
      }
    }
    Map<String, SoFar> soFar = new LinkedHashMap<>();
    for (CsvTable.Row row : CsvTable.read(progress, PROGRESS, problems)) {
      State state = cells.word("state", row.cell("state"), State.WHOLE, STATES).orElse(State.WHOLE);
      List<Laid> its = laid.getOrDefault(layout(row), List.of());
      if (state != State.WHOLE) {
        soFar.merge(row.cell("material").text(), sheet(row, state, its), SoFar::and);
      }
    }
    return problems.isEmpty()
        ? new Outcome.Good(soFar, changed)
        : new Outcome.Refused(List.copyOf(problems));
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
      return Double.parseDouble(cell.text());
    } catch (NumberFormatException e) {
      cells.wrong("size", cell, "it is a number of millimetres", "leave layouts.csv as it was");
      return 0;
    }
  }

  /** What one sheet that is cut or spoilt came to. */
  private SoFar sheet(CsvTable.Row row, State state, List<Laid> laid) {
    List<Laid> named = new ArrayList<>();
    List<Laid> others = new ArrayList<>(laid);
    for (String line : row.cell("except").text().split("[,;\\s]+")) {
      others.stream()
          .filter(part -> part.mark.startsWith(line + " "))
          .findFirst()
          .ifPresentOrElse(
              part -> {
                named.add(part);
                others.remove(part);
              },
              () -> unknown(row, line));
    }
    Map<String, Integer> good = new LinkedHashMap<>();
    for (Laid part : state == State.CUT ? others : named) {
      if (isStillAsked(part)) {
        good.merge(part.mark, 1, Integer::sum);
      }
    }
    return new SoFar(good, Map.of(row.cell("stock").text(), 1));
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
    boolean same =
        (is(part.length(), laid.length) && is(part.width(), laid.width))
            || (is(part.length(), laid.width) && is(part.width(), laid.length));
    if (!same) {
      changed("'" + laid.mark + "' was cut in another size than it has now, and is cut again");
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
