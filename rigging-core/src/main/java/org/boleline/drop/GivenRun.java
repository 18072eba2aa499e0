package org.boleline.drop;

import org.boleline.plan.DropSpec;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** Finds the slip tension that makes a piece run a given length. */
final class GivenRun {
  private GivenRun() {}

  /**
   * The run falls from without bound, where the load leg carries the weight, to nothing on the
   * locked rope; halving goes on until no double lies between.
   *
   * @param rope the catch
   * @param run the run in metres, zero or more
   * @param weight weight of the piece in newtons
   */
  static LetRun.Stopped of(RopeCatch rope, double run, double weight) {
    CatchLoads locked = rope.locked().loads();
    double most = locked.lastLeg();
    double least = most * weight / Si.value(locked.loadLeg(), Kind.FORCE, "peak");
    LetRun.Stopped found = (LetRun.Stopped) at(rope, most);
    while (true) {
      double middle = (least + most) / 2;
      if (!(middle > least && middle < most)) {
        return found;
      }
      if (at(rope, middle) instanceof LetRun.Stopped stopped
          && Si.value(stopped.run(), Kind.LENGTH, "run") <= run) {
        most = middle;
        found = stopped;
      } else {
        least = middle;
      }
    }
  }

  private static LetRun at(RopeCatch rope, double slip) {
    return rope.letRun(DropSpec.Slipping.of(Si.of(slip, Kind.FORCE)));
  }
}
