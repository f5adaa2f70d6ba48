package fourpin.validation;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Published tables among the test resources. */
final class Rows {

  private Rows() {}

  /** One row. */
  record Row(NamedCsvRecord fields) {
    String text(String column) {
      return fields.getField(column);
    }

    double number(String column) {
      return Double.parseDouble(text(column));
    }
  }

  static List<Row> of(String file) {
    return read("/validation/" + file);
  }

  /** A reference table of the program. */
  static List<Row> reference(String file) {
    return read("/fourpin/reference/" + file);
  }

  private static List<Row> read(String path) {
    try (InputStream in = Objects.requireNonNull(Rows.class.getResourceAsStream(path), path);
        CsvReader<NamedCsvRecord> csv =
            CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return csv.stream().map(Row::new).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
