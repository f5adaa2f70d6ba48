package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.job.Job;
import fourpin.job.Kick;
import fourpin.measure.Length;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The steps of one case that put its pieces together and stand it up. */
final class AssemblySteps {

  /** One through each of its sides. */
  static final int SCREWS_OF_BLOCK = 2;

  private final Job job;
  private final BuiltCase built;
  private final Lifting lifting;
  private final BackSteps backs;
  private final List<BayGrid> grids;
  private final StackSteps stack;

  /**
   * @param cases all of the job
   */
  AssemblySteps(Job job, BuiltCase built, List<BayGrid> grids, List<BuiltCase> cases) {
    this.job = job;
    this.built = built;
    this.lifting = new Lifting(job, built);
    this.backs = new BackSteps(built, job.style());
    this.grids = grids;
    this.stack = new StackSteps(job, built, cases);
  }

  List<PlannedStep> upToAssembly() {
    List<PlannedStep> steps = new ArrayList<>();
    FitSteps fit = new FitSteps(built, grids);
    steps.add(fit.dry());
    steps.add(fit.finish());
    steps.addAll(new SupportSteps(built, job.style()).of(grids));
    steps.add(assemble());
    backs.onPartitions().ifPresent(steps::add);
    kicks().map(this::kick).forEach(steps::add);
    blocks().ifPresent(steps::add);
    faceFrame().ifPresent(steps::add);
    return steps;
  }

  private Optional<PlannedStep> faceFrame() {
    List<String> marks =
        built.parts().stream()
            .filter(p -> p.role() == Role.STILE || p.role() == Role.RAIL)
            .map(Part::mark)
            .toList();
    return built
        .order()
        .faceFrame()
        .map(
            frame ->
                new PlannedStep(
                    Stage.ASSEMBLE,
                    built.order().name(),
                    marks,
                    "Join the face frame flat on the bench, rails between stiles, and glue it to"
                        + " the front of the case: outer edges of the stiles "
                        + job.style().text(frame.overhang())
                        + " beyond the sides, upper edge of the bottom rail level with the bottom's"
                        + " upper face.",
                    List.of(),
                    "Both diagonals of the frame are equal before it goes on; every shelf can be put"
                        + " in through its opening.",
                    List.of(Cautions.SAW)));
  }

  private PlannedStep assemble() {
    return step(
        Stage.ASSEMBLE,
        "Glue and clamp bottom, top, partitions and fixed shelves between the sides"
            + fastenings()
            + backs.whileGluing(),
        "Both diagonals over the sides are equal, "
            + job.style().text(diagonal())
            + ", before the glue sets.",
        lifting.whole(built));
  }

  private Length diagonal() {
    double diagonal = Math.hypot(overSides(Axis.X).mm(), overSides(Axis.Z).mm());
    return Length.nearestMm(diagonal).in(job.unit());
  }

  private String fastenings() {
    boolean screwed = screws().anyMatch(h -> kicks().noneMatch(k -> holds(h, k)));
    return screwed ? "; drive the screws into lead holes. " : ". ";
  }

  private Stream<Hole> screws() {
    return built.parts().stream()
        .flatMap(p -> p.features().stream())
        .filter(f -> f instanceof Hole h && h.use() == Hole.Use.SCREW)
        .map(f -> (Hole) f);
  }

  private static boolean holds(Hole screw, Part part) {
    return screw.purpose().equals(part.name());
  }

  private Stream<Part> kicks() {
    return built.parts().stream().filter(p -> p.role() == Role.KICK);
  }

  private PlannedStep kick(Part kick) {
    return new PlannedStep(
        Stage.ASSEMBLE,
        built.order().name(),
        List.of(kick.mark()),
        "Put the %s between the sides under the bottom, %s, and drive its %s screws through the sides into lead holes."
            .formatted(kick.name(), place(kick), screws().filter(h -> holds(h, kick)).count()),
        List.of(),
        "Its lower edge is level with the feet of the sides.",
        List.of(Cautions.DRILL));
  }

