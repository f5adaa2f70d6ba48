package fourpin.strength;

import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BaySpace.Opening;
import fourpin.casework.BuiltCase;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import fourpin.measure.Sourced;
import fourpin.strength.Beam.Load;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How far the left upright of a bay bows sideways, because its shelves stand on pins beside it: a
 * beam between the panels that are fixed to it, turned by each shelf and by the end of an open top;
 * the back is not counted on.
 */
final class SideBow {

  private static final int STATIONS = 40;

  private static final Source SOURCE =
      new Source(
          "beam hinged at fixed panels and turned by the shelves' supports, by singularity functions, at "
              + (STATIONS - 1)
              + " places along it",
          "any strength of materials; the back is not counted on",
          Standing.DERIVED);

  /** A turning moment is two forces so far apart, as a share of the span. */
  private static final double APART = 1e-3;

  private final Job job;
  private final BuiltCase built;
  private final ShelfReader reader;
  private final SupportReader supports;
  private final Map<Opening, Double> bows = new HashMap<>();

  SideBow(Job job, BuiltCase built, ShelfReader reader, SupportReader supports) {
    this.job = job;
    this.built = built;
    this.reader = reader;
    this.supports = supports;
  }

  /** One for each opening with adjustable shelves on pins. */
  List<Figure> all() {
    List<Figure> all = new ArrayList<>();
    for (BaySpace bay : built.bays()) {
      for (Opening opening : bay.openings()) {
        List<Turn> turns = turnsMost(bay, opening, turns(opening));
        if (!turns.isEmpty()) {
          all.add(figure(bay, opening, turns));
        }
      }
    }
    return all;
  }

  /** Of the opening that a shelf stands in, mm; nothing where nothing turns its side. */
  double at(Part shelf) {
    return reader.space(shelf).openings().stream()
        .filter(opening -> opening.clear().overlaps(shelf.box()))
        .findFirst()
        .map(o -> bows.computeIfAbsent(o, _ -> bow(reader.space(shelf), o, 1)))
        .orElse(0.0);
  }

  /** The same with all shelves turning it so many times as much. */
  double turned(Part shelf, double times) {
    return reader.space(shelf).openings().stream()
        .filter(opening -> opening.clear().overlaps(shelf.box()))
        .findFirst()
        .map(o -> bow(reader.space(shelf), o, times))
        .orElse(0.0);
  }

  /**
   * The same with more panels fixed to the side, spread evenly over that opening, mm; its shelves
   * where they stand.
   *
   * @param panels how many more
   * @param times how many times as much all shelves turn it
   */
  double divided(Part shelf, int panels, double times) {
    return reader.space(shelf).openings().stream()
        .filter(opening -> opening.clear().overlaps(shelf.box()))
        .findFirst()
        .map(o -> divided(reader.space(shelf), o, panels + 1, times))
        .orElse(0.0);
  }

  private double divided(BaySpace bay, Opening opening, int parts, double times) {
    List<Turn> each = turns(opening, times);
    double height = opening.clear().size(Axis.Z).mm() / parts;
    Section section = section(built.part(bay.left()));
    return Stream.of(each, turnsMost(bay, opening, each))
        .flatMap(
            turns ->
                IntStream.range(0, parts)
                    .mapToObj(part -> bow(height, section, within(turns, part * height, height))))
        .max(Double::compare)
        .orElseThrow();
  }

  private static List<Turn> within(List<Turn> turns, double from, double height) {
    return turns.stream()
        .filter(turn -> turn.at() > from && turn.at() <= from + height)
        .map(turn -> new Turn(turn.at() - from, turn.moment()))
        .toList();
  }

  /** Of the side that a shelf stands beside: bow after years over bow at first. */
  Sourced creep(Part shelf) {
    Part side = built.part(reader.space(shelf).left());
    return Matters.creep(job.material(side.material()), built.order().settings());
  }

  private double bow(BaySpace bay, Opening opening, double times) {
    List<Turn> turns = turnsMost(bay, opening, turns(opening, times));
    double height = opening.clear().size(Axis.Z).mm();
    return turns.isEmpty() ? 0 : bow(height, section(built.part(bay.left())), turns);
  }

  /** With what the top brings, with what is taken to stand there, or without: what bows it more. */
  private List<Turn> turnsMost(BaySpace bay, Opening opening, List<Turn> turns) {
    double height = opening.clear().size(Axis.Z).mm();
    Section section = section(built.part(bay.left()));
    return ofTop(bay, opening)
        .filter(_ -> !turns.isEmpty())
        .map(top -> Stream.concat(turns.stream(), Stream.of(top)).toList())
        .filter(all -> bow(height, section, all) > bow(height, section, turns))
        .orElse(turns);
  }

