package org.boleline.rope;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.units.Kind;
import org.boleline.units.LinearDensity;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * What is known of a rope. Nothing needs to be; what is not stated is not assumed.
 *
 * <p>Immutable and thread-safe; equality is exact.
 *
 * <pre>{@code
 * Rope rope =
 *     Rope.UNSTATED.withMinimumBreakingStrength(kilonewtons(50)).withDiameter(millimetres(14));
 * }</pre>
 */
public final class Rope {
  /** A rope of which nothing is stated. */
  public static final Rope UNSTATED =
      new Rope(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          List.of(),
          List.of());

  private final OptionalDouble strength;
  private final OptionalDouble diameter;
  private final OptionalDouble linearDensity;
  private final List<StretchPoint> stretch;
  private final List<StretchPoint> dropStretch;

  private Rope(
      OptionalDouble strength,
      OptionalDouble diameter,
      OptionalDouble linearDensity,
      List<StretchPoint> stretch,
      List<StretchPoint> dropStretch) {
    this.strength = strength;
    this.diameter = diameter;
    this.linearDensity = linearDensity;
    this.stretch = stretch;
    this.dropStretch = dropStretch;
  }

  /**
   * Returns this rope with a minimum breaking strength, as its maker states it.
   *
   * @param minimumBreakingStrength the strength of new rope without knot or splice, above zero, not
   *     null
   * @return the rope
   * @throws IllegalArgumentException if it is not above zero
   */
  public Rope withMinimumBreakingStrength(Quantity<Force> minimumBreakingStrength) {
    double newtons =
        Si.valueAboveZero(minimumBreakingStrength, Kind.FORCE, "minimum breaking strength");
    return new Rope(OptionalDouble.of(newtons), diameter, linearDensity, stretch, dropStretch);
  }

  /**
   * Returns this rope with a diameter.
   *
   * @param newDiameter the nominal diameter, above zero, not null
   * @return the rope
   * @throws IllegalArgumentException if it is not above zero
   */
  public Rope withDiameter(Quantity<Length> newDiameter) {
    double metres = Si.valueAboveZero(newDiameter, Kind.LENGTH, "diameter");
    return new Rope(strength, OptionalDouble.of(metres), linearDensity, stretch, dropStretch);
  }

  /**
   * Returns this rope with a mass for each length.
   *
   * @param newLinearDensity the linear density, above zero, not null
   * @return the rope
   * @throws IllegalArgumentException if it is not above zero
   */
  public Rope withLinearDensity(Quantity<LinearDensity> newLinearDensity) {
    double density = Si.valueAboveZero(newLinearDensity, Kind.LINEAR_DENSITY, "linear density");
    return new Rope(strength, diameter, OptionalDouble.of(density), stretch, dropStretch);
  }

  /**
   * Returns this rope with a stretch curve of a slow pull, which starts at no tension and no
   * elongation.
   *
   * @param points the points of the curve, tension and elongation both rising; empty for none
   * @return the rope
   * @throws IllegalArgumentException if tension or elongation does not rise from one point to the
   *     next; the message tells which
   */
  public Rope withStretch(List<StretchPoint> points) {
    return new Rope(strength, diameter, linearDensity, rising("stretch", points), dropStretch);
  }

  /**
   * Returns this rope with a stretch curve of the worked rope as it pulls in a drop, which starts
   * at no tension and no elongation.
   *
   * @param points the points of the curve, tension and elongation both rising; empty for none
   * @return the rope
   * @throws IllegalArgumentException if tension or elongation does not rise from one point to the
   *     next; the message tells which
   */
  public Rope withDropStretch(List<StretchPoint> points) {
    return new Rope(strength, diameter, linearDensity, stretch, rising("drop stretch", points));
  }

  private static List<StretchPoint> rising(String name, List<StretchPoint> points) {
    List<StretchPoint> copy = List.copyOf(points);
    for (int i = 1; i < copy.size(); i++) {
      if (!copy.get(i - 1).isBelow(copy.get(i))) {
        throw new IllegalArgumentException(
            name
                + ": wants tension and elongation to rise, got "
                + copy.get(i - 1)
                + ", then "
                + copy.get(i));
      }
    }
    return copy;
  }

  /**
   * Returns the minimum breaking strength.
   *
   * @return the strength in newtons, above zero; empty if not stated
   */
  public Optional<Quantity<Force>> minimumBreakingStrength() {
    return strength.isEmpty()
        ? Optional.empty()
        : Optional.of(Si.of(strength.getAsDouble(), Kind.FORCE));
  }

  /**
   * Returns the nominal diameter.
   *
   * @return the diameter in metres, above zero; empty if not stated
   */
  public Optional<Quantity<Length>> diameter() {
    return diameter.isEmpty()
        ? Optional.empty()
        : Optional.of(Si.of(diameter.getAsDouble(), Kind.LENGTH));
  }

  /**
   * Returns the mass for each length.
   *
   * @return the linear density in kilograms per metre, above zero; empty if not stated
   */
  public Optional<Quantity<LinearDensity>> linearDensity() {
    return linearDensity.isEmpty()
        ? Optional.empty()
        : Optional.of(Si.of(linearDensity.getAsDouble(), Kind.LINEAR_DENSITY));
  }

  /**
   * Returns the points of the stretch curve of the worked rope as it pulls in a drop.
   *
   * @return the points, tension and elongation both rising; empty if not stated
   */
  public List<StretchPoint> dropStretch() {
    return dropStretch;
  }

  /**
   * Returns the points of the stretch curve of a slow pull.
   *
   * @return the points, tension and elongation both rising; empty if not stated
   */
  public List<StretchPoint> stretch() {
    return stretch;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Rope r
        && strength.equals(r.strength)
        && diameter.equals(r.diameter)
        && linearDensity.equals(r.linearDensity)
        && stretch.equals(r.stretch)
        && dropStretch.equals(r.dropStretch);
  }

  @Override
  public int hashCode() {
    return Objects.hash(strength, diameter, linearDensity, stretch, dropStretch);
  }

  @Override
  public String toString() {
    return "rope: minimum breaking strength "
        + text(strength, " N")
        + ", diameter "
        + text(diameter, " m")
        + ", linear density "
        + text(linearDensity, " kg/m")
        + ", stretch "
        + (stretch.isEmpty() ? "not stated" : stretch)
        + (dropStretch.isEmpty() ? "" : ", in a drop " + dropStretch);
  }

  private static String text(OptionalDouble value, String unit) {
    return value.isEmpty() ? "not stated" : QuantityText.number(value.getAsDouble()) + unit;
  }
}
