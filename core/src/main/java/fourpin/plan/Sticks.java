package fourpin.plan;

import fourpin.bench.Spacing;
import fourpin.bench.Step;
import fourpin.boring.BayGrid;
import fourpin.boring.way.Gang;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The story sticks of one case. Before assembly one stick serves all panels, its zero at the foot
 * of the sides. After assembly a stick stands on the panel under each opening.
 */
final class Sticks {

  /** What a stick stands on. @param height of its zero above the foot of the case */
  private record Rest(String stick, Length height) {}

  private final BuiltCase built;
  private final CaseWays ways;
  private final boolean assembled;
  private final Map<Rest, Marks> marks = new LinkedHashMap<>();

  /** What is on a stick, rising: holes, and the ends of panels. */
  private record Marks(TreeSet<Length> holes, TreeSet<Length> ends) {}

  Sticks(BuiltCase built, CaseWays ways) {
    this.built = built;
    this.ways = ways;
    this.assembled = BenchProgram.boresAfterAssembly(built);
    built.parts().forEach(this::collect);
  }

  private void collect(Part part) {
    for (Hole hole : marked(part)) {
      Rest rest = rest(part, hole);
      marks(rest).holes().add(above(rest, hole));
      marks(rest).ends().add(datum(part, rest));
    }
  }

  /** The holes of a part that are bored from marks. */
  private List<Hole> marked(Part part) {
    return part.features().stream()
        .filter(f -> f instanceof Hole h && h.use() == Hole.Use.SUPPORT)
        .map(f -> (Hole) f)
        .filter(h -> ways.manner(h).isMarked())
        .toList();
  }

  /** The sticks that the parts of these steps are marked from. */
  List<Step> steps(List<Part> parts) {
    List<Rest> used = new ArrayList<>();
    for (Part part : parts) {
      for (Hole hole : marked(part)) {
        Rest rest = rest(part, hole);
        if (!used.contains(rest)) {
          used.add(rest);
        }
      }
    }
    return used.stream().map(this::step).toList();
  }

  private Step step(Rest rest) {
    List<Length> other = marks(rest).ends().stream().filter(e -> !e.isZero()).toList();
    return new Step.MarkStick(rest.stick(), List.copyOf(marks(rest).holes()), other);
  }

  private Marks marks(Rest rest) {
    return marks.computeIfAbsent(rest, _ -> new Marks(new TreeSet<>(), new TreeSet<>()));
  }

  /** The marks that are squared across two panels side by side. */
  Spacing.FromStick across(Gang gang) {
    Part part = built.part(gang.panels().getFirst().part());
    List<Hole> holes =
        marked(part).stream().filter(h -> h.face() == gang.panels().getFirst().face()).toList();
    Rest rest = rest(part, holes.getFirst());
    TreeSet<Integer> numbers = new TreeSet<>();
    holes.forEach(h -> numbers.add(number(rest, h)));
    return new Spacing.FromStick(
        rest.stick(), List.copyOf(numbers), gang.stop().minus(rest.height()));
  }

  private int number(Rest rest, Hole hole) {
    return marks(rest).holes().headSet(above(rest, hole)).size() + 1;
  }

  /** One spacing for each stick that a row of holes is marked from. */
  List<Spacing> spacings(Part part, List<Hole> row) {
    Map<Rest, List<Integer>> numbers = new LinkedHashMap<>();
    for (Hole hole : row) {
      Rest rest = rest(part, hole);
      numbers.computeIfAbsent(rest, _ -> new ArrayList<>()).add(number(rest, hole));
    }
    boolean onLines = ways.isOnLine(part.mark(), row.getFirst().face());
    List<Spacing> spacings = new ArrayList<>();
    numbers.forEach(
        (rest, list) ->
            spacings.add(
                onLines
                    ? new Spacing.OnLines(list)
                    : new Spacing.FromStick(rest.stick(), list, datum(part, rest))));
    return spacings;
  }

  /** Numbers on sticks and numbers of the bay, at the ends of what is bored in a face. */
  String key(Part part, Face face, List<BayGrid> grids) {
    Map<Rest, TreeMap<Length, Hole>> holes = new LinkedHashMap<>();
    for (Hole hole : marked(part)) {
      if (hole.face() == face) {
        holes.computeIfAbsent(rest(part, hole), _ -> new TreeMap<>()).put(hole.centre().z(), hole);
      }
    }
    StringBuilder key = new StringBuilder();
    holes.forEach(
        (rest, rising) -> {
          key.append(" Mark ").append(made(rest, rising.firstEntry().getValue(), grids));
          if (rising.size() > 1) {
            key.append(", mark ").append(made(rest, rising.lastEntry().getValue(), grids));
          }
          key.append('.');
        });
    return key.toString();
  }

  private String made(Rest rest, Hole hole, List<BayGrid> grids) {
    return number(rest, hole)
        + " of stick “"
        + rest.stick()
        + "” makes level "
        + level(hole, grids)
        + " of the bay";
  }

  /** The number that the bay gives to the level of a hole. */
  private int level(Hole hole, List<BayGrid> grids) {
    return grids.stream()
        .filter(g -> g.caseName().equals(built.order().name()))
        .filter(g -> g.rows().stream().anyMatch(r -> g.purpose(r).equals(hole.purpose())))
        .flatMap(g -> g.levels().stream())
        .filter(l -> l.height().equals(hole.centre().z()))
        .findFirst()
        .orElseThrow()
        .number();
  }

  private static Length above(Rest rest, Hole hole) {
    return hole.centre().z().minus(rest.height());
  }

  /** Where the part's index end comes on the stick. */
  private static Length datum(Part part, Rest rest) {
    return part.box().at(Face.BOTTOM).minus(rest.height());
  }

  /** Strips are bored on the bench whenever the rows are. */
  private Rest rest(Part part, Hole hole) {
    boolean loose = part.role() == Part.Role.STRIP;
    return assembled && !loose
        ? standing(part, hole)
        : new Rest(built.order().name(), Length.ZERO.in(hole.centre().z().unit()));
  }

  private Rest standing(Part part, Hole hole) {
    BaySpace bay =
        built.bays().stream()
            .filter(b -> (hole.face() == Face.RIGHT ? b.left() : b.right()).equals(part.mark()))
            .findFirst()
            .orElseThrow();
    BaySpace.Opening opening =
        bay.openings().stream()
            .filter(o -> o.clear().high().z().isAtLeast(hole.centre().z()))
            .findFirst()
            .orElseThrow();
    return new Rest("on " + opening.below(), opening.clear().low().z());
  }
}
