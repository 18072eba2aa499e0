package org.boleline.internal.limits;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.boleline.internal.section.SectionKernel;

/** What ropes, slings and round sections can take. Lengths in m, forces in N, stresses in Pa. */
public final class LimitKernel {
  /** A sling pulled through itself: least angle of choke in degrees, and what is kept there. */
  private static final double[][] CHOKE = {{90, 0.87}, {60, 0.74}, {30, 0.62}, {0, 0.49}};

  private static final double NO_LOSS_ABOVE = 120;
  private static final int MOST_STEPS = 200;

  private LimitKernel() {}

  /** Returns the value of a table at x: linear in between, the last value above the last x. */
  public static double inTable(double[] xs, double[] ys, double x) {
    for (int i = 1; i < xs.length; i++) {
      if (x < xs[i]) {
        return ys[i - 1] + (ys[i] - ys[i - 1]) * (x - xs[i - 1]) / (xs[i] - xs[i - 1]);
      }
    }
    return ys[ys.length - 1];
  }

  /** Returns what both legs of a basket take: 2 C cos(q/2). */
  public static double basket(double one, double between) {
    return 2 * one * Math.cos(between / 2);
  }

  /** Returns the share kept at an angle of choke in radians. */
  public static double keptByChoke(double angle) {
    // a billionth of a degree, so that 90 degrees in radians are not below 90
    double degrees = Math.toDegrees(angle) + 1e-9;
    if (degrees > NO_LOSS_ABOVE + 2e-9) {
      return 1;
    }
    for (double[] row : CHOKE) {
      if (degrees >= row[0]) {
        return row[1];
      }
    }
    return CHOKE[CHOKE.length - 1][1];
  }

  /**
   * Returns the stress of the outermost fibre on the side that bending presses, pressed positive.
   *
   * @param axial axial force, pulled positive
   */
  public static double pressed(double axial, double moment, double outer, double cavity) {
    return moment / modulus(outer, cavity) - axial / SectionKernel.area(outer, cavity);
  }

  private static double modulus(double outer, double cavity) {
    return SectionKernel.greatestSecondMoment(outer, cavity) / (outer / 2);
  }

  /**
   * Returns the solid diameter at which 4 P / (pi D^2) + 32 M / (pi D^3) is a stress: the one
   * positive root of D^3 - a D - b = 0.
   */
  public static double leastSolid(double pressing, double moment, double stress) {
    double a = 4 * pressing / (Math.PI * stress);
    double b = 32 * moment / (Math.PI * stress);
    double h = b / 2;
    double third = a / 3;
    double rest = h * h - third * third * third;
    double root;
    if (rest >= 0) {
      double u = Math.cbrt(h + Math.sqrt(rest));
      root = u == 0 ? 0 : u + third / u;
    } else {
      double size = Math.sqrt(third);
      root = 2 * size * Math.cos(Math.acos(Math.min(1, h / (size * third))) / 3);
    }
    // one Newton step takes the roundings off
    double slope = 3 * root * root - a;
    return slope > 0 ? root - (root * root * root - a * root - b) / slope : root;
  }

  /** Returns the outer diameter at which a section with a cavity has a stress; above the cavity. */
  public static double leastHollow(double pressing, double moment, double stress, double cavity) {
    if (cavity == 0) {
      return leastSolid(pressing, moment, stress);
    }
    if (pressing == 0 && moment == 0) {
      return cavity;
    }
    double most = Math.max(cavity, leastSolid(pressing, moment, stress));
    do {
      most *= 2;
    } while (pressed(-pressing, moment, most, cavity) > stress);
    // by the shell: the stress times what it goes to infinity with, smooth down to a shell of none
    double greatest = most - cavity;
    double shell =
        new BrentSolver(1e-15, 1e-16)
            .solve(
                MOST_STEPS,
                t -> {
                  double d = cavity + t;
                  double sum = d + cavity;
                  return 32 * moment * d / (sum * (d * d + cavity * cavity))
                      + 4 * pressing / sum
                      - Math.PI * stress * t;
                },
                0,
                greatest);
    return cavity + shell;
  }

  /** Returns the force that a standing stem can take at a height. */
  public static double spar(
      double outer, double height, double strength, double density, double gravity, double angle) {
    double arm = height - 1;
    return Math.PI
        / 4
        * outer
        * outer
        * (strength - arm * density * gravity)
        / (Math.cos(angle) + 8 * Math.sin(angle) * arm / outer);
  }
}
