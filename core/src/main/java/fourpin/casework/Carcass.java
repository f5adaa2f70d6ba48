package fourpin.casework;

import fourpin.job.Back;
import fourpin.job.CaseOrder;
import fourpin.job.Doors;
import fourpin.job.FaceFrame;
import fourpin.job.Job;
import fourpin.job.Joint;
import fourpin.job.Kick;
import fourpin.job.Setting;
import fourpin.job.Sizes;
import fourpin.measure.Length;
import fourpin.measure.LengthStyle;
import fourpin.measure.Sum;
import fourpin.measure.Unit;
import java.util.List;
import java.util.Optional;

/**
 * The main planes of a case, worked out once from the sizes that the maker states.
 *
 * @param thickness of sides, partitions, top, bottom and fixed shelves
 * @param width over the sides
 * @param height of the sides
 * @param sideDepth front to back edge of a side
 * @param bottomFace height of the bottom's upper face
 * @param topFace height of the top's lower face
 * @param backFace y of the face of the back that is seen from the front; of the back edges where
 *     there is no back
 * @param backThickness zero where there is no back
 */
record Carcass(
    Job job,
    CaseOrder order,
    Length thickness,
    Length width,
    Length height,
    Length sideDepth,
    Length bottomFace,
    Length topFace,
    Length backFace,
    Length backThickness) {

  private static final Length FINEST_INCH = Length.inches(1, 32);
  private static final Length FINEST_METRIC = Length.mm(1).over(2);
  private static final int MILLIONTHS = 1_000_000;

  static Carcass of(Job job, CaseOrder order) {
    Length thickness = job.material(order.material()).thickness();
    Length back = order.back().map(b -> job.material(b.material()).thickness()).orElse(Length.ZERO);
    Length frame =
        order.faceFrame().map(f -> job.material(f.material()).thickness()).orElse(Length.ZERO);
    Length behind =
        switch (order.back().map(Back::kind).orElse(Back.Kind.APPLIED)) {
          case GROOVE -> back.plus(order.settings().length(Setting.BACK_INSET));
          case RABBET -> back;
          case APPLIED -> Length.ZERO;
        };
    Sizes sizes = order.sizes();
    Length foot = order.kick().map(Kick::height).orElse(Length.ZERO);
    boolean outside = sizes.measured() == Sizes.Measured.OUTSIDE;
    Length width = outside ? sizes.width() : sizes.width().plus(thickness.times(2));
    Length height = outside ? sizes.height() : sizes.height().plus(thickness.times(2)).plus(foot);
    Length applied =
        order.back().filter(b -> b.kind() == Back.Kind.APPLIED).isPresent() ? back : Length.ZERO;
    Length depth = outside ? sizes.depth().minus(frame).minus(applied) : sizes.depth().plus(behind);
    return new Carcass(
        job,
        order,
        thickness,
        width,
        height,
        depth,
        foot.plus(thickness),
        height.minus(thickness),
        depth.minus(behind),
        back);
  }

  Length clearWidth() {
    return width.minus(thickness.times(2));
  }

  Length clearHeight() {
    return topFace.minus(bottomFace);
  }

  /** The clear width as it comes from what the maker states. */
  Sum clearWidthSum() {
    return measuredOutside()
        ? Sum.of("case width", width).minus(2, "side", thickness)
        : Sum.of("inside width", clearWidth());
  }

  Sum heightSum() {
    return measuredOutside()
        ? Sum.of("case height", height)
        : Sum.of("inside height", clearHeight())
            .plus(2, "top and bottom", thickness)
            .plus("kick", foot());
  }

  Sum clearHeightSum() {
    return measuredOutside()
        ? Sum.of("case height", height).minus(2, "top and bottom", thickness).minus("kick", foot())
        : Sum.of("inside height", clearHeight());
  }

  Sum sideDepthSum() {
    return measuredOutside()
        ? Sum.of("case depth", order.sizes().depth())
            .minus("face frame", faceFrameThickness())
            .minus(
                "applied back", order.sizes().depth().minus(faceFrameThickness()).minus(sideDepth))
        : Sum.of("inside depth", backFace).plus("behind the face of the back", behindBackFace());
  }

  /** From the front of the sides to the face of the back. */
  Sum backFaceSum() {
    return measuredOutside()
        ? sideDepthSum().minus("behind the face of the back", behindBackFace())
        : Sum.of("inside depth", backFace);
  }

  /** A back in a rabbet covers the back edge of the bottom. */
  Sum bottomDepthSum() {
    boolean covered = order.back().filter(b -> b.kind() == Back.Kind.RABBET).isPresent();
    return covered ? backFaceSum() : sideDepthSum();
  }

  private Length behindBackFace() {
    return sideDepth.minus(backFace);
  }

  private boolean measuredOutside() {
    return order.sizes().measured() == Sizes.Measured.OUTSIDE;
  }

  /** Height of the bottom's lower face. */
  Length foot() {
    return bottomFace.minus(thickness);
  }

  LengthStyle style() {
    return job.style();
  }

  Optional<FaceFrame> faceFrame() {
    return order.faceFrame();
  }

  Length faceFrameThickness() {
    return faceFrame().map(f -> job.material(f.material()).thickness()).orElse(Length.ZERO);
  }

  /** How deep a joint goes into a panel of the case's material; nothing for a butt joint. */
  Length depthOf(Joint joint) {
    return joint.kind() == Joint.Kind.BUTT
        ? Length.ZERO
        : joint.depth().orElseGet(this::shareOfThickness);
  }

  /** How deep the back goes into sides and top; nothing where it is applied or missing. */
  Length backDepth() {
    return order
        .back()
        .filter(b -> b.kind() != Back.Kind.APPLIED)
        .map(b -> b.depth().orElseGet(this::shareOfThickness))
        .orElse(Length.ZERO);
  }

  /** The share of the thickness that the settings say, down to what a saw can be set to. */
  private Length shareOfThickness() {
    long millionths = Math.round(order.settings().number(Setting.DADO_DEPTH) * MILLIONTHS);
    Length share = new Length(thickness.picometres() / MILLIONTHS * millionths, thickness.unit());
    Length finest = job.unit() == Unit.INCH ? FINEST_INCH : FINEST_METRIC;
    return finest.times(share.wholeTimes(finest));
  }

  /** How far a fixed shelf stands back from the front of the sides, to clear inset doors. */
  Length doorRoom() {
    return order
        .doors()
        .filter(d -> d.kind() == Doors.Kind.INSET)
        .map(d -> d.thickness().plus(d.gap()).minus(faceFrameThickness()))
        .map(room -> Length.max(room, Length.ZERO))
        .orElse(Length.ZERO);
  }

  /** Clear widths of the bays from the left; refused unless they fill the case exactly. */
  Optional<List<Length>> bayWidths(Findings findings) {
    int bays = order.bays().size();
    Length all = clearWidth().minus(thickness.times(bays - 1));
    Length stated = Length.ZERO.in(all.unit());
    int open = 0;
    for (var bay : order.bays()) {
      stated = stated.plus(bay.width().orElse(Length.ZERO));
      open += bay.width().isEmpty() ? 1 : 0;
    }
    Length rest = all.minus(stated);
    if (open == 0 ? !rest.isZero() : !rest.isPositive()) {
      findings.refuse("bays-do-not-fit", misfit(all, stated, bays), widthRemedy(open));
      return Optional.empty();
    }
    Length share = open == 0 ? rest : new Length(rest.picometres() / open, all.unit());
    return Optional.of(order.bays().stream().map(b -> b.width().orElse(share)).toList());
  }

  private String misfit(Length all, Length stated, int bays) {
    return "the bays have "
        + style().text(all)
        + " between the sides, less "
        + (bays - 1)
        + " partitions, but the widths stated come to "
        + style().text(stated);
  }

  private static Finding.Remedy widthRemedy(int open) {
    return open == 0
        ? new Finding.Remedy("leave the width of one bay out, so that it takes the rest", "nothing")
        : new Finding.Remedy("make the stated bays narrower or the case wider", "room");
  }
}
