package fourpin.shop.packet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.javagl.jgltf.model.AnimationModel;
import de.javagl.jgltf.model.GltfModel;
import de.javagl.jgltf.model.NodeModel;
import de.javagl.jgltf.model.io.GltfModelReader;
import de.javagl.jgltf.model.io.JsonError;
import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.DoorLeaf;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.job.CaseOrder;
import fourpin.job.Doors;
import fourpin.job.Job;
import fourpin.plan.Plan;
import fourpin.plan.Planner;
import fourpin.sheets.drawings.HangingStrips;
import fourpin.sheets.solid.Solid;
import fourpin.shop.packet.ReadSolid.Triangle;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Files in three dimensions as jgltf, a reader that is not ours, finds them. */
class GlbTest {

  private static final double MM = 0.001;
  private static final double CLOSE = 1e-6;
  private static final Map<Path, Plan> PLANS = new ConcurrentHashMap<>();

  static List<Path> examples() {
    return PlanFilesTest.examples();
  }

  /** What belongs together: the case in the plan, and what was read of its file. */
  private record Pair(BuiltCase built, ReadSolid solid) {}

  @ParameterizedTest
  @MethodSource("examples")
  void isReadWithoutComplaint(Path example) throws IOException {
    Plan plan = plan(example);
    for (BuiltCase built : plan.cases()) {
      List<String> complaints = new ArrayList<>();
      GltfModel model = read(Glb.write(Solid.of(plan, built)), complaints);
      assertThat(complaints).isEmpty();
      assertThat(model.getSceneModels()).hasSize(1);
      assertThat(model.getAssetModel().getGenerator()).isEqualTo("Fourpin");
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void eachPartIsANodeByItsMark(Path example) throws IOException {
    for (Pair pair : pairs(plan(example))) {
      assertThat(pair.solid().names())
          .startsWith(pair.built().parts().stream().map(Part::mark).toArray(String[]::new));
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void woodFillsTheOuterBoxOfTheCase(Path example) throws IOException {
    for (Pair pair : pairs(plan(example))) {
      List<Triangle> wood = new ArrayList<>();
      pair.built().parts().forEach(p -> wood.addAll(wood(pair, p)));
      Box outside = pair.built().outside();
      assertThat(ReadSolid.ends(wood))
          .usingComparatorWithPrecision(CLOSE)
          .containsExactly(
              outside.low().x().mm() * MM,
              outside.low().z().mm() * MM,
              -outside.high().y().mm() * MM,
              outside.high().x().mm() * MM,
              outside.high().z().mm() * MM,
              -outside.low().y().mm() * MM);
    }
  }

  /** By the divergence theorem: a sixth of the sum of all corner products, if normals look out. */
  @ParameterizedTest
  @MethodSource("examples")
  void eachPartHasTheVolumeOfItsWood(Path example) throws IOException {
    for (Pair pair : pairs(plan(example))) {
      for (Part part : pair.built().parts()) {
        double wood = volume(part) * MM * MM * MM;
        assertThat(ReadSolid.volume(wood(pair, part)))
            .as(part.mark())
            .isCloseTo(wood, within(wood * 1e-4));
      }
    }
  }

  private static double volume(Part part) {
    List<Box> gone =
        part.features().stream()
            .flatMap(f -> f instanceof Feature.Channel c ? Stream.of(c.volume()) : Stream.empty())
            .toList();
    double hanging =
        HangingStrips.strips(part).stream()
            .mapToDouble(
                s -> s.box().volume() * (1 - part.thickness().mm() / s.box().size(Axis.Z).mm()))
            .sum();
    return part.box().volume() - together(gone) + hanging;
  }

  /** Volume of boxes that may share some of it. */
  private static double together(List<Box> boxes) {
    if (boxes.isEmpty()) {
      return 0;
    }
    Box first = boxes.getFirst();
    List<Box> rest = boxes.subList(1, boxes.size());
    List<Box> shared = rest.stream().filter(first::overlaps).map(first::shared).toList();
    return first.volume() + together(rest) - together(shared);
  }

  /** Every edge of a triangle is run along once each way. */
  @ParameterizedTest
  @MethodSource("examples")
  void surfacesAreClosed(Path example) throws IOException {
    for (Pair pair : pairs(plan(example))) {
      for (String name : pair.solid().names()) {
        Map<List<ReadSolid.Spot>, Integer> edges = new HashMap<>();
        for (Triangle triangle : pair.solid().triangles(name, isWood())) {
          triangle.edges().forEach(e -> edges.merge(e, 1, Integer::sum));
        }
        assertThat(edges).as(name).isNotEmpty();
        edges.forEach(
            (edge, times) -> assertThat(edges.get(edge.reversed())).as(name).isEqualTo(times));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void directionsAreThoseOfTheirTriangles(Path example) throws IOException {
    for (Pair pair : pairs(plan(example))) {
      for (String name : pair.solid().names()) {
        assertThat(pair.solid().triangles(name, _ -> true))
            .allSatisfy(t -> assertThat(t.lean()).isCloseTo(1, within(1e-4)));
      }
    }
  }

  /** Discs lie 0.1 mm before a face of their part, as many as holes that no edge cuts. */
  @Test
  void holesAreDiscsOnTheirFaces() throws IOException {
    for (Pair pair : pairs(plan(Path.of("..", "examples", "reading-room.yaml")))) {
      for (Part part : pair.built().parts()) {
        long holes = part.features().stream().filter(f -> f instanceof Feature.Hole).count();
        List<Triangle> discs = pair.solid().triangles(part.mark(), isWood().negate());
        assertThat(discs).as(part.mark()).hasSize((int) holes * 10);
        assertThat(ReadSolid.area(discs))
            .as(part.mark())
            .isCloseTo(area(part), within(1e-3 * area(part) + CLOSE * CLOSE));
      }
    }
  }

  /** A regular polygon of 12 sides has the area 3 r². */
  private static double area(Part part) {
    return part.features().stream()
        .flatMap(f -> f instanceof Feature.Hole h ? Stream.of(h) : Stream.empty())
        .mapToDouble(h -> h.diameter().mm() / 2 * MM)
        .map(radius -> 3 * radius * radius)
        .sum();
  }

  @ParameterizedTest
  @MethodSource("examples")
  void shelvesCarryTheLevelsOfTheirBay(Path example) throws IOException {
    Plan plan = plan(example);
    for (Pair pair : pairs(plan)) {
      for (BayGrid grid : plan.grids()) {
        if (grid.caseName().equals(pair.built().order().name())) {
          grid.seats().forEach(seat -> holdsLevels(pair, grid, seat));
        }
      }
    }
  }

  private static void holdsLevels(Pair pair, BayGrid grid, BayGrid.Seat seat) {
    NodeModel node = pair.solid().node(seat.shelf());
    Part shelf = pair.built().part(seat.shelf());
    List<?> levels = (List<?>) extra(node, "levels");
    assertThat(levels).hasSize(grid.levels().size());
    assertThat(extra(node, "bay")).isEqualTo(grid.bay());
    int level = (Integer) extra(node, "level");
    assertThat((double) levels.get(level - 1))
        .isCloseTo(shelf.box().high().z().mm() * MM, within(CLOSE));
    assertThat((double) node.getTranslation()[1])
        .isCloseTo((double) levels.get(level - 1), within(CLOSE));
    assertThat(grid.levels().get(level - 1).number()).isEqualTo(seat.level());
  }

  /** Doors stand before the shelves when shut, and before the case when opened by a right angle. */
  @Test
  void doorsTurnOutOfTheCase() throws IOException {
    Plan plan = plan(Path.of("..", "examples", "music-library.yaml"));
    Pair pair = pairs(plan).getFirst();
    List<String> doors = pair.solid().names().stream().filter(n -> n.contains("door")).toList();
    Doors stated = plan.job().cases().getFirst().doors().orElseThrow();
    assertThat(doors).hasSize(pair.built().bays().size() * stated.perBay());
    assertThat(pair.solid().model().getAnimationModels()).hasSize(1);
    double front = -pair.built().outside().low().y().mm() * MM;
    for (AnimationModel.Channel channel :
        pair.solid().model().getAnimationModels().getFirst().getChannels()) {
      NodeModel node = channel.getNodeModel();
      assertThat(doors).contains(node.getName());
      assertThat(channel.getPath()).isEqualTo("rotation");
      double opens = ((Number) extra(node, "opens")).doubleValue();
      node.setRotation(turned(Math.signum(opens) * 90));
      double[] ends = ReadSolid.ends(pair.solid().triangles(node.getName(), _ -> true));
      double thick = stated.thickness().mm() * MM;
      assertThat(ends[3] - ends[0]).as("its thickness lies across").isCloseTo(thick, within(CLOSE));
      assertThat(ends[2]).as("it stands before its hinge").isGreaterThanOrEqualTo(front - CLOSE);
    }
  }

  /** They hang and lie as the plan has them: overlay doors too, which reach over the sides. */
  @Test
  void shutDoorsAreWhereThePlanHasThem() throws IOException {
    for (Pair pair : pairs(plan(Path.of("..", "examples", "music-library.yaml")))) {
      for (DoorLeaf leaf : DoorLeaf.of(pair.built())) {
        String name =
            pair.solid().names().stream()
                .filter(n -> n.endsWith("bay " + leaf.bay() + " door " + leaf.number()))
                .findFirst()
                .orElseThrow();
        double[] ends = ReadSolid.ends(pair.solid().triangles(name, _ -> true));
        assertThat(ends[3] - ends[0]).isCloseTo(leaf.shut().size(Axis.X).mm() * MM, within(CLOSE));
        assertThat(ends[4] - ends[1]).isCloseTo(leaf.shut().size(Axis.Z).mm() * MM, within(CLOSE));
      }
    }
  }

  private static float[] turned(double degrees) {
    double half = Math.toRadians(degrees) / 2;
    return new float[] {0, (float) Math.sin(half), 0, (float) Math.cos(half)};
  }

  /** The same case with its bays from right to left is the same seen in a mirror. */
  @ParameterizedTest
  @ValueSource(strings = {"reading-room.yaml", "pottery-cabinet.yaml"})
  void aMirroredCaseIsMirrored(String name) throws IOException {
    Job job = plan(Path.of("..", "examples", name)).job();
    List<CaseOrder> mirrored =
        job.cases().stream().map(order -> order.with(order.bays().reversed())).toList();
    List<Pair> left = pairs(Planner.plan(job));
    List<Pair> right = pairs(Planner.plan(job.with(mirrored)));
    for (int i = 0; i < left.size(); i++) {
      double width =
          left.get(i).built().outside().low().x().mm()
              + left.get(i).built().outside().high().x().mm();
      assertThat(boxes(left.get(i)))
          .usingComparatorWithPrecision(CLOSE)
          .containsExactly(boxes(right.get(i).solid(), right.get(i).built(), width * MM));
    }
  }

  private static double[] boxes(Pair pair) {
    return sorted(pair.built().parts().stream().map(p -> ReadSolid.ends(wood(pair, p))).toList());
  }

  private static double[] boxes(ReadSolid solid, BuiltCase built, double width) {
    return sorted(
        built.parts().stream()
            .map(p -> ReadSolid.ends(wood(new Pair(built, solid), p)))
            .map(e -> new double[] {width - e[3], e[1], e[2], width - e[0], e[4], e[5]})
            .toList());
  }

  /** In an order that does not hang on names. */
  private static double[] sorted(List<double[]> boxes) {
    return boxes.stream()
        .sorted(
            (a, b) -> {
              for (int i = 0; i < a.length; i++) {
                long difference = Math.round(a[i] * 1e4) - Math.round(b[i] * 1e4);
                if (difference != 0) {
                  return Long.signum(difference);
                }
              }
              return 0;
            })
        .flatMapToDouble(Arrays::stream)
        .toArray();
  }

  private static List<Triangle> wood(Pair pair, Part part) {
    return pair.solid().triangles(part.mark(), isWood());
  }

  private static Predicate<String> isWood() {
    return material -> !material.equals("hole");
  }

  private static List<Pair> pairs(Plan plan) throws IOException {
    List<Pair> pairs = new ArrayList<>();
    for (BuiltCase built : plan.cases()) {
      pairs.add(
          new Pair(
              built, new ReadSolid(read(Glb.write(Solid.of(plan, built)), new ArrayList<>()))));
    }
    assertThat(pairs).isNotEmpty();
    return pairs;
  }

  private static GltfModel read(byte[] file, List<String> complaints) throws IOException {
    GltfModelReader reader = new GltfModelReader();
    reader.setJsonErrorConsumer(
        error -> complaints.add(Optional.of(error).map(JsonError::getMessage).orElse("?")));
    return reader.readWithoutReferences(new ByteArrayInputStream(file));
  }

  /** Each example is planned once for all tests. */
  private static Plan plan(Path example) {
    return PLANS.computeIfAbsent(example, GlbTest::planned);
  }

  private static Plan planned(Path example) {
    try {
      return Examples.plan(example);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What a node says besides its place, which must stand there. */
  private static Object extra(NodeModel node, String name) {
    return Objects.requireNonNull(((Map<?, ?>) node.getExtras()).get(name), name);
  }
}
