package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import javax.measure.quantity.Force;
import javax.measure.quantity.Mass;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A fall onto one straight leg of linear rope, told by its fall factor.
 *
 * <p>On such a rope the peak depends on the fall factor and not on fall and length apart: twice the
 * fall on twice the rope pulls as hard. Over points with friction this no longer holds for the
 * whole rope: see {@link RopeCatch}.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class StandardFall {
  private final double mass;
  private final double fallFactor;
  private final double modulus;
  private final double gravity;
  private final List<Step> steps;

  private StandardFall(double mass, double fallFactor, double modulus, double gravity) {
    this.mass = mass;
    this.fallFactor = fallFactor;
    this.modulus = modulus;
    this.gravity = gravity;
    Step weight = DropFormulas.WEIGHT_OF_PIECE.step(mass, gravity);
    steps = List.of(weight, DropFormulas.STANDARD_PEAK.step(weight.result(), fallFactor, modulus));
  }

  /**
   * Obtains a fall, under standard gravity.
   *
   * @equation F = W * (1 + sqrt(1 + 2 * f * EA / W))
   * @validity linear, no mass of the rope, no damping; f up to 2, above it is computed and the step
   *     cautions
   * @source derived from the energy balance with a linear spring
   * @accuracy rounding only
   * @param mass mass of the piece, from 1 mg to 1000 t, not null
   * @param fallFactor fall over length of rope, from zero to 1000
   * @param modulus modulus of the rope (tension over strain), from 1 mN to 1 GN, not null
   * @return the fall
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static StandardFall of(Quantity<Mass> mass, double fallFactor, Quantity<Force> modulus) {
    requireNonNull(mass, "mass");
    requireNonNull(modulus, "modulus");
    double[] si =
        Refusals.check(
            refusals ->
                new double[] {
                  refusals
                      .at("mass")
                      .between(mass, Kind.MASS, CatchBounds.LEAST_MASS, CatchBounds.MASS),
                  refusals.at("fallFactor").number(fallFactor, 0, CatchBounds.FALL_FACTOR),
                  refusals
                      .at("modulus")
                      .between(modulus, Kind.FORCE, CatchBounds.LEAST_FORCE, CatchBounds.FORCE)
                });
    return new StandardFall(si[0], si[1], si[2], CatchBounds.STANDARD_GRAVITY_M_PER_S2);
  }

  /**
   * Obtains the fall whose peak is known, such as a certified one; its {@link #modulus} is that of
   * the rope. Under standard gravity.
   *
   * <p>A peak that a standard allows at most gives the modulus at most.
   *
   * @equation EA = F * (F - 2 * W) / (2 * f * W)
   * @validity as {@link #of}; the whole rope took part, and nothing but rope gave way
   * @source derived from the energy balance with a linear spring
   * @accuracy rounding only
   * @param mass mass of the piece, from 1 mg to 1000 t, not null
   * @param fallFactor fall over length of rope, from 1e-6 to 1000
   * @param peak the greatest tension, above twice the weight, at most 1 GN, not null
   * @return the fall
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range, or no linear
   *     rope gives so low or so high a peak
   */
  public static StandardFall ofPeak(Quantity<Mass> mass, double fallFactor, Quantity<Force> peak) {
    requireNonNull(mass, "mass");
    requireNonNull(peak, "peak");
    double g = CatchBounds.STANDARD_GRAVITY_M_PER_S2;
    double[] si =
        Refusals.check(
            refusals -> {
              double m =
                  refusals
                      .at("mass")
                      .between(mass, Kind.MASS, CatchBounds.LEAST_MASS, CatchBounds.MASS);
              double f =
                  refusals.at("fallFactor").number(fallFactor, 1e-6, CatchBounds.FALL_FACTOR);
              double most = refusals.at("peak").aboveZero(peak, Kind.FORCE, CatchBounds.FORCE);
              if (most <= 2 * m * g) {
                refusals
                    .at("peak")
                    .add(
                        Refusal.Code.CONFLICT,
                        "more than twice the weight, the least that a sudden load gives",
                        QuantityText.print(peak, Kind.FORCE));
              }
              return new double[] {m, f, most};
            });
    double weight = DropFormulas.WEIGHT_OF_PIECE.value(si[0], g);
    double modulus = DropFormulas.MODULUS_FROM_PEAK.value(weight, si[1], si[2]);
    return of(mass, fallFactor, Si.of(modulus, Kind.FORCE));
  }

  /**
   * Returns this fall under another gravity.
   *
   * @param newGravity acceleration of gravity, from 1 mm/s2 to 1000 m/s2, not null
   * @return the fall, on the same rope
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public StandardFall withGravity(Quantity<Acceleration> newGravity) {
    return new StandardFall(mass, fallFactor, modulus, CatchBounds.gravity(newGravity));
  }

  /**
   * Returns the modulus of the rope: tension over strain.
   *
   * @return the modulus in newtons, above zero
   */
  public Quantity<Force> modulus() {
    return Si.of(modulus, Kind.FORCE);
  }

  /**
   * Returns the greatest tension.
   *
   * @return the tension in newtons, at least twice the weight
   */
  public Quantity<Force> peak() {
    return Si.of(steps.get(1).result(), Kind.FORCE);
  }

  /**
   * Returns the greatest tension as a multiple of the weight.
   *
   * @return peak over weight, 2 or more
   */
  public double overWeightRatio() {
    return steps.get(1).result() / steps.get(0).result();
  }

  /**
   * Returns the greatest strain of the rope.
   *
   * @return added length over length, above zero
   */
  public double strainFraction() {
    return steps.get(1).result() / modulus;
  }

  /**
   * Returns the steps that gave the peak.
   *
   * @return two steps: weight, peak
   */
  public List<Step> steps() {
    return steps;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StandardFall f
        && Double.compare(mass, f.mass) == 0
        && Double.compare(fallFactor, f.fallFactor) == 0
        && Double.compare(modulus, f.modulus) == 0
        && Double.compare(gravity, f.gravity) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(mass) + Double.hashCode(fallFactor))
        + Double.hashCode(modulus);
  }

  @Override
  public String toString() {
    return "fall of factor "
        + QuantityText.number(fallFactor)
        + " caught with "
        + QuantityText.print(peak(), Kind.FORCE);
  }
}
