package org.boleline.internal.section;

/**
 * Volume and balance of logs and of tapered stems.
 *
 * <p>L is the length, D the diameter of the large end, d of the small end, m of the middle.
 */
public final class LogKernel {
  private LogKernel() {}

  /** Returns the volume of a cone frustum. */
  public static double coneFrustum(double length, double large, double small) {
    return Math.PI / 12 * length * (large * large + large * small + small * small);
  }

  /** Returns the mean of both end areas times the length. */
  public static double smalian(double length, double large, double small) {
    return Math.PI / 8 * length * (large * large + small * small);
  }

  /** Returns the area of the middle times the length. */
  public static double huber(double length, double middle) {
    return Math.PI / 4 * length * middle * middle;
  }

  /** Returns the volume from both ends and four times the middle. */
  public static double newton(double length, double large, double middle, double small) {
    return Math.PI / 24 * length * (large * large + 4 * middle * middle + small * small);
  }

  /** Returns the volume of the frustum of a neiloid: butts that flare. */
  public static double neiloid(double length, double large, double small) {
    double a = Math.cbrt(large * large);
    double b = Math.cbrt(small * small);
    return Math.PI / 16 * length * (a * a * a + a * a * b + a * b * b + b * b * b);
  }

  /** Returns the volume by the quarter girth: the square of a fourth of the girth, times length. */
  public static double quarterGirth(double length, double middle) {
    double quarter = Math.PI / 4 * middle;
    return length * quarter * quarter;
  }

  /** Returns the distance from the large end to the centre of mass of a cone frustum. */
  public static double balancePoint(double length, double large, double small) {
    return length
        / 4
        * (large * large + 2 * large * small + 3 * small * small)
        / (large * large + large * small + small * small);
  }

  /** Returns the diameter at a distance from the large end of an even taper. */
  public static double diameterAt(double length, double large, double small, double at) {
    return large + (small - large) * (at / length);
  }

  /**
   * Returns the volume between two stations of a body of round section whose diameter is linear
   * between stations. For a hollow stem subtract that of the cavity.
   *
   * @param at stations that do not fall, the first at or below {@code from}, the last at or above
   *     {@code to}; one may stand twice, for a step
   * @param diameters one for each station
   */
  public static double volumeBetween(double[] at, double[] diameters, double from, double to) {
    double volume = 0;
    for (int i = 1; i < at.length; i++) {
      double start = Math.max(from, at[i - 1]);
      double end = Math.min(to, at[i]);
      if (end > start) {
        double span = at[i] - at[i - 1];
        volume +=
            coneFrustum(
                end - start,
                diameterAt(span, diameters[i - 1], diameters[i], start - at[i - 1]),
                diameterAt(span, diameters[i - 1], diameters[i], end - at[i - 1]));
      }
    }
    return volume;
  }

  /**
   * Returns the first moment of that volume about station zero. Over {@link #volumeBetween} it is
   * the station of the centre of mass.
   */
  public static double firstMomentBetween(double[] at, double[] diameters, double from, double to) {
    double moment = 0;
    for (int i = 1; i < at.length; i++) {
      double start = Math.max(from, at[i - 1]);
      double end = Math.min(to, at[i]);
      if (end > start) {
        double span = at[i] - at[i - 1];
        double a = diameterAt(span, diameters[i - 1], diameters[i], start - at[i - 1]);
        double b = diameterAt(span, diameters[i - 1], diameters[i], end - at[i - 1]);
        double length = end - start;
        double ownMoment = Math.PI / 48 * length * length * (a * a + 2 * a * b + 3 * b * b);
        moment += coneFrustum(length, a, b) * start + ownMoment;
      }
    }
    return moment;
  }
}
