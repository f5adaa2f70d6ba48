package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Level;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.Boring;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.boring.way.Guide.Use;
import fourpin.boring.way.Method;
import fourpin.boring.way.WayAnswer;
import fourpin.boring.way.WayAnswer.Verdict;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.job.Support;
import fourpin.job.Way;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Ways for the pinned bays of any job, made up without asking which tools a shop has: guides as
 * long as the rows, short ones stepped by the pin, drill press, machine. The same seed gives the
 * same ways.
 */
final class HandMadeWays {

  private static final Length GUIDE = Length.mm(6);
  private static final Length SLIP = Length.mm(3);
  private static final int SHORT = 6;

  private final BuiltCase built;
  private final List<BayGrid> grids;
  private final Random random;
  private final boolean assembled;
  private final Length across;
  private final List<Stretch> stretches = new ArrayList<>();

  /** What a guide bores from one bearing. @param heights above the guide's zero, rising */
  private record Stretch(
      BayGrid grid,
      Row row,
      Part part,
      Face face,
      Bearing bearing,
      Length along,
      List<Length> heights) {}

  private record Kind(Length diameter, Length depth) {}

  private HandMadeWays(BuiltCase built, List<BayGrid> grids, Random random) {
    this.built = built;
    this.grids = grids;
    this.random = random;
    this.assembled = BenchProgram.boresAfterAssembly(built);
    this.across = Length.mm(15 + random.nextInt(30));
    grids.forEach(g -> List.of(Face.RIGHT, Face.LEFT).forEach(f -> collect(g, f)));
  }

  static List<CaseBoring> of(Boring boring, long seed) {
    Random random = new Random(seed * 0x9E3779B97F4A7C15L);
    List<CaseBoring> all = new ArrayList<>();
    for (BuiltCase built : boring.cases()) {
      Map<Kind, List<BayGrid>> kinds = new LinkedHashMap<>();
      boring.grids().stream()
          .filter(g -> g.caseName().equals(built.order().name()) && !g.levels().isEmpty())
          .filter(
              g -> g.support() instanceof Support.Pins || g.support() instanceof Support.Sleeved)
          .forEach(
              g ->
                  kinds
                      .computeIfAbsent(new Kind(g.diameter(), g.depth()), _ -> new ArrayList<>())
                      .add(g));
      kinds.values().forEach(g -> all.add(new HandMadeWays(built, g, random).boring(all.size())));
    }
    return all;
  }

  private void collect(BayGrid grid, Face face) {
    BaySpace bay = built.bays().get(grid.bay() - 1);
    Part part = built.part(face == Face.RIGHT ? bay.left() : bay.right());
    for (Row row : grid.rows()) {
      if (!assembled) {
        Length zero = Length.min(built.part("L").box().at(Face.BOTTOM), part.box().at(Face.BOTTOM));
        add(grid, row, part, face, new Bearing.End(), zero, heights(grid, zero, grid.levels()));
      } else {
        bay.openings().forEach(o -> collect(grid, row, part, face, o));
      }
    }
  }

  private void collect(BayGrid grid, Row row, Part part, Face face, BaySpace.Opening opening) {
    Length floor = opening.clear().low().z();
    List<Level> here =
        grid.levels().stream()
            .filter(
                l ->
                    l.height().isAtLeast(floor)
                        && !l.height().isMoreThan(opening.clear().high().z()))
            .toList();
    if (here.isEmpty()) {
      return;
    }
    Length spacer = Length.min(Length.mm(4), here.getFirst().height().minus(floor));
    Length zero = floor.plus(spacer);
    add(
        grid,
        row,
        part,
        face,
        new Bearing.PanelBelow(opening.below(), spacer),
        zero,
        heights(grid, zero, here));
  }

  private static List<Length> heights(BayGrid grid, Length zero, List<Level> levels) {
    return levels.stream()
        .filter(grid.levels()::contains)
        .map(l -> l.height().minus(zero))
        .toList();
  }

  private void add(
      BayGrid grid,
      Row row,
      Part part,
      Face face,
      Bearing bearing,
      Length zero,
      List<Length> heights) {
    Length along = zero.minus(part.box().at(Face.BOTTOM));
    stretches.add(new Stretch(grid, row, part, face, bearing, along, heights));
  }

  private CaseBoring boring(int number) {
    String mark = "G" + (number + 1);
    return switch (random.nextInt(5)) {
      case 0 -> chosen(Way.MACHINE, new Method.Programmed("router table", bit(Length.ZERO)));
      case 1 ->
          chosen(
              assembled ? Way.STORY_STICK : Way.DRILL_PRESS,
              new Method.Marked(
                  assembled ? Method.How.BY_HAND : Method.How.DRILL_PRESS,
                  bit(Length.ZERO),
                  List.of()));
      case 2, 3 ->
          stepped(mark)
              .map(m -> chosen(Way.CENTRING_GUIDE, m))
              .orElseGet(() -> chosen(Way.ROUTER_GUIDE, whole(mark)));
      default -> chosen(Way.ROUTER_GUIDE, whole(mark));
    };
  }

  private CaseBoring chosen(Way way, Method method) {
    return new CaseBoring(
        built.order().name(),
        grids,
        Stream.of(Way.values()).map(w -> answer(w, w == way, method)).toList(),
        way,
        "made by hand",
        List.of());
  }

