package fourpin.sheets.packet;

import fourpin.bench.Caution;
import fourpin.boring.BayGrid;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Method;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.DrillingView;
import fourpin.sheets.drawings.PanelView;
import fourpin.sheets.drawings.RowsView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.paint.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A sheet to take to the bench for each face of each panel that is bored. */
final class DrillingPages {

  /** Of the width that pictures get beside the steps. */
  private static final double LEAST_SHARE = 0.55;

  private static final double MOST_SHARE = 0.58;
  private static final double GAP = 5;

  /** Millimetres of a line of settings, of other lines, and of the frames round both. */
  private static final double SET_UP_LINE = 7.75;

  private static final double SET_UP_FRAME = 6.5;
  private static final double LINE = 4.9;
  private static final double CAUTION_FRAME = 11.5;

  /** Of a line across the page. */
  private static final int CAUTION_LETTERS = 105;

  /** Of pictures on sheets with so many words that they go on on the next page. */
  private static final double LEAST_HIGH = 80;

  /** Clampings whose pictures find room side by side. */
  private static final int MOST_BESIDE = 2;

  private final Plan plan;
  private final List<CaseBoring> borings;
  private final Words words;

  DrillingPages(Plan plan, List<CaseBoring> borings, Words words) {
    this.plan = plan;
    this.borings = List.copyOf(borings);
    this.words = words;
  }

