package org.boleline.internal.rod;

import static org.boleline.internal.rod.Collocation.POINTS;
import static org.boleline.internal.rod.Collocation.TO;

/**
 * A rod in some state: curvature, shape, internal forces; and the linear response to a small change
 * of curvature.
 *
 * <p>Frames. Q(s) turns the given shape into the loaded one; k is the change of curvature, seen in
 * the given shape, so that Q' = Q [k]. With m the internal moment (what the part above does to the
 * part below) the rod is in balance where
 *
 * <pre>D k = Q^T m - m_standing,   D = EI across and GJ along the given tangent.</pre>
 *
 * <p>The solver's unknown y is k scaled by the square root of D and of the integration weight, so
 * that y.y is twice the strain energy and the tangent is the unit matrix plus a compact part.
 */
public final class RodState {
  final Rod rod;
  final double[] k;
  final double[] q;
  final double[] t;
  final double[] r;
  final double[] moment;
  final double[] force;
  final double[] nodeR;
  final double[] nodeQ;
  final double[] nodeMoment;
  final double[] nodeForceAbove;
  final double[] nodeMomentOver;
  final double[] nodeForceOver;
  final double[] root = new double[2];
  private final RootTurn rootTurn = new RootTurn();

  private final double[] loadForce;
  private final double[] loadMoment;
  private final double[] psi = new double[3 * (POINTS + 1)];
  private final double[] rate = new double[3 * POINTS];
  private final double[] turnRate = new double[3 * POINTS];
  private final double[] path = new double[3 * (POINTS + 1)];
  private final double[] dTheta;
  private final double[] dR;
  private final double[] dNodeTheta;
  private final double[] dNodeR;
  private final double[] dLoadForce;
  private final double[] dLoadMoment;
  private final double[] e = new double[9];
  private final double[] current = new double[9];

  /** Makes the state of a rod in its given shape. */
  public RodState(Rod rod) {
    this.rod = rod;
    int n = rod.points;
    k = new double[3 * n];
    q = new double[9 * n];
    t = new double[3 * n];
    r = new double[3 * n];
    moment = new double[3 * n];
    force = new double[3 * n];
    int nodes = rod.cells + 1;
    nodeR = new double[3 * nodes];
    nodeQ = new double[9 * nodes];
    nodeMoment = new double[3 * nodes];
    nodeForceAbove = new double[3 * nodes];
    nodeMomentOver = new double[3 * nodes];
    nodeForceOver = new double[3 * nodes];
    loadForce = new double[3 * nodes];
    loadMoment = new double[3 * nodes];
    dTheta = new double[3 * n];
    dR = new double[3 * n];
    dNodeTheta = new double[3 * nodes];
    dNodeR = new double[3 * nodes];
    dLoadForce = new double[3 * nodes];
    dLoadMoment = new double[3 * nodes];
  }

  /** The rod. */
  public Rod rod() {
    return rod;
  }

  /** Force of all that acts at a node and above it, N. */
  public double[] forceFrom(int node) {
    return java.util.Arrays.copyOfRange(nodeForceAbove, 3 * node, 3 * node + 3);
  }

  /** Moment of all that acts at a node and above it, about the node, N.m. */
  public double[] momentFrom(int node) {
    return java.util.Arrays.copyOfRange(nodeMoment, 3 * node, 3 * node + 3);
  }

  /** Position of a node, m. */
  public double[] position(int node) {
    return java.util.Arrays.copyOfRange(nodeR, 3 * node, 3 * node + 3);
  }

  /** Takes the curvature from the solver's vector. */
  public void take(double[] y, int offset) {
    double[] t0 = rod.tangent;
    for (int p = 0; p < rod.points; p++) {
      int i = offset + 3 * p;
      int j = 3 * p;
      double along = (y[i] * t0[j] + y[i + 1] * t0[j + 1] + y[i + 2] * t0[j + 2]) * rod.twist[p];
      double scale = 1 / rod.share[p];
      double b = rod.bend[p];
      k[j] = scale * (b * y[i] + along * t0[j]);
      k[j + 1] = scale * (b * y[i + 1] + along * t0[j + 1]);
      k[j + 2] = scale * (b * y[i + 2] + along * t0[j + 2]);
    }
    int end = offset + 3 * rod.points;
    double give = 1 / Math.sqrt(rod.rootStiffness);
    root[0] = give * y[end];
    root[1] = give * y[end + 1];
    rootTurn.of(Math.hypot(root[0], root[1]));
  }

