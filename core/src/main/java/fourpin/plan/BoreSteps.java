package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.bench.Step;
import fourpin.bench.Surface;
import fourpin.boring.BayGrid;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.Make;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Hand;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Support;
import fourpin.job.Way;
import fourpin.measure.Length;
import fourpin.plan.CaseProgram.Log;
import fourpin.plan.CaseWays.GuidedBoring;
import fourpin.plan.CaseWays.Manner;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The boring of the rows of one case: through guides, from marks, and by coordinates. */
final class BoreSteps {

  private static final String PANEL =
      "The panel's mark stands on its face, “FRONT” on its index edge, “BOTTOM” on its index end.";

  private static final String PROUD = "standing proud of both sides, so that it can be taken off";

  private static final String PROUD_BELOW =
      "standing proud only of the side that lies on the panel, flush with the other, because the"
          + " router's base passes over it; when the guide is turned, screw it on the other way up";

  private static final String OTHER_SIDE =
      "To come to the reverse turn the panel over sideways: the same end stays at its stop, the"
          + " index edge goes from one side stop to the other. ";

  private final Job job;
  private final CaseWays ways;
  private final Sticks sticks;
  private final Log log;
  private final Set<String> plugs = new TreeSet<>();
  private final Set<Guide> made = new HashSet<>();

  BoreSteps(Job job, CaseWays ways, Sticks sticks, List<BayGrid> grids, Log log) {
    this.job = job;
    this.ways = ways;
    this.sticks = sticks;
    this.log = log;
    grids.forEach(g -> plugs.add(g.support() instanceof Support.Sleeved ? "sleeve" : "pin"));
  }

  void bore(List<Part> parts) {
    ways.guided().forEach(boring -> guided(boring, parts));
    makeSticks(parts);
    for (Part part : parts) {
      marked(part);
      atPress(part);
      byMachine(part);
    }
  }

  private void guided(GuidedBoring boring, List<Part> parts) {
    GuideSteps steps = new GuideSteps(boring);
    List<Part> bored = parts.stream().filter(p -> !steps.bore(p).isEmpty()).toList();
    if (bored.isEmpty()) {
      return;
    }
    if (made.add(boring.method().guide())) {
      make(boring, steps);
    }
    setBit(boring, steps);
    for (Part part : bored) {
      log.add(
          Stage.BORE,
          List.of(part),
          "Clamp the guide as each line says and bore. "
              + held(boring)
              + packing(boring)
              + PANEL
              + " Brush the chips off before the"
              + " guide is laid on or moved.",
          steps.bore(part),
          bearing(boring) + lastHoles(part, boring) + tryPlug(),
          List.of(tool(boring), Cautions.DUST));
    }
  }

  private static Caution tool(GuidedBoring boring) {
    return switch (boring.method().how()) {
      case DRILL_PRESS -> Cautions.PRESS;
      case BY_HAND -> boring.way() == Way.ROUTER_GUIDE ? Cautions.PLUNGE : Cautions.DRILL;
    };
  }

  private static String held(GuidedBoring boring) {
    return switch (boring.method().how()) {
      case DRILL_PRESS ->
          "Panel and guide go under the drill press together, both ends held up level with the"
              + " table: bring each hole of the guide under the bit. ";
      case BY_HAND -> "";
    };
  }

  private String packing(GuidedBoring boring) {
    return boring.way() == Way.ROUTER_GUIDE
        ? "Where the router's base is wider than the guide, lay a packing strip "
            + text(boring.method().guide().thickness())
            + " thick, as thick as the guide, alongside it the whole row long; set the clamps where"
            + " the base does not come. "
        : "";
  }

