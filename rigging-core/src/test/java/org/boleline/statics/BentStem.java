package org.boleline.statics;

import java.util.List;
import org.boleline.stem.PointMass;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Statics of one stem in a known shape, by plain code: what the loads call for in every section,
 * and the shape that the sections then take.
 *
 * <p>A shape is in balance if the second is again the first.
 */
final class BentStem {
  private static final int PARTS = 8;
  private static final int PASSES = 4;

  /** A little to one side of a station. */
  private static final double BESIDE = 1e-9;

  /** Step of a difference quotient, rad. */
  private static final double STEP = 1e-6;

  private static final double[] GAUSS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
  private static final double[] GAUSS_WEIGHT = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  /** A force at a point that is rigidly joined to a station. */
  @SuppressWarnings("ArrayRecordComponent") // read in one test, never compared
  record Pull(double at, double[] point, double[] force) {}

  final GivenStem given;

  /** Every second entry is the middle of a step; stations of the result lie at full steps. */
  final double[] grid;

  /** Index of each station of the result in the grid. */
  final int[] index;

  final double[][] position;
  final double[][] tangentBelow;
  final double[][] tangentAbove;

  /** Force and moment of all above, with and without what acts at the station itself. */
  final double[][] forceBelow;

  final double[][] momentBelow;
  final double[][] forceAbove;
  final double[][] momentAbove;

  /** The shape that the sections take under the moments, once worked out. */
  Shape answer;

  private BentStem(GivenStem given, double[] stations) {
    this.given = given;
    int n = stations.length;
    grid = new double[(n - 1) * PARTS + 1];
    index = new int[n];
    for (int i = 0; i < n; i++) {
      index[i] = PARTS * i;
      grid[PARTS * i] = stations[i];
      for (int k = 1; i + 1 < n && k < PARTS; k++) {
        grid[PARTS * i + k] = stations[i] + (stations[i + 1] - stations[i]) * k / PARTS;
      }
    }
    position = new double[grid.length][];
    tangentBelow = new double[grid.length][];
    tangentAbove = new double[grid.length][];
    forceBelow = new double[grid.length][];
    momentBelow = new double[grid.length][];
    forceAbove = new double[grid.length][];
    momentAbove = new double[grid.length][];
  }

  /** The given shape, worked out at stations. */
  static BentStem given(GivenStem given, double[] stations) {
    BentStem bent = new BentStem(given, stations);
    double[] r = given.base();
    for (int g = 0; g < bent.grid.length; g++) {
      double s = bent.grid[g];
      bent.position[g] = r;
      bent.tangentBelow[g] = given.direction(s, s - BESIDE);
      bent.tangentAbove[g] = given.direction(s, s + BESIDE);
      if (g + 1 < bent.grid.length) {
        double h = bent.grid[g + 1] - s;
        for (int i = 0; i < GAUSS.length; i++) {
          double[] t = given.direction(s + GAUSS[i] * h, s + 0.5 * h);
          r = Plain.plus(r, Plain.times(h * GAUSS_WEIGHT[i], t));
        }
      }
    }
    return bent;
  }

  /**
   * A shape known by its places at stations: read between them as the sections' own answer bends.
   */
  static BentStem settled(
      GivenStem given,
      double[] stations,
      double[][] positions,
      List<Pull> pulls,
      double gravity,
      BentStem standing) {
    BentStem bent = new BentStem(given, stations);
    for (int i = 0; i + 1 < stations.length; i++) {
      double[] chord = Plain.minus(positions[i + 1], positions[i]);
      for (int k = 0; k <= PARTS; k++) {
        int g = bent.index[i] + k;
        bent.position[g] = Plain.plus(positions[i], Plain.times((double) k / PARTS, chord));
        bent.tangentAbove[g] = Plain.unit(chord);
        bent.tangentBelow[g] = k > 0 || i == 0 ? bent.tangentAbove[g] : bent.tangentBelow[g];
      }
    }
    for (int pass = 0; pass < PASSES; pass++) {
      bent.loaded(pulls, gravity).answer(standing);
      bent = bent.answer.through(bent, stations, positions);
    }
    return bent.loaded(pulls, gravity).answer(standing);
  }

