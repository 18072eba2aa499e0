package org.boleline.drop;

import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Mass;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * Classes of rope whose standard bounds their stretch.
 *
 * <p>The figures are bounds that every rope of the class keeps when it is new and tested as the
 * standard says. They are not the stretch of any one rope, and ropes of one class differ widely:
 * use a maker's or your own curve where there is one. What our reading of the source does not give
 * is absent.
 */
public enum StretchClass {
  /** Dynamic mountaineering rope, single (EN 892). */
  EN_892_SINGLE(80.0, null, 12e3, null, 0.40, null, 0.10),
  /** Dynamic mountaineering rope, half (EN 892). */
  EN_892_HALF(55.0, null, 8e3, null, 0.40, null, 0.12),
  /** Low-stretch kernmantel rope, type A (EN 1891). */
  EN_1891_A(100.0, 0.3, 6e3, 100.0, null, null, 0.05),
  /** Low-stretch kernmantel rope, type B (EN 1891). */
  EN_1891_B(80.0, 0.3, 6e3, 100.0, null, null, 0.05),
  /** Low-stretch rope: 6 to 10 % at 10 % of the minimum breaking strength. */
  CORDAGE_LOW_STRETCH(null, null, null, null, null, 0.06, 0.10),
  /** Static rope: below 6 % at 10 % of the minimum breaking strength. */
  CORDAGE_STATIC(null, null, null, null, null, null, 0.06);

  /** Where the bounds were read. */
  private static final class Sources {
    static final Source EN_892 =
        new Source(
            "EN 892",
            "EN 892:2004 as told in the Alberta OHS Code explanation guide, section 818",
            Reading.READ);
    static final Source EN_1891 =
        new Source(
            "EN 1891",
            "EN 1891 as told on a rope maker's data page and in a training manual",
            Reading.READ);
    static final Source CORDAGE =
        new Source(
            "Cordage Institute classes",
            "classes of the Cordage Institute as quoted on a rope maker's page",
            Reading.READ);

    private Sources() {}
  }

  /** Share of the breaking strength at which the Cordage Institute tells elongation. */
  private static final double CORDAGE_SHARE = 0.1;

  private final @Nullable Double fallingMass;
  private final @Nullable Double factor;
  private final @Nullable Double peak;
  private final @Nullable Double addedMass;
  private final @Nullable Double dropElongation;
  private final @Nullable Double leastElongation;
  private final double slowElongation;

  StretchClass(
      @Nullable Double fallingMass,
      @Nullable Double factor,
      @Nullable Double peak,
      @Nullable Double addedMass,
      @Nullable Double dropElongation,
      @Nullable Double leastElongation,
      double slowElongation) {
    this.fallingMass = fallingMass;
    this.factor = factor;
    this.peak = peak;
    this.addedMass = addedMass;
    this.dropElongation = dropElongation;
    this.leastElongation = leastElongation;
    this.slowElongation = slowElongation;
  }

  /**
   * Returns where the bounds were read.
   *
   * @return the source
   */
  public Source source() {
    return switch (this) {
      case EN_892_SINGLE, EN_892_HALF -> Sources.EN_892;
      case EN_1891_A, EN_1891_B -> Sources.EN_1891;
      case CORDAGE_LOW_STRETCH, CORDAGE_STATIC -> Sources.CORDAGE;
    };
  }

  /**
   * Returns the mass of the standard's test fall.
   *
   * @return the mass in kilograms; empty if the class has no test fall
   */
  public Optional<Quantity<Mass>> fallingMass() {
    return Optional.ofNullable(fallingMass).map(value -> Si.of(value, Kind.MASS));
  }

  /**
   * Returns the fall factor of the test fall.
   *
   * @return fall over length of rope; empty if our source does not give it
   */
  public OptionalDouble fallFactor() {
    return optional(factor);
  }

  /**
   * Returns the greatest peak that the test fall may give.
   *
   * @return the tension in newtons; empty if the class has no test fall
   */
  public Optional<Quantity<Force>> peakAtMost() {
    return Optional.ofNullable(peak).map(value -> Si.of(value, Kind.FORCE));
  }

  /**
   * Returns the greatest strain that the test fall may give.
   *
   * @return added length over length; empty if the class does not bound it
   */
  public OptionalDouble dropStrainFractionAtMost() {
    return optional(dropElongation);
  }

  /**
   * Returns the greatest strain that the slow test of the class may give.
   *
   * @return added length over length: for EN 1891 from 50 to 150 kg, for the Cordage Institute at
   *     10 % of the breaking strength
   */
  public double slowStrainFractionAtMost() {
    return slowElongation;
  }

  /**
   * Returns the least strain that the slow test of the class may give.
   *
   * @return added length over length; empty if the class does not bound it
   */
  public OptionalDouble slowStrainFractionAtLeast() {
    return optional(leastElongation);
  }

  /**
   * Returns the greatest modulus that a linear rope of the class can have in the test fall.
   *
   * @equation EA = F * (F - 2 * W) / (2 * f * W)
   * @validity linear rope; the whole rope took part
   * @source derived from the energy balance, and the bounds of the class
   * @accuracy rounding only
   * @return the modulus in newtons; empty if peak or fall factor is not known
   */
  public Optional<Quantity<Force>> dropModulusAtMost() {
    if (fallingMass == null || factor == null || peak == null) {
      return Optional.empty();
    }
    return Optional.of(
        StandardFall.ofPeak(Si.of(fallingMass, Kind.MASS), factor, Si.of(peak, Kind.FORCE))
            .modulus());
  }

  /**
   * Returns the least secant modulus of the slow test: added weight over added strain.
   *
   * @return the modulus in newtons, under standard gravity; empty if the load is not known
   */
  public Optional<Quantity<Force>> slowModulusAtLeast() {
    return Optional.ofNullable(addedMass)
        .map(
            mass ->
                Si.of(mass * CatchBounds.STANDARD_GRAVITY_M_PER_S2 / slowElongation, Kind.FORCE));
  }

  /**
   * Returns the least secant modulus as a multiple of the minimum breaking strength.
   *
   * @return modulus over strength at 10 % of the strength; empty if the class does not tell
   *     elongation so
   */
  public OptionalDouble modulusOverStrengthRatioAtLeast() {
    return this == CORDAGE_LOW_STRETCH || this == CORDAGE_STATIC
        ? OptionalDouble.of(CORDAGE_SHARE / slowElongation)
        : OptionalDouble.empty();
  }

  /**
   * Returns the greatest secant modulus as a multiple of the minimum breaking strength.
   *
   * @return modulus over strength at 10 % of the strength; empty if the class does not bound it
   */
  public OptionalDouble modulusOverStrengthRatioAtMost() {
    return leastElongation == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(CORDAGE_SHARE / leastElongation);
  }

  private static OptionalDouble optional(@Nullable Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
