package org.boleline.internal.coupled;

import org.boleline.internal.path.RopePath;
import org.boleline.internal.rod.RodState;

/**
 * Shape, rope and residual of a rig at some curvature and some share of the load.
 *
 * <p>Not thread-safe: a solver's scratch pad.
 */
public final class RigState {
  final Rig rig;
  final RodState[] rods;
  final double[] y;
  final double[] residual;
  double loadFactor;
  double gravity;

  private final int[] offset;
  private final double[] forces;
  private final double[] attachmentChange;
  private final double[] forceChange;

  /** Makes the state of a rig in its given shape. */
  RigState(Rig rig) {
    this.rig = rig;
    int n = rig.rods().length;
    rods = new RodState[n];
    offset = new int[n];
    int size = 0;
    for (int i = 0; i < n; i++) {
      rods[i] = new RodState(rig.rods()[i]);
      offset[i] = size;
      size += rig.rods()[i].unknowns();
    }
    y = new double[size];
    residual = new double[size];
    forces = new double[rig.path().force().length];
    attachmentChange = new double[rig.path().attachment().length];
    forceChange = new double[rig.path().force().length];
  }

  /** The stems. */
  public RodState[] rods() {
    return rods;
  }

  /** The rope. */
  public RopePath path() {
    return rig.path();
  }

  /** The rig. */
  public Rig rig() {
    return rig;
  }

  /** Share of the full load that acts. */
  public double loadFactor() {
    return loadFactor;
  }

  private double standingOf(int i) {
    return rig.standing()[i] ? 1 : 0;
  }

  private double gravityOf(int i) {
    return rig.standing()[i] ? 1 : gravity;
  }

  /**
   * Computes shape, rope and residual for the present vector.
   *
   * @return false if the rope found no path
   */
  boolean evaluate() {
    for (int i = 0; i < rods.length; i++) {
      rods[i].take(y, offset[i]);
      rods[i].forward();
      rods[i].clearLoads();
    }
    if (loadFactor > 0) {
      attach();
      if (!rig.path().solve()) {
        return false;
      }
      RopePath path = rig.path();
      double load = rig.load() * loadFactor;
      for (int j = 0; j < rig.contactRod().length; j++) {
        for (int d = 3 * j; d < 3 * j + 3; d++) {
          forces[d] = load * path.force()[d];
        }
        rods[rig.contactRod()[j]].addLoad(
            rig.contactNode()[j], path.attachment(), 3 * j, forces, 3 * j);
      }
    }
    for (int i = 0; i < rods.length; i++) {
      rods[i].backward(gravityOf(i));
      rods[i].residual(standingOf(i), y, residual, offset[i]);
    }
    return true;
  }

  /**
   * Finds the way of the rope over the stems as they stand at the last evaluation.
   *
   * @return false if the rope found no path
   */
  boolean ropeOnPresentShape() {
    attach();
    return rig.path().solve();
  }

  /** Puts the attachments of the rope where the stems have them. */
  private void attach() {
    for (int j = 0; j < rig.contactRod().length; j++) {
      rods[rig.contactRod()[j]].point(
          rig.contactNode()[j], rig.contactArm()[j], rig.path().attachment(), 3 * j);
    }
  }

  /** Linear response of the residual to a change of the vector, at the last evaluation. */
  void tangent(double[] dy, double[] out) {
    for (int i = 0; i < rods.length; i++) {
      rods[i].changeForward(dy, offset[i]);
      rods[i].clearLoadChanges();
    }
    if (loadFactor > 0) {
      RopePath path = rig.path();
      int n = rig.contactRod().length;
      for (int j = 0; j < n; j++) {
        rods[rig.contactRod()[j]].changeOfPoint(
            rig.contactNode()[j], path.attachment(), 3 * j, attachmentChange, 3 * j);
      }
      path.change(attachmentChange);
      double load = rig.load() * loadFactor;
      for (int j = 0; j < n; j++) {
        for (int d = 3 * j; d < 3 * j + 3; d++) {
          forceChange[d] = load * path.forceChange()[d];
        }
        rods[rig.contactRod()[j]].addLoadChange(
            rig.contactNode()[j],
            path.attachment(),
            3 * j,
            forces,
            3 * j,
            attachmentChange,
            forceChange);
      }
    }
    for (int i = 0; i < rods.length; i++) {
      rods[i].changeBackward(gravityOf(i), dy, out, offset[i]);
    }
  }

  /** Writes the vector that a moment, the same everywhere and in all directions, would bring. */
  void evenBending(double[] out) {
    for (int i = 0; i < rods.length; i++) {
      rods[i].evenBending(out, offset[i]);
    }
  }

  /** Largest unbalanced moment on any stem, N.m. */
  double unbalancedMoment() {
    double most = 0;
    for (int i = 0; i < rods.length; i++) {
      most = Math.max(most, rods[i].unbalancedMoment(standingOf(i)));
    }
    return most;
  }

  /**
   * Largest unbalanced moment over the largest that the applied loads could have: the full load and
   * the weight of all stems, at the length of the longest.
   */
  public double unbalancedShare() {
    double applied = rig.load();
    double longest = 0;
    for (RodState state : rods) {
      applied += state.rod().wholeWeight();
      longest = Math.max(longest, state.rod().length());
    }
    return unbalancedMoment() / (applied * longest);
  }

  /** Largest rotation of any node against the given shape, rad. */
  double greatestTurn() {
    double most = 0;
    for (RodState rod : rods) {
      most = Math.max(most, rod.greatestTurn());
    }
    return most;
  }

  double greatestTurnFrom(RigState other) {
    double most = 0;
    for (int i = 0; i < rods.length; i++) {
      most = Math.max(most, rods[i].greatestTurnFrom(other.rods[i]));
    }
    return most;
  }
}
