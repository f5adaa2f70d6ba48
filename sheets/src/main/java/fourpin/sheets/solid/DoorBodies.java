package fourpin.sheets.solid;

import fourpin.casework.Axis;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Point;
import fourpin.job.Doors;
import fourpin.measure.Length;
import fourpin.sheets.drawings.DoorRoom;
import java.util.ArrayList;
import java.util.List;

/**
 * Doors as plain slabs in the room that the job states for them; how they are made is not planned.
 * One door before a bay hangs on the left here, two hang on either side; a slab before the case is
 * as large as its opening, since how far it lies over is not stated.
 */
final class DoorBodies {

  /** As far as usual hinges let them (common practice); for the eye only. */
  private static final double OPEN = 100;

  private DoorBodies() {}

  static List<Body> of(BuiltCase built) {
    List<Body> bodies = new ArrayList<>();
    built.order().doors().ifPresent(doors -> add(bodies, built, doors));
    return bodies;
  }

  private static void add(List<Body> bodies, BuiltCase built, Doors doors) {
    List<Box> rooms = DoorRoom.of(built);
    for (int i = 0; i < rooms.size(); i++) {
      int bay = i / doors.perBay() + 1;
      int leaf = i % doors.perBay() + 1;
      String name = "bay " + bay + " door " + leaf;
      bodies.add(
          body(name, slab(built, doors, rooms.get(i), leaf), leaf == 1 ? Face.LEFT : Face.RIGHT));
    }
  }

  private static Body body(String name, Box slab, Face hinges) {
    Point origin = slab.low().with(Axis.X, slab.at(hinges));
    Skins skins = new Skins(origin);
    new Carved(slab, Look.door(), List.of(), List.of()).addTo(skins);
    double degrees = hinges == Face.LEFT ? -OPEN : OPEN;
    return new Body(
        name, "door, room only, not planned", origin, new Body.Turns(degrees), skins.all());
  }

  private static Box slab(BuiltCase built, Doors doors, Box room, int leaf) {
    Length front = built.outside().low().y();
    return switch (doors.kind()) {
      case OVERLAY -> room.with(Face.FRONT, front.minus(doors.thickness())).with(Face.BACK, front);
      case INSET ->
          spaced(doors, room, leaf)
              .with(Face.FRONT, front)
              .with(Face.BACK, front.plus(doors.thickness()));
    };
  }

  /** A whole gap at what surrounds the doors, half a one where two meet. */
  private static Box spaced(Doors doors, Box room, int leaf) {
    Length gap = doors.gap();
    Length between = gap.over(2);
    boolean alone = doors.perBay() == 1;
    return room.with(Face.BOTTOM, room.low().z().plus(gap))
        .with(Face.TOP, room.high().z().minus(gap))
        .with(Face.LEFT, room.low().x().plus(leaf == 1 ? gap : between))
        .with(Face.RIGHT, room.high().x().minus(alone || leaf == 2 ? gap : between));
  }
}
