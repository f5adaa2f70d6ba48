package fourpin.boring.way;

import fourpin.bench.Numbers;
import fourpin.boring.way.WayAnswer.Reason;
import fourpin.job.Setting;
import fourpin.job.Tool.PerforatedStrip;
import fourpin.job.Tool.StripKind;
import fourpin.job.Way;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Lazy;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.Source;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Whether a strip's pitch goes into the case's. */
final class FittedStrip {

  private final Group group;
  private final PerforatedStrip strip;

  /** What the case would lose is the same whatever bores through the strip. */
  private final Lazy<Proposal> changed = Lazy.of(this::changed);

  FittedStrip(Group group, PerforatedStrip strip) {
    this.group = group;
    this.strip = strip;
  }

  static List<FittedStrip> all(Group group, StripKind kind) {
    return group.shop().strips(kind).map(strip -> new FittedStrip(group, strip)).toList();
  }

  PerforatedStrip strip() {
    return strip;
  }

  /**
   * Boring through a strip.
   *
   * @param against what speaks against the tools; what the pitch would cost is worked out only if
   *     nothing does
   */
  Proposal proposal(
      List<Reason> against,
      List<Reason> notes,
      BitSetting bit,
      GuidedWork work,
      List<Purchase> bought) {
    if (group.pitch().remainder(strip.pitch()).isZero()) {
      Designed guide = SoldGuide.of(group, strip);
      List<Reason> all = Stream.concat(cutDown().stream(), notes.stream()).toList();
      return work.proposal(group, bit, guide, against, all, bought);
    }
    return against.isEmpty() ? changed.get() : Proposal.cannot(against);
  }

  /** Two holes can be no further apart than the strip is long, unless it was longer then. */
  private Optional<Reason> cutDown() {
    Length room = strip.length().minus(strip.fromEnd());
    Telling tell = new Telling(group, "pitch-beyond-strip", "pitch measured beyond the strip, by");
    String words =
        "the pitch of "
            + strip.name()
            + " was measured over "
            + tell.stated("o", "distance that its pitch was measured over", strip.over())
            + ", and from its first hole to its far end it is "
            + tell.derived("r", "first hole to the far end", room)
            + " long";
    String remedy =
        "nothing, if the piece was cut down since; else check over, spaces and length in the shop"
            + " file";
    return Optional.of(tell.reason(words, remedy, "o - r", strip.over().minus(room)))
        .filter(_ -> strip.over().isMoreThan(room));
  }

  private Proposal changed() {
    Length given = StripPitch.nearest(strip, group.pitch());
    List<Group> others = Repitched.groups(group.job(), group.built().order(), given);
    Optional<Designed> guide = same(others).map(g -> SoldGuide.of(g, strip));
    return guide.isPresent() && guide.get() instanceof Designed.Failed(Reason reason)
        ? Proposal.cannot(List.of(reason))
        : Proposal.changed(() -> reasons(given, others, guide));
  }

  private List<Reason> reasons(Length given, List<Group> others, Optional<Designed> guide) {
    return Stream.concat(
            Stream.of(reason(given, others)), guide.stream().flatMap(d -> holes(given, d).stream()))
        .toList();
  }

  /** Which holes the guide of the changed case would use, since no page shows that guide. */
  private Optional<Reason> holes(Length given, Designed designed) {
    return designed instanceof Designed.Made(Guide guide, _, _)
            && guide.make() instanceof Guide.Make.Sold(_, _, int first, _, _)
        ? Optional.of(holes(given, guide, first))
        : Optional.empty();
  }

  private Reason holes(Length given, Guide guide, int first) {
    List<Integer> bored =
        guide.holes().stream()
            .filter(h -> h.use() == Guide.Use.BORED)
            .map(h -> h.number() + first - 1)
            .toList();
    Figure figure =
        new Figure(
            "holes-of-strip",
            "holes of the strip that are bored through at its pitch",
            Quantity.count(bored.size()),
            "counted",
            List.of(
                new Input("f", "first of them", Quantity.count(bored.getFirst()), Source.GEOMETRY),
                new Input("l", "last of them", Quantity.count(bored.getLast()), Source.GEOMETRY),
                new Input("p", "pitch that the strip gives", Quantity.of(given), Source.GEOMETRY)),
            Source.GEOMETRY);
    return new Reason(
        "at "
            + group.job().style().textApart(given, group.pitch())
            + " the holes of "
            + strip.name()
            + " to bore through, counted from its end at the foot of the panel, are "
            + Numbers.words(bored, "hole")
            + "; mask all others",
        "",
        List.of(figure));
  }

  private Reason reason(Length given, List<Group> others) {
    Repitched before = Repitched.at(group.job(), group.built().order(), group.pitch());
    Repitched.Loss loss = new Repitched.Loss(group.pitch(), given, before, Repitched.of(others));
    return new Reason(
        loss.words(group.job().style(), strip.name()),
        remedy(given),
        List.of(
            loss.figure("pitch-of-strip", strip.pitch(), group.settings().source(Setting.PITCH))));
  }

  /** A pitch that can't be written in the job's unit is left to the plan. */
  private String remedy(Length given) {
    Way way = strip.kind() == StripKind.STEEL ? Way.STEEL_STRAP : Way.HARDBOARD_STRIP;
    return StripPitch.canBeWritten(group.job(), given)
        ? "set pitch to " + group.text(given)
        : "state way: " + way.key() + ", and the plan follows the strip's pitch";
  }

  /** The same bays at another pitch; none if nothing would be bored there. */
  private Optional<Group> same(List<Group> others) {
    int bay = group.grids().getFirst().bay();
    return others.stream()
        .filter(g -> g.holes() > 0 && g.grids().stream().anyMatch(b -> b.bay() == bay))
        .findFirst();
  }
}
