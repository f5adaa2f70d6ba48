package fourpin.casework;

import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.CaseOrder;
import fourpin.job.FaceFrame;
import fourpin.job.Job;
import fourpin.job.Room;
import fourpin.job.Setting;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
      Optional<BuiltCase> below = below(built, cases);
      all =
          below.isPresent()
              ? all
              : all.plus(built.outside().size(Axis.X).times(built.order().quantity()));
      fits(
          below.isPresent() ? "height above the floor" : "height",
          built,
          built
              .outside()
              .size(Axis.Z)
              .plus(below.map(b -> b.outside().size(Axis.Z)).orElse(Length.ZERO)),
          room.ceiling().orElse(built.outside().size(Axis.Z)));
      fits(
          "depth",
          built,
          built.outside().size(Axis.Y),
          room.depth().orElse(built.outside().size(Axis.Y)));
      standsUp(built);
    }
    Length width = all;
    room.width().ifPresent(limit -> across(width, Scribing.of(cases), limit));
    return List.copyOf(list);
  }

  private static Optional<BuiltCase> below(BuiltCase built, List<BuiltCase> cases) {
    return built
        .order()
        .standsOn()
        .flatMap(name -> cases.stream().filter(c -> c.order().name().equals(name)).findFirst());
  }

  /**
   * The wood that is there to be scribed to the walls.
   *
   * @param stiles how many are cut wider, {@code wood} what they are wider by together
   */
  private record Scribing(int stiles, Length wood) {

    static Scribing of(List<BuiltCase> cases) {
      int stiles = 0;
      Length wood = Length.ZERO;
      for (BuiltCase built : cases) {
        int here = stiles(built.order()) * built.order().quantity();
        stiles += here;
        wood = wood.plus(built.order().settings().length(Setting.SCRIBE).times(here));
      }
      return new Scribing(stiles, wood);
    }

    private static int stiles(CaseOrder order) {
      return switch (order.faceFrame().map(FaceFrame::scribe).orElse(FaceFrame.Scribe.NONE)) {
        case NONE -> 0;
        case LEFT, RIGHT -> 1;
        case BOTH -> 2;
      };
    }

    boolean reachesBothWalls() {
      return stiles > 1;
    }
  }

  private void across(Length width, Scribing scribing, Length limit) {
    Length least = width.minus(scribing.wood());
    if (least.isMoreThan(limit)) {
      tooWide(least, scribing, limit);
    } else if (width.isMoreThan(limit)) {
      toScribe(width, scribing, limit);
    } else if (scribing.reachesBothWalls() && scribing.wood().isPositive()) {
      nothingToScribe(width, scribing, limit);
    }
  }

  private void tooWide(Length width, Scribing scribing, Length limit) {
    String scribed = scribing.wood().isPositive() ? ", all that is to be scribed taken off" : "";
    list.add(
        new Finding(
            Severity.ERROR,
            "room-too-narrow",
            "the cases side by side are "
                + text(width)
                + " wide"
                + scribed
                + ", the room "
                + text(limit),
            List.of(),
            Place.JOB,
            List.of(
                new Remedy(
                    "make the cases " + text(width.minus(limit)) + " narrower together",
                    "shelf length"))));
  }

  private void toScribe(Length width, Scribing scribing, Length limit) {
    Length off = width.minus(limit);
    String each =
        scribing.stiles() == 1
            ? " at its scribed stile"
            : ", " + text(off.over(scribing.stiles())) + " at each scribed stile";
    list.add(
        new Finding(
            Severity.NOTE,
            "scribe",
            "the cases side by side are "
                + text(width)
                + " wide with "
                + text(scribing.wood())
                + " to be scribed, the room "
                + text(limit)
                + ": "
                + text(off)
                + " comes off"
                + each,
            List.of(),
            Place.JOB,
            List.of(
                new Remedy(
                    "measure the room at floor, middle and top of the case, then scribe each"
                        + " stile to its wall",
                    "work in the room"))));
  }

  private void nothingToScribe(Length width, Scribing scribing, Length limit) {
    Length gap = limit.minus(width);
    list.add(
        new Finding(
            Severity.DOUBT,
            "scribe-short",
            "the stiles are to be scribed at both ends, but the cases are "
                + text(width)
                + " wide with "
                + text(scribing.wood())
                + " for it in a room of "
                + text(limit)
                + ": "
                + (gap.isZero()
                    ? "nothing is left to trim"
                    : "they end " + text(gap) + " short of the walls and nothing is left to trim"),
            List.of(),
            Place.JOB,
            List.of(
                new Remedy(
                    "make the cases "
                        + text(gap.plus(scribing.wood().over(2)))
                        + " wider together, so that half of the wood comes off",
                    "stock"),
                new Remedy("set scribe to more", "stock"))));
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
