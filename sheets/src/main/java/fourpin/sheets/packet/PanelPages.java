package fourpin.sheets.packet;

import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.PanelKinds;
import fourpin.sheets.drawings.PanelView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A page for each different panel that something is cut or bored in, with its holes in a table. */
final class PanelPages {

  /** So many lines of holes find room beside the drawing. */
  private static final int MOST_LINES = 30;

  /** Of the page's width, for the drawing with its holes beside it. */
  private static final double SHARE = 0.5;

  private static final double GAP = 5;

  private final Plan plan;
  private final Words words;

  PanelPages(Plan plan, Words words) {
    this.plan = plan;
    this.words = words;
  }

  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    for (BuiltCase built : plan.cases()) {
      PanelKinds.of(built).forEach(alike -> blocks.addAll(pages(built, alike)));
    }
    return blocks.isEmpty() ? Optional.empty() : Optional.of(new Section("Panels", blocks));
  }

  /** A bored face has a page of its own; others share one where they find room. */
  private List<Block> pages(BuiltCase built, List<Part> alike) {
    List<Block> blocks = new ArrayList<>();
    for (Face face : PanelKinds.facesToDraw(alike.getFirst())) {
      List<Block> page = new ArrayList<>();
      page.add(new Block.Heading(title(built, alike, face)));
      page.add(Block.Paragraph.of(size(built, alike)));
      page.addAll(page(built, alike, face));
      if (view(words.fullPage(), built, alike.getFirst(), face).grid().isPresent()) {
        blocks.add(new Block.NewPage());
      }
      blocks.add(new Block.Together(page));
    }
    return blocks;
  }

  private static String title(BuiltCase built, List<Part> alike, Face face) {
    return built.order().name()
        + ": "
        + alike.getFirst().name()
        + ", "
        + Words.list(alike.stream().map(Part::mark).toList())
        + ", "
        + Words.lower(face)
        + " face up";
  }

  private String size(BuiltCase built, List<Part> alike) {
    Part part = alike.getFirst();
    return words.number(part.length().total())
        + " x "
        + words.number(part.width().total())
        + " x "
        + words.length(part.thickness())
        + " finished, "
        + part.material()
        + ". Make "
        + alike.size() * built.order().quantity()
        + ". Measure from the heavy edges only: "
        + "write TOP and FRONT on the wood before the first mark.";
  }

  private List<Block> page(BuiltCase built, List<Part> alike, Face face) {
    Part part = alike.getFirst();
    Drafter whole = words.fullPage();
    PanelView wide = view(whole, built, part, face);
    List<Block> tables = tables(built, alike, face);
    if (tables.isEmpty() || lines(wide) > MOST_LINES) {
      return Stream.concat(Stream.of(figure(wide, part, face)), tables.stream()).toList();
    }
    PanelView narrow = view(whole.wide(SHARE * (whole.width() - GAP)), built, part, face);
    return isUpright(part)
        ? List.of(new Block.Beside(List.of(figure(narrow, part, face)), SHARE, tables))
        : Stream.concat(Stream.of(figure(wide, part, face)), tables.stream()).toList();
  }

  /** Whether the drawing is higher than wide, so that tables find room beside it. */
  private static boolean isUpright(Part part) {
    return part.lengthAxis() == Axis.Z;
  }

  private List<Block> tables(BuiltCase built, List<Part> alike, Face face) {
    PanelView view = view(words.fullPage(), built, alike.getFirst(), face);
    List<Block> tables = new ArrayList<>(new PanelTables(words, alike.getFirst()).blocks(view));
    if (view.grid().isPresent()) {
      tables.addAll(new HoleTable(words, bored(built, alike, face)).blocks());
    }
    return tables;
  }

  /** Each of the parts with the pattern of the bay that its face looks into. */
  private List<HoleTable.Bored> bored(BuiltCase built, List<Part> alike, Face face) {
    return alike.stream()
        .flatMap(
            part ->
                view(words.fullPage(), built, part, face).grid().stream()
                    .map(grid -> new HoleTable.Bored(part, grid)))
        .toList();
  }

  private static int lines(PanelView view) {
    return 2 * view.joints().size()
        + view.otherHoles().size()
        + view.grid().map(HoleTable::lines).orElse(0);
  }

  private PanelView view(Drafter drafter, BuiltCase built, Part part, Face face) {
    List<BayGrid> grids =
        plan.grids().stream().filter(g -> g.caseName().equals(built.order().name())).toList();
    return new PanelView(drafter, built, grids, part, face);
  }

  private static Block figure(PanelView view, Part part, Face face) {
    return new Block.Figure(view.draw(), caption(part, face, view));
  }

  private static String caption(Part part, Face face, PanelView view) {
    boolean inTables = view.grid().isPresent() || !view.otherHoles().isEmpty();
    return "Part "
        + part.mark()
        + " with its "
        + Words.lower(face)
        + " face towards you. Joints on the other face are dashed."
        + (inTables ? " Not every hole's distance is written; the tables have all." : "");
  }
}
