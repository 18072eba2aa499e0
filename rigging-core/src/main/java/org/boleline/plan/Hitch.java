package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import org.boleline.explain.Refusals;
import org.boleline.geometry.IncludedAngle;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/** How a sling holds on. */
public sealed interface Hitch {
  /** One leg in a straight pull. */
  enum Vertical implements Hitch {
    /** The only one. */
    VERTICAL
  }

  /**
   * Both legs of one sling side by side, drawn to one place.
   *
   * @param legs angle between the legs, from zero to 170 degrees, not null
   */
  record Basket(IncludedAngle legs) implements Hitch {
    /**
     * Makes the hitch.
     *
     * @param legs angle between the legs, from zero to 170 degrees, not null
     */
    public Basket {
      Refusals.check(refusals -> between(legs.angle(), refusals));
    }

    /**
     * Obtains the hitch as stated, for readers of files.
     *
     * @param legs angle between the legs, or null if that could not be had
     * @param refusals notes what is wrong, at the hitch
     * @return the hitch
     */
    public static Basket stated(@Nullable Quantity<Angle> legs, Refusals refusals) {
      double angle = between(legs, refusals);
      return new Basket(IncludedAngle.of(Si.of(Double.isNaN(angle) ? 0 : angle, Kind.ANGLE)));
    }

    private static double between(@Nullable Quantity<Angle> legs, Refusals refusals) {
      return refusals.at("legs").between(legs, Kind.ANGLE, 0, Bounds.LEGS);
    }
  }

  /**
   * The sling is drawn through itself.
   *
   * <p>Immutable and thread-safe; equality is exact.
   */
  final class Choker implements Hitch {
    private final double keptShare;
    private final @Nullable Double angle;

    private Choker(double keptShare, @Nullable Double angle) {
      this.keptShare = keptShare;
      this.angle = angle;
    }

    /**
     * Obtains a choker hitch.
     *
     * @param keptShare what it can take over what the sling can take in a straight pull, as its
     *     maker says, above zero, at most 1
     * @return the hitch
     * @throws org.boleline.explain.PlanRefusedException if the share is outside its range
     */
    public static Choker of(double keptShare) {
      return Refusals.check(refusals -> stated(keptShare, null, refusals));
    }

    /**
     * Obtains a choker hitch as stated, for readers of files.
     *
     * @param keptShare the share, or null if that could not be had
     * @param angle angle of choke, or null if none is stated
     * @param refusals notes what is wrong, at the hitch
     * @return the hitch
     */
    public static Choker stated(
        @Nullable Double keptShare, @Nullable Quantity<Angle> angle, Refusals refusals) {
      return new Choker(
          refusals.at("kept").number(keptShare, Bounds.LEAST_SHARE, 1),
          angle == null
              ? null
              : (Double) refusals.at("angle").between(angle, Kind.ANGLE, 0, Math.PI));
    }

    /**
     * Returns this hitch with an angle of choke: between the leg that pulls and the loop, 180
     * degrees where the leg runs straight on.
     *
     * @param newAngle the angle, from zero to 180 degrees, not null
     * @return the hitch
     * @throws org.boleline.explain.PlanRefusedException if the angle is outside its range
     */
    public Choker withAngle(Quantity<Angle> newAngle) {
      requireNonNull(newAngle, "angle");
      return Refusals.check(refusals -> stated(keptShare, newAngle, refusals));
    }

    /**
     * Returns what the hitch can take over a straight pull, before the angle of choke.
     *
     * @return the share, above zero, at most 1
     */
    public double keptShare() {
      return keptShare;
    }

    /**
     * Returns the angle of choke.
     *
     * @return the angle in radians, from zero to pi; empty if none is stated
     */
    public Optional<Quantity<Angle>> angle() {
      return angle == null ? Optional.empty() : Optional.of(Si.of(angle, Kind.ANGLE));
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Choker c
          && Double.compare(keptShare, c.keptShare) == 0
          && Objects.equals(angle, c.angle);
    }

    @Override
    public int hashCode() {
      return Objects.hash(keptShare, angle);
    }

    @Override
    public String toString() {
      return "choker, keeps " + QuantityText.number(keptShare);
    }
  }
}
