package fourpin.casework;

import fourpin.casework.BaySpace.Opening;
import fourpin.casework.Part.CutWhen;
import fourpin.casework.Part.Role;
import fourpin.job.Bay;
import fourpin.job.Edging;
import fourpin.job.Material;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Shelves;
import fourpin.job.Support;
import fourpin.job.Support.Mounting;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.List;

/**
 * The adjustable shelves of one bay, at the heights that the maker wants; holes are not known here.
 */
final class ShelfMaker {

  private static final int BOTH_ENDS = 2;

  private final Carcass carcass;
  private final Bay bay;
  private final BaySpace space;
  private final Length clearWidth;
  private final Shelves shelves;

  /**
   * @param clearWidth of the bay; the same to the last digit in bays of equal width
   */
  ShelfMaker(Carcass carcass, Bay bay, BaySpace space, Length clearWidth, Shelves shelves) {
    this.carcass = carcass;
    this.bay = bay;
    this.space = space;
    this.clearWidth = clearWidth;
    this.shelves = shelves;
  }

  /** The finished length and the sum that it comes from. */
  Sum length() {
    Settings settings = carcass.order().settings();
    Length play = settings.length(Setting.END_PLAY);
    Sum clear = Sum.of("bay " + space.number(), clearWidth);
    Sum afterSupports = bay.supports().map(s -> lessSupport(clear, s)).orElse(clear);
    return afterSupports.minus("end play", play);
  }

  private static Sum lessSupport(Sum clear, Support support) {
    return switch (support) {
      case Support.Pins _, Support.Cleats _ -> clear;
      case Support.Sleeved sleeved -> clear.minus(BOTH_ENDS, "flange", sleeved.flange());
      case Support.Standards s -> {
        Sum lessClips = clear.minus(BOTH_ENDS, "clip", s.clipThickness());
        yield s.mounting() == Mounting.LET_IN
            ? lessClips
            : lessClips.minus(BOTH_ENDS, "standard", s.thickness());
      }
    };
  }

  /** The finished width, front to back, and the sum that it comes from. */
  Sum width() {
    return carcass
        .backFaceSum()
        .minus("front setback", shelves.frontSetback())
        .minus("back play", carcass.order().settings().length(Setting.BACK_PLAY));
  }

  /** What edging takes of the length (X) or the width (Y). */
  Length edgingAlong(Axis axis) {
    Length all = Length.ZERO;
    for (Edging edging : shelves.edging()) {
      long edges = edging.edges().stream().filter(e -> Panels.face(e).axis() == axis).count();
      all = all.plus(edging.thickness().times(edges));
    }
    return all;
  }

  Material material() {
    return carcass.job().material(shelves.material());
  }

  /** The shelves from the bottom up. */
  List<Part> parts() {
    List<Length> tops = upperFaces();
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < tops.size(); i++) {
      parts.add(part(i + 1, tops.get(i)));
    }
    return parts;
  }

  private Part part(int number, Length top) {
    Sum length = length();
    Sum width = width();
    Length left = space.clear().low().x().plus(clearWidth.minus(length.total()).over(BOTH_ENDS));
    Box box =
        Box.of(
            left,
            left.plus(length.total()),
            shelves.frontSetback(),
            shelves.frontSetback().plus(width.total()),
            top.minus(material().thickness()),
            top);
    return new Part(
        space.number() + "-S" + number,
        "shelf, bay " + space.number(),
        Role.SHELF,
        shelves.material(),
        box,
        Axis.X,
        Axis.Z,
        length,
        width,
        Panels.bands(shelves.edging(), box, Axis.X),
        List.of(),
        CutWhen.AFTER_ASSEMBLY);
  }

  /** Heights of the shelves' upper faces, rising. */
  List<Length> upperFaces() {
    return switch (shelves.placing()) {
      case Shelves.Placing.AtHeights(List<Length> heights) -> heights.stream().sorted().toList();
      case Shelves.Placing.Evenly(int count) -> evenly(count);
    };
  }

  /** One after another into the opening whose gaps are then widest, until all are placed. */
  private List<Length> evenly(int count) {
    int[] counts = new int[space.openings().size()];
    for (int i = 0; i < count; i++) {
      counts[widest(counts)]++;
    }
    List<Length> tops = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      Length gap = gap(space.openings().get(i), counts[i]);
      Length low = space.openings().get(i).clear().low().z();
      for (int k = 1; k <= counts[i]; k++) {
        tops.add(low.plus(gap.plus(material().thickness()).times(k)));
      }
    }
    return tops;
  }

  private int widest(int[] counts) {
    int best = 0;
    for (int i = 1; i < counts.length; i++) {
      Length gap = gap(space.openings().get(i), counts[i]);
      boolean wider = gap.isMoreThan(gap(space.openings().get(best), counts[best]));
      best = wider ? i : best;
    }
    return best;
  }

  private Length gap(Opening opening, int count) {
    Length wood = material().thickness().times(count);
    return opening.clear().size(Axis.Z).minus(wood).over(count + 1L);
  }
}
