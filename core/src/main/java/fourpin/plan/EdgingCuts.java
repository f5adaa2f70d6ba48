package fourpin.plan;

import fourpin.bench.Step;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.measure.Length;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What to say where a cut runs out through the front edging of a part. */
final class EdgingCuts {

  private EdgingCuts() {}

  /**
   * Empty if no cut does; else a sentence, with a space before it.
   *
   * @param cuts that are made now
   */
  static String words(Part part, List<Step.Channel> cuts) {
    Set<String> now = cuts.stream().map(Step.Channel::purpose).collect(Collectors.toSet());
    List<String> through =
        part.features().stream()
            .filter(f -> part.edging().stream().anyMatch(b -> isCut(part, b, f)))
            .map(Feature::purpose)
            .filter(now::contains)
            .distinct()
            .toList();
    return through.isEmpty()
        ? ""
        : " The cut for "
            + String.join(", ", through)
            + " runs out through the front edging: press scrap against the edging so that it does not"
            + " split. The end of what goes in fills the cut and shows in front.";
  }

  private static boolean isCut(Part part, EdgeBand band, Feature feature) {
    return band.face() == Face.FRONT
        && feature instanceof Feature.Channel channel
        && channel.face().axis() == part.thicknessAxis()
        && channel.volume().low().y().isLessThan(inside(part, band));
  }

  private static Length inside(Part part, EdgeBand band) {
    return part.box().at(Face.FRONT).plus(band.edging().thickness());
  }
}
