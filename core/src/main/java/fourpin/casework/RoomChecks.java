package fourpin.casework;

import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Job;
import fourpin.job.Room;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;

/** Whether the cases fit the place where they are to stand, and can be stood up there. */
final class RoomChecks {

  private final Job job;
  private final Room room;
  private final List<Finding> list = new ArrayList<>();

  private RoomChecks(Job job, Room room) {
    this.job = job;
    this.room = room;
  }

  static List<Finding> of(Job job, List<BuiltCase> cases) {
    return job.room().map(room -> new RoomChecks(job, room).run(cases)).orElse(List.of());
  }

  private List<Finding> run(List<BuiltCase> cases) {
    Length all = Length.ZERO;
    for (BuiltCase built : cases) {
      all = all.plus(built.outside().size(Axis.X).times(built.order().quantity()));
      fits(
          "height",
          built,
          built.outside().size(Axis.Z),
          room.ceiling().orElse(built.outside().size(Axis.Z)));
      fits(
          "depth",
          built,
          built.outside().size(Axis.Y),
          room.depth().orElse(built.outside().size(Axis.Y)));
      standsUp(built);
    }
    Length width = all;
    room.width().filter(width::isMoreThan).ifPresent(limit -> tooWide(width, limit));
    return List.copyOf(list);
  }

  private void tooWide(Length width, Length limit) {
    list.add(
        new Finding(
            Severity.ERROR,
            "room-too-narrow",
            "the cases side by side are " + text(width) + " wide, the room " + text(limit),
            List.of(),
            Place.JOB,
            List.of(
                new Remedy(
                    "make the cases " + text(width.minus(limit)) + " narrower together",
                    "shelf length"))));
  }

  private void fits(String size, BuiltCase built, Length is, Length limit) {
    if (is.isMoreThan(limit)) {
      list.add(
          new Finding(
              Severity.ERROR,
              "room-too-small",
              "the "
                  + size
                  + " of "
                  + built.order().name()
                  + " is "
                  + text(is)
                  + ", the room has "
                  + text(limit),
              List.of(),
              Place.of(built.order().name()),
              List.of(
                  new Remedy(
                      "make it " + text(is.minus(limit)) + " smaller", "room on the shelves"))));
    }
  }

  /**
   * A case that is carried in lying turns about its back edge: its diagonal must pass under the
   * ceiling.
   */
  private void standsUp(BuiltCase built) {
    double height = built.outside().size(Axis.Z).mm();
    double depth = built.outside().size(Axis.Y).mm();
    Length diagonal = Length.nearestMm(Math.hypot(height, depth));
    room.ceiling()
        .filter(c -> diagonal.isMoreThan(c) && c.mm() >= height)
        .ifPresent(ceiling -> tooTallToStand(built, diagonal, ceiling, depth));
  }

  private void tooTallToStand(BuiltCase built, Length diagonal, Length ceiling, double depth) {
    Length height = Length.nearestMm(Math.sqrt(ceiling.mm() * ceiling.mm() - depth * depth));
    list.add(
        new Finding(
            Severity.DOUBT,
            "cannot-be-stood-up",
            built.order().name()
                + " measures "
                + text(diagonal)
                + " across the corners of its side: lying down it can't be stood up under "
                + text(ceiling),
            List.of(),
            Place.of(built.order().name()),
            List.of(
                new Remedy("make it at most " + text(height) + " high", "room on the shelves"),
                new Remedy("assemble it standing, in its place", "work in the room"))));
  }

  private String text(Length length) {
    return job.style().text(length);
  }
}
