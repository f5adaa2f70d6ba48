package fourpin.boring;

import fourpin.job.Support;
import fourpin.measure.Length;
import java.util.List;
import java.util.stream.Stream;

/** What shallower holes cost: stems that no longer go in. */
final class ProudStems {

  private ProudStems() {}

  /**
   * @param grids whose holes become so deep
   */
  static String cost(List<BayGrid> grids, Length depth, Reporter reporter) {
    return grids.stream()
        .flatMap(g -> g.support() instanceof Support.Pins p ? Stream.of(p.stem()) : Stream.empty())
        .max(Length::compareTo)
        .map(stem -> cost(stem, depth, reporter))
        .orElse("less of each stem is held");
  }

  private static String cost(Length stem, Length depth, Reporter reporter) {
    return stem.isMoreThan(depth)
        ? Reporter.say(
            "stems of %s then stand %s proud: shorter ones, or shorten them",
            reporter.text(stem), reporter.atLeast(stem.minus(depth)))
        : Reporter.say("nothing: stems of %s still go in whole", reporter.text(stem));
  }
}
