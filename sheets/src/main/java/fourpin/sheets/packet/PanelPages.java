package fourpin.sheets.packet;

import fourpin.boring.BayGrid;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.plan.Plan;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.PanelKinds;
import fourpin.sheets.drawings.PanelView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.pages.Prose;
import fourpin.sheets.pages.Table;
import fourpin.sheets.pages.Table.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A page for each different panel that something is cut or bored in, with its holes in a table. */
final class PanelPages {

  /** Holes stand side by side in so many columns. */
  private static final int SIDE_BY_SIDE = 3;

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

  private List<Block> pages(BuiltCase built, List<Part> alike) {
    Part part = alike.getFirst();
    List<Block> blocks = new ArrayList<>();
    for (Face face : PanelKinds.facesToDraw(part)) {
      blocks.add(new Block.NewPage());
      blocks.add(new Block.Heading(title(built, alike, face)));
      blocks.add(Block.Paragraph.of(size(built, alike)));
      blocks.addAll(page(built, part, face));
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

  private List<Block> page(BuiltCase built, Part part, Face face) {
    Drafter whole = words.fullPage();
    PanelView wide = view(whole, built, part, face);
    Optional<BayGrid> grid = wide.grid();
    if (grid.isEmpty()) {
      return List.of(figure(wide, part, face));
    }
    List<Block> holes = holes(part, grid.get());
    if (lines(grid.get()) > MOST_LINES) {
      return Stream.concat(Stream.of(figure(wide, part, face)), holes.stream()).toList();
    }
    PanelView narrow = view(whole.wide(SHARE * (whole.width() - GAP)), built, part, face);
    return List.of(new Block.Beside(List.of(figure(narrow, part, face)), SHARE, holes));
  }

  private PanelView view(Drafter drafter, BuiltCase built, Part part, Face face) {
    List<BayGrid> grids =
        plan.grids().stream().filter(g -> g.caseName().equals(built.order().name())).toList();
    return new PanelView(drafter, built, grids, part, face);
  }

  private static Block figure(PanelView view, Part part, Face face) {
    return new Block.Figure(view.draw(), caption(part, face));
  }

  private static String caption(Part part, Face face) {
    return "Part "
        + part.mark()
        + " with its "
        + Words.lower(face)
        + " face towards you. Joints on the other face are dashed. Where there is no room for every hole's distance, "
        + "the table has it.";
  }

  private List<Block> holes(Part part, BayGrid grid) {
    Length foot = part.box().low().z();
    String datum =
        foot.isZero()
            ? "The lower end is the foot of the case."
            : "The lower end lies " + words.length(foot) + " above the foot of the case.";
    String rows =
        Words.list(
            grid.rows().stream()
                .map(
                    r ->
                        Words.lower(r.name())
                            + " row "
                            + words.length(r.y().minus(part.box().low().y())))
                .toList());
    return List.of(
        new Block.Paragraph(
            Prose.bold("Holes of bay " + grid.bay() + ": ")
                .then(
                    Prose.plain(
                        words.length(grid.diameter())
                            + " across, "
                            + words.length(grid.depth())
                            + " deep, "
                            + rows
                            + " from the front edge. "
                            + datum))),
        table(part, grid));
  }

  private static int lines(BayGrid grid) {
    return Math.ceilDiv(grid.levels().size(), SIDE_BY_SIDE);
  }

  /** Number and distance from the lower end, column beside column. */
  private Table table(Part part, BayGrid grid) {
    int lines = lines(grid);
    List<Table.Column> columns =
        IntStream.range(0, SIDE_BY_SIDE)
            .boxed()
            .flatMap(_ -> Stream.of(Table.right("Hole"), Table.right("Up from end")))
            .toList();
    List<Row> rows =
        IntStream.range(0, lines).mapToObj(line -> row(part, grid, line, lines)).toList();
    return new Table(columns, rows);
  }

  private Row row(Part part, BayGrid grid, int line, int lines) {
    List<Prose> cells = new ArrayList<>();
    for (int column = 0; column < SIDE_BY_SIDE; column++) {
      int index = column * lines + line;
      boolean there = index < grid.levels().size();
      cells.add(Prose.plain(there ? hole(grid, index) : ""));
      cells.add(Prose.plain(there ? distance(part, grid, index) : ""));
    }
    return new Row(Table.Kind.ITEM, cells);
  }

  /** The hole's number, with a mark where a shelf lies on it first. */
  private static String hole(BayGrid grid, int index) {
    int number = grid.levels().get(index).number();
    boolean seat = grid.seats().stream().anyMatch(s -> s.level() == number);
    return number + (seat ? " shelf" : "");
  }

  private String distance(Part part, BayGrid grid, int index) {
    return words.number(grid.levels().get(index).height().minus(part.box().low().z()));
  }
}
