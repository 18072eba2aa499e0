package org.boleline.rope;

/** Ranges of the pure numbers of this package. */
final class Checks {
  private Checks() {}

  static double friction(double friction) {
    if (!(friction >= 0 && friction <= 2)) {
      throw new IllegalArgumentException("friction: wants a number from 0 to 2, got " + friction);
    }
    return friction;
  }

  static double frictionAboveZero(double friction) {
    if (!(friction > 0 && friction <= 2)) {
      throw new IllegalArgumentException(
          "friction: wants a number above 0 and at most 2, got " + friction);
    }
    return friction;
  }

  static double efficiency(double efficiency) {
    if (!(efficiency > 0 && efficiency <= 1)) {
      throw new IllegalArgumentException(
          "efficiency: wants a number above 0 and at most 1, got " + efficiency);
    }
    return efficiency;
  }
}
