package fourpin.plan;

import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.plan.PlannedStep.Stage;
import fourpin.reference.Reference;
import java.util.List;
import java.util.Optional;

/** The ripping of strips that are glued onto edges of one case's parts. */
record EdgeStrips(Job job, BuiltCase built) {

  /** Strips for the edges of these parts, ripped over size and planed. */
  Optional<PlannedStep> step(Stage stage, List<Part> parts) {
    List<String> edged =
        parts.stream()
            .filter(p -> p.edging().stream().anyMatch(EdgeStrips::isStrip))
            .map(Part::mark)
            .toList();
    if (edged.isEmpty()) {
      return Optional.empty();
    }
    List<CutItem> wanted =
        CutListBuilder.edgeStrips(job, built).stream()
            .filter(i -> i.when() == parts.getFirst().when())
            .toList();
    return Optional.of(
        new PlannedStep(
            stage,
            built.order().name(),
            edged,
            (stage == Stage.SHELVES
                    ? "Take the edge strips that the layouts mark “waits”"
                    : "Rip the edge strips by the layouts")
                + copies(built)
                + ", plane off the saw marks to the finished size, and cut them to length."
                + " Length follows the edge that a strip is glued to.",
            wanted.stream().map(this::strip).toList(),
            "Hold each strip to its edge: it covers the whole edge, and its upper side is level"
                + " with the panel's.",
            List.of(Cautions.SAW, Cautions.NARROW_RIP, Cautions.PLANER, Cautions.DUST)));
  }

  /** How edging goes on; a strip across the ends of solid wood must let that move. */
  String gluing(List<Part> edged) {
    List<String> across =
        edged.stream().filter(Part::hasEndStrips).filter(this::moves).map(Part::mark).toList();
    return "Glue on the edging, tops flush, and trim it. "
        + (across.isEmpty()
            ? ""
            : "Over the ends of %s, which are solid, glue the front third only, and hold the rest by screws in slots along the strip: wood that is held across its grain splits. "
                .formatted(String.join(", ", across)));
  }

  private boolean moves(Part part) {
    return Reference.movement().find(job.material(part.material()).of()).isPresent();
  }

  private static boolean isStrip(Part.EdgeBand band) {
    return band.edging().kind() == Edging.Kind.STRIP;
  }

  private String strip(CutItem strip) {
    LengthStyle style = job.style();
    Length board = job.material(strip.material()).thickness();
    String rip = "ripped " + style.text(strip.cutWidth().total()) + " wide";
    String from = board.equals(strip.thickness()) ? "" : " from " + style.text(board) + " stock";
    return "%s: %s, %s%s, planed to %s x %s, %s long."
        .formatted(
            String.join(", ", strip.marks()),
            strip.material(),
            rip,
            from,
            style.number(strip.width().total()),
            style.text(strip.thickness()),
            style.text(strip.length().total()));
  }

  /** How many of each the layouts hold. */
  static String copies(BuiltCase built) {
    int quantity = built.order().quantity();
    return quantity == 1 ? "" : ", " + quantity + " of each";
  }
}
