package org.boleline.rope;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Friction of fibre rope that depends on the load (a Howell-type law).
 *
 * <p>Friction force for each length grows with the n-th power of tension over radius. With n below
 * 1 the coefficient of friction falls as the load rises, and the radius matters. With n = 1 it is
 * the law of a {@link FrictionRing}.
 *
 * <p>The law is stated by a coefficient of friction and the tension and radius at which it was
 * found. A coefficient a given in SI units for the form a (T / r)^n is the one at 1 N on 1 m.
 * Immutable and thread-safe; equality is exact.
 */
public final class LoadDependentFriction {
  private final double friction;
  private final double lineLoad;
  private final double exponent;

  private LoadDependentFriction(double friction, double lineLoad, double exponent) {
    this.friction = friction;
    this.lineLoad = lineLoad;
    this.exponent = exponent;
  }

  /**
   * Obtains the law from one finding.
   *
   * @param friction coefficient of friction found, from 0 to 2
   * @param tension rope tension at which it was found, above zero, not null
   * @param radius radius of the contact on which it was found, above zero, not null
   * @param exponent power of the load in the friction force, from 0 to 2; fibre ropes below 1
   * @return the law
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static LoadDependentFriction of(
      double friction, Quantity<Force> tension, Quantity<Length> radius, double exponent) {
    Checks.friction(friction);
    if (!(exponent >= 0 && exponent <= 2)) {
      throw new IllegalArgumentException("exponent: wants a number from 0 to 2, got " + exponent);
    }
    double lineLoad =
        Si.valueAboveZero(tension, Kind.FORCE, "tension")
            / Si.valueAboveZero(radius, Kind.LENGTH, "radius");
    if (!(lineLoad > 0 && Double.isFinite(lineLoad))) {
      throw new IllegalArgumentException(
          "tension over radius: wants a finite number above zero, got " + lineLoad);
    }
    return new LoadDependentFriction(friction, lineLoad, exponent);
  }

  /**
   * Returns the coefficient of friction at a tension.
   *
   * @equation mu_T = mu * (T / (r * p))^(n - 1), p tension over radius at which mu was found
   * @validity n 0.5 to 1 (from memory); outside it is computed
   * @source derived from the power law
   * @accuracy rounding only
   * @param tension rope tension, above zero, not null
   * @param radius radius of the contact, above zero, not null
   * @return the coefficient, zero or more
   * @throws IllegalArgumentException if an argument is outside its range, or the coefficient
   *     exceeds the largest double
   */
  public double frictionAt(Quantity<Force> tension, Quantity<Length> radius) {
    return FrictionFormulas.LOAD_DEPENDENT_FRICTION.value(
        Si.valueAboveZero(tension, Kind.FORCE, "tension"),
        friction,
        lineLoad,
        exponent,
        Si.valueAboveZero(radius, Kind.LENGTH, "radius"));
  }

  /**
   * Returns the tensions on both sides of a contact from the one on the tight side.
   *
   * <p>With n below 1 friction alone may hold the tight side; the slack side is zero then.
   *
   * @equation T_slack^(1-n) = T_tight^(1-n) - (1 - n) * mu * p^(1-n) * r^(1-n) * w
   * @validity n 0.5 to 1 (from memory), mu 0.05 to 0.6; outside it is computed, and the step
   *     cautions
   * @source derived from the power law
   * @accuracy rounding only, also near n = 1
   * @param turn turn of the rope, not null
   * @param radius radius of the contact, above zero, not null
   * @param tight tension on the tight side, zero or more, not null
   * @return both tensions
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public ContactTensions fromTight(Turn turn, Quantity<Length> radius, Quantity<Force> tight) {
    double tension = Si.valueZeroOrMore(tight, Kind.FORCE, "tight");
    Step slack =
        FrictionFormulas.LOAD_DEPENDENT_SLACK.step(
            tension,
            friction,
            lineLoad,
            exponent,
            Si.valueAboveZero(radius, Kind.LENGTH, "radius"),
            Radians.of(turn));
    return ContactTensions.of(tension, slack.result(), slack);
  }

  /**
   * Returns the tensions on both sides of a contact from the one on the slack side.
   *
   * @equation T_tight^(1-n) = T_slack^(1-n) + (1 - n) * mu * p^(1-n) * r^(1-n) * w
   * @validity n 0.5 to 1 (from memory), mu 0.05 to 0.6; outside it is computed, and the step
   *     cautions
   * @source derived from the power law
   * @accuracy rounding only, also near n = 1
   * @param turn turn of the rope, not null
   * @param radius radius of the contact, above zero, not null
   * @param slack tension on the slack side, zero or more, not null
   * @return both tensions
   * @throws IllegalArgumentException if an argument is outside its range, or no finite tension
   *     makes the rope slip (n above 1 only), or it exceeds the largest double
   */
  public ContactTensions fromSlack(Turn turn, Quantity<Length> radius, Quantity<Force> slack) {
    double tension = Si.valueZeroOrMore(slack, Kind.FORCE, "slack");
    Step tight =
        FrictionFormulas.LOAD_DEPENDENT_TIGHT.step(
            tension,
            friction,
            lineLoad,
            exponent,
            Si.valueAboveZero(radius, Kind.LENGTH, "radius"),
            Radians.of(turn));
    return ContactTensions.of(tight.result(), tension, tight);
  }

  /**
   * Returns the power of the load in the friction force.
   *
   * @return the exponent n, from 0 to 2
   */
  public double exponent() {
    return exponent;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LoadDependentFriction f
        && Double.compare(friction, f.friction) == 0
        && Double.compare(lineLoad, f.lineLoad) == 0
        && Double.compare(exponent, f.exponent) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(friction) + Double.hashCode(lineLoad))
        + Double.hashCode(exponent);
  }

  @Override
  public String toString() {
    return "friction "
        + QuantityText.number(friction)
        + " at "
        + QuantityText.number(lineLoad)
        + " N/m, exponent "
        + QuantityText.number(exponent);
  }
}
