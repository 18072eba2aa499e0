package org.boleline.internal.path;

import org.boleline.internal.friction.FrictionKernel;

/**
 * The rope's potential for given leg tensions: tension times length, summed over the legs, less the
 * pull of the load, with every contact kept within its sling's reach by a logarithmic barrier.
 *
 * <p>Convex, so that Newton's method with a line search finds its one minimum from anywhere.
 * Lengths are rounded off near zero, so that legs may shrink to nothing.
 */
final class Potential {
  private static final double ROUND_OFF = 1e-4;
  private static final double[] BARRIERS = {1e-1, 1e-2, 1e-3, 1e-4, 1e-5, 1e-6};

  private final double[] attachment;
  private final double[] sling;
  private final double[] loadDirection;
  private final RopePath.End end;
  private final int contacts;
  private final double[] gradient;
  private final double[] trial;
  private final BandedLu lu = new BandedLu(5);
  private double barrier;

  Potential(double[] attachment, double[] sling, double[] loadDirection, RopePath.End end) {
    this.attachment = attachment;
    this.sling = sling;
    this.loadDirection = loadDirection;
    this.end = end;
    contacts = sling.length;
    gradient = new double[3 * contacts];
    trial = new double[3 * contacts];
  }

  /** All contacts at their attachments: within every sling's reach. */
  double[] start() {
    return java.util.Arrays.copyOf(attachment, 3 * contacts);
  }

  /** Whether a contact lies at its sling's end and pulls there. */
  boolean bears(double[] c, int j) {
    double room = sling[j] * sling[j] - reach2(c, j);
    double pull = 2 * barrier * sling[j] * sling[j] / room;
    return pull > 1e-3;
  }

  private double reach2(double[] c, int j) {
    double sum = 0;
    for (int d = 3 * j; d < 3 * j + 3; d++) {
      sum += (c[d] - attachment[d]) * (c[d] - attachment[d]);
    }
    return sum;
  }

  /** Value, or infinity outside a sling's reach. */
  private double value(double[] c, double[] leg) {
    double sum = 0;
    for (int d = 0; d < 3; d++) {
      sum -= leg[0] * loadDirection[d] * c[d];
    }
    for (int j = 0; j < contacts; j++) {
      if (sling[j] > 0) {
        double room = 1 - reach2(c, j) / (sling[j] * sling[j]);
        if (!(room > 0)) {
          return Double.POSITIVE_INFINITY;
        }
        sum -= barrier * sling[j] * Math.log(room);
      }
      if (j < contacts - 1 || end != RopePath.End.DOWN) {
        double[] next = j < contacts - 1 ? c : attachment;
        sum += leg[j + 1] * length(c, j, next);
      } else {
        sum += leg[j + 1] * c[3 * j + 2];
      }
    }
    return sum;
  }

  private static double length(double[] c, int j, double[] next) {
    double sum = ROUND_OFF * ROUND_OFF;
    for (int d = 3 * j; d < 3 * j + 3; d++) {
      sum += (next[d + 3] - c[d]) * (next[d + 3] - c[d]);
    }
    return Math.sqrt(sum);
  }

  /** Moves the contacts to the minimum for given leg tensions. */
  boolean minimise(double[] c, double[] leg) {
    for (int j = 0; j < contacts; j++) {
      double inside =
          sling[j] == 0 ? 0 : sling[j] * 0.99 / Math.max(1e-300, Math.sqrt(reach2(c, j)));
      for (int d = 3 * j; d < 3 * j + 3; d++) {
        c[d] = attachment[d] + Math.min(1, inside) * (c[d] - attachment[d]);
      }
    }
    for (double b : BARRIERS) {
      barrier = b;
      if (!newton(c, leg)) {
        return false;
      }
    }
    return true;
  }

