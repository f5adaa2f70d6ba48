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

/** How far forward the front row has to stand for a shelf not to tip. */
final class RowForward {

  private static final Length STEP_INCHES = Length.inches(1, 16);
  private static final Length STEP_METRIC = Length.mm(1);

  private final Job job;
  private final ShelfReader reader;
  private final Part part;
  private final Verdict now;
  private final PlateBending.Memory plates;

  /**
   * @param now the shelf as it is
   */
  RowForward(Job job, ShelfReader reader, Part part, Verdict now, PlateBending.Memory plates) {
    this.job = job;
    this.reader = reader;
    this.part = part;
    this.now = now;
    this.plates = plates;
  }

  /**
   * A row on which it does not tip.
   *
   * @param setback from the front edge of the shelf
   * @param farthest from there that it may stand
   * @param there the shelf on it
   * @param stated how the job says so
   */
  record Place(String setback, String farthest, Verdict there, Stated.OfSetting stated) {

    /** What to do. */
    String words() {
      return "bring the front row to " + setback + " from the front edge of the shelves";
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
            .filter(setback -> setback.mm() < rows.front().number())
            .flatMap(setback -> place(rows, farthest, setback).stream())
            .filter(place -> !place.there().tips())
            .toList();
    return standing.stream()
        .filter(place -> place.there().isBorne())
        .findFirst()
        .or(() -> standing.stream().reduce((_, last) -> last));
  }

  /** By statics, in whole steps of a rule. */
  private Length farthest() {
    Length step = job.unit().customary() ? STEP_INCHES : STEP_METRIC;
    double most =
        now.shelf().cases().all().stream()
            .map(of -> Resting.of(now.shelf(), of).middle())
            .min(Comparator.naturalOrder())
            .orElseThrow();
    return step.times((long) Math.floor(most / step.mm()));
  }

  private Length usual() {
    return Settings.standard(job.unit())
        .length(reader.frontSetting(part))
        .plus(reader.rowsBack(part));
  }

  /** Nothing where the setting does not reach so far forward. */
  private Optional<Place> place(Bearing.Rows rows, Length farthest, Length setback) {
    Setting setting = reader.frontSetting(part);
    String stated = job.style().text(setback.minus(reader.rowsBack(part)));
    return SettingReader.read(setting, stated, job.unit()) instanceof Reading.Good<?>
        ? Optional.of(
            new Place(
                job.style().text(setback),
                job.style().text(farthest),
                there(rows, setting, setback),
                new Stated.OfSetting(setting, stated)))
        : Optional.empty();
  }

  /** One setting says for standards and cleats where both rows stand. */
  private Verdict there(Bearing.Rows rows, Setting setting, Length setback) {
    Sourced front = Sourced.stated(Quantity.of(setback));
    Sourced back =
        setting == Setting.FRONT_ROW
            ? rows.back()
            : Sourced.stated(Quantity.of(setback.minus(reader.rowsBack(part).times(2))));
    Bearing moved = new Bearing.Rows(front, back, rows.count());
    return new Verdict(now.shelf().on(moved, now.shelf().supports()), plates);
  }
}
