package fourpin.boring;

import fourpin.boring.OppositeHoles.Axes;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Finding.Severity;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.Settings;
import fourpin.job.Shop;
import fourpin.job.Support;
import fourpin.measure.LazyList;
import fourpin.measure.Length;
import java.util.List;
import java.util.Optional;

/**
 * Holes from both faces of an upright whose floors keep their distance, but not the points of the
 * bits. Which bit bores is known once the way is.
 */
public final class PointsMeet {

  private static final String KIND = "points-meet";

  private final OppositeHoles pair;
  private final Reporter reporter;
  private final Settings settings;
  private final int bays;

  private PointsMeet(OppositeHoles pair, Reporter reporter, BuiltCase built) {
    this.pair = pair;
    this.reporter = reporter;
    this.settings = built.order().settings();
    this.bays = built.bays().size();
  }

  /** Holes whose floors meet already are found with the pattern. */
  public static List<Finding> findings(Job job, BuiltCase built, List<OppositeHoles> pairs) {
    Trials trials = Trials.of(job, built.order(), Points.UNKNOWN);
    Reporter reporter = new Reporter(built.order().name(), job.style(), trials);
    Settings settings = built.order().settings();
    return pairs.stream()
        .filter(p -> p.web().isPositive() && p.points().isPositive())
        .filter(p -> p.wood().isLessThan(settings.length(Setting.LEAST_FLOOR)))
        .map(p -> new PointsMeet(p, reporter, built).finding(built))
        .toList();
  }

  private Finding finding(BuiltCase built) {
    Length wood = pair.wood();
    return reporter.finding(
        wood.isPositive() || isAssumed() ? Severity.DOUBT : Severity.ERROR,
        KIND,
        Reporter.say(
            "Holes of bays %d and %d lie opposite each other in %s (%s): of %s the holes take %s"
                + " and %s, and the points of the bits %s: %s.%s",
            pair.one().grid().bay(),
            pair.other().grid().bay(),
            pair.upright().name(),
            pair.upright().mark(),
            reporter.text(pair.upright().thickness()),
            reporter.text(pair.one().grid().depth()),
            reporter.text(pair.other().grid().depth()),
            pointWords(),
            wood.isPositive()
                ? reporter.text(wood)
                    + " is left where "
                    + reporter.text(settings.length(Setting.LEAST_FLOOR))
                    + " is asked for"
                : "they meet",
            isAssumed() ? " No bit is stated: its point is taken as is usual." : ""),
        List.of(pair.figure(built)),
        Optional.of(pair.upright().mark()),
        pair.spot(),
        LazyList.of(this::remedies));
  }

  /** Of a bit that nobody has stated nothing is sure. */
  private boolean isAssumed() {
    Shop shop = reporter.trials().shop();
    return PlainBits.isAssumed(shop, settings, pair.one())
        || PlainBits.isAssumed(shop, settings, pair.other());
  }

  private String pointWords() {
    return pair.axes() == Axes.SAME
        ? reporter.text(pair.one().point())
            + " and "
            + reporter.text(pair.other().point())
            + " more"
        : "up to " + reporter.text(pair.points()) + " more";
  }

  private List<Remedy> remedies() {
    BayGrid one = pair.one().grid();
    BayGrid other = pair.other().grid();
    Cures cures = new Cures(reporter, KIND, Optional.empty(), Trials.Reach.ALL);
    if (isOfPins(one) && isOfPins(other)) {
      shallower(cures);
    }
    shorterPoint(cures);
    SecondBays second = new SecondBays(bays, reporter);
    Length across = one.diameter().plus(other.diameter()).over(2);
    second.back(cures, reporter.roundedUp(across.plus(settings.length(Setting.LEAST_EDGE))));
    second.up(cures, one.pitch());
    return cures
        .orElse(
            "choose a material of "
                + reporter.atLeast(
                    pair.upright()
                        .thickness()
                        .minus(pair.wood())
                        .plus(settings.length(Setting.LEAST_FLOOR)))
                + " or more for the case",
            "price and weight")
        .list();
  }

  /** Where the shop states no bit its point is a setting. */
  private void shorterPoint(Cures cures) {
    Length point =
        reporter.roundedDown(pair.web().minus(settings.length(Setting.LEAST_FLOOR)).over(2));
    if (point.isNegative()) {
      return;
    }
    String cost = "a Forstner or router bit";
    BayGrid grid = pair.one().grid();
    if (PlainBits.of(reporter.trials().shop(), grid.diameter(), grid.depth()).isEmpty()) {
      cures.setting(Setting.BIT_POINT, point, ": a bit with no longer point", cost);
    } else {
      cures.byHand(
          Reporter.say(
              "bore with a bit whose point is %s or less, and state it", reporter.text(point)),
          cost);
    }
  }

  private static boolean isOfPins(BayGrid grid) {
    return grid.support() instanceof Support.Pins;
  }

  private void shallower(Cures cures) {
    Length thickness = pair.upright().thickness();
    Length depth = reporter.roundedDown(OppositeHoles.deepest(thickness, pair.points(), settings));
    cures.setting(
        Setting.HOLE_DEPTH,
        depth,
        Reporter.say(
            ", on both faces: leaves %s, points counted",
            reporter.text(thickness.minus(depth.times(2)).minus(pair.points()))),
        ProudStems.cost(List.of(pair.one().grid(), pair.other().grid()), depth, reporter));
  }
}
