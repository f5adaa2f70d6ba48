package fourpin.trials;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fourpin.cutting.BoardPart;
import fourpin.cutting.BoardProblem;
import fourpin.cutting.Grain;
import fourpin.cutting.Origin;
import fourpin.cutting.Part;
import fourpin.cutting.Saw;
import fourpin.cutting.SheetGrain;
import fourpin.cutting.SheetProblem;
import fourpin.cutting.StockBoard;
import fourpin.cutting.StockSheet;
import fourpin.cutting.Supply;
import fourpin.cutting.Trim;
import fourpin.measure.Length;
import fourpin.trials.PublishedRun.Counts;
import fourpin.trials.PublishedRun.Task;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Reads families of published cutting problems: folders {@code sheets-*} with one file for each
 * instance, and {@code boards-1d} with all in one; the README of each tells the format.
 *
 * <p>With kerf k, stock and parts are each less by k in every direction: the optimum stays the same
 * exactly, since a last cut may run off the edge.
 */
final class PublishedSets {
  /** A unit of the instances; larger than any kerf, so that every part outlasts the conversion. */
  private static final Length UNIT = Length.mm(10);

  /** One run without and with kerf. */
  record Pair(PublishedRun plain, PublishedRun sawn) {}

  private final Length kerf;

  private PublishedSets(Length kerf) {
    this.kerf = kerf;
  }

  /**
   * Every run found, family by family, in the order of the files of values.
   *
   * @param data a folder of families, or one family
   */
  static List<Pair> read(Path data, Length kerf) throws IOException {
    List<PublishedRun> plain = new PublishedSets(Length.ZERO).runs(data);
    List<PublishedRun> sawn = new PublishedSets(kerf).runs(data);
    return IntStream.range(0, plain.size())
        .mapToObj(i -> new Pair(plain.get(i), sawn.get(i)))
        .toList();
  }

  private List<PublishedRun> runs(Path data) throws IOException {
    List<PublishedRun> runs = new ArrayList<>();
    for (Path folder : families(data)) {
      String family = folder.toRealPath().getFileName().toString();
      boolean boards = family.startsWith("boards");
      List<NamedCsvRecord> lines = boards ? lines(folder.resolve("instances.csv")) : List.of();
      for (NamedCsvRecord value : lines(folder.resolve("values.csv"))) {
        if (boards) {
          runs.add(boards(family, value, lines));
        } else if (guillotine(value)) {
          runs.add(sheets(family, value, folder));
        }
      }
    }
    return runs;
  }

  private static List<Path> families(Path data) throws IOException {
    if (isFamily(data)) {
      return List.of(data);
    }
    try (Stream<Path> all = Files.list(data)) {
      return all.filter(PublishedSets::isFamily).sorted().toList();
    }
  }

  private static boolean isFamily(Path folder) {
    return Files.exists(folder.resolve("values.csv"));
  }

  private static List<NamedCsvRecord> lines(Path file) throws IOException {
    try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
      return reader.stream().toList();
    }
  }

  /** Values of layouts that no saw can cut are for reference only. */
  private static boolean guillotine(NamedCsvRecord value) {
    return !value.getField("variant").contains("NON-guillotine");
  }

  private PublishedRun sheets(String family, NamedCsvRecord value, Path folder) throws IOException {
    String instance = value.getField("instance");
    String rules = value.getField("variant");
    Grain grain = rules.contains("ROTATION") ? Grain.FREE : Grain.FIXED;
    return new PublishedRun(
        family,
        family + "/" + instance + "/" + (grain == Grain.FREE ? "turned" : "straight"),
        rules,
        rules.startsWith("min total sheet area") ? Counts.COST : Counts.SHEETS,
        number(value.getField("best_known")),
        number(value.getField("lb_free_guillotine_computed")),
        new Task.Sheets(problem(lines(folder.resolve(instance + ".csv")), grain)));
  }

  private SheetProblem problem(List<NamedCsvRecord> lines, Grain grain) {
    List<Part> parts = new ArrayList<>();
    List<StockSheet> stock = new ArrayList<>();
    for (NamedCsvRecord line : lines) {
      if (line.getField("kind").equals("sheet")) {
        stock.add(sheet("sheet " + (stock.size() + 1), line));
      } else {
        parts.add(part("P" + (parts.size() + 1), line, grain));
      }
    }
    return new SheetProblem(parts, stock, new Saw(kerf, Trim.NONE));
  }

  private StockSheet sheet(String name, NamedCsvRecord line) {
    String copies = line.getField("copies");
    return new StockSheet(
        name,
        size(line.getField("width")),
        size(line.getField("height")),
        SheetGrain.ALONG_LENGTH,
        copies.isEmpty() ? Supply.unlimited() : Supply.of(Integer.parseInt(copies)),
        Long.parseLong(line.getField("cost")),
        Origin.TO_BUY);
  }

  private Part part(String mark, NamedCsvRecord line, Grain grain) {
    return new Part(
        mark,
        size(line.getField("width")),
        size(line.getField("height")),
        Integer.parseInt(line.getField("copies")),
        grain);
  }

  private PublishedRun boards(String family, NamedCsvRecord value, List<NamedCsvRecord> lines) {
    String instance = value.getField("instance");
    return new PublishedRun(
        value.getField("family"),
        family + "/" + value.getField("family") + "/" + instance + "/boards",
        "min boards",
        Counts.SHEETS,
        number(value.getField("best_known")),
        number(value.getField("lower_bound")),
        new Task.Boards(
            problem(lines.stream().filter(l -> l.getField("instance").equals(instance)).toList())));
  }

  private BoardProblem problem(List<NamedCsvRecord> lines) {
    List<BoardPart> parts = new ArrayList<>();
    for (NamedCsvRecord line : lines) {
      String mark = "P" + (parts.size() + 1);
      int demand = Integer.parseInt(line.getField("demand"));
      parts.add(new BoardPart(mark, size(line.getField("part_length")), demand));
    }
    Length length = size(lines.getFirst().getField("stock_length"));
    StockBoard board = new StockBoard("board", length, Supply.unlimited(), 1, Origin.TO_BUY);
    return new BoardProblem(parts, List.of(board), UNIT, kerf, Length.ZERO);
  }

  private Length size(String text) {
    return UNIT.times(Long.parseLong(text)).minus(kerf);
  }

  private static OptionalLong number(String text) {
    return text.isEmpty() ? OptionalLong.empty() : OptionalLong.of(Long.parseLong(text));
  }
}
