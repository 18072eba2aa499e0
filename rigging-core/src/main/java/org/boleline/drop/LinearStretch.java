package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Refusals;
import org.boleline.internal.drop.StretchKernel;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A rope whose strain grows in proportion to its tension.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class LinearStretch implements StretchCurve {
  private final double modulus;

  private LinearStretch(double modulus) {
    this.modulus = modulus;
  }

  /**
   * Obtains a curve.
   *
   * @param modulus tension over strain, the product EA, from 1 mN to 1 GN, not null
   * @return the curve
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public static LinearStretch of(Quantity<Force> modulus) {
    requireNonNull(modulus, "modulus");
    return new LinearStretch(
        Refusals.check(
            refusals ->
                refusals
                    .at("modulus")
                    .between(modulus, Kind.FORCE, CatchBounds.LEAST_FORCE, CatchBounds.FORCE)));
  }

  /**
   * Returns the modulus: tension over strain.
   *
   * @return the modulus in newtons, above zero
   */
  public Quantity<Force> modulus() {
    return Si.of(modulus, Kind.FORCE);
  }

  @Override
  public LinearStretch times(double stiffnessFactor) {
    return of(Si.of(modulus * StiffnessFactor.checked(stiffnessFactor), Kind.FORCE));
  }

  StretchKernel kernel() {
    return new StretchKernel.Linear(modulus);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LinearStretch s && Double.compare(modulus, s.modulus) == 0;
  }

  @Override
  public int hashCode() {
    return Double.hashCode(modulus);
  }

  @Override
  public String toString() {
    return "linear stretch, modulus " + QuantityText.print(modulus(), Kind.FORCE);
  }
}
