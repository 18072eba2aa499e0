package org.boleline.internal.rod;

import static org.boleline.internal.rod.Collocation.POINTS;

/**
 * One stem, cut into cells for the solver: geometry, stiffness and weight at every point.
 *
 * <p>Built once for an arrangement and then only read. Every station where something changes
 * abruptly (a contact, a mass, a kink of the profile) is a node, so that all is smooth in a cell.
 */
public final class Rod {
  final int cells;
  final int points;
  final double[] base;
  final double[] nodeAt;
  final double[] at;
  final double[] cellLength;
  final double[] tangent;
  final double[] weight;
  final double[] share;
  final double[] bend;
  final double[] twist;
  final double[] flexuralRigidity;
  final double[] standingMoment;
  final double[] standingBaseMoment = new double[3];
  final double[] nodeForce;
  final double rootStiffness;

  private final Profile profile;

  /** What a rod is made of, along its length. */
  public interface Profile {
    /**
     * Returns the direction of the given shape.
     *
     * @param at station
     * @param cellMiddle a station within the same cell, which tells the side at a kink
     * @param out receives the unit tangent
     */
    void tangent(double at, double cellMiddle, double[] out);

    /** Outer diameter, m, on the side of {@code cellMiddle}. */
    double outer(double at, double cellMiddle);

    /** Diameter of the concentric cavity, m, zero if none, on the side of {@code cellMiddle}. */
    double cavity(double at, double cellMiddle);
  }

  /**
   * Builds a rod.
   *
   * @param base position of the base
   * @param nodes stations of the nodes, rising, from zero to the length
   * @param profile geometry along the length
   * @param e modulus of elasticity, Pa
   * @param g shear modulus, Pa
   * @param weightDensity weight of the wood for each volume, N/m3; zero if own weight is off
   * @param rootStiffness rotational stiffness of the root, N.m/rad; infinite if clamped
   * @param nodeWeight weight of the mass that hangs at each node, N
   */
  public Rod(
      double[] base,
      double[] nodes,
      Profile profile,
      double e,
      double g,
      double weightDensity,
      double rootStiffness,
      double[] nodeWeight) {
    this.base = base.clone();
    this.nodeAt = nodes.clone();
    this.profile = profile;
    this.rootStiffness = rootStiffness;
    cells = nodes.length - 1;
    points = cells * POINTS;
    at = new double[points];
    cellLength = new double[cells];
    tangent = new double[3 * points];
    weight = new double[points];
    share = new double[points];
    bend = new double[points];
    twist = new double[points];
    flexuralRigidity = new double[points];
    standingMoment = new double[3 * points];
    nodeForce = new double[3 * nodes.length];
    for (int n = 0; n < nodes.length; n++) {
      nodeForce[3 * n + 2] = -nodeWeight[n];
    }
    double[] t = new double[3];
    for (int c = 0; c < cells; c++) {
      double h = nodes[c + 1] - nodes[c];
      double middle = 0.5 * (nodes[c] + nodes[c + 1]);
      cellLength[c] = h;
      for (int i = 0; i < POINTS; i++) {
        int p = c * POINTS + i;
        double s = nodes[c] + h * Collocation.AT[i];
        at[p] = s;
        profile.tangent(s, middle, t);
        System.arraycopy(t, 0, tangent, 3 * p, 3);
        double d = profile.outer(s, middle);
        double hole = profile.cavity(s, middle);
        double d2 = d * d;
        double h2 = hole * hole;
        double i4 = Math.PI / 64 * (d2 - h2) * (d2 + h2);
        flexuralRigidity[p] = e * i4;
        weight[p] = weightDensity * Math.PI / 4 * (d2 - h2);
        share[p] = Math.sqrt(h * Collocation.WHOLE[i]);
        bend[p] = 1 / Math.sqrt(e * i4);
        twist[p] = 1 / Math.sqrt(2 * g * i4) - bend[p];
      }
    }
  }

