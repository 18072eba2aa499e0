package org.boleline.examples.compare;

import org.boleline.statics.Extreme;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * The greatest stress of a fibre, bending and axial together.
 *
 * @param pascals its size
 * @param at its station, m
 * @param pressed true if the fibre is pressed, false if it is pulled
 */
record FibreStress(double pascals, double at, boolean pressed) {
  static FibreStress of(StemResult stem) {
    double compression = value(stem.compressionStress());
    double tension = value(stem.tensionStress());
    boolean pressed = compression >= tension;
    Extreme greatest = pressed ? stem.compressionStress() : stem.tensionStress();
    return new FibreStress(
        Math.max(compression, tension), Si.value(greatest.at(), Kind.LENGTH, "at"), pressed);
  }

  private static double value(Extreme extreme) {
    return Si.value(extreme.value(), Kind.PRESSURE, "stress");
  }
}
