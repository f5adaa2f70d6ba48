package fourpin.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fourpin.boring.BayGrid;
import fourpin.boring.Borer;
import fourpin.boring.Boring;
import fourpin.boring.tolerance.Levelness;
import fourpin.boring.tolerance.Tolerances;
import fourpin.boring.way.CaseBoring;
import fourpin.casework.BuiltCase;
import fourpin.casework.CaseworkBuilder;
import fourpin.job.Job;
import fourpin.job.RandomJobs;
import fourpin.measure.Figure;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How level shelves lie in random jobs that are bored in ways made up for them. */
class LevelnessPropertiesTest {

  private static final int JOBS = 40;
  private static final int DRAWN = 10_000;

  @ParameterizedTest
  @ValueSource(longs = {0, 1_000})
  void everyLevelOfEveryBayIsJudged(long from) {
    int judged = 0;
    for (long seed = from; seed < from + JOBS; seed++) {
      Job job = RandomJobs.of(seed);
      Boring boring = Borer.bore(job, CaseworkBuilder.build(job));
      for (CaseBoring way : HandMadeWays.of(boring, seed)) {
        judged += judge(way, built(boring, way.caseName()), seed);
      }
    }
    assertThat(judged).as("places").isGreaterThan(JOBS);
  }

  private static BuiltCase built(Boring boring, String name) {
    return boring.cases().stream()
        .filter(c -> c.order().name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  private static int judge(CaseBoring way, BuiltCase built, long seed) {
    int levels = way.grids().stream().map(BayGrid::levels).mapToInt(l -> l.size()).sum();
    Optional<Levelness> answer = new Tolerances("$").of(way, built);
    assertThat(answer.isPresent()).as("job %d", seed).isEqualTo(levels > 0);
    answer.ifPresent(level -> judge(level, levels, seed));
    return levels;
  }

  /**
   * On six points both odds are drawn: four standard errors of a difference of odds of one half.
   */
  private static double sampled(Levelness level) {
    return level.places().stream().allMatch(p -> p.proud().isEmpty())
        ? 1e-9
        : 4 * Math.sqrt(2 * 0.25 / DRAWN);
  }

  private static void judge(Levelness level, int levels, long seed) {
    assertThat(level.places()).as("places of job %d", seed).hasSize(levels);
    assertThat(level.places())
        .as("job %d", seed)
        .allSatisfy(
            p -> assertThat(p.odds()).isBetween(0.0, level.worst().odds() + sampled(level)));
    assertThat(level.anyPlace().share()).isGreaterThanOrEqualTo(level.anyShelf().share());
    assertThat(level.figures()).extracting(Figure::id).doesNotHaveDuplicates();
  }
}