  static double[][] hermite(
      double[] p0, double[] t0, double[] p1, double[] t1, double h, double x) {
    double[] place = new double[3];
    double[] slope = new double[3];
    for (int d = 0; d < 3; d++) {
      double chord = p1[d] - p0[d];
      double a = h * t0[d];
      double b = h * t1[d];
      place[d] = p0[d] + x * (a + x * (3 * chord - 2 * a - b + x * (a + b - 2 * chord)));
      slope[d] = a + x * (2 * (3 * chord - 2 * a - b) + x * 3 * (a + b - 2 * chord));
    }
    return new double[][] {place, slope};
  }

  /** Sums up, from the top down, own weight, hung masses and pulls. */
  BentStem loaded(List<Pull> pulls, double gravity) {
    double[] force = new double[3];
    double[] aboutOrigin = new double[3];
    for (int g = grid.length - 1; g >= 0; g--) {
      note(g, force, aboutOrigin, forceAbove, momentAbove);
      if (g % PARTS == 0) {
        for (Pull pull : pulls) {
          if (nearest(pull.at) == g) {
            force = Plain.plus(force, pull.force);
            aboutOrigin = Plain.plus(aboutOrigin, Plain.cross(pull.point, pull.force));
          }
        }
        for (PointMass mass : given.stem.masses()) {
          if (nearest(Si.value(mass.at(), Kind.LENGTH, "at")) == g) {
            double[] weight = {0, 0, -gravity * Si.value(mass.mass(), Kind.MASS, "mass")};
            force = Plain.plus(force, weight);
            aboutOrigin = Plain.plus(aboutOrigin, Plain.cross(position[g], weight));
          }
        }
      }
      note(g, force, aboutOrigin, forceBelow, momentBelow);
      if (g == 0) {
        break;
      }
      double h = grid[g] - grid[g - 1];
      double middle = 0.5 * (grid[g] + grid[g - 1]);
      for (int i = 0; i < GAUSS.length; i++) {
        double s = grid[g - 1] + GAUSS[i] * h;
        double[] weight = {0, 0, -h * GAUSS_WEIGHT[i] * given.weightPerLength(s, middle)};
        double[] at =
            hermite(
                position[g - 1], tangentAbove[g - 1], position[g], tangentBelow[g], h, GAUSS[i])[0];
        force = Plain.plus(force, weight);
        aboutOrigin = Plain.plus(aboutOrigin, Plain.cross(at, weight));
      }
    }
    return this;
  }

  private void note(
      int g, double[] force, double[] aboutOrigin, double[][] forces, double[][] moments) {
    forces[g] = force;
    moments[g] = Plain.minus(aboutOrigin, Plain.cross(position[g], force));
  }

  /** Grid index of the station of the result that is nearest. */
  int nearest(double at) {
    int best = 0;
    for (int i : index) {
      if (Math.abs(grid[i] - at) < Math.abs(grid[best] - at)) {
        best = i;
      }
    }
    return best;
  }

  /** A shape worked out from moments, all along the grid. */
  static final class Shape {
    private final double[][] places;
    private final double[][] tangentsBelow;
    private final double[][] tangentsAbove;
    private final double[][][] turned;
    private final int[] index;

    private Shape(int[] index, int size) {
      this.index = index;
      places = new double[size][];
      tangentsBelow = new double[size][];
      tangentsAbove = new double[size][];
      turned = new double[size][][];
    }

    /** Place at a station of the result. */
    double[] place(int station) {
      return places[index[station]];
    }

    /** Direction just below a station of the result; at the base just above it. */
    double[] direction(int station) {
      return station == 0 ? tangentsAbove[0] : tangentsBelow[index[station]];
    }

