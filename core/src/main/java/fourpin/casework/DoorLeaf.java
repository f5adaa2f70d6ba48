package fourpin.casework;

import fourpin.job.Doors;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One door, by the room that it takes when it is shut; how it is made is not planned.
 *
 * @param bay from 1, and its number in the bay from 1, from the left
 * @param hinges the side that it hangs on, {@link Face#LEFT} or {@link Face#RIGHT}
 * @param opening what it closes
 * @param shut where it is
 */
public record DoorLeaf(int bay, int number, Face hinges, Box opening, Box shut) {

  /** All doors of a case, from the left; none if it has none. */
  public static List<DoorLeaf> of(BuiltCase built) {
    return built.order().doors().map(doors -> new Hung(built, doors).leaves()).orElse(List.of());
  }

  /** How far overlay doors may lie over what is beside, over and under their openings. */
  static Optional<Length> most(BuiltCase built, Doors doors) {
    Hung hung = new Hung(built, doors);
    return hung.openings.stream()
        .flatMap(opening -> hung.reaches(opening).stream())
        .min(Length::compareTo);
  }

  /** The doors of one case. */
  private record Hung(BuiltCase built, Doors doors, List<Box> openings) {

    Hung(BuiltCase built, Doors doors) {
      this(built, doors, built.bays().stream().map(bay -> opening(built, bay)).toList());
    }

    private static Box opening(BuiltCase built, BaySpace bay) {
      Box room = bay.clear();
      for (Part part : built.parts()) {
        room =
            switch (part.role()) {
              case STILE -> less(room, part.box(), Axis.X);
              case RAIL -> less(room, part.box(), Axis.Z);
              default -> room;
            };
      }
      return room;
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

    List<DoorLeaf> leaves() {
      List<DoorLeaf> leaves = new ArrayList<>();
      for (int bay = 1; bay <= openings.size(); bay++) {
        Box opening = openings.get(bay - 1);
        Box shut = deep(doors.kind() == Doors.Kind.INSET ? inset(opening) : overlay(opening));
        if (doors.perBay() == 1) {
          Face hinges = doors.hang(bay) == Doors.Hang.LEFT ? Face.LEFT : Face.RIGHT;
          leaves.add(new DoorLeaf(bay, 1, hinges, opening, shut));
        } else {
          Length middle = opening.low().x().plus(opening.size(Axis.X).over(2));
          leaves.add(half(bay, 1, Face.LEFT, opening, shut, middle));
          leaves.add(half(bay, 2, Face.RIGHT, opening, shut, middle));
        }
      }
      return leaves;
    }

    /** Half a gap from the middle, where the two doors of a bay meet. */
    private DoorLeaf half(int bay, int number, Face hinges, Box opening, Box shut, Length middle) {
      Length off = doors.gap().over(2);
      return new DoorLeaf(
          bay,
          number,
          hinges,
          opening.with(hinges.opposite(), middle),
          shut.with(hinges.opposite(), hinges == Face.LEFT ? middle.minus(off) : middle.plus(off)));
    }

    private Box deep(Box leaf) {
      Length front = built.outside().low().y();
      return doors.kind() == Doors.Kind.INSET
          ? leaf.with(Face.FRONT, front).with(Face.BACK, front.plus(doors.thickness()))
          : leaf.with(Face.FRONT, front.minus(doors.thickness())).with(Face.BACK, front);
    }

    private Box inset(Box opening) {
      return grown(opening, List.of(), doors.gap().negated());
    }

    /** As far over as is stated, but not further than there is room for. */
    private Box overlay(Box opening) {
      List<Length> reaches = reaches(opening);
      return doors
          .over()
          .map(over -> grown(opening, reaches, over))
          .orElseGet(
              () -> grown(opening, reaches, reaches.stream().max(Length::compareTo).orElseThrow()));
    }

    private static final List<Face> ROUND = List.of(Face.LEFT, Face.RIGHT, Face.BOTTOM, Face.TOP);

    /**
     * @param most by the faces round it; empty for any
     */
    private static Box grown(Box opening, List<Length> most, Length by) {
      Box grown = opening;
      for (int i = 0; i < ROUND.size(); i++) {
        Face face = ROUND.get(i);
        Length reach = most.isEmpty() ? by : Length.min(by, most.get(i));
        boolean low = face == Face.LEFT || face == Face.BOTTOM;
        grown =
            grown.with(face, low ? opening.at(face).minus(reach) : opening.at(face).plus(reach));
      }
      return grown;
    }

    /** To the outside of the case, or to half a gap from the middle between two bays. */
    private List<Length> reaches(Box opening) {
      int at = openings.indexOf(opening);
      Box whole = built.outside();
      Length off = doors.gap().over(2);
      Length left =
          at == 0
              ? opening.low().x().minus(whole.low().x())
              : opening.low().x().minus(openings.get(at - 1).high().x()).over(2).minus(off);
      Length right =
          at == openings.size() - 1
              ? whole.high().x().minus(opening.high().x())
              : openings.get(at + 1).low().x().minus(opening.high().x()).over(2).minus(off);
      return List.of(
          left,
          right,
          opening.low().z().minus(bottom()),
          whole.high().z().minus(opening.high().z()));
    }

    /** A kick stays free. */
    private Length bottom() {
      return built.parts().stream()
          .filter(p -> p.role() == Part.Role.BOTTOM)
          .map(p -> p.box().low().z())
          .findFirst()
          .orElse(built.outside().low().z());
    }
  }
}
