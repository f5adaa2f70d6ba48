package fourpin.boring.way;

import fourpin.boring.BayGrid;
import fourpin.boring.OppositeHoles;
import fourpin.casework.BuiltCase;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How the bays of one case that are bored alike get their holes.
 *
 * @param caseName of the job
 * @param grids bays with one kind of support, one diameter and one depth
 * @param answers one for each way, in the order of {@link Way}
 * @param chosen the way that the plan takes; its answer has a method
 * @param because why it is recommended, or that the maker chose it
 * @param figures that the recommendation rests on
 */
public record CaseBoring(
    String caseName,
    List<BayGrid> grids,
    List<WayAnswer> answers,
    Way chosen,
    String because,
    List<Figure> figures) {

  public CaseBoring {
    grids = List.copyOf(grids);
    answers = List.copyOf(answers);
    figures = List.copyOf(figures);
  }

  /** The same bays bored another way; that there is a method for it is left to the caller. */
  public CaseBoring by(Way way, String why) {
    return new CaseBoring(caseName, grids, answers, way, why, figures);
  }

  /**
   * Holes from both faces of the uprights of a case that lie over each other.
   *
   * @param borings of any cases
   */
  public static List<OppositeHoles> opposite(BuiltCase built, List<CaseBoring> borings) {
    return OppositeHoles.of(
        built,
        borings.stream()
            .filter(b -> b.caseName().equals(built.order().name()))
            .flatMap(CaseBoring::bored)
            .toList());
  }

  /** None where the chosen way has no method or bores no holes into panels. */
  private Stream<OppositeHoles.Bored> bored() {
    return point().stream()
        .flatMap(point -> grids.stream().map(g -> new OppositeHoles.Bored(g, point)));
  }

  /** Of the bit that bores panels; none where the chosen way bores none. */
  Optional<Length> point() {
    return answer(chosen).method().flatMap(Method::panelBit).map(BitSetting::point);
  }

  public WayAnswer answer(Way way) {
    return answers.get(way.ordinal());
  }

  /** How the chosen way is done. */
  public Method method() {
    return answer(chosen).method().orElseThrow();
  }

  /** Time that the chosen way takes for all copies; none where there is no level to bore. */
  public Optional<Figure> minutes() {
    return answer(chosen).figures().stream()
        .filter(f -> hasLevels() && f.id().endsWith("/" + Reckoning.MINUTES))
        .findFirst();
  }

  /** Tools that the chosen way needs bought; none where there is no level to bore. */
  public List<Purchase> purchases() {
    return hasLevels() ? answer(chosen).purchases() : List.of();
  }

  private boolean hasLevels() {
    return grids.stream().anyMatch(g -> !g.levels().isEmpty());
  }
}
