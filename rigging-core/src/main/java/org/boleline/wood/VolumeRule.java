package org.boleline.wood;

import org.boleline.explain.Formula;

/** Ways to get the volume of a log from its measures. */
public enum VolumeRule {
  /** Cone frustum: exact for an even taper. The default. */
  CONE_FRUSTUM,

  /** Smalian: mean of both end areas. Too much for an even taper, by twice what Huber lacks. */
  SMALIAN,

  /** Huber: area of the middle. Too little for an even taper. */
  HUBER,

  /** Newton: both ends and four times the middle. Exact for an even taper. */
  NEWTON,

  /** Frustum of a neiloid: butts that flare. */
  NEILOID,

  /** Hoppus, quarter girth: a trade measure 21.5 percent below the real volume. */
  HOPPUS;

  /**
   * Returns the equation.
   *
   * @return the formula
   */
  public Formula formula() {
    return switch (this) {
      case CONE_FRUSTUM -> WoodFormulas.CONE_FRUSTUM;
      case SMALIAN -> WoodFormulas.SMALIAN;
      case HUBER -> WoodFormulas.HUBER;
      case NEWTON -> WoodFormulas.NEWTON;
      case NEILOID -> WoodFormulas.NEILOID;
      case HOPPUS -> WoodFormulas.HOPPUS;
    };
  }
}