  /** Integrates the curvature upward: rotations, tangents, positions. */
  public void forward() {
    rotation(root[0], root[1], 0, current);
    double x = rod.base[0];
    double y = rod.base[1];
    double z = rod.base[2];
    node(0, x, y, z);
    for (int c = 0; c < rod.cells; c++) {
      int first = 3 * c * POINTS;
      double h = rod.cellLength[c];
      rotationVectors(first, h);
      for (int i = 0; i < POINTS; i++) {
        rotation(psi[3 * i], psi[3 * i + 1], psi[3 * i + 2], e);
        int p = c * POINTS + i;
        multiply(current, e, q, 9 * p);
        turn(q, 9 * p, rod.tangent, 3 * p, t, 3 * p);
      }
      integral(t, first, h, path);
      for (int i = 0; i < 3 * POINTS; i += 3) {
        r[first + i] = x + path[i];
        r[first + i + 1] = y + path[i + 1];
        r[first + i + 2] = z + path[i + 2];
      }
      int end = 3 * POINTS;
      rotation(psi[end], psi[end + 1], psi[end + 2], e);
      multiply(current, e, nodeQ, 9 * (c + 1));
      System.arraycopy(nodeQ, 9 * (c + 1), current, 0, 9);
      x += path[end];
      y += path[end + 1];
      z += path[end + 2];
      node(c + 1, x, y, z);
    }
  }

  private void node(int n, double x, double y, double z) {
    nodeR[3 * n] = x;
    nodeR[3 * n + 1] = y;
    nodeR[3 * n + 2] = z;
    System.arraycopy(current, 0, nodeQ, 9 * n, 9);
  }

  /** Rotation vectors from the start of a cell to its points and its end, from its curvatures. */
  private void rotationVectors(int first, double h) {
    integral(k, first, h, psi);
    for (int sweep = 0; sweep < 3; sweep++) {
      double most = 0;
      for (int j = 0; j < 3 * POINTS; j += 3) {
        double kx = k[first + j];
        double ky = k[first + j + 1];
        double kz = k[first + j + 2];
        double cx = psi[j + 1] * kz - psi[j + 2] * ky;
        double cy = psi[j + 2] * kx - psi[j] * kz;
        double cz = psi[j] * ky - psi[j + 1] * kx;
        most = Math.max(most, Math.max(Math.abs(cx), Math.max(Math.abs(cy), Math.abs(cz))));
        rate[j] = kx + 0.5 * cx + (psi[j + 1] * cz - psi[j + 2] * cy) / 12;
        rate[j + 1] = ky + 0.5 * cy + (psi[j + 2] * cx - psi[j] * cz) / 12;
        rate[j + 2] = kz + 0.5 * cz + (psi[j] * cy - psi[j + 1] * cx) / 12;
      }
      if (most * h < 1e-14) {
        return;
      }
      integral(rate, 0, h, psi);
    }
  }

  /** Integrals over a cell of a vector given at its points: to each point and to the end. */
  private static void integral(double[] f, int first, double h, double[] out) {
    for (int i = 0; i <= POINTS; i++) {
      double sx = 0;
      double sy = 0;
      double sz = 0;
      for (int j = 0; j < POINTS; j++) {
        double a = TO[i * POINTS + j];
        int o = first + 3 * j;
        sx += a * f[o];
        sy += a * f[o + 1];
        sz += a * f[o + 2];
      }
      out[3 * i] = h * sx;
      out[3 * i + 1] = h * sy;
      out[3 * i + 2] = h * sz;
    }
  }

