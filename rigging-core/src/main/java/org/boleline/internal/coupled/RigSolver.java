package org.boleline.internal.coupled;

import org.boleline.internal.path.RopePath;
import org.boleline.internal.rod.Rod;

/**
 * Finds the state that the loading leads to.
 *
 * <p>Own weight comes first, then the rig's load from nothing to its full size. If the full load
 * leaves ample stiffness and little rotation, one solve is enough: the loading path is then without
 * turning points. Otherwise the path is followed in steps, the least stiffness ratio is tested at
 * each, and the load at which it vanishes is searched for.
 */
public final class RigSolver {
  /** How a solve ended. */
  public enum Ending {
    /** A stable state at the full load was found. */
    STABLE,
    /** The path loses stability before the full load. */
    UNSTABLE,
    /** The rope pulls two neighbouring points together: the plan has no meaning for the model. */
    TOGETHER,
    /** A leg of the rope weighs more than its tension holds up. */
    TOO_HEAVY,
    /** The cells are too coarse to go on; only within the solver. */
    TOO_COARSE,
    /** The solver gave up. */
    NOT_SOLVED
  }

  private static final double CONVERGED = 1e-12;

  /** Good enough where a contact's turn is next to nothing: friction has a kink at zero turn. */
  private static final double STALLED = 2e-10;

  private static final double ACCURACY = 1e-7;
  private static final double AMPLE_STIFFNESS = 0.5;
  private static final double LITTLE_TURN = 0.35;
  private static final double STEP_TURN = 0.2;
  private static final int MESHES = 14;
  private static final int MOST_UNKNOWNS = 4000;
  private static final int MOST_STEPS = 1500;
  private static final int FEW_STEPS = 200;

  private final Rig rig;
  private final int mostSteps;
  private final RigState state;
  private final RigState rest;
  private final Krylov krylov;
  private final double[] step;
  private final double reference;
  private double stiffness = 1;
  private double lostAt = Double.NaN;
  private boolean lostToOwnWeight;
  private String reason = "";
  private Ending ending = Ending.NOT_SOLVED;
  private int together = -1;
  private int tooHeavy = -1;

  /**
   * Solves an arrangement at its full load, with cells as fine as the solution asks for.
   *
   * @param spec the arrangement
   * @return the solver, with the state found and how it ended
   */
  public static RigSolver solved(RigSpec spec) {
    return solved(spec, MOST_STEPS);
  }

  /**
   * Solves an arrangement with a limited effort, for searches that may go without an answer: where
   * the loading path asks for many small steps it gives up early.
   *
   * @param spec the arrangement
   * @return the solver, with the state found and how it ended; it keeps to its limit
   */
  public static RigSolver solvedIfEasy(RigSpec spec) {
    return solved(spec, FEW_STEPS);
  }

  /**
   * Brings the stems of an arrangement to rest under own weight alone.
   *
   * @param spec the arrangement
   * @return the solver, whose state and {@link #rest()} are at rest, and how it ended
   */
  public static RigSolver resting(RigSpec spec) {
    Mesh mesh = Mesh.of(spec);
    RigSolver solver = new RigSolver(mesh.rig(), MOST_STEPS);
    solver.ending = solver.ownWeight();
    for (int pass = 0; pass < MESHES && !solver.isFine(); pass++) {
      if (solver.rig.unknowns() > MOST_UNKNOWNS) {
        break;
      }
      mesh = mesh.finer(solver.state.rods(), solver.limit());
      solver = new RigSolver(mesh.rig(), MOST_STEPS);
      solver.ending = solver.ownWeight();
    }
    return solver;
  }

  private static RigSolver solved(RigSpec spec, int mostSteps) {
    Mesh mesh = Mesh.of(spec);
    RigSolver solver = new RigSolver(mesh.rig(), mostSteps);
    solver.solve();
    boolean halved = false;
    for (int pass = 0; pass < MESHES && !solver.isFine(); pass++) {
      double limit = solver.ending == Ending.TOO_COARSE ? 0.2 * Mesh.FINE : solver.limit();
      boolean rough = Mesh.roughness(solver.state.rods()) > limit;
      if (solver.rig.unknowns() > MOST_UNKNOWNS || (!rough && halved)) {
        break;
      }
      halved |= !rough;
      mesh = rough ? mesh.finer(solver.state.rods(), limit) : mesh.halved();
      if (mostSteps < MOST_STEPS && solver.ending == Ending.NOT_SOLVED) {
        return solver;
      }
      solver = new RigSolver(mesh.rig(), mostSteps);
      solver.solve();
    }
    if (solver.ending == Ending.TOO_COARSE) {
      solver.ending = Ending.NOT_SOLVED;
      solver.reason = "the stem bends too sharply for " + solver.rig.unknowns() + " unknowns";
    }
    return solver;
  }

