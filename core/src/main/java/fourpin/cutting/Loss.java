package fourpin.cutting;

/**
 * What patterns lose against the worths of the linear programme, in whole numbers: the cost of the
 * pattern less the worth of its parts. The losses of all patterns of a cutting add up to its cost
 * less the worth of all parts, whatever the worths; so a pattern that loses more than that is in no
 * cutting of this cost. The "reduced cost fixing" of integer programming.
 *
 * @param scale what a cost of one counts as
 * @param worth of each kind
 * @param lift added to the loss of the patterns of each panel, so that none is below zero
 */
record Loss(long[] costs, long scale, long[] worth, long[] lift) {

  static Loss of(long[] costs, long scale, long[] worth, Pricing pricing, int[] wanted) {
    long[] lift = new long[costs.length];
    for (int panel = 0; panel < costs.length; panel++) {
      long ceiling = pricing.prove(panel, worth, wanted).ceiling();
      lift[panel] = Math.max(0, ceiling - costs[panel] * scale);
    }
    return new Loss(costs, scale, worth, lift);
  }

  /** What a pattern costs with its lift, before its parts. */
  long ofEmpty(int panel) {
    return costs[panel] * scale + lift[panel];
  }

  /**
   * The most that the patterns of a cutting of these parts and this cost lose together; below zero
   * when there is none. A panel whose worth is above its cost, costs nothing and never ends has no
   * such limit.
   */
  long most(int[] wanted, int[] supply, long cost) {
    long most = Math.multiplyExact(cost, scale);
    for (int kind = 0; kind < wanted.length; kind++) {
      most -= wanted[kind] * worth[kind];
    }
    for (int panel = 0; panel < costs.length; panel++) {
      if (lift[panel] > 0) {
        long uses = costs[panel] > 0 ? cost / costs[panel] : Integer.MAX_VALUE;
        most = Math.addExact(most, Math.multiplyExact(lift[panel], Math.min(uses, supply[panel])));
      }
    }
    return most;
  }
}
