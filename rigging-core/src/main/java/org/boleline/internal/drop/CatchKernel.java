package org.boleline.internal.drop;

import org.boleline.internal.friction.LegKernel;

/**
 * Contacts of a rope that slips toward the load while the tension rises.
 *
 * <p>Symbols: T tension of the load leg, P product of the tension ratios between the load and a leg
 * (1 for the load leg), so that the tension of a leg is T / P.
 */
public final class CatchKernel {
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

  /**
   * Returns the movements of contacts that give way together, for each newton of T.
   *
   * @param compliance movement for force, three rows and columns for each contact, in metres per
   *     newton
   * @param directions unit vectors from each contact toward load and tail, six numbers each
   * @param products P of each leg
   * @return compliance times the force on each contact over T, three numbers for each
   */
  public static double[] movements(
      double[][] compliance, double[][] directions, double[] products) {
    double[] moved = new double[compliance.length];
    for (int row = 0; row < moved.length; row++) {
      for (int j = 0; j < directions.length; j++) {
        for (int c = 0; c < 3; c++) {
          double force = directions[j][c] / products[j] + directions[j][c + 3] / products[j + 1];
          moved[row] += compliance[row][3 * j + c] * force;
        }
      }
    }
    return moved;
  }
}
