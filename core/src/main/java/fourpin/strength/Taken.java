package fourpin.strength;

import fourpin.job.Material;
import fourpin.strength.StockFit.Given;
import java.util.Comparator;
import java.util.stream.Stream;

/**
 * What a cure takes of the stock.
 *
 * @param of what it is cut from, of several materials the one that the stock has least of
 */
record Taken(Given given, Material of) {

  /** What can be cut first; what the stock is too small for last. */
  static final Comparator<Taken> READIEST = Comparator.comparing(Taken::given);

  /** Both are wanted. */
  Taken and(Taken other) {
    return Stream.of(this, other).max(READIEST).orElseThrow();
  }

  boolean isTooLarge() {
    return given == Given.TOO_SMALL;
  }

  /** What more there is to say of how it is made. */
  String words() {
    return switch (given) {
      case CUT -> "";
      case GLUED_UP -> ", glued up from narrower boards by hand";
      case UNSTATED -> ", once the job has stock of '" + of.name() + "'";
      case TOO_SMALL -> ", once the job has stock of '" + of.name() + "' that is large enough";
    };
  }

  /**
   * The cure with what the stock bars: boards have to be joined first, which no job file can ask
   * for; and what larger stock costs, nobody has said.
   */
  Cure bars(Cure cure) {
    return switch (given) {
      case CUT, UNSTATED -> cure;
      case GLUED_UP -> cure.byHand();
      case TOO_SMALL -> cure.byHand().unpriced();
    };
  }
}
