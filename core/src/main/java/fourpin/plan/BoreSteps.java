package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.bench.Step;
import fourpin.boring.BayGrid;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Gang;
import fourpin.boring.way.Guide;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Hand;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Support;
import fourpin.plan.CaseProgram.Log;
import fourpin.plan.CaseWays.GuidedBoring;
import fourpin.plan.CaseWays.HandBoring;
import fourpin.plan.CaseWays.Manner;
import fourpin.plan.PlannedStep.FaceUp;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The boring of the rows of one case: through guides, from marks, and by coordinates. */
final class BoreSteps {

  private static final String STICK_AGAIN =
      "Lay the stick on again when done: every hole on its mark, none too many; ";

  private final Job job;
  private final BuiltCase built;
  private final CaseWays ways;
  private final Sticks sticks;
  private final List<BayGrid> grids;
  private final Log log;
  private final Set<String> plugs = new TreeSet<>();
  private final Set<Guide> made = new HashSet<>();

  BoreSteps(Job job, BuiltCase built, CaseWays ways, Sticks sticks, List<BayGrid> grids, Log log) {
    this.job = job;
    this.built = built;
    this.ways = ways;
    this.sticks = sticks;
    this.grids = grids;
    this.log = log;
    grids.forEach(g -> plugs.add(g.support() instanceof Support.Sleeved ? "sleeve" : "pin"));
  }

  void bore(List<Part> parts) {
    ways.guided().forEach(boring -> guided(boring, parts));
    makeSticks(parts);
    ways.byHand().forEach(boring -> setStop(boring, parts));
    ways.gangs().forEach(gang -> squareAcross(gang, parts));
    for (Part part : parts) {
      marked(part);
      atPress(part);
      byMachine(part);
    }
  }

  private void guided(GuidedBoring boring, List<Part> parts) {
    GuideSteps steps = new GuideSteps(boring);
    List<Part> bored = parts.stream().filter(p -> !steps.clampings(p).isEmpty()).toList();
    if (bored.isEmpty()) {
      return;
    }
    GuideMaking making = new GuideMaking(job, log);
    if (made.add(boring.method().guide())) {
      making.make(built, boring, steps);
    }
    making.setBit(boring, steps, new StopSetting(job, plugs, ways));
    GuidedRows rows = new GuidedRows(job, built, boring, tryPlug(), log);
    bored.forEach(rows::bore);
  }

  private String tryPlug() {
    return "try a " + String.join(" or a ", plugs) + " in the first, the middle and the last hole.";
  }

  private void makeSticks(List<Part> parts) {
    List<Step> marked = sticks.steps(parts);
    if (marked.isEmpty()) {
      return;
    }
    log.add(
        Stage.BORE,
        List.of(),
        List.of(),
        "Make story sticks from straight strips, cut square at zero. ",
        marked,
        "Read every mark against a second rule from zero; then never measure a hole again, only"
            + " the stick.",
        List.of());
  }

  /** A stop on the bit is set and tried before any hole, as for a guide. */
  private void setStop(HandBoring boring, List<Part> parts) {
    if (parts.stream().noneMatch(part -> isBored(part, boring))) {
      return;
    }
    BitSetting bit = boring.bit();
    StopSetting stop = new StopSetting(job, plugs, ways);
    log.add(
        Stage.BORE,
        List.of(),
        List.of(),
        stop.words(bit, boring.grids()),
        List.of(new Step.SetBit(bit.tool(), bit.diameter(), bit.runs(), bit.stop())),
        stop.check(bit, ""),
        List.of(Cautions.DRILL, Cautions.DUST));
  }

  private static boolean isBored(Part part, HandBoring boring) {
    List<String> rows =
        boring.grids().stream().flatMap(g -> g.rows().stream().map(g::purpose)).toList();
    return part.features().stream()
        .anyMatch(f -> f instanceof Hole hole && rows.contains(hole.purpose()));
  }

