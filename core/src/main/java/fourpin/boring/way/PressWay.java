package fourpin.boring.way;

import fourpin.boring.way.WayAnswer.Reason;
import fourpin.casework.Axis;
import fourpin.casework.Part;
import fourpin.job.Setting;
import fourpin.job.Tool.DrillPress;
import fourpin.job.Tool.PlainBit;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Marked holes on the drill press: the fence gives the row, the stop the depth. */
final class PressWay implements WayCheck {

  @Override
  public Proposal of(Group group) {
    List<DrillPress> presses = group.shop().all(DrillPress.class);
    List<PlainBit> bits = Bits.allPlain(group);
    List<Reason> missing =
        Choosing.missing(
            new Choosing.Need("drill press", presses),
            new Choosing.Need("plain bit of " + group.across(group.diameter()), bits));
    if (!missing.isEmpty()) {
      return Proposal.cannot(missing);
    }
    List<Proposal> proposals = new ArrayList<>();
    for (DrillPress press : presses) {
      bits.forEach(bit -> proposals.add(proposal(group, press, bit)));
    }
    return Choosing.best(proposals);
  }

  private static Proposal proposal(Group group, DrillPress press, PlainBit bit) {
    List<Reason> against = against(group, press, Length.ZERO, bit.point());
    return against.isEmpty()
        ? Gangs.of(group)
            .marked(
                group,
                Method.How.DRILL_PRESS,
                Bits.set(group, bit),
                work(group, Purchase.of(group.style(), press, bit)),
                overhang(group, press))
        : Proposal.cannot(against);
  }

  private static Work work(Group group, List<Purchase> bought) {
    return new Work(
        fences(group),
        group.columns().size(),
        group.holes(),
        Setting.PRESS_SECONDS,
        new Work.Making(Setting.STICK_MINUTES),
        Optional.empty(),
        bought);
  }

  /**
   * What speaks against a press.
   *
   * @param guide thickness of what lies on the panel
   * @param point of the bit: the quill goes down by it before the full diameter bores
   */
  static List<Reason> against(Group group, DrillPress press, Length guide, Length point) {
    if (group.isBoredAfterAssembly()) {
      return List.of(
          new Reason("a standing case does not go under " + press.name(), "bore before assembly"));
    }
    Length pile = thickest(group).plus(group.settings().length(Setting.PRESS_BLOCK)).plus(guide);
    List<Reason> reasons = new ArrayList<>();
    less(press.throat(), furthest(group))
        .map(
            l ->
                reason(
                    group,
                    "row-beyond-throat",
                    "a row lies ",
                    l,
                    " from the nearer edge, and the throat of " + press.name() + " is ",
                    "bore that row by another way"))
        .ifPresent(reasons::add);
    less(press.opening(), pile)
        .map(
            l ->
                reason(
                    group,
                    "pile-under-bit",
                    "panel and blocks take ",
                    l,
                    ", and under the bit of " + press.name() + " there is ",
                    "use thinner blocks"))
        .ifPresent(reasons::add);
    less(press.stroke(), group.depth().plus(guide).plus(point))
        .map(
            l ->
                reason(
                    group,
                    "hole-beyond-stroke",
                    "hole and point of the bit take ",
                    l,
                    ", and the stroke of " + press.name() + " is ",
                    "bore less deep"))
        .ifPresent(reasons::add);
    return reasons;
  }

  /** What is needed and what there is. */
  private record Lack(Length needs, Length has) {}

  private static Optional<Lack> less(Length has, Length needs) {
    return has.isLessThan(needs) ? Optional.of(new Lack(needs, has)) : Optional.empty();
  }

  private static Reason reason(
      Group group, String name, String start, Lack lack, String middle, String remedy) {
    Telling tell = new Telling(group, name, "what the drill press lacks");
    return tell.reason(
        start
            + tell.derived("n", "what is needed", lack.needs())
            + middle
            + tell.stated("h", "what the drill press has", lack.has()),
        remedy,
        "n - h",
        lack.needs().minus(lack.has()));
  }

  private static Length nearer(Column column) {
    return Length.min(column.fromFront(), column.fromBack());
  }

  private static Length furthest(Group group) {
    return group.columns().stream()
        .map(PressWay::nearer)
        .max(Length::compareTo)
        .orElse(Length.ZERO);
  }

  private static Length thickest(Group group) {
    return group.panels().stream().map(Part::thickness).max(Length::compareTo).orElse(Length.ZERO);
  }

  /** One setting of the fence for each distance from an edge. */
  private static int fences(Group group) {
    return (int) group.columns().stream().map(PressWay::nearer).distinct().count();
  }

  private static List<Reason> overhang(Group group, DrillPress press) {
    Length widest =
        group.panels().stream()
            .map(p -> p.box().size(Axis.Y))
            .max(Length::compareTo)
            .orElse(Length.ZERO);
    Length over = widest.minus(press.table());
    Telling tell = new Telling(group, "panel-over-table", "panel over the table, by");
    tell.derived("w", "width of the widest panel", widest);
    tell.stated("t", "width of the table", press.table());
    return over.isPositive()
        ? List.of(
            tell.reason(
                "a panel stands " + group.text(over) + " over the table",
                "stand a rest of the table's height beside it",
                "w - t",
                over))
        : List.of();
  }
}
