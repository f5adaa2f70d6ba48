package fourpin.strength;

import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingReader;
import fourpin.job.Settings;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Reading;
import fourpin.measure.Sourced;
import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How near to its edge a row has to stand for a shelf not to tip over it. */
final class RowOutward {

  private static final Length STEP_INCHES = Length.inches(1, 16);
  private static final Length STEP_METRIC = Length.mm(1);

  private final Job job;
  private final ShelfReader reader;
  private final Part part;
  private final Over row;
  private final Verdict now;
  private final PlateBending.Memory plates;

  /**
   * @param now the shelf as it is
   */
  RowOutward(
      Job job, ShelfReader reader, Part part, Over row, Verdict now, PlateBending.Memory plates) {
    this.job = job;
    this.reader = reader;
    this.part = part;
    this.row = row;
    this.now = now;
    this.plates = plates;
  }

  /**
   * A row on which it does not tip.
   *
   * @param row which
   * @param setback from its edge of the shelf
   * @param farthest from there that it may stand
   * @param there the shelf on it
   * @param stated how the job says so
   */
  record Place(Over row, String setback, String farthest, Verdict there, Stated.OfSetting stated) {

    /** What to do. */
    String words() {
      return "bring the %1$s row to %2$s from the %1$s edge of the shelves"
          .formatted(row.row(), setback);
    }
  }

  /**
   * As near to where it is as it may be, where its supports carry that; else as near to the edge as
   * is usual, which lightens them.
   */
  Optional<Place> find() {
    if (!(now.shelf().bearing() instanceof Bearing.Rows rows)) {
      return Optional.empty();
    }
    Length farthest = farthest();
    List<Place> standing =
        Stream.of(farthest, usual())
            .filter(setback -> farthest.isAtLeast(setback))
            .distinct()
            .filter(setback -> setback.mm() < row.setback(rows))
            .flatMap(setback -> place(rows, farthest, setback).stream())
            .filter(place -> place.there().tipping(row).isEmpty())
            .filter(this::leavesRoom)
            .toList();
    return standing.stream()
        .filter(place -> place.there().isBorne())
        .findFirst()
        .or(() -> standing.stream().reduce((_, last) -> last));
  }

  /**
   * On strips that hang below its edges the shelf would lie in place of its supports, and wide ones
   * stand out before it.
   */
  private boolean leavesRoom(Place place) {
    return reader.stripRoom(part, place.there().shelf().bearing()).isLeftBy(part);
  }

  /** By statics, in whole steps of a rule. */
  private Length farthest() {
    Length step = job.unit().customary() ? STEP_INCHES : STEP_METRIC;
    double most =
        now.shelf().cases().all().stream()
            .map(of -> Resting.of(now.shelf(), of).from(row, now.shelf()).middle())
            .min(Comparator.naturalOrder())
            .orElseThrow();
    return step.times((long) Math.floor(most / step.mm()));
  }

  private Length usual() {
    return Settings.standard(job.unit()).length(reader.rowSetting(part, row)).plus(inward());
  }

  /** How much further from its edge it stands than the setting says. */
  private Length inward() {
    Length back = reader.rowsBack(part);
    return switch (row) {
      case FRONT -> back;
      case BACK -> back.negated();
    };
  }

  /** Nothing where the setting does not reach so far. */
  private Optional<Place> place(Bearing.Rows rows, Length farthest, Length setback) {
    Setting setting = reader.rowSetting(part, row);
    String stated = job.style().text(setback.minus(inward()));
    return SettingReader.read(setting, stated, job.unit()) instanceof Reading.Good<?>
        ? Optional.of(
            new Place(
                row,
                job.style().text(setback),
                job.style().text(farthest),
                there(rows, setting, setback),
                new Stated.OfSetting(setting, stated)))
        : Optional.empty();
  }

  private Verdict there(Bearing.Rows rows, Setting setting, Length setback) {
    Sourced moved = Sourced.stated(Quantity.of(setback));
    Sourced other = other(rows, setting, setback);
    Bearing there =
        switch (row) {
          case FRONT -> new Bearing.Rows(moved, other, rows.count());
          case BACK -> new Bearing.Rows(other, moved, rows.count());
        };
    return new Verdict(now.shelf().on(there, now.shelf().supports()), plates);
  }

  /** One setting says for standards and cleats where both rows stand. */
  private Sourced other(Bearing.Rows rows, Setting setting, Length setback) {
    return setting == Setting.STANDARD_SETBACK
        ? Sourced.stated(Quantity.of(setback.minus(inward().times(2))))
        : switch (row) {
          case FRONT -> rows.back();
          case BACK -> rows.front();
        };
  }
}
