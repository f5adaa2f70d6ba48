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
import fourpin.sheets.drawings.StickView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Booklet.Section;
import fourpin.sheets.paint.Drawing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** A sheet to take to the bench for each face of each panel that is bored. */
final class DrillingPages {

  private static final double SHARE = 0.57;
  private static final double GAP = 5;

  /** For the cautions below picture and settings. */
  private static final double CAUTIONS = 45;

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
              .ifPresent(grid -> blocks.addAll(sheet(new Bored(boring, built, part, face, grid))));
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
  record Bored(CaseBoring boring, BuiltCase built, Part part, Face face, BayGrid grid) {

    List<Clamping> clampings(Method.Guided guided) {
      return guided.clampings().stream()
          .filter(c -> c.part().equals(part.mark()) && c.face() == face)
          .toList();
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
      case Method.Guided guided -> guided(bored, guided);
      case Method.Marked marked ->
          sheet(bored, stick(bored), new DrillingWords(words).marked(bored, marked));
      case Method.Programmed programmed ->
          sheet(bored, stick(bored), new DrillingWords(words).programmed(bored, programmed));
      case Method.Grooved _, Method.ScrewedOn _, Method.Blanks _ -> List.of();
    };
  }

  private List<Block> guided(Bored bored, Method.Guided guided) {
    List<Clamping> clampings = bored.clampings(guided);
    return clampings.isEmpty()
        ? List.of()
        : sheet(
            bored,
            new DrillingView(
                    drafter(), bored.built, bored.part, bored.face, guided.guide(), clampings)
                .draw(),
            new DrillingWords(words).guided(bored, guided.guide(), clampings));
  }

  private Drawing stick(Bored bored) {
    return new StickView(drafter(), bored.built, bored.part, bored.face).draw();
  }

  private Drafter drafter() {
    Drafter whole = words.fullPage();
    return whole.wide(SHARE * (whole.width() - GAP)).high(whole.height() - CAUTIONS);
  }

  private List<Block> sheet(Bored bored, Drawing drawing, DrillingWords.Told told) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.NewPage());
    blocks.add(new Block.Heading(title(bored)));
    Block figure = new Block.Figure(drawing, "");
    List<Block> beside = new ArrayList<>();
    beside.add(told.setUp());
    beside.add(new Block.Steps(told.steps()));
    beside.addAll(copies(bored));
    if (told.isShort()) {
      blocks.add(new Block.Beside(List.of(figure), SHARE, beside));
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
        + bored.grid.bay();
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

  /** Those of boring this panel; what was cautioned at making the guide stands at that step. */
  private List<Caution> cautions(Bored bored) {
    return plan.steps().stream()
        .filter(s -> s.stage() == PlannedStep.Stage.BORE)
        .filter(s -> s.caseName().equals(bored.boring.caseName()))
        .filter(s -> s.parts().contains(bored.part.mark()))
        .flatMap(s -> s.cautions().stream())
        .distinct()
        .toList();
  }
}
