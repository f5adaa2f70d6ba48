package fourpin.sheets.packet;

import fourpin.bench.Caution;
import fourpin.cutting.Piece;
import fourpin.cutting.SetUp;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.Unplaced;
import fourpin.plan.CutMaterial;
import fourpin.plan.HowNear;
import fourpin.plan.LayoutCautions;
import fourpin.plan.MaterialPlan;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.Plan;
import fourpin.plan.SawCare;
import fourpin.sheets.drawings.LayoutView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Measure;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** How each sheet and board is cut, and in which order. */
final class LayoutPages {

  private static final double VIEW_HEIGHT = 100;

  /** Of the page's width, for the picture beside its set-ups. */
  private static final double SHARE = 0.47;

  private static final double GAP = 5;

  /** Millimetres; more set-ups stand below the picture, where they may go over the page. */
  private static final double MOST_BESIDE = 130;

  /** So high, in mm, the order leaves the drawing the whole width and the cautions their place. */
  private static final double MOST_BELOW = 110;

  private static final String HOW_TO_READ =
      "Each cut goes through the whole piece. Pieces are lettered as they come off, trimmed edges"
          + " too: sheet S1 trimmed on four edges goes on with S1-E. A finished part stands in"
          + " brackets with its line of the cut list. Write the part's mark on it at once.";

  private static final String LEAST =
      "No layout of the parts that have a place takes fewer than the fewest, or comes to less than the least.";

  /** What is told besides. */
  enum Told {
    OF_CASES(
        " What waits is cut to measure when the case stands: until then its piece is as much longer"
            + " as its step says."),
    OF_PARTS("");

    private final String more;

    Told(String more) {
      this.more = more;
    }

    String more() {
      return more;
    }

    /** Figures of cases are explained elsewhere, by their names. */
    List<Table.Column> grounds() {
      return switch (this) {
        case OF_CASES -> List.of(Table.left("Figure"));
        case OF_PARTS -> List.of();
      };
    }

    List<String> grounds(StockLayout layout) {
      return switch (this) {
        case OF_CASES -> List.of(layout.near().sheets().id());
        case OF_PARTS -> List.of();
      };
    }

    /** Marks of cases begin with the line of the cut list, which is enough at the saw. */
    String name(String mark) {
      return switch (this) {
        case OF_CASES -> mark.replaceFirst("^(\\d+) [^,]*", "$1");
        case OF_PARTS -> mark;
      };
    }
  }

  /** What can hurt while the sheets of a pattern, counted from 1, are cut. */
  interface Hazards {
    List<Caution> of(StockLayout layout, int number);
  }

  private final List<CutMaterial> materials;
  private final Hazards cautions;
  private final SawCare care;
  private final Told told;
  private final Words words;
  private final CautionSigns signs = new CautionSigns();

  /**
   * @param cautions that stand at each sheet
   */
  LayoutPages(List<CutMaterial> materials, Hazards cautions, SawCare care, Told told, Words words) {
    this.materials = materials;
    this.cautions = cautions;
    this.care = care;
    this.told = told;
    this.words = words;
  }

  static LayoutPages of(Plan plan, Words words) {
    return new LayoutPages(
        plan.materials().stream().map(MaterialPlan::cut).toList(),
        (layout, number) -> LayoutCautions.of(plan, layout, number),
        new SawCare(plan.job()),
        Told.OF_CASES,
        words);
  }

