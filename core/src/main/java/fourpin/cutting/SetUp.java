package fourpin.cutting;

import fourpin.measure.Length;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Passes made at one tool without touching the fence or stop; only strips that fall off outside the
 * blade ask for the fence to be set anew. Cautions for the saw are the business of whoever prints
 * the steps.
 */
public sealed interface SetUp {

  List<SawStep> steps();

  /** The way of the cuts. */
  Direction direction();

  /** What holds the piece in each of its passes. */
  Hold hold();

  /** What stays of a piece across the cut, beside what comes off in a pass. */
  default Length rest(SawStep step) {
    return step.far()
        .map(far -> direction() == Direction.RIP ? far.width() : far.length())
        .orElse(Length.ZERO);
  }

  /** How many of these cut another way than the one before them. */
  static long turns(List<SetUp> setUps) {
    return IntStream.range(1, setUps.size())
        .filter(i -> setUps.get(i).direction() != setUps.get(i - 1).direction())
        .count();
  }

  /**
   * Trimming one edge; {@code off} is all that goes there, kerf included, and never lies between
   * fence and blade.
   */
  record TrimEdge(Edge edge, Length off, Hold hold, List<SawStep> steps) implements SetUp {
    public TrimEdge {
      if (hold == Hold.FENCE) {
        throw new IllegalArgumentException("what is trimmed would lie between fence and blade");
      }
      steps = List.copyOf(steps);
    }

    @Override
    public Direction direction() {
      return edge.direction();
    }
  }

  /** Cuts in one direction at one setting; {@code fence} is the finished size of what comes off. */
  record CutTo(Direction direction, Length fence, Hold hold, List<SawStep> steps) implements SetUp {
    public CutTo {
      steps = List.copyOf(steps);
    }
  }
}
