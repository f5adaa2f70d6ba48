package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.casework.Part.EdgeBand;
import fourpin.job.Edging;
import java.util.List;

/** Edge strips that are taller than their shelf: tops flush, so that they hang below it. */
public final class HangingStrips {

  /** A strip over the part's whole edge. */
  public record Strip(EdgeBand band, Box box) {}

  private HangingStrips() {}

  /** Each strip in space; none for parts that stand. */
  static List<Box> of(Part part) {
    return strips(part).stream().map(Strip::box).toList();
  }

  /** Each strip; none for parts that stand. */
  public static List<Strip> strips(Part part) {
    return part.edging().stream()
        .filter(band -> part.thicknessAxis() == Axis.Z && band.face().axis() != Axis.Z)
        .filter(band -> band.edging().kind() == Edging.Kind.STRIP)
        .filter(band -> band.edging().height().isMoreThan(part.thickness()))
        .map(band -> new Strip(band, box(part, band)))
        .toList();
  }

  private static Box box(Part part, EdgeBand band) {
    Face inner = band.face().opposite();
    return part.box()
        .with(Face.BOTTOM, part.box().high().z().minus(band.edging().height()))
        .with(
            inner,
            part.box()
                .at(band.face())
                .plus(band.edging().thickness().times(-band.face().direction())));
  }
}
