package org.boleline.plan;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/** Bounds far outside any tree work, so that no number of a plan can overflow a calculation. */
final class Bounds {
  /** Greatest station, in metres. */
  static final double STATION = 200;

  /** Greatest length of a sling or an arm, in metres. */
  static final double REACH = 20;

  /** Greatest coordinate of a point, either way, in metres. */
  static final double COORDINATE = 1e5;

  /** Greatest mass of a piece, in kilograms. */
  static final double MASS = 1e6;

  /** Greatest force, in newtons. */
  static final double FORCE = 1e9;

  /** Greatest gravity, in metres per second squared. */
  static final double GRAVITY = 1000;

  /** Greatest fall, in metres. */
  static final double FALL = 200;

  /** Greatest length of a leg or of a stop, in metres. */
  static final double LEG = 1000;

  /** Greatest stiffness of a sling, in newtons per metre. */
  static final double STIFFNESS = 1e12;

  /** Greatest delay, in seconds. */
  static final double DELAY = 60;

  /** Longest time that a drop is followed, in seconds. */
  static final double DURATION = 600;

  /** Greatest friction. */
  static final double FRICTION = 2;

  /** Least efficiency of a sheave. */
  static final double LEAST_EFFICIENCY = 0.01;

  /** Greatest number of wraps. */
  static final double WRAPS = 20;

  /** Greatest angle of the load leg from plumb, in radians. */
  static final double LEG_FROM_PLUMB = Math.toRadians(85);

  /** Greatest azimuth, either way, in radians: many turns. */
  static final double AZIMUTH = 100;

  /**
   * Greatest angle between the legs of a sling, in radians: beyond it their tension has no bound.
   */
  static final double LEGS = Math.toRadians(170);

  /** Greatest stress, in pascals. */
  static final double STRESS = 1e13;

  /** Greatest moment, in newton metres. */
  static final double MOMENT = 1e12;

  /** Least diameter of a bend, in metres. */
  static final double LEAST_DIAMETER = 1e-3;

  /** Greatest diameter, in metres. */
  static final double DIAMETER = 20;

  /** Least share of a strength that is kept. */
  static final double LEAST_SHARE = 0.01;

  /** Least ratio of bend and rope. */
  static final double LEAST_RATIO = 0.01;

  /** Greatest ratio of bend and rope. */
  static final double RATIO = 1000;

  /** What counts as the same place, in metres. */
  static final double SAME_PLACE = 1e-3;

  /** Greatest number of contacts of one arrangement. */
  static final int CONTACTS = 24;

  private Bounds() {}

  static double station(@Nullable Quantity<Length> at, Refusals refusals) {
    return refusals.at("at").between(at, Kind.LENGTH, 0, STATION);
  }

  static @Nullable Double offset(@Nullable Quantity<Length> offset, Refusals refusals) {
    return offset == null
        ? null
        : (Double) refusals.at("offset").between(offset, Kind.LENGTH, -REACH, REACH);
  }

  /** Greatest capacity of a kind, in its SI unit. */
  static double capacity(Kind<?> kind) {
    if (kind == Kind.PRESSURE) {
      return STRESS;
    }
    if (kind == Kind.MOMENT) {
      return MOMENT;
    }
    return kind == Kind.LENGTH ? DIAMETER : FORCE;
  }

  static String metres(double value) {
    return QuantityText.print(Si.of(value, Kind.LENGTH), Kind.LENGTH);
  }
}
