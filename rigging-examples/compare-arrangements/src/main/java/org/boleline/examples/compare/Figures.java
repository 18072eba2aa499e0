package org.boleline.examples.compare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them, the same in every country. */
final class Figures {
  private static final int MOST_DECIMALS = 9;
  private static final int FIGURES = 3;
  private static final int STATED_FIGURES = 6;

  private Figures() {}

  /** Decimals that give three figures to the greatest of numbers that are shown together. */
  static int decimals(double greatest) {
    if (greatest == 0) {
      return 0;
    }
    int leading = (int) Math.floor(Math.log10(Math.abs(greatest))) + 1;
    return Math.max(0, Math.min(MOST_DECIMALS, FIGURES - leading));
  }

  /** A number with a fixed count of decimals. */
  static String fixed(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  /** A number by itself, to three figures. */
  static String three(double value) {
    return fixed(value, decimals(value));
  }

  /** A number that a plan states, without zeros at its end. */
  static String stated(double value) {
    return stated(value, STATED_FIGURES);
  }

  /** A number with at most some figures, without zeros at its end. */
  static String stated(double value, int figures) {
    BigDecimal number = BigDecimal.valueOf(value).round(new MathContext(figures));
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }
}
