package org.boleline.internal.coupled;

import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.boleline.internal.rod.RodState;
import org.jspecify.annotations.Nullable;

/**
 * Small movements of one stem about its rest under own weight: how far points on it give way to
 * forces, and its modes of vibration.
 *
 * <p>With dy a change of the solver's vector, K dy the response of the residual at rest (twice the
 * energy is dy.K dy) and J dy the movement of the masses: K y = w^2 J^T m J y. Own weight acts in
 * K; rotation of the cross-sections carries no energy.
 */
public final class SmallMotions {
  private static final double NO_MASS = 1e-14;

  private final RodState rod;
  private final int contacts;
  private final int most;
  private final double[] mass;
  private final double[][] points;
  private final double[][] weighted;
  private final double[][] nodeRows;
  private final double[][] compliance;
  private @Nullable Modes modes;

  /** The modes, lowest first; of unit modal mass. */
  @SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
  private record Modes(
      double[] circularFrequency,
      double[][] shape,
      double[][] massMovement,
      double[][] nodeMovement) {}

  /**
   * Looks at one stem of a rig at rest.
   *
   * @param solver a solver at rest
   * @param stem number of the stem
   * @param density mass of the wood for each volume, also where own weight is off
   * @param gravity acceleration of gravity, to find the hung masses
   * @param most greatest number of modes
   * @throws org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException if the rest of the
   *     stem is not stable
   */
  public SmallMotions(RigSolver solver, int stem, double density, double gravity, int most) {
    RigState rest = solver.rest();
    rod = rest.rods()[stem];
    int[] on = rest.rig().contactRod();
    contacts = on.length;
    int n = rod.rod().unknowns();
    mass = rod.rod().masses(density, gravity);
    int masses = mass.length;
    int nodes = rod.rod().nodes();
    double[][] k = new double[n][n];
    double[][] moved = new double[3 * masses][n];
    double[][] movedNode = new double[3 * nodes][n];
    double[][] movedPoint = new double[3 * contacts][n];
    double[] unit = new double[n];
    double[] response = new double[n];
    double[] movement = new double[3 * Math.max(masses, contacts)];
    rod.clearLoadChanges();
    for (int i = 0; i < n; i++) {
      unit[i] = 1;
      rod.changeForward(unit, 0);
      rod.changeBackward(1, unit, response, 0);
      unit[i] = 0;
      for (int j = 0; j < n; j++) {
        k[j][i] = response[j];
      }
      rod.changeOfMasses(movement);
      for (int j = 0; j < 3 * masses; j++) {
        moved[j][i] = movement[j];
      }
      for (int j = 0; j < nodes; j++) {
        rod.changeOfNode(j, movement, 0);
        for (int d = 0; d < 3; d++) {
          movedNode[3 * j + d][i] = movement[d];
        }
      }
      for (int j = 0; j < contacts; j++) {
        if (on[j] == stem) {
          int node = rest.rig().contactNode()[j];
          rod.changeOfPoint(node, rest.path().attachment(), 3 * j, movement, 0);
          for (int d = 0; d < 3; d++) {
            movedPoint[3 * j + d][i] = movement[d];
          }
        }
      }
    }
    double[][] lower = lowerTriangle(k);
    points = forward(lower, movedPoint);
    compliance = products(points);
    weighted = forward(lower, moved);
    nodeRows = forward(lower, movedNode);
    this.most = most;
  }

  /** Finds the modes when they are first asked for: most do not ask. */
  private synchronized Modes modes() {
    if (modes == null) {
      modes = found();
    }
    return modes;
  }

