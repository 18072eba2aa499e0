package org.boleline.internal.drop;

import java.util.ArrayList;
import java.util.List;

/**
 * A piece of the way of a swinging body: part of a circle or of the parabola of a free flight.
 *
 * <p>Both are conics: each coordinate is n(u) / d(u) with polynomials of the second degree in one
 * parameter u. So where a coordinate is greatest, where the body passes a face of a box, and where
 * it is nearest to a face, an edge or a corner are roots of polynomials up to the fourth degree.
 */
public final class SwingPath {
  private final double[][] n;
  private final double[] d;
  private final double from;
  private final double to;

  private SwingPath(double[][] n, double[] d, double from, double to) {
    this.n = n;
    this.d = d;
    this.from = from;
    this.to = to;
  }

  /**
   * Returns the way along phases of a motion.
   *
   * @param phases the phases
   * @param len length of the rope
   * @param g gravity
   * @param azimuth side of the release, counter-clockwise from +x
   * @return pieces; places are from the point that holds the rope
   */
  public static List<SwingPath> along(
      List<SwingMotion.Phase> phases, double len, double g, double azimuth) {
    List<SwingPath> pieces = new ArrayList<>();
    for (SwingMotion.Phase phase : phases) {
      if (phase instanceof SwingMotion.Flight flight) {
        double[] level = {flight.x(), flight.u()};
        double[] up = {flight.z(), flight.w(), -g / 2};
        pieces.add(new SwingPath(inSpace(level, up, azimuth), new double[] {1}, 0, flight.time()));
      } else if (phase instanceof SwingMotion.Taut taut) {
        // In pieces of a quarter turn at most: then u stays within tan(pi/8) either way.
        int count = (int) Math.max(1, Math.ceil((taut.high() - taut.low()) / (Math.PI / 2)));
        for (int i = 0; i < count; i++) {
          double half = (taut.high() - taut.low()) / count / 2;
          double middle = taut.low() + (2 * i + 1) * half;
          pieces.add(circle(len, azimuth, middle, Math.tan(half / 2)));
        }
      }
    }
    return pieces;
  }

  /** With u the tangent of half the angle from the middle. */
  private static SwingPath circle(double len, double azimuth, double middle, double most) {
    double s = len * Math.sin(middle);
    double c = len * Math.cos(middle);
    double[] level = {s, 2 * c, -s};
    double[] up = {-c, 2 * s, c};
    return new SwingPath(inSpace(level, up, azimuth), new double[] {1, 0, 1}, -most, most);
  }

  private static double[][] inSpace(double[] level, double[] up, double azimuth) {
    double[] x = new double[level.length];
    double[] y = new double[level.length];
    for (int i = 0; i < level.length; i++) {
      x[i] = level[i] * Math.cos(azimuth);
      y[i] = level[i] * Math.sin(azimuth);
    }
    return new double[][] {x, y, up};
  }

  /**
   * Returns the place at a value of the parameter.
   *
   * @param u the parameter
   * @return x, y and z
   */
  private double[] at(double u) {
    double below = SwingRoots.value(d, u);
    return new double[] {
      SwingRoots.value(n[0], u) / below,
      SwingRoots.value(n[1], u) / below,
      SwingRoots.value(n[2], u) / below
    };
  }

  /**
   * Returns the least and the greatest coordinates along pieces.
   *
   * @param pieces at least one
   * @return the least x, y and z, and the greatest
   */
  public static double[][] extents(List<SwingPath> pieces) {
    double[] least = pieces.get(0).at(pieces.get(0).from);
    double[] most = least.clone();
    for (SwingPath piece : pieces) {
      for (int i = 0; i < 3; i++) {
        double[] slope =
            minus(
                SwingRoots.product(SwingRoots.derivative(piece.n[i]), piece.d),
                SwingRoots.product(piece.n[i], SwingRoots.derivative(piece.d)));
        for (double u : piece.withEnds(SwingRoots.roots(slope, piece.from, piece.to))) {
          double value = piece.at(u)[i];
          least[i] = Math.min(least[i], value);
          most[i] = Math.max(most[i], value);
        }
      }
    }
    return new double[][] {least, most};
  }

  /**
   * Returns the place on pieces that is nearest to a box, and its distance.
   *
   * @param pieces at least one
   * @param least least corner of the box
   * @param most greatest corner of the box
   * @return x, y and z, and the distance: zero where the way enters the box
   */
  public static double[] nearest(List<SwingPath> pieces, double[] least, double[] most) {
    double[] best = {0, 0, 0, Double.POSITIVE_INFINITY};
    for (SwingPath piece : pieces) {
      for (double u : piece.candidates(least, most)) {
        double[] place = piece.at(u);
        double away =
            Math.hypot(
                Math.hypot(out(place[0], least[0], most[0]), out(place[1], least[1], most[1])),
                out(place[2], least[2], most[2]));
        if (away < best[3]) {
          best = new double[] {place[0], place[1], place[2], away};
        }
      }
    }
    return best;
  }

  private static double out(double value, double least, double most) {
    return Math.max(0, Math.max(least - value, value - most));
  }

  /** Every u where the distance may be least, and some more. */
  private List<Double> candidates(double[] least, double[] most) {
    // Where the body passes the plane of a face, the nearest part of the box changes.
    List<Double> passes = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      for (double bound : new double[] {least[i], most[i]}) {
        for (double u : SwingRoots.roots(minus(n[i], times(bound, d)), from, to)) {
          passes.add(u);
        }
      }
    }
    passes.add(from);
    passes.add(to);
    passes.sort(null);
    List<Double> found = new ArrayList<>(passes);
    for (int k = 1; k < passes.size(); k++) {
      double a = passes.get(k - 1);
      double b = passes.get(k);
      double middle = a + (b - a) / 2;
      found.add(middle);
      double[] place = at(middle);
      double[] square = {0};
      for (int i = 0; i < 3; i++) {
        double bound = Math.min(Math.max(place[i], least[i]), most[i]);
        if (bound != place[i]) {
          double[] away = minus(n[i], times(bound, d));
          square = minus(square, times(-1, SwingRoots.product(away, away)));
        }
      }
      // (square / d^2)' = 0
      double[] slope =
          minus(
              SwingRoots.product(SwingRoots.derivative(square), d),
              times(2, SwingRoots.product(square, SwingRoots.derivative(d))));
      for (double u : SwingRoots.roots(slope, a, b)) {
        found.add(u);
      }
    }
    return found;
  }

  private double[] withEnds(double[] inner) {
    double[] all = new double[inner.length + 2];
    System.arraycopy(inner, 0, all, 2, inner.length);
    all[0] = from;
    all[1] = to;
    return all;
  }

  private static double[] times(double factor, double[] p) {
    double[] result = new double[p.length];
    for (int i = 0; i < p.length; i++) {
      result[i] = factor * p[i];
    }
    return result;
  }

  private static double[] minus(double[] p, double[] q) {
    double[] result = new double[Math.max(p.length, q.length)];
    for (int i = 0; i < result.length; i++) {
      result[i] = (i < p.length ? p[i] : 0) - (i < q.length ? q[i] : 0);
    }
    return result;
  }
}
