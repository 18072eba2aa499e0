package org.boleline.internal.coupled;

import java.util.Arrays;
import java.util.TreeSet;
import org.boleline.internal.path.RopePath;
import org.boleline.internal.rod.Rod;
import org.boleline.internal.rod.RodState;

/** Cuts the stems of a rig into cells, and makes the cells finer where the solution asks for it. */
final class Mesh {
  /** A cell is fine enough if its curvature's highest order turns it by less than this, rad. */
  static final double FINE = 2e-4;

  /** The same as a share of all that the stem turns, for small loads. */
  static final double FINE_SHARE = 8e-3;

  /** Cells are at most the length over this: fine enough at once for most stems. */
  private static final double LEAST_CELLS = 5.5;

  private static final double SHORTEST = 1e-5;

  private final RigSpec spec;
  private final double[][] nodes;

  private Mesh(RigSpec spec, double[][] nodes) {
    this.spec = spec;
    this.nodes = nodes;
  }

  /** The first mesh: a node wherever something changes abruptly, and no long cells. */
  static Mesh of(RigSpec spec) {
    double[][] nodes = new double[spec.stems().length][];
    for (int i = 0; i < nodes.length; i++) {
      StemSpec stem = spec.stems()[i];
      TreeSet<Double> stations = new TreeSet<>();
      stations.add(0.0);
      stations.add(stem.length());
      for (double at : stem.breaks()) {
        stations.add(at);
      }
      for (double at : stem.massAt()) {
        stations.add(at);
      }
      for (int j = 0; j < spec.contactStem().length; j++) {
        if (spec.contactStem()[j] == i) {
          stations.add(spec.contactAt()[j]);
        }
      }
      double[] cuts = stations.stream().mapToDouble(Double::doubleValue).toArray();
      double longest = stem.length() / LEAST_CELLS;
      nodes[i] = divided(cuts, c -> (int) Math.ceil((cuts[c + 1] - cuts[c]) / longest - 1e-9));
    }
    return new Mesh(spec, nodes);
  }

  private interface Pieces {
    int of(int cell);
  }

  private static double[] divided(double[] cuts, Pieces pieces) {
    double[] out = new double[cuts.length];
    int n = 0;
    for (int c = 0; c < cuts.length; c++) {
      if (n == out.length) {
        out = Arrays.copyOf(out, 2 * n);
      }
      out[n++] = cuts[c];
      int parts = c + 1 < cuts.length ? pieces.of(c) : 1;
      for (int i = 1; i < parts; i++) {
        if (n == out.length) {
          out = Arrays.copyOf(out, 2 * n);
        }
        out[n++] = cuts[c] + (cuts[c + 1] - cuts[c]) * i / parts;
      }
    }
    return Arrays.copyOf(out, n);
  }

  /** Largest roughness of any cell of a state, rad. */
  static double roughness(RodState[] rods) {
    double most = 0;
    for (RodState rod : rods) {
      for (int c = 0; c < rod.rod().nodes() - 1; c++) {
        most = Math.max(most, rod.roughness(c));
      }
    }
    return most;
  }

  /** A mesh whose cells rougher than a limit are divided. */
  Mesh finer(RodState[] rods, double limit) {
    double[][] next = new double[nodes.length][];
    for (int i = 0; i < nodes.length; i++) {
      RodState rod = rods[i];
      double[] cuts = nodes[i];
      next[i] =
          divided(
              cuts,
              c -> {
                double rough = rod.roughness(c);
                boolean divide = rough > limit && cuts[c + 1] - cuts[c] > SHORTEST;
                return divide ? (rough > 40 * limit ? 4 : 2) : 1;
              });
    }
    return new Mesh(spec, next);
  }

  /** A mesh with every cell halved. */
  Mesh halved() {
    double[][] next = new double[nodes.length][];
    for (int i = 0; i < nodes.length; i++) {
      next[i] = divided(nodes[i], c -> 2);
    }
    return new Mesh(spec, next);
  }

  /** The rig on this mesh. */
  Rig rig() {
    int n = nodes.length;
    Rod[] rods = new Rod[n];
    boolean[] standing = new boolean[n];
    for (int i = 0; i < n; i++) {
      StemSpec stem = spec.stems()[i];
      double[] nodeWeight = new double[nodes[i].length];
      for (int m = 0; m < stem.massAt().length; m++) {
        nodeWeight[Arrays.binarySearch(nodes[i], stem.massAt()[m])] += stem.massWeight()[m];
      }
      rods[i] =
          new Rod(
              stem.base(),
              nodes[i],
              stem.profile(),
              stem.e(),
              stem.g(),
              stem.weightDensity(),
              stem.rootStiffness(),
              nodeWeight);
      standing[i] = stem.standing();
      if (standing[i]) {
        rods[i].takeAsStanding();
      }
    }
    int contacts = spec.contactStem().length;
    int[] contactNode = new int[contacts];
    for (int j = 0; j < contacts; j++) {
      contactNode[j] = rods[spec.contactStem()[j]].nodeIndex(spec.contactAt()[j]);
    }
    double[] ropeWeight = spec.ropeWeight().clone();
    for (int j = 0; j < ropeWeight.length; j++) {
      ropeWeight[j] /= spec.load();
    }
    RopePath path =
        new RopePath(
            spec.law(),
            spec.parameter(),
            spec.sling(),
            ropeWeight,
            spec.raising(),
            spec.loadDirection(),
            spec.end());
    if (spec.end() == RopePath.End.POINT) {
      System.arraycopy(spec.endPoint(), 0, path.attachment(), 3 * spec.law().length, 3);
    }
    return new Rig(
        rods, standing, spec.contactStem(), contactNode, spec.contactArm(), path, spec.load());
  }
}
