package org.boleline.study;

import java.util.List;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropNotAnalysed;
import org.boleline.drop.LetRun;
import org.boleline.drop.RopeCatch;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Plan;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * How far the rope must run so that a catch keeps to a limit.
 *
 * @param arrangement id of an arrangement with a drop
 * @param keep an upper limit on a reading of the rope made fast: its load leg, the force on a point
 *     or the base moment of the rope, above zero
 */
public record RunNeeded(String arrangement, Keep keep) implements Study {
  /**
   * Makes the question.
   *
   * @param arrangement id of an arrangement with a drop
   * @param keep an upper limit on a reading of the rope made fast, above zero
   * @throws IllegalArgumentException if the limit is on another reading, or not above zero
   */
  public RunNeeded {
    String pointer = keep.reading().pointer();
    boolean fits =
        pointer.equals("/drop/locked/loadLeg")
            || pointer.startsWith("/drop/locked/contacts/")
            || pointer.startsWith("/drop/locked/stems/");
    if (!fits || keep.sense() != Keep.Sense.AT_MOST) {
      throw new IllegalArgumentException(
          "reading: wants a force or moment of the rope made fast, at most, got " + pointer);
    }
    keep.limit().requireAboveZero("atMost", keep.reading().kindOrNull());
  }

  @Override
  public String kind() {
    return "runNeeded";
  }

  /**
   * The answer.
   *
   * @param study what was asked
   * @param run how far it runs, zero if the rope made fast keeps to the limit; none if it never
   *     stops
   * @param slipTension tension of the leg into the device at which it must slip
   * @param clearance room that the piece needs below where it starts, without any margin
   */
  public record Answer(RunNeeded study, Found run, Found slipTension, Found clearance)
      implements StudyAnswer {}

  /**
   * Finds the run.
   *
   * @equation T = T_locked * limit / reading; K = s * (T - W) (docs/theory/studies.md)
   * @validity as the catch by energy; forces on points and moments of the rope go with the tension
   * @source energy balance, derived
   * @accuracy as the catch
   * @param plan the plan, not null
   * @return the answer; no run if the drop has no catch by energy
   * @throws PlanRefusedException if the plan has no such arrangement
   */
  @Override
  public Answer answer(Plan plan) {
    Evaluation evaluation = Evaluation.of(plan, arrangement, List.of(keep.reading()));
    @Nullable DropAnswer drop = evaluation.drop().orElse(null);
    if (!(drop instanceof DropFound found)) {
      return none(
          drop instanceof DropNotAnalysed not
              ? "the drop was not analysed: " + not.reason()
              : "the arrangement states no drop");
    }
    Found locked = keep.reading().value(evaluation);
    @Nullable RopeCatch rope = found.rope().orElse(null);
    if (locked.figure().isEmpty() || rope == null) {
      return none(locked.reason().orElse("a constant force tells nothing of a run"));
    }
    if (locked.si() == 0) {
      return none("the rope made fast does not load this at all");
    }
    double tension =
        Si.value(found.loads().loadLeg(), Kind.FORCE, "load leg") * keep.limit().si() / locked.si();
    LetRun answer;
    try {
      answer = rope.keepingLoadLeg(Si.of(tension, Kind.FORCE));
    } catch (PlanRefusedException e) {
      return none(e.refusals().get(0).sentence());
    }
    Found slip = Found.of(Figure.of(answer.slipTension(), Kind.FORCE));
    if (answer instanceof LetRun.Stopped stopped) {
      return new Answer(
          this,
          Found.of(Figure.of(stopped.run(), Kind.LENGTH)),
          slip,
          Found.of(Figure.of(stopped.clearanceNeeded(), Kind.LENGTH)));
    }
    Found never = Found.none("the piece never stops: the limit leaves no more than its weight");
    return new Answer(this, never, slip, never);
  }

  private Answer none(String reason) {
    Found none = Found.none(reason);
    return new Answer(this, none, none, none);
  }
}