  private String place(Part kick) {
    Length recess = built.order().kick().map(Kick::recess).orElse(Length.ZERO);
    Length front = kick.box().low().y();
    return !front.equals(recess)
        ? "its back face level with the bottom's back edge"
        : "its face "
            + (recess.isPositive()
                ? job.style().text(recess) + " behind the front edges of the sides"
                : "level with the front edges of the sides");
  }

  private Optional<PlannedStep> blocks() {
    List<String> marks =
        built.parts().stream().filter(p -> p.role() == Role.BLOCK).map(Part::mark).toList();
    return Optional.of(marks).filter(m -> !m.isEmpty()).map(this::blocks);
  }

  private PlannedStep blocks(List<String> marks) {
    return new PlannedStep(
        Stage.ASSEMBLE,
        built.order().name(),
        marks,
        "Glue each block on edge under the bottom, below the middle of its partition, its front end"
            + " against the kick and its back end level with the bottom's back edge, and drive a"
            + " screw slantwise through each side of it into the bottom, into lead holes, short of"
            + " the bottom's upper face.",
        List.of(),
        "Case upside down, a straightedge over both sides lies on every block.",
        List.of(Cautions.DRILL));
  }

  private Length overSides(Axis axis) {
    Box left = built.part(built.bays().getFirst().left()).box();
    Box right = built.part(built.bays().getLast().right()).box();
    return left.around(right).size(axis);
  }

  /** Pieces of the back, cut to the case as it came out. */
  PlannedStep measureBack(List<Part> pieces) {
    List<String> planned = new ArrayList<>();
    for (Part piece : pieces) {
      String wide = job.style().text(piece.box().size(Axis.X));
      String high = job.style().text(piece.box().size(Axis.Z));
      planned.add(piece.mark() + ": planned " + wide + " wide, " + high + " high");
    }
    return measure(
        pieces,
        "When the glue has set and the brace still holds, measure width and height of the place of"
            + " each piece of the back, at both ends and in the middle, and take the smallest less"
            + " the play that the cut list shows. Cut to that instead of the planned size.",
        planned);
  }

  /** Adjustable shelves, cut to the bays as they came out. */
  PlannedStep measureOpenings(List<Part> parts) {
    List<String> clear = new ArrayList<>();
    for (BaySpace bay : built.bays()) {
      clear.add("bay " + bay.number() + ": planned " + job.style().text(bay.clear().size(Axis.X)));
    }
    return measure(
        parts,
        "Measure the width of each bay at bottom, middle and top, front and back, and take the"
            + " smallest. If it is less than planned, cut the parts of that bay shorter by the"
            + " difference; if it is more, longer.",
        clear);
  }

  private PlannedStep measure(List<Part> parts, String words, List<String> planned) {
    List<String> marks = parts.stream().map(Part::mark).toList();
    return new PlannedStep(
        Stage.SHELVES, built.order().name(), marks, words, planned, "", List.of());
  }

  Optional<PlannedStep> fastenBack(List<Part> pieces) {
    return backs.fasten(pieces, diagonal());
  }

  List<PlannedStep> standing() {
    List<PlannedStep> on = stack.all();
    return on.isEmpty() ? List.of(onFloor()) : on;
  }

  private PlannedStep onFloor() {
    return step(
        Stage.STAND,
        "Stand the case in its place, level it with shims from side to side and front to back,"
            + " and fasten it to the wall. Only then put the supports in and the shelves on.",
        "Each shelf lies on all its supports without rocking; if one rocks, level the case"
            + " before blaming the holes.",
        standingCautions());
  }

  private List<Caution> standingCautions() {
    List<Caution> cautions = new ArrayList<>(List.of(Cautions.TIP));
    cautions.addAll(lifting.whole(built));
    return cautions;
  }

  private PlannedStep step(Stage stage, String words, String check, List<Caution> cautions) {
    return new PlannedStep(
        stage, built.order().name(), List.of(), words, List.of(), check, cautions);
  }
}
