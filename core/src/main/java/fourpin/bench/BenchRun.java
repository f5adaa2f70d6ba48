package fourpin.bench;

import java.util.List;
import java.util.Map;

/**
 * What came of running steps on the virtual bench.
 *
 * @param pieces by mark, in the order that they were cut
 * @param mishaps what could not be done as it was said
 */
public record BenchRun(Map<String, WorkedPiece> pieces, List<Mishap> mishaps) {

  public BenchRun {
    mishaps = List.copyOf(mishaps);
  }

  /** A step that could not be done. @param what in words, with the piece */
  public record Mishap(Step step, String what) {}
}
