package fourpin.cutting;

import fourpin.measure.Length;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Reads the published instances among the test resources; see the README there for sources. */
final class Published {

  /** A line of values.csv; {@code best} is 0 where no value is published. */
  record Value(String instance, Grain grain, long best, long bound) {
    /** Several sizes count by area, which the instance gives as the price. */
    boolean byPrice() {
      return instance.endsWith("_multi");
    }

    long of(Layout layout) {
      return byPrice() ? layout.price() : layout.sheets();
    }
  }

  private Published() {}

  static List<Value> values() {
    return lines("values.csv").stream()
        .skip(1)
        .map(line -> line.split(",", -1))
        .map(c -> new Value(c[0], Grain.valueOf(c[1]), number(c[2]), number(c[3])))
        .toList();
  }

  private static long number(String text) {
    return text.isEmpty() ? 0 : Long.parseLong(text);
  }

  /**
   * An instance with all sizes times a scale, less the kerf: the same optimum, whatever the kerf.
   */
  static SheetProblem sheets(String instance, Grain grain, Length unit, Length kerf) {
    List<Part> parts = new ArrayList<>();
    List<StockSheet> stock = new ArrayList<>();
    for (String line : lines(instance + ".csv")) {
      String[] c = line.split(",", -1);
      switch (c[0]) {
        case "sheet" -> stock.add(sheet(c, stock.size(), unit, kerf));
        case "part" -> parts.add(part(c, parts.size(), grain, unit, kerf));
        default -> {}
      }
    }
    return new SheetProblem(parts, stock, new Saw(kerf, Trim.NONE));
  }

  private static StockSheet sheet(String[] c, int number, Length unit, Length kerf) {
    return new StockSheet(
        "sheet " + (number + 1),
        size(c[1], unit, kerf),
        size(c[2], unit, kerf),
        SheetGrain.ALONG_LENGTH,
        c[3].isEmpty() ? Supply.unlimited() : Supply.of(Integer.parseInt(c[3])),
        Long.parseLong(c[4]),
        Origin.TO_BUY);
  }

  private static Part part(String[] c, int number, Grain grain, Length unit, Length kerf) {
    return new Part(
        "P" + (number + 1),
        size(c[1], unit, kerf),
        size(c[2], unit, kerf),
        Integer.parseInt(c[3]),
        grain);
  }

  private static Length size(String text, Length unit, Length kerf) {
    return unit.times(Long.parseLong(text)).minus(kerf);
  }

  static BoardProblem boards(String instance, Length unit, Length kerf) {
    List<BoardPart> parts = new ArrayList<>();
    List<StockBoard> stock = new ArrayList<>();
    for (String line : lines("boards.csv")) {
      String[] c = line.split(",", -1);
      if (c[0].equals(instance)) {
        if (stock.isEmpty()) {
          stock.add(
              new StockBoard(
                  "board", size(c[1], unit, kerf), Supply.unlimited(), 1, Origin.TO_BUY));
        }
        parts.add(
            new BoardPart(
                "P" + (parts.size() + 1), size(c[2], unit, kerf), Integer.parseInt(c[3])));
      }
    }
    return new BoardProblem(parts, stock, unit.times(10), kerf, Length.ZERO);
  }

  private static List<String> lines(String file) {
    try (InputStream in = Published.class.getResourceAsStream("/cutting/" + file)) {
      return new String(Objects.requireNonNull(in, file).readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
