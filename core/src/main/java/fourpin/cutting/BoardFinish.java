package fourpin.cutting;

import fourpin.cutting.NearPatterns.Listed;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Ends a search for boards where the linear programme leaves little to lose: lists all patterns
 * that can be in a cutting at the bound, and makes one of them, or shows that there is none and
 * raises the bound. Instances that are hard for everything else are decided by a few hundred
 * patterns. Where the patterns are too many, those that lose least may still make a cutting.
 */
final class BoardFinish implements Finish {
  /** More parts are better left to dives. */
  private static final int MOST_PARTS = 1_000;

  private final Inflated problem;
  private final Pricing pricing;
  private final Work work;
  private final int[] wanted;
  private final int[] supply;

  BoardFinish(Inflated problem, Pricing pricing, Work work) {
    this.problem = problem;
    this.pricing = pricing;
    this.work = work;
    wanted = problem.fittingDemand();
    supply = problem.panels.stream().mapToInt(p -> p.sheet().supply().most()).toArray();
  }

  @Override
  public Optional<List<Column>> finish(Generation.Relaxed top, Generation generation, long best) {
    boolean more = Arrays.stream(wanted).asLongStream().sum() <= MOST_PARTS;
    Loss loss = loss(top, generation);
    while (more && generation.bound() < best && !work.spent()) {
      ExactCover cover = new ExactCover(generation.costs(), generation.scale(), work);
      switch (answer(cover, loss, generation.bound())) {
        case FOUND -> {
          return Optional.of(NearPatterns.cut(problem, cover.taken()));
        }
        case NONE -> generation.raise();
        case UNKNOWN -> more = false;
      }
    }
    return Optional.empty();
  }

  private Loss loss(Generation.Relaxed top, Generation generation) {
    long[] worth = new long[wanted.length];
    Arrays.setAll(worth, kind -> (long) (top.worths()[kind] * generation.scale()));
    return Loss.of(generation.costs(), generation.scale(), worth, pricing, wanted);
  }

  private ExactCover.Answer answer(ExactCover cover, Loss loss, long cost) {
    long mayLose = loss.most(wanted, supply, cost);
    if (mayLose < 0) {
      return ExactCover.Answer.NONE;
    }
    Listed listed = new NearPatterns(problem, loss, wanted, supply, work).list(mayLose);
    ExactCover.Answer answer = cover.search(listed.patterns(), wanted, supply, cost, mayLose);
    return answer == ExactCover.Answer.NONE && listed.most() < mayLose
        ? ExactCover.Answer.UNKNOWN
        : answer;
  }
}
