package org.boleline.internal.coupled;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.NonPositiveDefiniteMatrixException;
import org.boleline.internal.path.RopePath;
import org.jspecify.annotations.Nullable;

/**
 * An arrangement whose stems carry their own weight alone: the way of the rope, how its points give
 * way together, and the stems' modes.
 *
 * <p>Only contacts that bear count as points; the end of the rope follows them as one point more.
 */
public final class RestingRig {
  /** Modes are taken until they make up this share of the give along the rope's pull. */
  public static final double GIVE_BY_MODES = 0.99;

  /** Faster modes, in rad/s, do not count: a rope pulls for far longer than they take. */
  public static final double FASTEST = 2 * Math.PI * 300;

  /** At most so many modes for each stem. */
  public static final int MOST_MODES = 12;

  private final int[] bearing;
  private final int[] stemOf;
  private final int[] nodeOf;
  private final double[] place;
  private final double[][] compliance;
  private final List<SmallMotions> stems = new ArrayList<>();
  private final double[] pull;
  private @Nullable Count count;

  /** How many modes of each stem count, and the least share of the give that they make up. */
  @SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
  private record Count(int[] modes, double share) {}

  private RestingRig(RigSolver solver, double[] density, double gravity, double[] down) {
    Rig rig = solver.rest().rig();
    RopePath path = rig.path();
    int all = path.contacts();
    int[] order = new int[all + 1];
    int n = 0;
    for (int j = 0; j < all; j++) {
      if (path.bears()[j]) {
        order[n++] = j;
      }
    }
    bearing = Arrays.copyOf(order, n);
    boolean device = path.end() == RopePath.End.DEVICE;
    order[n] = all;
    stemOf = new int[n + 1];
    nodeOf = new int[n + 1];
    place = new double[3 * n + 3];
    pull = new double[3 * n + 3];
    for (int j = 0; j <= n; j++) {
      boolean onStem = j < n || device;
      stemOf[j] = onStem ? rig.contactRod()[order[j]] : -1;
      nodeOf[j] = onStem ? rig.contactNode()[order[j]] : -1;
      double[] from = j < n ? path.place() : path.attachment();
      if (j < n || path.end() != RopePath.End.DOWN) {
        System.arraycopy(from, 3 * order[j], place, 3 * j, 3);
      } else {
        System.arraycopy(place, 3 * n - 3, place, 3 * n, 2);
        place[3 * n + 2] = down[2];
      }
      if (onStem) {
        System.arraycopy(path.force(), 3 * order[j], pull, 3 * j, 3);
      }
    }
    compliance = new double[3 * n + 3][3 * n + 3];
    int[] contacts = Arrays.copyOf(order, device ? n + 1 : n);
    for (int i = 0; i < rig.rods().length; i++) {
      stems.add(new SmallMotions(solver, i, density[i], gravity, carries(i) ? MOST_MODES : 0));
    }
    double[][] give = compliance(contacts);
    for (int a = 0; a < give.length; a++) {
      System.arraycopy(give[a], 0, compliance[a], 0, give.length);
    }
  }

  private boolean carries(int stem) {
    for (int on : stemOf) {
      if (on == stem) {
        return true;
      }
    }
    return false;
  }

  /**
   * Movement of some contacts for forces on them, m/N, whether they bear or not.
   *
   * @param contacts their indices; the device comes after all contacts
   * @return three rows for each
   */
  public double[][] compliance(int[] contacts) {
    int size = 3 * contacts.length;
    double[][] out = new double[size][size];
    for (SmallMotions stem : stems) {
      double[][] c = stem.compliance();
      for (int a = 0; a < size; a++) {
        for (int b = 0; b < size; b++) {
          out[a][b] += c[3 * contacts[a / 3] + a % 3][3 * contacts[b / 3] + b % 3];
        }
      }
    }
    return out;
  }

  private synchronized Count count() {
    if (count == null) {
      int[] modes = new int[stems.size()];
      double worst = 1;
      for (int i = 0; i < modes.length; i++) {
        if (carries(i)) {
          worst = Math.min(worst, choose(i, modes));
        }
      }
      count = new Count(modes, worst);
    }
    return count;
  }

  /** Chooses the count of modes of a stem; returns the share of the give that they make up. */
  private double choose(int stem, int[] modes) {
    double whole = 0;
    for (int a = 0; a < pull.length; a++) {
      for (int b = 0; b < pull.length; b++) {
        whole +=
            stemOf[a / 3] == stem && stemOf[b / 3] == stem
                ? pull[a] * compliance[a][b] * pull[b]
                : 0;
      }
    }
    SmallMotions motions = stems.get(stem);
    double sum = 0;
    int all = motions.circularFrequency().length;
    while (all > 0 && motions.circularFrequency()[all - 1] > FASTEST) {
      all--;
    }
    for (int k = 0; k < all; k++) {
      double work = 0;
      for (int a = 0; a < pull.length; a++) {
        if (stemOf[a / 3] == stem) {
          work += pull[a] * shape(stem, k, a / 3, a % 3);
        }
      }
      double w = motions.circularFrequency()[k];
      sum += work * work / (w * w);
      if (sum >= GIVE_BY_MODES * whole) {
        modes[stem] = k + 1;
        return Math.min(1, sum / whole);
      }
    }
    modes[stem] = all;
    return whole > 0 ? sum / whole : 1;
  }

  /**
   * Brings an arrangement to rest and looks at it.
   *
   * @param spec the arrangement
   * @param density mass of the wood of each stem for each volume, also where own weight is off
   * @param gravity acceleration of gravity
   * @param ground a point as low as the ground, where a tail that comes down ends
   * @return the resting rig, or null if the stems do not stand or the rope finds no path
   */
  public static @Nullable RestingRig of(
      RigSpec spec, double[] density, double gravity, double[] ground) {
    RigSolver solver = RigSolver.resting(spec);
    if (solver.ending() != RigSolver.Ending.STABLE || !solver.rest().ropeOnPresentShape()) {
      return null;
    }
    try {
      return new RestingRig(solver, density, gravity, ground);
    } catch (NonPositiveDefiniteMatrixException e) {
      return null;
    }
  }

  /** Indices of the contacts that bear, in order. */
  public int[] bearing() {
    return bearing;
  }

  /** Stem of each point and of the end; minus one for an end on no stem. */
  public int[] stemOf() {
    return stemOf;
  }

  /** Places of the points and the end. */
  public double[] place() {
    return place;
  }

  /** Movement of the points and the end for forces on them, m/N. */
  public double[][] compliance() {
    return compliance;
  }

  /** The stems' small movements. */
  public List<SmallMotions> stems() {
    return stems;
  }

  /** How many modes of each stem count. */
  public int[] modes() {
    return count().modes();
  }

  /** Least share, of all stems, of the give along the rope's pull that the modes make up. */
  public double shareByModes() {
    return count().share();
  }

  /** Node of each point on a stem; minus one for points on other stems. */
  public int[] nodesOn(int stem) {
    int[] out = new int[stemOf.length];
    for (int j = 0; j < out.length; j++) {
      out[j] = stemOf[j] == stem ? nodeOf[j] : -1;
    }
    return out;
  }

  /** Movement of point j in mode k of a stem. */
  public double shape(int stem, int k, int point, int d) {
    if (stemOf[point] != stem) {
      return 0;
    }
    int contact = point < bearing.length ? bearing[point] : contacts();
    return stems.get(stem).shape()[k][3 * contact + d];
  }

  private int contacts() {
    return stems.get(0).compliance().length / 3 - 1;
  }
}
