package fourpin.strength;

import fourpin.job.CaseOrder;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Sourced;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * All ways in which something that carries things is loaded, in one list: plates, supports, joints,
 * cures, and the standing of whole cases read them here, so that none of them misses one.
 *
 * @param things how deep those on it are; nothing where they are taken to fill it
 * @param depth of what they stand on, behind banding that carries nothing, mm
 * @param hand that pushes on its front edge while nothing stands on it, N
 */
record LoadCases(Optional<Sourced> things, double depth, Sourced hand) {

  /** Of what stands in one bay on something of a depth. @param bay from the left, from 1 */
  static LoadCases of(CaseOrder order, int bay, Length depth) {
    return new LoadCases(
        ShelfLoad.depthOfRow(order, bay, depth), depth.mm(), hand(order.settings()));
  }

  /** Of what is taken to stand on a top. */
  static LoadCases ofTop(CaseOrder order, Length depth) {
    return new LoadCases(
        ShelfLoad.depthOfUnnamedRow(order, depth), depth.mm(), hand(order.settings()));
  }

  static Sourced hand(Settings settings) {
    return new Sourced(
        Quantity.of(settings.number(Setting.HAND_PUSH), QuantityUnit.FORCE),
        settings.source(Setting.HAND_PUSH));
  }

  /** Each of them, spread evenly first, a hand last. */
  List<LoadCase> all() {
    List<LoadCase> all = new ArrayList<>(loaded());
    all.add(empty());
    return all;
  }

  /** Those under its load, the ones that take least work first. */
  List<LoadCase> loaded() {
    List<LoadCase> cases = new ArrayList<>(List.of(LoadCase.EVEN));
    cases.addAll(rows());
    cases.add(LoadCase.ONE_HALF);
    return cases;
  }

  /** Those in which all its load stands on it, and on both ends alike. */
  List<LoadCase> loadedAllOver() {
    return loaded().stream().filter(of -> !of.equals(LoadCase.ONE_HALF)).toList();
  }

  /** Those that bring half of themselves to each end, a hand in the middle among them. */
  List<LoadCase> onBothEnds() {
    return all().stream().filter(of -> !of.equals(LoadCase.ONE_HALF)).toList();
  }

  /** All but its load spread evenly. */
  List<LoadCase> uneven() {
    return all().stream().filter(of -> !of.equals(LoadCase.EVEN)).toList();
  }

  /**
   * Things less deep than it may all stand in front, or all against the back; deeper ones stand out
   * over the edge. Nothing of those that fill the depth, and of those that fall off it.
   */
  List<LoadCase> rows() {
    return placed().filter(of -> !fall()).stream().flatMap(LoadCases::rows).toList();
  }

  private static Stream<LoadCase> rows(LoadCase placed) {
    return placed instanceof LoadCase.FrontRow(Sourced deep)
        ? Stream.of(placed, new LoadCase.BackRow(deep))
        : Stream.of(placed);
  }

  /** How much of the depth its load stands on where that is least, mm. */
  double stands() {
    return rows().stream().findFirst().orElse(LoadCase.EVEN).lies(depth).deep();
  }

  /** Nothing on it, and a hand on its front edge. */
  LoadCase empty() {
    return new LoadCase.Hand(hand);
  }

  /**
   * As a whole case is taken to stand: deeper things against the back, whether or not they fall.
   */
  LoadCase asStated() {
    return placed().filter(LoadCase.OverEdge.class::isInstance).orElse(LoadCase.EVEN);
  }

  /** As far forward as it may stand, for what a whole case may tip by. */
  LoadCase forward() {
    return placed().orElse(LoadCase.EVEN);
  }

  /** Whether things against its back have their middle before its front edge. */
  boolean fall() {
    return things.filter(deep -> deep.number() >= 2 * depth).isPresent();
  }

  private Optional<LoadCase> placed() {
    return things.flatMap(this::placed);
  }

  private Optional<LoadCase> placed(Sourced deep) {
    double bears = 2 * depth - deep.number();
    return bears > depth
        ? Optional.of(new LoadCase.FrontRow(deep))
        : Optional.<LoadCase>of(new LoadCase.OverEdge(deep, bears)).filter(_ -> bears < depth);
  }
}