  private boolean isFine() {
    return switch (ending) {
      case TOGETHER, TOO_HEAVY -> true;
      case NOT_SOLVED, TOO_COARSE -> false;
      case STABLE, UNSTABLE -> Mesh.roughness(state.rods()) <= limit();
    };
  }

  /**
   * Largest roughness of a cell that still gives the wanted accuracy: a share of all turning, and
   * less where little stiffness is left and errors grow.
   */
  private double limit() {
    double turn = state.greatestTurn();
    double sharpness = Math.max(0.02, Math.min(1, 5 * stiffness));
    return Math.max(1e-12, sharpness * Math.min(Mesh.FINE, Mesh.FINE_SHARE * turn));
  }

  private RigSolver(Rig rig, int mostSteps) {
    this.rig = rig;
    this.mostSteps = mostSteps;
    state = new RigState(rig);
    rest = new RigState(rig);
    int n = rig.unknowns();
    krylov = new Krylov(n);
    step = new double[n];
    double most = 0;
    for (Rod rod : rig.rods()) {
      most = Math.max(most, rod.bendingUnder(rig.load()));
    }
    reference = most;
  }

  /** The state found. */
  public RigState state() {
    return state;
  }

  /** The state under own weight alone. */
  public RigState rest() {
    return rest;
  }

  /** Least stiffness ratio of the state found. */
  public double stiffness() {
    return stiffness;
  }

  /** Share of the load (or of own weight) at which stability is lost. */
  public double lostAt() {
    return lostAt;
  }

  /** Whether own weight alone already loses stability. */
  public boolean lostToOwnWeight() {
    return lostToOwnWeight;
  }

  /** Why the solver gave up. */
  public String reason() {
    return reason;
  }

  /** The contact that the rope pulls to the one before it; see {@link RopePath#together()}. */
  public int together() {
    return together;
  }

  /** The contact behind which a leg is too heavy; see {@link RopePath#tooHeavy()}. */
  public int tooHeavy() {
    return tooHeavy;
  }

  /** How the solve ended. */
  public Ending ending() {
    return ending;
  }

  private void solve() {
    if (direct()) {
      ending = Ending.STABLE;
    } else {
      Ending own = ownWeight();
      ending = own == Ending.STABLE ? follow(1) : own;
    }
    if (ending == Ending.STABLE) {
      letSlackSlingsGo();
    }
  }

  /**
   * Lets go of the points that friction alone keeps bearing, if there is a stable state without.
   */
  private void letSlackSlingsGo() {
    int contact = -1;
    while (true) {
      Place before = place();
      contact = rig.path().letGo(contact + 1);
      if (contact < 0) {
        return;
      }
      double ratio = newton(20) ? krylov.leastEigenvalue(state, ACCURACY) : Double.NaN;
      if (ratio > 0.5 * stiffness) {
        stiffness = ratio;
      } else {
        backTo(before);
        state.evaluate();
      }
    }
  }

  /**
   * Own weight and full load at once, from the given shape; holds only if little turns and ample
   * stiffness is left, so that nothing can have been lost on the way.
   */
  private boolean direct() {
    rest.evaluate();
    state.gravity = 1;
    rest.gravity = 1;
    if (anyBendsUnderWeight()) {
      state.loadFactor = 0;
      if (!newton(20) || state.greatestTurnFrom(rest) > LITTLE_TURN) {
        return false;
      }
      noteRest();
    }
    state.loadFactor = 1;
    if (!newton(20) || state.greatestTurnFrom(rest) > LITTLE_TURN) {
      return false;
    }
    stiffness = krylov.leastEigenvalue(state, ACCURACY);
    return stiffness > AMPLE_STIFFNESS;
  }

  private boolean anyBendsUnderWeight() {
    for (int i = 0; i < rig.rods().length; i++) {
      if (!rig.standing()[i] && rig.rods()[i].hasWeight()) {
        return true;
      }
    }
    return false;
  }

  private void noteRest() {
    rest.gravity = 1;
    rest.loadFactor = 0;
    System.arraycopy(state.y, 0, rest.y, 0, rest.y.length);
    rest.evaluate();
  }

  /** Brings the stems to rest under own weight, with care. */
  private Ending ownWeight() {
    java.util.Arrays.fill(state.y, 0);
    state.loadFactor = 0;
    state.gravity = 1;
    Ending ending;
    if (anyBendsUnderWeight()) {
      ending = stepwise(0, 1, true, mostSteps);
    } else {
      state.evaluate();
      stiffness = krylov.leastEigenvalue(state, ACCURACY);
      ending = stiffness > 0 ? Ending.STABLE : Ending.UNSTABLE;
      lostAt = stiffness > 0 ? lostAt : 0;
    }
    lostToOwnWeight = ending == Ending.UNSTABLE;
    noteRest();
    return ending;
  }

