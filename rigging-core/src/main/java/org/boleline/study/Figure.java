package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A number of a plan or a result together with what it is of: a quantity of some kind, or a pure
 * number.
 *
 * <p>Immutable and thread-safe; equality is exact, on kind and SI value.
 */
public final class Figure {
  private final double value;
  private final @Nullable Kind<?> kind;

  private Figure(double value, @Nullable Kind<?> kind) {
    this.value = value + 0.0; // no minus zero
    this.kind = kind;
  }

  /**
   * Obtains a figure that is a quantity.
   *
   * @param <Q> the quantity type
   * @param quantity the quantity, not null
   * @param kind what it is of, not null
   * @return the figure
   * @throws IllegalArgumentException if the quantity is not of the kind, or not finite
   */
  public static <Q extends Quantity<Q>> Figure of(Quantity<Q> quantity, Kind<Q> kind) {
    return new Figure(Si.value(quantity, kind, kind.name()), kind);
  }

  /**
   * Obtains a figure that is a pure number, such as a friction or a number of wraps.
   *
   * @param ratio the number, finite
   * @return the figure
   * @throws IllegalArgumentException if it is not finite
   */
  public static Figure ofRatio(double ratio) {
    return of(ratio, null);
  }

  /** Obtains a figure from its SI value; a null kind is a pure number. */
  static Figure of(double si, @Nullable Kind<?> kind) {
    if (!Double.isFinite(si)) {
      throw new IllegalArgumentException("figure: wants a finite number, got " + si);
    }
    return new Figure(si, kind);
  }

  /**
   * Returns what the figure is of.
   *
   * @return the kind; empty for a pure number
   */
  public Optional<Kind<?>> kind() {
    return Optional.ofNullable(kind);
  }

  /**
   * Returns the figure as a quantity.
   *
   * @param <Q> the quantity type
   * @param wanted what it must be of, not null
   * @return the quantity, in the SI unit
   * @throws IllegalArgumentException if it is of something else
   */
  public <Q extends Quantity<Q>> Quantity<Q> in(Kind<Q> wanted) {
    requireNonNull(wanted, "wanted");
    requireKind(wanted);
    return Si.of(value, wanted);
  }

  /**
   * Returns the figure as a pure number.
   *
   * @return the number, finite
   * @throws IllegalArgumentException if it is a quantity
   */
  public double ratio() {
    requireKind(null);
    return value;
  }

  /** Throws unless the figure is of a kind; null stands for a pure number. */
  void requireKind(@Nullable Kind<?> wanted) {
    if (kind != wanted) {
      throw new IllegalArgumentException(
          "figure: wants " + words(wanted) + ", got " + words(kind) + ", " + text());
    }
  }

  /** Throws unless the figure is of a kind and above zero. */
  void requireAboveZero(String name, @Nullable Kind<?> wanted) {
    requireKind(wanted);
    if (!(value > 0)) {
      throw new IllegalArgumentException(name + ": wants more than zero, got " + text());
    }
  }

  /** Throws unless the figure is of a kind and not negative. */
  void requireZeroOrMore(String name, @Nullable Kind<?> wanted) {
    requireKind(wanted);
    if (!(value >= 0)) {
      throw new IllegalArgumentException(name + ": wants zero or more, got " + text());
    }
  }

  static String words(@Nullable Kind<?> kind) {
    return kind == null ? "a pure number" : "a quantity of " + kind;
  }

  /** Returns the value in the SI unit. */
  double si() {
    return value;
  }

  /**
   * Returns the figure as plan files write it.
   *
   * @return for instance {@code 12.5 m}, or {@code 0.2}
   */
  public String text() {
    return kind == null ? QuantityText.number(value) : print(kind);
  }

  private <Q extends Quantity<Q>> String print(Kind<Q> of) {
    return QuantityText.print(Si.of(value, of), of);
  }

  /**
   * Returns the figure with four digits, for people.
   *
   * @return for instance {@code 1235 N} or {@code 12.35 kN}
   */
  public String rounded() {
    if (kind == null) {
      return QuantityText.number(value, 4);
    }
    String unit = QuantityText.symbols(kind).get(0);
    double size = Math.abs(value);
    String prefix = size >= 1e9 ? "G" : size >= 1e6 ? "M" : size >= 1e4 ? "k" : "";
    if (!QuantityText.symbols(kind).contains(prefix + unit)) {
      prefix = "";
    }
    double one = prefix.isEmpty() ? 1 : QuantityText.factor(prefix + unit).doubleValue();
    return QuantityText.number(value / one, 4) + " " + prefix + unit;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Figure f && Double.compare(value, f.value) == 0 && kind == f.kind;
  }

  @Override
  public int hashCode() {
    return Objects.hash(value, kind);
  }

  @Override
  public String toString() {
    return text();
  }
}
