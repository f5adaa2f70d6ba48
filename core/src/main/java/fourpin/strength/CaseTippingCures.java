package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Part;
import fourpin.job.CaseOrder;
import fourpin.job.Drawers;
import fourpin.job.Job;
import fourpin.job.Setting;
import fourpin.job.SettingValue;
import fourpin.measure.Gravity;
import fourpin.measure.Length;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/** What keeps a case, or one on another, from tipping, each worked out anew. */
final class CaseTippingCures {

  private static final double KG_PER_LB = 0.45359237;

  /** As many as a step asks for to lift one thing: what is heavier is no cure. */
  private static final int MOST_PEOPLE = 4;

  private static final Length STEP_INCHES = Length.inches(1, 4);
  private static final Length STEP_METRIC = Length.mm(5);

  /** What comes out less than this share of its length is no drawer to reach into. */
  private static final double LEAST_OUT = 0.5;

  /** What leaves it falling and gains less than this share of what is lacking is no cure. */
  private static final double LEAST_GAIN = 0.01;

  private final Job job;
  private final Falling falling;
  private final double now;

  CaseTippingCures(Job job, Falling falling) {
    this.job = job;
    this.falling = falling;
    this.now = falling.held(UnaryOperator.identity());
  }

  /**
   * What tips.
   *
   * @param way which way
   * @param orders its cases
   * @param held what keeps it standing with its cases ordered otherwise, N·mm about its foot
   * @param enough what ends the finding is more than this, N·mm
   * @param light what it should stand besides
   * @param weighed its bottom in words
   * @param lever how far behind that foot the middle of its bottom hangs, mm
   * @param height over all, mm
   */
  record Falling(
      FloorSlope.To way,
      List<CaseOrder> orders,
      ToDoubleFunction<UnaryOperator<CaseOrder>> held,
      double enough,
      LightPush light,
      String weighed,
      double lever,
      double height) {
    Falling {
      orders = List.copyOf(orders);
    }

    double held(UnaryOperator<CaseOrder> change) {
      return held.applyAsDouble(change);
    }

    /** That the light push does not tip it either, N·mm. */
    double stands() {
      return Math.max(enough, light.moment(height));
    }
  }

  /** How far behind a foot the middle of the bottom of a case on the floor hangs, mm. */
  static double lever(BuiltCase built, double foot) {
    Part bottom = built.part("B");
    double middle = (bottom.box().low().y().mm() + bottom.box().high().y().mm()) / 2;
    FloorSlope slope = FloorSlope.of(FloorSlope.To.FRONT, built.order().settings());
    return middle - foot - slope.at(bottom.box().high().z().mm());
  }

  /** The same case, parts as they are, ordered otherwise. */
  static BuiltCase ordered(BuiltCase built, UnaryOperator<CaseOrder> change) {
    return new BuiltCase(change.apply(built.order()), built.outside(), built.parts(), built.bays());
  }

  /** A cure, and what then keeps it standing, N·mm. */
  private record Tried(Cure cure, double held) {}

  /** What a cure does, the best first. */
  private enum Does {
    STANDS_PUSHED,
    STANDS,
    HELPS
  }

  private Does does(Tried tried) {
    return tried.held() > falling.stands()
        ? Does.STANDS_PUSHED
        : tried.held() > falling.enough() ? Does.STANDS : Does.HELPS;
  }

  private boolean stands(Tried tried) {
    return does(tried) != Does.HELPS;
  }

  /**
   * Those after which it stands a light push as well, the cheapest first; then those after which it
   * barely stands; then what only helps.
   */
  List<Remedy> all() {
    return Stream.of(level(), narrowDoors(), oneAtATime(), lessOut(), weighed())
        .flatMap(Optional::stream)
        .filter(tried -> stands(tried) || gains(tried))
        .sorted(Comparator.comparing(this::does).thenComparing(Tried::cure, Cure.CHEAPEST))
        .map(tried -> tried.cure().told(": " + outcome(tried)).remedy(job))
        .toList();
  }

  private boolean gains(Tried tried) {
    return tried.held() > now + LEAST_GAIN * (falling.enough() - now);
  }

  private String outcome(Tried tried) {
    String push = falling.light().words(job.unit(), falling.height(), tried.held());
    return switch (does(tried)) {
      case STANDS_PUSHED -> "it stands then until " + push + " tips it";
      case STANDS ->
          "it then stands barely, until %s tips it, less than the light push of %s"
              .formatted(push, falling.light().push().value().text(job.unit()));
      case HELPS ->
          "it still lacks %s at its top then, now %s; cure that too"
              .formatted(lacks(tried.held()), lacks(now));
    };
  }

