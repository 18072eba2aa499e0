package org.boleline.rope;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Friction worked back from the tensions that just raise and just lower the same load.
 *
 * <p>The pair also gives the load. Compare it with the weighed one: where the two differ much, no
 * single coefficient fits both measurements. Immutable and thread-safe; equality is exact, on what
 * was measured.
 */
public final class FrictionFound {
  private final Step friction;
  private final Step load;

  private FrictionFound(Step friction, Step load) {
    this.friction = friction;
    this.load = load;
  }

  /**
   * Works friction and load back from a pair of tensions.
   *
   * @equation mu = ln(T_raise / T_lower) / (2 * w); T_load = sqrt(T_raise * T_lower)
   * @validity one load and one turn, slow and steady both ways, the same friction both ways
   * @source Delaney, Physics for Roping Technicians, 2022, pp. 82-88; the load derived
   * @accuracy rounding only; an error of 1 % in one tension moves mu by 0.005 / w
   * @param raising tension at the hand that just raises the load, at least the lowering one, not
   *     null
   * @param lowering tension at the hand that just lets it down, above zero, not null
   * @param turn turn of the rope over the contact, above zero, not null
   * @return friction and load
   * @throws IllegalArgumentException if an argument is outside its range
   */
  public static FrictionFound from(Quantity<Force> raising, Quantity<Force> lowering, Turn turn) {
    double up = Si.valueAboveZero(raising, Kind.FORCE, "raising");
    double down = Si.valueAboveZero(lowering, Kind.FORCE, "lowering");
    double w = Radians.of(turn);
    if (up < down) {
      throw new IllegalArgumentException(
          "raising: wants at least the lowering tension " + down + " N, got " + up + " N");
    }
    if (w == 0) {
      throw new IllegalArgumentException("turn: wants more than zero, got " + turn);
    }
    return new FrictionFound(
        FrictionFormulas.FRICTION_FROM_PAIR.step(up, down, w),
        FrictionFormulas.LOAD_FROM_PAIR.step(up, down));
  }

  /**
   * Returns the coefficient of friction.
   *
   * @return the coefficient, zero or more
   */
  public double friction() {
    return friction.result();
  }

  /**
   * Returns the tension of the load that the pair tells.
   *
   * @return the tension in newtons, between the two measured ones
   */
  public Quantity<Force> load() {
    return Si.of(load.result(), Kind.FORCE);
  }

  /**
   * Returns the steps that gave friction and load.
   *
   * @return two steps
   */
  public List<Step> steps() {
    return List.of(friction, load);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FrictionFound f
        && Double.compare(friction.input(0), f.friction.input(0)) == 0
        && Double.compare(friction.input(1), f.friction.input(1)) == 0
        && Double.compare(friction.input(2), f.friction.input(2)) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * (31 * Double.hashCode(friction.input(0)) + Double.hashCode(friction.input(1)))
        + Double.hashCode(friction.input(2));
  }

  @Override
  public String toString() {
    return friction + "\n" + load;
  }
}
