package org.boleline.rope;

import java.util.List;

/**
 * What the rope is about to do, and with it which side of a contact is the tight one.
 *
 * <ul>
 *   <li>Lowering: the side of the load is tight at every contact; tension falls toward the tail.
 *   <li>Raising: the side of the tail is tight at every contact; tension rises toward the tail.
 *   <li>Held: anything between these two. The lowering end is the one about to run.
 * </ul>
 */
public enum Motion {
  /** The load goes down, slowly and steadily. */
  LOWERING("lowering"),
  /** The load goes up, slowly and steadily. */
  RAISING("raising"),
  /** The load is at rest: friction may act either way, up to its limit. */
  HELD("held");

  private final String text;

  Motion(String text) {
    this.text = text;
  }

  /**
   * Returns the motion of that name in plan files.
   *
   * @param text {@code lowering}, {@code raising} or {@code held}, not null
   * @return the motion
   * @throws IllegalArgumentException if the text is none of these
   */
  public static Motion parse(String text) {
    for (Motion motion : values()) {
      if (motion.text.equals(text)) {
        return motion;
      }
    }
    throw new IllegalArgumentException(
        "motion: wants lowering, raising or held, got \"" + text + "\"");
  }

  /**
   * Returns the name as in plan files.
   *
   * @return {@code lowering}, {@code raising} or {@code held}
   */
  public String text() {
    return text;
  }

  /**
   * Returns the motions that bound this one.
   *
   * @return itself for lowering and raising; lowering, then raising, for held
   */
  public List<Motion> ends() {
    return this == HELD ? List.of(LOWERING, RAISING) : List.of(this);
  }

  /**
   * Returns tension on the side of the tail over tension on the side of the load at a contact.
   *
   * @param tensionRatio tight over slack tension at the contact, 1 or more
   * @return its inverse for lowering, itself for raising
   * @throws IllegalArgumentException if the ratio is below 1 or not finite
   * @throws IllegalStateException if held, where the ratio is not fixed: see {@link #ends}
   */
  public double tailRatio(double tensionRatio) {
    if (!(tensionRatio >= 1 && Double.isFinite(tensionRatio))) {
      throw new IllegalArgumentException(
          "tension ratio: wants a finite number, 1 or more, got " + tensionRatio);
    }
    return switch (this) {
      case LOWERING -> 1 / tensionRatio;
      case RAISING -> tensionRatio;
      case HELD -> throw new IllegalStateException("held has two ends: ask each of ends()");
    };
  }
}