  private String lacks(double held) {
    return Quantity.of((falling.enough() - held) / falling.height(), QuantityUnit.FORCE)
        .text(job.unit());
  }

  private Tried tried(
      String what, Optional<Double> price, String besides, UnaryOperator<CaseOrder> change) {
    Cure cure = new Cure(what, price, 0, besides, Optional.empty(), Cure.Of.CASE);
    return new Tried(cure, falling.held(change));
  }

  private Optional<Tried> level() {
    return Optional.of(
        tried(
            "level it with shims under %s, and set %s to 0 when that is done"
                .formatted(falling.way().low(), falling.way().setting().key()),
            Optional.of(0.0),
            "care",
            order ->
                order.with(
                    order.settings().with(falling.way().setting(), new SettingValue.OfNumber(0)))));
  }

  private Optional<Tried> narrowDoors() {
    return falling.orders().stream().anyMatch(CaseTippingCures::hasWideDoors)
        ? Optional.of(
            tried(
                "hang two narrow doors in each bay instead of a wide one",
                Optional.empty(),
                "a door and its hinges for each bay more",
                order ->
                    order
                        .doors()
                        .filter(_ -> hasWideDoors(order))
                        .map(d -> order.with(d.with(2)))
                        .orElse(order)))
        : Optional.empty();
  }

  private static boolean hasWideDoors(CaseOrder order) {
    return order.doors().filter(doors -> doors.perBay() == 1).isPresent();
  }

  private Optional<Tried> oneAtATime() {
    return drawers().anyMatch(drawers -> drawers.count() > 1)
        ? Optional.of(
            tried(
                "take slides that let one drawer out at a time",
                Optional.empty(),
                "other slides",
                order -> drawn(order, drawers -> of(1, drawers.out(), drawers))))
        : Optional.empty();
  }

  /** As far out as it stands a light push besides; else as far as it stands. */
  private Optional<Tried> lessOut() {
    Length step = job.unit().customary() ? STEP_INCHES : STEP_METRIC;
    return drawers()
        .map(Drawers::out)
        .max(Comparator.naturalOrder())
        .map(most -> outs(most, step))
        .flatMap(
            tried -> tried.stream().filter(this::stands).min(Comparator.comparing(this::does)));
  }

  /** From further out to less. */
  private List<Tried> outs(Length most, Length step) {
    return LongStream.rangeClosed(1, most.wholeTimes(step))
        .mapToObj(less -> step.times(most.wholeTimes(step) - less))
        .filter(out -> drawers().allMatch(drawers -> isReached(drawers, out)))
        .map(this::out)
        .toList();
  }

  private static boolean isReached(Drawers drawers, Length out) {
    return out.mm() >= LEAST_OUT * drawers.length().mm();
  }

  private Tried out(Length out) {
    return tried(
        "take slides that come out %s at the most".formatted(job.style().text(out)),
        Optional.empty(),
        "other slides",
        order ->
            drawn(order, drawers -> of(drawers.count(), Length.min(out, drawers.out()), drawers)));
  }

  private Stream<Drawers> drawers() {
    return falling.orders().stream().flatMap(order -> order.drawers().stream());
  }

  private static CaseOrder drawn(CaseOrder order, UnaryOperator<Drawers> change) {
    return order.holding(order.drawers().map(change));
  }

  private static Drawers of(int count, Length out, Drawers drawers) {
    return new Drawers(count, drawers.height(), drawers.length(), out, drawers.mass());
  }

  /** By one person, kg. */
  private double lifted() {
    return falling.orders().getLast().settings().number(Setting.LIFT_LIMIT);
  }

  /**
   * In whole pounds or kilograms, so that a light push does not tip it either; where nobody could
   * carry that in, as much as it stands by.
   */
  private Optional<Tried> weighed() {
    return weighed(falling.stands()).or(() -> weighed(falling.enough()));
  }

  private Optional<Tried> weighed(double wanted) {
    double unit = job.unit().customary() ? KG_PER_LB : 1;
    double each = unit * Gravity.STANDARD * falling.lever();
    double mass = unit * (Math.floor((wanted - now) / each) + 1);
    Cure cure =
        new Cure(
            "weigh %s down for good, in its middle".formatted(falling.weighed()),
            Optional.empty(),
            mass,
            "",
            Optional.empty(),
            Cure.Of.CASE);
    return falling.lever() > 0 && mass <= MOST_PEOPLE * lifted()
        ? Optional.of(new Tried(cure, now + mass * Gravity.STANDARD * falling.lever()))
        : Optional.empty();
  }
}
