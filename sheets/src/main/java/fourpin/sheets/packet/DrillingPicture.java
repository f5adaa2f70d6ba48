package fourpin.sheets.packet;

import fourpin.bench.Spacing;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.boring.BayGrid;
import fourpin.boring.PanelRows;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Method;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.PlannedStep.FaceUp;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.DrillingView;
import fourpin.sheets.drawings.PanelView;
import fourpin.sheets.drawings.RowsView;
import fourpin.sheets.pages.Block;
import fourpin.sheets.pages.Block.SetUp;
import fourpin.sheets.paint.Drawing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A picture of steps that are done to one face.
 *
 * @param setUp what is set, large enough to be read from the bench
 * @param tables that belong to it
 * @param ifRoom what the panel's page has too: the holes in a table
 */
record DrillingPicture(
    List<PlannedStep> steps,
    SetUp setUp,
    Function<Drafter, Drawing> picture,
    List<Block> tables,
    List<Block> ifRoom) {

  DrillingPicture {
    steps = List.copyOf(steps);
    tables = List.copyOf(tables);
    ifRoom = List.copyOf(ifRoom);
  }

  Drawing draw(Drafter drafter) {
    return picture.apply(drafter);
  }

  /**
   * All pictures of a sheet, together of all that is bored.
   *
   * @param most clampings of a guide in one picture
   */
  static List<DrillingPicture> of(Plan plan, Words words, DrillingSheet sheet, int most) {
    FaceUp up = sheet.faces().getFirst();
    CaseBoring boring = boring(plan, sheet, up);
    if (sheet.faces().size() > 1 && sheet.blanks().isEmpty()) {
      return List.of(new PairPicture(words, sheet).drawn());
    }
    if (!sheet.blanks().isEmpty()) {
      return List.of(new BlankPicture(words, sheet).of(boring.method()));
    }
    BayGrid grid = grid(boring, sheet, up);
    List<Block> holes =
        new HoleTable(words, List.of(new HoleTable.Bored(sheet.built().part(up.part()), grid)))
            .blocks();
    return switch (boring.method()) {
      case Method.Guided guided -> guided(words, sheet, up, guided, holes, most);
      case Method.Marked marked -> List.of(marked(words, sheet, up, marked.bit(), holes));
      case Method.Programmed programmed -> List.of(programmed(words, sheet, up, grid, programmed));
      case Method.Grooved grooved -> List.of(grooved(words, boring, sheet, up, grooved));
      case Method.ScrewedOn _, Method.Blanks _ ->
          throw new IllegalArgumentException("No rows are bored in the panels: " + sheet.title());
    };
  }

  private static CaseBoring boring(Plan plan, DrillingSheet sheet, FaceUp up) {
    return plan.borings().stream()
        .filter(b -> b.caseName().equals(sheet.built().order().name()))
        .filter(b -> b.grids().stream().anyMatch(g -> isLookedInto(g, sheet, up)))
        .findFirst()
        .orElseThrow();
  }

  private static BayGrid grid(CaseBoring boring, DrillingSheet sheet, FaceUp up) {
    return boring.grids().stream()
        .filter(g -> isLookedInto(g, sheet, up))
        .findFirst()
        .orElseThrow();
  }

  private static boolean isLookedInto(BayGrid grid, DrillingSheet sheet, FaceUp up) {
    OptionalInt bay = sheet.bay(up);
    return bay.isPresent() && bay.getAsInt() == grid.bay();
  }

  /** Each clamping is a step. */
  private static List<DrillingPicture> guided(
      Words words,
      DrillingSheet sheet,
      FaceUp up,
      Method.Guided guided,
      List<Block> holes,
      int most) {
    List<Clamping> clampings =
        guided.clampings().stream()
            .filter(c -> c.part().equals(up.part()) && c.face() == up.face())
            .toList();
    List<PlannedStep> steps = sheet.worked();
    List<DrillingPicture> pictures = new ArrayList<>();
    for (int from = 0; from < steps.size(); from += most) {
      int to = Math.min(steps.size(), from + most);
      pictures.add(
          guided(
              words, sheet, guided, clampings.subList(from, to), steps.subList(from, to), holes));
    }
    return pictures;
  }

  private static DrillingPicture guided(
      Words words,
      DrillingSheet sheet,
      Method.Guided guided,
      List<Clamping> clampings,
      List<PlannedStep> steps,
      List<Block> holes) {
    Clamping first = clampings.getFirst();
    List<SetUp.Line> lines = new ArrayList<>(bit(words, guided.bit()));
    lines.add(
        new SetUp.Line("Guide", guided.guide().mark() + ", side " + first.showing() + " showing"));
    List<Integer> numbers = steps.stream().map(PlannedStep::number).toList();
    Part part = sheet.built().part(first.part());
    return new DrillingPicture(
        steps,
        new SetUp(lines),
        drafter ->
            new DrillingView(
                    drafter, sheet.built(), part, first.face(), guided.guide(), clampings, numbers)
                .draw(),
        List.of(),
        holes);
  }

  private static DrillingPicture marked(
      Words words, DrillingSheet sheet, FaceUp up, BitSetting bit, List<Block> holes) {
    return new DrillingPicture(
        sheet.worked(),
        new SetUp(bit(words, bit)),
        rows(sheet, up, new RowsView.Aid.Stick(marks(sheet), fences(sheet))),
        List.of(),
        holes);
  }

  private static Function<Drafter, Drawing> rows(DrillingSheet sheet, FaceUp up, RowsView.Aid aid) {
    Part part = sheet.built().part(up.part());
    return drafter -> new RowsView(drafter, sheet.built(), part, up.face(), aid).draw();
  }

  /** Marks of the stick for every height of the face, as its steps have them. */
  static List<Integer> marks(DrillingSheet sheet) {
    return sheet.worked().stream()
        .flatMap(s -> s.typed().stream())
        .flatMap(s -> marks(s).stream())
        .distinct()
        .sorted()
        .toList();
  }

  /** Settings of the fence on the drill press, as the steps have them. */
  private static List<RowsView.Fence> fences(DrillingSheet sheet) {
    return sheet.worked().stream()
        .flatMap(s -> s.typed().stream())
        .flatMap(s -> s instanceof Step.BoreAtFence row ? Stream.of(row) : Stream.empty())
        .map(
            row ->
                new RowsView.Fence(
                    row.edge() == Surface.INDEX_EDGE ? Face.FRONT : Face.BACK, row.offset()))
        .distinct()
        .toList();
  }

  private static List<Integer> marks(Step step) {
    return switch (step) {
      case Step.BoreRow row -> marks(row.spacing());
      case Step.BoreAtFence row -> marks(row.spacing());
      default -> List.of();
    };
  }

  /** Lines that were squared across go by the numbers of the stick's marks. */
  private static List<Integer> marks(Spacing spacing) {
    return switch (spacing) {
      case Spacing.FromStick stick -> stick.numbers();
      case Spacing.OnLines lines -> lines.numbers();
      case Spacing.Each _ -> List.of();
    };
  }

  private static DrillingPicture programmed(
      Words words, DrillingSheet sheet, FaceUp up, BayGrid grid, Method.Programmed programmed) {
    return new DrillingPicture(
        sheet.worked(),
        new SetUp(List.of(new SetUp.Line("Machine", programmed.machine()))),
        rows(sheet, up, new RowsView.Aid.Coordinates()),
        new CoordinateTables(words, new PanelRows(grid, sheet.built().part(up.part())))
            .tables(programmed.bit()),
        List.of());
  }

  /** What the letters in the picture stand for is told under the steps. */
  private static DrillingPicture grooved(
      Words words, CaseBoring boring, DrillingSheet sheet, FaceUp up, Method.Grooved grooved) {
    Part part = sheet.built().part(up.part());
    String depths = String.join(", then ", grooved.depths().stream().map(words::length).toList());
    return new DrillingPicture(
        sheet.worked(),
        new SetUp(List.of(new SetUp.Line("Tool", grooved.tool()), new SetUp.Line("Depth", depths))),
        drafter -> view(drafter, boring, sheet, part, up).fill(),
        List.of(letters(view(words.fullPage(), boring, sheet, part, up))),
        List.of());
  }

  private static PanelView view(
      Drafter drafter, CaseBoring boring, DrillingSheet sheet, Part part, FaceUp up) {
    return new PanelView(drafter, sheet.built(), boring.grids(), part, up.face());
  }

  /** "b, e groove for standard, front row, bay 1; c dado for 1-F1". */
  private static Block letters(PanelView view) {
    Map<String, List<String>> alike = new LinkedHashMap<>();
    view.joints()
        .forEach(
            j ->
                alike
                    .computeIfAbsent(
                        Words.lower(j.channel().kind()) + " for " + j.channel().purpose(),
                        _ -> new ArrayList<>())
                    .add(j.letter()));
    String told =
        alike.entrySet().stream()
            .map(e -> String.join(", ", e.getValue()) + " " + e.getKey())
            .collect(Collectors.joining("; "));
    return Block.Paragraph.of("In the picture: " + told + ".");
  }

  static List<SetUp.Line> bit(Words words, BitSetting bit) {
    Length diameter = bit.diameter();
    String to =
        bit.over().isZero()
            ? words.length(bit.stop())
            : words.sum(bit.stopSum()) + " " + words.unit();
    return List.of(
        new SetUp.Line("Bit", words.diameter(diameter) + ", " + bit.tool()),
        new SetUp.Line(
            "Stop", to + (bit.point().isZero() ? "" : ", to the full diameter, not to the point")));
  }
}
