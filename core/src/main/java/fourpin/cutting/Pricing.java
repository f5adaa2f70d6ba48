package fourpin.cutting;

import java.util.List;

/** Finds patterns of high worth, the parts being worth what the linear programme says. */
interface Pricing {

  /**
   * @param ceiling no pattern of the panel within the demand is worth more; exact
   * @param columns patterns found, within the demand
   */
  record Priced(long ceiling, List<Column> columns) {}

  /** The ways that first cuts may run, each worth a try. */
  Direction[][] ways();

  /** Good patterns, quickly. */
  List<Column> guess(int panel, long[] worth, int[] wanted);

  /** The ceiling, and a pattern as near to it as is known. */
  Priced prove(int panel, long[] worth, int[] wanted);

  /** Rests of more panels take more work to fill than it gains. */
  double mostFilled();
}
