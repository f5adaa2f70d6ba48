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
        .filter(stem -> stem.isMoreThan(depth))
        .map(
            stem ->
                Reporter.say(
                    "stems of %s then stand %s proud: shorter ones, or shorten them",
                    reporter.text(stem), reporter.atLeast(stem.minus(depth))))
        .orElse("less of each stem is held");
  }
}
