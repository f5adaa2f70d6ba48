package fourpin.plan;

import fourpin.bench.Removal.Bore;
import fourpin.bench.Surface;
import fourpin.boring.way.BitSetting;
import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.plan.MistakeReport.Rescue;
import java.util.List;
import java.util.Locale;

/** Whether a panel with holes that are too deep can be saved. */
record DepthRescue(MistakeFigures figures, RowNames names, CaseWays ways, SpoiltRows rows) {

  /** What the wood behind the point of the bit allows. */
  PanelRescue.Answer deeper() {
    Bore first = rows.wanted().getFirst();
    Length depth = first.depth().plus(setting(Setting.STOP_SLIP));
    Length point =
        ways.bit(names.hole(first)).map(BitSetting::point).orElse(setting(Setting.BIT_POINT));
    Length left = rows.piece().thickness().minus(depth).minus(point);
    if (bothFacesMeet(depth)) {
      return new PanelRescue.Answer(
          Rescue.LOST, "The holes of both bays meet in the panel: a pin pushes out the other.");
    }
    if (!left.isPositive()) {
      return new PanelRescue.Answer(
          Rescue.LOST,
          "The bit comes out on the other face. Where that is not seen, plug it there with glued"
              + " dowels; where it is, make the panel anew.");
    }
    String words =
        say(
                "%s of wood is left behind the point of the bit.",
                figures.length(
                    "reserve",
                    "wood left behind the point of the bit",
                    left,
                    "t - d - s - p",
                    MistakeFigures.input("t", "thickness of the panel", rows.piece().thickness()),
                    MistakeFigures.input("d", "depth of the holes as wanted", first.depth()),
                    figures.input("s", Setting.STOP_SLIP),
                    MistakeFigures.input("p", "point of the bit", point)))
            + opposite(first);
    return left.isLessThan(setting(Setting.LEAST_FLOOR))
        ? new PanelRescue.Answer(
            Rescue.USE, words + " Look for bulges on the other face; set the stop again.")
        : new PanelRescue.Answer(
            Rescue.USE,
            words
                + " Pins with a shoulder sit as before; under others glue a disc into each hole.");
  }

  /** Partitions are bored with the same stop from both faces. */
  private String opposite(Bore first) {
    Length both = setting(Setting.STOP_SLIP).times(2);
    return ways.opposite(List.of(names.grid(first)))
        .filter(o -> !o.wood().minus(both).isPositive())
        .map(
            o ->
                " Not so in "
                    + o.upright().mark()
                    + ": bored so from both faces, its opposite holes meet.")
        .orElse("");
  }

  /** Whether holes from both faces, each so deep, share wood. */
  private boolean bothFacesMeet(Length depth) {
    boolean through = depth.times(2).isAtLeast(rows.piece().thickness());
    return through
        && rows.wanted().stream()
            .filter(a -> a.surface() == Surface.FACE)
            .anyMatch(
                a ->
                    rows.wanted().stream()
                        .filter(b -> b.surface() == Surface.REVERSE)
                        .anyMatch(b -> SpoiltRows.betweenRims(a, b) < 0));
  }

  private Length setting(Setting setting) {
    return names.settings().length(setting);
  }

  private static String say(String words, Object... values) {
    return String.format(Locale.ROOT, words, values);
  }
}
