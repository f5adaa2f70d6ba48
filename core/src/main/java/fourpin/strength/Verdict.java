package fourpin.strength;

import fourpin.measure.Lazy;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.Use.Limit;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A shelf held against what is allowed in each way in which it is loaded: by the plate, which knows
 * front and back edge apart, where that can be bent; else, evenly loaded, by the beam.
 */
final class Verdict {

  /**
   * By how much more any place of a plate may be stressed than the middle of its length, at the
   * most: a load on one half stresses a beam 9/8 as much elsewhere.
   */
  private static final double AT_THE_MOST = 1.5;

  private final Candidate shelf;
  private final PlateBending.Memory plates;
  private final Optional<PlateBending> plate;
  private final Lazy<Optional<Bends>> bends;
  private final Lazy<List<Use>> uses;
  private final Lazy<Most> largest;

  /** What it rests on. */
  enum By {
    PLATE,
    BEAM
  }

  /**
   * As much as is within all limits.
   *
   * @param number load in N/mm, or span in mm
   * @param governs what allows no more
   */
  record Most(double number, Use governs) {}

  /**
   * @param plates those that are bent already
   */
  Verdict(Candidate shelf, PlateBending.Memory plates) {
    this.shelf = shelf;
    this.plates = plates;
    this.plate = shelf.plate().map(plates::of);
    this.bends = Lazy.of(() -> under(LoadCase.EVEN));
    this.uses = Lazy.of(() -> uses(shelf.beam().load()).toList());
    this.largest = Lazy.of(() -> new LargestLoad(this, shelf).find());
  }

  By by() {
    return bends().isPresent() ? By.PLATE : By.BEAM;
  }

  Candidate shelf() {
    return shelf;
  }

  /** The plate, if the shelf is one. */
  Optional<PlateBending> plate() {
    return plate;
  }

  /** As a plate with its load spread evenly; nothing if it is none, or tips. */
  Optional<Bends> bends() {
    return bends.get();
  }

  /** As a plate under its load; nothing if it is none, or tips. */
  Optional<Bends> under(LoadCase of) {
    return plate.flatMap(p -> p.under(of, shelf.beam().load()));
  }

  /** With its load spread evenly; a plate that tips is taken for its beam. */
  Deflection loaded() {
    return bends().map(Deflection::of).orElseGet(() -> Deflection.of(shelf.beam()));
  }

  /** The same under another load. */
  Deflection evenly(double load) {
    return bends()
        .flatMap(_ -> plate)
        .flatMap(p -> p.once(LoadCase.EVEN, load))
        .map(Deflection::of)
        .orElseGet(() -> Deflection.of(shelf.beam().under(load)));
  }

  /** Whether it tips in some way in which it is loaded. */
  boolean tips() {
    return uses().stream().anyMatch(use -> use.isBy(Limit.TIPPING));
  }

  /** The ways in which it tips over a row. */
  List<LoadCase> tipping(Over row) {
    return uses().stream()
        .filter(use -> use.isBy(Limit.TIPPING))
        .map(Use::of)
        .filter(of -> Over.of(shelf, of).filter(row::equals).isPresent())
        .toList();
  }

  /** Whether it tips in no way in which it is loaded, and none of its supports carries too much. */
  boolean isBorne() {
    return uses().stream()
        .filter(use -> use.isBy(Limit.SUPPORTS) || use.isBy(Limit.TIPPING))
        .allMatch(Use::holds);
  }

  /**
   * How much has to stand on it, spread evenly, for it to lie still on one low support, N; nothing
   * for what is no plate on supports.
   *
   * @param low how far that lies low, mm
   */
  Optional<Double> restsFrom(double low) {
    double stands = shelf.beam().load() * shelf.beam().length();
    return plate.flatMap(p -> p.low(low, stands)).map(of -> of.empty().closedBy());
  }

  /** How hard the support pushes most that carries it in the middle of its span, N. */
  double propPush() {
    return shelf.cases().loaded().stream()
        .flatMap(of -> under(of).stream())
        .map(Bends::pushes)
        .flatMap(p -> p.subList(p.size() - props(), p.size()).stream())
        .max(Double::compare)
        .orElse(0.0);
  }

  /** How hard the support pushes most that does so however its load lies, N. */
  double push() {
    return pressing().map(this::push).orElse(0.0);
  }

  /** How its load presses hardest on a support; nothing if it is no plate, or tips however. */
  Optional<LoadCase> pressing() {
    return most(this::push);
  }

  /** How its load sags it most; nothing if it is no plate, or tips however. */
  Optional<LoadCase> sagging() {
    return most(this::sag);
  }