  /**
   * Takes the given shape as one that already bends under own weight: notes the moments of own
   * weight in it, which then call for no further curvature.
   */
  public void takeAsStanding() {
    RodState state = new RodState(this);
    state.forward();
    state.clearLoads();
    state.backward(1);
    for (int p = 0; p < points; p++) {
      state.pullBack(p, state.moment, standingMoment, p);
    }
    System.arraycopy(state.nodeMoment, 0, standingBaseMoment, 0, 3);
  }

  /** Number of unknowns of the rod in the solver's vector. */
  public int unknowns() {
    return 3 * points + 2;
  }

  /** Size of the solver's vector if a force bent the rod with its whole length as the arm. */
  public double bendingUnder(double force) {
    double sum = 0;
    for (int p = 0; p < points; p++) {
      double part = share[p] * bend[p] * force * length();
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  /** Own weight and all masses that hang on the rod, N. */
  public double wholeWeight() {
    double sum = 0;
    for (int c = 0; c < cells; c++) {
      for (int i = 0; i < POINTS; i++) {
        sum += cellLength[c] * Collocation.WHOLE[i] * weight[c * POINTS + i];
      }
    }
    for (int n = 0; n < nodeAt.length; n++) {
      sum -= nodeForce[3 * n + 2];
    }
    return sum;
  }

  /**
   * Masses of the rod: one at each Gauss point, in order, then what hangs at each node.
   *
   * @param density mass of the wood for each volume
   * @param gravity acceleration of gravity
   */
  public double[] masses(double density, double gravity) {
    double[] out = new double[points + nodeAt.length];
    for (int c = 0; c < cells; c++) {
      double middle = 0.5 * (nodeAt[c] + nodeAt[c + 1]);
      for (int i = 0; i < POINTS; i++) {
        int p = c * POINTS + i;
        double d = profile.outer(at[p], middle);
        double hole = profile.cavity(at[p], middle);
        double area = Math.PI / 4 * (d - hole) * (d + hole);
        out[p] = cellLength[c] * Collocation.WHOLE[i] * density * area;
      }
    }
    for (int n = 0; n < nodeAt.length; n++) {
      out[points + n] = -nodeForce[3 * n + 2] / gravity;
    }
    return out;
  }

  /** Weights of the rod, in the order of {@link #masses}; zero where own weight is off. */
  public double[] weights() {
    double[] out = new double[points + nodeAt.length];
    for (int p = 0; p < points; p++) {
      out[p] = cellLength[p / POINTS] * Collocation.WHOLE[p % POINTS] * weight[p];
    }
    for (int n = 0; n < nodeAt.length; n++) {
      out[points + n] = -nodeForce[3 * n + 2];
    }
    return out;
  }

  /**
   * Node at or next below a mass of {@link #masses}.
   *
   * @param mass index of the mass
   * @return the highest node that is not above the mass
   */
  public int nodeBelow(int mass) {
    return mass < points ? mass / POINTS : mass - points;
  }

  /** Whether own weight or a hung mass pulls on the rod. */
  public boolean hasWeight() {
    for (double w : weight) {
      if (w != 0) {
        return true;
      }
    }
    for (double f : nodeForce) {
      if (f != 0) {
        return true;
      }
    }
    return false;
  }

  /** Length along the centre line, m. */
  public double length() {
    return nodeAt[cells];
  }

  /** Number of nodes. */
  public int nodes() {
    return nodeAt.length;
  }

  /** Station of a node, m. */
  public double nodeAt(int node) {
    return nodeAt[node];
  }

  /** The geometry along the length. */
  public Profile profile() {
    return profile;
  }

  /** Index of the node at a station that was given as a node. */
  public int nodeIndex(double station) {
    int index = java.util.Arrays.binarySearch(nodeAt, station);
    if (index < 0) {
      throw new AssertionError("no node at station " + station);
    }
    return index;
  }
}
