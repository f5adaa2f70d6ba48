package fourpin.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** How amounts of money are printed: with two decimals, or as many more as one states. */
public final class Money {

  private static final int DECIMALS = 2;

  private Money() {}

  /** As it is stated, without the currency. */
  public static String text(BigDecimal amount) {
    BigDecimal bare = amount.stripTrailingZeros();
    return bare.setScale(Math.max(DECIMALS, bare.scale())).toPlainString();
  }

  /** What is worked out, rounded. */
  static String text(BigDecimal amount, RoundingMode rounding) {
    return text(amount.setScale(DECIMALS, rounding));
  }
}