  private Modes found() {
    int n = weighted[0].length;
    double[][] inertia = new double[n][n];
    for (int row = 0; row < weighted.length; row++) {
      double m = mass[row / 3];
      double[] w = weighted[row];
      for (int i = 0; i < n; i++) {
        double part = m * w[i];
        for (int j = 0; j <= i; j++) {
          inertia[i][j] += part * w[j];
        }
      }
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        inertia[j][i] = inertia[i][j];
      }
    }
    EigenDecomposition eigen = new EigenDecomposition(new Array2DRowRealMatrix(inertia, false));
    double[] values = eigen.getRealEigenvalues();
    Integer[] order = new Integer[n];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, (a, b) -> Double.compare(values[b], values[a]));
    int count = 0;
    while (count < Math.min(most, n) && values[order[count]] > NO_MASS * values[order[0]]) {
      count++;
    }
    Modes out =
        new Modes(new double[count], new double[count][], new double[count][], new double[count][]);
    for (int i = 0; i < count; i++) {
      double value = values[order[i]];
      out.circularFrequency()[i] = 1 / Math.sqrt(value);
      double[] v = eigen.getEigenvector(order[i]).toArray();
      // Unit modal mass: y = K^(-1/2) v has y.M y = value.
      double scale = sign(v, nodeRows) / Math.sqrt(value);
      out.shape()[i] = times(points, v, scale);
      out.massMovement()[i] = times(weighted, v, scale);
      out.nodeMovement()[i] = times(nodeRows, v, scale);
    }
    return out;
  }

  /** So that the last node's greatest component counts positive: the same plan, the same bytes. */
  private static double sign(double[] v, double[][] nodeRows) {
    double most = 0;
    for (int d = 1; d <= 3; d++) {
      double sum = 0;
      for (int i = 0; i < v.length; i++) {
        sum += nodeRows[nodeRows.length - d][i] * v[i];
      }
      most = Math.abs(sum) > Math.abs(most) ? sum : most;
    }
    return most < 0 ? -1 : 1;
  }

  private static double[][] lowerTriangle(double[][] k) {
    int n = k.length;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < i; j++) {
        k[i][j] = 0.5 * (k[i][j] + k[j][i]);
        k[j][i] = k[i][j];
      }
    }
    return new CholeskyDecomposition(new Array2DRowRealMatrix(k, false), 1e-6, 0).getL().getData();
  }

  /** Rows r become rows x with L x = r. */
  private static double[][] forward(double[][] l, double[][] rows) {
    int n = l.length;
    double[][] out = new double[rows.length][];
    for (int r = 0; r < rows.length; r++) {
      double[] x = rows[r].clone();
      for (int i = 0; i < n; i++) {
        double sum = x[i];
        for (int j = 0; j < i; j++) {
          sum -= l[i][j] * x[j];
        }
        x[i] = sum / l[i][i];
      }
      out[r] = x;
    }
    return out;
  }

  private static double[][] products(double[][] rows) {
    int n = rows.length;
    double[][] out = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = 0;
        for (int c = 0; c < rows[i].length; c++) {
          sum += rows[i][c] * rows[j][c];
        }
        out[i][j] = sum;
        out[j][i] = sum;
      }
    }
    return out;
  }

  private static double[] times(double[][] rows, double[] v, double scale) {
    double[] out = new double[rows.length];
    for (int r = 0; r < rows.length; r++) {
      double sum = 0;
      for (int i = 0; i < v.length; i++) {
        sum += rows[r][i] * v[i];
      }
      out[r] = scale * sum;
    }
    return out;
  }

  /**
   * Movement of contacts (three components each) for forces on contacts, m/N; zero for those on
   * other stems.
   */
  public double[][] compliance() {
    return compliance;
  }

  /** Circular frequencies of the modes, lowest first, rad/s. */
  public double[] circularFrequency() {
    return modes().circularFrequency();
  }

  /** Movement of the contacts in each mode of unit modal mass, 1/sqrt(kg). */
  public double[][] shape() {
    return modes().shape();
  }

  /** Movement of the nodes in each mode. */
  public double[][] nodeMovement() {
    return modes().nodeMovement();
  }

  /** Movement of the masses in each mode. */
  public double[][] massMovement() {
    return modes().massMovement();
  }

  /** The masses, kg: one for each Gauss point, then one for each node. */
  public double[] mass() {
    return mass;
  }

  /** The stem at rest. */
  public RodState rod() {
    return rod;
  }
}