  /** Removes all rope forces. */
  public void clearLoads() {
    java.util.Arrays.fill(loadForce, 0);
    java.util.Arrays.fill(loadMoment, 0);
  }

  /** Adds a rope force that acts at a point rigidly joined to a node. */
  public void addLoad(int n, double[] a, int ai, double[] f, int fi) {
    add(loadForce, loadMoment, 3 * n, a, ai, f, fi);
  }

  private static void add(
      double[] sumForce, double[] sumMoment, int i, double[] a, int ai, double[] f, int fi) {
    double fx = f[fi];
    double fy = f[fi + 1];
    double fz = f[fi + 2];
    sumForce[i] += fx;
    sumForce[i + 1] += fy;
    sumForce[i + 2] += fz;
    sumMoment[i] += a[ai + 1] * fz - a[ai + 2] * fy;
    sumMoment[i + 1] += a[ai + 2] * fx - a[ai] * fz;
    sumMoment[i + 2] += a[ai] * fy - a[ai + 1] * fx;
  }

  /**
   * Adds up, from the top down, the forces above and their moments.
   *
   * @param gravity share of own weight and hung masses that acts, 0 to 1
   */
  public void backward(double gravity) {
    double fx = 0;
    double fy = 0;
    double fz = 0;
    double mx = 0;
    double my = 0;
    double mz = 0;
    double[] hung = rod.nodeForce;
    for (int c = rod.cells - 1; c >= 0; c--) {
      int n = 3 * (c + 1);
      double wz = gravity * hung[n + 2];
      fx += loadForce[n];
      fy += loadForce[n + 1];
      fz += loadForce[n + 2] + wz;
      mx += loadMoment[n] + nodeR[n + 1] * wz;
      my += loadMoment[n + 1] - nodeR[n] * wz;
      mz += loadMoment[n + 2];
      atNode(c + 1, fx, fy, fz, mx, my, mz, nodeForceAbove, nodeMoment);
      double h = rod.cellLength[c];
      int first = c * POINTS;
      double wholeW = 0;
      double wholeX = 0;
      double wholeY = 0;
      for (int j = 0; j < POINTS; j++) {
        double w = -gravity * h * Collocation.WHOLE[j] * rod.weight[first + j];
        wholeW += w;
        wholeX += w * r[3 * (first + j)];
        wholeY += w * r[3 * (first + j) + 1];
      }
      for (int i = 0; i < POINTS; i++) {
        double below = 0;
        double belowX = 0;
        double belowY = 0;
        for (int j = 0; j < POINTS; j++) {
          double w = -gravity * h * TO[i * POINTS + j] * rod.weight[first + j];
          below += w;
          belowX += w * r[3 * (first + j)];
          belowY += w * r[3 * (first + j) + 1];
        }
        int p = 3 * (first + i);
        double nz = fz + wholeW - below;
        double ox = mx + wholeY - belowY;
        double oy = my - wholeX + belowX;
        double rx = r[p];
        double ry = r[p + 1];
        double rz = r[p + 2];
        force[p] = fx;
        force[p + 1] = fy;
        force[p + 2] = nz;
        moment[p] = ox - (ry * nz - rz * fy);
        moment[p + 1] = oy - (rz * fx - rx * nz);
        moment[p + 2] = mz - (rx * fy - ry * fx);
      }
      fz += wholeW;
      mx += wholeY;
      my -= wholeX;
      atNode(c, fx, fy, fz, mx, my, mz, nodeForceOver, nodeMomentOver);
    }
    double wz = gravity * hung[2];
    fx += loadForce[0];
    fy += loadForce[1];
    fz += loadForce[2] + wz;
    mx += loadMoment[0] + nodeR[1] * wz;
    my += loadMoment[1] - nodeR[0] * wz;
    mz += loadMoment[2];
    atNode(0, fx, fy, fz, mx, my, mz, nodeForceAbove, nodeMoment);
  }

