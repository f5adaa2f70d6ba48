package fourpin.sheets.solid;

import fourpin.casework.Axis;
import fourpin.casework.Face;
import fourpin.casework.Point;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Gathers flat pieces of surface by their looks; a corner that several share is kept once. */
final class Skins {

  private static final int AXES = Axis.values().length;
  private static final int TRIANGLE = 3;

  private record Gathered(Map<Vertex, Integer> vertices, List<Integer> corners) {}

  private final Point origin;
  private final Map<Look, Gathered> byLook = new LinkedHashMap<>();

  /**
   * @param origin what vertices are measured from
   */
  Skins(Point origin) {
    this.origin = origin;
  }

  /** The axis that is first in the plane of a face: first, second and outwards turn right. */
  static Axis first(Axis through) {
    return Axis.values()[(through.ordinal() + 1) % AXES];
  }

  static Axis second(Axis through) {
    return Axis.values()[(through.ordinal() + 2) % AXES];
  }

  /**
   * Adds a flat convex piece.
   *
   * @param rim millimetres along the first and the second axis of the plane, turning from the first
   *     to the second
   * @param plane where it lies along the face's axis, in millimetres
   */
  void add(Look look, Face face, double plane, List<double[]> rim) {
    Gathered skin =
        byLook.computeIfAbsent(look, _ -> new Gathered(new LinkedHashMap<>(), new ArrayList<>()));
    List<Integer> numbers =
        (face.direction() > 0 ? rim : rim.reversed())
            .stream().map(p -> number(skin, vertex(face, plane, p[0], p[1]))).toList();
    for (int i = 2; i < numbers.size(); i++) {
      skin.corners().addAll(List.of(numbers.getFirst(), numbers.get(i - 1), numbers.get(i)));
    }
  }

  private static int number(Gathered skin, Vertex vertex) {
    Integer next = skin.vertices().size();
    Integer known = skin.vertices().putIfAbsent(vertex, next);
    return known == null ? next : known;
  }

  private Vertex vertex(Face face, double plane, double first, double second) {
    double[] at = new double[TRIANGLE];
    double[] to = new double[TRIANGLE];
    at[face.axis().ordinal()] = plane;
    at[first(face.axis()).ordinal()] = first;
    at[second(face.axis()).ordinal()] = second;
    to[face.axis().ordinal()] = face.direction();
    return new Vertex(
        at[0] - origin.x().mm(),
        at[1] - origin.y().mm(),
        at[2] - origin.z().mm(),
        to[0],
        to[1],
        to[2]);
  }

  List<Skin> all() {
    return byLook.entrySet().stream()
        .map(
            e ->
                new Skin(
                    e.getKey(),
                    List.copyOf(e.getValue().vertices().keySet()),
                    e.getValue().corners()))
        .toList();
  }
}
