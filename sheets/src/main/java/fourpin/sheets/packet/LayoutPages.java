package fourpin.sheets.packet;

import fourpin.bench.Caution;
import fourpin.cutting.Direction;
import fourpin.cutting.Piece;
import fourpin.cutting.SawStep;
import fourpin.cutting.SetUp;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.Unplaced;
import fourpin.plan.CutMaterial;
import fourpin.plan.MaterialPlan;
import fourpin.plan.MaterialPlan.StockLayout;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.drawings.LayoutView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** How each sheet and board is cut, and in which order. */
final class LayoutPages {

  private static final double VIEW_HEIGHT = 110;

  private static final String HOW_TO_READ =
      "Each cut goes through the whole piece. Pieces are lettered as they come off, trimmed edges"
          + " too: sheet S1 trimmed on four edges goes on with S1-E. A finished part stands in"
          + " brackets with its line of the cut list. Write the part's mark on it at once.";

  /** What is told besides. */
  enum Told {
    OF_CASES(
        " What waits is cut when the case stands and has been measured: leave its piece of the"
            + " sheet whole until then."),
    OF_PARTS("");

    private final String more;

    Told(String more) {
      this.more = more;
    }

    String more() {
      return more;
    }
  }

  private final List<CutMaterial> materials;
  private final List<Caution> cautions;
  private final Told told;
  private final Words words;
  private final CautionSigns signs = new CautionSigns();

  /**
   * @param cautions of the steps that send the maker to these pages
   */
  LayoutPages(List<CutMaterial> materials, List<Caution> cautions, Told told, Words words) {
    this.materials = materials;
    this.cautions = cautions;
    this.told = told;
    this.words = words;
  }

  static LayoutPages of(Plan plan, Words words) {
    return new LayoutPages(
        plan.materials().stream().map(MaterialPlan::cut).toList(),
        plan.steps().stream()
            .filter(step -> step.stage() == PlannedStep.Stage.CUT)
            .flatMap(step -> step.cautions().stream())
            .distinct()
            .toList(),
        Told.OF_CASES,
        words);
  }

  Optional<Section> section() {
    if (materials.isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(howNear());
    blocks.addAll(origins());
    blocks.add(Block.Paragraph.of(HOW_TO_READ + told.more()));
    blocks.addAll(keep());
    for (CutMaterial material : materials) {
      for (StockLayout layout : material.layouts()) {
        blocks.addAll(layout(title(material, layout), layout));
      }
    }
    return Optional.of(new Section("Cutting layouts", blocks));
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
            new Table(
                List.of(
                    Table.left("Cut from"),
                    Table.left("Piece"),
                    Table.right("Length, " + words.unit()),
                    Table.right("Width"),
                    Table.right("How many")),
                rows));
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
        rows.add(
            Table.row(
                title(material, layout),
                words.value(layout.sheets()),
                Long.toString(layout.layout().bound().sheets()),
                words.value(layout.gap()),
                layout.sheets().id()));
      }
    }
    return new Table(
        List.of(
            Table.left("Cut from"),
            Table.right("Take"),
            Table.right("No layout needs fewer than"),
            Table.right("Cost above the least, at most"),
            Table.left("Figure")),
        rows);
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
    LayoutView view = new LayoutView(words.fullPage().high(VIEW_HEIGHT), pattern, number, title);
    String count = pattern.quantity() == 1 ? "" : ", cut " + pattern.quantity() + " alike";
    List<Block> page = new ArrayList<>();
    page.add(new Block.Heading(title + ", layout S" + number + count));
    page.add(
        new Block.Figure(
            view.draw(),
            "Stock " + pattern.sheet().name() + ". Numbers are lines of the cut list."));
    page.add(order(setUps));
    small(layout, number).ifPresent(page::add);
    page.addAll(signs.at(cautions));
    return new Block.Together(page);
  }

  /** The pieces of one sheet that are too small to be held. */
  private static Optional<Block> small(StockLayout layout, int number) {
    String sheet = "S" + number;
    List<String> small =
        layout.small().stream()
            .filter(piece -> piece.equals(sheet) || piece.startsWith(sheet + "-"))
            .toList();
    return small.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Block.Paragraph(
                Prose.bold("Too small to be held safely when they are cut: ")
                    .then(Prose.plain(Words.list(small) + ". See the caution."))));
  }

  private Table order(List<SetUp> setUps) {
    List<Table.Row> rows = new ArrayList<>();
    for (SetUp setUp : setUps) {
      rows.add(Table.row(Integer.toString(rows.size() + 1), setting(setUp), passes(setUp)));
    }
    return new Table(
        List.of(Table.right("Set-up"), Table.left("Saw, " + words.unit()), Table.left("Passes")),
        rows);
  }

  private String setting(SetUp setUp) {
    return switch (setUp) {
      case SetUp.TrimEdge trim ->
          "trim "
              + Words.lower(trim.edge())
              + " by "
              + words.number(trim.off())
              + ", kerf included";
      case SetUp.CutTo cut ->
          (cut.direction() == Direction.RIP ? "rip, fence at " : "crosscut, stop at ")
              + words.number(cut.fence());
    };
  }

  private static String passes(SetUp setUp) {
    return setUp.steps().stream().map(step -> pass(setUp, step)).collect(Collectors.joining("; "));
  }

  private static String pass(SetUp setUp, SawStep step) {
    if (setUp instanceof SetUp.TrimEdge) {
      return step.from().name();
    }
    return step.from().name()
        + " → "
        + named(step.near())
        + step.far().map(far -> " + " + named(far)).orElse("");
  }

  private static String named(Piece piece) {
    return switch (piece.content()) {
      case Piece.Content.ToCut _ -> piece.name();
      case Piece.Content.FinishedPart part -> "[" + part.mark() + "]";
      case Piece.Content.LeftOver _ -> "left over " + piece.name();
      case Piece.Content.TrimWaste _ -> "waste";
    };
  }
}
