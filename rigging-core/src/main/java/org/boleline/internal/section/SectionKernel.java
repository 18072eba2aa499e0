package org.boleline.internal.section;

/**
 * Round section with one round cavity that may lie off centre.
 *
 * <p>D is the outer diameter, d the cavity's, e the distance from the outer circle's centre to the
 * cavity's. The x-axis runs from the former toward the latter, the y-axis across it. Differences of
 * powers are written as products, so that a thin shell loses no digits.
 */
public final class SectionKernel {
  private SectionKernel() {}

  /** Returns pi (D^2 - d^2) / 4. */
  public static double area(double outer, double cavity) {
    return Math.PI / 4 * (outer - cavity) * (outer + cavity);
  }

  /** Returns x of the centroid, zero or less: it moves away from the cavity. */
  public static double centroid(double outer, double cavity, double offset) {
    return cavity == 0 ? 0 : -cavity * cavity * offset / ((outer - cavity) * (outer + cavity));
  }

  /** Returns the second moment of area about the x-axis: the greater principal one. */
  public static double greatestSecondMoment(double outer, double cavity) {
    return Math.PI / 64 * (outer - cavity) * (outer + cavity) * (outer * outer + cavity * cavity);
  }

  /** Returns the second moment of area about the centroid, along y: the lesser principal one. */
  public static double leastSecondMoment(double outer, double cavity, double offset) {
    double shift =
        Math.PI
            / 4
            * (cavity * cavity * offset * offset * outer * outer)
            / ((outer - cavity) * (outer + cavity));
    return greatestSecondMoment(outer, cavity) - shift;
  }

  /**
   * Returns the section modulus for bending in a plane at an angle from x: moment over the greatest
   * stress of both edges. The stress is linear over the section, so both edges are on the outer
   * circle.
   *
   * @param outer outer diameter
   * @param direction angle of the plane of bending from x
   * @param leastSecondMoment lesser principal second moment of area
   * @param greatestSecondMoment greater principal second moment of area
   * @param centroid x of the centroid
   * @return the section modulus
   */
  public static double modulus(
      double outer,
      double direction,
      double leastSecondMoment,
      double greatestSecondMoment,
      double centroid) {
    double along = Math.cos(direction) / leastSecondMoment;
    double across = Math.sin(direction) / greatestSecondMoment;
    return 1 / (outer / 2 * Math.hypot(along, across) + Math.abs(along * centroid));
  }

  /** Returns the least section modulus: bending toward or away from the cavity. */
  public static double leastModulus(double outer, double leastSecondMoment, double centroid) {
    return leastSecondMoment / (outer / 2 - centroid);
  }

  /** Returns the thinnest sound shell, (D - d) / 2 - e. */
  public static double leastShell(double outer, double cavity, double offset) {
    return (outer - cavity) / 2 - offset;
  }
}
