package org.boleline.stem;

import static java.util.Objects.requireNonNull;

import javax.measure.Quantity;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.RotationalStiffness;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/** How the base of a stem is held. */
public sealed interface Root {
  /** The base does not move and does not turn. */
  enum Clamped implements Root {
    /** The only one. */
    CLAMPED
  }

  /** The base does not move and turns about both horizontal axes against a stiffness. */
  final class Turning implements Root {
    private final double stiffness;

    private Turning(double stiffness) {
      this.stiffness = stiffness;
    }

    /**
     * Obtains a root that turns.
     *
     * @param stiffness moment for each angle of turn about a horizontal axis, from 1 N.m/rad to
     *     1e15 N.m/rad, not null
     * @return the root
     * @throws org.boleline.explain.PlanRefusedException if it is outside its range
     */
    public static Turning of(Quantity<RotationalStiffness> stiffness) {
      requireNonNull(stiffness, "stiffness");
      return Refusals.check(refusals -> stated(stiffness, refusals));
    }

    /**
     * Obtains a root that turns as stated, for readers of files.
     *
     * @param stiffness the stiffness, or null if that could not be had
     * @param refusals notes what is wrong, at the root
     * @return the root
     */
    public static Turning stated(
        @Nullable Quantity<RotationalStiffness> stiffness, Refusals refusals) {
      return new Turning(
          refusals
              .at("rotationalStiffness")
              .between(stiffness, Kind.ROTATIONAL_STIFFNESS, 1, Bounds.ROTATIONAL_STIFFNESS));
    }

    /**
     * Returns the stiffness.
     *
     * @return moment for each angle of turn, in newton metres per radian, above zero
     */
    public Quantity<RotationalStiffness> rotationalStiffness() {
      return Si.of(stiffness, Kind.ROTATIONAL_STIFFNESS);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Turning t && Double.compare(stiffness, t.stiffness) == 0;
    }

    @Override
    public int hashCode() {
      return Double.hashCode(stiffness);
    }

    @Override
    public String toString() {
      return QuantityText.print(rotationalStiffness(), Kind.ROTATIONAL_STIFFNESS);
    }
  }
}
