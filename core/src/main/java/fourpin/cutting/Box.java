package fourpin.cutting;

import fourpin.cutting.Inflated.Option;
import fourpin.cutting.Inflated.Panel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A rectangle just large enough for the parts that are cut from it: one part, or two boxes side by
 * side.
 */
sealed interface Box {

  long dx();

  long dy();

  /** Whether its first cuts run that way. */
  boolean isCut(Direction way);

  /** As it lies in a corner of a rectangle that may be larger. */
  Draft draft();

  record One(Option part) implements Box {
    @Override
    public long dx() {
      return part.dx();
    }

    @Override
    public long dy() {
      return part.dy();
    }

    @Override
    public boolean isCut(Direction way) {
      return false;
    }

    @Override
    public Draft draft() {
      return new Draft.Place(part.kind(), part.lay());
    }
  }

  /**
   * @param cut parts the two
   */
  record Two(Direction cut, Box near, Box far, long dx, long dy) implements Box {
    @Override
    public boolean isCut(Direction way) {
      return cut == way;
    }

    @Override
    public Draft draft() {
      return Box.split(cut, Box.slices(this, cut, across(cut)));
    }
  }

  /** Two boxes that a cut parts. */
  static Box of(Direction cut, Box near, Box far) {
    long across = Math.max(near.across(cut), far.across(cut));
    long along = near.along(cut) + far.along(cut);
    boolean rip = cut == Direction.RIP;
    return new Two(cut, near, far, rip ? across : along, rip ? along : across);
  }

  /** The size that parallel cuts share out. */
  default long along(Direction cut) {
    return cut == Direction.RIP ? dy() : dx();
  }

  /** The length of the cuts. */
  default long across(Direction cut) {
    return cut == Direction.RIP ? dx() : dy();
  }

  /** The pieces that parallel cuts make of a strip of that width with a box in it. */
  private static List<Draft.Slice> slices(Box box, Direction cut, long strip) {
    if (box.across(cut) < strip || !(box instanceof Two two && two.cut == cut)) {
      return List.of(new Draft.Slice(box.along(cut), narrowed(box, cut.other(), strip)));
    }
    List<Draft.Slice> slices = new ArrayList<>(slices(two.near, cut, strip));
    slices.addAll(slices(two.far, cut, strip));
    return slices;
  }

  /** Cut off a strip first where it takes less than the strip. */
  private static Draft narrowed(Box box, Direction cut, long strip) {
    Draft draft = box.draft();
    return box.along(cut) == strip || box.isCut(cut)
        ? draft
        : split(cut, List.of(new Draft.Slice(box.along(cut), draft)));
  }

  /** The pieces, if its own first cuts run through the whole strip. */
  private List<Draft.Slice> through(Direction cut, long strip) {
    return this instanceof Two two && two.cut == cut
        ? Stream.of(two.near, two.far).flatMap(b -> b.through(cut, strip).stream()).toList()
        : slices(this, cut, strip);
  }

  private static Draft split(Direction cut, List<Draft.Slice> slices) {
    return new Draft.Split(cut, slices);
  }

  /** As a pattern of a panel that the saw can cut: the one that leaves the largest offcut. */
  default Optional<Draft> on(Panel panel, long kerf) {
    long length = panel.length();
    long width = panel.width();
    return Stream.of(
            split(Direction.CROSSCUT, slices(this, Direction.CROSSCUT, width)),
            split(Direction.RIP, slices(this, Direction.RIP, length)),
            split(Direction.CROSSCUT, through(Direction.CROSSCUT, width)),
            split(Direction.RIP, through(Direction.RIP, length)))
        .filter(draft -> panel.rules().allow(draft, length, width))
        .max(Comparator.comparingDouble(d -> Draft.largestOffcut(d, length, width, kerf)));
  }
}
