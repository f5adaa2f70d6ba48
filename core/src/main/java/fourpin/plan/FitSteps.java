package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.casework.BuiltCase;
import fourpin.job.Support;
import fourpin.job.Support.Mounting;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Fitting dry and finishing, with the trial that suits what the shelves of the case lie on. */
final class FitSteps {

  private final BuiltCase built;
  private final List<Support> supports;
  private final boolean bored;

  FitSteps(BuiltCase built, List<BayGrid> grids) {
    this.built = built;
    this.supports = grids.stream().map(BayGrid::support).toList();
    boolean holes =
        supports.stream().anyMatch(s -> s instanceof Support.Pins || s instanceof Support.Sleeved);
    this.bored = holes && !BenchProgram.boresAfterAssembly(built);
  }

  PlannedStep dry() {
    return new PlannedStep(
        Stage.DRY_FIT,
        built.order().name(),
        List.of(),
        sentences("Clamp the case together without glue.", this::trial),
        List.of(),
        "All joints close. The sides stand with the same ends down"
            + (bored ? " and their rows meet at the same heights." : "."),
        List.of());
  }

  private String trial(Support support) {
    return switch (support) {
      case Support.Pins _ when bored ->
          "In each bay on pins, put pins into the holes of one height on both uprights, near the"
              + " bottom, the middle and the top, and lay a flat offcut as long as a shelf on"
              + " them: it must not rock.";
      case Support.Sleeved _ when bored ->
          "In each bay with sleeves, hold a straight batten from hole to hole of one height, near"
              + " the bottom, the middle and the top: a level on it stays in the middle.";
      case Support.Pins _, Support.Sleeved _ -> "";
      case Support.Standards s when s.mounting() == Mounting.LET_IN ->
          "Lay an offcut of the standard into every groove: it lies flush from end to end.";
      case Support.Standards _ ->
          "Hold a standard where it will stand in each bay: it goes in without bending.";
      case Support.Cleats _ ->
          "Hold each pair of notched strips in its place: a cleat in notches of one height lies"
              + " level.";
    };
  }

  PlannedStep finish() {
    return new PlannedStep(
        Stage.FINISH,
        built.order().name(),
        List.of(),
        "Take it apart, "
            + (bored ? "sand the fuzz off the holes, " : "")
            + "mask the glue surfaces and finish the inside faces flat.",
        List.of(),
        sentences("", this::finished),
        List.of(Cautions.FINISH, Cautions.DUST));
  }

  private String finished(Support support) {
    return switch (support) {
      case Support.Pins _ when bored ->
          "A pin goes into a finished test hole and comes out by hand.";
      case Support.Sleeved _ when bored -> "A sleeve goes into a finished test hole.";
      case Support.Pins _, Support.Sleeved _ -> "";
      case Support.Standards s when s.mounting() == Mounting.LET_IN ->
          "A standard still goes into a finished groove by hand.";
      case Support.Standards _ -> "";
      case Support.Cleats _ -> "A cleat still drops into a finished pair of notches.";
    };
  }

  /** Each sentence once, however many bays it holds for. */
  private String sentences(String start, Function<Support, String> words) {
    List<String> all = new ArrayList<>(List.of(start));
    supports.stream().map(words).distinct().forEach(all::add);
    return all.stream().filter(s -> !s.isEmpty()).collect(Collectors.joining(" "));
  }
}
