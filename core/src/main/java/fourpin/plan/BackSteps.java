package fourpin.plan;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
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

  /**
   * Screws of one piece of a back: all round; of one in grooves only along the partitions that it
   * ends on, which have no groove. None for other parts.
   */
  static long screws(BuiltCase built, Part part) {
    return part.role() == Role.BACK
        ? built.order().back().map(back -> screws(built, back, part)).orElse(0L)
        : 0;
  }

  private static long screws(BuiltCase built, Back back, Part part) {
    Length height = part.box().size(Axis.Z);
    if (back.kind() == Back.Kind.GROOVE) {
      return back.pieces() == Back.Pieces.BY_BAY
          ? partitions(built, part) * (spaces(built, height) + 1)
          : 0;
    }
    return spaces(built, part.box().size(Axis.X).plus(height).times(2));
  }

  private static long spaces(BuiltCase built, Length along) {
    Length spacing = built.order().settings().length(Setting.SCREW_SPACING);
    return Math.ceilDiv(along.picometres(), spacing.picometres());
  }

  /** Partitions whose back edge a piece lies on. */
  private static long partitions(BuiltCase built, Part piece) {
    return built.parts().stream()
        .filter(p -> p.role() == Role.PARTITION)
        .filter(p -> p.box().at(Face.BACK).equals(piece.box().at(Face.FRONT)))
        .filter(p -> p.box().at(Face.LEFT).isLessThan(piece.box().at(Face.RIGHT)))
        .filter(p -> piece.box().at(Face.LEFT).isLessThan(p.box().at(Face.RIGHT)))
        .count();
  }

  /** Fastens pieces that stand in grooves where they meet on partitions. */
  Optional<PlannedStep> onPartitions() {
    List<Part> pieces = built.parts().stream().filter(p -> screws(built, p) > 0).toList();
    boolean grooved = built.order().back().filter(b -> b.kind() == Back.Kind.GROOVE).isPresent();
    return grooved && !pieces.isEmpty() ? Optional.of(onPartitions(pieces)) : Optional.empty();
  }

  private PlannedStep onPartitions(List<Part> pieces) {
    long screws = pieces.stream().mapToLong(p -> screws(built, p)).sum();
    return new PlannedStep(
        Stage.ASSEMBLE,
        built.order().name(),
        pieces.stream().map(Part::mark).toList(),
        "When the glue has set, lay the case on its front, on clean battens, and screw the pieces of"
            + " the back to the partitions that they meet on, each row in the middle of what lies on"
            + " the partition: "
            + screws
            + " screws in lead holes, at most "
            + style.text(built.order().settings().length(Setting.SCREW_SPACING))
            + " apart.",
        List.of(),
        "The pieces meet on the middle of each partition; no screw comes out beside it.",
        List.of(Cautions.DRILL));
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
