package org.boleline.rope;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Wraps on a lowering device that bring the tail's tension down to what a hand holds.
 *
 * <p>These are the wraps at which the rope is about to run. Friction is hardly ever known to the
 * last wrap: see {@link WrapsRange}. Immutable and thread-safe; equality is exact, on what was
 * asked.
 */
public final class Wraps {
  private final double tail;
  private final double hand;
  private final double friction;
  private final double otherTurn;
  private final Step exact;
  private final Step half;
  private final Step whole;

  private Wraps(double tail, double hand, double friction, double otherTurn) {
    this.tail = tail;
    this.hand = hand;
    this.friction = friction;
    this.otherTurn = otherTurn;
    exact = FrictionFormulas.WRAPS_NEEDED.step(tail, hand, friction, otherTurn);
    half = FrictionFormulas.NEXT_HALF_WRAPS.step(exact.result());
    whole = FrictionFormulas.NEXT_WHOLE_WRAPS.step(exact.result());
  }

  /**
   * Obtains the wraps that a hand force needs.
   *
   * @equation n = ln(T_tight / T_hand) / (2 * pi * mu)
   * @validity mu 0.05 to 0.6; outside it is computed, and the step cautions. About to run; left
   *     out: bending stiffness and weight of the rope, speed
   * @source Euler-Eytelwein
   * @accuracy rounding only
   * @param tail tension that comes down to the device, above zero, not null
   * @param hand tension that the hand holds, above zero, not null
   * @param friction coefficient of friction of rope on device, above 0, at most 2
   * @return the wraps
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static Wraps needed(Quantity<Force> tail, Quantity<Force> hand, double friction) {
    return new Wraps(
        Si.valueAboveZero(tail, Kind.FORCE, "tail"),
        Si.valueAboveZero(hand, Kind.FORCE, "hand"),
        Checks.frictionAboveZero(friction),
        0);
  }

  /**
   * Returns the wraps needed where the rope turns at the device besides the wraps, on its way in
   * and out.
   *
   * @param turn that turn, not null
   * @return the wraps, fewer by that turn, at least zero
   */
  public Wraps withOtherTurn(Turn turn) {
    return new Wraps(tail, hand, friction, Radians.of(turn));
  }

  /**
   * Returns the number of wraps needed.
   *
   * @return the number, zero or more, with its fraction
   */
  public double exactWraps() {
    return exact.result();
  }

  /**
   * Returns the number of wraps needed, to the next half.
   *
   * @return the number, a multiple of one half, at least {@link #exactWraps} but for rounding
   */
  public double nextHalfWraps() {
    return half.result();
  }

  /**
   * Returns the number of wraps needed, to the next whole one.
   *
   * @return the number, whole, at least {@link #nextHalfWraps}
   */
  public double nextWholeWraps() {
    return whole.result();
  }

  /**
   * Returns the tension that remains for the hand behind a number of wraps, about to run.
   *
   * @equation T_hand = T_tight / exp(mu * (2 * pi * n + w))
   * @validity as {@link #needed}
   * @source Euler-Eytelwein
   * @accuracy rounding only
   * @param wraps number of wraps, zero or more
   * @return the tension in newtons
   * @throws IllegalArgumentException if the number is negative or not finite, or the ratio exceeds
   *     the largest double
   */
  public Quantity<Force> handForce(double wraps) {
    double turn = Radians.of(Turn.ofWraps(wraps)) + otherTurn;
    double ratio = FrictionFormulas.CAPSTAN.value(friction, turn);
    return Si.of(FrictionFormulas.SLACK_TENSION.value(tail, ratio), Kind.FORCE);
  }

  /**
   * Returns the steps that gave the numbers: needed, next half, next whole.
   *
   * @return three steps
   */
  public List<Step> steps() {
    return List.of(exact, half, whole);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Wraps w
        && Double.compare(tail, w.tail) == 0
        && Double.compare(hand, w.hand) == 0
        && Double.compare(friction, w.friction) == 0
        && Double.compare(otherTurn, w.otherTurn) == 0;
  }

  @Override
  public int hashCode() {
    return 31
            * (31 * (31 * Double.hashCode(tail) + Double.hashCode(hand))
                + Double.hashCode(friction))
        + Double.hashCode(otherTurn);
  }

  @Override
  public String toString() {
    return QuantityText.number(exactWraps())
        + " wraps, to the next half "
        + QuantityText.number(nextHalfWraps())
        + ", to the next whole one "
        + QuantityText.number(nextWholeWraps());
  }
}
