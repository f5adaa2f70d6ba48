package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.reference.Reference;
import fourpin.strength.ShelfOnSupports.Bearing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the most loaded support of a shelf does to the side, and what that is allowed to be. */
final class SupportFigures {

  private static final Source STATICS = new Source("statics", "", Standing.DERIVED);

  private final ShelfOnSupports shelf;
  private final Verdict verdict;
  private final Optional<PinInSide> pin;
  private final Apart apart;

  SupportFigures(ShelfOnSupports shelf, Verdict verdict, Optional<PinInSide> pin, Apart apart) {
    this.shelf = shelf;
    this.verdict = verdict;
    this.pin = pin;
    this.apart = apart;
  }

  /** Nothing for a shelf in joints. */
  List<Figure> all() {
    return shelf.bearing() instanceof Bearing.Rows rows ? all(rows) : List.of();
  }

  private List<Figure> all(Bearing.Rows rows) {
    List<Figure> all = new ArrayList<>();
    push().ifPresent(all::add);
    handPush().ifPresent(all::add);
    pin.ifPresent(
        p -> {
          all.addAll(allowed(p));
          stress(p).ifPresent(all::add);
          all.add(edge(p));
          all.add(engagement(p));
        });
    all.add(slidesOff(rows));
    return all;
  }

  /** In the driest month, its front edge where it was cut to lie. */
  private Figure slidesOff(Bearing.Rows rows) {
    List<Input> inputs = new ArrayList<>();
    inputs.add(rows.back().input("b", "back edge to the middle of the back row"));
    apart
        .shrinks()
        .map(by -> new Input("w", by.title(), by.value(), by.source()))
        .ifPresent(inputs::add);
    double less = apart.shrinks().map(by -> by.value().value()).orElse(0.0);
    return figure(
        "slides-off",
        "how far the shelf may creep forward until its back edge leaves the back supports",
        length(rows.back().number() - less),
        apart.shrinks().isPresent() ? "b - w" : "b",
        inputs,
        STATICS);
  }

  /** How its load presses hardest on a support; nothing for a shelf that tips. */
  Optional<LoadCase> pressing() {
    return verdict.pressing();
  }

  /** Load on the most loaded support, spread evenly; nothing for a shelf that tips. */
  Optional<Figure> evenPush() {
    return PlateFigures.of(shelf, verdict).flatMap(PlateFigures::evenPush);
  }

  /** The same however its load lies. */
  Optional<Figure> push() {
    return PlateFigures.of(shelf, verdict).flatMap(PlateFigures::push);
  }

  /** Of a hand on its front edge above it; nothing for a shelf in joints. */
  Optional<Figure> handPush() {
    return shelf.bearing() instanceof Bearing.Rows rows
        ? verdict.handPush().map(push -> handPush(rows, push))
        : Optional.empty();
  }

  private Figure handPush(Bearing.Rows rows, double push) {
    Resting hand = Resting.of(verdict.shelf(), verdict.shelf().cases().empty());
    return figure(
        "hand-push",
        "load on a front support, a hand on the front edge above it and nothing on the shelf",
        force(push),
        "(F (D - b - x) + G (D - b - y) / 2) / (D - a - b)",
        List.of(
            shelf.doubt().hand().input("F", "push of a hand"),
            new Input("x", "from the front edge to the hand", length(hand.at()), STATICS),
            new Input("G", "the shelf's own weight", force(hand.own()), STATICS),
            new Input("y", "from the front edge to its middle", length(hand.centre()), STATICS),
            new Input("D", "depth of the shelf", length(shelf.section().depth()), Source.GEOMETRY),
            rows.front().input("a", "front edge to the front row"),
            rows.back().input("b", "back edge to the back row")),
        STATICS);
  }

  /** Limits that a hand above a support passes, what is allowed for minutes. */
  List<SupportLimit> passedByHand() {
    return verdict.shelf().supports().stream()
        .filter(limit -> verdict.handPush().filter(p -> p > limit.brief().value()).isPresent())
        .toList();
  }

