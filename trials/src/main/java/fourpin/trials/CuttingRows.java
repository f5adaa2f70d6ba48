package fourpin.trials;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What was measured so far, kept in a table beside the report, so that a trial can be stopped and
 * taken up again.
 */
final class CuttingRows {

  /** Without or with kerf. */
  enum Sawn {
    PLAIN,
    WITH_KERF
  }

  private record Key(String problem, String rules, Sawn sawn, int limit) {}

  /**
   * A layout measured.
   *
   * @param limit seconds of the processor that were allowed
   * @param found sheets, or cost
   * @param lower bound that came with the layout
   * @param processor seconds of the processor that it took
   * @param clock seconds that passed meanwhile
   * @param faults faults that the virtual saw found, and parts left out
   */
  record Cut(int limit, long found, long lower, double processor, double clock, long faults) {}

  private static final List<String> COLUMNS =
      List.of(
          "problem", "rules", "sawn", "limit", "found", "lower", "processor", "clock", "faults");

  private final Path file;
  private final Map<Key, Cut> rows = new LinkedHashMap<>();

  private CuttingRows(Path file) {
    this.file = file;
  }

  /** Reads what there is; nothing where there is no file yet. */
  static CuttingRows read(Path file) throws IOException {
    CuttingRows rows = new CuttingRows(file);
    if (Files.exists(file)) {
      try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(file)) {
        reader.forEach(rows::add);
      }
    }
    return rows;
  }

  private void add(NamedCsvRecord line) {
    Key key =
        new Key(
            line.getField("problem"),
            line.getField("rules"),
            Sawn.valueOf(line.getField("sawn")),
            Integer.parseInt(line.getField("limit")));
    rows.put(
        key,
        new Cut(
            key.limit,
            Long.parseLong(line.getField("found")),
            Long.parseLong(line.getField("lower")),
            Double.parseDouble(line.getField("processor")),
            Double.parseDouble(line.getField("clock")),
            Long.parseLong(line.getField("faults"))));
  }

  /** What so many seconds came to, or fewer, where more can't come to more. */
  Optional<Cut> of(PublishedRun run, Sawn sawn, int limit) {
    return Optional.ofNullable(rows.get(key(run, sawn, limit)))
        .or(
            () ->
                limits().stream()
                    .filter(l -> l < limit)
                    .flatMap(l -> proven(run, sawn, l))
                    .findFirst());
  }

  private Stream<Cut> proven(PublishedRun run, Sawn sawn, int limit) {
    return Optional.ofNullable(rows.get(key(run, sawn, limit))).stream()
        .filter(cut -> cut.found() == cut.lower());
  }

  /** How many seconds were allowed, rising. */
  List<Integer> limits() {
    return rows.keySet().stream().map(Key::limit).distinct().sorted().toList();
  }

  private static Key key(PublishedRun run, Sawn sawn, int limit) {
    return new Key(run.name(), run.rules(), sawn, limit);
  }

  /** Notes a layout, in the file too. */
  void put(PublishedRun run, Sawn sawn, Cut cut) throws IOException {
    rows.put(key(run, sawn, cut.limit), cut);
    Path aside = file.resolveSibling(file.getFileName() + ".new");
    try (CsvWriter writer = CsvWriter.builder().build(aside)) {
      writer.writeRecord(COLUMNS);
      rows.forEach((key, row) -> write(writer, key, row));
    }
    Files.move(aside, file, StandardCopyOption.REPLACE_EXISTING);
  }

  private static void write(CsvWriter writer, Key key, Cut row) {
    writer.writeRecord(
        key.problem,
        key.rules,
        key.sawn.name(),
        Integer.toString(row.limit),
        Long.toString(row.found),
        Long.toString(row.lower),
        seconds(row.processor),
        seconds(row.clock),
        Long.toString(row.faults));
  }

  private static String seconds(double seconds) {
    return String.format(Locale.ROOT, "%.2f", seconds);
  }
}
