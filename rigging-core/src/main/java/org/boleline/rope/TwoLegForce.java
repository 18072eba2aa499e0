package org.boleline.rope;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import org.boleline.explain.Step;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Force on a point from the two legs of rope that meet there, away from the point along the legs.
 *
 * <p>The vector sum of both tensions. With unequal tensions it does not halve the angle between the
 * legs: it leans toward the tighter one. It is the force on the point and on what holds it, not the
 * tension of the rope.
 *
 * <p>Immutable and thread-safe; equality is exact, on tensions and angle.
 *
 * <pre>{@code
 * IncludedAngle legs = IncludedAngle.of(degrees(60));
 * TwoLegForce force = TwoLegForce.of(kilonewtons(2), kilonewtons(1.2), legs);
 * force.magnitude(); // 2.8 kN
 * force.angleFromFirst(); // 21.8 degrees
 * }</pre>
 */
public final class TwoLegForce {
  private final double first;
  private final double second;
  private final double legs;
  private final double magnitude;
  private final double angleFromFirst;
  private final List<Step> steps;

  private TwoLegForce(
      double first,
      double second,
      double legs,
      double magnitude,
      double angleFromFirst,
      List<Step> steps) {
    this.first = first;
    this.second = second;
    this.legs = legs;
    this.magnitude = magnitude;
    this.angleFromFirst = angleFromFirst;
    this.steps = steps;
  }

  /**
   * Obtains the force of two legs.
   *
   * @equation R = sqrt(T1^2 + T2^2 + 2 * T1 * T2 * cos(q)); d = atan2(T2 * sin(q), T1 + T2 *
   *     cos(q))
   * @validity straight legs, weight of the rope left out
   * @source sum of two vectors
   * @accuracy rounding only, also where the legs are nearly opposite
   * @param first tension of the first leg, zero or more, not null
   * @param second tension of the second leg, zero or more, not null
   * @param legs angle between the legs, not null
   * @return the force
   * @throws IllegalArgumentException if a tension is negative, or the force exceeds the largest
   *     double
   */
  public static TwoLegForce of(Quantity<Force> first, Quantity<Force> second, IncludedAngle legs) {
    double t1 = Si.valueZeroOrMore(first, Kind.FORCE, "first");
    double t2 = Si.valueZeroOrMore(second, Kind.FORCE, "second");
    double q = Radians.of(legs);
    Step size = FrictionFormulas.TWO_LEG_FORCE.step(t1, t2, q);
    Step direction = FrictionFormulas.TWO_LEG_DIRECTION.step(t1, t2, q);
    return new TwoLegForce(t1, t2, q, size.result(), direction.result(), List.of(size, direction));
  }

  /**
   * Obtains the force of two legs of equal tension by the textbook multiplier.
   *
   * <p>A special case: it leaves out friction at the point. With friction use {@link #of}.
   *
   * @equation R = T * k with k = 2 * cos(q / 2)
   * @validity equal tensions: no friction at the point
   * @source Arboriculture Australia, Tree rescue manual, 2022, pp. 116-118
   * @accuracy rounding only
   * @param tension tension of both legs, zero or more, not null
   * @param legs angle between the legs, not null
   * @return the force; it halves the angle between the legs
   * @throws IllegalArgumentException if the tension is negative, or the force exceeds the largest
   *     double
   */
  public static TwoLegForce withEqualTensions(Quantity<Force> tension, IncludedAngle legs) {
    double t = Si.valueZeroOrMore(tension, Kind.FORCE, "tension");
    double q = Radians.of(legs);
    Step multiplier = FrictionFormulas.EQUAL_TENSION_MULTIPLIER.step(q);
    Step size = FrictionFormulas.EQUAL_TENSION_FORCE.step(t, multiplier.result());
    return new TwoLegForce(t, t, q, size.result(), q / 2, List.of(multiplier, size));
  }

  /**
   * Returns the textbook multiplier: force on the point over rope tension, equal tensions.
   *
   * @equation k = 2 * cos(q / 2)
   * @validity equal tensions: no friction at the point
   * @source Arboriculture Australia, Tree rescue manual, 2022, pp. 116-118
   * @accuracy rounding only
   * @param legs angle between the legs, not null
   * @return the multiplier: 2 with parallel legs, 1 at 120 degrees, 0 straight through
   */
  public static double equalTensionMultiplier(IncludedAngle legs) {
    return FrictionFormulas.EQUAL_TENSION_MULTIPLIER.value(Radians.of(legs));
  }

  /**
   * Returns the force of two legs in space.
   *
   * @equation R = T1 + T2, as vectors
   * @validity straight legs, weight of the rope left out
   * @source sum of two vectors
   * @accuracy rounding only
   * @param first tension of the first leg as a vector along it, away from the point, not null
   * @param second tension of the second leg as a vector along it, away from the point, not null
   * @return the force on the point
   * @throws IllegalArgumentException if a component exceeds the largest double
   */
  public static Vector<Force> vector(Vector<Force> first, Vector<Force> second) {
    double[] a = first.in(Kind.FORCE);
    double[] b = second.in(Kind.FORCE);
    return Vector.ofSi(Kind.FORCE, a[0] + b[0], a[1] + b[1], a[2] + b[2]);
  }

  /**
   * Returns the magnitude of the force.
   *
   * @return the force in newtons, zero or more, at most the sum of both tensions
   */
  public Quantity<Force> magnitude() {
    return Si.of(magnitude, Kind.FORCE);
  }

  /**
   * Returns the direction of the force in the plane of the legs.
   *
   * @return the angle from the first leg toward the second one in radians, from zero to the angle
   *     between the legs; half of it where there is no tension
   */
  public Quantity<Angle> angleFromFirst() {
    return Si.of(angleFromFirst, Kind.ANGLE);
  }

  /**
   * Returns the steps that gave the force.
   *
   * @return two steps
   */
  public List<Step> steps() {
    return steps;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TwoLegForce f
        && Double.compare(first, f.first) == 0
        && Double.compare(second, f.second) == 0
        && Double.compare(legs, f.legs) == 0
        && Double.compare(magnitude, f.magnitude) == 0
        && Double.compare(angleFromFirst, f.angleFromFirst) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(first) + Double.hashCode(second)) + Double.hashCode(legs);
  }

  @Override
  public String toString() {
    return QuantityText.print(magnitude(), Kind.FORCE)
        + " at "
        + QuantityText.print(angleFromFirst(), Kind.ANGLE)
        + " from the first leg";
  }
}
