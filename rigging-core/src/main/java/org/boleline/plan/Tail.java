package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Datum;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Source;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/** Where the rope ends, away from the piece. */
public sealed interface Tail {
  /**
   * Returns what was left to defaults.
   *
   * @return the data; the names are JSON pointers from the tail, such as {@code /device/offset}
   */
  default List<Datum> taken() {
    return List.of();
  }

  /** The tail is pulled straight down from the last contact. */
  enum Down implements Tail {
    /** The only one. */
    DOWN
  }

  /** The tail runs to a fixed point; its pull does not act on a stem. */
  final class Point implements Tail {
    private final Vector<Length> position;

    private Point(Vector<Length> position) {
      this.position = position;
    }

    /**
     * Obtains a tail to a fixed point.
     *
     * @param position the point in the plan's axes, at most 100 km away, not null
     * @return the tail
     * @throws org.boleline.explain.PlanRefusedException if a coordinate is outside its range
     */
    public static Point of(Vector<Length> position) {
      requireNonNull(position, "position");
      return Refusals.check(refusals -> stated(position, refusals));
    }

    /**
     * Obtains a tail to a fixed point as stated, for readers of files.
     *
     * @param position the point, or null if that could not be had
     * @param refusals notes what is wrong, at the tail
     * @return the tail
     */
    public static Point stated(@Nullable Vector<Length> position, Refusals refusals) {
      Refusals at = refusals.at("point");
      Vector<Length> point =
          at.present(position, "three lengths", Vector.ofSi(Kind.LENGTH, 0, 0, 0));
      for (double coordinate : point.in(Kind.LENGTH)) {
        if (Math.abs(coordinate) > Bounds.COORDINATE) {
          at.add(
              Refusal.Code.OUT_OF_RANGE,
              "coordinates from "
                  + Bounds.metres(-Bounds.COORDINATE)
                  + " to "
                  + Bounds.metres(Bounds.COORDINATE),
              Bounds.metres(coordinate));
        }
      }
      return new Point(point);
    }

    /**
     * Returns the point.
     *
     * @return its position in the plan's axes, in metres
     */
    public Vector<Length> position() {
      return position;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Point p && position.equals(p.position);
    }

    @Override
    public int hashCode() {
      return position.hashCode();
    }

    @Override
    public String toString() {
      return "tail to " + position;
    }
  }

  /**
   * The rope ends in wraps around a lowering device that is strapped to a stem; its pull closes on
   * that stem. Equality is exact, on what was stated.
   */
  final class Device implements Tail {
    private final String stem;
    private final double at;
    private final double friction;
    private final double wraps;
    private final @Nullable Double offset;
    private final @Nullable Double frictionInCatch;

    private Device(
        String stem,
        double at,
        double friction,
        double wraps,
        @Nullable Double offset,
        @Nullable Double frictionInCatch) {
      this.stem = stem;
      this.at = at;
      this.friction = friction;
      this.wraps = wraps;
      this.offset = offset;
      this.frictionInCatch = frictionInCatch;
    }

    /**
     * Obtains a lowering device on the axis of a stem.
     *
     * @param stem id of the stem, not null
     * @param at station on the stem, zero or more, not null
     * @param friction coefficient of friction of rope on device, from zero to 2
     * @param wraps number of full wraps, from zero to 20; parts are allowed
     * @return the tail
     * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
     */
    public static Device of(String stem, Quantity<Length> at, double friction, double wraps) {
      requireNonNull(stem, "stem");
      requireNonNull(at, "at");
      return Refusals.check(refusals -> stated(stem, at, friction, wraps, null, null, refusals));
    }

    /**
     * Obtains a lowering device as stated, for readers of files.
     *
     * @param stem id of the stem, or null if that could not be had
     * @param at station on the stem, or null if that could not be had
     * @param friction coefficient of friction, or null if that could not be had
     * @param wraps number of wraps, or null if that could not be had
     * @param offset the rigid arm, or null if none is stated
     * @param frictionInCatch coefficient of friction in a catch, or null if none is stated
     * @param refusals notes what is wrong, at the device
     * @return the tail
     */
    public static Device stated(
        @Nullable String stem,
        @Nullable Quantity<Length> at,
        @Nullable Double friction,
        @Nullable Double wraps,
        @Nullable Quantity<Length> offset,
        @Nullable Double frictionInCatch,
        Refusals refusals) {
      return new Device(
          refusals.at("stem").present(stem, "the id of a stem of this plan", ""),
          Bounds.station(at, refusals),
          refusals.at("friction").number(friction, 0, Bounds.FRICTION),
          refusals.at("wraps").number(wraps, 0, Bounds.WRAPS),
          Bounds.offset(offset, refusals),
          frictionInCatch == null
              ? null
              : (Double)
                  refusals.at("frictionInCatch").number(frictionInCatch, 0, Bounds.FRICTION));
    }

