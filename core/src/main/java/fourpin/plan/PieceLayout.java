package fourpin.plan;

import fourpin.bench.Span;
import fourpin.bench.Surface;
import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.measure.Length;

/**
 * How a part lies on the bench, said by the way its surfaces look when it stands in the case. Index
 * ends are the lower or left ones and index edges the front ones, so that all rows of a case start
 * from one end.
 */
record PieceLayout(Part part, Face face, Face indexEdge, Face indexEnd) {

  static PieceLayout of(Part part) {
    return new PieceLayout(part, upwards(part), first(part.widthAxis()), first(part.lengthAxis()));
  }

  /** The inside of the case lies upwards. */
  private static Face upwards(Part part) {
    return switch (part.thicknessAxis()) {
      case X -> worked(part) ? part.features().getFirst().face() : Face.LEFT;
      case Y -> Face.FRONT;
      case Z -> part.role() == Part.Role.TOP ? Face.BOTTOM : Face.TOP;
    };
  }

  private static boolean worked(Part part) {
    return part.features().stream().findFirst().filter(f -> f.face().axis() == Axis.X).isPresent();
  }

  private static Face first(Axis axis) {
    return switch (axis) {
      case X -> Face.LEFT;
      case Y -> Face.FRONT;
      case Z -> Face.BOTTOM;
    };
  }

  Surface surface(Face looking) {
    if (looking.axis() == face.axis()) {
      return looking == face ? Surface.FACE : Surface.REVERSE;
    }
    if (looking.axis() == indexEdge.axis()) {
      return looking == indexEdge ? Surface.INDEX_EDGE : Surface.FAR_EDGE;
    }
    return looking == indexEnd ? Surface.INDEX_END : Surface.FAR_END;
  }

  /** Which way the face or the reverse looks in the case. */
  Face looking(Surface broad) {
    return broad == Surface.FACE ? face : face.opposite();
  }

  Span alongLength(Box block) {
    return from(indexEnd, block);
  }

  Span acrossWidth(Box block) {
    return from(indexEdge, block);
  }

  Span throughThickness(Box block) {
    return from(face, block);
  }

  private Span from(Face surface, Box block) {
    Length near = part.box().at(surface).minus(block.at(surface)).abs();
    return new Span(near, near.plus(block.size(surface.axis())));
  }

  /** How far a place along the axis of a surface lies from it. */
  Length from(Face surface, Length place) {
    return part.box().at(surface).minus(place).abs();
  }
}
