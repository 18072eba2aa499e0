package org.boleline.rope;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;

/**
 * Wraps that a hand force needs where friction is known to lie between two values.
 *
 * @param least the wraps at the most friction
 * @param most the wraps at the least friction: these are the ones to lay
 */
public record WrapsRange(Wraps least, Wraps most) {
  /**
   * Obtains the range of wraps that a hand force needs.
   *
   * @equation n = ln(T_tight / T_hand) / (2 * pi * mu), at both ends of mu
   * @validity as {@link Wraps#needed}
   * @source Euler-Eytelwein
   * @accuracy rounding only
   * @param tail tension that comes down to the device, above zero, not null
   * @param hand tension that the hand holds, above zero, not null
   * @param leastFriction least coefficient of friction, above 0, at most 2
   * @param mostFriction greatest coefficient of friction, at least the least one, at most 2
   * @return the range
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static WrapsRange needed(
      Quantity<Force> tail, Quantity<Force> hand, double leastFriction, double mostFriction) {
    if (leastFriction > mostFriction) {
      throw new IllegalArgumentException(
          "friction: wants the least first, got " + leastFriction + " and " + mostFriction);
    }
    return new WrapsRange(
        Wraps.needed(tail, hand, mostFriction), Wraps.needed(tail, hand, leastFriction));
  }

  /**
   * Returns the range where the rope turns at the device besides the wraps.
   *
   * @param turn that turn, not null
   * @return the range, fewer by that turn
   */
  public WrapsRange withOtherTurn(Turn turn) {
    return new WrapsRange(least.withOtherTurn(turn), most.withOtherTurn(turn));
  }

  /**
   * Returns the steps that gave the numbers, first of the least, then of the most wraps.
   *
   * @return six steps
   */
  public List<Step> steps() {
    return Stream.concat(least.steps().stream(), most.steps().stream()).toList();
  }
}