  /** Force and moment, about the node itself, of all from a node upward. */
  private void atNode(
      int n,
      double fx,
      double fy,
      double fz,
      double mx,
      double my,
      double mz,
      double[] outForce,
      double[] outMoment) {
    int i = 3 * n;
    outForce[i] = fx;
    outForce[i + 1] = fy;
    outForce[i + 2] = fz;
    outMoment[i] = mx - (nodeR[i + 1] * fz - nodeR[i + 2] * fy);
    outMoment[i + 1] = my - (nodeR[i + 2] * fx - nodeR[i] * fz);
    outMoment[i + 2] = mz - (nodeR[i] * fy - nodeR[i + 1] * fx);
  }

  /** Writes the solver's residual: y minus the scaled curvature that the moments call for. */
  public void residual(double standing, double[] y, double[] out, int offset) {
    double[] v = e;
    double[] t0 = rod.tangent;
    for (int p = 0; p < rod.points; p++) {
      pullBack(p, moment, v, 0);
      int j = 3 * p;
      v[0] -= standing * rod.standingMoment[j];
      v[1] -= standing * rod.standingMoment[j + 1];
      v[2] -= standing * rod.standingMoment[j + 2];
      int i = offset + j;
      scaled(p, v, t0, j);
      out[i] = y[i] - v[0];
      out[i + 1] = y[i + 1] - v[1];
      out[i + 2] = y[i + 2] - v[2];
    }
    int end = offset + 3 * rod.points;
    double give = 1 / Math.sqrt(rod.rootStiffness);
    rootMoment(nodeMoment[0], nodeMoment[1], nodeMoment[2], v);
    out[end] = y[end] - give * (v[0] - standing * rod.standingBaseMoment[0]);
    out[end + 1] = y[end + 1] - give * (v[1] - standing * rod.standingBaseMoment[1]);
  }

  /** Writes the vector that a moment of three unequal parts, the same everywhere, would bring. */
  public void evenBending(double[] out, int offset) {
    double[] v = e;
    for (int p = 0; p < rod.points; p++) {
      v[0] = 1;
      v[1] = 0.8;
      v[2] = 0.3;
      scaled(p, v, rod.tangent, 3 * p);
      System.arraycopy(v, 0, out, offset + 3 * p, 3);
    }
    double give = 1 / Math.sqrt(rod.rootStiffness);
    out[offset + 3 * rod.points] = give;
    out[offset + 3 * rod.points + 1] = 0.8 * give;
  }

  /** v := share D^(-1/2) v. */
  private void scaled(int p, double[] v, double[] t0, int j) {
    double b = rod.bend[p];
    double w = rod.share[p];
    double along = (v[0] * t0[j] + v[1] * t0[j + 1] + v[2] * t0[j + 2]) * rod.twist[p];
    v[0] = w * (b * v[0] + along * t0[j]);
    v[1] = w * (b * v[1] + along * t0[j + 1]);
    v[2] = w * (b * v[2] + along * t0[j + 2]);
  }

  /**
   * Largest unbalanced moment, N.m: what the curvature resists less what the loads call for, at any
   * point or at the root.
   */
  public double unbalancedMoment(double standing) {
    double most = 0;
    double[] v = e;
    double[] t0 = rod.tangent;
    for (int p = 0; p < rod.points; p++) {
      pullBack(p, moment, v, 0);
      int j = 3 * p;
      double ei = rod.flexuralRigidity[p];
      double gj = 1 / ((rod.twist[p] + rod.bend[p]) * (rod.twist[p] + rod.bend[p]));
      double along = k[j] * t0[j] + k[j + 1] * t0[j + 1] + k[j + 2] * t0[j + 2];
      double sum = 0;
      for (int d = 0; d < 3; d++) {
        double resist = ei * k[j + d] + (gj - ei) * along * t0[j + d];
        double gap = resist + standing * rod.standingMoment[j + d] - v[d];
        sum += gap * gap;
      }
      most = Math.max(most, sum);
    }
    if (rod.rootStiffness < Double.POSITIVE_INFINITY) {
      rootMoment(nodeMoment[0], nodeMoment[1], nodeMoment[2], v);
      for (int d = 0; d < 2; d++) {
        double gap = rod.rootStiffness * root[d] + standing * rod.standingBaseMoment[d] - v[d];
        most = Math.max(most, gap * gap);
      }
    }
    return Math.sqrt(most);
  }

