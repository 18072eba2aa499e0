package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import org.boleline.explain.Refusals;
import org.boleline.internal.drop.StretchKernel;
import org.boleline.rope.StretchPoint;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A rope whose tension grows with a power of its strain, through a known point.
 *
 * <p>With the exponent 1 it is {@link LinearStretch}; above 1 the rope stiffens as it stretches.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class PowerStretch implements StretchCurve {
  private final StretchPoint point;
  private final double exponent;
  private final StretchKernel.Power kernel;

  private PowerStretch(StretchPoint point, double exponent) {
    this.point = point;
    this.exponent = exponent;
    kernel =
        new StretchKernel.Power(
            Si.value(point.tension(), Kind.FORCE, "tension"), point.elongationFraction(), exponent);
  }

  /**
   * Obtains a curve.
   *
   * @equation T = T_r * (e / e_r)^n; U = T * e / (n + 1)
   * @validity n 1 to 4: from memory; others are computed
   * @source a power law through a point, derived
   * @accuracy rounding only
   * @param point a known point of the curve, from 1 mN to 1 GN and a strain of 10, not null
   * @param exponent power of the strain, from 0.25 to 10
   * @return the curve
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static PowerStretch of(StretchPoint point, double exponent) {
    requireNonNull(point, "point");
    return Refusals.check(
        refusals -> {
          refusals
              .at("point")
              .at("tension")
              .between(point.tension(), Kind.FORCE, CatchBounds.LEAST_FORCE, CatchBounds.FORCE);
          refusals.at("point").at("elongation").number(point.elongationFraction(), 1e-9, 10);
          double n = refusals.at("exponent").number(exponent, 0.25, 10);
          return new PowerStretch(point, n);
        });
  }

  /**
   * Returns the known point.
   *
   * @return the point
   */
  public StretchPoint point() {
    return point;
  }

  /**
   * Returns the power with which tension grows with strain.
   *
   * @return the exponent
   */
  public double exponent() {
    return exponent;
  }

  @Override
  public PowerStretch times(double stiffnessFactor) {
    double tension = kernel.referenceTension() * StiffnessFactor.checked(stiffnessFactor);
    return of(StretchPoint.of(Si.of(tension, Kind.FORCE), kernel.referenceStrain()), exponent);
  }

  StretchKernel kernel() {
    return kernel;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PowerStretch s
        && point.equals(s.point)
        && Double.compare(exponent, s.exponent) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * point.hashCode() + Double.hashCode(exponent);
  }

  @Override
  public String toString() {
    return "stretch " + point + ", power " + QuantityText.number(exponent);
  }
}