  boolean allPassedByHand() {
    return passedByHand().size() == verdict.shelf().supports().size();
  }

  /** What codes allow on a support. */
  List<Figure> allowed(PinInSide in) {
    return new PinAllowances(shelf.prefix()).all(in);
  }

  /** Bending stress in the pin under its push. */
  Optional<Figure> stress(PinInSide in) {
    return push()
        .flatMap(
            push -> PinAllowances.bearing(allowed(in)).map(bearing -> stress(in, push, bearing)));
  }

  private Figure stress(PinInSide in, Figure push, double bearing) {
    double moment = in.dowel().moment(push.value().value(), bearing);
    return figure(
        "pin-stress",
        "bending stress in the most loaded pin, yielding through its whole section",
        stress(in.stress(moment)),
        "6 M / s³, M = P (e + P / (2 f d))",
        List.of(
            new Input("P", push.title(), push.value(), push.source()),
            new Input(
                "e",
                "lever of the push, to the middle of what lies on the pin",
                length(in.lever()),
                STATICS),
            new Input(
                "f",
                "bearing of the side, the lower of both",
                stress(bearing),
                PinAllowances.YIELD),
            in.diameter().input("d", "diameter of what presses on the wood"),
            in.stem()
                .input(
                    "s",
                    "diameter of the pin; its modulus s³ / 6 is plastic, as in the codes' yield"
                        + " model of pins; by the elastic one, π s³ / 32, it would be 1.7 times as"
                        + " much")),
        PinAllowances.YIELD);
  }

  private Figure edge(PinInSide in) {
    double diameters = in.edge() / in.diameter().number();
    return figure(
        "edge-diameters",
        "diameters from the middle of the front holes to the side's front edge; 1.5 are asked by"
            + " the NDS, 3 by Eurocode 5",
        Quantity.of(diameters, QuantityUnit.RATIO),
        "x / d",
        List.of(
            new Input(
                "x", "from the hole's middle to the edge", length(in.edge()), Source.GEOMETRY),
            in.diameter().input("d", "diameter of the hole"),
            Reference.constant("NDS edge distance").sourced().input("n₁", "asked by the NDS"),
            Reference.constant("EC5 edge distance").sourced().input("n₂", "asked by Eurocode 5")),
        STATICS);
  }

  /**
   * What is left of the pins under one end of the shelf after years, at either end alike: the shelf
   * pushed to the other side, so that all the room there is lies at this end.
   */
  Figure engagement(PinInSide in) {
    return figure(
        "engagement-years",
        "length of pin under the end of the shelf after years, the shelf pushed to the other side",
        length(engaged(in).left()),
        "r - g - 2 k b - w - 8 s² / (3 L)",
        List.of(
            in.reach().input("r", "reach of the pin"),
            in.gap().input("g", "gap at the end, the shelf pushed to the other side"),
            apart.creep().input("k", "bow of the sides after years over bow at first"),
            new Input(
                "b",
                "bow of either side at first where it stands free, at its most, since shelves may"
                    + " be moved there",
                length(apart.bow()),
                STATICS),
            new Input(
                "w",
                "by how much the bay grows wider over the year, and the shelf does not",
                length(apart.breath()),
                STATICS),
            new Input("s", "sag after years", length(sagInYears()), PlateFigures.PLATE),
            new Input("L", "span", shelf.span().value(), shelf.span().source())),
        STATICS);
  }

  /** The ends of an arc over its chord: 8 s² / (3 L). */
  Engagement engaged(PinInSide in) {
    double drawn = 8 * sagInYears() * sagInYears() / (3 * shelf.span().value().value());
    return new Engagement(in, apart.bowInYears(), apart.breath(), drawn);
  }

  private double sagInYears() {
    return verdict.loaded().sag() * shelf.limits().creep().number();
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs, Source source) {
    return new Figure(shelf.prefix() + "/" + id, title, value, formula, inputs, source);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity stress(double mpa) {
    return Quantity.of(mpa, QuantityUnit.STRESS);
  }
}