  /** The first of those that come to most, but for errors of the sums. */
  private Optional<LoadCase> most(ToDoubleFunction<LoadCase> by) {
    return shelf.cases().loaded().stream()
        .filter(of -> under(of).isPresent())
        .reduce(
            (one, other) ->
                Use.isMore(by.applyAsDouble(other), by.applyAsDouble(one)) ? other : one);
  }

  private double sag(LoadCase of) {
    return under(of).map(Bends::sag).orElse(0.0);
  }

  private double push(LoadCase of) {
    return under(of).map(Bends::push).orElse(0.0);
  }

  private int props() {
    return switch (shelf.prop()) {
      case NONE -> 0;
      case BACK -> 1;
      case FRONT_AND_BACK -> 2;
    };
  }

  /** How hard each support of its right end pushes, front to back, its left half loaded alone. */
  List<Double> atEmptyEnd() {
    return under(LoadCase.ONE_HALF).map(Bends::pushes).stream()
        .flatMap(p -> IntStream.range(0, ends(p)).filter(i -> i % 2 == 1).mapToObj(p::get))
        .toList();
  }

  /** Row by row, left before right; those in the middle of its span last. */
  private int ends(List<Double> pushes) {
    return pushes.size() - props();
  }

  /** What its load uses of each limit, in each way in which it lies; a hand on it comes last. */
  List<Use> uses() {
    return uses.get();
  }

  /** The same of another load. */
  Stream<Use> uses(double load) {
    return shelf.cases().all().stream().flatMap(of -> uses(of, load));
  }

  /**
   * Of a hand it is asked whether it tips the shelf, breaks it, or presses too hard on a support;
   * of a beam only what bends it evenly.
   */
  Stream<Use> uses(LoadCase of, double load) {
    if (plate.isEmpty()) {
      return of.equals(LoadCase.EVEN) ? bent(of, evenly(load)) : Stream.empty();
    }
    Optional<Bends> bent = plate.flatMap(p -> under(p, of, load));
    Stream<Use> tips =
        bent.isEmpty()
            ? Stream.of(new Use(of, Limit.TIPPING, Double.POSITIVE_INFINITY))
            : Stream.empty();
    return Stream.concat(
        tips,
        of instanceof LoadCase.Hand hand
            ? ofHand(hand, bent)
            : bent.stream().flatMap(b -> Stream.concat(bent(of, Deflection.of(b)), pushed(of, b))));
  }

  /** How it sags and presses on supports alone; nothing where it tips. */
  Stream<Use> sagAndPush(LoadCase of, double load) {
    return plate.flatMap(p -> under(p, of, load)).stream()
        .flatMap(b -> Stream.concat(Stream.of(sag(of, b.sag())), pushed(of, b)));
  }

  private Use sag(LoadCase of, double down) {
    return new Use(of, Limit.SAG, shelf.limits().sagUse(down, shelf.span()));
  }

  /** A shelf that tips under it bends no less when it is held down. */
  private Stream<Use> ofHand(LoadCase.Hand hand, Optional<Bends> bent) {
    return Stream.concat(
        judged().map(_ -> new Use(hand, Limit.STRESS, stressUse(hand, bent))),
        handPush().stream()
            .flatMap(push -> shelf.supports().stream().map(l -> push / l.brief().value()))
            .map(share -> new Use(hand, Limit.SUPPORTS, share)));
  }

  private double stressUse(LoadCase.Hand hand, Optional<Bends> bent) {
    return bent.map(b -> stressUse(hand, Deflection.of(b)))
        .orElseGet(() -> shelf.limits().stressUse(stresses(hand, bent), hand));
  }

  /** All of a plate is looked at only where it might break: that takes longer than bending it. */
  private double stressUse(LoadCase of, Deflection down) {
    ShelfLimits limits = shelf.limits();
    List<Stress> across = down.across().get();
    return limits.stress().isPresent()
        ? limits.stressUse(down.stresses().get(), of)
        : Math.max(
            stressUse(of, across.subList(0, 1), down.stresses()),
            stressUse(of, across.subList(1, across.size()), down.strips()));
  }

  private double stressUse(LoadCase of, List<Stress> across, Lazy<List<Stress>> all) {
    double first = shelf.limits().stressUse(across, of);
    boolean open = first <= 1 && first > 1 / AT_THE_MOST;
    return open ? shelf.limits().stressUse(all.get(), of) : first;
  }

