package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * How the piece drops before the rope takes it, and how the rope is held then.
 *
 * <p>Stored in a plan; the analysis of slow motion does not use it. Immutable and thread-safe.
 */
public final class DropSpec {
  /** How the rope is held at the device when the piece comes into it. */
  public sealed interface Hold {}

  /** The rope is made fast: nothing runs. */
  public enum Locked implements Hold {
    /** The only one. */
    LOCKED
  }

  /** The rope slips through the device at a set tension. Immutable and thread-safe. */
  public static final class Slipping implements Hold {
    private final double tension;

    private Slipping(double tension) {
      this.tension = tension;
    }

    /**
     * Obtains a hold that slips.
     *
     * @param slipTension tension of the leg into the device while it slips, above zero, at most 1
     *     GN, not null
     * @return the hold
     * @throws org.boleline.explain.PlanRefusedException if the tension is outside its range
     */
    public static Slipping of(Quantity<Force> slipTension) {
      requireNonNull(slipTension, "slipTension");
      return Refusals.check(refusals -> stated(slipTension, refusals));
    }

    /**
     * Obtains a hold that slips as stated, for readers of files.
     *
     * @param slipTension the tension, or null if that could not be had
     * @param refusals notes what is wrong, at the hold
     * @return the hold
     */
    public static Slipping stated(@Nullable Quantity<Force> slipTension, Refusals refusals) {
      return new Slipping(
          refusals.at("slipTension").aboveZero(slipTension, Kind.FORCE, Bounds.FORCE));
    }

    /**
     * Returns the tension while the device slips.
     *
     * @return the tension in newtons, above zero
     */
    public Quantity<Force> slipTension() {
      return Si.of(tension, Kind.FORCE);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Slipping s && Double.compare(tension, s.tension) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(tension);
    }

    @Override
    public String toString() {
      return "slips at " + QuantityText.print(slipTension(), Kind.FORCE);
    }
  }

  /** A worker lets the rope run and then holds it by hand. Immutable and thread-safe. */
  public static final class ByHand implements Hold {
    private final double force;
    private final double delay;

    private ByHand(double force, double delay) {
      this.force = force;
      this.delay = delay;
    }

    /**
     * Obtains a hold by hand.
     *
     * @param handForce force of the hand behind the wraps, zero or more, at most 1 GN, not null
     * @param delay time after which the hand holds, zero or more, at most 60 s, not null
     * @return the hold
     * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
     */
    public static ByHand of(Quantity<Force> handForce, Quantity<Time> delay) {
      requireNonNull(handForce, "handForce");
      requireNonNull(delay, "delay");
      return Refusals.check(refusals -> stated(handForce, delay, refusals));
    }

    /**
     * Obtains a hold by hand as stated, for readers of files.
     *
     * @param handForce the force, or null if that could not be had
     * @param delay the time, or null if that could not be had
     * @param refusals notes what is wrong, at the hold
     * @return the hold
     */
    public static ByHand stated(
        @Nullable Quantity<Force> handForce, @Nullable Quantity<Time> delay, Refusals refusals) {
      return new ByHand(
          refusals.at("handForce").between(handForce, Kind.FORCE, 0, Bounds.FORCE),
          refusals.at("delay").between(delay, Kind.TIME, 0, Bounds.DELAY));
    }

    /**
     * Returns the force of the hand behind the wraps.
     *
     * @return the force in newtons, zero or more
     */
    public Quantity<Force> handForce() {
      return Si.of(force, Kind.FORCE);
    }

    /**
     * Returns the time after which the hand holds.
     *
     * @return the time in seconds, zero or more
     */
    public Quantity<Time> delay() {
      return Si.of(delay, Kind.TIME);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof ByHand h
          && Double.compare(force, h.force) == 0
          && Double.compare(delay, h.delay) == 0;
    }

    @Override
    public int hashCode() {
      return 31 * Double.hashCode(force) + Double.hashCode(delay);
    }

    @Override
    public String toString() {
      return "held by hand with "
          + QuantityText.print(handForce(), Kind.FORCE)
          + " after "
          + QuantityText.print(delay(), Kind.TIME);
    }
  }

  private final double fall;
  private final Hold hold;

  private DropSpec(double fall, Hold hold) {
    this.fall = fall;
    this.hold = hold;
  }

  /**
   * Obtains a drop.
   *
   * @param fall how far the piece falls before the rope is taut, zero or more, at most 200 m, not
   *     null
   * @param hold how the rope is held, not null
   * @return the drop
   * @throws org.boleline.explain.PlanRefusedException if the fall is outside its range
   */
  public static DropSpec of(Quantity<Length> fall, Hold hold) {
    requireNonNull(fall, "fall");
    requireNonNull(hold, "hold");
    return Refusals.check(refusals -> stated(fall, hold, refusals));
  }

  /**
   * Obtains a drop as stated, for readers of files.
   *
   * @param fall how far the piece falls, or null if that could not be had
   * @param hold how the rope is held, or null if that could not be had
   * @param refusals notes what is wrong, at the drop
   * @return the drop
   */
  public static DropSpec stated(
      @Nullable Quantity<Length> fall, @Nullable Hold hold, Refusals refusals) {
    return new DropSpec(
        refusals.at("fall").between(fall, Kind.LENGTH, 0, Bounds.FALL),
        refusals
            .at("device")
            .present(
                hold,
                "\"locked\", {\"slipTension\"} or {\"handForce\", \"delay\"}",
                Locked.LOCKED));
  }

  /**
   * Returns how far the piece falls before the rope is taut.
   *
   * @return the height in metres, zero or more
   */
  public Quantity<Length> fall() {
    return Si.of(fall, Kind.LENGTH);
  }

  /**
   * Returns how the rope is held when the piece comes into it.
   *
   * @return the hold
   */
  public Hold hold() {
    return hold;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof DropSpec d && Double.compare(fall, d.fall) == 0 && hold.equals(d.hold);
  }

  @Override
  public int hashCode() {
    return 31 * Double.hashCode(fall) + hold.hashCode();
  }

  @Override
  public String toString() {
    return "drop of " + QuantityText.print(fall(), Kind.LENGTH) + ", " + hold;
  }
}
