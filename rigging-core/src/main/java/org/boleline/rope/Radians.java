package org.boleline.rope;

import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** Angles of the public types as radians. */
final class Radians {
  private Radians() {}

  static double of(Turn turn) {
    return Si.value(turn.angle(), Kind.ANGLE, "turn");
  }

  static double of(IncludedAngle legs) {
    return Si.value(legs.angle(), Kind.ANGLE, "legs");
  }
}
