package org.boleline.drop;

import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * How far a rope stretches under tension while the tension rises.
 *
 * <p>A curve of loading, which starts at no tension and no stretch. A rope unloads on another,
 * lower curve; energy models of the first peak do not need it. Strain is added length over length
 * without load: 0.03 is 3 %. Nothing breaks here: tensions far above the strength of any rope are
 * computed.
 *
 * <p>All kinds are immutable and thread-safe; equality is exact, on the numbers.
 */
public sealed interface StretchCurve permits LinearStretch, TabulatedStretch, PowerStretch {
  /**
   * Returns the tension at a strain.
   *
   * @param strainFraction added length over length, zero or more, at most 1000
   * @return the tension in newtons
   * @throws IllegalArgumentException if the strain is outside its range or not a number
   */
  default Quantity<Force> tension(double strainFraction) {
    if (!(strainFraction >= 0 && strainFraction <= 1000)) {
      throw new IllegalArgumentException(
          "strain: wants a number from 0 to 1000, got " + strainFraction);
    }
    return Si.of(StretchKernels.of(this).tension(strainFraction), Kind.FORCE);
  }

  /**
   * Returns the strain at a tension.
   *
   * @param tension the tension, zero or more, not null
   * @return added length over length, zero or more
   * @throws IllegalArgumentException if the tension is negative
   */
  default double strainFraction(Quantity<Force> tension) {
    return StretchKernels.of(this).strain(Si.valueZeroOrMore(tension, Kind.FORCE, "tension"));
  }

  /**
   * Returns how much longer a length of rope gets.
   *
   * @param length length of the rope without load, zero or more, not null
   * @param tension the tension, zero or more, not null
   * @return the added length in metres
   * @throws IllegalArgumentException if an argument is negative
   */
  default Quantity<Length> stretch(Quantity<Length> length, Quantity<Force> tension) {
    double metres = Si.valueZeroOrMore(length, Kind.LENGTH, "length");
    return Si.of(metres * strainFraction(tension), Kind.LENGTH);
  }

  /**
   * Returns the energy that a length of rope takes up until it carries a tension: the exact
   * integral of the curve.
   *
   * @param length length of the rope without load, zero or more, not null
   * @param tension the tension, zero or more, not null
   * @return the energy in joules
   * @throws IllegalArgumentException if an argument is negative
   */
  default Quantity<Energy> energy(Quantity<Length> length, Quantity<Force> tension) {
    double metres = Si.valueZeroOrMore(length, Kind.LENGTH, "length");
    return Si.of(metres * StretchKernels.of(this).energy(strainFraction(tension)), Kind.ENERGY);
  }

  /**
   * Returns the curve of a rope that is stiffer by a factor: the same strain at so many times the
   * tension.
   *
   * @param stiffnessFactor the factor, from 0.001 to 1000
   * @return the curve
   * @throws org.boleline.explain.PlanRefusedException if the factor is outside its range
   */
  StretchCurve times(double stiffnessFactor);
}
