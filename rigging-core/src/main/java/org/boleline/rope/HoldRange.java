package org.boleline.rope;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * The tensions that hold a load at rest behind one or more contacts.
 *
 * <p>Friction gives a limit, not a value: at rest every tension from {@link #least}, where the load
 * is about to run down, to {@link #most}, where it is about to go up, holds. Immutable and
 * thread-safe; equality is exact, on the tensions.
 *
 * <pre>{@code
 * HoldRange hand =
 *     HoldRange.of(kilonewtons(2))
 *         .past(new FrictionRing(0.25), Turn.HALF)
 *         .past(new FrictionRing(0.2), Turn.ofWraps(2));
 * }</pre>
 */
public final class HoldRange {
  private final double least;
  private final double most;
  private final List<Step> steps;

  private HoldRange(double least, double most, List<Step> steps) {
    this.least = least;
    this.most = most;
    this.steps = steps;
  }

  /**
   * Obtains the range in front of any contact: the load's tension alone.
   *
   * @param load tension of the load's leg, zero or more, not null
   * @return the range; its ends are equal
   * @throws IllegalArgumentException if the tension is negative
   */
  public static HoldRange of(Quantity<Force> load) {
    double tension = Si.valueZeroOrMore(load, Kind.FORCE, "load");
    return new HoldRange(tension, tension, List.of());
  }

  /**
   * Returns the range behind one more contact.
   *
   * @equation T_least / t to T_most * t
   * @validity as the tension ratio of the hardware
   * @source definition of the tension ratio t; the limit can act either way at rest
   * @accuracy rounding only
   * @param hardware what the rope runs over, not null
   * @param turn turn of the rope there, not null
   * @return the range
   * @throws IllegalArgumentException if the ratio or a tension exceeds the largest double
   */
  public HoldRange past(Hardware hardware, Turn turn) {
    Step ratio = hardware.step(turn);
    Step lower = FrictionFormulas.SLACK_TENSION.step(least, ratio.result());
    Step upper = FrictionFormulas.TIGHT_TENSION.step(most, ratio.result());
    List<Step> all = new ArrayList<>(steps);
    all.addAll(List.of(ratio, lower, upper));
    return new HoldRange(lower.result(), upper.result(), List.copyOf(all));
  }

  /**
   * Returns the least tension that holds: below it the load runs down.
   *
   * @return the tension in newtons
   */
  public Quantity<Force> least() {
    return Si.of(least, Kind.FORCE);
  }

  /**
   * Returns the greatest tension that holds: above it the load goes up.
   *
   * @return the tension in newtons
   */
  public Quantity<Force> most() {
    return Si.of(most, Kind.FORCE);
  }

  /**
   * Tells whether a tension holds the load at rest.
   *
   * @param tension the tension behind the last contact, not null
   * @return true from {@link #least} to {@link #most}, both included
   */
  public boolean isHeldBy(Quantity<Force> tension) {
    double value = Si.value(tension, Kind.FORCE, "tension");
    return value >= least && value <= most;
  }

  /**
   * Returns the steps that gave the ends: for each contact the ratio, the least and the most.
   *
   * @return the steps, in order
   */
  public List<Step> steps() {
    return steps;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HoldRange h
        && Double.compare(least, h.least) == 0
        && Double.compare(most, h.most) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(least) + Double.hashCode(most);
  }

  @Override
  public String toString() {
    return QuantityText.print(least(), Kind.FORCE)
        + " to "
        + QuantityText.print(most(), Kind.FORCE);
  }
}
