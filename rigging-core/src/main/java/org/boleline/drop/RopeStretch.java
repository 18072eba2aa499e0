package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import org.boleline.explain.Source;

/**
 * A stretch curve with what it is of: pulled slowly or in a drop, new or worked, and who says so.
 *
 * <p>A rope pulled fast is another rope than the same one pulled slowly, and a worked rope another
 * than a new one; mostly they are stiffer. So the curves are kept apart. A catch takes any of them,
 * but cautions if the curve is of a slow pull or of new rope. From slow to drop leads only a factor
 * (or a second curve) whose source the user states.
 *
 * <pre>{@code
 * RopeStretch slow = new RopeStretch(curve, RopeStretch.Pull.SLOW, RopeStretch.Wear.WORKED, maker);
 * RopeStretch drop = slow.stiffenedForDrop(1.4, ownTest);
 * }</pre>
 *
 * @param curve the curve
 * @param pull how the rope was pulled when the curve was found
 * @param wear whether the rope was new
 * @param source who states it
 */
public record RopeStretch(StretchCurve curve, Pull pull, Wear wear, Source source) {
  /**
   * Makes a stretch of rope.
   *
   * @param curve the curve, not null
   * @param pull how the rope was pulled when the curve was found, not null
   * @param wear whether the rope was new, not null
   * @param source who states it, not null
   */
  public RopeStretch {
    requireNonNull(curve, "curve");
    requireNonNull(pull, "pull");
    requireNonNull(wear, "wear");
    requireNonNull(source, "source");
  }

  /** How the rope was pulled. */
  public enum Pull {
    /** Slowly, as on a testing machine. */
    SLOW,
    /** As fast as in a drop. */
    DROP
  }

  /** Whether the rope was new. */
  public enum Wear {
    /** New, not loaded before. */
    NEW,
    /** Worked: loaded several times before. */
    WORKED,
    /** Not stated. */
    NOT_STATED
  }

  /**
   * Obtains a curve that is stated to be right for a drop.
   *
   * @param curve the curve, not null
   * @param source who states it, not null
   * @return the curve as of a drop, wear not stated
   */
  public static RopeStretch forDrop(StretchCurve curve, Source source) {
    return new RopeStretch(curve, Pull.DROP, Wear.NOT_STATED, source);
  }

  /**
   * Returns this rope as it pulls in a drop: stiffer by a factor.
   *
   * @param stiffnessFactor drop stiffness over slow stiffness, from 0.001 to 1000
   * @param statedBy who states the factor, not null
   * @return the curve as of a drop
   * @throws IllegalStateException if this is a curve of a drop already
   * @throws org.boleline.explain.PlanRefusedException if the factor is outside its range
   */
  public RopeStretch stiffenedForDrop(double stiffnessFactor, Source statedBy) {
    if (pull == Pull.DROP) {
      throw new IllegalStateException("the curve is of a drop already");
    }
    return new RopeStretch(curve.times(stiffnessFactor), Pull.DROP, wear, statedBy);
  }
}
