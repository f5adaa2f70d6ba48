package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.bench.Step;
import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Guide;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.plan.CaseProgram.Log;
import fourpin.plan.CaseWays.GuidedBoring;
import fourpin.plan.PlannedStep.FaceUp;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;

/**
 * The boring of rows through one guide: for each face how the panel lies, then each clamping as a
 * step of its own, so that its picture, its check and its box to tick stand together.
 */
final class GuidedRows {

  private final Job job;
  private final BuiltCase built;
  private final GuidedBoring boring;
  private final GuideSteps steps;
  private final String tryPlug;
  private final Log log;

  /**
   * @param tryPlug what is tried in the holes, in words
   */
  GuidedRows(Job job, BuiltCase built, GuidedBoring boring, String tryPlug, Log log) {
    this.job = job;
    this.built = built;
    this.boring = boring;
    this.steps = new GuideSteps(boring);
    this.tryPlug = tryPlug;
    this.log = log;
  }

  static Caution tool(GuidedBoring boring) {
    return switch (boring.method().how()) {
      case DRILL_PRESS -> Cautions.PRESS;
      case BY_HAND -> boring.way() == Way.ROUTER_GUIDE ? Cautions.PLUNGE : Cautions.DRILL;
    };
  }

  void bore(Part part) {
    List<Clamping> all = steps.clampings(part);
    for (Face face : all.stream().map(Clamping::face).distinct().toList()) {
      lie(part, face);
      all.stream().filter(c -> c.face() == face).forEach(c -> bore(part, c));
    }
  }

  private void lie(Part part, Face face) {
    add(
        part,
        face,
        Lying.words(built, part, face)
            + overhang()
            + held()
            + packing()
            + " Brush chips off before the guide is laid on or moved.",
        List.of(),
        bearing() + " After each row: " + tryPlug,
        List.of());
  }

  private void bore(Part part, Clamping clamping) {
    add(
        part,
        clamping.face(),
        place(clamping) + " and bore. " + key(part, clamping),
        steps.bore(part, clamping),
        lastHole(clamping),
        List.of(tool(boring), Cautions.DUST));
  }

  private static String place(Clamping clamping) {
    return clamping.isMovedAlong()
        ? "Clamp the guide in its first place, at both ends,"
        : "Clamp the guide at both ends";
  }

  private void add(
      Part part, Face face, String words, List<Step> typed, String check, List<Caution> cautions) {
    List<FaceUp> sheet = List.of(new FaceUp(part.mark(), face));
    log.add(Stage.BORE, List.of(part), sheet, words, typed, check, cautions);
  }

  /**
   * The block stands proud of the side that lies on the panel, perhaps by more than its thickness.
   */
  private String overhang() {
    return guide().block().isZero() ? "" : " The block hangs down over the edge of the bench.";
  }

  private String held() {
    return switch (boring.method().how()) {
      case DRILL_PRESS ->
          " Panel and guide go under the drill press together, both ends held up level with the"
              + " table: bring each hole of the guide under the bit.";
      case BY_HAND -> "";
    };
  }

  private String packing() {
    return boring.way() == Way.ROUTER_GUIDE
        ? " Where the router's base is wider than the guide, lay a packing strip "
            + text(guide().thickness())
            + " thick, as thick as the guide, alongside it; keep clamps out of the base's way."
        : "";
  }

  private String bearing() {
    return guide().block().isZero()
        ? "Before each row: the guide's end stands on what is below along its whole width."
        : "Before each row: block or spacer bears on the end along the guide's whole width, but for"
            + " a rabbet or groove that runs out there.";
  }

  /** Numbers on the guide and numbers of the bay, at the ends of what is bored. */
  private String key(Part part, Clamping clamping) {
    List<Length> bored = clamping.bored(guide());
    int first = clamping.reaches().getFirst().holes().getFirst();
    int last = clamping.reaches().getLast().holes().getLast();
    boolean moved = clamping.isMovedAlong();
    return "Its hole "
        + first
        + " makes level "
        + level(part, clamping, bored.getFirst())
        + " of the bay, hole "
        + last
        + (moved ? ", where the guide comes to last," : "")
        + " level "
        + level(part, clamping, bored.getLast())
        + ".";
  }

  private int level(Part part, Clamping clamping, Length fromEnd) {
    Length height = part.box().at(Face.BOTTOM).plus(fromEnd);
    BayGrid grid = steps.grid(clamping);
    return grid.levels().stream()
        .filter(l -> l.height().equals(height))
        .findFirst()
        .map(Level::number)
        .orElseThrow();
  }

  /** What a rule says when the row is done; a row that began one hole off is noticed here. */
  private String lastHole(Clamping clamping) {
    Length last = clamping.bored(guide()).getLast();
    return switch (clamping.bearing()) {
      case Bearing.End _ -> lastHole("the index end", last);
      case Bearing.PanelBelow(String mark, Length spacer) ->
          lastHole(mark, last.minus(clamping.along()).plus(spacer));
    };
  }

  private String lastHole(String from, Length distance) {
    return "From " + from + " to the centre of the last hole: " + text(distance) + ".";
  }

  private Guide guide() {
    return boring.method().guide();
  }

  private String text(Length length) {
    return job.style().text(length);
  }
}
