package org.boleline.internal.motion;

import java.util.Arrays;
import org.boleline.internal.drop.StretchKernel;

/**
 * The legs of a taut rope: tension of each, and how fast rope passes each point.
 *
 * <p>A point either sticks, or rope slips over it toward the load or away from it, and then the
 * tensions on both sides keep the ratio of friction. In the rates this is one linear equation for
 * each slipping point, with its neighbours' flows in it. Friction acts on rates alone, so the state
 * is the rope that has passed each point.
 *
 * <p>Symbols: g length of a leg, N rope in it without stretch, e strain, T tension, s rope without
 * stretch that passes a point toward the load for each second. {@code grown} is dT/de.
 */
final class RopeLegs {
  /** Rope does not move over the point. */
  static final int STICKS = 0;

  /** Rope moves toward the load. */
  static final int TOWARD = 1;

  /** Rope moves away from the load. */
  static final int AWAY = -1;

  /** Below this strain the curve is a straight line: its slope at nothing may be none. */
  private static final double STRAIGHT = 1e-6;

  private static final int MOST_CHANGES = 400;

  final int legs;
  final double[] strain;
  final double[] tension;
  final double[] flow;
  final int[] mode;
  final boolean[] unloading;

  private final MotionSpec spec;
  private final StretchKernel curve;
  private final double straightTension;
  private final double straightEnergy;
  private final double[] held;
  private final double[] elastic;
  private final double[] grown;
  private final double[] reach;
  private final double[] stretched;
  private final double[] lengthRate;
  private final double[] diagonal;
  private final double[] right;
  private final boolean[] settled;

  RopeLegs(MotionSpec spec) {
    this.spec = spec;
    legs = spec.lengths().length;
    curve = spec.rope();
    straightTension = curve.tension(STRAIGHT);
    straightEnergy = straightTension * STRAIGHT / 2 - curve.energy(STRAIGHT);
    strain = new double[legs];
    tension = new double[legs];
    flow = new double[legs];
    mode = new int[legs];
    unloading = new boolean[legs];
    held = new double[legs];
    elastic = new double[legs];
    grown = new double[legs];
    reach = new double[legs];
    stretched = new double[legs];
    lengthRate = new double[legs];
    diagonal = new double[legs];
    right = new double[legs];
    settled = new boolean[legs];
  }

  private boolean isFrictionless(int point) {
    return spec.ratio()[point] == 1;
  }

  private double tensionAt(double e) {
    return e < STRAIGHT ? straightTension / STRAIGHT * e : curve.tension(e);
  }

  private double energyAt(double e) {
    return e < STRAIGHT ? straightTension / STRAIGHT * e * e / 2 : curve.energy(e) + straightEnergy;
  }

  private double slopeAt(double e) {
    return e < STRAIGHT ? straightTension / STRAIGHT : curve.slope(e);
  }

  /** All rope without stretch that is in the legs, less what they are long: above zero is slack. */
  double slack(double[] length, double[] y, int passed) {
    double sum = y[passed + legs - 1];
    for (int i = 0; i < legs; i++) {
      sum += spec.lengths()[i] - length[i];
    }
    return sum;
  }

  /** Lets rope without tension move from leg to leg until each is just taut. */
  void even(double[] length, double[] y, int passed) {
    for (int i = legs - 1; i > 0; i--) {
      y[passed + i - 1] = y[passed + i] - (length[i] - spec.lengths()[i]);
    }
  }

  /** Tensions for lengths of the legs, rope passed and missing shares of tension. */
  void tensions(double[] length, double[] y, int passed, int missing) {
    for (int i = 0; i < legs; i++) {
      double more = y[passed + i] - (i == 0 ? 0 : y[passed + i - 1]);
      double natural = spec.lengths()[i];
      if (spec.passing()) {
        held[i] = natural + more;
        strain[i] = (length[i] - held[i]) / held[i];
        reach[i] = 1 + strain[i];
      } else {
        held[i] = natural;
        strain[i] = (length[i] - natural - more) / natural;
        reach[i] = 1;
      }
      double e = strain[i];
      elastic[i] = tensionAt(e);
      grown[i] = slopeAt(e);
      tension[i] = elastic[i];
      if (spec.loss() > 0) {
        double z = y[missing + i];
        double back = unloading[i] ? 1 - z : z;
        grown[i] =
            grown[i] * (1 - spec.loss() * z) + spec.loss() * elastic[i] * back / spec.memory();
        tension[i] = elastic[i] * (1 - spec.loss() * z);
      }
      // What passing rope takes from one leg and brings to the next, for each length.
      stretched[i] = tension[i] * reach[i] - (spec.passing() ? energyAt(e) : 0);
    }
  }

