package org.boleline.drop;

import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** Numbers of quantities in SI units, for checks. */
final class CatchNumbers {
  private CatchNumbers() {}

  static double n(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  static double m(Quantity<Length> length) {
    return Si.value(length, Kind.LENGTH, "length");
  }

  static double j(Quantity<Energy> energy) {
    return Si.value(energy, Kind.ENERGY, "energy");
  }
}
