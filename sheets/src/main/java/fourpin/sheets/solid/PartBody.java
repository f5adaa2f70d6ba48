package fourpin.sheets.solid;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.casework.Point;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.measure.Length;
import fourpin.sheets.drawings.HangingStrips;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A part with its channels cut out, its edging, and its holes as dark discs. */
final class PartBody {

  /** As round as a hole needs to look. */
  private static final int SIDES = 12;

  /** Millimetres before the wood, so that a disc is not lost in it. */
  static final double PROUD = 0.1;

  private final Job job;
  private final Part part;
  private final Skins skins;

  private PartBody(Job job, Part part, Point origin) {
    this.job = job;
    this.part = part;
    this.skins = new Skins(origin);
  }

  static List<Skin> skins(Job job, Part part, Point origin) {
    PartBody body = new PartBody(job, part, origin);
    body.wood();
    body.part.features().forEach(body::hole);
    return body.skins.all();
  }

  private void wood() {
    Look look = Look.of(job.material(part.material()));
    new Carved(part.box(), look, bands(), channels()).addTo(skins);
    for (HangingStrips.Strip strip : HangingStrips.strips(part)) {
      Box below = strip.box().with(Face.TOP, part.box().low().z());
      new Carved(below, look(strip.band().edging()), List.of(), List.of()).addTo(skins);
    }
  }

  private List<Carved.Zone> bands() {
    return part.edging().stream()
        .map(band -> new Carved.Zone(edge(band), look(band.edging())))
        .toList();
  }

  private Box edge(Part.EdgeBand band) {
    Length inside =
        part.box().at(band.face()).plus(band.edging().thickness().times(-band.face().direction()));
    return part.box().with(band.face().opposite(), inside);
  }

  private Look look(Edging edging) {
    return switch (edging.kind()) {
      case STRIP -> Look.of(job.material(edging.material()));
      case BANDING -> Look.edging(edging.material());
    };
  }

  private List<Box> channels() {
    return part.features().stream()
        .flatMap(f -> f instanceof Feature.Channel c ? Stream.of(c.volume()) : Stream.empty())
        .toList();
  }

  /** A hole that runs over an edge, or begins where wood is gone already, is left out. */
  private void hole(Feature feature) {
    if (feature instanceof Feature.Hole hole && isInFace(hole) && !isGone(hole.centre())) {
      double plane = hole.centre().along(hole.face().axis()).mm();
      skins.add(
          Look.hole(),
          hole.face(),
          plane + PROUD * hole.face().direction(),
          new ArrayList<>(rim(hole)));
    }
  }

  private boolean isInFace(Feature.Hole hole) {
    return Stream.of(Skins.first(hole.face().axis()), Skins.second(hole.face().axis()))
        .allMatch(axis -> isInside(hole, axis));
  }

  private boolean isInside(Feature.Hole hole, Axis axis) {
    Length radius = hole.diameter().over(2);
    Length centre = hole.centre().along(axis);
    return !centre.minus(radius).isLessThan(part.box().low().along(axis))
        && !centre.plus(radius).isMoreThan(part.box().high().along(axis));
  }

  private boolean isGone(Point centre) {
    Box spot = new Box(centre, centre);
    return channels().stream().anyMatch(taken -> taken.contains(spot));
  }

  private static List<double[]> rim(Feature.Hole hole) {
    double radius = hole.diameter().mm() / 2;
    double first = hole.centre().along(Skins.first(hole.face().axis())).mm();
    double second = hole.centre().along(Skins.second(hole.face().axis())).mm();
    return IntStream.range(0, SIDES)
        .mapToDouble(i -> 2 * Math.PI * i / SIDES)
        .mapToObj(
            turn ->
                new double[] {
                  first + radius * StrictMath.cos(turn), second + radius * StrictMath.sin(turn)
                })
        .toList();
  }
}
