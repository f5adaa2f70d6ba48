package fourpin.plan;

import fourpin.bench.Step;
import fourpin.bench.Step.Against;
import fourpin.bench.Surface;
import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Use;
import fourpin.boring.way.Spacers;
import fourpin.boring.way.Spacers.Kind;
import fourpin.boring.way.Spacers.Spacer;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.plan.CaseWays.GuidedBoring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Making a guide, setting its bit and boring through it, as typed steps. */
final class GuideSteps {

  private final GuidedBoring boring;
  private final Guide guide;
  private final Spacers spacers;

  GuideSteps(GuidedBoring boring) {
    this.boring = boring;
    this.guide = boring.method().guide();
    this.spacers = Spacers.of(boring.method());
  }

  List<Step> make() {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step.MakeGuide(
            guide.mark(),
            guide.length(),
            guide.width(),
            guide.thickness(),
            guide.block(),
            guide.holes().stream().map(GuideSteps::hole).toList()));
    List<Integer> masked = masked();
    if (!masked.isEmpty()) {
      steps.add(new Step.MaskHoles(guide.mark(), masked));
    }
    return steps;
  }

  /** What keeps the guide off ends and edges. */
  List<Step> spacers(BuiltCase built) {
    return spacers.list().stream().<Step>map(s -> spacer(built, s)).toList();
  }

  private Step spacer(BuiltCase built, Spacer spacer) {
    return new Step.MakeSpacer(
        spacer.mark(), guide.mark(), stock(built, spacer), spacer.size(), spacer.length());
  }

  /**
   * Strips beside a guide that is made in the shop are as thick as it is, so that a router's base
   * lies on both; for the rest offcuts of the case do.
   */
  private String stock(BuiltCase built, Spacer spacer) {
    if (spacer.kind() == Kind.EDGE && guide.make() instanceof Guide.Make.Bored(String stock)) {
      return stock;
    }
    return boring.method().clampings().stream()
        .filter(c -> spacers.at(c).contains(spacer))
        .map(c -> "an offcut of " + built.part(c.part()).material())
        .findFirst()
        .orElseThrow();
  }

  private static Step.GuideHole hole(GuideHole hole) {
    return new Step.GuideHole(hole.number(), hole.along(), hole.across(), hole.diameter());
  }

  private List<Integer> masked() {
    return guide.holes().stream()
        .filter(h -> h.use() == Use.MASKED)
        .map(GuideHole::number)
        .toList();
  }

  Step bit() {
    BitSetting bit = boring.method().bit();
    return new Step.SetBit(bit.tool(), bit.diameter(), bit.runs(), bit.stop());
  }

  /** The clampings of the guide on one part, in the order of work. */
  List<Clamping> clampings(Part part) {
    return boring.method().clampings().stream().filter(c -> c.part().equals(part.mark())).toList();
  }

  /**
   * What is bored through the guide from one clamping. Moved along, the block would lie on the
   * panel; it is on again when the row is done.
   */
  List<Step> bore(Part part, Clamping clamping) {
    List<Step> steps = new ArrayList<>();
    steps.add(clamp(part, clamping));
    steps.add(bore(part, clamping, clamping.reaches().getFirst()));
    boolean blocked = clamping.isMovedAlong() && guide.block().isPositive();
    if (blocked) {
      steps.add(new Step.TakeOffBlock(guide.mark()));
    }
    for (Reach reach : clamping.reaches()) {
      reach.step().ifPresent(s -> steps.addAll(movedAlong(part, clamping, reach, s)));
    }
    if (blocked) {
      steps.add(new Step.FitBlock(guide.mark()));
    }
    return steps;
  }

  private List<Step> movedAlong(Part part, Clamping clamping, Reach reach, Clamping.Step step) {
    return List.of(
        new Step.ShiftGuide(guide.mark(), part.mark(), step.pin(), step.into()),
        bore(part, clamping, reach));
  }

  private Step bore(Part part, Clamping clamping, Reach reach) {
    return new Step.BoreThrough(guide.mark(), part.mark(), reach.holes(), purpose(clamping));
  }

  private Step clamp(Part part, Clamping clamping) {
    PieceLayout layout = PieceLayout.of(part);
    boolean front = clamping.edge() == Face.FRONT;
    return new Step.ClampGuide(
        guide.mark(),
        part.mark(),
        layout.surface(clamping.face()),
        new Against(
            Surface.INDEX_END,
            layout.surface(Face.BOTTOM),
            clamping.along(),
            clamping.bearing() instanceof Bearing.End
                ? between(Kind.END, clamping)
                : Optional.empty()),
        new Against(
            front ? Surface.INDEX_EDGE : Surface.FAR_EDGE,
            layout.surface(clamping.edge()),
            clamping.across(),
            between(Kind.EDGE, clamping)),
        clamping.showing(),
        rest(clamping));
  }

  private Optional<Step.Rest> rest(Clamping clamping) {
    return switch (clamping.bearing()) {
      case Bearing.End _ -> Optional.empty();
      case Bearing.PanelBelow(String mark, _) ->
          Optional.of(new Step.Rest(mark, between(Kind.END, clamping)));
    };
  }

  private Optional<Step.Between> between(Kind kind, Clamping clamping) {
    return spacers.at(kind, clamping).map(s -> new Step.Between(s.mark(), s.size()));
  }

  BayGrid grid(Clamping clamping) {
    return boring.grids().stream().filter(g -> g.bay() == clamping.bay()).findFirst().orElseThrow();
  }

  /** The row that a clamping serves, as its holes are called. */
  String purpose(Clamping clamping) {
    BayGrid grid = grid(clamping);
    Row row =
        grid.rows().stream().filter(r -> r.name() == clamping.row()).findFirst().orElseThrow();
    return grid.purpose(row);
  }
}