  /**
   * Moment that works on the root's rotation vector th: m - A th x m + B th x (th x m), its level
   * parts, with A and B as in {@link RootTurn}.
   */
  private void rootMoment(double mx, double my, double mz, double[] out) {
    double a = root[0];
    double b = root[1];
    double cz = a * my - b * mx;
    out[0] = mx - rootTurn.first * b * mz + rootTurn.second * b * cz;
    out[1] = my + rootTurn.first * a * mz - rootTurn.second * a * cz;
  }

  /** Adds the change of that moment which a change of th alone brings. */
  private void addRootChange(double da, double db, double[] out) {
    double a = root[0];
    double b = root[1];
    double mx = nodeMoment[0];
    double my = nodeMoment[1];
    double mz = nodeMoment[2];
    double cz = a * my - b * mx;
    double dcz = da * my - db * mx;
    double grown = a * da + b * db;
    out[0] +=
        -rootTurn.first * db * mz
            + rootTurn.second * (db * cz + b * dcz)
            - rootTurn.firstSlope * grown * b * mz
            + rootTurn.secondSlope * grown * b * cz;
    out[1] +=
        rootTurn.first * da * mz
            - rootTurn.second * (da * cz + a * dcz)
            + rootTurn.firstSlope * grown * a * mz
            - rootTurn.secondSlope * grown * a * cz;
  }

  /** out := Q^T v at a point. */
  void pullBack(int p, double[] v, double[] out, int outPoint) {
    int i = 9 * p;
    int j = 3 * p;
    int o = 3 * outPoint;
    double vx = v[j];
    double vy = v[j + 1];
    double vz = v[j + 2];
    out[o] = q[i] * vx + q[i + 3] * vy + q[i + 6] * vz;
    out[o + 1] = q[i + 1] * vx + q[i + 4] * vy + q[i + 7] * vz;
    out[o + 2] = q[i + 2] * vx + q[i + 5] * vy + q[i + 8] * vz;
  }

  /** Linear response of the shape to a change of the solver's vector. */
  public void changeForward(double[] dy, int offset) {
    int end = offset + 3 * rod.points;
    double give = 1 / Math.sqrt(rod.rootStiffness);
    double a = give * dy[end];
    double b = give * dy[end + 1];
    double wz = root[0] * b - root[1] * a;
    double thx = a + rootTurn.second * root[1] * wz;
    double thy = b - rootTurn.second * root[0] * wz;
    double thz = rootTurn.first * wz;
    double x = 0;
    double y = 0;
    double z = 0;
    dNode(0, thx, thy, thz, x, y, z);
    double[] t0 = rod.tangent;
    for (int c = 0; c < rod.cells; c++) {
      int firstPoint = c * POINTS;
      int first = 3 * firstPoint;
      double h = rod.cellLength[c];
      for (int j = 0; j < POINTS; j++) {
        int p = firstPoint + j;
        int o = 3 * p;
        int i = offset + o;
        double along =
            (dy[i] * t0[o] + dy[i + 1] * t0[o + 1] + dy[i + 2] * t0[o + 2]) * rod.twist[p];
        double scale = 1 / rod.share[p];
        double bend = rod.bend[p];
        double kx = scale * (bend * dy[i] + along * t0[o]);
        double ky = scale * (bend * dy[i + 1] + along * t0[o + 1]);
        double kz = scale * (bend * dy[i + 2] + along * t0[o + 2]);
        int m = 9 * p;
        turnRate[3 * j] = q[m] * kx + q[m + 1] * ky + q[m + 2] * kz;
        turnRate[3 * j + 1] = q[m + 3] * kx + q[m + 4] * ky + q[m + 5] * kz;
        turnRate[3 * j + 2] = q[m + 6] * kx + q[m + 7] * ky + q[m + 8] * kz;
      }
      integral(turnRate, 0, h, path);
      for (int i = 0; i < 3 * POINTS; i += 3) {
        int o = first + i;
        double sx = thx + path[i];
        double sy = thy + path[i + 1];
        double sz = thz + path[i + 2];
        dTheta[o] = sx;
        dTheta[o + 1] = sy;
        dTheta[o + 2] = sz;
        rate[i] = sy * t[o + 2] - sz * t[o + 1];
        rate[i + 1] = sz * t[o] - sx * t[o + 2];
        rate[i + 2] = sx * t[o + 1] - sy * t[o];
      }
      int last = 3 * POINTS;
      thx += path[last];
      thy += path[last + 1];
      thz += path[last + 2];
      integral(rate, 0, h, path);
      for (int i = 0; i < 3 * POINTS; i += 3) {
        int o = first + i;
        dR[o] = x + path[i];
        dR[o + 1] = y + path[i + 1];
        dR[o + 2] = z + path[i + 2];
      }
      x += path[last];
      y += path[last + 1];
      z += path[last + 2];
      dNode(c + 1, thx, thy, thz, x, y, z);
    }
  }

