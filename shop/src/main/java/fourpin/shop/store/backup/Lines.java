package fourpin.shop.store.backup;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import fourpin.shop.store.DocumentId;
import fourpin.shop.store.Documents.Place;
import fourpin.shop.store.KeptLayout;
import fourpin.shop.store.Piece;
import fourpin.shop.store.Racked;
import fourpin.shop.store.Revision;
import fourpin.shop.store.RevisionId;
import fourpin.shop.store.Tick;
import fourpin.shop.store.sql.DocumentRow;
import fourpin.shop.store.sql.LayoutRow;
import fourpin.shop.store.sql.PieceRow;
import fourpin.shop.store.sql.RevisionRow;
import fourpin.shop.store.sql.TickRow;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;

/** The lines of a backup, as docs/backup.md describes them: flat, in words, without our types. */
final class Lines {

  private Lines() {}

  record About(String format, int version) {}

  record OfDocument(String id, String place, long revisions) {
    static OfDocument of(DocumentRow row) {
      return new OfDocument(row.id().value(), word(row.place()), row.newest());
    }

    DocumentRow row() {
      return new DocumentRow(new DocumentId(id), value(Place.class, place), revisions);
    }
  }

  record OfRevision(
      String document,
      long number,
      String id,
      String kind,
      String shows,
      Optional<String> madeOn,
      String name,
      Instant when,
      String by,
      String why,
      Optional<String> variant) {

    static OfRevision of(RevisionRow row) {
      Revision r = row.revision();
      return new OfRevision(
          r.document().value(),
          r.number(),
          r.id().value(),
          word(r.kind()),
          r.shows().value(),
          row.madeOn().map(RevisionId::value),
          r.name(),
          r.when(),
          r.by(),
          r.why(),
          r.variant());
    }

    boolean hasText() {
      return value(Revision.Kind.class, kind) == Revision.Kind.EDIT;
    }

    RevisionRow row(Optional<String> text) {
      return new RevisionRow(
          new Revision(
              new RevisionId(id),
              new DocumentId(document),
              number,
              value(Revision.Kind.class, kind),
              new RevisionId(shows),
              name,
              when,
              by,
              why,
              variant),
          madeOn.map(RevisionId::new),
          text);
    }
  }

  /** As the first version of backups has it: the reason of a variant begins with a word. */
  record OfOldRevision(
      String document,
      long number,
      String id,
      String kind,
      String shows,
      Optional<String> madeOn,
      String name,
      Instant when,
      String by,
      String why) {

    private static final String MARK = "Variant: ";

    OfRevision now() {
      Optional<String> variant =
          Optional.of(why)
              .filter(
                  w -> w.startsWith(MARK) && value(Revision.Kind.class, kind) == Revision.Kind.EDIT)
              .map(w -> w.substring(MARK.length()));
      return new OfRevision(
          document, number, id, kind, shows, madeOn, name, when, by, why, variant);
    }
  }

  record OfLayout(String document, String problem, String material, long change, String body) {
    static OfLayout of(LayoutRow row) {
      KeptLayout layout = row.layout();
      return new OfLayout(
          row.document().value(),
          layout.problem(),
          layout.material(),
          layout.change(),
          layout.body());
    }

    LayoutRow row() {
      return new LayoutRow(
          new DocumentId(document), new KeptLayout(problem, material, change, body));
    }
  }

  record OfTick(
      String document,
      String plan,
      String step,
      String device,
      String state,
      int counted,
      Instant said,
      Instant at) {

    static OfTick of(TickRow row) {
      return new OfTick(
          row.document().value(),
          row.plan(),
          row.tick().step(),
          row.device(),
          word(row.tick().state()),
          row.tick().counted(),
          row.tick().said(),
          row.heldAt());
    }

    TickRow row() {
      return new TickRow(
          new DocumentId(document),
          plan,
          device,
          new Tick(step, value(Tick.State.class, state), counted, said),
          at);
    }
  }

  /** Picometres, so that every length comes back exactly, and the unit that it was written in. */
  record OfLength(long pm, String unit) {
    static OfLength of(Length length) {
      return new OfLength(length.picometres(), word(length.unit()));
    }

    Length length() {
      return new Length(pm, value(Unit.class, unit));
    }
  }

  record OfPiece(
      String id,
      long version,
      String material,
      String form,
      OfLength thickness,
      OfLength length,
      OfLength width,
      int count,
      Optional<String> price,
      String note) {

    static OfPiece of(PieceRow row) {
      Piece piece = row.racked().piece();
      return new OfPiece(
          row.racked().id(),
          row.racked().version(),
          piece.material(),
          word(piece.form()),
          OfLength.of(piece.thickness()),
          OfLength.of(piece.length()),
          OfLength.of(piece.width()),
          piece.count(),
          piece.price().map(BigDecimal::toPlainString),
          piece.note());
    }

    PieceRow row() {
      return new PieceRow(
          new Racked(
              id,
              version,
              new Piece(
                  material,
                  value(Piece.Form.class, form),
                  thickness.length(),
                  length.length(),
                  width.length(),
                  count,
                  price.map(BigDecimal::new),
                  note)));
    }
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static <E extends Enum<E>> E value(Class<E> type, String word) {
    return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
  }
}
