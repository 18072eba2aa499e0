package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.rope.Hardware;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.units.Stiffness;
import org.jspecify.annotations.Nullable;

/**
 * A point that the rope runs over while it catches a piece.
 *
 * <p>Friction in a catch is its own datum: a rope that is pulled through in a tenth of a second
 * does not hold like one that creeps, and a sheave may not spin up, so that the rope slides on it
 * as on a ring. State the hardware as it acts in the catch.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class CatchPoint {
  private final double ratio;
  private final double turn;
  private final @Nullable Step step;
  private final double @Nullable [] legs;
  private final @Nullable Double stiffness;

  private CatchPoint(
      double ratio,
      double turn,
      @Nullable Step step,
      double @Nullable [] legs,
      @Nullable Double stiffness) {
    this.ratio = ratio;
    this.turn = turn;
    this.step = step;
    this.legs = legs;
    this.stiffness = stiffness;
  }

  /**
   * Obtains a point from what the rope runs over and how far it turns.
   *
   * @param hardware the hardware as it acts in a catch, not null
   * @param turn turn of the rope at the point, not null
   * @return the point
   * @throws org.boleline.explain.PlanRefusedException if the tension ratio is above a million
   */
  public static CatchPoint of(Hardware hardware, Turn turn) {
    Step step = hardware.step(turn);
    return new CatchPoint(checked(step.result()), radians(turn), step, null, null);
  }

  /**
   * Obtains a point from a tension ratio that is known for a catch.
   *
   * @param tensionRatio tension on the side of the load over tension behind the point while the
   *     rope slips toward the load, from 1 to a million
   * @param turn turn of the rope at the point, not null
   * @return the point
   * @throws org.boleline.explain.PlanRefusedException if the ratio is outside its range
   */
  public static CatchPoint ofRatio(double tensionRatio, Turn turn) {
    return new CatchPoint(checked(tensionRatio), radians(turn), null, null, null);
  }

  /**
   * Obtains a point between two legs of known direction; the turn follows from them.
   *
   * @param hardware the hardware as it acts in a catch, not null
   * @param toLoad from the point along the leg on the side of the load, of any length, not null
   * @param toTail from the point along the leg on the other side, of any length, not null
   * @return the point
   * @throws org.boleline.explain.PlanRefusedException if a direction has no length, or the tension
   *     ratio is above a million
   */
  public static CatchPoint between(
      Hardware hardware, Vector<Length> toLoad, Vector<Length> toTail) {
    requireNonNull(hardware, "hardware");
    double[] in = unit(toLoad.in(Kind.LENGTH));
    double[] out = unit(toTail.in(Kind.LENGTH));
    Refusals.check(
        refusals -> {
          direction(in, refusals.at("toLoad"));
          direction(out, refusals.at("toTail"));
          return 0;
        });
    double sum = Math.sqrt(square(in, out, 1));
    double difference = Math.sqrt(square(in, out, -1));
    // Angle between the legs is 2 atan(difference / sum); the turn is what is missing to pi.
    double radians = 2 * Math.atan2(sum, difference);
    Step step = hardware.step(Turn.of(Si.of(radians, Kind.ANGLE)));
    double[] legs = {in[0], in[1], in[2], out[0], out[1], out[2]};
    return new CatchPoint(checked(step.result()), radians, step, legs, null);
  }

  private static double square(double[] a, double[] b, int sign) {
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double c = a[i] + sign * b[i];
      sum += c * c;
    }
    return sum;
  }

  private static double[] unit(double[] v) {
    double most = Math.max(Math.abs(v[0]), Math.max(Math.abs(v[1]), Math.abs(v[2])));
    double[] scaled = {v[0] / most, v[1] / most, v[2] / most};
    double length = Math.sqrt(square(scaled, new double[3], 1));
    return new double[] {scaled[0] / length, scaled[1] / length, scaled[2] / length};
  }

  private static void direction(double[] unit, Refusals refusals) {
    if (Double.isNaN(unit[0] + unit[1] + unit[2])) {
      refusals.add(Refusal.Code.OUT_OF_RANGE, "a direction with a length above zero", "none");
    }
  }

  private static double checked(double ratio) {
    return Refusals.check(
        refusals -> refusals.at("tensionRatio").number(ratio, 1, CatchBounds.RATIO));
  }

  private static double radians(Turn turn) {
    return Si.value(turn.angle(), Kind.ANGLE, "turn");
  }

  /**
   * Returns this point on a spring: what holds it gives way alike in all directions, in proportion
   * to the force.
   *
   * <p>The spring has no mass. That is no bound: a real stem or sling has mass, and the force may
   * be higher or lower than this.
   *
   * @param newStiffness stiffness of what holds the point, from 1 mN/m to 1 TN/m, not null
   * @return the point
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public CatchPoint withStiffness(Quantity<Stiffness> newStiffness) {
    requireNonNull(newStiffness, "newStiffness");
    double value =
        Refusals.check(
            refusals ->
                refusals
                    .at("stiffness")
                    .between(
                        newStiffness,
                        Kind.STIFFNESS,
                        CatchBounds.LEAST_STIFFNESS,
                        CatchBounds.STIFFNESS));
    return new CatchPoint(ratio, turn, step, legs, value);
  }

  /**
   * Returns tension on the side of the load over tension behind the point, while the rope slips
   * toward the load.
   *
   * @return the ratio, 1 or more
   */
  public double tensionRatio() {
    return ratio;
  }

  /**
   * Returns the turn of the rope at the point.
   *
   * @return the turn
   */
  public Turn turn() {
    return Turn.of(Si.of(turn, Kind.ANGLE));
  }

  /**
   * Returns the stiffness of what holds the point.
   *
   * @return the stiffness in newtons per metre; empty if the point does not move
   */
  public Optional<Quantity<Stiffness>> stiffness() {
    return Optional.ofNullable(stiffness).map(value -> Si.of(value, Kind.STIFFNESS));
  }

  /**
   * Returns the step that gave the tension ratio.
   *
   * @return one step; none if the ratio was stated
   */
  public List<Step> steps() {
    return step == null ? List.of() : List.of(step);
  }

  double turnRadians() {
    return turn;
  }

  /** Unit vectors toward load and tail, one after the other; null if not known. */
  double @Nullable [] directions() {
    return legs == null ? null : legs.clone();
  }

  @Nullable Double springRate() {
    return stiffness;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CatchPoint p
        && Double.compare(ratio, p.ratio) == 0
        && Double.compare(turn, p.turn) == 0
        && Arrays.equals(legs, p.legs)
        && Objects.equals(stiffness, p.stiffness);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(ratio) + Double.hashCode(turn);
  }

  @Override
  public String toString() {
    return "point with ratio " + QuantityText.number(ratio) + ", " + turn();
  }
}
