package fourpin.reference;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Unit;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/** One row of a table as it stands in its file. */
record Row(NamedCsvRecord fields) {

  private static final LengthReader LENGTHS = new LengthReader(Unit.MILLIMETRE);

  /** Every row of a table that stands beside this class on the class path. */
  static <T> List<T> all(String table, Function<Row, T> make) {
    try (InputStream in = Objects.requireNonNull(Row.class.getResourceAsStream(table), table);
        CsvReader<NamedCsvRecord> csv =
            CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return csv.stream().map(Row::new).map(make).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  String text(String column) {
    return fields.getField(column);
  }

  String name() {
    return text("name");
  }

  List<String> also() {
    return list("also").toList();
  }

  Stream<String> list(String column) {
    return Arrays.stream(text(column).split(";")).filter(each -> !each.isEmpty());
  }

  double number(String column) {
    return Double.parseDouble(text(column));
  }

  int whole(String column) {
    return Integer.parseInt(text(column));
  }

  Quantity quantity(String column, QuantityUnit unit) {
    return Quantity.of(number(column), unit);
  }

  Optional<Quantity> optionalQuantity(String column, QuantityUnit unit) {
    return text(column).isEmpty() ? Optional.empty() : Optional.of(quantity(column, unit));
  }

  /** A value that the file states in the customary unit. */
  Quantity customary(String column, QuantityUnit unit) {
    return Quantity.of(number(column) / unit.factor(Unit.INCH), unit);
  }

  Length length(String column) {
    return LENGTHS.read(text(column)).orThrow();
  }

  /** The unit that the column "unit" names by its customary symbol. */
  QuantityUnit unit() {
    return Arrays.stream(QuantityUnit.values())
        .filter(unit -> unit.symbol(Unit.INCH).equals(text("unit")))
        .findFirst()
        .orElseThrow();
  }

  Source source() {
    return new Source(text("source"), text("place"), Source.Standing.valueOf(text("standing")));
  }
}
