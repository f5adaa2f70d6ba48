package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.CentringBit;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.measure.Length;
import fourpin.measure.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The nose of a self-centring bit in the hole of a guide: how deep it stands in it. */
record Nose(Group group, CentringBit bit) {

  private static final Reason SEAT =
      new Reason(
          "the taper of the nose must seat in the strap before its tip reaches the wood, and a thin"
              + " strap may let the tip through first",
          "measure the taper and state nose-length; or try it in scrap, and if the tip comes down"
              + " first, take a thicker strap or a bit with a shorter taper");

  private static final Reason FILL =
      new Reason(
          "the taper of the nose must be no longer than the guide is thick, or its tip stands on the"
              + " wood before the nose fills the hole",
          "measure the taper and state nose-length; or try it in scrap, and if the nose stays loose,"
              + " take a thicker guide or a bit with a shorter taper");

  /**
   * What speaks against a guide made in the shop: a nose too short to be led or too long to fill
   * the hole, or a bit too short to bore.
   *
   * @param hole diameter of the guide's holes
   */
  List<Reason> inGuide(BitSetting setting, Length hole) {
    List<Reason> reasons = new ArrayList<>();
    bit.noseLength()
        .filter(l -> isTapered() && l.isMoreThan(setting.over()))
        .ifPresent(l -> reasons.add(notFilled(l, setting.over(), hole)));
    Optional<Length> enters = bit.noseLength().map(l -> Length.min(l, setting.over()));
    Length grip = Length.min(group.settings().length(Setting.NOSE_GRIP), setting.over());
    enters.filter(l -> l.isLessThan(grip)).ifPresent(l -> reasons.add(notLed(l, grip)));
    reasons.addAll(reach(setting, enters));
    return reasons;
  }

  /** What speaks against a strap whose holes the taper finds. */
  List<Reason> inStrap(BitSetting setting, PerforatedStrip strap) {
    List<Reason> reasons = new ArrayList<>();
    Optional<Length> enters = bit.noseLength().map(l -> seated(l, strap));
    enters
        .filter(l -> l.isMoreThan(strap.thickness()))
        .ifPresent(l -> reasons.add(tipFirst(l, strap)));
    reasons.addAll(reach(setting, enters.map(l -> Length.min(l, strap.thickness()))));
    return reasons;
  }

  /** What remains to be tried in a strap where the length of the taper is not known. */
  List<Reason> untold() {
    return bit.noseLength().isPresent() ? List.of() : List.of(SEAT);
  }

  /** The same in a guide made in the shop: a straight nose fills its hole however long it is. */
  List<Reason> untoldInGuide() {
    return bit.noseLength().isPresent() || !isTapered() ? List.of() : List.of(FILL);
  }

  private boolean isTapered() {
    return bit.tip().isLessThan(bit.nose());
  }

  /** By similar triangles: where the taper is as wide as the strap's hole. */
  private Length seated(Length taper, PerforatedStrip strap) {
    double share = strap.hole().minus(bit.tip()).mm() / bit.nose().minus(bit.tip()).mm();
    return Length.nearestMm(Math.max(0, share) * taper.mm());
  }

  /** The nose takes up what it enters; the bit must bore the rest out of it. */
  private List<Reason> reach(BitSetting setting, Optional<Length> enters) {
    return enters
        .map(
            l ->
                setting.stop().minus(l).isMoreThan(bit.reach())
                    ? List.of(tooShort(setting, l))
                    : List.<Reason>of())
        .orElseGet(() -> Bits.tooShort(group, bit.name(), setting, bit.reach()));
  }

  private Reason notLed(Length enters, Length grip) {
    Telling tell = new Telling(group, "nose-in-guide", "what the nose lacks to be led");
    String in = tell.derived("n", "how far the nose goes into the guide", enters);
    String from = tell.derived("g", "nose-grip, at most the guide's thickness", grip);
    return tell.reason(
        "the nose of %s reaches only %s into the guide, which leads it from %s on"
            .formatted(bit.name(), in, from),
        "take a bit with a longer nose, or set nose-grip to " + in,
        "g - n",
        grip.minus(enters));
  }

  private Reason notFilled(Length taper, Length thickness, Length hole) {
    Length mouth = atMouth(taper, thickness);
    Telling tell = new Telling(group, "taper-in-guide", "play that the taper leaves in the guide");
    tell.across("a", "diameter of the nose at its tip", bit.tip());
    tell.across("b", "diameter of the nose", bit.nose());
    String length = tell.stated("l", "length of the taper", taper);
    String thick = tell.stated("t", "thickness of the guide", thickness);
    String wide = tell.across("h", "diameter of the guide's holes", hole, Source.GEOMETRY);
    return tell.reason(
        "the taper of %s is %s long and the guide %s thick: its tip stands on the wood while the"
                .formatted(bit.name(), length, thick)
            + " nose is %s at the guide's face, %s less than the hole of %s"
                .formatted(group.across(mouth), group.text(hole.minus(mouth)), wide),
        "take a guide at least " + length + " thick, or a bit with a shorter taper",
        "h - a - (b - a) t / l",
        hole.minus(mouth));
  }

  /** By similar triangles: how wide the nose is at the guide's face when its tip is down. */
  private Length atMouth(Length taper, Length thickness) {
    double share = thickness.mm() / taper.mm();
    return bit.tip().plus(Length.nearestMm(share * bit.nose().minus(bit.tip()).mm()));
  }

  private Reason tipFirst(Length down, PerforatedStrip strap) {
    Telling tell = new Telling(group, "nose-in-strap", "how far the tip is down when it seats");
    tell.across("h", "diameter of the strap's holes", strap.hole());
    tell.across("a", "diameter of the nose at its tip", bit.tip());
    tell.across("b", "diameter of the nose", bit.nose());
    bit.noseLength().ifPresent(l -> tell.stated("l", "length of the taper", l));
    String thick = tell.stated("t", "thickness of the strap", strap.thickness());
    return tell.reason(
        "the taper of %s seats when its tip is %s down, and %s is %s thick: the tip"
                .formatted(bit.name(), group.text(down), strap.name(), thick)
            + " stands on the wood first, and finds no middle",
        "take a strap at least " + group.text(down) + " thick, or a bit with a shorter taper",
        "l (h - a) / (b - a), more than t",
        down);
  }

  private Reason tooShort(BitSetting setting, Length enters) {
    Telling tell = new Telling(group, "bit-reach", "what the bit lacks");
    String stop = tell.derived("s", "hole and guide", setting.stop());
    String nose = tell.derived("n", "of it taken up by the nose", enters);
    String reach = tell.stated("r", "reach of the bit beyond its nose", bit.reach());
    return tell.reason(
        "hole and guide take %s, of which the nose takes up %s, and %s reaches %s beyond it"
            .formatted(stop, nose, bit.name(), reach),
        "take a longer bit" + (enters.isLessThan(setting.over()) ? ", or use a thinner guide" : ""),
        "s - n - r",
        setting.stop().minus(enters).minus(bit.reach()));
  }
}
