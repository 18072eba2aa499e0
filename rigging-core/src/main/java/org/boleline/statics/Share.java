package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import javax.measure.quantity.Force;
import org.boleline.geometry.Vector;
import org.boleline.units.Moment;

/**
 * One part of what acts on a stem, by where it comes from.
 *
 * <p>The parts add up to what the base carries: base moment = load x reach + tail x arm + own
 * weight + hung masses + legs to other stems + weight of the legs.
 *
 * <p>Immutable and thread-safe.
 */
public final class Share {
  private final Origin origin;
  private final Vector<Force> force;
  private final Vector<Moment> moment;

  Share(Origin origin, Vector<Force> force, Vector<Moment> moment) {
    this.origin = requireNonNull(origin);
    this.force = requireNonNull(force);
    this.moment = requireNonNull(moment);
  }

  /**
   * Returns where the part comes from.
   *
   * @return the origin
   */
  public Origin origin() {
    return origin;
  }

  /**
   * Returns the force on the stem.
   *
   * @return the force, in newtons
   */
  public Vector<Force> force() {
    return force;
  }

  /**
   * Returns the moment on the stem, about its base.
   *
   * @return the moment, in newton metres
   */
  public Vector<Moment> moment() {
    return moment;
  }

  /** Where a part of the load comes from. */
  public enum Origin {
    /** The leg to the piece. */
    LOAD,
    /** The tail, if it does not end on this stem. */
    TAIL,
    /** Legs that run to other stems. */
    OTHER_STEMS,
    /** The stem's own weight. */
    OWN_WEIGHT,
    /** Masses that hang on the stem. */
    MASSES,
    /** The weight of the legs, as far as it counts: half of a leg at each of its ends. */
    ROPE_WEIGHT
  }
}
