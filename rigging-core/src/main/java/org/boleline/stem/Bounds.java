package org.boleline.stem;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * Bounds far outside any tree, so that no number of a plan can overflow a calculation; rules that
 * several parts of a stem share.
 */
final class Bounds {
  /** Greatest length, in metres. */
  static final double LENGTH = 200;

  /** Least length of a stem, in metres. */
  static final double LEAST_LENGTH = 0.01;

  /** Greatest coordinate of a point, either way, in metres. */
  static final double COORDINATE = 1e5;

  /** Least diameter, in metres. */
  static final double LEAST_DIAMETER = 1e-3;

  /** Greatest diameter, in metres. */
  static final double DIAMETER = 20;

  /** Greatest mass that hangs at one place, in kilograms. */
  static final double MASS = 1e6;

  /** Greatest rotational stiffness, in newton metres per radian. */
  static final double ROTATIONAL_STIFFNESS = 1e15;

  /** What counts as the same place, in metres. */
  static final double SAME_PLACE = 1e-3;

  /** Part of a length that is put down to rounding of units. */
  static final double ROUNDING = 1e-9;

  /** Greatest azimuth, either way, in radians: many turns. */
  static final double AZIMUTH = 100;

  private static final Vector<Length> ORIGIN = Vector.ofSi(Kind.LENGTH, 0, 0, 0);

  private Bounds() {}

  static double station(@Nullable Quantity<Length> at, Refusals refusals) {
    return refusals.at("at").between(at, Kind.LENGTH, 0, LENGTH);
  }

  static Heading heading(Heading heading, Refusals refusals) {
    refusals.at("azimuth").between(heading.azimuth(), Kind.ANGLE, -AZIMUTH, AZIMUTH);
    return heading;
  }

  static Vector<Length> position(@Nullable Vector<Length> position, Refusals refusals) {
    Vector<Length> p = refusals.present(position, "three lengths", ORIGIN);
    for (double coordinate : p.in(Kind.LENGTH)) {
      if (Math.abs(coordinate) > COORDINATE) {
        refusals.add(
            Refusal.Code.OUT_OF_RANGE,
            "coordinates from " + metres(-COORDINATE) + " to " + metres(COORDINATE),
            metres(coordinate));
      }
    }
    return p;
  }

  static void refuseOrder(String wants, double at, Refusals refusals) {
    refusals.at("at").add(Refusal.Code.STATIONS_NOT_IN_ORDER, wants, metres(at));
  }

  static String metres(double value) {
    return QuantityText.print(Si.of(value, Kind.LENGTH), Kind.LENGTH);
  }
}