  private void dNode(int n, double thx, double thy, double thz, double x, double y, double z) {
    int i = 3 * n;
    dNodeTheta[i] = thx;
    dNodeTheta[i + 1] = thy;
    dNodeTheta[i + 2] = thz;
    dNodeR[i] = x;
    dNodeR[i + 1] = y;
    dNodeR[i + 2] = z;
  }

  /** Position of a point at an arm (seen in the given shape) from a node. */
  public void point(int n, double[] arm, double[] out, int o) {
    turn(nodeQ, 9 * n, arm, 0, out, o);
    out[o] += nodeR[3 * n];
    out[o + 1] += nodeR[3 * n + 1];
    out[o + 2] += nodeR[3 * n + 2];
  }

  /** Change of the position {@code a} of a point rigidly joined to a node. */
  public void changeOfPoint(int n, double[] a, int ai, double[] out, int o) {
    int i = 3 * n;
    double x = a[ai] - nodeR[i];
    double y = a[ai + 1] - nodeR[i + 1];
    double z = a[ai + 2] - nodeR[i + 2];
    out[o] = dNodeR[i] + dNodeTheta[i + 1] * z - dNodeTheta[i + 2] * y;
    out[o + 1] = dNodeR[i + 1] + dNodeTheta[i + 2] * x - dNodeTheta[i] * z;
    out[o + 2] = dNodeR[i + 2] + dNodeTheta[i] * y - dNodeTheta[i + 1] * x;
  }

  /** Change of the position of a node. */
  public void changeOfNode(int n, double[] out, int o) {
    System.arraycopy(dNodeR, 3 * n, out, o, 3);
  }

  /** Change of the positions of the Gauss points, in order, and then of the nodes. */
  public void changeOfMasses(double[] out) {
    System.arraycopy(dR, 0, out, 0, dR.length);
    System.arraycopy(dNodeR, 0, out, dR.length, dNodeR.length);
  }

  /** Positions of the Gauss points, in order, and then of the nodes. */
  public double[] positionsOfMasses() {
    double[] out = java.util.Arrays.copyOf(r, r.length + nodeR.length);
    System.arraycopy(nodeR, 0, out, r.length, nodeR.length);
    return out;
  }

  /** Removes all changes of rope forces. */
  public void clearLoadChanges() {
    java.util.Arrays.fill(dLoadForce, 0);
    java.util.Arrays.fill(dLoadMoment, 0);
  }

