package fourpin.sheets.solid;

import fourpin.casework.Axis;
import fourpin.casework.BuiltCase;
import fourpin.casework.DoorLeaf;
import fourpin.casework.Face;
import fourpin.casework.Point;
import java.util.List;

/** Doors as plain slabs that hang and close as the plan says; how they are made is not planned. */
final class DoorBodies {

  /** As far as usual hinges let them (common practice); for the eye only. */
  private static final double OPEN = 100;

  private DoorBodies() {}

  static List<Body> of(BuiltCase built) {
    return DoorLeaf.of(built).stream().map(DoorBodies::body).toList();
  }

  private static Body body(DoorLeaf leaf) {
    String name = "bay " + leaf.bay() + " door " + leaf.number();
    Point origin = leaf.shut().low().with(Axis.X, leaf.shut().at(leaf.hinges()));
    Skins skins = new Skins(origin);
    new Carved(leaf.shut(), Look.door(), List.of(), List.of()).addTo(skins);
    double degrees = leaf.hinges() == Face.LEFT ? -OPEN : OPEN;
    return new Body(
        name, "door, room only, not planned", origin, new Body.Turns(degrees), skins.all());
  }
}