  /** Both panels lie on the sheets of both faces. */
  private void squareAcross(Gang gang, List<Part> parts) {
    List<Part> pair =
        gang.panels().stream()
            .flatMap(l -> parts.stream().filter(p -> p.mark().equals(l.part())))
            .toList();
    if (pair.size() < gang.panels().size()) {
      return;
    }
    List<Step.Laid> laid = new ArrayList<>();
    for (int i = 0; i < pair.size(); i++) {
      laid.add(laid(pair.get(i), gang.panels().get(i)));
    }
    log.add(
        Stage.BORE,
        pair,
        gang.panels().stream().map(l -> new FaceUp(l.part(), l.face())).toList(),
        "Fix a straight strip across the bench as a stop and clamp both panels on the bench side by"
            + " side. Lay the stick along the joint and square the lines across with a square against"
            + " the stop, or with a straightedge set by it. ",
        List.of(new Step.SquareAcross(laid, sticks.across(gang))),
        "“FRONT” stands along the joint on both, no chip lies at the stop, and the last line is as"
            + " far from the stop at both outer edges.",
        List.of());
  }

  private static Step.Laid laid(Part part, Gang.Laid laid) {
    PieceLayout layout = PieceLayout.of(part);
    return new Step.Laid(
        part.mark(),
        layout.surface(laid.face()),
        layout.surface(Face.BOTTOM),
        laid.gap(),
        layout.surface(Face.FRONT));
  }

  /** Where the heights of the holes in one face come from, and how they are pricked. */
  private String heights(Part part, Face face) {
    return ways.isOnLine(part.mark(), face)
        ? "prick with a punch where rows and lines cross"
        : "mark its heights from the stick, prick every centre with a punch";
  }

  /** Cleat strips are bored as blanks, apart from the rest. */
  private void marked(Part part) {
    if (CleatBlank.isStrip(part)) {
      return;
    }
    add(
        part,
        Manner.BY_HAND,
        face ->
            " Draw each row with a gauge from the index edge, "
                + heights(part, face)
                + ", and bore with a stop on the bit."
                + sticks.key(part, face, grids),
        STICK_AGAIN,
        List.of(Cautions.DRILL, Cautions.DUST));
  }

  private void atPress(Part part) {
    add(
        part,
        Manner.DRILL_PRESS,
        face ->
            " Draw each row with a gauge from the index edge, "
                + heights(part, face)
                + ". Set the fence for each row: the line says which edge runs along it and how far the centre of the bit stands from it. Put"
                + " blocks under the panel where clamps must pass the table, and hold both ends of it"
                + " up level with the table. Set the depth stop and try it in scrap of the same stock. "
                + reserve(part, face)
                + sticks.key(part, face, grids),
        STICK_AGAIN,
        List.of(Cautions.PRESS, Cautions.DUST));
  }

  private void byMachine(Part part) {
    add(
        part,
        Manner.MACHINE,
        face ->
            coordinates(part, face)
                + " Try the depth in scrap of the same stock first. "
                + reserve(part, face),
        "Bore the first hole of each row, measure it from end and edge, then the rest; ",
        List.of(Cautions.MACHINE, Cautions.DUST));
  }

  /** What wood stays behind the bits that bore the rows of one face. */
  private String reserve(Part part, Face face) {
    StopSetting stop = new StopSetting(job, plugs, ways);
    return new StepWriter(part, sticks, ways)
        .bits(face).stream().map(bit -> stop.reserve(bit, grids)).collect(Collectors.joining(" "));
  }

  private String coordinates(Part part, Face up) {
    Hand hand = Lying.hand(part, up);
    return " Bore on the "
        + ways.machine().orElse("machine")
        + " by these coordinates, seen from above: zero is the lower "
        + hand.word()
        + " corner, the index edge lies at the "
        + hand.word()
        + " stop, and distances from it grow to the "
        + hand.other().word()
        + ". When the panel is turned over sideways, the same end stays at its stop and the index"
        + " edge goes from one side stop to the other.";
  }

  /** A step for each face: panels with the same figures are mirrored, and partitions are both. */
  private void add(
      Part part, Manner manner, Function<Face, String> how, String check, List<Caution> cautions) {
    StepWriter writer = new StepWriter(part, sticks, ways);
    for (Face face : writer.faces(manner)) {
      log.add(
          Stage.BORE,
          List.of(part),
          List.of(new FaceUp(part.mark(), face)),
          Lying.words(built, part, face) + how.apply(face),
          writer.supports(manner, face),
          check + tryPlug(),
          cautions);
    }
  }
}