  Optional<Section> section() {
    if (materials.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(howNear());
    blocks.add(Block.Paragraph.of(LEAST));
    blocks.addAll(onHand());
    blocks.addAll(origins());
    blocks.add(Block.Paragraph.of(HOW_TO_READ + told.more()));
    blocks.addAll(signs.at(all()));
    blocks.addAll(keep());
    for (CutMaterial material : materials) {
      for (StockLayout layout : material.layouts()) {
        blocks.addAll(layout(title(material, layout), layout));
      }
    }
    return Optional.of(new Section("Cutting layouts", blocks));
  }

  /** What stock on hand counts, which is not to be spent. */
  private List<Block> onHand() {
    return materials.stream()
        .flatMap(
            material ->
                material.layouts().stream()
                    .flatMap(
                        l ->
                            l
                                .onHand()
                                .map(w -> title(material, l) + ": " + words.quantity(w))
                                .stream()))
        .<Block>map(
            worth ->
                Block.Paragraph.of(
                    worth + " of it is the worth stated of stock on hand, not money to be spent."))
        .toList();
  }

  /** Where layouts come from that the same job would not give again. */
  private List<Block> origins() {
    return materials.stream()
        .flatMap(
            material ->
                material.layouts().stream()
                    .flatMap(l -> l.origin().map(o -> title(material, l) + ": " + o).stream()))
        .<Block>map(words -> Block.Paragraph.of(words + "."))
        .toList();
  }

  /** In full before the first sheet, and in short again at each sheet that they belong to. */
  private List<Caution> all() {
    return materials.stream()
        .flatMap(material -> material.layouts().stream())
        .flatMap(
            layout ->
                IntStream.rangeClosed(1, layout.layout().patterns().size())
                    .mapToObj(number -> cautions.of(layout, number)))
        .flatMap(List::stream)
        .distinct()
        .toList();
  }

  private static String title(CutMaterial material, StockLayout layout) {
    return material.material() + ", " + layout.title();
  }

  /** Offcuts with the names that they get at the saw. */
  private List<Block> keep() {
    List<Table.Row> rows = new ArrayList<>();
    for (CutMaterial material : materials) {
      for (StockLayout layout : material.layouts()) {
        layout.kept().forEach(k -> rows.add(row(title(material, layout), k)));
      }
    }
    return rows.isEmpty()
        ? List.of()
        : List.of(
            new Block.Heading("Worth keeping of what is left over"),
            new Block.Columns(
                2,
                Block.Print.SMALL,
                List.of(
                    new Table(
                        List.of(
                            Table.left("Cut from"),
                            Table.left("Piece"),
                            Table.right("Length, " + words.unit()),
                            Table.right("Width"),
                            Table.right("How many")),
                        rows))));
  }

  private Table.Row row(String title, MaterialPlan.Kept kept) {
    return Table.row(
        title,
        kept.name(),
        words.number(kept.length()),
        words.number(kept.width()),
        Integer.toString(kept.count()));
  }

  /** How much stock the layouts take, and how much any others would take at least. */
  private Table howNear() {
    List<Table.Row> rows = new ArrayList<>();
    for (CutMaterial material : materials) {
      for (StockLayout layout : material.layouts()) {
        rows.add(howNear(title(material, layout), layout));
      }
    }
    return new Table(
        Stream.concat(
                Stream.of(
                    Table.left("Cut from"),
                    Table.right("Take"),
                    Table.right("Fewest"),
                    Table.right("Comes to"),
                    Table.right("Least"),
                    Table.right("Above it, at most"),
                    Table.left("Proof")),
                told.grounds().stream())
            .toList(),
        rows);
  }

  private Table.Row howNear(String title, StockLayout layout) {
    HowNear near = layout.near();
    List<String> row = new ArrayList<>(List.of(title));
    Stream.of(near.sheets(), near.fewest(), near.cost(), near.least())
        .map(words::value)
        .forEach(row::add);
    row.add(near.gapOfAll().map(words::value).orElse(""));
    row.add(near.proof().words());
    row.addAll(told.grounds(layout));
    return Table.row(row.toArray(String[]::new));
  }

  private List<Block> layout(String title, StockLayout layout) {
    List<Block> blocks = new ArrayList<>();
    List<List<SetUp>> setUps = layout.setUps();
    for (int i = 0; i < setUps.size(); i++) {
      blocks.add(pattern(title, layout, i + 1, setUps.get(i)));
    }
    if (!layout.layout().unplaced().isEmpty()) {
      blocks.add(leftOut(title, layout.layout().unplaced()));
    }
    return blocks;
  }

  /** What is left over, with whether it is worth keeping. */
  private static Map<Piece, LayoutView.Rest> rests(StockLayout layout, List<SetUp> setUps) {
    Set<String> kept =
        layout.kept().stream().map(MaterialPlan.Kept::name).collect(Collectors.toSet());
    Map<Piece, LayoutView.Rest> rests = new LinkedHashMap<>();
    setUps.stream()
        .flatMap(setUp -> setUp.steps().stream())
        .flatMap(step -> Stream.concat(Stream.of(step.near()), step.far().stream()))
        .filter(piece -> piece.content() instanceof Piece.Content.LeftOver)
        .forEach(
            piece ->
                rests.put(
                    piece,
                    kept.contains(piece.name()) ? LayoutView.Rest.KEPT : LayoutView.Rest.NOT_KEPT));
    return rests;
  }

  private static Block leftOut(String title, List<Unplaced> unplaced) {
    return new Block.Callout(
        Block.Sign.ERROR,
        title + ": parts without a place",
        unplaced.stream()
            .map(u -> Prose.plain(u.count() + " x " + u.mark() + ": " + Words.lower(u.reason())))
            .toList());
  }

  private Block pattern(String title, StockLayout layout, int number, List<SetUp> setUps) {
    SheetPattern pattern = layout.layout().patterns().get(number - 1);
    Set<String> small = Set.copyOf(layout.small(number));
    Table order = new SetUpTable(told, words, small).of(setUps);
    double half = SHARE * (words.fullPage().width() - GAP);
    double beside = Measure.height(List.of(order), words.fullPage().width() - GAP - half);
    double below = Measure.height(List.of(order), words.fullPage().width());
    double width = beside > MOST_BESIDE && below < MOST_BELOW ? words.fullPage().width() : half;
    LayoutView view =
        new LayoutView(
            words.fullPage().wide(width).high(VIEW_HEIGHT),
            pattern,
            layout.before() + number,
            title,
            rests(layout, setUps));
    String count = pattern.quantity() == 1 ? "" : ", cut " + pattern.quantity() + " alike";
    List<Block> page = new ArrayList<>();
    page.add(new Block.Heading(title + ", layout " + layout.name(number) + count));
    Block figure =
        new Block.Figure(
            view.draw(),
            "Stock " + pattern.sheet().name() + ". Numbers are lines of the cut list.");
    page.addAll(
        beside > MOST_BESIDE
            ? List.of(figure, order)
            : List.of(new Block.Beside(List.of(figure), SHARE, List.of(order))));
    care.narrow(setUps).ifPresent(signs::again);
    page.addAll(signs.at(cautions.of(layout, number)));
    return new Block.Together(page);
  }
}
