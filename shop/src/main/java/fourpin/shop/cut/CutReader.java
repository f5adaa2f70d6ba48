package fourpin.shop.cut;

import fourpin.cutting.Part;
import fourpin.cutting.Ties;
import fourpin.measure.LengthStyle;
import fourpin.measure.Spelling;
import fourpin.measure.Unit;
import fourpin.plan.Finished;
import fourpin.plan.Stock;
import fourpin.plan.Wanted;
import fourpin.shop.yaml.Place;
import fourpin.shop.yaml.Problem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Reads a table of parts and one of stock. Never throws for what they hold. */
public final class CutReader {

  private static final Problem SWAPPED =
      new Problem(
          Place.START,
          "the two tables",
          "they are swapped: this one has the columns of stock, the other those of parts",
          "name the table of parts first and that of stock after it");

  /** The material of a line that does not name it, or that was not read. */
  private static final String UNKNOWN = "";

  private final Optional<Unit> bare;
  private final List<Problem> ofParts = new ArrayList<>();
  private final List<Problem> ofStock = new ArrayList<>();
  private final Cells partCells;
  private final Cells stockCells;
  private final Map<String, Rough> rough = new LinkedHashMap<>();

  /** What the lines of stock say they are, those with errors too. */
  private final Set<String> named = new TreeSet<>();

  /** Materials of lines with errors: nothing is asked that hangs on all lines of one. */
  private final Set<String> stockInDoubt = new LinkedHashSet<>();

  private final Set<String> partsInDoubt = new LinkedHashSet<>();

  /** What came of it. */
  public sealed interface Outcome {

    /**
     * @param wanted by material, in the order of the parts
     * @param style that lengths are printed in: of the unit stated, else of the first part's
     */
    record Good(List<Wanted> wanted, LengthStyle style) implements Outcome {}

    /** All that is wrong in both tables, each in the order of its lines; at least one thing. */
    record Refused(List<Problem> ofParts, List<Problem> ofStock) implements Outcome {
      public Refused {
        ofParts = ofParts.stream().sorted(Comparator.comparing(Problem::place)).toList();
        ofStock = ofStock.stream().sorted(Comparator.comparing(Problem::place)).toList();
      }
    }
  }

  private CutReader(Optional<Unit> bare) {
    this.bare = bare;
    this.partCells = new Cells(bare, ofParts);
    this.stockCells = new Cells(bare, ofStock);
  }

  /**
   * Reads both tables.
   *
   * @param bare unit of a number without one; without it such numbers are refused
   */
  public static Outcome read(byte[] parts, byte[] stock, Optional<Unit> bare) {
    return new CutReader(bare).read(parts, stock);
  }

  private Outcome read(byte[] parts, byte[] stock) {
    if (areSwapped(CsvTable.heading(parts), CsvTable.heading(stock))) {
      return new Outcome.Refused(List.of(SWAPPED), List.of());
    }
    List<StockRow> stockRows = stockRows(stock);
    List<PartRow> partRows = partRows(parts);
    oneKindEach(stockRows);
    stockRows.stream()
        .collect(Collectors.groupingBy(StockRow::material, LinkedHashMap::new, Collectors.toList()))
        .forEach(
            (material, rows) ->
                noting(
                    stockCells,
                    () -> rough.put(material, RoughReader.read(rows, stockCells)),
                    () -> stockInDoubt.add(material)));
    LengthStyle style = style(partRows);
    List<Wanted> wanted = wanted(partRows, stockRows, style);
    return ofParts.isEmpty() && ofStock.isEmpty()
        ? new Outcome.Good(wanted, style)
        : new Outcome.Refused(ofParts, ofStock);
  }

  /** What else is wrong with either would be told of the wrong table. */
  private static boolean areSwapped(Set<String> ofParts, Set<String> ofStock) {
    Set<String> part = names(PartRow.COLUMNS);
    Set<String> stock = names(StockRow.COLUMNS);
    return ofStock.contains(PartRow.NAME)
        && ofStock.stream().allMatch(name -> part.contains(name) || !stock.contains(name))
        && ofParts.containsAll(required(StockRow.COLUMNS))
        && ofParts.stream().allMatch(name -> stock.contains(name) || !part.contains(name));
  }

  private static Set<String> names(List<Column> columns) {
    return columns.stream().map(Column::name).collect(Collectors.toSet());
  }

  private static Set<String> required(List<Column> columns) {
    return names(columns.stream().filter(c -> c.need() == Column.Need.REQUIRED).toList());
  }

  private List<StockRow> stockRows(byte[] stock) {
    List<StockRow> read = new ArrayList<>();
    CsvTable.Read table = CsvTable.read(stock, StockRow.COLUMNS, ofStock);
    for (CsvTable.Row row : table.rows()) {
      String material = row.cell("material").text();
      named.add(material);
      noting(
          stockCells,
          () -> StockRow.read(row, stockCells).ifPresent(read::add),
          () -> stockInDoubt.add(material));
    }
    if (table.extent() == CsvTable.Extent.CUT_OFF) {
      stockInDoubt.addAll(named);
      named.add(UNKNOWN);
    }
    return read;
  }

