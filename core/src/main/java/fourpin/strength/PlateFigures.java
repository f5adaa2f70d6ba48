package fourpin.strength;

import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.strength.PlateAnswer.Bends;
import fourpin.strength.PlateAnswer.Stress;
import fourpin.strength.Section.Layer;
import fourpin.strength.ShelfOnSupports.Bearing;
import fourpin.strength.plate.PlateSolver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The figures of one shelf as a plate, each with its formula, inputs and source. */
final class PlateFigures {

  static final Source PLATE =
      new Source(
          "thin plate on points that only push, solved by bicubic rectangles of Bogner, Fox and"
              + " Schmit, "
              + PlateSolver.MESH,
          "Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. (1959), art. 85;"
              + " checked as docs/plate-convergence.md shows",
          Standing.DERIVED);

  /** What keeps all limits however its load lies. */
  static final String WITHIN_LIMITS =
      "the limits in force in each way in which the load lies, by a " + PLATE.title();

  private static final Source STATICS =
      new Source("statics of the bent plate", "", Standing.DERIVED);
  static final String BENDING =
      " of Dx w,xxxx + 2 (D1 + 2 Dxy) w,xxyy + Dy w,yyyy = p, D1 = ν Dy, w = 0 where a support"
          + " pushes";

  private final ShelfOnSupports shelf;
  private final Verdict verdict;
  private final PlateBending plate;
  private final Layer panel;
  private final PlateStiffness stiffness;

  private PlateFigures(ShelfOnSupports shelf, Verdict verdict, PlateBending plate) {
    this.shelf = shelf;
    this.verdict = verdict;
    this.plate = plate;
    Section section = shelf.loaded().asPlate(shelf.bearing());
    this.panel = section.layers().getFirst();
    this.stiffness = new PlateStiffness(shelf, section);
  }

  /** Nothing for a shelf that is no plate. */
  static Optional<PlateFigures> of(ShelfOnSupports shelf, Verdict verdict) {
    return verdict.plate().map(plate -> new PlateFigures(shelf, verdict, plate));
  }

