package fourpin.shop.web;

import fourpin.shop.store.Revision;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What was done to a job or to the shop, the last first.
 *
 * @param title name of the job or shop
 * @param base address of it
 * @param newest the revision that holds now
 * @param older the number below which the next page begins; nothing where this is the last
 */
public record HistoryPage(
    String title,
    String base,
    String token,
    String newest,
    List<Entry> entries,
    List<Entry> variants,
    Optional<Long> older) {

  /** As many as a page shows. */
  static final int MOST = 50;

  private static final DateTimeFormatter SHOWN =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT);

  public HistoryPage {
    entries = List.copyOf(entries);
    variants = List.copyOf(variants);
  }

  /**
   * @param found part of the history, the newest first: one more than is shown, if there are as
   *     many
   */
  static HistoryPage of(
      String base, String token, Revision newest, List<Revision> found, List<Revision> variants) {
    return new HistoryPage(
        newest.name(),
        base,
        token,
        newest.id().value(),
        IntStream.range(0, Math.min(found.size(), MOST))
            .mapToObj(i -> Entry.of(found.get(i), found.stream().skip(i + 1).findFirst()))
            .toList(),
        variants.stream().map(Entry::variant).toList(),
        found.size() > MOST ? Optional.of(found.get(MOST - 1).number()) : Optional.empty());
  }

  /** Where the part of the history that somebody asks for begins. */
  static long below(Context http) {
    String number = Objects.requireNonNullElse(http.queryParam("below"), "");
    return number.matches("\\d{1,15}") ? Long.parseLong(number) : Long.MAX_VALUE;
  }

  /** A moment, for people; scripts show it in their own zone where there is one beside it. */
  static String shown(Instant moment) {
    return SHOWN.format(moment.atOffset(ZoneOffset.UTC));
  }

  /**
   * One state of the job.
   *
   * @param moment for machines, and {@code time} for people
   * @param before the revision before it; empty for the first
   */
  public record Entry(
      String id,
      long number,
      String moment,
      String time,
      String by,
      String what,
      String kind,
      String before) {

    static Entry of(Revision revision, Optional<Revision> before) {
      return of(revision, revision.why(), before);
    }

    /** A variant by its name. */
    static Entry variant(Revision revision) {
      return of(revision, revision.variant().orElseThrow(), Optional.empty());
    }

    private static Entry of(Revision revision, String what, Optional<Revision> before) {
      return new Entry(
          revision.id().value(),
          revision.number(),
          revision.when().toString(),
          shown(revision.when()),
          revision.by(),
          what,
          HistoryPage.before(revision.kind()),
          before.map(r -> r.id().value()).orElse(""));
    }
  }

  /** A change on one line. */
  static String line(Revision revision) {
    return "change " + revision.number() + ": " + before(revision.kind()) + revision.why();
  }

  /**
   * What is said before the words of a change, so that one taken back is not read as if it held.
   */
  private static String before(Revision.Kind kind) {
    return switch (kind) {
      case EDIT -> "";
      case UNDO -> "taken back: ";
      case REDO -> "brought back: ";
    };
  }
}
