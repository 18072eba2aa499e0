package org.boleline.study;

/**
 * A reading that is to keep to a limit of somebody's choice.
 *
 * @param reading what is read
 * @param sense on which side it is to stay
 * @param limit the limit, of the reading's kind
 */
public record Keep(Reading reading, Sense sense, Figure limit) {
  /** On which side of a limit a reading is to stay. */
  public enum Sense {
    /** At the limit or below. */
    AT_MOST,
    /** At the limit or above. */
    AT_LEAST
  }

  /**
   * Makes a limit.
   *
   * @param reading what is read
   * @param sense on which side it is to stay
   * @param limit the limit, of the reading's kind
   * @throws IllegalArgumentException if the limit is of another kind
   */
  public Keep {
    limit.requireKind(reading.kindOrNull());
  }

  /**
   * Obtains an upper limit.
   *
   * @param reading what is read, not null
   * @param limit the limit, not null
   * @return the limit
   * @throws IllegalArgumentException if the limit is of another kind
   */
  public static Keep atMost(Reading reading, Figure limit) {
    return new Keep(reading, Sense.AT_MOST, limit);
  }

  /**
   * Obtains a lower limit.
   *
   * @param reading what is read, not null
   * @param limit the limit, not null
   * @return the limit
   * @throws IllegalArgumentException if the limit is of another kind
   */
  public static Keep atLeast(Reading reading, Figure limit) {
    return new Keep(reading, Sense.AT_LEAST, limit);
  }

  /** How far beyond the limit a value is, relative; zero or less keeps to it; 1 for no value. */
  double beyond(Found found) {
    if (found.figure().isEmpty()) {
      return 1;
    }
    double scale = limit.si() == 0 ? 1 : Math.abs(limit.si());
    double over = (found.si() - limit.si()) / scale;
    return sense == Sense.AT_MOST ? over : -over;
  }
}
