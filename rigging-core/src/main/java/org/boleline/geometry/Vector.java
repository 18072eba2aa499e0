package org.boleline.geometry;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A vector in space with a unit: a position, a movement, a force or a moment.
 *
 * <p>Right-handed axes, z up. Immutable and thread-safe; equality is exact, on the SI components.
 *
 * @param <Q> the quantity of its components
 */
public final class Vector<Q extends Quantity<Q>> {
  private final Kind<Q> kind;
  private final double x;
  private final double y;
  private final double z;

  private Vector(Kind<Q> kind, double x, double y, double z) {
    this.kind = requireNonNull(kind, "kind");
    this.x = x + 0.0; // no minus zero
    this.y = y + 0.0;
    this.z = z + 0.0;
  }

  /**
   * Obtains a vector from its three components.
   *
   * @param <Q> the quantity of the components
   * @param kind the kind of the components, not null
   * @param x component along +x, not null
   * @param y component along +y, not null
   * @param z component upward, not null
   * @return the vector
   */
  public static <Q extends Quantity<Q>> Vector<Q> of(
      Kind<Q> kind, Quantity<Q> x, Quantity<Q> y, Quantity<Q> z) {
    return new Vector<>(
        kind, Si.value(x, kind, "x"), Si.value(y, kind, "y"), Si.value(z, kind, "z"));
  }

  /**
   * Obtains a position or a movement from its three components.
   *
   * @param x along +x, not null
   * @param y along +y, not null
   * @param z upward, not null
   * @return the vector
   */
  public static Vector<Length> of(Quantity<Length> x, Quantity<Length> y, Quantity<Length> z) {
    return of(Kind.LENGTH, x, y, z);
  }

  /**
   * Obtains a vector from three numbers in the SI unit of its kind.
   *
   * @param <Q> the quantity of the components
   * @param kind the kind whose SI unit the numbers are in, not null
   * @param siComponents exactly three finite numbers
   * @return the vector
   * @throws IllegalArgumentException if there are not three numbers, or one is not finite
   */
  public static <Q extends Quantity<Q>> Vector<Q> ofSi(Kind<Q> kind, double... siComponents) {
    if (siComponents.length != 3) {
      throw new IllegalArgumentException("wants three components, got " + siComponents.length);
    }
    for (double component : siComponents) {
      if (!Double.isFinite(component)) {
        throw new IllegalArgumentException("wants finite components, got " + component);
      }
    }
    return new Vector<>(kind, siComponents[0], siComponents[1], siComponents[2]);
  }

  /**
   * Returns the kind of the components.
   *
   * @return the kind
   */
  public Kind<Q> kind() {
    return kind;
  }

  /**
   * Returns the component along +x.
   *
   * @return the component, in the SI unit
   */
  public Quantity<Q> x() {
    return Si.of(x, kind);
  }

  /**
   * Returns the component along +y.
   *
   * @return the component, in the SI unit
   */
  public Quantity<Q> y() {
    return Si.of(y, kind);
  }

  /**
   * Returns the upward component.
   *
   * @return the component, in the SI unit
   */
  public Quantity<Q> z() {
    return Si.of(z, kind);
  }

  /**
   * Returns the length of the vector.
   *
   * @return the magnitude, zero or more, in the SI unit
   */
  public Quantity<Q> magnitude() {
    return Si.of(Math.sqrt(x * x + y * y + z * z), kind);
  }

  /**
   * Returns the components as a new array, in the SI unit of a kind.
   *
   * @param wanted the kind of this vector: names the unit at the place of use
   * @return x, y and z
   * @throws IllegalArgumentException if the vector is of another kind
   */
  public double[] in(Kind<Q> wanted) {
    if (wanted != kind) {
      throw new IllegalArgumentException("wants the kind " + kind + ", got " + wanted);
    }
    return new double[] {x, y, z};
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Vector<?> v
        && kind == v.kind
        && Double.compare(x, v.x) == 0
        && Double.compare(y, v.y) == 0
        && Double.compare(z, v.z) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(x) + Double.hashCode(y)) + Double.hashCode(z);
  }

  @Override
  public String toString() {
    return "("
        + QuantityText.number(x)
        + ", "
        + QuantityText.number(y)
        + ", "
        + QuantityText.number(z)
        + ") "
        + kind.ucum();
  }
}