    /** What turns the given shape into this one at a station of the result. */
    double[][] frame(int station) {
      return turned[index[station]];
    }

    /** The same shape, moved little by little so that it runs through places at the stations. */
    private BentStem through(BentStem bent, double[] stations, double[][] positions) {
      BentStem next = new BentStem(bent.given, stations);
      for (int g = 0; g < places.length; g++) {
        int i = Math.min(g / PARTS, positions.length - 2);
        double x = (double) (g - index[i]) / PARTS;
        double[] low = Plain.minus(positions[i], place(i));
        double[] high = Plain.minus(positions[i + 1], place(i + 1));
        double[] gap = Plain.plus(Plain.times(1 - x, low), Plain.times(x, high));
        next.position[g] = Plain.plus(places[g], gap);
        next.tangentBelow[g] = tangentsBelow[g];
        next.tangentAbove[g] = tangentsAbove[g];
      }
      return next;
    }

    private void note(GivenStem given, int g, double s, double[] place, double[][] frame) {
      places[g] = place;
      turned[g] = frame;
      tangentsBelow[g] = Plain.outOf(frame, given.direction(s, s - BESIDE));
      tangentsAbove[g] = Plain.outOf(frame, given.direction(s, s + BESIDE));
    }
  }

  /**
   * Works out the shape that the stem takes under the moments of this one.
   *
   * @param standing the given shape with the loads that it already bends under; null if it is
   *     stress-free
   */
  private BentStem answer(BentStem standing) {
    double[][] frame = {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    frame = Plain.turned(rootTurn(standing), frame);
    double[] r = given.base();
    answer = new Shape(index, grid.length);
    answer.note(given, 0, 0, r, frame);
    for (int k = 0; k + 2 < grid.length; k += 2) {
      double h = grid[k + 2] - grid[k];
      double middle = grid[k + 1];
      double[] start = curvature(k, momentAbove[k], frame, standing, middle);
      double[][] half = advanced(frame, Plain.times(0.5 * h, start));
      double[][] whole = advanced(frame, Plain.times(h, start));
      for (int pass = 0; pass < PASSES; pass++) {
        double[] there = curvature(k + 1, momentAbove[k + 1], half, standing, middle);
        double[] end = curvature(k + 2, momentBelow[k + 2], whole, standing, middle);
        half = advanced(frame, magnus(start, there, end, h, 0.5));
        whole = advanced(frame, magnus(start, there, end, h, 1));
      }
      double[] t0 = Plain.outOf(frame, given.direction(grid[k], middle));
      double[] t1 = Plain.outOf(half, given.direction(middle, middle));
      double[] t2 = Plain.outOf(whole, given.direction(grid[k + 2], middle));
      double[] halfway = new double[3];
      double[] next = new double[3];
      for (int d = 0; d < 3; d++) {
        halfway[d] = r[d] + h / 24 * (5 * t0[d] + 8 * t1[d] - t2[d]);
        next[d] = r[d] + h / 6 * (t0[d] + 4 * t1[d] + t2[d]);
      }
      r = next;
      frame = whole;
      answer.note(given, k + 1, middle, halfway, half);
      answer.note(given, k + 2, grid[k + 2], r, frame);
    }
    return this;
  }

  /** Rotation over a step (or its first half) whose curvature is known at three places. */
  private static double[] magnus(
      double[] start, double[] middle, double[] end, double h, double part) {
    double[] turn = new double[3];
    double x = part;
    for (int d = 0; d < 3; d++) {
      double first = -3 * start[d] + 4 * middle[d] - end[d];
      double second = 2 * start[d] - 4 * middle[d] + 2 * end[d];
      turn[d] = h * x * (start[d] + x * (first / 2 + x * second / 3));
    }
    double[] slope = new double[3];
    for (int d = 0; d < 3; d++) {
      slope[d] = -3 * start[d] + 4 * middle[d] - end[d];
    }
    double[] commutator = Plain.cross(start, slope);
    return Plain.plus(turn, Plain.times(Math.pow(h * x, 2) * x / 12, commutator));
  }

  /** A frame turned by a rotation that is given along its own axes. */
  private static double[][] advanced(double[][] frame, double[] local) {
    return Plain.turned(Plain.outOf(frame, local), frame);
  }

  /** Change of curvature along the frame's axes: bending and twisting. */
  private double[] curvature(
      int g, double[] moment, double[][] frame, BentStem standing, double side) {
    double[] m = Plain.into(frame, moment);
    if (standing != null) {
      m = Plain.minus(m, side > grid[g] ? standing.momentAbove[g] : standing.momentBelow[g]);
    }
    double[] t = given.direction(grid[g], side);
    double i = given.secondMoment(grid[g], side);
    double along = Plain.dot(m, t);
    double bend = 1 / (given.modulus * i);
    double twist = 1 / (given.shearModulus * 2 * i);
    return Plain.plus(Plain.times(bend, m), Plain.times((twist - bend) * along, t));
  }

  /** Rotation vector of the root, level, that its springs answer the base moment with. */
  private double[] rootTurn(BentStem standing) {
    double k = given.rootStiffness();
    double[] turn = new double[3];
    if (Double.isInfinite(k)) {
      return turn;
    }
    turn = roughRootTurn(standing, k);
    for (int iteration = 0; iteration < 50; iteration++) {
      double[] gap = rootGap(turn, standing, k);
      double[] x = rootGap(Plain.plus(turn, new double[] {STEP, 0, 0}), standing, k);
      double[] y = rootGap(Plain.plus(turn, new double[] {0, STEP, 0}), standing, k);
      double a = (x[0] - gap[0]) / STEP;
      double b = (y[0] - gap[0]) / STEP;
      double c = (x[1] - gap[1]) / STEP;
      double d = (y[1] - gap[1]) / STEP;
      double det = a * d - b * c;
      turn[0] -= (d * gap[0] - b * gap[1]) / det;
      turn[1] -= (a * gap[1] - c * gap[0]) / det;
    }
    return turn;
  }

  /** Far turns may balance in several ways: the one that fits the lowest part of the shape. */
  private double[] roughRootTurn(BentStem standing, double k) {
    double[] given = this.given.direction(0, BESIDE);
    double[] seen = Plain.unit(Plain.minus(position[1], position[0]));
    double[] best = new double[3];
    double least = Double.POSITIVE_INFINITY;
    for (double x = -4; x <= 4; x += 0.125) {
      for (double y = -4; y <= 4; y += 0.125) {
        double[] turn = {x, y, 0};
        double[] gap = rootGap(turn, standing, k);
        double off =
            Math.hypot(gap[0], gap[1])
                + 2 * Plain.size(Plain.minus(Plain.turned(turn, given), seen));
        if (off < least) {
          least = off;
          best = turn;
        }
      }
    }
    return best;
  }

  /** What is missing to balance the root's springs, as a rotation. */
  private double[] rootGap(double[] turn, BentStem standing, double k) {
    double[] m = working(turn, momentBelow[0]);
    if (standing != null) {
      m = Plain.minus(m, standing.momentBelow[0]);
    }
    return Plain.minus(turn, Plain.times(1 / k, m));
  }

  /**
   * The moment that works on a rotation vector, as the theory page of the library has it (STA-5).
   */
  private static double[] working(double[] turn, double[] moment) {
    double f = Plain.size(turn);
    double first = f < 1e-3 ? 0.5 - f * f / 24 : (1 - Math.cos(f)) / (f * f);
    double second = f < 1e-3 ? 1.0 / 6 - f * f / 120 : (f - Math.sin(f)) / (f * f * f);
    double[] once = Plain.cross(turn, moment);
    double[] twice = Plain.cross(turn, once);
    return Plain.plus(Plain.minus(moment, Plain.times(first, once)), Plain.times(second, twice));
  }
}
