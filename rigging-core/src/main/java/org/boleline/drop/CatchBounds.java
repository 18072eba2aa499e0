package org.boleline.drop;

import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;

/** Bounds far outside any tree work, so that no number can overflow a calculation. */
final class CatchBounds {
  /** Standard acceleration of gravity. */
  static final double STANDARD_GRAVITY_M_PER_S2 = 9.80665;

  /** Least mass, in kilograms. */
  static final double LEAST_MASS = 1e-6;

  /** Greatest mass, in kilograms. */
  static final double MASS = 1e6;

  /** Least force of a known point of a curve, or modulus of rope, in newtons. */
  static final double LEAST_FORCE = 1e-3;

  /** Greatest force or modulus of rope, in newtons. */
  static final double FORCE = 1e9;

  /** Least stiffness of a spring, in newtons per metre. */
  static final double LEAST_STIFFNESS = 1e-3;

  /** Greatest stiffness of a spring, in newtons per metre. */
  static final double STIFFNESS = 1e12;

  /** Greatest moment, in newton metres. */
  static final double MOMENT = 1e12;

  /** Greatest fall, in metres. */
  static final double FALL = 200;

  /** Least length of a load leg or a stop, in metres. */
  static final double LEAST_LEG = 1e-6;

  /** Greatest length of a leg, in metres. */
  static final double LEG = 1000;

  /** Greatest speed, in metres per second. */
  static final double SPEED = 1000;

  /** Greatest fall factor that is computed. */
  static final double FALL_FACTOR = 1000;

  /** Greatest tension ratio at one point. */
  static final double RATIO = 1e6;

  /** Greatest number in a matrix of give, in metres per newton. */
  static final double GIVE = 1;

  /** Greatest slip tension, in newtons: many wraps multiply a hand's force without end. */
  static final double SLIP = 1e100;

  /** Greatest number of points. */
  static final int POINTS = 24;

  private static final double LEAST_GRAVITY = 1e-3;
  private static final double GRAVITY = 1000;

  private CatchBounds() {}

  static double gravity(Quantity<Acceleration> gravity) {
    return Refusals.check(
        refusals ->
            refusals.at("gravity").between(gravity, Kind.ACCELERATION, LEAST_GRAVITY, GRAVITY));
  }
}