  /** Adds the change of a rope force: its own change and that of its place. */
  public void addLoadChange(
      int n, double[] a, int ai, double[] f, int fi, double[] da, double[] df) {
    add(dLoadForce, dLoadMoment, 3 * n, a, ai, df, fi);
    int i = 3 * n;
    dLoadMoment[i] += da[ai + 1] * f[fi + 2] - da[ai + 2] * f[fi + 1];
    dLoadMoment[i + 1] += da[ai + 2] * f[fi] - da[ai] * f[fi + 2];
    dLoadMoment[i + 2] += da[ai] * f[fi + 1] - da[ai + 1] * f[fi];
  }

  /** Linear response of the residual; {@link #changeForward} and the load changes come first. */
  public void changeBackward(double gravity, double[] dy, double[] out, int offset) {
    double fx = 0;
    double fy = 0;
    double fz = 0;
    double mx = 0;
    double my = 0;
    double mz = 0;
    double[] v = e;
    double[] t0 = rod.tangent;
    double[] hung = rod.nodeForce;
    for (int c = rod.cells - 1; c >= 0; c--) {
      int n = 3 * (c + 1);
      double wz = gravity * hung[n + 2];
      fx += dLoadForce[n];
      fy += dLoadForce[n + 1];
      fz += dLoadForce[n + 2];
      mx += dLoadMoment[n] + dNodeR[n + 1] * wz;
      my += dLoadMoment[n + 1] - dNodeR[n] * wz;
      mz += dLoadMoment[n + 2];
      double h = gravity * rod.cellLength[c];
      int first = c * POINTS;
      double wholeX = 0;
      double wholeY = 0;
      for (int j = 0; j < POINTS; j++) {
        double w = -h * Collocation.WHOLE[j] * rod.weight[first + j];
        wholeX += w * dR[3 * (first + j)];
        wholeY += w * dR[3 * (first + j) + 1];
      }
      for (int i = 0; i < POINTS; i++) {
        double belowX = 0;
        double belowY = 0;
        for (int j = 0; j < POINTS; j++) {
          double w = -h * TO[i * POINTS + j] * rod.weight[first + j];
          belowX += w * dR[3 * (first + j)];
          belowY += w * dR[3 * (first + j) + 1];
        }
        int point = first + i;
        int p = 3 * point;
        double ox = mx + wholeY - belowY;
        double oy = my - wholeX + belowX;
        double rx = r[p];
        double ry = r[p + 1];
        double rz = r[p + 2];
        double gx = force[p];
        double gy = force[p + 1];
        double gz = force[p + 2];
        double hx = dR[p];
        double hy = dR[p + 1];
        double hz = dR[p + 2];
        double ax = dTheta[p];
        double ay = dTheta[p + 1];
        double az = dTheta[p + 2];
        double bx = moment[p];
        double by = moment[p + 1];
        double bz = moment[p + 2];
        double dx = ox - (ry * fz - rz * fy) - (hy * gz - hz * gy) - (ay * bz - az * by);
        double dyy = oy - (rz * fx - rx * fz) - (hz * gx - hx * gz) - (az * bx - ax * bz);
        double dz = mz - (rx * fy - ry * fx) - (hx * gy - hy * gx) - (ax * by - ay * bx);
        int m = 9 * point;
        v[0] = q[m] * dx + q[m + 3] * dyy + q[m + 6] * dz;
        v[1] = q[m + 1] * dx + q[m + 4] * dyy + q[m + 7] * dz;
        v[2] = q[m + 2] * dx + q[m + 5] * dyy + q[m + 8] * dz;
        scaled(point, v, t0, p);
        out[offset + p] = dy[offset + p] - v[0];
        out[offset + p + 1] = dy[offset + p + 1] - v[1];
        out[offset + p + 2] = dy[offset + p + 2] - v[2];
      }
      mx += wholeY;
      my -= wholeX;
    }
    fx += dLoadForce[0];
    fy += dLoadForce[1];
    fz += dLoadForce[2];
    mx += dLoadMoment[0];
    my += dLoadMoment[1];
    mz += dLoadMoment[2];
    int end = offset + 3 * rod.points;
    double give = 1 / Math.sqrt(rod.rootStiffness);
    double bx = mx - (nodeR[1] * fz - nodeR[2] * fy);
    double by = my - (nodeR[2] * fx - nodeR[0] * fz);
    double bz = mz - (nodeR[0] * fy - nodeR[1] * fx);
    rootMoment(bx, by, bz, v);
    double a = give * dy[end];
    double b = give * dy[end + 1];
    addRootChange(a, b, v);
    out[end] = dy[end] - give * v[0];
    out[end + 1] = dy[end + 1] - give * v[1];
  }