  /**
   * Goes from rest to a share of the full load.
   *
   * @param factor share of the load, above zero
   */
  public Ending follow(double factor) {
    state.gravity = 1;
    System.arraycopy(rest.y, 0, state.y, 0, rest.y.length);
    return stepwise(0, factor, false, mostSteps);
  }

  /** A state on the loading path to come back to. */
  @SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
  public record Place(double[] vector, RopePath.Start rope, double loadFactor) {}

  /** The present state, to come back to. */
  public Place place() {
    return new Place(state.y.clone(), rig.path().start(), state.loadFactor);
  }

  /** Takes up an earlier state of this solver, not yet evaluated. */
  private void backTo(Place place) {
    System.arraycopy(place.vector(), 0, state.y, 0, state.y.length);
    rig.path().startFrom(place.rope());
    state.loadFactor = place.loadFactor();
  }

  /**
   * Goes along the loading path from a place on it to a greater share of the full load.
   *
   * @param place a state of this solver on the path
   * @param factor share of the full load, above that of the place
   * @return how it ended; given up early where many small steps would be needed
   */
  public Ending onward(Place place, double factor) {
    backTo(place);
    return stepwise(place.loadFactor(), factor, false, FEW_STEPS);
  }

  /**
   * Goes from the present state to another share of the full load, if a small step leads there.
   *
   * @param factor share of the full load, above zero
   * @return false if not; the present state is kept then
   */
  public boolean step(double factor) {
    Place before = place();
    RigState last = new RigState(rig);
    System.arraycopy(state.y, 0, last.y, 0, last.y.length);
    for (int i = 0; i < last.rods.length; i++) {
      copyShape(i, last);
    }
    state.loadFactor = factor;
    if (newton(12)) {
      if (state.greatestTurnFrom(rest) < LITTLE_TURN) {
        return true;
      }
      if (state.greatestTurnFrom(last) < STEP_TURN
          && krylov.leastEigenvalue(state, ACCURACY) > 0
          && Mesh.roughness(state.rods()) < 5 * Mesh.FINE) {
        return true;
      }
    }
    backTo(before);
    state.evaluate();
    return false;
  }

  /** Whether the present state has ample stiffness, so that nothing was lost on the way to it. */
  public boolean isAmple() {
    return krylov.leastEigenvalue(state, ACCURACY) > AMPLE_STIFFNESS;
  }

  private void set(boolean weight, double value) {
    if (weight) {
      state.gravity = value;
    } else {
      state.loadFactor = value;
    }
  }

  /** Follows the path in steps, testing stability at each. */
  private Ending stepwise(double from, double target, boolean weight, int most) {
    double at = from;
    set(weight, from);
    if (!state.evaluate()) {
      reason = "no rope path at rest";
      return Ending.NOT_SOLVED;
    }
    double ratio = krylov.leastEigenvalue(state, ACCURACY);
    if (!(ratio > 0)) {
      lostAt = from;
      return Ending.UNSTABLE;
    }
    RigState last = new RigState(rig);
    double[] previous = new double[state.y.length];
    double[] here = state.y.clone();
    RopePath.Start rope = rig.path().start();
    double before = 0;
    boolean hasBefore = false;
    double increment = 0.1 * (target - from);
    double least = 1e-10 * target;
    int steps = 0;
    while (at < target) {
      if (++steps > most) {
        reason = "more than " + most + " steps along the loading path";
        return Ending.NOT_SOLVED;
      }
      double next = Math.min(target, at + increment);
      if (target - next < 1e-9 * target) {
        next = target;
      }
      System.arraycopy(here, 0, last.y, 0, here.length);
      for (int i = 0; i < last.rods.length; i++) {
        copyShape(i, last);
      }
      if (hasBefore) {
        double reach = (next - at) / (at - before);
        for (int i = 0; i < here.length; i++) {
          state.y[i] = here[i] + reach * (here[i] - previous[i]);
        }
      } else {
        System.arraycopy(here, 0, state.y, 0, here.length);
      }
      set(weight, next);
      rig.path().startFrom(rope);
      boolean found = newton(14) && turnFrom(last) < STEP_TURN;
      double nextRatio = found ? krylov.leastEigenvalue(state, ACCURACY) : Double.NaN;
      if (found && nextRatio > 0 && (nextRatio > 0.4 * ratio || ratio < 1e-6)) {
        System.arraycopy(here, 0, previous, 0, here.length);
        System.arraycopy(state.y, 0, here, 0, here.length);
        rope = rig.path().start();
        if (Mesh.roughness(state.rods()) > 5 * Mesh.FINE) {
          return Ending.TOO_COARSE;
        }
        before = at;
        hasBefore = true;
        at = next;
        ratio = nextRatio;
        increment *= 1.5;
        continue;
      }
      if (found && nextRatio <= 0 && next - at <= 0.02 * target) {
        lostAt = crossing(weight, at, ratio, next, nextRatio, here);
        return Ending.UNSTABLE;
      }
      increment = 0.5 * (next - at);
      together = Math.max(rig.path().together(), rig.path().conflict());
      tooHeavy = rig.path().tooHeavy();
      System.arraycopy(here, 0, state.y, 0, here.length);
      set(weight, at);
      rig.path().startFrom(rope);
      state.evaluate();
      if (increment < (at == 0 ? 1e-3 : 1e-5) * target) {
        if (tooHeavy >= 0) {
          return Ending.TOO_HEAVY;
        }
        if (together >= 0) {
          return Ending.TOGETHER;
        }
      }
      if (increment < least) {
        if (ratio < 0.05) {
          lostAt = at;
          return Ending.UNSTABLE;
        }
        reason = "the loading path could not be followed beyond " + at / target + " of the load";
        return Ending.NOT_SOLVED;
      }
    }
    stiffness = ratio;
    return Ending.STABLE;
  }

