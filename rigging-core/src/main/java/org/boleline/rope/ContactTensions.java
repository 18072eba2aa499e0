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
 * Tensions on both sides of a contact where the rope is about to slip toward the tight side.
 *
 * <p>In lowering the load's side is the tight one, in raising the tail's side. Immutable and
 * thread-safe; equality is exact, on the tensions.
 *
 * <pre>{@code
 * ContactTensions lowered =
 *     ContactTensions.fromTight(new FrictionRing(0.25), Turn.HALF, kilonewtons(2));
 * lowered.slack(); // 912 N
 * }</pre>
 */
public final class ContactTensions {
  private final double tight;
  private final double slack;
  private final List<Step> steps;

  private ContactTensions(double tight, double slack, List<Step> steps) {
    this.tight = tight;
    this.slack = slack;
    this.steps = steps;
  }

  /**
   * Obtains both tensions from the one on the tight side.
   *
   * @equation T_slack = T_tight / t
   * @validity as the tension ratio of the hardware
   * @source definition of the tension ratio t
   * @accuracy rounding only
   * @param hardware what the rope runs over, not null
   * @param turn turn of the rope, not null
   * @param tight tension on the tight side, zero or more, not null
   * @return both tensions
   * @throws IllegalArgumentException if the tension is negative, or the ratio exceeds the largest
   *     double
   */
  public static ContactTensions fromTight(Hardware hardware, Turn turn, Quantity<Force> tight) {
    double tension = Si.valueZeroOrMore(tight, Kind.FORCE, "tight");
    Step ratio = hardware.step(turn);
    Step slack = FrictionFormulas.SLACK_TENSION.step(tension, ratio.result());
    return new ContactTensions(tension, slack.result(), List.of(ratio, slack));
  }

  /**
   * Obtains both tensions from the one on the slack side.
   *
   * @equation T_tight = T_slack * t
   * @validity as the tension ratio of the hardware
   * @source definition of the tension ratio t
   * @accuracy rounding only
   * @param hardware what the rope runs over, not null
   * @param turn turn of the rope, not null
   * @param slack tension on the slack side, zero or more, not null
   * @return both tensions
   * @throws IllegalArgumentException if the tension is negative, or the ratio or the other tension
   *     exceeds the largest double
   */
  public static ContactTensions fromSlack(Hardware hardware, Turn turn, Quantity<Force> slack) {
    double tension = Si.valueZeroOrMore(slack, Kind.FORCE, "slack");
    Step ratio = hardware.step(turn);
    Step tight = FrictionFormulas.TIGHT_TENSION.step(tension, ratio.result());
    return new ContactTensions(tight.result(), tension, List.of(ratio, tight));
  }

  static ContactTensions of(double tight, double slack, Step... steps) {
    return new ContactTensions(tight, slack, List.of(steps));
  }

  /**
   * Returns the tension on the tight side.
   *
   * @return the tension in newtons, at least {@link #slack}
   */
  public Quantity<Force> tight() {
    return Si.of(tight, Kind.FORCE);
  }

  /**
   * Returns the tension on the slack side.
   *
   * @return the tension in newtons, at most {@link #tight}
   */
  public Quantity<Force> slack() {
    return Si.of(slack, Kind.FORCE);
  }

  /**
   * Returns the steps that gave the tensions.
   *
   * @return the steps, in order
   */
  public List<Step> steps() {
    return steps;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ContactTensions c
        && Double.compare(tight, c.tight) == 0
        && Double.compare(slack, c.slack) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(tight) + Double.hashCode(slack);
  }

  @Override
  public String toString() {
    return "tight "
        + QuantityText.print(tight(), Kind.FORCE)
        + ", slack "
        + QuantityText.print(slack(), Kind.FORCE);
  }
}
