package fourpin.shop.web;

import de.siegmar.fastcsv.reader.CsvReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * Sizes that makers start from where they state none; every one of them is in the job then, to be
 * changed. The table says where each comes from.
 */
enum Starts {
  INCH("inch"),
  MILLIMETRE("mm");

  private final Map<String, String> sizes;

  Starts(String column) {
    try (InputStream in =
            Objects.requireNonNull(Starts.class.getResourceAsStream("survey-starts.csv"));
        var rows = CsvReader.builder().ofNamedCsvRecord(in, StandardCharsets.UTF_8)) {
      sizes = new LinkedHashMap<>();
      rows.forEach(r -> sizes.put(r.getField("name"), r.getField(column)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Starts of(boolean customary) {
    return customary ? INCH : MILLIMETRE;
  }

  /** One that the table has. */
  String get(String name) {
    return Objects.requireNonNull(sizes.get(name), name);
  }

  Optional<String> find(String name) {
    return Optional.ofNullable(sizes.get(name));
  }
}