  Optional<Section> section() {
    List<Block> blocks = new ArrayList<>();
    for (CaseBoring boring : borings) {
      BuiltCase built = built(boring);
      for (Part part : built.parts()) {
        for (Face face : List.of(Face.RIGHT, Face.LEFT)) {
          grid(boring, built, part, face)
              .ifPresent(
                  grid ->
                      blocks.addAll(sheet(new Bored(boring, built, part, face, grid, Lot.WHOLE))));
        }
      }
    }
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Section("Drilling sheets", blocks));
  }

  /**
   * A face that is bored.
   *
   * @param grid of the bay that it looks into
   */
  record Bored(CaseBoring boring, BuiltCase built, Part part, Face face, BayGrid grid, Lot lot) {

    private Bored with(Lot other) {
      return new Bored(boring, built, part, face, grid, other);
    }

    List<Clamping> clampings(Method.Guided guided) {
      return guided.clampings().stream()
          .filter(c -> c.part().equals(part.mark()) && c.face() == face)
          .toList();
    }
  }

  /** Which of the sheets of one face this is, counted from 1. */
  record Lot(int number, int of) {

    static final Lot WHOLE = new Lot(1, 1);

    boolean isLast() {
      return number == of;
    }
  }

  private BuiltCase built(CaseBoring boring) {
    return plan.cases().stream()
        .filter(c -> c.order().name().equals(boring.caseName()))
        .findFirst()
        .orElseThrow();
  }

  private static Optional<BayGrid> grid(CaseBoring boring, BuiltCase built, Part part, Face face) {
    return boring.grids().stream()
        .filter(g -> !g.levels().isEmpty())
        .filter(g -> upright(built.bays().get(g.bay() - 1), face).equals(part.mark()))
        .findFirst();
  }

  private static String upright(BaySpace bay, Face face) {
    return face == Face.RIGHT ? bay.left() : bay.right();
  }

  /** Nothing for ways that bore no rows into panels. */
  private List<Block> sheet(Bored bored) {
    return switch (bored.boring.method()) {
      case Method.Guided guided -> inLots(bored, guided);
      case Method.Marked marked ->
          rows(bored, RowsView.Aid.STICK, new DrillingWords(words).marked(bored, marked));
      case Method.Programmed programmed ->
          rows(bored, RowsView.Aid.COORDINATES, new ProgramWords(words, bored).told(programmed));
      case Method.Grooved grooved -> grooved(bored, grooved);
      case Method.ScrewedOn _, Method.Blanks _ -> List.of();
    };
  }

  /** More clampings than find room side by side go on on another sheet. */
  private List<Block> inLots(Bored bored, Method.Guided guided) {
    List<Clamping> all = bored.clampings(guided);
    int lots = Math.ceilDiv(all.size(), MOST_BESIDE);
    List<Block> blocks = new ArrayList<>();
    for (int lot = 0; lot < lots; lot++) {
      int to = Math.min(all.size(), (lot + 1) * MOST_BESIDE);
      List<Clamping> some = all.subList(lot * MOST_BESIDE, to);
      blocks.addAll(
          guided(
              bored.with(new Lot(lot + 1, lots)),
              new Method.Guided(guided.how(), guided.guide(), guided.bit(), some)));
    }
    return blocks;
  }

  private List<Block> guided(Bored bored, Method.Guided guided) {
    List<Clamping> clampings = bored.clampings(guided);
    if (clampings.isEmpty()) {
      return List.of();
    }
    DrillingWords.Told told = new DrillingWords(words).guided(bored, guided.guide(), clampings);
    Drawing drawing =
        new DrillingView(
                drafter(bored, told),
                bored.built,
                bored.part,
                bored.face,
                guided.guide(),
                clampings)
            .draw();
    return sheet(bored, drawing, told);
  }

  /** The panel with its grooves beside the very steps that cut them. */
  private List<Block> grooved(Bored bored, Method.Grooved grooved) {
    DrillingWords.Told told = new DrillingWords(words).grooved(grooved, onSheet(bored));
    Drawing drawing =
        new PanelView(
                drafter(bored, told), bored.built, bored.boring.grids(), bored.part, bored.face)
            .draw();
    return sheet(bored, drawing, told);
  }

  /** What is done to a face, where the steps name it. */
  private List<PlannedStep> onSheet(Bored bored) {
    PlannedStep.FaceUp up = new PlannedStep.FaceUp(bored.part.mark(), bored.face);
    return plan.steps().stream()
        .filter(s -> s.caseName().equals(bored.boring.caseName()))
        .filter(s -> s.sheet().contains(up))
        .toList();
  }

  private List<Block> rows(Bored bored, RowsView.Aid aid, DrillingWords.Told told) {
    Drawing drawing =
        new RowsView(drafter(bored, told), bored.built, bored.part, bored.face, aid).draw();
    return sheet(bored, drawing, told);
  }

  /** The room that settings and cautions leave to the pictures. */
  private Drafter drafter(Bored bored, DrillingWords.Told told) {
    Drafter whole = words.fullPage();
    double settings = SET_UP_FRAME + told.setUpLines(whole.width()) * SET_UP_LINE;
    double high = Math.max(LEAST_HIGH, whole.height() - settings - cautioned(bored));
    return told.isShort()
        ? whole.wide(MOST_SHARE * (whole.width() - GAP)).high(high)
        : whole.high(Math.max(LEAST_HIGH, high - told.linesAcross() * LINE));
  }

  private double cautioned(Bored bored) {
    return CAUTION_FRAME
        + cautions(bored).stream()
            .mapToInt(c -> c.hazard().length() + c.text().length())
            .mapToDouble(letters -> LINE * Math.ceilDiv(letters, CAUTION_LETTERS))
            .sum();
  }

  /** Of the width, what a drawing takes. */
  private double share(Drawing drawing) {
    double taken = drawing.extent().width() / (words.fullPage().width() - GAP);
    return Math.clamp(taken, LEAST_SHARE, MOST_SHARE);
  }

  private List<Block> sheet(Bored bored, Drawing drawing, DrillingWords.Told told) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.NewPage());
    blocks.add(new Block.Heading(title(bored)));
    blocks.add(told.setUp());
    Block figure = new Block.Figure(drawing, "");
    List<Block> beside = new ArrayList<>();
    beside.add(new Block.Steps(told.steps()));
    beside.addAll(told.tables());
    beside.addAll(copies(bored));
    if (told.isShort()) {
      blocks.add(new Block.Beside(List.of(figure), share(drawing), beside));
    } else {
      blocks.add(figure);
      blocks.addAll(beside);
    }
    blocks.addAll(new CautionSigns().at(cautions(bored)));
    return blocks;
  }

  private static String title(Bored bored) {
    return bored.built.order().name()
        + ": "
        + bored.part.name()
        + " "
        + bored.part.mark()
        + ", "
        + Words.lower(bored.face)
        + " face up, bay "
        + bored.grid.bay()
        + (bored.lot.of == 1 ? "" : ", sheet " + bored.lot.number + " of " + bored.lot.of);
  }

  private static List<Block> copies(Bored bored) {
    int copies = bored.built.order().quantity();
    if (copies == 1) {
      return List.of();
    }
    String all =
        Stream.iterate(1, n -> n + 1).limit(copies).map(n -> " " + n).reduce("", String::concat);
    return List.of(Block.Paragraph.of("Strike out each copy that is bored and checked:" + all));
  }

  private boolean isGrooved(Bored bored, PlannedStep step) {
    return bored.boring.method() instanceof Method.Grooved && onSheet(bored).contains(step);
  }

  /** Those of boring this panel; what was cautioned at making the guide stands at that step. */
  private List<Caution> cautions(Bored bored) {
    return plan.steps().stream()
        .filter(s -> s.stage() == PlannedStep.Stage.BORE || isGrooved(bored, s))
        .filter(s -> s.caseName().equals(bored.boring.caseName()))
        .filter(s -> s.parts().contains(bored.part.mark()))
        .flatMap(s -> s.cautions().stream())
        .distinct()
        .toList();
  }
}
