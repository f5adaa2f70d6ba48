package fourpin.cutting;

/** Where a piece of stock comes from. */
public enum Origin {
  ON_HAND,
  TO_BUY
}