  private List<Stress> stresses(LoadCase.Hand hand, Optional<Bends> bent) {
    LoadedShelf beam = shelf.beam();
    return bent.map(b -> b.stresses().get())
        .orElseGet(() -> beam.stresses(beam.momentUnder(hand.push().number())));
  }

  /** In each of its layers, as its load lies; a hand is taken for one that holds it down. */
  List<Stress> stresses(LoadCase of) {
    Optional<Bends> bent = under(of);
    return of instanceof LoadCase.Hand hand
        ? stresses(hand, bent)
        : bent.map(b -> b.stresses().get()).orElseGet(() -> loaded().stresses().get());
  }

  /** Its limits, where they know a strength. */
  private Stream<ShelfLimits> judged() {
    return Stream.of(shelf.limits()).filter(l -> l.judgesStress(shelf.beam().section()));
  }

  /**
   * How hard the empty shelf presses on a front support by statics, a hand on its front edge above
   * it, N; nothing where it lies on none.
   */
  Optional<Double> handPush() {
    return shelf.bearing() instanceof Bearing.Rows rows
        ? Optional.of(handPush(rows))
        : Optional.empty();
  }

  private double handPush(Bearing.Rows rows) {
    Resting hand = Resting.of(shelf, shelf.cases().empty());
    double back = shelf.beam().section().depth() - rows.back().number();
    double own = Math.max(0, back - hand.centre()) * hand.own() / 2;
    return ((back - hand.at()) * hand.load() + own) / (back - rows.front().number());
  }

  /** How hard it presses on a support in the way in which it uses a limit of them, N. */
  double push(Use use) {
    return use.of().equals(shelf.cases().empty()) ? handPush().orElse(0.0) : push(use.of());
  }

  /** What is asked once, for the search of a load, is not remembered. */
  private Optional<Bends> under(PlateBending of, LoadCase by, double load) {
    return load == shelf.beam().load() ? of.under(by, load) : of.once(by, load);
  }

  private Stream<Use> bent(LoadCase of, Deflection down) {
    return Stream.concat(
        Stream.of(sag(of, down.sag())),
        judged().map(_ -> new Use(of, Limit.STRESS, stressUse(of, down))));
  }

  private Stream<Use> pushed(LoadCase of, Bends bends) {
    double most = bends.pushes().stream().limit(ends(bends.pushes())).reduce(0.0, Math::max);
    return shelf.supports().stream()
        .map(limit -> new Use(of, Limit.SUPPORTS, most / limit.most().value()));
  }

  /** Of its joints, which are found fault with by themselves, as its load lies worst. */
  Optional<Use> ofJoint() {
    return shelf.joint().map(joint -> joint.worst(shelf));
  }

  /** How much of what is allowed it uses, by the nearest limit. */
  Use worst() {
    return worst(uses().stream());
  }

  /** The first of those that use most, but for errors of the sums. */
  static Use worst(Stream<Use> uses) {
    return uses.reduce((one, other) -> Use.isMore(other.share(), one.share()) ? other : one)
        .orElseThrow();
  }

  boolean holds() {
    return uses().stream().allMatch(Use::holds);
  }

  /** Whether it keeps within one limit as it is loaded. */
  boolean holds(LoadCase of, Limit by) {
    return uses().stream().filter(use -> use.of().equals(of) && use.isBy(by)).allMatch(Use::holds);
  }

  /** Whether it carries itself. */
  boolean holdsEmpty() {
    return uses(LoadCase.EVEN, 0).allMatch(Use::holds);
  }

  /** Sag allowed at once, mm. */
  double allowed() {
    return shelf.limits().sagAllowed(shelf.span());
  }

  /**
   * The largest load within all limits however it lies, N/mm; none if its own weight is too much.
   */
  Most largestLoad() {
    return largest.get();
  }

  /** The longest span within all limits; nothing if there is none. */
  Optional<Most> longestSpan() {
    return longestSpan(shelf.limits().longestSpan(shelf.beam(), 1));
  }

  /**
   * Looked for from its own span on.
   *
   * @param ofBeam the longest of its beam
   */
  Optional<Most> longestSpan(double ofBeam) {
    double own = Math.min(shelf.beam().span(), ShelfLimits.LONGEST_SPAN_MM);
    return new LongestSpan(span -> worstOver(span, plates.rough()), span -> worstOver(span, plates))
        .find(own, Math.max(own, ofBeam));
  }

  /** Its joints allow no longer one either. */
  private Use worstOver(double span, PlateBending.Memory by) {
    Verdict over = new Verdict(shelf.over(span), by);
    return worst(Stream.concat(Stream.of(over.worst()), over.ofJoint().stream()));
  }
}