  private void copyShape(int i, RigState last) {
    last.rods[i].take(last.y, offsetOf(i));
    last.rods[i].forward();
  }

  private int offsetOf(int i) {
    int offset = 0;
    for (int j = 0; j < i; j++) {
      offset += rig.rods()[j].unknowns();
    }
    return offset;
  }

  private double turnFrom(RigState last) {
    return state.greatestTurnFrom(last);
  }

  /** Load at which the least stiffness ratio passes through zero, by bracketing (Illinois). */
  private double crossing(
      boolean weight, double low, double lowRatio, double high, double highRatio, double[] start) {
    double a = low;
    double fa = lowRatio;
    double b = high;
    double fb = highRatio;
    int side = 0;
    for (int i = 0; i < 60 && b - a > 1e-12 * b; i++) {
      double c = (fa * b - fb * a) / (fa - fb);
      if (!(c > a && c < b)) {
        c = 0.5 * (a + b);
      }
      System.arraycopy(start, 0, state.y, 0, start.length);
      set(weight, c);
      if (!newton(30)) {
        b = c;
        fb = -Math.abs(fa);
        continue;
      }
      double fc = krylov.leastEigenvalue(state, 1e-11);
      if (fc > 0) {
        a = c;
        fa = fc;
        fb = side == 1 ? 0.5 * fb : fb;
        side = 1;
      } else {
        b = c;
        fb = fc;
        fa = side == -1 ? 0.5 * fa : fa;
        side = -1;
      }
      if (Math.abs(fc) < 1e-11) {
        return c;
      }
    }
    return 0.5 * (a + b);
  }

  /** Newton's method from the present vector; true if balance was found. */
  private boolean newton(int most) {
    if (!state.evaluate()) {
      return false;
    }
    double size = Krylov.norm(state.residual);
    double stale = Double.POSITIVE_INFINITY;
    for (int i = 0; i < most; i++) {
      double scale = Math.max(Krylov.norm(state.y), size);
      if (scale == 0 || size <= 1e-15 * Math.max(scale, reference)) {
        return true;
      }
      double relative = size / scale;
      if (relative < CONVERGED || (relative < STALLED && size > 0.3 * stale)) {
        return true;
      }
      stale = size;
      double eta = Math.max(1e-12 / relative, Math.min(0.1, 0.3 * relative));
      krylov.solve(state, state.residual, Math.min(eta, 0.5), step);
      double fraction = 1;
      double[] from = state.y.clone();
      double old = size;
      boolean better = false;
      for (int halving = 0; halving < 12; halving++) {
        for (int j = 0; j < from.length; j++) {
          state.y[j] = from[j] - fraction * step[j];
        }
        if (state.evaluate()) {
          size = Krylov.norm(state.residual);
          if (Double.isFinite(size) && (size < (1 - 0.1 * fraction) * old || relative < 1e-9)) {
            better = true;
            break;
          }
        }
        fraction *= 0.5;
      }
      if (!better) {
        System.arraycopy(from, 0, state.y, 0, from.length);
        return state.evaluate() && relative < STALLED;
      }
    }
    return size <= STALLED * Math.max(Krylov.norm(state.y), 1e-300);
  }
}
