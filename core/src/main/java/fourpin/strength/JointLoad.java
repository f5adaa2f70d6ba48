package fourpin.strength;

import fourpin.casework.Part;
import fourpin.measure.Figure;
import fourpin.measure.Figure.Input;
import fourpin.measure.Quantity;
import fourpin.measure.QuantityUnit;
import fourpin.measure.Source;
import fourpin.measure.Source.Standing;
import java.util.List;

/**
 * What one end of a fixed shelf, a bottom or a top brings to its joint.
 *
 * @param prefix of the ids of figures on the joint
 * @param load of the end, as stated
 * @param loads the same however it lies; at least one
 * @param counted what it leaves out or assumes
 */
record JointLoad(String prefix, Figure load, List<EndLoad> loads, Counted counted) {

  private static final Source STATICS =
      new Source("statics; glue not counted on", "", Standing.DERIVED);

  /** How surely a load comes to the joint. */
  enum Counted {
    /** As the job states it. */
    STATED,
    /** A kick carries part of it, which nobody knows. */
    WITHOUT_KICK,
    /** No job states what stands on a top. */
    ASSUMED,
    /** The case that stands on a top, as stated. */
    CASE
  }

  JointLoad {
    loads = List.copyOf(loads);
  }

  /** Of a shelf, a bottom or a top between the uprights at its ends. */
  static JointLoad of(Part shelf, ShelfOnSupports read) {
    return new JointLoad(
        read.prefix(),
        half(shelf, read),
        EndLoad.all(Candidate.of(read, List.of())),
        switch (shelf.role()) {
          case BOTTOM -> Counted.WITHOUT_KICK;
          case TOP -> Counted.ASSUMED;
          default -> Counted.STATED;
        });
  }

  /** Load and weight of half the shelf. */
  private static Figure half(Part shelf, ShelfOnSupports read) {
    return new Figure(
        read.prefix() + "/joint-load",
        "load on one end of the " + named(shelf),
        Quantity.of(read.loaded().reaction(), QuantityUnit.FORCE),
        "(q + g) l / 2",
        List.of(
            new Input("q", read.load().title(), read.load().value(), read.load().source()),
            new Input(
                "g",
                "the shelf's own weight",
                Quantity.of(read.section().weight(), QuantityUnit.LINE_LOAD),
                STATICS),
            new Input("l", "span", read.span().value(), read.span().source())),
        STATICS);
  }

  private static String named(Part shelf) {
    return switch (shelf.role()) {
      case BOTTOM -> "bottom, its kick not counted on";
      case TOP -> "top";
      default -> "fixed shelf";
    };
  }
}
