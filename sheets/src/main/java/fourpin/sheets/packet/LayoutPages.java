package fourpin.sheets.packet;

import fourpin.cutting.CuttingOrder;
import fourpin.cutting.Direction;
import fourpin.cutting.Piece;
import fourpin.cutting.SawStep;
import fourpin.cutting.SetUp;
import fourpin.cutting.SheetPattern;
import fourpin.cutting.Unplaced;
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

  private final Plan plan;
  private final Words words;
  private final CautionSigns signs = new CautionSigns();

  LayoutPages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Optional<Section> section() {
    if (plan.materials().isEmpty()) {
      return Optional.empty();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        Block.Paragraph.of(
            "Each cut goes through the whole piece. Pieces are lettered as they come off, trimmed"
                + " edges too: sheet S1 trimmed on four edges goes on with S1-E. A finished part"
                + " stands in brackets with its line of the cut list. Write the part's mark on it"
                + " at once. What waits is cut when the case stands and has been measured: leave"
                + " its piece of the sheet whole until then."));
    for (MaterialPlan material : plan.materials()) {
      for (StockLayout layout : material.layouts()) {
        blocks.addAll(layout(material.material().name() + ", " + layout.title(), layout));
      }
    }
    return Optional.of(new Section("Cutting layouts", blocks));
  }

  private List<Block> layout(String title, StockLayout layout) {
    List<Block> blocks = new ArrayList<>();
    List<SheetPattern> patterns = layout.layout().patterns();
    for (int i = 0; i < patterns.size(); i++) {
      blocks.addAll(pattern(title, layout, patterns.get(i), i + 1));
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

  private List<Block> pattern(String title, StockLayout layout, SheetPattern pattern, int number) {
    LayoutView view = new LayoutView(words.fullPage().high(VIEW_HEIGHT), pattern, number, title);
    String count = pattern.quantity() == 1 ? "" : ", cut " + pattern.quantity() + " alike";
    List<Block> page = new ArrayList<>();
    page.add(new Block.Heading(title + ", layout S" + number + count));
    page.add(
        new Block.Figure(
            view.draw(),
            "Stock " + pattern.sheet().name() + ". Numbers are lines of the cut list."));
    page.add(order(CuttingOrder.of(pattern, number, layout.problem().saw())));
    page.addAll(cautions());
    return List.of(new Block.Together(page));
  }

  /** The cautions of the steps that send the maker to this page. */
  private List<Block> cautions() {
    return signs.at(
        plan.steps().stream()
            .filter(step -> step.stage() == PlannedStep.Stage.CUT)
            .flatMap(step -> step.cautions().stream())
            .distinct()
            .toList());
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
