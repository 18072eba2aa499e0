package org.boleline.internal.drop;

import java.util.Arrays;

/**
 * A point mass on a rope of fixed length, in a plumb plane.
 *
 * <p>Symbols: m mass, len length of the rope, g gravity, a angle from plumb (positive toward the
 * side of the release), v speed along the circle, u and w level and upward speed.
 */
public final class SwingKernel {
  /** Rounding of a place on the circle, as a share of its radius. */
  static final double ON_THE_CIRCLE = 1e-12;

  private SwingKernel() {}

  /**
   * Returns the tension at an angle of a swing released at rest with a taut rope.
   *
   * @param m mass
   * @param g gravity
   * @param a0 angle of release
   * @param a angle
   * @return m g (3 cos a - 2 cos a0)
   */
  public static double releasedTension(double m, double g, double a0, double a) {
    return m * g * (3 * Math.cos(a) - 2 * Math.cos(a0));
  }

  /**
   * Returns the tension that keeps a speed on the circle.
   *
   * @param m mass
   * @param v speed
   * @param len length of the rope
   * @param g gravity
   * @param a angle
   * @return m (v^2 / len + g cos a); negative where a rope would have to push
   */
  public static double tension(double m, double v, double len, double g, double a) {
    return m * (v * v / len + g * Math.cos(a));
  }

  /**
   * Returns the speed at an angle from that at another one.
   *
   * @param v1 speed at the angle a1
   * @param g gravity
   * @param len length of the rope
   * @param a1 angle
   * @param a the other angle
   * @return the speed; zero where the swing does not come there
   */
  public static double speed(double v1, double g, double len, double a1, double a) {
    // cos a - cos a1, without cancellation
    double drop = 2 * Math.sin((a1 - a) / 2) * Math.sin((a1 + a) / 2);
    return Math.sqrt(Math.max(0, v1 * v1 + 2 * g * len * drop));
  }

  /**
   * Returns the angle at which a swing turns back.
   *
   * @param v1 speed at the angle a1
   * @param g gravity
   * @param len length of the rope
   * @param a1 angle
   * @return acos(cos a1 - v1^2 / (2 g len)); half a turn if it goes over the top
   */
  public static double turningAngle(double v1, double g, double len, double a1) {
    return fromHalf(half(a1) + v1 * v1 / (4 * g * len));
  }

  /**
   * Returns the angle at which the rope loses its tension on the way up.
   *
   * @param v1 speed at the angle a1
   * @param g gravity
   * @param len length of the rope
   * @param a1 angle
   * @return acos((2 cos a1 - v1^2 / (g len)) / 3); half a turn if it never does
   */
  public static double slackAngle(double v1, double g, double len, double a1) {
    return Math.acos(Math.max(-1, (2 * Math.cos(a1) - v1 * v1 / (g * len)) / 3));
  }

  /** (1 - cos a) / 2. */
  private static double half(double a) {
    double s = Math.sin(a / 2);
    return s * s;
  }

  /** The angle whose (1 - cos) / 2 is given: sharp near plumb, where acos is not. */
  private static double fromHalf(double h) {
    return 2 * Math.asin(Math.sqrt(Math.min(1, Math.max(0, h))));
  }

  /**
   * Returns the speed along the rope, away from the point.
   *
   * @param u level speed toward the side of the release
   * @param w upward speed
   * @param a angle
   * @return u sin a - w cos a
   */
  public static double radialSpeed(double u, double w, double a) {
    return u * Math.sin(a) - w * Math.cos(a);
  }

  /**
   * Returns the speed square to the rope, toward larger angles.
   *
   * @param u level speed toward the side of the release
   * @param w upward speed
   * @param a angle
   * @return u cos a + w sin a
   */
  public static double tangentialSpeed(double u, double w, double a) {
    return u * Math.cos(a) + w * Math.sin(a);
  }

  /**
   * Returns the height of a fall from rest that gives a speed.
   *
   * @param v speed
   * @param g gravity
   * @return v^2 / (2 g)
   */
  public static double fallHeight(double v, double g) {
    return v * v / (2 * g);
  }

  /**
   * Returns the energy that goes with a speed.
   *
   * @param m mass
   * @param v speed
   * @return m v^2 / 2
   */
  public static double energy(double m, double v) {
    return m * v * v / 2;
  }

  /**
   * Returns how long a body flies freely within a circle before it comes to it.
   *
   * <p>A start that is within rounding of the circle counts as on it. From there it flies only if
   * it moves inward, or along the circle and too slowly to press on it.
   *
   * @param x0 level place, from the centre
   * @param z0 height over the centre
   * @param u level speed
   * @param w upward speed
   * @param len radius of the circle, above zero
   * @param g gravity, above zero
   * @return the time; zero where it does not fly at all
   */
  public static double flightTime(double x0, double z0, double u, double w, double len, double g) {
    // Lengths in len and times in sqrt(len / g): then gravity is one.
    double time = Math.sqrt(len / g);
    double x = x0 / len;
    double z = z0 / len;
    double vx = u * time / len;
    double vz = w * time / len;
    double[] c = {x * x + z * z - 1, 2 * (x * vx + z * vz), vx * vx + vz * vz - z, -vz, 0.25};
    // Roots at the start itself: one on the circle, two without speed along the rope, three where
    // the rope has just lost its tension.
    double[] size = {1, 1 + Math.hypot(vx, vz), 1 + vx * vx + vz * vz};
    int known = 0;
    while (known < 3 && Math.abs(c[known]) <= ON_THE_CIRCLE * size[known]) {
      known++;
    }
    if (known > 0 && c[known] >= 0) {
      return 0;
    }
    double[] rest = Arrays.copyOfRange(c, known, c.length);
    double most = 0;
    for (double value : rest) {
      most = Math.max(most, Math.abs(value));
    }
    // Cauchy: no root is farther than one plus the greatest coefficient over the leading one.
    double[] roots = SwingRoots.roots(rest, 0, 1 + 4 * most);
    for (double root : roots) {
      if (root > 0) {
        return root * time;
      }
    }
    return 0;
  }
}
