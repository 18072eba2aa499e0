package org.boleline.stem;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A named station of a stem whose movement is wanted.
 *
 * <p>Immutable and thread-safe.
 */
public final class Mark {
  private final String name;
  private final double at;

  private Mark(String name, double at) {
    this.name = name;
    this.at = at;
  }

  /**
   * Obtains a mark.
   *
   * @param name its name, one line of at most 80 characters, not null
   * @param at the station, zero or more, not null
   * @return the mark
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static Mark of(String name, Quantity<Length> at) {
    requireNonNull(name, "name");
    requireNonNull(at, "at");
    return Refusals.check(refusals -> stated(name, at, refusals));
  }

  /**
   * Obtains a mark as stated, for readers of files.
   *
   * @param name its name, or null if that could not be had
   * @param at the station, or null if that could not be had
   * @param refusals notes what is wrong, at the mark
   * @return the mark
   */
  public static Mark stated(
      @Nullable String name, @Nullable Quantity<Length> at, Refusals refusals) {
    return new Mark(refusals.at("name").name(name), Bounds.station(at, refusals));
  }

  double atMetres() {
    return at;
  }

  /**
   * Returns the name.
   *
   * @return the name, unique on its stem
   */
  public String name() {
    return name;
  }

  /**
   * Returns the station.
   *
   * @return where along the stem, in metres from the base
   */
  public Quantity<Length> at() {
    return Si.of(at, Kind.LENGTH);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Mark m && name.equals(m.name) && Double.compare(at, m.at) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * name.hashCode() + Double.hashCode(at);
  }

  @Override
  public String toString() {
    return name + " at " + QuantityText.print(at(), Kind.LENGTH);
  }
}
