package org.boleline.internal.friction;

/**
 * Force of two rope legs on the point between them, in the plane of the legs.
 *
 * <p>Symbols: t1, t2 tensions; q angle between the legs in radians, from zero to pi.
 */
public final class LegKernel {
  private LegKernel() {}

  /**
   * Returns the magnitude of the force.
   *
   * <p>Equal to sqrt(t1^2 + t2^2 + 2 t1 t2 cos(q)), taken along and across the bisector, where
   * nothing cancels when the legs are nearly opposite.
   *
   * @param t1 tension of the first leg, zero or more
   * @param t2 tension of the second leg, zero or more
   * @param q angle between the legs
   * @return the magnitude
   */
  public static double magnitude(double t1, double t2, double q) {
    return Math.hypot((t1 + t2) * Math.cos(q / 2), (t1 - t2) * Math.sin(q / 2));
  }

  /**
   * Returns the angle from the first leg to the force, measured toward the second leg.
   *
   * <p>Equal to atan2(t2 sin(q), t1 + t2 cos(q)), taken from the bisector.
   *
   * @param t1 tension of the first leg, zero or more
   * @param t2 tension of the second leg, zero or more
   * @param q angle between the legs
   * @return the angle, from zero to q; half of q where both tensions are zero
   */
  public static double angleFromFirst(double t1, double t2, double q) {
    double off = Math.atan2((t1 - t2) * Math.sin(q / 2), (t1 + t2) * Math.cos(q / 2));
    return Math.min(q, Math.max(0, q / 2 - off));
  }
}
