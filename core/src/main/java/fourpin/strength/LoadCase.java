package fourpin.strength;

import fourpin.measure.Sourced;
import fourpin.measure.Unit;

/** A way in which a shelf is loaded, besides its own weight. */
sealed interface LoadCase {

  /** Its load spread evenly over all of it. */
  record Even() implements LoadCase {}

  /**
   * Its load in a row along the front edge.
   *
   * @param deep the things, less than the shelf, mm
   */
  record FrontRow(Sourced deep) implements LoadCase {}

  /**
   * Its load in a row along the back edge, pushed against what stands behind it.
   *
   * @param deep the things, less than the shelf, mm
   */
  record BackRow(Sourced deep) implements LoadCase {}

  /**
   * Its load in things deeper than the shelf, which rest against what stands behind it and so stand
   * out over its front edge. Being stiff they bear on as much of it, on both sides of their middle,
   * as lies behind the front edge.
   *
   * @param deep the things, more than the shelf and less than twice as much, mm
   * @param bears how much of the depth bears them, from the front edge, mm
   */
  record OverEdge(Sourced deep, double bears) implements LoadCase {}

  /** Its load spread evenly over one half of its length, and nothing on the other. */
  record OneHalf() implements LoadCase {}

  /**
   * Nothing on it, and a hand on the middle of its front edge.
   *
   * @param push N
   */
  record Hand(Sourced push) implements LoadCase {}

  /**
   * Where a load lies, front to back.
   *
   * @param from where it begins behind the front edge, mm
   * @param to where it ends
   */
  record Lies(double from, double to) {

    double deep() {
      return to - from;
    }

    double middle() {
      return (from + to) / 2;
    }
  }

  LoadCase EVEN = new Even();
  LoadCase ONE_HALF = new OneHalf();

  /** How much of it there is. @param all of the load, N */
  default double newton(double all) {
    return switch (this) {
      case Even(), FrontRow(_), BackRow(_), OverEdge(_, _) -> all;
      case OneHalf() -> all / 2;
      case Hand(Sourced push) -> push.number();
    };
  }

  /** Where on what bears it. @param depth of that, mm */
  default Lies lies(double depth) {
    return switch (this) {
      case Even(), OneHalf() -> new Lies(0, depth);
      case FrontRow(Sourced deep) -> new Lies(0, deep.number());
      case BackRow(Sourced deep) -> new Lies(depth - deep.number(), depth);
      case OverEdge(_, double bears) -> new Lies(0, bears);
      case Hand(_) -> new Lies(0, 0);
    };
  }

  /** Its middle behind the front of what bears it. @param depth of that, mm */
  default double middle(double depth) {
    return lies(depth).middle();
  }

  /** How it is loaded, after "with"; as findings say it. */
  default String words(Unit unit) {
    return switch (this) {
      case Hand(Sourced push) ->
          "a hand that pushes " + push.value().text(unit) + " on the front edge";
      case Even(), FrontRow(_), BackRow(_), OverEdge(_, _), OneHalf() ->
          "its load " + exactly(unit);
    };
  }

  /** Where its load lies, with sizes, after "its load". */
  default String exactly(Unit unit) {
    return switch (this) {
      case FrontRow(Sourced deep) ->
          "in a row " + deep.value().text(unit) + " deep along the front edge";
      case BackRow(Sourced deep) ->
          "in a row " + deep.value().text(unit) + " deep against the back";
      case OverEdge(Sourced deep, _) ->
          "in things "
              + deep.value().text(unit)
              + " deep against the back, standing out over the front edge";
      case Even(), OneHalf(), Hand(_) -> place();
    };
  }

  /** The same without sizes, after "the load"; as figures and pages say it. */
  default String place() {
    return switch (this) {
      case Hand(_) -> "of a hand";
      case Even(), FrontRow(_), BackRow(_), OverEdge(_, _), OneHalf() -> lying().place();
    };
  }

  /** For tables of spans and drawings. */
  default SpanTable.Lying lying() {
    return switch (this) {
      case FrontRow(_) -> SpanTable.Lying.IN_A_ROW;
      case BackRow(_) -> SpanTable.Lying.AGAINST_THE_BACK;
      case OverEdge(_, _) -> SpanTable.Lying.OVER_THE_EDGE;
      case OneHalf() -> SpanTable.Lying.ON_ONE_HALF;
      case Even(), Hand(_) -> SpanTable.Lying.EVENLY;
    };
  }
}
