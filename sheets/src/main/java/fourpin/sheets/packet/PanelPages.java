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
import fourpin.sheets.pages.Measure;
import fourpin.sheets.pages.Prose;
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

  /** Of tables beside a drawing that shares its page. */
  private static final double FEW = 60;

  private static final double HALF_PAGE = 85;

  /** The same for both faces side by side. */
  private static final double BOTH_SHARE = 0.62;

  private static final double EQUAL = 0.5;

  private static final double MOST_SMALLER = 1.5;

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

  /** A bored panel has a page of its own, for both faces where they find room side by side. */
  private List<Block> pages(BuiltCase built, List<Part> alike) {
    List<Face> faces = PanelKinds.facesToDraw(alike.getFirst());
    Optional<List<Block>> both =
        isUpright(alike.getFirst()) ? both(built, alike, faces) : Optional.empty();
    return both.orElseGet(
        () -> faces.stream().flatMap(face -> one(built, alike, face).stream()).toList());
  }

  private Optional<List<Block>> both(BuiltCase built, List<Part> alike, List<Face> faces) {
    if (faces.size() != 2) {
      return Optional.empty();
    }
    Part part = alike.getFirst();
    Drafter whole = words.fullPage();
    double left = BOTH_SHARE * (whole.width() - GAP);
    Drafter half = whole.wide((left - GAP) / 2);
    if (!faces.stream().allMatch(face -> isLarge(built, part, face, half))) {
      return Optional.empty();
    }
    List<Block> figures =
        faces.stream().map(f -> figure(view(half, built, part, f), part, f)).toList();
    List<Block> tables = ofBoth(built, alike, faces);
    List<Block> small = List.of(new Block.Columns(1, Block.Print.SMALL, tables));
    Block drawn = new Block.Beside(figures.subList(0, 1), EQUAL, figures.subList(1, 2));
    List<Block> page =
        List.of(
            new Block.Heading(title(built, alike)),
            Block.Paragraph.of(size(built, alike)),
            new Block.Beside(List.of(drawn), BOTH_SHARE, small));
    return Measure.height(small, whole.width() - GAP - left) > whole.height()
        ? Optional.empty()
        : Optional.of(List.of(new Block.Together(page)));
  }

  /** Whether a face is not much smaller than on a page of its own. */
  private boolean isLarge(BuiltCase built, Part part, Face face, Drafter half) {
    Drafter whole = words.fullPage();
    Drafter alone = whole.wide(SHARE * (whole.width() - GAP));
    return view(half, built, part, face).draw().scale().real()
        <= MOST_SMALLER * view(alone, built, part, face).draw().scale().real();
  }

  /** Holes that are the same in both faces stand once. */
  private List<Block> ofBoth(BuiltCase built, List<Part> alike, List<Face> faces) {
    List<Block> blocks = new ArrayList<>();
    List<HoleTable> holes = new ArrayList<>();
    for (Face face : faces) {
      List<Block> joints = joints(built, alike, face);
      Optional<HoleTable> of = holes(built, alike, face);
      if (!joints.isEmpty()) {
        blocks.add(new Block.Paragraph(Prose.bold(Words.sentence(Words.lower(face)) + " face up")));
        blocks.addAll(joints);
      }
      of.ifPresent(holes::add);
    }
    boolean same = holes.size() == 2 && holes.getFirst().isLike(holes.getLast());
    List<HoleTable> told = same ? List.of(holes.getFirst().with(holes.getLast())) : holes;
    told.forEach(table -> blocks.addAll(table.blocks()));
    return blocks;
  }

  private List<Block> one(BuiltCase built, List<Part> alike, Face face) {
    List<Block> blocks = new ArrayList<>();
    List<Block> page = new ArrayList<>();
    page.add(new Block.Heading(title(built, alike) + ", " + Words.lower(face) + " face up"));
    page.add(Block.Paragraph.of(size(built, alike)));
    page.addAll(page(built, alike, face));
    if (view(words.fullPage(), built, alike.getFirst(), face).grid().isPresent()) {
      blocks.add(new Block.NewPage());
    }
    blocks.add(new Block.Together(page));
    return blocks;
  }

  private static String title(BuiltCase built, List<Part> alike) {
    return built.order().name()
        + ": "
        + Words.list(alike.stream().map(part -> part.name() + " " + part.mark()).toList());
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
    double width = SHARE * (whole.width() - GAP);
    boolean beside =
        isUpright(part)
            && !tables.isEmpty()
            && lines(wide) <= MOST_LINES
            && Measure.height(tables, whole.width() - GAP - width) <= whole.height();
    if (!beside) {
      PanelView lying = view(isUpright(part) ? whole : whole.high(HALF_PAGE), built, part, face);
      return Stream.concat(Stream.of(figure(lying, part, face)), tables.stream()).toList();
    }
    boolean few = wide.grid().isEmpty() && Measure.height(tables, width) < FEW;
    Drafter room = few ? whole.high(HALF_PAGE) : whole;
    PanelView narrow = view(room.wide(width), built, part, face);
    return List.of(new Block.Beside(List.of(figure(narrow, part, face)), SHARE, tables));
  }

  /** Whether the drawing is higher than wide, so that tables find room beside it. */
  private static boolean isUpright(Part part) {
    return part.lengthAxis() == Axis.Z;
  }

  private List<Block> tables(BuiltCase built, List<Part> alike, Face face) {
    List<Block> tables = new ArrayList<>(joints(built, alike, face));
    holes(built, alike, face).ifPresent(holes -> tables.addAll(holes.blocks()));
    return tables;
  }

  private List<Block> joints(BuiltCase built, List<Part> alike, Face face) {
    return new PanelTables(words, alike)
        .blocks(view(words.fullPage(), built, alike.getFirst(), face));
  }

  private Optional<HoleTable> holes(BuiltCase built, List<Part> alike, Face face) {
    List<HoleTable.Bored> bored = bored(built, alike, face);
    return bored.isEmpty() ? Optional.empty() : Optional.of(new HoleTable(words, bored));
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
