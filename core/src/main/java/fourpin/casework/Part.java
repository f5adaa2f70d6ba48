package fourpin.casework;

import fourpin.job.Edging;
import fourpin.measure.Length;
import fourpin.measure.Sum;
import java.util.ArrayList;
import java.util.List;

/**
 * One part of a case.
 *
 * @param mark what is written on it: unique in its case, "L" for the left side, "P1" for a
 *     partition, "2-S3" for the third adjustable shelf of bay 2
 * @param name for people: "left side"
 * @param box finished size and place, edging included
 * @param lengthAxis along the grain
 * @param thicknessAxis through the thickness
 * @param length the finished length and the sum that it comes from
 * @param width likewise across
 * @param edging what is on its edges, with the face that each edge is
 * @param when when it is cut
 */
public record Part(
    String mark,
    String name,
    Role role,
    String material,
    Box box,
    Axis lengthAxis,
    Axis thicknessAxis,
    Sum length,
    Sum width,
    List<EdgeBand> edging,
    List<Feature> features,
    CutWhen when) {

  /** What part of a case it is. */
  public enum Role {
    SIDE,
    PARTITION,
    TOP,
    BOTTOM,
    FIXED_SHELF,
    SHELF,
    BACK,
    KICK,
    BLOCK,
    STILE,
    RAIL,
    STRIP,
    CLEAT
  }

  /** When a part is cut to its size. */
  public enum CutWhen {
    /** With the rest. */
    NOW,
    /** To measure, when the case stands. */
    AFTER_ASSEMBLY
  }

  /**
   * Edging on one face of a part.
   *
   * @param length along the edge
   */
  public record EdgeBand(Face face, Edging edging, Length length) {}

  public Part {
    edging = List.copyOf(edging);
    features = List.copyOf(features);
    if (lengthAxis == thicknessAxis) {
      throw new IllegalArgumentException(mark + ": length and thickness lie along one axis");
    }
    requireEqual(mark, length.total(), box.size(lengthAxis));
    requireEqual(mark, width.total(), box.size(across(lengthAxis, thicknessAxis)));
  }

  private static void requireEqual(String mark, Length summed, Length inSpace) {
    if (!summed.equals(inSpace)) {
      throw new IllegalArgumentException(
          mark + ": the sum says " + summed + ", the place in the case " + inSpace);
    }
  }

  public Axis widthAxis() {
    return across(lengthAxis, thicknessAxis);
  }

  private static Axis across(Axis one, Axis other) {
    for (Axis axis : Axis.values()) {
      if (axis != one && axis != other) {
        return axis;
      }
    }
    throw new IllegalStateException("space has three axes");
  }

  public Length thickness() {
    return box.size(thicknessAxis);
  }

  /** From the low end of an axis (left end, front edge, lower end) to a place in the case. */
  public Length from(Axis axis, Length place) {
    return place.minus(box.low().along(axis));
  }

  /** How far edging hangs below a part that lies flat; tops are flush. */
  public Length hang() {
    return edging.stream()
        .filter(band -> band.edging().kind() == Edging.Kind.STRIP)
        .map(band -> band.edging().height().minus(thickness()))
        .reduce(Length.ZERO, Length::max);
  }

  /** The length to cut: the finished length less the edging on both ends. */
  public Sum cutLength() {
    return lessEdging(length, lengthAxis);
  }

  /** The width to cut: the finished width less the edging on both edges. */
  public Sum cutWidth() {
    return lessEdging(width, widthAxis());
  }

  private Sum lessEdging(Sum finished, Axis axis) {
    Sum cut = finished;
    for (EdgeBand band : edging) {
      cut = band.face().axis() == axis ? cut.minus("edging", band.edging().thickness()) : cut;
    }
    return cut;
  }

  /** The same part with more taken out of it. */
  public Part with(List<? extends Feature> more) {
    List<Feature> all = new ArrayList<>(features);
    all.addAll(more);
    return new Part(
        mark,
        name,
        role,
        material,
        box,
        lengthAxis,
        thicknessAxis,
        length,
        width,
        edging,
        all,
        when);
  }

  /** The same part moved along an axis with what is taken out of it. */
  public Part shifted(Axis axis, Length by) {
    return new Part(
        mark,
        name,
        role,
        material,
        box.shifted(axis, by),
        lengthAxis,
        thicknessAxis,
        length,
        width,
        edging,
        features.stream().map(f -> f.shifted(axis, by)).toList(),
        when);
  }

  /** Whether a strip runs over one of its ends, across its grain. */
  public boolean hasEndStrips() {
    return edging.stream()
        .filter(band -> band.edging().kind() == Edging.Kind.STRIP)
        .anyMatch(band -> band.face().axis() == lengthAxis);
  }
}