  private static WayAnswer answer(Way way, boolean chosen, Method method) {
    return new WayAnswer(
        way,
        chosen ? Verdict.POSSIBLE : Verdict.NOT_POSSIBLE,
        List.of(),
        List.of(),
        chosen ? Optional.of(method) : Optional.empty(),
        List.of(),
        List.of());
  }

  private BitSetting bit(Length over) {
    BayGrid grid = grids.getFirst();
    Length runs = over.isZero() ? Length.ZERO : grid.diameter().plus(SLIP);
    return new BitSetting(
        "bit", grid.diameter(), runs, over, grid.depth(), Length.mm(1), Length.mm(2));
  }

  /** A guide with a hole for every height there is, and masked ones between. */
  private Method whole(String mark) {
    TreeSet<Length> used = new TreeSet<>();
    stretches.forEach(s -> used.addAll(s.heights()));
    Map<Length, GuideHole> holes = new LinkedHashMap<>();
    for (Length at : used) {
      if (random.nextInt(3) == 0) {
        Length between = at.minus(Length.mm(7));
        if (!used.contains(between) && between.isPositive()) {
          holes.put(between, hole(holes.size() + 1, between, Use.MASKED));
        }
      }
      holes.put(at, hole(holes.size() + 1, at, Use.BORED));
    }
    List<Clamping> clampings = new ArrayList<>();
    for (Stretch s : stretches) {
      List<Integer> numbers =
          s.heights().stream()
              .map(h -> holes.getOrDefault(h, hole(0, h, Use.BORED)).number())
              .toList();
      clampings.add(clamping(s, List.of(new Reach(Optional.empty(), numbers))));
    }
    Length length = used.last().plus(Length.mm(30));
    return new Method.Guided(
        Method.How.BY_HAND, guide(mark, length, holes.values()), bit(GUIDE), clampings);
  }

  private GuideHole hole(int number, Length along, Use use) {
    return new GuideHole(number, along, across, grids.getFirst().diameter().plus(SLIP), use);
  }

  private Guide guide(String mark, Length length, Iterable<GuideHole> holes) {
    List<GuideHole> all = new ArrayList<>();
    holes.forEach(all::add);
    return new Guide(
        mark,
        new Guide.Make.Bored("MDF"),
        "MDF",
        length,
        width(),
        GUIDE,
        all,
        assembled ? Length.ZERO : Length.mm(20));
  }

  /** Wider behind the holes than before them, so that its edges can't be mixed up unseen. */
  private Length width() {
    return across.times(2).plus(Length.mm(9));
  }

  private Clamping clamping(Stretch s, List<Reach> reaches) {
    Face edge = s.row().name() == Row.Name.BACK ? Face.BACK : Face.FRONT;
    Length in = s.part().box().at(edge).minus(s.row().y()).abs();
    return new Clamping(
        s.grid().bay(),
        s.part().mark(),
        s.face(),
        s.row().name(),
        edge,
        in.minus(edge == Face.FRONT ? across : width().minus(across)),
        s.along(),
        s.bearing(),
        reaches);
  }

  /** A short guide, if every row can be bored with it from hole to hole. */
  private Optional<Method> stepped(String mark) {
    Length pitch = grids.getFirst().pitch();
    Length first =
        stretches.stream().flatMap(s -> s.heights().stream()).min(Length::compareTo).orElseThrow();
    List<Clamping> clampings = new ArrayList<>();
    for (Stretch s : stretches) {
      Optional<List<Reach>> reaches = reaches(s.heights(), first, pitch);
      if (reaches.isEmpty()) {
        return Optional.empty();
      }
      clampings.add(clamping(s, reaches.get()));
    }
    List<GuideHole> holes = new ArrayList<>();
    for (int i = 0; i < SHORT; i++) {
      holes.add(hole(i + 1, first.plus(pitch.times(i)), Use.BORED));
    }
    Length length = holes.getLast().along().plus(Length.mm(10));
    return Optional.of(
        new Method.Guided(Method.How.BY_HAND, guide(mark, length, holes), bit(GUIDE), clampings));
  }

  private Optional<List<Reach>> reaches(List<Length> heights, Length first, Length pitch) {
    List<Reach> reaches = new ArrayList<>();
    List<Length> left = new ArrayList<>(heights);
    Length zero = first;
    Optional<Clamping.Step> step = Optional.empty();
    while (!left.isEmpty()) {
      List<Integer> numbers = new ArrayList<>();
      for (Length height : List.copyOf(left)) {
        Length up = height.minus(zero);
        boolean here = !up.isNegative() && up.remainder(pitch).isZero();
        if (here && up.wholeTimes(pitch) < SHORT) {
          numbers.add((int) up.wholeTimes(pitch) + 1);
          left.remove(height);
        }
      }
      if (numbers.isEmpty()) {
        return Optional.empty();
      }
      reaches.add(new Reach(step, numbers));
      int into = numbers.getLast();
      int pin = 1 + random.nextInt(2);
      zero = zero.plus(pitch.times(into - pin));
      step = Optional.of(new Clamping.Step(pin, into));
    }
    return Optional.of(reaches);
  }
}
