package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.BayGrid.Run;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Support;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.PlannedStep.Stage;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is fastened to the uprights, or pressed into them, to carry shelves. */
final class SupportSteps {

  private final BuiltCase built;
  private final LengthStyle style;

  SupportSteps(BuiltCase built, LengthStyle style) {
    this.built = built;
    this.style = style;
  }

  List<PlannedStep> of(List<BayGrid> grids) {
    List<PlannedStep> steps = new ArrayList<>();
    for (BayGrid grid : grids) {
      words(grid).ifPresent(words -> steps.add(step(grid, words)));
    }
    return steps;
  }

  private PlannedStep step(BayGrid grid, String words) {
    BaySpace bay = built.bays().get(grid.bay() - 1);
    return new PlannedStep(
        Stage.ASSEMBLE,
        built.order().name(),
        List.of(bay.left(), bay.right()),
        words,
        List.of(),
        check(grid.support()),
        grid.support() instanceof Support.Standards
            ? List.of(Cautions.METAL, Cautions.DRILL)
            : List.of(Cautions.DRILL));
  }

  /** Pins are put in when the case stands. */
  private Optional<String> words(BayGrid grid) {
    return switch (grid.support()) {
      case Support.Pins _ -> Optional.empty();
      case Support.Sleeved _ ->
          Optional.of("Press the sleeves into the holes of bay " + grid.bay() + ", flanges home.");
      case Support.Standards standards ->
          Optional.of(
              "Bay "
                  + grid.bay()
                  + ": cut the standards to "
                  + lengths(grid, standards)
                  + ", all from the same numbered end; screw them on with that end down and"
                  + " standing on the panel below, "
                  + places(grid, Length.ZERO)
                  + " (middle of the standard), at least "
                  + style.text(settings().length(Setting.STANDARD_PLAY))
                  + " free above, "
                  + screws()
                  + "."
                  + joints(grid, standards));
      case Support.Cleats cleats ->
          Optional.of(
              "Bay "
                  + grid.bay()
                  + ": glue and screw the strips on, lower ends on the panel below, notches facing"
                  + " each other, "
                  + places(grid, cleats.width().over(2))
                  + " (front edge of the strip), "
                  + screws()
                  + ".");
    };
  }

  private String lengths(BayGrid grid, Support.Standards standards) {
    List<String> lengths = new ArrayList<>();
    for (Run run : grid.runs()) {
      List<String> pieces = pieces(run, standards).stream().map(style::text).toList();
      String made = pieces.size() == 1 ? "" : ", each of " + String.join(" and ", pieces);
      String length =
          style.text(pieces(run, standards).stream().reduce(Length::plus).orElseThrow());
      lengths.add(2 * grid.rows().size() + " of " + length + made);
    }
    return String.join(", ", lengths);
  }

  private List<Length> pieces(Run run, Support.Standards standards) {
    return new StandardCut(settings(), style).pieces(run, standards);
  }

  /** How to join a standard that is longer than it is sold. */
  private String joints(BayGrid grid, Support.Standards standards) {
    boolean joined = grid.runs().stream().anyMatch(r -> pieces(r, standards).size() > 1);
    return joined
        ? " A standard in pieces is butted: each piece stands with its numbered end on the one below,"
            + " which is cut square at a whole number of slots from its own numbered end, so that the"
            + " slots keep their pitch of "
            + style.text(standards.slotPitch())
            + " across the joint. Hold an offcut with slots beside the joint while the upper piece is"
            + " screwed on; put a screw near each end of each piece."
        : "";
  }

  private String screws() {
    return "a screw near each end and others no more than "
        + style.text(settings().length(Setting.SCREW_SPACING))
        + " apart";
  }

  private Settings settings() {
    return built.order().settings();
  }

  private String places(BayGrid grid, Length less) {
    List<String> places = new ArrayList<>();
    for (Row row : grid.rows()) {
      places.add(
          row.name().name().toLowerCase(Locale.ROOT)
              + " row "
              + style.text(row.y().minus(less))
              + " from the front edge");
    }
    return String.join(", ", places);
  }

  private static String check(Support support) {
    return switch (support) {
      case Support.Standards _ ->
          "The same number stands upright at the bottom of all standards of the bay, and a square"
              + " laid across two of them touches the same slots.";
      case Support.Cleats _ -> "A cleat drops into every pair of notches and lies level.";
      case Support.Pins _, Support.Sleeved _ -> "A pin goes into every sleeve.";
    };
  }
}