  /** One end of an open top; partitions carry the ends of two bays, which turn them little. */
  private Optional<Turn> ofTop(BaySpace bay, Opening opening) {
    double load = OpenTop.perMm(job, built);
    return Optional.of(opening)
        .filter(o -> o.above().equals("T") && bay.left().equals("L") && load > 0)
        .map(o -> ofTop(bay, o, load + Matters.section(job, built.part("T")).weight()));
  }

  /** It lies on as much of the side as it stands in it. */
  private Turn ofTop(BaySpace bay, Opening opening, double perMm) {
    Part side = built.part(bay.left());
    double end = perMm * bay.clear().size(Axis.X).mm() / 2;
    double deep = side.box().high().x().minus(built.part("T").box().low().x()).mm();
    double lever = (side.thickness().mm() - Math.max(0, deep)) / 2;
    return new Turn(opening.clear().size(Axis.Z).mm(), end * lever);
  }

  /** What one shelf does. @param at above the opening's floor, mm @param moment N·mm */
  record Turn(double at, double moment) {}

  private List<Turn> turns(Opening opening, double times) {
    return turns(opening).stream().map(t -> new Turn(t.at(), times * t.moment())).toList();
  }

  private List<Turn> turns(Opening opening) {
    List<Turn> turns = new ArrayList<>();
    for (Part shelf : reader.shelves()) {
      if (shelf.role() == Part.Role.SHELF && shelf.box().overlaps(opening.clear())) {
        supports.pin(shelf, reader).ifPresent(pin -> turns.add(turn(shelf, opening, pin)));
      }
    }
    return turns;
  }

  private Turn turn(Part shelf, Opening opening, PinInSide pin) {
    double above = shelf.box().low().z().mm() - opening.clear().low().z().mm();
    double lever = pin.lever() + pin.side().thickness().mm() / 2;
    return new Turn(above, reader.read(shelf).loaded().reaction() * lever);
  }

  static String id(BuiltCase built, BaySpace bay, Opening opening) {
    return Figure.id(built.order().name(), "bow-" + bay.number() + "-" + opening.below());
  }

  private Figure figure(BaySpace bay, Opening opening, List<Turn> turns) {
    Part side = built.part(bay.left());
    double height = opening.clear().size(Axis.Z).mm();
    Section section = section(side);
    return new Figure(
        id(built, bay, opening),
        "bow of %s %s between %s and %s"
            .formatted(side.name(), side.mark(), opening.below(), opening.above()),
        Quantity.of(bow(height, section, turns), QuantityUnit.LENGTH),
        "max |w(z)| of E I w,zzzz = 0 between moments M at a, w = w,zz = 0 at 0 and h",
        inputs(turns, height, section),
        SOURCE);
  }

  private static List<Input> inputs(List<Turn> turns, double height, Section section) {
    List<Input> inputs = new ArrayList<>();
    for (Turn turn : turns) {
      inputs.add(
          new Input(
              "M",
              turn.at() < height
                  ? "of one shelf, load of one end times pin's lever and half the side's thickness"
                  : "of the top, with what is taken to stand on it, load of one end times half of the"
                      + " side's thickness less its joint's depth",
              Quantity.of(turn.moment(), QuantityUnit.MOMENT),
              SOURCE));
      inputs.add(
          new Input(
              "a",
              turn.at() < height
                  ? "that shelf above the fixed panel"
                  : "the top above the fixed panel",
              Quantity.of(turn.at(), QuantityUnit.LENGTH),
              Source.GEOMETRY));
    }
    inputs.add(
        new Input("h", "free height", Quantity.of(height, QuantityUnit.LENGTH), Source.GEOMETRY));
    inputs.add(
        new Input(
            "E I",
            "stiffness of the side",
            Quantity.of(section.bendingStiffness(), QuantityUnit.BENDING_STIFFNESS),
            SOURCE));
    return inputs;
  }

  private Section section(Part side) {
    return Matters.section(job, side);
  }

  /**
   * By bending alone: between its ends moments make the same shear all along it, which slants it
   * evenly and so bows it nowhere, hollow or not.
   */
  static double bow(double height, Section section, List<Turn> turns) {
    double apart = APART * height;
    List<Load> loads = new ArrayList<>();
    for (Turn turn : turns) {
      double at = Math.clamp(turn.at(), apart, height - apart);
      loads.add(new Load.Point(turn.moment() / apart, at - apart / 2));
      loads.add(new Load.Point(-turn.moment() / apart, at + apart / 2));
    }
    Beam.Bent bent = Beam.simple(height, section.bendingStiffness(), Beam.NO_SHEAR).under(loads);
    double most = 0;
    for (int i = 1; i < STATIONS; i++) {
      most = Math.max(most, Math.abs(bent.deflection(height * i / STATIONS)));
    }
    return most;
  }
}
