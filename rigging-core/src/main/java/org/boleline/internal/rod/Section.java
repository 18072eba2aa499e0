package org.boleline.internal.rod;

import static org.boleline.internal.rod.Collocation.POINTS;

/**
 * What a rod carries at any station: a smooth reading of a cell between its ends.
 *
 * <p>Within a cell, position, direction, force and moment are read from the polynomial through the
 * two ends and the Gauss points; diameters are read exactly.
 */
public final class Section {
  private static final int NODES = POINTS + 2;
  private static final double[] AT = new double[NODES];
  private static final double[] BARYCENTRIC = new double[NODES];

  static {
    AT[NODES - 1] = 1;
    System.arraycopy(Collocation.AT, 0, AT, 1, POINTS);
    for (int i = 0; i < NODES; i++) {
      double product = 1;
      for (int j = 0; j < NODES; j++) {
        if (i != j) {
          product *= AT[i] - AT[j];
        }
      }
      BARYCENTRIC[i] = 1 / product;
    }
  }

  private final RodState state;
  private final double[] startTangent = new double[3];
  private final double[] endTangent = new double[3];
  private final double[] weights = new double[NODES];
  private int cell = -1;
  private int tangentsOf = -1;

  private final double[] position = new double[3];
  private final double[] direction = new double[3];
  private final double[] force = new double[3];
  private final double[] moment = new double[3];
  private double bending;
  private double twisting;
  private double axial;
  private double bendingStress;
  private double axialStress;

  /** Reads a state. */
  public Section(RodState state) {
    this.state = state;
  }

  /**
   * Reads at a station; at a node, the side below it (or, at the base, the side above).
   *
   * @param at station, from zero to the length
   */
  public void read(double at) {
    double[] nodes = state.rod.nodeAt;
    int index = java.util.Arrays.binarySearch(nodes, at);
    int c = index >= 0 ? Math.max(0, index - 1) : -index - 2;
    c = Math.max(0, Math.min(state.rod.cells - 1, c));
    read(c, (at - nodes[c]) / (nodes[c + 1] - nodes[c]));
  }

  /**
   * Reads within a cell.
   *
   * @param c number of the cell
   * @param x place in it, from 0 to 1
   */
  public void read(int c, double x) {
    if (c != tangentsOf) {
      tangentAt(c, 0, startTangent);
      tangentAt(c, 1, endTangent);
      tangentsOf = c;
    }
    readPosition(c, x);
    mix(startTangent, 0, state.t, endTangent, 0, direction);
    mix(state.nodeForceOver, 3 * c, state.force, state.nodeForceAbove, 3 * c + 3, force);
    mix(state.nodeMomentOver, 3 * c, state.moment, state.nodeMoment, 3 * c + 3, moment);
    double size = Math.sqrt(dot(direction, direction));
    for (int d = 0; d < 3; d++) {
      direction[d] /= size;
    }
    axial = dot(force, direction);
    twisting = dot(moment, direction);
    bending = Math.sqrt(Math.max(0, dot(moment, moment) - twisting * twisting));
    double[] nodes = state.rod.nodeAt;
    double s = nodes[c] + x * (nodes[c + 1] - nodes[c]);
    double middle = 0.5 * (nodes[c] + nodes[c + 1]);
    double d = state.rod.profile().outer(s, middle);
    double hole = state.rod.profile().cavity(s, middle);
    double d2 = d * d;
    double h2 = hole * hole;
    bendingStress = bending / (Math.PI / 32 * (d2 - h2) * (d2 + h2) / d);
    axialStress = axial / (Math.PI / 4 * (d2 - h2));
  }

  /**
   * Reads the position alone within a cell.
   *
   * @param c number of the cell
   * @param x place in it, from 0 to 1
   */
  public void readPosition(int c, double x) {
    cell = c;
    weigh(x);
    mix(state.nodeR, 3 * c, state.r, state.nodeR, 3 * c + 3, position);
  }

  private void tangentAt(int c, int side, double[] out) {
    double[] nodes = state.rod.nodeAt;
    double[] given = new double[3];
    state.rod.profile().tangent(nodes[c + side], 0.5 * (nodes[c] + nodes[c + 1]), given);
    double[] q = state.nodeQ;
    int o = 9 * (c + side);
    for (int d = 0; d < 3; d++) {
      out[d] = q[o + 3 * d] * given[0] + q[o + 3 * d + 1] * given[1] + q[o + 3 * d + 2] * given[2];
    }
  }

  private void weigh(double x) {
    double sum = 0;
    for (int i = 0; i < NODES; i++) {
      double gap = x - AT[i];
      if (gap == 0) {
        java.util.Arrays.fill(weights, 0);
        weights[i] = 1;
        return;
      }
      weights[i] = BARYCENTRIC[i] / gap;
      sum += weights[i];
    }
    for (int i = 0; i < NODES; i++) {
      weights[i] /= sum;
    }
  }

  private void mix(double[] start, int s, double[] points, double[] end, int e, double[] out) {
    int p = 3 * POINTS * cell;
    for (int d = 0; d < 3; d++) {
      double sum = weights[0] * start[s + d] + weights[NODES - 1] * end[e + d];
      for (int i = 0; i < POINTS; i++) {
        sum += weights[i + 1] * points[p + 3 * i + d];
      }
      out[d] = sum;
    }
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** Position of the axis, m; the live array. */
  public double[] position() {
    return position;
  }

  /** Unit tangent of the axis, upward; the live array. */
  public double[] direction() {
    return direction;
  }

  /** Force of what is above on what is below, N; the live array. */
  public double[] force() {
    return force;
  }

  /** Moment of what is above on what is below, N.m; the live array. */
  public double[] moment() {
    return moment;
  }

  /** Bending part of the moment, N.m. */
  public double bending() {
    return bending;
  }

  /** Twisting part of the moment about the axis, N.m. */
  public double twisting() {
    return twisting;
  }

  /** Axial force, N; tension positive. */
  public double axial() {
    return axial;
  }

  /** Bending stress of the outermost fibre, Pa. */
  public double bendingStress() {
    return bendingStress;
  }

  /** Axial stress, Pa; tension positive. */
  public double axialStress() {
    return axialStress;
  }
}