  private List<PartRow> partRows(byte[] parts) {
    List<PartRow> read = new ArrayList<>();
    int number = 0;
    CsvTable.Read table = CsvTable.read(parts, PartRow.COLUMNS, ofParts);
    if (table.extent() == CsvTable.Extent.CUT_OFF) {
      partsInDoubt.add(UNKNOWN);
    }
    for (CsvTable.Row row : table.rows()) {
      int line = ++number;
      noting(
          partCells,
          () -> PartRow.read(row, line, partCells).ifPresent(read::add),
          () -> partsInDoubt.add(row.cell("material").text()));
    }
    return read;
  }

  private static void noting(Cells cells, Runnable reading, Runnable wrong) {
    int before = cells.wrongs();
    reading.run();
    if (cells.wrongs() > before) {
      wrong.run();
    }
  }

  private LengthStyle style(List<PartRow> parts) {
    Unit unit = bare.orElse(parts.isEmpty() ? Unit.MILLIMETRE : parts.getFirst().length().unit());
    return unit.customary() ? LengthStyle.FRACTIONS : LengthStyle.MILLIMETRES;
  }

  private void oneKindEach(List<StockRow> stock) {
    Map<String, Wanted.Kind> kinds = new LinkedHashMap<>();
    for (StockRow row : stock) {
      if (kinds.computeIfAbsent(row.material(), _ -> row.kind()) != row.kind()) {
        stockCells.wrong(
            "kind",
            row.kindCell(),
            "'" + row.material() + "' is both sheets and boards",
            "give one of them another name");
        stockInDoubt.add(row.material());
      }
    }
  }

  /** Material by material, in the order of the parts; stock that nobody wants is left alone. */
  private List<Wanted> wanted(List<PartRow> parts, List<StockRow> stock, LengthStyle style) {
    Map<String, List<PartRow>> byMaterial = new LinkedHashMap<>();
    parts.forEach(p -> byMaterial.computeIfAbsent(p.material(), _ -> new ArrayList<>()).add(p));
    List<Wanted> wanted = new ArrayList<>();
    byMaterial.forEach(
        (material, rows) -> {
          List<StockRow> its = stock.stream().filter(s -> s.material().equals(material)).toList();
          if (isInNoLine(material)) {
            rows.forEach(this::noStock);
          } else if (!its.isEmpty() && !stockInDoubt.contains(material)) {
            wanted.add(wanted(material, rows, its, style));
          }
        });
    return wanted;
  }

  /** A line without a name may be the one; so may any of a table that could not be read. */
  private boolean isInNoLine(String material) {
    boolean readThrough = !named.isEmpty() && !named.contains(UNKNOWN);
    return readThrough && !named.contains(material);
  }

  private void noStock(PartRow row) {
    partCells.wrong(
        "material",
        row.line().cell("material"),
        "no stock is of that material",
        Spelling.nearest(row.material(), List.copyOf(named))
            .map(near -> "did you mean '" + near + "'?")
            .orElse("add a line with it to the stock"));
  }

  private Wanted wanted(
      String material, List<PartRow> rows, List<StockRow> stock, LengthStyle style) {
    Rough its = Objects.requireNonNull(rough.get(material));
    BlankReader blanks = new BlankReader(its, stock, style.unit(), partCells);
    List<Part> parts = new ArrayList<>();
    Map<String, Finished> finished = new LinkedHashMap<>();
    Map<String, Integer> spares = new LinkedHashMap<>();
    int before = partCells.wrongs();
    for (PartRow row : rows) {
      blanks
          .read(row)
          .ifPresent(
              read -> {
                parts.add(read.pieces());
                read.finished().ifPresent(f -> finished.put(row.mark(), f));
                if (row.spares() > 0) {
                  spares.put(row.mark(), row.spares() * read.strips());
                }
              });
    }
    boolean whole =
        partCells.wrongs() == before
            && !partsInDoubt.contains(material)
            && !partsInDoubt.contains(UNKNOWN);
    List<Stock> sizes = new ArrayList<>();
    for (StockRow s : stock) {
      String name = Stock.name(sizes.size() + 1, s.length(), s.width(), s.supply(), style);
      sizes.add(
          new Stock(
              name,
              s.length(),
              s.width(),
              s.count(),
              s.price(),
              s.supply(),
              s.worth(),
              s.defects()));
    }
    Ties ties = whole ? new TiesReader(rows, parts, partCells).read() : Ties.NONE;
    return new Wanted(
        material,
        stock.getFirst().kind(),
        parts,
        sizes,
        ties,
        spares,
        blanks.thickness(),
        its.first(),
        0,
        finished);
  }
}