  /** No tension and no flow. */
  void loose() {
    Arrays.fill(tension, 0);
    Arrays.fill(flow, 0);
    Arrays.fill(strain, 0);
  }

  /** Flows for rates of the legs' lengths; {@link #tensions} comes first. */
  void flows(double[] rate) {
    System.arraycopy(rate, 0, lengthRate, 0, legs);
    // Elimination from the load on: flow = right + diagonal * flow behind.
    for (int j = 0; j < legs; j++) {
      double before = j == 0 ? 0 : right[j - 1];
      double share = j == 0 ? 0 : diagonal[j - 1];
      if (mode[j] == STICKS && !(j < legs - 1 && isFrictionless(j))) {
        right[j] = 0;
        diagonal[j] = 0;
      } else if (j == legs - 1) {
        // The device holds its tension: the strain stays.
        right[j] = (rate[j] / reach[j] + before) / (1 - share);
        diagonal[j] = 0;
      } else {
        double t = kept(j);
        double here = grown[j] / held[j];
        double there = t * grown[j + 1] / held[j + 1];
        double pivot = here * reach[j] * (1 - share) + there * reach[j + 1];
        right[j] = (here * (rate[j] + reach[j] * before) - there * rate[j + 1]) / pivot;
        diagonal[j] = there * reach[j + 1] / pivot;
      }
    }
    flow[legs - 1] = right[legs - 1];
    for (int j = legs - 2; j >= 0; j--) {
      flow[j] = right[j] + diagonal[j] * flow[j + 1];
    }
  }

  /** Tension before a slipping point over tension behind it. */
  private double kept(int point) {
    double t = spec.ratio()[point];
    return mode[point] == AWAY ? 1 / t : t;
  }

  double strainRate(int leg) {
    double more = flow[leg] - (leg == 0 ? 0 : flow[leg - 1]);
    return (lengthRate[leg] - reach[leg] * more) / held[leg];
  }

  private double tensionRate(int leg) {
    return grown[leg] * strainRate(leg);
  }

  /** Rate of a missing share of tension. */
  double missingRate(int leg, double z) {
    double rate = strainRate(leg);
    return (unloading[leg] ? -(1 - z) * rate : -z * rate) / spec.memory();
  }

  /** Heat at a point, or at the device, W. */
  double heat(int point) {
    return flow[point] * (stretched[point] - (point == legs - 1 ? 0 : stretched[point + 1]));
  }

  /** What the rope loses by unloading below its curve of loading, W. */
  double lost(int leg) {
    return held[leg] * (tension[leg] - elastic[leg]) * strainRate(leg);
  }

  /** Energy stored in the rope, J. */
  double stored() {
    double sum = 0;
    for (int i = 0; i < legs; i++) {
      sum += held[i] * energyAt(strain[i]);
    }
    return sum;
  }

  /**
   * How far the mode of a point or of the device (the last) is from its end: below zero it is over.
   *
   * @param force size of a tension
   * @param speed size of a speed
   */
  double room(int j, double limit, double force, double speed) {
    if (j == legs - 1) {
      return mode[j] == STICKS ? (limit - tension[j]) / force : flow[j] / speed;
    }
    if (isFrictionless(j)) {
      return Double.POSITIVE_INFINITY;
    }
    return mode[j] == STICKS
        ? Math.min(roomToward(j), roomAway(j)) / force
        : mode[j] * flow[j] / speed;
  }

  private double roomToward(int j) {
    return spec.ratio()[j] * tension[j + 1] - tension[j];
  }

  private double roomAway(int j) {
    return spec.ratio()[j] * tension[j] - tension[j + 1];
  }

  /** Room of a leg's direction of loading: below zero it is over. */
  double directionRoom(int leg, double speed) {
    double rate = strainRate(leg) * held[leg] / speed;
    return unloading[leg] ? -rate : rate;
  }

  /** Ends the mode of a point, the device or (from {@code legs} on) a leg's direction. */
  void turn(int j, boolean towardFirst) {
    if (j >= legs) {
      unloading[j - legs] = !unloading[j - legs];
    } else if (mode[j] != STICKS) {
      mode[j] = STICKS;
    } else if (j == legs - 1) {
      mode[j] = TOWARD;
    } else {
      mode[j] = towardFirst ? TOWARD : AWAY;
    }
  }

  /** Whether a sticking point is nearer to slipping toward the load. */
  boolean towardFirst(int j) {
    return j < legs - 1 && roomToward(j) <= roomAway(j);
  }