  private void make(GuidedBoring boring, GuideSteps steps) {
    Guide guide = boring.method().guide();
    log.add(
        Stage.BORE,
        List.of(),
        "Make guide “"
            + guide.mark()
            + "”, one for all panels and copies. "
            + strip(guide)
            + block(boring)
            + pin(boring)
            + " Seen with its zero on the left and its index edge towards you, write A on the side"
            + " that shows and B on the other; write the numbers of the holes on both, and"
            + " FRONT EDGE along its index edge.",
        steps.make(),
        "Measure first, middle and last hole from zero again, and the distance of each from the"
            + " index edge. What runs in the holes goes into every one that is not masked.",
        List.of(Cautions.SAW, Cautions.SMALL, Cautions.DRILL, Cautions.DUST));
  }

  private String strip(Guide guide) {
    return switch (guide.make()) {
      case Make.Bored(String stock) ->
          "Cut a strip of "
              + stock
              + " ("
              + guide.material()
              + ") with straight edges, "
              + text(guide.length().plus(guide.block()))
              + " long, "
              + text(guide.width())
              + " wide; set every hole out from zero, never from hole to hole, and bore it square,"
              + " on a drill press if there is one.";
      case Make.Sold(String strip, int first) ->
          "Take “"
              + strip
              + "” ("
              + guide.material()
              + "): its hole "
              + first
              + ", counted from its end, becomes hole 1, "
              + text(guide.holes().getFirst().along())
              + " from zero.";
    };
  }

  private String block(GuidedBoring boring) {
    Guide guide = boring.method().guide();
    return guide.block().isZero()
        ? " Its index end, cut square, is zero."
        : " Screw a block "
            + text(guide.block())
            + " thick on behind zero, square to the index edge and "
            + (boring.way() == Way.ROUTER_GUIDE ? PROUD_BELOW : PROUD)
            + ": its stop face is zero.";
  }

  /** What holds the guide where it is moved along. */
  private String pin(GuidedBoring boring) {
    if (!boring.method().isMovedAlong()) {
      return "";
    }
    Length bored = boring.method().bit().diameter();
    Length inGuide = boring.method().guide().holes().getFirst().diameter();
    return inGuide.equals(bored)
        ? " For moving it along have a plain pin of " + text(bored) + " at hand."
        : " For moving it along make a stepped pin of metal or hard wood, by turning or by filing a"
            + " rod down in the chuck of a drill: "
            + text(inGuide)
            + " thick as far as the guide is thick, "
            + text(bored)
            + " thick below for the bored hole. A plain pin of "
            + text(bored)
            + " has "
            + text(inGuide.minus(bored))
            + " of play in the guide.";
  }

  private void setBit(GuidedBoring boring, GuideSteps steps) {
    BitSetting bit = boring.method().bit();
    log.add(
        Stage.BORE,
        List.of(),
        "Set the stop: hole "
            + text(bit.depth())
            + " + guide "
            + text(bit.over())
            + " = "
            + text(bit.stop())
            + ". The bit's point goes "
            + text(bit.point())
            + " deeper; "
            + text(bit.reserve())
            + " of wood stays behind it in the thinnest panel.",
        List.of(steps.bit()),
        "Bore through the guide into scrap of the same stock: the hole is "
            + text(bit.depth())
            + " deep to the full diameter and takes a "
            + String.join(" or a ", plugs)
            + ". Look at the stop again after every row.",
        List.of(tool(boring)));
  }

  private static String bearing(GuidedBoring boring) {
    boolean stands = boring.method().guide().block().isZero();
    return stands
        ? "Before each row: the guide's end stands on the panel below along its whole width. "
        : "Before each row: the block, or its spacer, bears on the lower end as wide as the guide"
            + " is, but for a rabbet or groove that runs out there; no chip between. ";
  }

  /** What a rule says when the row is done; a row that began one hole off is noticed here. */
  private String lastHoles(Part part, GuidedBoring boring) {
    Map<String, Length> last = new LinkedHashMap<>();
    for (Hole hole : holes(part)) {
      boolean here =
          boring.grids().stream()
              .anyMatch(g -> g.rows().stream().anyMatch(r -> g.purpose(r).equals(hole.purpose())));
      if (here) {
        Length from = hole.centre().z().minus(part.box().at(Face.BOTTOM));
        last.merge(hole.purpose(), from, Length::max);
      }
    }
    List<String> texts = new ArrayList<>();
    last.forEach((row, from) -> texts.add(text(from) + " in the " + row));
    return "After it, from the index end to the centre of the last hole: "
        + String.join(", ", texts)
        + ". ";
  }

