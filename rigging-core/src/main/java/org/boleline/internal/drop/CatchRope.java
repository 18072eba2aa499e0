package org.boleline.internal.drop;

/**
 * A rope that slips toward a falling mass over contacts while the tension rises.
 *
 * <p>Symbols: T tension of the load leg, W weight, E energy the mass has over the taut rope, L
 * length of a leg, P product of the tension ratios between the load and a leg (1 for the load leg),
 * so that the tension of a leg is T / P; e its strain, U the energy in each metre; c give of
 * springs in the rope's path, in metres of travel for each newton of T.
 */
public abstract class CatchRope {
  private static final int MOST_STEPS = 500;

  /** Stretch curve. */
  final StretchKernel curve;

  /** L of each leg, in metres. */
  final double[] lengths;

  /** P of each leg. */
  final double[] products;

  /** c. */
  final double give;

  /**
   * Makes a rope.
   *
   * @param curve stretch curve
   * @param lengths L of each leg, in metres
   * @param products P of each leg
   * @param give c
   */
  CatchRope(StretchKernel curve, double[] lengths, double[] products, double give) {
    this.curve = curve;
    this.lengths = lengths;
    this.products = products;
    this.give = give;
  }

  /**
   * Returns the rope at a tension.
   *
   * @param tension T, above zero
   * @return the state
   */
  public final CatchState at(double tension) {
    double[] strains = new double[lengths.length];
    for (int i = 0; i < strains.length; i++) {
      // Without friction the next leg is like this one.
      strains[i] =
          i > 0 && products[i] == products[i - 1]
              ? strains[i - 1]
              : curve.strain(tension / products[i]);
    }
    return state(tension, strains);
  }

  /** The state with strains that are known. */
  abstract CatchState state(double tension, double[] strains);

  /**
   * Returns how much rope has passed a contact toward the load, without that of springs.
   *
   * @param contact number of the contact, from 0 at the load
   * @param state the state
   * @return length without load, in metres
   */
  public abstract double passed(int contact, CatchState state);

  /**
   * Returns the heat of the rope that has passed a contact, without that of springs.
   *
   * @param contact number of the contact, from 0 at the load
   * @param state the state
   * @return heat in joules
   */
  public abstract double heat(int contact, CatchState state);

  /**
   * Returns the energy stored in the rope.
   *
   * @param state the state
   * @return the energy in joules
   */
  public abstract double stored(CatchState state);

  /**
   * Returns what a length of rope brings over from a leg: the work of its tension, less what goes
   * along as stored energy where that is counted.
   *
   * @param leg number of the leg, 0 is the load leg
   * @param state the state
   * @return the energy in joules for each metre
   */
  public abstract double brought(int leg, CatchState state);

  /**
   * Returns the strain of a leg.
   *
   * @param leg number of the leg, 0 is the load leg
   * @param state the state
   * @return e
   */
  public final double strain(int leg, CatchState state) {
    return state.strains[leg];
  }

  /** How fast a leg's strain grows with T. */
  final double strainRate(int leg, double strain) {
    double slope = curve.slope(strain);
    return slope > 0 ? 1 / (products[leg] * slope) : 0;
  }

  /** U of each leg. */
  final double[] energies(double[] strains) {
    double[] energies = new double[strains.length];
    for (int i = 0; i < strains.length; i++) {
      energies[i] =
          i > 0 && strains[i] == strains[i - 1] ? energies[i - 1] : curve.energy(strains[i]);
    }
    return energies;
  }

  /**
   * Returns the state in which the mass has come to rest, or comes to rest after a run at constant
   * tension.
   *
   * <p>The root above W of A - E - W x + (T - W) run. It falls up to W and rises from there without
   * end, with the slope (T - W) dx/dT + run, so there is one. Newton's method in the square of T -
   * W, which is exact where dx/dT is constant; it halves the bracket where it would leave it or
   * gets on slowly.
   *
   * <p>One rounding of T may move the strain of a rope with a nearly level curve by many. So the
   * last step, less than a rounding of T, is taken in the strains.
   *
   * @param weight W, above zero
   * @param energy E, zero or more
   * @param run length of the run in metres, zero or more
   * @return the state
   */
  public final CatchState rest(double weight, double energy, double run) {
    double low = weight;
    double high = Double.POSITIVE_INFINITY;
    double before = Double.POSITIVE_INFINITY;
    CatchState state = at(2 * weight);
    for (int step = 0; step < MOST_STEPS; step++) {
      double t = state.tension();
      double off = off(state, weight, energy, run);
      if (off < 0) {
        low = t;
      } else {
        high = t;
      }
      double over = t - weight;
      double slope = state.rate() * over + run;
      double part = (state.rate() * over / 2 + run) * over - off;
      double next =
          weight + 2 * part / (run + Math.sqrt(run * run + 2 * state.rate() * Math.max(0, part)));
      if (Math.abs(next - t) <= 2 * Math.ulp(t)) {
        return slope > 0 ? closed(state, weight, energy, run) : state;
      }
      boolean slow = Math.abs(off) > before / 2 && high < Double.POSITIVE_INFINITY;
      before = Math.abs(off);
      if (slow || !(next > low && next < high)) {
        next = high == Double.POSITIVE_INFINITY ? 2 * t : low + (high - low) / 2;
        if (!(next > low && next < high)) {
          return closed(state, weight, energy, run);
        }
      }
      state = at(next);
    }
    return state;
  }

  private static double off(CatchState state, double weight, double energy, double run) {
    return state.work() - energy - weight * state.travel() + (state.tension() - weight) * run;
  }

  private CatchState closed(CatchState state, double weight, double energy, double run) {
    double slope = state.rate() * (state.tension() - weight) + run;
    double more = -off(state, weight, energy, run) / slope;
    double[] strains = state.strains.clone();
    for (int i = 0; i < strains.length; i++) {
      strains[i] += more * strainRate(i, strains[i]);
    }
    return state(state.tension(), strains);
  }
}
