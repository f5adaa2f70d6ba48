package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.measure.Length;
import java.util.List;

/** Whether a tool has room between the uprights of a standing case. */
final class Room {

  private Room() {}

  /**
   * @param tool in words, {@code long} enough to need this much before the face
   * @return empty if there is room, or the case lies in parts
   */
  static List<Reason> lacking(Group group, String tool, Length needs) {
    BaySpace bay = group.narrowest();
    Length clear = bay.clear().size(Axis.X);
    Telling tell = new Telling(group, "room-for-the-tool", "room that " + tool + " lacks");
    return group.isBoredAfterAssembly() && needs.isMoreThan(clear)
        ? List.of(
            tell.reason(
                tool
                    + " needs "
                    + tell.stated("n", "what it needs before the face", needs)
                    + " before the face, and bay "
                    + bay.number()
                    + " is "
                    + tell.derived("w", "width of the narrowest bay", clear)
                    + " wide",
                "bore before assembly, or take a shorter tool",
                "n - w",
                needs.minus(clear)))
        : List.of();
  }
}