  /**
   * Finds the modes in which the rope goes on from here: the lowest point whose mode contradicts
   * its rates changes, and so on until none does (Murty's least-index rule).
   *
   * @param rate rates of the legs' lengths
   * @param fixed a point whose mode has just been decided, or minus one
   * @param apex whether the rope comes from no tension, so that every point may slip either way
   * @param near tension below which a room counts as used up
   * @param still flow that counts as none
   * @return false if the modes went round in circles
   */
  boolean settle(double[] rate, int fixed, boolean apex, double limit, double near, double still) {
    Arrays.fill(settled, false);
    if (fixed >= 0 && fixed < legs) {
      settled[fixed] = true;
    }
    for (int change = 0; change < MOST_CHANGES; change++) {
      flows(rate);
      int next = -1;
      for (int j = 0; j < legs && next < 0; j++) {
        if (!settled[j] && contradicts(j, apex, limit, near, still)) {
          next = j;
        }
      }
      if (next >= 0) {
        if (mode[next] != STICKS) {
          mode[next] = STICKS;
        } else if (next == legs - 1) {
          mode[next] = TOWARD;
        } else {
          // where both tensions fall, both rates are below zero: only a side that is reached counts
          boolean mayToward = apex || roomToward(next) <= near;
          mode[next] = mayToward && towardRate(next) < 0 ? TOWARD : AWAY;
        }
        continue;
      }
      if (spec.loss() > 0 && !directionsAgree(fixed)) {
        continue;
      }
      return true;
    }
    return false;
  }

  private boolean directionsAgree(int fixed) {
    boolean agree = true;
    for (int i = 0; i < legs; i++) {
      boolean falls = strainRate(i) < 0;
      if (falls != unloading[i] && fixed != legs + i && Math.abs(strainRate(i)) > 1e-12) {
        unloading[i] = falls;
        agree = false;
      }
    }
    return agree;
  }

  private double towardRate(int j) {
    return spec.ratio()[j] * tensionRate(j + 1) - tensionRate(j);
  }

  private double awayRate(int j) {
    return spec.ratio()[j] * tensionRate(j) - tensionRate(j + 1);
  }

  private boolean contradicts(int j, boolean apex, double limit, double near, double still) {
    if (j == legs - 1) {
      return mode[j] == STICKS
          ? tension[j] >= limit - near && tensionRate(j) > 0
          : flow[j] < -still;
    }
    if (isFrictionless(j)) {
      return false;
    }
    if (mode[j] != STICKS) {
      return mode[j] * flow[j] < -still;
    }
    double tight = Math.abs(tensionRate(j)) + Math.abs(tensionRate(j + 1));
    boolean mayToward = apex || roomToward(j) <= near;
    boolean mayAway = apex || roomAway(j) <= near;
    return (mayToward && towardRate(j) < -1e-12 * tight)
        || (mayAway && awayRate(j) < -1e-12 * tight);
  }

  /** Brings the rope that has passed slipping points to where the ratios hold to the last digit. */
  void project(double[] length, double[] y, int passed, int missing, double limit) {
    double[] gap = new double[legs];
    for (int pass = 0; pass < 3; pass++) {
      tensions(length, y, passed, missing);
      // The rates' equations with the ratios' errors in place of rates.
      double worst = 0;
      for (int j = 0; j < legs; j++) {
        boolean sticks = mode[j] == STICKS && !(j < legs - 1 && isFrictionless(j));
        double error = 0;
        if (!sticks) {
          error = j == legs - 1 ? tension[j] - limit : tension[j] - kept(j) * tension[j + 1];
        }
        gap[j] = error;
        worst = Math.max(worst, Math.abs(error));
      }
      if (worst == 0) {
        return;
      }
      correct(gap);
      for (int j = 0; j < legs; j++) {
        y[passed + j] += flow[j];
      }
    }
    tensions(length, y, passed, missing);
  }

  /** Flows that take away gaps in the ratios. */
  private void correct(double[] gap) {
    for (int j = 0; j < legs; j++) {
      double before = j == 0 ? 0 : right[j - 1];
      double share = j == 0 ? 0 : diagonal[j - 1];
      double here = grown[j] * reach[j] / held[j];
      if (mode[j] == STICKS && !(j < legs - 1 && isFrictionless(j))) {
        right[j] = 0;
        diagonal[j] = 0;
      } else if (j == legs - 1) {
        right[j] = (gap[j] / here + before) / (1 - share);
        diagonal[j] = 0;
      } else {
        double there = kept(j) * grown[j + 1] * reach[j + 1] / held[j + 1];
        double pivot = here * (1 - share) + there;
        right[j] = (gap[j] + here * before) / pivot;
        diagonal[j] = there / pivot;
      }
    }
    flow[legs - 1] = right[legs - 1];
    for (int j = legs - 2; j >= 0; j--) {
      flow[j] = right[j] + diagonal[j] * flow[j + 1];
    }
  }
}
