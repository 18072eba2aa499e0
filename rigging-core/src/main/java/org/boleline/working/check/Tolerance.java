package org.boleline.working.check;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * How far a person's number may lie from ours and still agree: relative, absolute, or within the
 * spread of the numbers put in. A number agrees if any of them lets it.
 *
 * <p>A stated rounding comes on top: half a unit of the last figure. Immutable and thread-safe.
 */
public final class Tolerance {
  private final double relative;
  private final Map<String, Double> absolute;
  private final List<Spread> spreads;

  /** Lowest and highest value of a number put in, as text with unit. */
  record Spread(String symbol, String low, String high) {}

  private Tolerance(double relative, Map<String, Double> absolute, List<Spread> spreads) {
    this.relative = relative;
    this.absolute = absolute;
    this.spreads = List.copyOf(spreads);
  }

  /**
   * Obtains a relative tolerance.
   *
   * @param ratio difference over our number, 0 or more; {@code 0.005} is half a percent
   * @return the tolerance
   * @throws IllegalArgumentException if the ratio is negative, above 1 or not a number
   */
  public static Tolerance relative(double ratio) {
    if (!(ratio >= 0 && ratio <= 1)) {
      throw new IllegalArgumentException("ratio: wants 0 to 1, got " + ratio);
    }
    return new Tolerance(ratio, Map.of(), List.of());
  }

  /**
   * Returns a copy that also lets numbers of one kind differ by an amount.
   *
   * @param <Q> the quantity type
   * @param amount the greatest difference, 0 or more
   * @param kind its kind
   * @return the copy
   * @throws IllegalArgumentException if the amount is negative or not of the kind
   */
  public <Q extends Quantity<Q>> Tolerance orAbsolute(Quantity<Q> amount, Kind<Q> kind) {
    double most = Si.value(amount, kind, "amount");
    if (most < 0) {
      throw new IllegalArgumentException("amount: wants 0 or more, got " + most);
    }
    Map<String, Double> all = new LinkedHashMap<>(absolute);
    all.put(kind.ucum(), most);
    return new Tolerance(relative, Map.copyOf(all), spreads);
  }

  /**
   * Returns a copy that also lets a number lie anywhere between its least and greatest value while
   * a number put in goes through its spread, alone and together with the other spreads. Looked at
   * are the ends of all spreads; a step that turns round in between may go further.
   *
   * @param symbol symbol of a number that is given to the worksheet, such as {@code mu}
   * @param low its least value, with its unit, such as {@code 0.2}
   * @param high its greatest value, with its unit
   * @return the copy; whether the texts make sense shows in {@link HandCheck#of}
   */
  public Tolerance orWithinSpread(String symbol, String low, String high) {
    List<Spread> all = new ArrayList<>(spreads);
    all.add(
        new Spread(
            requireNonNull(symbol, "symbol"),
            requireNonNull(low, "low"),
            requireNonNull(high, "high")));
    return new Tolerance(relative, absolute, all);
  }

  /** The greatest difference from our number, in its unit, without spreads. */
  double most(double ours, String unit) {
    return Math.max(relative * Math.abs(ours), absolute.getOrDefault(unit, 0.0));
  }

  List<Spread> spreads() {
    return spreads;
  }
}
