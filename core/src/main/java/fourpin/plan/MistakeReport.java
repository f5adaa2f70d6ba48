package fourpin.plan;

import fourpin.bench.WorkedPiece;
import fourpin.measure.Figure;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * What a mistake makes of one panel, as the virtual bench shows it.
 *
 * @param part mark of the panel
 * @param outcome whether the panel is spoilt
 * @param what happens, in words
 * @param shows which holes differ and by how much, and at which shelf it shows most
 * @param test how to tell from this panel alone before the next is bored, then beside others
 * @param rescue whether the panel can be saved, {@code how} in words
 * @param figures that the words state
 */
public record MistakeReport(
    BenchMistake mistake,
    String caseName,
    String part,
    Outcome outcome,
    String what,
    String shows,
    String test,
    Rescue rescue,
    String how,
    List<Figure> figures) {

  public MistakeReport {
    figures = List.copyOf(figures);
  }

  /** What comes of a mistake. */
  public sealed interface Outcome {

    /**
     * The panel is not as wanted.
     *
     * @param right the piece as it should be, {@code wrong} as the virtual bench made it
     * @param check what tells them apart
     * @param alike marks of other panels that the same act spoils
     */
    record Spoilt(WorkedPiece right, WorkedPiece wrong, Check check, List<String> alike)
        implements Outcome {

      public Spoilt {
        alike = List.copyOf(alike);
      }

      /** No other panel. */
      Spoilt(WorkedPiece right, WorkedPiece wrong, Check check) {
        this(right, wrong, check, List.of());
      }
    }

    /** The panel is as wanted. @param why in words */
    record Harmless(String why) implements Outcome {}

    /** It can't be made in this way or this shop. @param why in words */
    record Impossible(String why) implements Outcome {}
  }

  /**
   * What a rule says on one piece alone.
   *
   * @param what is measured: "from the index end (bottom) to the lowest hole"
   * @param right on the piece as wanted
   * @param wrong with the mistake; none where there is nothing to measure to
   */
  public record Check(String what, Length right, Optional<Length> wrong) {}

  /** What becomes of a panel. */
  public enum Rescue {
    /** It is as good as wanted. */
    NOT_NEEDED,
    /** It is not quite as wanted, and does. */
    USE,
    /** It does if all other panels are bored likewise. */
    OTHERS_ALIKE,
    /** The wanted holes are bored as well. */
    BORE_AGAIN,
    /** The wrong holes are plugged first. */
    PLUG,
    /** Sleeves cover what is too wide. */
    SLEEVE,
    /** It can't be saved. */
    LOST
  }
}