  private boolean newton(double[] c, double[] leg) {
    double now = value(c, leg);
    for (int iteration = 0; iteration < 100; iteration++) {
      if (!derivatives(c, leg)) {
        return false;
      }
      double[] step = gradient.clone();
      lu.solve(step);
      double decrease = 0;
      for (int d = 0; d < step.length; d++) {
        decrease += step[d] * gradient[d];
      }
      if (!(decrease > 1e-12)) {
        return Double.isFinite(decrease);
      }
      double fraction = 1;
      double next = Double.POSITIVE_INFINITY;
      while (fraction > 1e-12) {
        for (int d = 0; d < step.length; d++) {
          trial[d] = c[d] - fraction * step[d];
        }
        next = value(trial, leg);
        if (next <= now - 1e-4 * fraction * decrease) {
          break;
        }
        fraction *= 0.5;
      }
      if (fraction <= 1e-12) {
        return true;
      }
      System.arraycopy(trial, 0, c, 0, c.length);
      now = next;
    }
    return true;
  }

  private boolean derivatives(double[] c, double[] leg) {
    lu.reset(3 * contacts);
    java.util.Arrays.fill(gradient, 0);
    for (int d = 0; d < 3; d++) {
      gradient[d] -= leg[0] * loadDirection[d];
    }
    for (int j = 0; j < contacts; j++) {
      int o = 3 * j;
      if (j == contacts - 1 && end == RopePath.End.DOWN) {
        gradient[o + 2] += leg[j + 1];
      } else {
        double[] next = j < contacts - 1 ? c : attachment;
        double size = length(c, j, next);
        for (int d = 0; d < 3; d++) {
          double ed = (next[o + 3 + d] - c[o + d]) / size;
          gradient[o + d] -= leg[j + 1] * ed;
          if (j < contacts - 1) {
            gradient[o + 3 + d] += leg[j + 1] * ed;
          }
          for (int f = 0; f < 3; f++) {
            double ef = (next[o + 3 + f] - c[o + f]) / size;
            double s = leg[j + 1] / size * ((d == f ? 1 : 0) - ed * ef);
            lu.add(o + d, o + f, s);
            if (j < contacts - 1) {
              lu.add(o + 3 + d, o + 3 + f, s);
              lu.add(o + d, o + 3 + f, -s);
              lu.add(o + 3 + d, o + f, -s);
            }
          }
        }
      }
    }
    for (int j = 0; j < contacts; j++) {
      int o = 3 * j;
      if (sling[j] == 0) {
        for (int d = 0; d < 3; d++) {
          gradient[o + d] = 0;
          lu.add(o + d, o + d, 1e12);
        }
        continue;
      }
      double l2 = sling[j] * sling[j];
      double room = l2 - reach2(c, j);
      double first = 2 * barrier * sling[j] / room;
      for (int d = 0; d < 3; d++) {
        double x = c[o + d] - attachment[o + d];
        gradient[o + d] += first * x;
        for (int f = 0; f < 3; f++) {
          double y = c[o + f] - attachment[o + f];
          lu.add(o + d, o + f, (d == f ? first : 0) + 2 * first * x * y / room);
        }
      }
    }
    return lu.factor();
  }

  /** Tensions of the legs from the turns at the present places. */
  void legTensions(double[] c, int[] law, double[] parameter, boolean raising, double[] leg) {
    double[] in = loadDirection.clone();
    for (int j = 0; j < contacts; j++) {
      double[] out = {0, 0, -1};
      if (j < contacts - 1 || end != RopePath.End.DOWN) {
        double[] next = j < contacts - 1 ? c : attachment;
        double size = length(c, j, next);
        for (int d = 0; d < 3; d++) {
          out[d] = (next[3 * j + 3 + d] - c[3 * j + d]) / size;
        }
      }
      double cx = in[1] * out[2] - in[2] * out[1];
      double cy = in[2] * out[0] - in[0] * out[2];
      double cz = in[0] * out[1] - in[1] * out[0];
      double cosine = in[0] * out[0] + in[1] * out[1] + in[2] * out[2];
      double w = Math.atan2(Math.sqrt(cx * cx + cy * cy + cz * cz), -cosine);
      double t = FrictionKernel.ratio(law[j], parameter[j], w);
      leg[j + 1] = raising ? leg[j] * t : leg[j] / t;
      for (int d = 0; d < 3; d++) {
        in[d] = -out[d];
      }
    }
  }
}
