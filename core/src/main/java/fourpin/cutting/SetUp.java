package fourpin.cutting;

import fourpin.measure.Length;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Passes made without touching the fence or stop. Cautions for the saw are the business of whoever
 * prints the steps.
 */
public sealed interface SetUp {

  List<SawStep> steps();

  /** The way of the cuts. */
  Direction direction();

  /** How many of these cut another way than the one before them. */
  static long turns(List<SetUp> setUps) {
    return IntStream.range(1, setUps.size())
        .filter(i -> setUps.get(i).direction() != setUps.get(i - 1).direction())
        .count();
  }

  /** Trimming one edge; {@code off} is all that goes there, kerf included. */
  record TrimEdge(Edge edge, Length off, List<SawStep> steps) implements SetUp {
    public TrimEdge {
      steps = List.copyOf(steps);
    }

    @Override
    public Direction direction() {
      return edge.direction();
    }
  }

  /**
   * Cuts in one direction at one setting; {@code fence} is the finished size between fence and
   * blade.
   */
  record CutTo(Direction direction, Length fence, List<SawStep> steps) implements SetUp {
    public CutTo {
      steps = List.copyOf(steps);
    }
  }
}