  private static List<Hole> holes(Part part) {
    return part.features().stream()
        .filter(f -> f instanceof Hole h && h.use() == Hole.Use.SUPPORT)
        .map(f -> (Hole) f)
        .toList();
  }

  private String tryPlug() {
    return "Try a " + String.join(" or a ", plugs) + " in the first, the middle and the last hole.";
  }

  private void makeSticks(List<Part> parts) {
    List<Step> marked = sticks.steps(parts);
    if (marked.isEmpty()) {
      return;
    }
    log.add(
        Stage.BORE,
        List.of(),
        "Make story sticks from straight strips, cut square at zero. ",
        marked,
        "Read every mark against a second rule from zero; then never measure a hole again, only"
            + " the stick.",
        List.of());
  }

  /** Cleat strips are bored as blanks, apart from the rest. */
  private void marked(Part part) {
    if (CleatBlank.isStrip(part)) {
      return;
    }
    add(
        part,
        Manner.BY_HAND,
        "Draw each row with a gauge from the index edge, mark its heights from the stick,"
            + " prick every centre with a punch, and bore with a stop on the bit. ",
        "Lay the stick on again when done: every hole on its mark, none too many. " + tryPlug(),
        List.of(Cautions.DRILL, Cautions.DUST));
  }

  private void atPress(Part part) {
    add(
        part,
        Manner.DRILL_PRESS,
        "Mark the heights from the stick and prick them. Set the fence for each row: the line says"
            + " which edge runs along it and how far the centre of the bit stands from it. Put"
            + " blocks under the panel where clamps must pass the table, and hold both ends of it"
            + " up level with the table. Set the depth stop and try it in scrap of the same stock. "
            + PANEL,
        "Lay the stick on again when done: every hole on its mark, none too many. " + tryPlug(),
        List.of(Cautions.PRESS, Cautions.DUST));
  }

  private void byMachine(Part part) {
    add(
        part,
        Manner.MACHINE,
        "Bore on the "
            + ways.machine().orElse("machine")
            + " by these coordinates, seen from above with the index end towards you. "
            + zeros(part)
            + PANEL,
        "Bore the first hole of each row, measure it from end and edge, then the rest. "
            + tryPlug(),
        List.of(Cautions.MACHINE, Cautions.DUST));
  }

  /**
   * Panels with the same coordinates are mirrored: the index edge lies on one hand or the other.
   */
  private String zeros(Part part) {
    PieceLayout layout = PieceLayout.of(part);
    Set<Surface> bored = EnumSet.noneOf(Surface.class);
    holes(part).stream()
        .filter(hole -> ways.manner(hole) == Manner.MACHINE)
        .forEach(hole -> bored.add(layout.surface(hole.face())));
    String zeros = bored.stream().map(s -> zero(layout, s)).collect(Collectors.joining());
    return bored.size() > 1 ? zeros + OTHER_SIDE : zeros;
  }

  private static String zero(PieceLayout layout, Surface surface) {
    Face up = surface == Surface.FACE ? layout.face() : layout.face().opposite();
    Hand hand = Hand.of(up, layout.indexEnd(), layout.indexEdge());
    return "With "
        + surface.words()
        + " up zero is the lower "
        + hand.word()
        + " corner, index edge at the "
        + hand.word()
        + " stop, and distances from it grow to the "
        + hand.other().word()
        + ". ";
  }

  private void add(Part part, Manner manner, String start, String check, List<Caution> cautions) {
    List<Step> rows = new StepWriter(part, sticks, ways).supports(manner);
    if (!rows.isEmpty()) {
      log.add(Stage.BORE, List.of(part), start, rows, check, cautions);
    }
  }

  private String text(Length length) {
    return job.style().text(length);
  }
}
