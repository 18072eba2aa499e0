package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * The greatest value of something in a catch, with its time: in the first pulse and over all of the
 * time that was followed.
 *
 * <p>The first pulse lasts until the tension of the load leg first falls below the weight again.
 * Immutable and thread-safe.
 *
 * @param <Q> kind of quantity
 */
public final class TimedPeak<Q extends Quantity<Q>> {
  private final Kind<Q> kind;
  private final double first;
  private final double firstAt;
  private final double most;
  private final double mostAt;

  TimedPeak(Kind<Q> kind, double first, double firstAt, double most, double mostAt) {
    this.kind = requireNonNull(kind, "kind");
    this.first = first;
    this.firstAt = firstAt;
    this.most = most;
    this.mostAt = mostAt;
  }

  /**
   * Returns the greatest value in the first pulse.
   *
   * @return the value, zero or more
   */
  public Quantity<Q> firstPulse() {
    return Si.of(first, kind);
  }

  /**
   * Returns when the first pulse has its greatest value.
   *
   * @return the time in seconds since the start
   */
  public Quantity<Time> firstPulseAt() {
    return Si.of(firstAt, Kind.TIME);
  }

  /**
   * Returns the greatest value over all of the time.
   *
   * @return the value, zero or more
   */
  public Quantity<Q> overall() {
    return Si.of(most, kind);
  }

  /**
   * Returns when the greatest value of all is reached.
   *
   * @return the time in seconds since the start
   */
  public Quantity<Time> overallAt() {
    return Si.of(mostAt, Kind.TIME);
  }

  @Override
  public String toString() {
    return QuantityText.print(overall(), kind);
  }
}
