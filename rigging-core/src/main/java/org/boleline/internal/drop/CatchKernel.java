package org.boleline.internal.drop;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.boleline.internal.friction.LegKernel;

/**
 * A mass caught by a rope that slips toward it over contacts while the tension rises.
 *
 * <p>Symbols: T tension of the load leg, W weight, E energy the mass has over the taut rope, L
 * length of a leg, P product of the tension ratios between the load and a leg (1 for the load leg),
 * so that the tension of a leg is T / P; c give of springs in the rope's path, in metres of travel
 * for each newton of T.
 */
public final class CatchKernel {
  private static final double RELATIVE = 1e-15;
  private static final int MOST_EVALUATIONS = 1000;

  private CatchKernel() {}

  /**
   * Returns the products of the tension ratios from the load to each leg.
   *
   * @param ratios ratio at each contact, from the load on, 1 or more
   * @return one product more than ratios, the first 1
   */
  public static double[] products(double[] ratios) {
    double[] products = new double[ratios.length + 1];
    products[0] = 1;
    for (int i = 0; i < ratios.length; i++) {
      products[i + 1] = products[i] * ratios[i];
    }
    return products;
  }

  /**
   * Returns how far the load has come down since the rope was taut.
   *
   * @param rope stretch curve
   * @param lengths L of each leg, in metres
   * @param products P of each leg
   * @param give c
   * @param tension T
   * @return the sum of L e(T / P), and c T, in metres
   */
  public static double travel(
      StretchKernel rope, double[] lengths, double[] products, double give, double tension) {
    double x = give * tension;
    for (int i = 0; i < lengths.length; i++) {
      x += lengths[i] * rope.strain(tension / products[i]);
    }
    return x;
  }

  /**
   * Returns the work of the load leg on the mass up to a tension: the integral of T over travel.
   *
   * <p>Leg by leg the tension of the load leg is P times that of the leg, so the work is P times
   * the energy stored in it; what exceeds that energy is heat at the contacts before it.
   *
   * @param rope stretch curve
   * @param lengths L of each leg, in metres
   * @param products P of each leg
   * @param give c
   * @param tension T
   * @return the sum of P L U(e(T / P)), and c T^2 / 2, in joules
   */
  public static double work(
      StretchKernel rope, double[] lengths, double[] products, double give, double tension) {
    double work = give * tension * tension / 2;
    for (int i = 0; i < lengths.length; i++) {
      work += products[i] * lengths[i] * rope.energy(rope.strain(tension / products[i]));
    }
    return work;
  }

  /**
   * Returns the greatest tension of the load leg, where the mass stands still at its lowest.
   *
   * <p>The root above W of work(T) = E + W travel(T). The difference of both sides falls up to W
   * and rises from there without end, so there is one.
   *
   * @param rope stretch curve
   * @param lengths L of each leg, in metres
   * @param products P of each leg
   * @param give c
   * @param weight W, above zero
   * @param energy E, zero or more
   * @return T in newtons
   */
  public static double peak(
      StretchKernel rope,
      double[] lengths,
      double[] products,
      double give,
      double weight,
      double energy) {
    double low = weight;
    double high = 2 * weight;
    while (surplus(rope, lengths, products, give, weight, energy, high) <= 0) {
      low = high;
      high *= 2;
    }
    return new BrentSolver(RELATIVE, RELATIVE * weight, Double.MIN_NORMAL)
        .solve(
            MOST_EVALUATIONS,
            t -> surplus(rope, lengths, products, give, weight, energy, t),
            low,
            high);
  }

  private static double surplus(
      StretchKernel rope,
      double[] lengths,
      double[] products,
      double give,
      double weight,
      double energy,
      double tension) {
    double work = give * tension * tension / 2;
    double travel = give * tension;
    for (int i = 0; i < lengths.length; i++) {
      double strain = rope.strain(tension / products[i]);
      work += products[i] * lengths[i] * rope.energy(strain);
      travel += lengths[i] * strain;
    }
    return work - energy - weight * travel;
  }

  /**
   * Returns how much rope passes a contact toward the load while the tension rises, and the heat of
   * it.
   *
   * @param rope stretch curve
   * @param lengths L of each leg, in metres
   * @param products P of each leg
   * @param contact number of the contact, from 0 at the load
   * @param tension T
   * @return rope passed in metres, heat in joules; give of springs is not in it
   */
  public static double[] slip(
      StretchKernel rope, double[] lengths, double[] products, int contact, double tension) {
    double ratio = products[contact + 1] / products[contact];
    double passed = 0;
    double heat = 0;
    for (int i = contact + 1; i < lengths.length; i++) {
      double strain = rope.strain(tension / products[i]);
      passed += lengths[i] * strain;
      heat += products[i] / products[contact + 1] * lengths[i] * rope.energy(strain);
    }
    return new double[] {passed, (ratio - 1) * heat};
  }

  /**
   * Returns the force on a contact for each newton of T.
   *
   * @param before P of the leg on the side of the load
   * @param behind P of the leg on the other side
   * @param turn turn of the rope in radians
   * @return the force over T
   */
  public static double forceShare(double before, double behind, double turn) {
    return LegKernel.magnitude(1 / before, 1 / behind, Math.PI - turn);
  }

  /**
   * Returns the travel of the load for each newton of T, where a contact hangs on a spring that is
   * the same in all directions.
   *
   * <p>The contact moves along the force on it, which brings it nearer to both its neighbours.
   *
   * @param before P of the leg on the side of the load
   * @param behind P of the leg on the other side
   * @param turn turn of the rope in radians
   * @param stiffness stiffness of the spring in newtons per metre
   * @return (1 / before + 1 / behind) (1 - cos(turn)) / stiffness, in metres per newton
   */
  public static double give(double before, double behind, double turn, double stiffness) {
    double half = Math.sin(turn / 2);
    return (1 / before + 1 / behind) * 2 * half * half / stiffness;
  }

  /**
   * Returns the rope that passes a contact toward the load for each newton of T, because the
   * contact itself moves toward its leg behind.
   *
   * @param before P of the leg on the side of the load
   * @param behind P of the leg on the other side
   * @param turn turn of the rope in radians
   * @param stiffness stiffness of the spring in newtons per metre
   * @return (1 / behind - cos(turn) / before) / stiffness, in metres per newton; negative where the
   *     contact moves away from that leg
   */
  public static double ownSlip(double before, double behind, double turn, double stiffness) {
    return (1 / behind - Math.cos(turn) / before) / stiffness;
  }
}
