package fourpin.plan;

import fourpin.boring.BayGrid;
import fourpin.boring.BayGrid.Row;
import fourpin.boring.OppositeHoles;
import fourpin.boring.way.BitSetting;
import fourpin.boring.way.CaseBoring;
import fourpin.boring.way.Clamping;
import fourpin.boring.way.Gang;
import fourpin.boring.way.Method;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature.Hole;
import fourpin.job.Way;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How each row of one case is bored. */
final class CaseWays {

  /** In what manner a row is bored. */
  enum Manner {
    BY_HAND,
    DRILL_PRESS,
    MACHINE,
    GUIDED;

    boolean isMarked() {
      return this == BY_HAND || this == DRILL_PRESS;
    }
  }

  /** A guide with the bays that are bored through it. */
  record GuidedBoring(Way way, Method.Guided method, List<BayGrid> grids) {}

  /** Bays that are bored with a hand drill from marks. */
  record HandBoring(BitSetting bit, List<BayGrid> grids) {}

  private record RowWay(Manner manner, Face edge, Optional<BitSetting> bit) {}

  private static final RowWay STICK = new RowWay(Manner.BY_HAND, Face.FRONT, Optional.empty());

  private final Map<String, RowWay> rows = new LinkedHashMap<>();
  private final List<GuidedBoring> guided = new ArrayList<>();
  private final List<HandBoring> byHand = new ArrayList<>();
  private final List<Gang> gangs = new ArrayList<>();
  private final List<OppositeHoles> opposite;
  private Optional<String> machine = Optional.empty();

  /**
   * @param borings of any cases
   */
  CaseWays(BuiltCase built, List<CaseBoring> borings) {
    borings.stream().filter(b -> b.caseName().equals(built.order().name())).forEach(this::take);
    this.opposite = CaseBoring.opposite(built, borings);
  }

  private void take(CaseBoring boring) {
    if (boring.answer(boring.chosen()).method().isEmpty()) {
      return;
    }
    switch (boring.method()) {
      case Method.Guided method -> {
        guided.add(new GuidedBoring(boring.chosen(), method, boring.grids()));
        take(boring, Manner.GUIDED, method.bit());
      }
      case Method.Marked(Method.How how, BitSetting bit, List<Gang> pairs) -> {
        gangs.addAll(pairs);
        if (how == Method.How.BY_HAND) {
          byHand.add(new HandBoring(bit, boring.grids()));
        }
        take(boring, how == Method.How.DRILL_PRESS ? Manner.DRILL_PRESS : Manner.BY_HAND, bit);
      }
      case Method.Programmed method -> {
        machine = Optional.of(method.machine());
        take(boring, Manner.MACHINE, method.bit());
      }
      case Method.Grooved _, Method.ScrewedOn _, Method.Blanks _ -> {}
    }
  }

  private void take(CaseBoring boring, Manner manner, BitSetting bit) {
    for (BayGrid grid : boring.grids()) {
      for (Row row : grid.rows()) {
        Face edge = row.name() == Row.Name.BACK ? Face.BACK : Face.FRONT;
        rows.put(grid.purpose(row), new RowWay(manner, edge, Optional.of(bit)));
      }
    }
  }

  Manner manner(Hole hole) {
    return rows.getOrDefault(hole.purpose(), STICK).manner();
  }

  /** The edge that a row is nearest to: on the drill press it runs along the fence. */
  Face edge(Hole hole) {
    return rows.getOrDefault(hole.purpose(), STICK).edge();
  }

  /** The bit that bores a hole, where the way says it. */
  Optional<BitSetting> bit(Hole hole) {
    return rows.getOrDefault(hole.purpose(), STICK).bit();
  }

  /** The opposite holes with least wood between them of which these bays have one. */
  Optional<OppositeHoles> opposite(List<BayGrid> grids) {
    return opposite.stream()
        .filter(o -> grids.contains(o.one().grid()) || grids.contains(o.other().grid()))
        .min(Comparator.comparing(OppositeHoles::wood));
  }

  List<HandBoring> byHand() {
    return byHand;
  }

  List<GuidedBoring> guided() {
    return guided;
  }

  /** Uprights that are marked in pairs. */
  List<Gang> gangs() {
    return gangs;
  }

  /** Whether the holes in a face take their heights from lines across two panels side by side. */
  boolean isOnLine(String part, Face face) {
    return gangs.stream()
        .flatMap(g -> g.panels().stream())
        .anyMatch(l -> l.part().equals(part) && l.face() == face);
  }

  /** The guide that a hole is bored through, if it is through one. */
  Optional<GuidedBoring> guided(Hole hole) {
    return guided.stream()
        .filter(
            boring ->
                boring.grids().stream()
                    .anyMatch(
                        g -> g.rows().stream().map(g::purpose).anyMatch(hole.purpose()::equals)))
        .findFirst();
  }

  /** Whether the block of a guide bears on the lower end of a part. */
  boolean bearsOnEndOf(String mark) {
    return guided.stream()
        .flatMap(g -> g.method().clampings().stream())
        .anyMatch(c -> c.part().equals(mark) && c.bearing() instanceof Clamping.Bearing.End);
  }

  /** What bores by coordinates, if anything does. */
  Optional<String> machine() {
    return machine;
  }
}
