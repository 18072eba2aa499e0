package org.boleline.stem;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.Moment;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A solid round stem that tapers evenly, clamped at its base, with a force square to its tip: the
 * closed form of small bending.
 *
 * <p>For hand calculations and as a check. A stem under a rig bends far, carries its own weight and
 * feels what the rope does: that is what {@code statics} solves.
 *
 * <p>Immutable and thread-safe. Equality is exact, on the stated values in SI units.
 */
public final class TaperedCantilever {
  private static final double LEAST = 1e-3;
  private static final double MOST_LENGTH = 200;
  private static final double MOST_DIAMETER = 20;

  private final double length;
  private final double base;
  private final double tip;
  private final double modulus;
  private final double force;
  private final List<Step> steps;

  private TaperedCantilever(double length, double base, double tip, double modulus, double force) {
    this.length = length;
    this.base = base;
    this.tip = tip;
    this.modulus = modulus;
    this.force = force;
    Step moment = BeamFormulas.MOMENT.step(force, length);
    Step stress = BeamFormulas.STRESS.step(moment.result(), base);
    Step at = BeamFormulas.GREATEST_AT.step(length, base, tip);
    Step momentThere = BeamFormulas.MOMENT.step(force, at.result());
    Step diameter = BeamFormulas.DIAMETER.step(at.result(), length, base, tip);
    Step greatest = BeamFormulas.STRESS.step(momentThere.result(), diameter.result());
    steps =
        List.of(
            moment,
            stress,
            at,
            momentThere,
            diameter,
            greatest,
            BeamFormulas.DEFLECTION.step(force, length, modulus, base, tip),
            BeamFormulas.SLOPE.step(force, length, modulus, base, tip));
  }

  /**
   * Obtains a cantilever.
   *
   * @equation s = 32 * M / (pi * d^3), v = 64 * F * L^3 / (3 * pi * E * D_b^3 * D_t) (BEA-1 to
   *     BEA-7)
   * @validity small bending, linear elastic solid wood, own weight left out
   * @source beam equation, derived
   * @accuracy exact within the model; the slope tells how small the bending is
   * @param length from base to tip, 1 mm to 200 m, not null
   * @param base diameter at the base, 1 mm to 20 m, not null
   * @param tip diameter at the tip, from 1 mm to that of the base, not null
   * @param elasticity modulus of elasticity along the grain, above zero, not null
   * @param force force at the tip, square to the axis, zero or more, not null
   * @return the cantilever
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static TaperedCantilever of(
      Quantity<Length> length,
      Quantity<Length> base,
      Quantity<Length> tip,
      Quantity<Pressure> elasticity,
      Quantity<Force> force) {
    double b = within(base, MOST_DIAMETER, "base");
    return new TaperedCantilever(
        within(length, MOST_LENGTH, "length"),
        b,
        within(tip, b, "tip"),
        Si.valueAboveZero(elasticity, Kind.PRESSURE, "elasticity"),
        Si.valueZeroOrMore(force, Kind.FORCE, "force"));
  }

  private static double within(Quantity<Length> quantity, double most, String name) {
    double value = Si.value(quantity, Kind.LENGTH, name);
    if (value < LEAST || value > most) {
      throw new IllegalArgumentException(
          name
              + ": wants 0.001 m to "
              + QuantityText.number(most)
              + " m, got "
              + QuantityText.print(quantity, Kind.LENGTH));
    }
    return value;
  }

  /**
   * Returns the bending moment at the base.
   *
   * @return the moment, in newton metres
   */
  public Quantity<Moment> baseMoment() {
    return Si.of(steps.get(0).result(), Kind.MOMENT);
  }

  /**
   * Returns the bending stress at the base.
   *
   * @return the stress of the outermost fibre, in pascals
   */
  public Quantity<Pressure> baseStress() {
    return Si.of(steps.get(1).result(), Kind.PRESSURE);
  }

  /**
   * Returns where the bending stress is greatest.
   *
   * @return the distance from the tip, in metres
   */
  public Quantity<Length> greatestStressFromTip() {
    return Si.of(steps.get(2).result(), Kind.LENGTH);
  }

  /**
   * Returns the greatest bending stress.
   *
   * @return the stress of the outermost fibre, in pascals
   */
  public Quantity<Pressure> greatestStress() {
    return Si.of(steps.get(5).result(), Kind.PRESSURE);
  }

  /**
   * Returns how far the tip moves.
   *
   * @return the deflection, in metres
   */
  public Quantity<Length> tipDeflection() {
    return Si.of(steps.get(6).result(), Kind.LENGTH);
  }

  /**
   * Returns the slope of the tip.
   *
   * @return the slope, in radians
   */
  public Quantity<Angle> tipSlope() {
    return Si.of(steps.get(7).result(), Kind.ANGLE);
  }

  /**
   * Returns the force at the tip.
   *
   * @return the force, in newtons
   */
  public Quantity<Force> force() {
    return Si.of(force, Kind.FORCE);
  }

  /**
   * Returns the greatest stress by BEA-5, the one formula that BEA-1 to BEA-4 come to where it lies
   * above the base.
   *
   * @return the step; empty if the stress is greatest at the base
   */
  public Optional<Step> greatestStressStep() {
    return 2 * base > 3 * tip
        ? Optional.of(BeamFormulas.GREATEST_STRESS.step(force, length, base, tip))
        : Optional.empty();
  }

  /**
   * Returns the steps that gave the numbers.
   *
   * @return eight steps: moment and stress at the base; place, moment, diameter and stress where it
   *     is greatest; deflection and slope of the tip
   */
  public List<Step> steps() {
    return steps;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TaperedCantilever c
        && Double.compare(length, c.length) == 0
        && Double.compare(base, c.base) == 0
        && Double.compare(tip, c.tip) == 0
        && Double.compare(modulus, c.modulus) == 0
        && Double.compare(force, c.force) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(length, base, tip, modulus, force);
  }

  @Override
  public String toString() {
    return "cantilever with " + QuantityText.print(greatestStress(), Kind.PRESSURE);
  }
}
