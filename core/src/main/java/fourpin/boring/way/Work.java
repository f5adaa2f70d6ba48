package fourpin.boring.way;

import fourpin.job.Setting;
import java.util.List;
import java.util.Optional;

/**
 * What a way takes, for one copy of a case.
 *
 * @param setUps settings of a bit, its stop or a fence, with a test; one serves all copies
 * @param clampings of a guide, each step along counted; without a guide of blanks, of a panel for
 *     each row at the drill press, and of panels that are laid side by side
 * @param holes bored; passes of the cutter where grooves are cut
 * @param seconds for one hole or pass
 * @param making of guide, stick or program; one serves all copies
 * @param lines squared across panels that are marked together; none where they are not
 * @param wear of a guide's hole by 100 holes, {@code uses} how often the most used of its holes is
 *     bored through; none without a guide
 * @param refits times that the block of a guide comes off and goes on again
 * @param bought what is needed and not at hand, or taken for granted
 */
record Work(
    int setUps,
    long clampings,
    long holes,
    Setting seconds,
    Making making,
    Optional<Lines> lines,
    Optional<Wear> wear,
    long refits,
    List<Purchase> bought) {

  Work {
    bought = List.copyOf(bought);
  }

  /** Without lines across several panels, and without a block that comes off. */
  Work(
      int setUps,
      long clampings,
      long holes,
      Setting seconds,
      Making making,
      Optional<Wear> wear,
      List<Purchase> bought) {
    this(setUps, clampings, holes, seconds, making, Optional.empty(), wear, 0, bought);
  }

  /** The same with pairs of panels laid side by side and marked by lines across both. */
  Work inPairs(int pairs, Lines across) {
    return new Work(
        setUps,
        clampings + pairs,
        holes,
        seconds,
        making,
        Optional.of(across),
        wear,
        refits,
        bought);
  }

  /** The same with a block that comes off so many times. */
  Work withRefits(long times) {
    return new Work(setUps, clampings, holes, seconds, making, lines, wear, times, bought);
  }

  /** Lines squared across panels. @param holes that need no mark of their own then */
  record Lines(long count, long holes) {}

  /** What has to be made first. @param holes that are bored in it, {@code pins} that are turned */
  record Making(Setting minutes, int holes, int pins) {
    Making(Setting minutes) {
      this(minutes, 0, 0);
    }
  }

  /** How a guide wears. @param uses of its most used hole in one copy of the case */
  record Wear(Setting per100, long uses) {}
}
