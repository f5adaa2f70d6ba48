package fourpin.plan;

import fourpin.bench.Step;
import fourpin.casework.Box;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Part;
import fourpin.casework.Part.Role;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The front and the back cleat strip of one face of an upright as the one piece that they come
 * from. It stands where the front strip stands and reaches behind it by the kerf and the other
 * strip.
 *
 * @param wood the blank, with the holes on its middle line
 */
public record CleatBlank(Part front, Part back, Part wood, Length kerf) {

  /** All blanks of a case. */
  public static List<CleatBlank> of(BuiltCase built) {
    return of(built, built.parts());
  }

  /** The blanks that the strips among these parts come from, in the order of their front strips. */
  static List<CleatBlank> of(BuiltCase built, List<Part> parts) {
    Length kerf = built.order().settings().length(Setting.KERF);
    List<CleatBlank> blanks = new ArrayList<>();
    for (Part part : parts) {
      other(part, parts).ifPresent(back -> blanks.add(of(part, back, kerf)));
    }
    return blanks;
  }

  /** The same parts as they are cut from the stock: blanks in the place of their strips. */
  static List<Part> cut(BuiltCase built, List<Part> parts) {
    List<CleatBlank> blanks = of(built, parts);
    List<Part> cut = new ArrayList<>();
    for (Part part : parts) {
      Optional<CleatBlank> blank = blanks.stream().filter(b -> b.front().equals(part)).findFirst();
      blank.map(CleatBlank::wood).ifPresent(cut::add);
      if (blanks.stream().noneMatch(b -> b.front().equals(part) || b.back().equals(part))) {
        cut.add(part);
      }
    }
    return cut;
  }

  /** The strip behind a front one: on the same face of the same upright, at the same height. */
  private static Optional<Part> other(Part front, List<Part> parts) {
    return parts.stream()
        .filter(p -> isStrip(front) && isStrip(p) && isBehind(p.box(), front.box()))
        .findFirst();
  }

  static boolean isStrip(Part part) {
    return part.role() == Role.STRIP;
  }

  private static boolean isBehind(Box box, Box front) {
    return box.low().x().equals(front.low().x())
        && box.high().x().equals(front.high().x())
        && box.low().z().equals(front.low().z())
        && front.low().y().isLessThan(box.low().y());
  }

  private static CleatBlank of(Part front, Part back, Length kerf) {
    Length width = front.width().total();
    Sum both = new Sum(List.of(new Sum.Term(2, "strip", width))).plus("kerf", kerf);
    Length end = front.box().low().y().plus(both.total());
    Part wood =
        new Part(
            front.mark() + "+" + back.mark(),
            "cleat blank",
            Role.STRIP,
            front.material(),
            front.box().with(Face.BACK, end),
            front.lengthAxis(),
            front.thicknessAxis(),
            front.length(),
            both,
            List.of(),
            front.features(),
            front.when());
    return new CleatBlank(front, back, wood, kerf);
  }

  /** Number of the bay that it stands in. */
  public int bay(BuiltCase built) {
    return built.bays().stream()
        .filter(b -> wood.box().low().x().isAtLeast(b.clear().low().x()))
        .filter(b -> b.clear().high().x().isAtLeast(wood.box().high().x()))
        .findFirst()
        .orElseThrow()
        .number();
  }

  /** The face that looks into the bay, which holes are bored from; none without holes. */
  Optional<Face> inside() {
    return wood.features().stream().map(Feature::face).findFirst();
  }

  Step rip() {
    return new Step.Rip(wood.mark(), front.mark(), back.mark(), front.width().total(), kerf);
  }
}
