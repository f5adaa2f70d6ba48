package fourpin.plan;

import fourpin.bench.Caution;
import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.job.Back;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The steps of one case that put its pieces together and stand it up. */
final class AssemblySteps {

  private final Job job;
  private final BuiltCase built;
  private final Weights weights;
  private final List<BayGrid> grids;

  AssemblySteps(Job job, BuiltCase built, List<BayGrid> grids) {
    this.job = job;
    this.built = built;
    this.weights = new Weights(job);
    this.grids = grids;
  }

  List<PlannedStep> upToAssembly() {
    List<PlannedStep> steps = new ArrayList<>();
    steps.add(dryFit());
    steps.add(finish());
    steps.addAll(new SupportSteps(built, job.style()).of(grids));
    steps.add(assemble());
    faceFrame().ifPresent(steps::add);
    return steps;
  }

  private PlannedStep dryFit() {
    boolean bored = !BenchProgram.boresAfterAssembly(built) && hasShelves();
    String shelf =
        bored
            ? " Lay a strip as long as a shelf on four supports of each bay near the top, the"
                + " middle and the bottom: it must not rock."
            : "";
    return step(
        Stage.DRY_FIT,
        "Clamp the case together without glue." + shelf,
        "All joints close. The sides stand with the same ends down and their rows meet at the same"
            + " heights.",
        List.of());
  }

  private boolean hasShelves() {
    return built.parts().stream().anyMatch(p -> p.role() == Role.SHELF);
  }

  private PlannedStep finish() {
    return step(
        Stage.FINISH,
        "Take it apart, sand the fuzz off the holes, mask the glue surfaces and finish the inside"
            + " faces flat.",
        "A support goes into a finished test hole and comes out by hand.",
        List.of(Cautions.FINISH, Cautions.DUST));
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
                    0,
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
    Length across = overSides(Axis.X);
    Length up = overSides(Axis.Z);
    Length diagonal = Length.nearestMm(Math.hypot(across.mm(), up.mm())).in(job.unit());
    List<Caution> cautions = new ArrayList<>();
    double kg = built.parts().stream().mapToDouble(weights::of).sum();
    if (kg > liftLimit()) {
      cautions.add(lifting("The case", kg));
    }
    return step(
        Stage.ASSEMBLE,
        "Glue and clamp bottom, top, partitions and fixed shelves between the sides"
            + fastenings()
            + backWords(),
        "Both diagonals over the sides are equal, "
            + job.style().text(diagonal)
            + ", before the glue sets.",
        cautions);
  }

  private String fastenings() {
    boolean screwed =
        built.parts().stream()
            .flatMap(p -> p.features().stream())
            .anyMatch(f -> f instanceof Feature.Hole h && h.use() == Feature.Hole.Use.SCREW);
    return screwed ? "; drive the screws into lead holes. " : ". ";
  }

  private String backWords() {
    return built
        .order()
        .back()
        .map(
            back ->
                back.kind() == Back.Kind.GROOVE
                    ? "Slide the back in before the case is closed: it squares the case."
                    : "The back goes on before the glue sets: it squares the case. Until it is"
                        + " cut, brace the case square.")
        .orElse("Without a back, brace the case square until the glue has set.");
  }

  private Length overSides(Axis axis) {
    Box left = built.part(built.bays().getFirst().left()).box();
    Box right = built.part(built.bays().getLast().right()).box();
    return left.around(right).size(axis);
  }

  /** Parts cut to the case as it came out. */
  PlannedStep measureOpenings(List<Part> parts) {
    List<String> clear = new ArrayList<>();
    for (BaySpace bay : built.bays()) {
      clear.add("bay " + bay.number() + ": planned " + job.style().text(bay.clear().size(Axis.X)));
    }
    return new PlannedStep(
        0,
        Stage.SHELVES,
        built.order().name(),
        parts.stream().map(Part::mark).toList(),
        "Measure the width of each bay at bottom, middle and top, front and back, and take the"
            + " smallest. What it differs from the plan, the parts that wait differ by in length.",
        clear,
        "",
        List.of());
  }

  List<PlannedStep> standing() {
    List<PlannedStep> steps = new ArrayList<>();
    steps.add(
        step(
            Stage.STAND,
            "Stand the case in its place, level it with shims from side to side and front to back,"
                + " and fasten it to the wall. Only then put the supports in and the shelves on.",
            "Each shelf lies on all its supports without rocking; if one rocks, level the case"
                + " before blaming the holes.",
            standingCautions()));
    return steps;
  }

  private List<Caution> standingCautions() {
    List<Caution> cautions = new ArrayList<>(List.of(Cautions.TIP));
    double kg = built.parts().stream().mapToDouble(weights::of).sum();
    if (kg > liftLimit()) {
      cautions.add(lifting("The case", kg));
    }
    return cautions;
  }

  /** A caution for parts that one person should not lift alone. */
  List<Caution> heavy(List<Part> parts) {
    return parts.stream()
        .filter(p -> weights.of(p) > liftLimit())
        .map(p -> lifting(p.mark(), weights.of(p)))
        .toList();
  }

  private Caution lifting(String what, double kg) {
    return Cautions.lifting(what + ", " + mass(kg), kg, liftLimit());
  }

  private double liftLimit() {
    return built.order().settings().number(Setting.LIFT_LIMIT);
  }

  private String mass(double kg) {
    return Quantity.of(kg, QuantityUnit.MASS).text(job.unit());
  }

  private PlannedStep step(Stage stage, String words, String check, List<Caution> cautions) {
    return new PlannedStep(
        0, stage, built.order().name(), List.of(), words, List.of(), check, cautions);
  }
}