  /**
   * How much of a cell's curvature is of the highest order the cell can hold, as an angle: small
   * where the cell is fine enough.
   */
  public double roughness(int cell) {
    double sum = 0;
    for (int d = 0; d < 3; d++) {
      double high = 0;
      for (int i = 0; i < POINTS; i++) {
        high += Collocation.HIGHEST[i] * k[3 * (cell * POINTS + i) + d];
      }
      sum += high * high;
    }
    return rod.cellLength[cell] * Math.sqrt(sum);
  }

  /** Largest rotation of a node against the given shape, rad. */
  public double greatestTurn() {
    double most = 0;
    for (int n = 0; n <= rod.cells; n++) {
      int i = 9 * n;
      most = Math.max(most, angle(nodeQ[i] + nodeQ[i + 4] + nodeQ[i + 8]));
    }
    return most;
  }

  /** Largest rotation of a node against another state of the same rod, rad. */
  public double greatestTurnFrom(RodState other) {
    double most = 0;
    for (int n = 0; n <= rod.cells; n++) {
      double trace = 0;
      for (int i = 9 * n; i < 9 * n + 9; i++) {
        trace += nodeQ[i] * other.nodeQ[i];
      }
      most = Math.max(most, angle(trace));
    }
    return most;
  }

  /** Angle of a rotation matrix, from its trace; its square loses no digits near zero. */
  private static double angle(double trace) {
    return 2 * Math.asin(Math.sqrt(Math.max(0, Math.min(1, (3 - trace) / 4))));
  }

  private static void turn(double[] m, int i, double[] v, int j, double[] out, int o) {
    double x = v[j];
    double y = v[j + 1];
    double z = v[j + 2];
    out[o] = m[i] * x + m[i + 1] * y + m[i + 2] * z;
    out[o + 1] = m[i + 3] * x + m[i + 4] * y + m[i + 5] * z;
    out[o + 2] = m[i + 6] * x + m[i + 7] * y + m[i + 8] * z;
  }

  private static void multiply(double[] a, double[] b, double[] out, int o) {
    for (int i = 0; i < 9; i += 3) {
      double a0 = a[i];
      double a1 = a[i + 1];
      double a2 = a[i + 2];
      out[o + i] = a0 * b[0] + a1 * b[3] + a2 * b[6];
      out[o + i + 1] = a0 * b[1] + a1 * b[4] + a2 * b[7];
      out[o + i + 2] = a0 * b[2] + a1 * b[5] + a2 * b[8];
    }
  }

  /** Rotation matrix of a rotation vector (Rodrigues). */
  static void rotation(double x, double y, double z, double[] out) {
    double square = x * x + y * y + z * z;
    double a;
    double b;
    if (square < 1e-2) {
      a = 1 - square / 6 * (1 - square / 20 * (1 - square / 42 * (1 - square / 72)));
      b = 0.5 * (1 - square / 12 * (1 - square / 30 * (1 - square / 56 * (1 - square / 90))));
    } else {
      double angle = Math.sqrt(square);
      double half = Math.sin(0.5 * angle) / angle;
      a = Math.sin(angle) / angle;
      b = 2 * half * half;
    }
    out[0] = 1 - b * (y * y + z * z);
    out[1] = b * x * y - a * z;
    out[2] = b * x * z + a * y;
    out[3] = b * x * y + a * z;
    out[4] = 1 - b * (x * x + z * z);
    out[5] = b * y * z - a * x;
    out[6] = b * x * z - a * y;
    out[7] = b * y * z + a * x;
    out[8] = 1 - b * (x * x + y * y);
  }
}