    /**
     * Returns this device on a rigid arm from the axis, square to it in the vertical plane through
     * it.
     *
     * @param offset length of the arm, positive toward the underside of the stem, negative toward
     *     its upper side; at most 20 m either way, not null
     * @return the tail
     * @throws org.boleline.explain.PlanRefusedException if the length is outside its range
     */
    public Device withOffset(Quantity<Length> offset) {
      requireNonNull(offset, "offset");
      return Refusals.check(
          refusals -> stated(stem, at(), friction, wraps, offset, frictionInCatch, refusals));
    }

    /**
     * Returns this device with another number of wraps.
     *
     * @param wraps number of full wraps, from zero to 20; parts are allowed
     * @return the tail
     * @throws org.boleline.explain.PlanRefusedException if the number is outside its range
     */
    public Device withWraps(double wraps) {
      return Refusals.check(
          refusals ->
              stated(stem, at(), friction, wraps, statedOffset(), frictionInCatch, refusals));
    }

    /**
     * Returns this device with a friction of its own for catches, in which the rope runs fast.
     *
     * @param newFrictionInCatch coefficient of friction of rope on device in a catch, from zero to
     *     2
     * @return the tail
     * @throws org.boleline.explain.PlanRefusedException if the coefficient is outside its range
     */
    public Device withFrictionInCatch(double newFrictionInCatch) {
      return Refusals.check(
          refusals ->
              stated(stem, at(), friction, wraps, statedOffset(), newFrictionInCatch, refusals));
    }

    private @Nullable Quantity<Length> statedOffset() {
      return offset == null ? null : offset();
    }

    double atMetres() {
      return at;
    }

    double offsetMetres() {
      return offset == null ? 0 : offset;
    }

    /**
     * Returns the stem.
     *
     * @return its id
     */
    public String stem() {
      return stem;
    }

    /**
     * Returns the station on the stem.
     *
     * @return the station in metres from the base
     */
    public Quantity<Length> at() {
      return Si.of(at, Kind.LENGTH);
    }

    /**
     * Returns the coefficient of friction of rope on device.
     *
     * @return the coefficient, zero or more
     */
    public double friction() {
      return friction;
    }

    /**
     * Returns the coefficient of friction of rope on device in a catch.
     *
     * @return the coefficient, zero or more; empty if none is stated
     */
    public OptionalDouble frictionInCatch() {
      return frictionInCatch == null ? OptionalDouble.empty() : OptionalDouble.of(frictionInCatch);
    }

    /**
     * Returns the number of full wraps.
     *
     * @return the number, zero or more
     */
    public double wraps() {
      return wraps;
    }

    /**
     * Returns the rigid arm from the axis to the device.
     *
     * @return the arm in metres, positive toward the underside, negative toward the upper side;
     *     zero by default
     */
    public Quantity<Length> offset() {
      return Si.of(offsetMetres(), Kind.LENGTH);
    }

    @Override
    public List<Datum> taken() {
      return offset == null
          ? List.of(new Datum("/device/offset", "0 m", Source.DEFAULT, null))
          : List.of();
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Device d
          && stem.equals(d.stem)
          && Double.compare(at, d.at) == 0
          && Double.compare(friction, d.friction) == 0
          && Double.compare(wraps, d.wraps) == 0
          && Objects.equals(offset, d.offset)
          && Objects.equals(frictionInCatch, d.frictionInCatch);
    }

    @Override
    public int hashCode() {
      return Objects.hash(stem, at, friction, wraps, offset, frictionInCatch);
    }

    @Override
    public String toString() {
      return "device on " + stem + " at " + QuantityText.print(at(), Kind.LENGTH);
    }
  }
}
