package org.boleline.internal.friction;

/**
 * Tight-side over slack-side tension of a rope at a contact, at the moment it is about to slip.
 *
 * <p>Symbols: t ratio, mu friction, e efficiency of a sheave at a half turn, w turn in radians.
 * Every method gives a finite result for finite arguments in range, unless the result itself
 * exceeds the doubles.
 */
public final class FrictionKernel {
  /** No friction: the ratio is 1. The parameter is not used. */
  public static final int IDEAL = 0;

  /** Fixed round contact; the parameter is the coefficient of friction. */
  public static final int ROUND = 1;

  /** Turning sheave; the parameter is its efficiency at a half turn. */
  public static final int SHEAVE = 2;

  private FrictionKernel() {}

  /**
   * Returns tight over slack tension.
   *
   * @param law one of {@link #IDEAL}, {@link #ROUND}, {@link #SHEAVE}
   * @param parameter friction (zero or more) or efficiency (above zero, at most 1)
   * @param turn turn of the rope in radians, zero or more
   * @return the ratio, 1 or more
   * @throws IllegalArgumentException if the law is none of these
   */
  public static double ratio(int law, double parameter, double turn) {
    return switch (law) {
      case IDEAL -> 1;
      case ROUND -> capstan(parameter, turn);
      case SHEAVE -> sheave(parameter, turn);
      default -> throw new IllegalArgumentException("law: wants 0, 1 or 2, got " + law);
    };
  }

  /**
   * Returns the derivative of {@link #ratio} with respect to the turn.
   *
   * <p>At zero turn this is the slope toward larger turns: on a sheave and on a round contact the
   * ratio rises from 1 with a kink there.
   *
   * @param law one of {@link #IDEAL}, {@link #ROUND}, {@link #SHEAVE}
   * @param parameter friction (zero or more) or efficiency (above zero, at most 1)
   * @param turn turn of the rope in radians, zero or more
   * @return the slope, for each radian
   * @throws IllegalArgumentException if the law is none of these
   */
  public static double ratioSlope(int law, double parameter, double turn) {
    return switch (law) {
      case IDEAL -> 0;
      case ROUND -> parameter * capstan(parameter, turn);
      case SHEAVE -> sheaveSlope(parameter, turn);
      default -> throw new IllegalArgumentException("law: wants 0, 1 or 2, got " + law);
    };
  }

  /**
   * Returns the ratio over a fixed round contact.
   *
   * @param mu coefficient of friction
   * @param w turn in radians
   * @return exp(mu w)
   */
  public static double capstan(double mu, double w) {
    return Math.exp(mu * w);
  }

  /**
   * Returns the ratio over a turning sheave.
   *
   * <p>Moment balance about the pin, (tight - slack) = c |resultant| with c = (1 - e) / (1 + e), is
   * a quadratic in t. Its root t of 1 or more is (h + sqrt(1 + h^2))^2 with h = (1 - e) / (2
   * sqrt(e)) |sin(w / 2)|, which loses no digits at small turns or efficiencies near 1.
   *
   * @param e efficiency at a half turn, above zero, at most 1
   * @param w turn in radians
   * @return the ratio; 1 at no turn, 1 / e at a half turn
   */
  public static double sheave(double e, double w) {
    double h = drag(e) * Math.abs(Math.sin(w / 2));
    double root = h + Math.sqrt(1 + h * h);
    return root * root;
  }

  private static double sheaveSlope(double e, double w) {
    double s = Math.sin(w / 2);
    double k = drag(e);
    double h = k * Math.abs(s);
    double q = Math.sqrt(1 + h * h);
    double root = h + q;
    double rise = k * Math.cos(w / 2) / q * root * root;
    return s < 0 ? -rise : rise;
  }

  private static double drag(double e) {
    return (1 - e) / (2 * Math.sqrt(e));
  }

  /**
   * Returns the friction that stands for a V-groove.
   *
   * @param mu coefficient of friction of the flanks
   * @param a half of the angle between the flanks, in radians, above zero
   * @return mu / sin(a)
   */
  public static double vGroove(double mu, double a) {
    return mu / Math.sin(a);
  }

  /**
   * Returns the turn of a helical wrap around a cylinder.
   *
   * <p>Curvature cos(b)^2 / r over a length r f / cos(b).
   *
   * @param f azimuth swept, in radians
   * @param b lead angle of the helix, in radians
   * @return f cos(b)
   */
  public static double helixTurn(double f, double b) {
    return f * Math.cos(b);
  }

  /**
   * Returns the friction at one tension where friction depends on the load.
   *
   * @param tension rope tension, above zero
   * @param mu friction at the line load p
   * @param p line load (tension over radius) at which mu holds, above zero
   * @param n exponent: friction force grows with the n-th power of the line load
   * @param r radius of the contact, above zero
   * @return mu (tension / (r p))^(n - 1)
   */
  public static double loadDependentFriction(
      double tension, double mu, double p, double n, double r) {
    return mu * Math.pow(tension / (r * p), n - 1);
  }

  /**
   * Returns the tight-side tension where friction depends on the load.
   *
   * <p>With m = 1 - n and z = w times the friction at the slack side's tension: T_slack (1 + m
   * z)^(1 / m), written with log1p so that it runs into exp(z) at n = 1 without loss of digits.
   *
   * @param slack slack-side tension, zero or more
   * @param mu friction at the line load p
   * @param p line load (tension over radius) at which mu holds, above zero
   * @param n exponent
   * @param r radius of the contact, above zero
   * @param w turn in radians
   * @return the tension; infinite or not a number where n is above 1 and no finite tension slips
   */
  public static double loadDependentTight(
      double slack, double mu, double p, double n, double r, double w) {
    double m = 1 - n;
    if (slack == 0) {
      return m > 0 ? r * p * Math.pow(m * mu * w, 1 / m) : 0;
    }
    double z = w * loadDependentFriction(slack, mu, p, n, r);
    return slack * Math.exp(m == 0 ? z : Math.log1p(m * z) / m);
  }

  /**
   * Returns the slack-side tension where friction depends on the load: the inverse of {@link
   * #loadDependentTight}.
   *
   * @param tight tight-side tension, zero or more
   * @param mu friction at the line load p
   * @param p line load (tension over radius) at which mu holds, above zero
   * @param n exponent
   * @param r radius of the contact, above zero
   * @param w turn in radians
   * @return the tension; zero where friction alone holds the tight side (n below 1 only)
   */
  public static double loadDependentSlack(
      double tight, double mu, double p, double n, double r, double w) {
    double m = 1 - n;
    if (tight == 0) {
      return 0;
    }
    double z = w * loadDependentFriction(tight, mu, p, n, r);
    if (m * z >= 1) {
      return 0;
    }
    return tight * Math.exp(m == 0 ? -z : Math.log1p(-m * z) / m);
  }
}
