package fourpin.shop.web;

import fourpin.measure.Counted;
import fourpin.shop.store.backup.Contents;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Where all that the shop keeps goes out as one file, and comes back.
 *
 * @param notice what happened last; may be empty
 */
public record BackupPage(String token, String notice, Optional<Preview> preview) {

  /**
   * What a backup would replace.
   *
   * @param upload which of the backups that were brought
   */
  public record Preview(String upload, List<Line> lines, String others) {
    public Preview {
      lines = List.copyOf(lines);
    }
  }

  /** A job or the shop file. @param now what is here, {@code then} what the backup holds */
  public record Line(String name, String now, String then, Fate fate) {}

  /** What becomes of it. */
  public enum Fate {
    COMES("comes"),
    GOES("goes, with all its changes"),
    STAYS("stays as it is"),
    REPLACED("is replaced");

    private final String words;

    Fate(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    /** Whether something that is here is lost by it. */
    public boolean loses() {
      return this == GOES || this == REPLACED;
    }
  }

  private static final String NOTHING = "not there";

  static Preview preview(String upload, Contents here, Contents backup) {
    List<Line> lines =
        Stream.concat(
                here.documents().stream().map(d -> line(Optional.of(d), find(backup, d))),
                backup.documents().stream()
                    .filter(d -> find(here, d).isEmpty())
                    .map(d -> line(Optional.empty(), Optional.of(d))))
            .toList();
    return new Preview(
        upload,
        lines,
        String.format(
            Locale.ROOT,
            "On the rack: %s now, %d then. Ticks of steps: %d now, %d then.",
            Counted.of(here.pieces(), "line"),
            backup.pieces(),
            here.ticks(),
            backup.ticks()));
  }

  private static Optional<Contents.Document> find(Contents in, Contents.Document like) {
    return in.documents().stream().filter(d -> d.id().equals(like.id())).findFirst();
  }

  private static Line line(Optional<Contents.Document> now, Optional<Contents.Document> then) {
    Fate fate =
        now.isEmpty()
            ? Fate.COMES
            : then.isEmpty() ? Fate.GOES : now.equals(then) ? Fate.STAYS : Fate.REPLACED;
    return new Line(
        then.or(() -> now).map(Contents.Document::name).orElse(""),
        now.map(BackupPage::words).orElse(NOTHING),
        then.map(BackupPage::words).orElse(NOTHING),
        fate);
  }

  private static String words(Contents.Document document) {
    return Counted.of(document.changes(), "change")
        + ", the last at "
        + HistoryPage.shown(document.last());
  }
}
