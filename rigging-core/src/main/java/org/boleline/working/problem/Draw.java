package org.boleline.working.problem;

import java.math.BigDecimal;
import java.util.List;
import java.util.SplittableRandom;
import org.boleline.units.QuantityText;

/** Numbers as a textbook states them: round, and drawn by a seed. */
final class Draw {
  private final SplittableRandom random;

  Draw(ProblemKind kind, Level level, long seed) {
    // the kinds and levels of one seed shall not share their numbers
    // the hash of a text is the same on every machine
    long stream = (kind.name() + level.number()).hashCode();
    this.random = new SplittableRandom(seed * 31 + stream);
  }

  /** One of the numbers from least to most in steps, each the decimal it is written as. */
  double number(double least, double most, double step) {
    long count = Math.round((most - least) / step);
    BigDecimal taken = BigDecimal.valueOf(random.nextLong(count + 1));
    return BigDecimal.valueOf(least).add(BigDecimal.valueOf(step).multiply(taken)).doubleValue();
  }

  boolean either() {
    return random.nextBoolean();
  }

  <T> T of(List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  /** A number in a sentence. */
  static String text(double value) {
    return QuantityText.number(value);
  }
}
