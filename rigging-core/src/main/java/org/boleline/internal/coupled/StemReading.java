package org.boleline.internal.coupled;

import org.boleline.internal.rod.Rod;
import org.boleline.internal.rod.RodState;
import org.boleline.internal.rod.Section;

/**
 * Force, moment and fibre stress in a stem that vibrates about its rest, read from the free body
 * above each node: rope forces at their places, own weight where it has moved to, less the masses
 * times their acceleration.
 *
 * <p>Not thread-safe: a scratch pad.
 */
public final class StemReading {
  private final RodState rest;
  private final int nodes;
  private final double[][] nodeMovement;
  private final double[][] lever;
  private final double[][] force;
  private final double[][] moved;
  private final double[] moment = new double[3];
  private final double[] axialForce = new double[3];
  private final double[] direction;

  /** Makes ready to read a stem by some of its modes, lowest first. */
  public StemReading(SmallMotions motions, int modes) {
    rest = motions.rod();
    Rod rod = rest.rod();
    nodes = rod.nodes();
    nodeMovement = motions.nodeMovement();
    double[] mass = motions.mass();
    double[] weight = rod.weights();
    double[] at = rest.positionsOfMasses();
    lever = new double[modes][3 * nodes];
    force = new double[modes][3 * nodes];
    moved = new double[modes][3 * nodes];
    for (int k = 0; k < modes; k++) {
      double[] shape = motions.massMovement()[k];
      for (int n = 0; n < nodes; n++) {
        double[] r = rest.position(n);
        for (int m = 0; m < mass.length; m++) {
          if (rod.nodeBelow(m) < n) {
            continue;
          }
          double x = at[3 * m] - r[0];
          double y = at[3 * m + 1] - r[1];
          double z = at[3 * m + 2] - r[2];
          double fx = mass[m] * shape[3 * m];
          double fy = mass[m] * shape[3 * m + 1];
          double fz = mass[m] * shape[3 * m + 2];
          force[k][3 * n] += fx;
          force[k][3 * n + 1] += fy;
          force[k][3 * n + 2] += fz;
          lever[k][3 * n] += y * fz - z * fy;
          lever[k][3 * n + 1] += z * fx - x * fz;
          lever[k][3 * n + 2] += x * fy - y * fx;
          moved[k][3 * n] -= (shape[3 * m + 1] - nodeMovement[k][3 * n + 1]) * weight[m];
          moved[k][3 * n + 1] += (shape[3 * m] - nodeMovement[k][3 * n]) * weight[m];
        }
      }
    }
    direction = new double[3 * nodes];
    Section section = new Section(rest);
    for (int n = 0; n < nodes; n++) {
      section.read(rod.nodeAt(n));
      System.arraycopy(section.direction(), 0, direction, 3 * n, 3);
    }
  }

  /** Number of nodes that can be read. */
  public int nodes() {
    return nodes;
  }

  /** Station of a node, m. */
  public double at(int node) {
    return rest.rod().nodeAt(node);
  }

  /** Position of a node at rest, m. */
  public double[] position(int node) {
    return rest.position(node);
  }

  /**
   * Reads the moment about a node, N.m, of all that acts at it and above.
   *
   * @param node the node
   * @param q holds the modal coordinates
   * @param qFirst where those of this stem begin in it
   * @param acceleration holds their second derivatives
   * @param first where those of this stem begin in it
   * @param pointNode node of each point of the rope, or minus one if it is not on this stem
   * @param place places of the points
   * @param pull forces of the rope on them
   * @return the live array
   */
  public double[] moment(
      int node,
      double[] q,
      int qFirst,
      double[] acceleration,
      int first,
      int[] pointNode,
      double[] place,
      double[] pull) {
    double[] r = rest.position(node);
    double[] m = rest.momentFrom(node);
    double[] f = rest.forceFrom(node);
    for (int k = 0; k < lever.length; k++) {
      double x = q[qFirst + k];
      double a = acceleration[first + k];
      for (int d = 0; d < 3; d++) {
        r[d] += x * nodeMovement[k][3 * node + d];
        m[d] += x * moved[k][3 * node + d] - a * lever[k][3 * node + d];
        f[d] -= a * force[k][3 * node + d];
      }
    }
    for (int j = 0; j < pointNode.length; j++) {
      if (pointNode[j] >= node) {
        double x = place[3 * j] - r[0];
        double y = place[3 * j + 1] - r[1];
        double z = place[3 * j + 2] - r[2];
        double fx = pull[3 * j];
        double fy = pull[3 * j + 1];
        double fz = pull[3 * j + 2];
        m[0] += y * fz - z * fy;
        m[1] += z * fx - x * fz;
        m[2] += x * fy - y * fx;
        f[0] += fx;
        f[1] += fy;
        f[2] += fz;
      }
    }
    System.arraycopy(m, 0, moment, 0, 3);
    System.arraycopy(f, 0, axialForce, 0, 3);
    return moment;
  }

  /** Greatest fibre stress at the node last read, |N| / A + M / Z, on its weaker side, Pa. */
  public double stress(int node) {
    Rod rod = rest.rod();
    double axial = 0;
    double twist = 0;
    double all = 0;
    for (int d = 0; d < 3; d++) {
      axial += axialForce[d] * direction[3 * node + d];
      twist += moment[d] * direction[3 * node + d];
      all += moment[d] * moment[d];
    }
    double bending = Math.sqrt(Math.max(0, all - twist * twist));
    double most = 0;
    for (int side = -1; side <= 0; side++) {
      int cell = node + side;
      if (cell >= 0 && cell < rod.nodes() - 1) {
        double middle = 0.5 * (rod.nodeAt(cell) + rod.nodeAt(cell + 1));
        double d = rod.profile().outer(rod.nodeAt(node), middle);
        double hole = rod.profile().cavity(rod.nodeAt(node), middle);
        double d2 = d * d;
        double h2 = hole * hole;
        double stress =
            bending / (Math.PI / 32 * (d2 - h2) * (d2 + h2) / d)
                + Math.abs(axial) / (Math.PI / 4 * (d2 - h2));
        most = Math.max(most, stress);
      }
    }
    return most;
  }
}
