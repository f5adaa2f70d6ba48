package fourpin.sheets.pages;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Running text, some of it stressed. */
public record Prose(List<Run> runs) {

  /** How a stretch of text is set. */
  public enum Stress {
    PLAIN,
    BOLD
  }

  /** A stretch of text set alike. */
  public record Run(String text, Stress stress) {}

  public Prose {
    runs = List.copyOf(runs);
  }

  public static Prose plain(String text) {
    return new Prose(List.of(new Run(text, Stress.PLAIN)));
  }

  public static Prose bold(String text) {
    return new Prose(List.of(new Run(text, Stress.BOLD)));
  }

  public Prose then(Prose next) {
    return new Prose(Stream.concat(runs.stream(), next.runs.stream()).toList());
  }

  /** Its words without stress. */
  public String text() {
    return runs.stream().map(Run::text).collect(Collectors.joining());
  }
}
