package fourpin.plan;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.job.Back;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.PlannedStep.Stage;
import java.util.List;
import java.util.Optional;

/** How the back comes to the case: slid into its groove, or screwed on when the case has set. */
final class BackSteps {

  private final BuiltCase built;
  private final LengthStyle style;

  BackSteps(BuiltCase built, LengthStyle style) {
    this.built = built;
    this.style = style;
  }

  /** Screws all round one piece of a back that is not in a groove; none for other parts. */
  static long screws(BuiltCase built, Part part) {
    boolean fastened = built.order().back().filter(b -> b.kind() != Back.Kind.GROOVE).isPresent();
    if (!fastened || part.role() != Role.BACK) {
      return 0;
    }
    Length spacing = built.order().settings().length(Setting.SCREW_SPACING);
    Length round = part.box().size(Axis.X).plus(part.box().size(Axis.Z)).times(2);
    return Math.ceilDiv(round.picometres(), spacing.picometres());
  }

  /** What keeps the case square while its glue sets. */
  String whileGluing() {
    String brace = "Bring both diagonals to the same length and screw a brace across the case";
    return built
        .order()
        .back()
        .map(
            back ->
                back.kind() == Back.Kind.GROOVE
                    ? "Slide the back in before the case is closed"
                        + (glued() ? ", with glue in its grooves all round" : "")
                        + ": it squares the case."
                    : brace
                        + ", clear of the back's place, until the glue has set: the back is cut to"
                        + " measure after that and fastened then.")
        .orElse(brace + " until the glue has set: there is no back to keep it square.");
  }

  /** Fastens the pieces that were cut to measure. @param diagonal of the case, as planned */
  Optional<PlannedStep> fasten(List<Part> pieces, Length diagonal) {
    long screws = pieces.stream().mapToLong(p -> screws(built, p)).sum();
    return built
        .order()
        .back()
        .filter(_ -> screws > 0)
        .map(back -> step(pieces, words(back, screws), diagonal));
  }

  private String words(Back back, long screws) {
    return "Take the brace off and lay the case on its front, on clean battens. Lay the back "
        + (back.kind() == Back.Kind.RABBET ? "into its rabbets" : "on the back edges of the case")
        + (glued() ? " with glue all round" : "")
        + ", bring both diagonals to the same length again, and screw it on all round: "
        + screws
        + " screws in lead holes, at most "
        + style.text(built.order().settings().length(Setting.SCREW_SPACING))
        + " apart.";
  }

  private boolean glued() {
    return built.order().settings().choice(Setting.BACK_FIXING).equals("glued");
  }

  private PlannedStep step(List<Part> pieces, String words, Length diagonal) {
    return new PlannedStep(
        Stage.SHELVES,
        built.order().name(),
        pieces.stream().map(Part::mark).toList(),
        words,
        List.of(),
        "Both diagonals over the sides are equal, "
            + style.text(diagonal)
            + " as planned, before the last screw is driven; no screw comes out inside.",
        List.of(Cautions.DRILL));
  }
}
