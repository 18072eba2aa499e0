package org.boleline.study;

import org.boleline.drop.DropFound;
import org.boleline.drop.LetRun;
import org.boleline.drop.RopeCatch;
import org.boleline.explain.PlanRefusedException;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * How far the rope must run so that a catch keeps to a limit.
 *
 * @param run how far it runs, zero if the rope made fast keeps to the limit; none if it never stops
 * @param slipTension tension of the leg into the device at which it must slip
 * @param clearance room that the piece needs below where it starts, without any margin
 */
public record RunNeeded(Found run, Found slipTension, Found clearance) {
  /**
   * Finds the run.
   *
   * @equation T = T_locked * limit / reading; K = s * (T - W) (docs/theory/studies.md)
   * @validity as the catch by energy; forces on points and moments of the rope go with the tension
   * @source energy balance, derived
   * @accuracy as the catch
   * @param drop the drop, not null
   * @param evaluation what the drop is of, not null
   * @param keep an upper limit on a reading of the rope made fast: its load leg, the force on a
   *     point or the base moment of the rope, above zero, not null
   * @return the run; none if the drop has no catch by energy
   * @throws IllegalArgumentException if the limit is on another reading, or not above zero
   */
  public static RunNeeded of(DropFound drop, Evaluation evaluation, Keep keep) {
    String pointer = keep.reading().pointer();
    boolean fits =
        pointer.equals("/drop/locked/loadLeg")
            || pointer.startsWith("/drop/locked/contacts/")
            || pointer.startsWith("/drop/locked/stems/");
    if (!fits || keep.sense() != Keep.Sense.AT_MOST || !(keep.limit().si() > 0)) {
      throw new IllegalArgumentException(
          "keep: wants an upper limit above zero on a force or moment of the rope made fast, got "
              + pointer);
    }
    Found locked = keep.reading().value(evaluation);
    @Nullable RopeCatch rope = drop.rope().orElse(null);
    if (locked.figure().isEmpty() || rope == null) {
      return none(locked.reason().orElse("a constant force tells nothing of a run"));
    }
    if (locked.si() == 0) {
      return none("the rope made fast does not load this at all");
    }
    double tension =
        Si.value(drop.loads().loadLeg(), Kind.FORCE, "load leg") * keep.limit().si() / locked.si();
    LetRun answer;
    try {
      answer = rope.keepingLoadLeg(Si.of(tension, Kind.FORCE));
    } catch (PlanRefusedException e) {
      return none(e.refusals().get(0).sentence());
    }
    Found slip = Found.of(Figure.of(answer.slipTension(), Kind.FORCE));
    if (answer instanceof LetRun.Stopped stopped) {
      return new RunNeeded(
          Found.of(Figure.of(stopped.run(), Kind.LENGTH)),
          slip,
          Found.of(Figure.of(stopped.clearanceNeeded(), Kind.LENGTH)));
    }
    Found never = Found.none("the piece never stops: the limit leaves no more than its weight");
    return new RunNeeded(never, slip, never);
  }

  private static RunNeeded none(String reason) {
    Found none = Found.none(reason);
    return new RunNeeded(none, none, none);
  }
}
