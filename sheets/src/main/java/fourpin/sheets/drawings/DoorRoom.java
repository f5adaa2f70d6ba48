package fourpin.sheets.drawings;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Part;
import fourpin.measure.Length;
import java.util.List;
import java.util.stream.Stream;

/** The openings that doors close, one block for each door; how doors are made is not planned. */
public final class DoorRoom {

  static final String WORDS = "doors: room only, not planned";

  private DoorRoom() {}

  /** From left to right. */
  public static List<Box> of(BuiltCase built) {
    return built.order().doors().stream()
        .flatMap(doors -> built.bays().stream().flatMap(bay -> of(built, bay, doors.perBay())))
        .toList();
  }

  private static Stream<Box> of(BuiltCase built, BaySpace bay, int doors) {
    Box room = bay.clear();
    for (Part part : built.parts()) {
      room =
          switch (part.role()) {
            case STILE -> less(room, part.box(), Axis.X);
            case RAIL -> less(room, part.box(), Axis.Z);
            default -> room;
          };
    }
    return doors == 1 ? Stream.of(room) : halves(room);
  }

  /** Without what a member of the face frame covers of it, at the side where that lies. */
  private static Box less(Box room, Box member, Axis axis) {
    Face low = axis == Axis.X ? Face.LEFT : Face.BOTTOM;
    Length from = member.low().along(axis);
    Length to = member.high().along(axis);
    boolean apart =
        to.compareTo(room.low().along(axis)) <= 0 || from.compareTo(room.high().along(axis)) >= 0;
    if (apart) {
      return room;
    }
    return from.compareTo(room.low().along(axis)) <= 0
        ? room.with(low, to)
        : room.with(low.opposite(), from);
  }

  private static Stream<Box> halves(Box room) {
    Length middle = room.low().x().plus(room.size(Axis.X).over(2));
    return Stream.of(room.with(Face.RIGHT, middle), room.with(Face.LEFT, middle));
  }
}