  /** All of them, in the order they are read. */
  List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    verdict.bends().ifPresent(bends -> all.addAll(loaded(bends)));
    verdict.shelf().cases().rows().forEach(row -> all.addAll(unevenly(row).inRow()));
    all.addAll(unevenly(LoadCase.ONE_HALF).onOneHalf());
    rocking().ifPresent(rocking -> all.addAll(rocking.all()));
    verdict.under(verdict.shelf().cases().empty()).ifPresent(hand -> all.addAll(hand(hand)));
    unevenly(verdict.shelf().cases().empty()).stress().ifPresent(all::add);
    all.addAll(stiffness.all());
    return all;
  }

  private List<Figure> loaded(Bends bends) {
    List<Figure> figures = new ArrayList<>(lines(bends).values());
    figures.add(stress(bends));
    figures.addAll(pushes(bends));
    if (shelf.bearing() instanceof Bearing.Rows) {
      figures.add(
          figure(
              "plate-lifted",
              "supports that the loaded shelf lifts off",
              Quantity.count(bends.lifted()),
              "number of supports with r = 0",
              bending(),
              PLATE));
    }
    return figures;
  }

  /** How far front edge, middle and back edge sag under the stated load. */
  Map<Spot, Figure> lines(Bends bends) {
    Map<Spot, Figure> lines = new EnumMap<>(Spot.class);
    lines.put(Spot.FRONT, line("plate-front", "sag of the front edge", "w(x, 0)", bends.front()));
    lines.put(
        Spot.MIDDLE,
        line("plate-middle", "sag in the middle of the depth", "w(x, D / 2)", bends.middle()));
    lines.put(Spot.BACK, line("plate-back", "sag of the back edge", "w(x, D)", bends.back()));
    return lines;
  }

  private Figure line(String id, String title, String place, double value) {
    return figure(id, title + ", as a plate", length(value), most(place), bending(), PLATE);
  }

  private static String most(String place) {
    return "max " + place + BENDING;
  }

  /** Sag where it is most, under another even load. */
  Figure under(String id, String title, double sag, Figure load) {
    List<Input> inputs = new ArrayList<>(bending());
    inputs.set(0, new Input("q", load.title(), load.value(), load.source()));
    return figure(id, title, length(sag), most("w(x, y)"), inputs, PLATE);
  }

  /** With the load spread evenly. */
  Figure stress(Bends bends) {
    return stress("plate-stress", bends, LoadCase.EVEN, "as a plate");
  }

  /**
   * @param of in which way it is loaded, by which what is nearest to breaking is shown
   * @param how the shelf is looked at or its load lies, after a comma
   */
  Figure stress(String id, Bends bends, LoadCase of, String how) {
    Stress stress = shelf.limits().worst(bends.stresses().get(), of);
    String name = stress.layer().name();
    String bent = bentBy(stress.layer());
    return figure(
        id,
        "largest bending stress in the " + name + ", " + how,
        Quantity.of(stress.all(), QuantityUnit.STRESS),
        "max (" + bent + " + σₘ)" + where(stress.layer()),
        List.of(
            new Input(
                bent,
                "stress from the bending of the " + name,
                Quantity.of(stress.bending(), QuantityUnit.STRESS),
                PLATE),
            new Input("t", "thickness", length(stress.layer().thickness()), Source.GEOMETRY),
            new Input(
                "σₘ",
                "stress from strips and panel pulling at each other",
                Quantity.of(stress.pull(), QuantityUnit.STRESS),
                PLATE)),
        PLATE);
  }

  private String bentBy(Layer layer) {
    return layer.equals(panel) ? anyWay("6 M₁ / t²", "6 Mx / t²") : "E w,xx t / 2";
  }

  private String where(Layer layer) {
    String beside = ", over all of it but nearer than t to a support that pushes";
    return layer.equals(panel)
        ? beside + anyWay(", M₁ = |Mx + My| / 2 + √((Mx - My)² / 4 + Mxy²)", "")
        : ", over all its length";
  }

  private String anyWay(String alikeAllWays, String alongTheSpan) {
    return panel.matter().flat().isAlikeAllWays() ? alikeAllWays : alongTheSpan;
  }

  private List<Figure> pushes(Bends bends) {
    return shelf.bearing() instanceof Bearing.Rows rows ? pushes(rows, bends.pushes()) : List.of();
  }

  private List<Figure> pushes(Bearing.Rows rows, List<Double> pushes) {
    List<String> names =
        switch (rows.count()) {
          case TWO -> List.of("front", "back");
          case THREE -> List.of("front", "middle", "back");
        };
    List<Figure> figures = new ArrayList<>();
    for (int row = 0; row < names.size(); row++) {
      figures.add(
          figure(
              "plate-load-" + names.get(row),
              "load on each " + names.get(row) + " support, as a plate",
              force(Math.max(pushes.get(2 * row), pushes.get(2 * row + 1))),
              "r with Σ r = (q + g) l, r > 0 where w = 0, r = 0 where w < 0",
              bending(),
              PLATE));
    }
    return figures;
  }

  /** With its load elsewhere than all over it. */
  UnevenLoad unevenly(LoadCase of) {
    return new UnevenLoad(shelf, of, verdict.under(of), this, bending());
  }

  /** Load on the most loaded support however its load lies; nothing for a shelf that tips. */
  Optional<Figure> push() {
    return verdict.pressing().map(this::push);
  }

  private Figure push(LoadCase hardest) {
    List<Input> inputs = new ArrayList<>();
    for (LoadCase of : verdict.shelf().cases().loaded()) {
      verdict.under(of).map(bends -> push(of, bends.push())).ifPresent(inputs::add);
    }
    return figure(
        "support-push",
        "load on the most loaded support, the load " + hardest.place(),
        force(verdict.push()),
        "max r",
        inputs,
        PLATE);
  }

  private static Input push(LoadCase of, double most) {
    return new Input("r", "on the most loaded support, the load " + of.place(), force(most), PLATE);
  }

  /** The same with the load spread evenly; nothing for a shelf in joints either. */
  Optional<Figure> evenPush() {
    return verdict.bends().stream()
        .flatMap(bends -> pushes(bends).stream())
        .max(Comparator.comparingDouble(push -> push.value().value()));
  }

  /** What one low support does; nothing for a shelf in joints. */
  Optional<RockingFigures> rocking() {
    return plate
        .low(shelf.doubt().low().number(), load())
        .map(low -> new RockingFigures(shelf, low, stiffness.twistInput(), verdict));
  }

  /** The stated load on the whole shelf, N. */
  double load() {
    return shelf.load().value().value() * shelf.loaded().length();
  }

  private List<Figure> hand(Bends hand) {
    List<Input> inputs = new ArrayList<>(bending());
    inputs.set(
        0, shelf.doubt().hand().input("F", "push of a hand on the middle of the front edge"));
    Figure front =
        figure(
            "hand-front",
            "front edge of the empty shelf under a hand, as a plate",
            length(hand.front()),
            "max w(x, 0), F at (l / 2, 0)," + BENDING,
            inputs,
            PLATE);
    return shelf.bearing() instanceof Bearing.Rows
        ? List.of(
            front,
            figure(
                "hand-lifted",
                "supports that the empty shelf lifts off under a hand on its front edge",
                Quantity.count(hand.lifted()),
                "number of supports with r = 0",
                inputs,
                PLATE))
        : List.of(front);
  }

  private List<Input> bending() {
    List<Input> inputs = new ArrayList<>();
    inputs.add(new Input("q", shelf.load().title(), shelf.load().value(), shelf.load().source()));
    inputs.add(
        new Input(
            "g",
            "the shelf's own weight",
            Quantity.of(shelf.section().weight(), QuantityUnit.LINE_LOAD),
            STATICS));
    inputs.add(
        new Input("l", "length of the shelf", length(shelf.loaded().length()), Source.GEOMETRY));
    inputs.add(
        new Input("D", "depth of the shelf", length(shelf.section().depth()), Source.GEOMETRY));
    inputs.addAll(held());
    inputs.addAll(stiffness.inputs());
    return inputs;
  }

  private List<Input> held() {
    return switch (shelf.bearing()) {
      case Bearing.WholeEnd() ->
          List.of(new Input("L", "ends hinged over", shelf.span().value(), shelf.span().source()));
      case Bearing.Rows rows ->
          List.of(
              new Input("c", "end over each support", length(shelf.overhang()), STATICS),
              rows.front().input("a", "front edge to the front row"),
              rows.back().input("b", "back edge to the back row"));
    };
  }

  private Figure figure(
      String id, String title, Quantity value, String formula, List<Input> inputs, Source source) {
    return new Figure(shelf.prefix() + "/" + id, title, value, formula, inputs, source);
  }

  private static Quantity length(double mm) {
    return Quantity.of(mm, QuantityUnit.LENGTH);
  }

  private static Quantity force(double newton) {
    return Quantity.of(newton, QuantityUnit.FORCE);
  }
}
