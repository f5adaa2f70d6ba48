package fourpin.job;

/** Whether stock stands in the shop already. */
public enum Supply {
  ON_HAND,
  TO_BUY
}
