package org.boleline.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.boleline.explain.Caution;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.internal.coupled.RigSolver;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;

/**
 * Slow, steady rigging of a plan: for every arrangement the state that the loading leads to.
 *
 * <p>Rope and stems are solved together, in the loaded, bent shape. Stems are slender rods in
 * space, geometrically exact; the rope is weightless, does not stretch in this analysis, and slips
 * with the friction of each contact's hardware. The loading path is followed from rest where that
 * could matter, and an unstable state is never given as a solution.
 *
 * <p>Thread-safe; keeps no state.
 */
public final class Statics {
  /** Largest unbalanced force of a solution over the load, and moment over load times length. */
  private static final double BALANCED = 1e-9;

  private Statics() {}

  /**
   * Analyses every arrangement of a plan.
   *
   * @equation D k = Q^T m - m_standing along every stem; sum of both legs' tensions at every
   *     contact (STA-1 to STA-6, docs/theory/statics.md)
   * @validity slow, steady motion; slender stems; linear elastic wood, also beyond its strength
   *     (then a caution says so); rope taut, with weight where the plan says so
   * @source Kirchhoff's rod and Euler-Eytelwein friction; see docs/theory/statics.md
   * @accuracy forces and movements to about 1e-7 of the load and of the tip's movement
   * @param plan the plan, not null
   * @return one result for each arrangement, in the plan's order
   * @throws PlanRefusedException if in some arrangement the rope pulls two neighbouring points
   *     together, which has no meaning for points without size, or a leg whose weight counts weighs
   *     more than its tension holds up
   */
  public static StaticResult analyse(Plan plan) {
    return analyse(plan, () -> false);
  }

  /**
   * Analyses every arrangement of a plan, unless someone who waits for it gives up.
   *
   * @param plan the plan, not null
   * @param cancelled asked before each arrangement, from the calling thread; not null
   * @return as {@link #analyse(Plan)}
   * @throws PlanRefusedException as {@link #analyse(Plan)}
   * @throws CancellationException if it was cancelled
   */
  public static StaticResult analyse(Plan plan, BooleanSupplier cancelled) {
    Resolved resolved = new Resolved(plan);
    List<ArrangementResult> results = new ArrayList<>();
    List<Refusal> refusals = new ArrayList<>();
    for (int i = 0; i < plan.arrangements().size(); i++) {
      if (cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      try {
        results.add(analyse(resolved, i));
      } catch (PlanRefusedException e) {
        refusals.addAll(e.refusals());
      }
    }
    if (!refusals.isEmpty()) {
      throw new PlanRefusedException(refusals);
    }
    return new StaticResult(plan, results, Cautions.ofPlan(plan));
  }

  /**
   * Analyses one arrangement of a plan.
   *
   * @param plan the plan, not null
   * @param arrangement the id of the arrangement, not null
   * @return its result; empty if the plan has no such arrangement
   * @throws PlanRefusedException as {@link #analyse(Plan)}
   */
  public static Optional<ArrangementResult> analyse(Plan plan, String arrangement) {
    for (int i = 0; i < plan.arrangements().size(); i++) {
      if (plan.arrangements().get(i).id().equals(arrangement)) {
        return Optional.of(analyse(new Resolved(plan), i));
      }
    }
    return Optional.empty();
  }

  private static ArrangementResult analyse(Resolved resolved, int index) {
    Arrangement arrangement = resolved.plan.arrangements().get(index);
    if (arrangement.motion() != Motion.HELD) {
      return end(resolved, index, arrangement.motion());
    }
    ArrangementResult lower = end(resolved, index, Motion.LOWERING);
    ArrangementResult upper = end(resolved, index, Motion.RAISING);
    if (lower instanceof Solution run && upper instanceof Solution rise) {
      List<Caution> cautions = new ArrayList<>(run.cautions());
      for (Caution caution : rise.cautions()) {
        if (!cautions.contains(caution)) {
          cautions.add(caution);
        }
      }
      cautions.add(Cautions.held(index));
      return run.with(rise, cautions);
    }
    return lower instanceof Solution ? upper : lower;
  }

  private static ArrangementResult end(Resolved resolved, int index, Motion motion) {
    Arrangement arrangement = resolved.plan.arrangements().get(index);
    RigSolver solver = RigSolver.solved(resolved.spec(arrangement, motion));
    String id = arrangement.id();
    return switch (solver.ending()) {
      case STABLE -> {
        double unbalanced = residual(solver);
        if (unbalanced <= BALANCED) {
          Solution found = new Extraction(resolved, index, motion, solver).solution();
          unbalanced = Math.max(unbalanced, found.residualForceRatio());
          if (unbalanced <= BALANCED) {
            yield found;
          }
        }
        yield new NotSolved(id, "balance was not met closely enough", unbalanced, List.of());
      }
      case UNSTABLE ->
          new LostStability(
              id,
              solver.lostToOwnWeight() ? 0 : solver.lostAt(),
              solver.lostToOwnWeight() ? solver.lostAt() : 1,
              List.of());
      case TOGETHER -> throw together(arrangement, index, solver.together());
      case TOO_HEAVY -> throw tooHeavy(index, solver.tooHeavy());
      case TOO_COARSE, NOT_SOLVED ->
          new NotSolved(id, solver.reason(), residual(solver), List.of());
    };
  }

  private static PlanRefusedException together(Arrangement arrangement, int index, int contact) {
    boolean end = contact == arrangement.contacts().size();
    String place = "/arrangements/" + index + (end ? "/tail" : "/contacts/" + contact);
    return new PlanRefusedException(
        List.of(
            new Refusal(
                Refusal.Code.SAME_PLACE,
                place,
                "neighbouring points of the rope that stay apart under the load",
                "points that the rope pulls together: shorten the slings or move the points"
                    + " apart")));
  }

  private static PlanRefusedException tooHeavy(int index, int contact) {
    return new PlanRefusedException(
        List.of(
            new Refusal(
                Refusal.Code.CONFLICT,
                "/arrangements/" + index + "/contacts/" + contact + "/ropeWeight",
                "a leg that its tension holds up nearly straight",
                "a leg that weighs more than that: leave its weight out")));
  }

  private static double residual(RigSolver solver) {
    double share = solver.state().unbalancedShare();
    return Double.isFinite(share) ? share : Double.MAX_VALUE;
  }
}
