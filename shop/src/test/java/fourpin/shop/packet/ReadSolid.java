package fourpin.shop.packet;

import de.javagl.jgltf.model.AccessorFloatData;
import de.javagl.jgltf.model.AccessorIntData;
import de.javagl.jgltf.model.AccessorModel;
import de.javagl.jgltf.model.AccessorShortData;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.MeshPrimitiveModel;
import de.javagl.jgltf.model.NodeModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** A file in three dimensions as it was read: its triangles where they stand in the scene. */
record ReadSolid(GltfModel model) {

  private static final int TRIANGLES = 4;

  /** A place in metres, to the micrometre. */
  record Spot(long x, long y, long z) {}

  /** Three corners, and the direction stated at the first. */
  record Triangle(double[] a, double[] b, double[] c, double[] to) {

    List<List<Spot>> edges() {
      return List.of(edge(a, b), edge(b, c), edge(c, a));
    }

    private static List<Spot> edge(double[] from, double[] till) {
      return List.of(spot(from), spot(till));
    }

    private static Spot spot(double[] at) {
      return new Spot(Math.round(at[0] * 1e6), Math.round(at[1] * 1e6), Math.round(at[2] * 1e6));
    }

    private double[] cross() {
      return ReadSolid.cross(minus(b, a), minus(c, a));
    }

    /** Cosine between the stated direction and the one that its corners turn about. */
    double lean() {
      double[] n = cross();
      return dot(n, to) / Math.sqrt(dot(n, n));
    }
  }

  /** Of all nodes with something to see, in order. */
  List<String> names() {
    return model.getNodeModels().stream()
        .filter(n -> !n.getMeshModels().isEmpty())
        .map(NodeModel::getName)
        .toList();
  }

  NodeModel node(String name) {
    return model.getNodeModels().stream()
        .filter(n -> name.equals(n.getName()))
        .findFirst()
        .orElseThrow();
  }

  /**
   * @param look of the materials wanted
   */
  List<Triangle> triangles(String name, Predicate<String> look) {
    NodeModel node = node(name);
    float[] matrix = Objects.requireNonNull(node.computeGlobalTransform(null));
    List<Triangle> triangles = new ArrayList<>();
    node.getMeshModels().stream()
        .flatMap(m -> m.getMeshPrimitiveModels().stream())
        .filter(p -> look.test(p.getMaterialModel().getName()))
        .forEach(p -> add(triangles, p, matrix));
    return triangles;
  }

  private static void add(List<Triangle> triangles, MeshPrimitiveModel part, float[] matrix) {
    if (part.getMode() != TRIANGLES) {
      throw new AssertionError("only triangles were looked for");
    }
    AccessorFloatData places = floats(part, "POSITION");
    AccessorFloatData directions = floats(part, "NORMAL");
    int[] corners = numbers(part.getIndices());
    for (int i = 0; i < corners.length; i += 3) {
      triangles.add(
          new Triangle(
              moved(places, corners[i], matrix, 1),
              moved(places, corners[i + 1], matrix, 1),
              moved(places, corners[i + 2], matrix, 1),
              moved(directions, corners[i], matrix, 0)));
    }
  }

  private static AccessorFloatData floats(MeshPrimitiveModel part, String attribute) {
    AccessorModel accessor = Objects.requireNonNull(part.getAttributes().get(attribute), attribute);
    return (AccessorFloatData) accessor.getAccessorData();
  }

  private static int[] numbers(AccessorModel accessor) {
    int[] numbers = new int[accessor.getCount()];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] =
          switch (accessor.getAccessorData()) {
            case AccessorShortData data -> data.getInt(i);
            case AccessorIntData data -> data.get(i);
            default -> throw new AssertionError("numbers of another kind");
          };
    }
    return numbers;
  }

  private static double[] moved(AccessorFloatData data, int number, float[] m, int shift) {
    double[] moved = new double[3];
    for (int row = 0; row < 3; row++) {
      moved[row] = shift * m[12 + row];
      for (int column = 0; column < 3; column++) {
        moved[row] += m[4 * column + row] * data.get(number, column);
      }
    }
    return moved;
  }

  /** Least x, y, z, then most x, y, z. */
  static double[] ends(List<Triangle> triangles) {
    double[] ends = new double[6];
    for (int axis = 0; axis < 3; axis++) {
      int at = axis;
      ends[axis] = corners(triangles).mapToDouble(c -> c[at]).min().orElseThrow();
      ends[3 + axis] = corners(triangles).mapToDouble(c -> c[at]).max().orElseThrow();
    }
    return ends;
  }

  private static Stream<double[]> corners(List<Triangle> triangles) {
    return triangles.stream().flatMap(t -> Stream.of(t.a(), t.b(), t.c()));
  }

  static double volume(List<Triangle> triangles) {
    return triangles.stream().mapToDouble(t -> dot(t.a(), cross(t.b(), t.c())) / 6).sum();
  }

  static double area(List<Triangle> triangles) {
    return triangles.stream().mapToDouble(t -> Math.sqrt(dot(t.cross(), t.cross())) / 2).sum();
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }
}
