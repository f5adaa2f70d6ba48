package fourpin.plan;

import fourpin.measure.Figure;
import java.util.List;

/**
 * What a mistake makes of one panel, as the virtual bench shows it.
 *
 * @param part mark of the panel
 * @param what happens, in words
 * @param shows which holes differ and by how much, and at which level it is noticed first
 * @param test how to tell before the next panel is bored
 * @param rescue whether the panel can be saved, {@code how} in words
 * @param figures that the words state
 */
public record MistakeReport(
    BenchMistake mistake,
    String caseName,
    String part,
    String what,
    String shows,
    String test,
    Rescue rescue,
    String how,
    List<Figure> figures) {

  public MistakeReport {
    figures = List.copyOf(figures);
  }

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
