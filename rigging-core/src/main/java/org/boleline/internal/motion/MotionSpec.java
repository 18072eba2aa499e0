package org.boleline.internal.motion;

import org.boleline.internal.drop.StretchKernel;

/**
 * A catch as it is at the start, in SI.
 *
 * <p>Points are numbered from the load on; the end of the rope follows as one point more. Legs are
 * numbered from the load leg, 0, to the one into the end. The axis of a log is the third axis of
 * the body.
 *
 * @param mass mass of the piece
 * @param axialInertia its moment of inertia about its axis, through the centre of gravity
 * @param crossInertia its moment of inertia square to its axis
 * @param tie where the rope is tied on, from the centre of gravity, in axes of the body
 * @param position centre of gravity
 * @param velocity its velocity
 * @param attitude unit quaternion (w, x, y, z) from body to space
 * @param spin angular velocity in axes of the body
 * @param rope stretch curve of loading
 * @param lengths length of each leg without stretch when the rope is just taut
 * @param passing whether rope that passes to another leg stretches with it; if not, it only adds to
 *     its length
 * @param loss share of the tension that is missing where a rope has unloaded for long
 * @param memory strain over which the missing share comes and goes
 * @param ratio tension ratio of each point
 * @param place places of the points and the end at rest
 * @param circularFrequency of each mode of the stems
 * @param damping damping ratio of each mode
 * @param shape movement of points and end in each mode of unit modal mass
 * @param slip tension of the last leg at which the device slips, infinite if locked
 * @param idle the same until the hold
 * @param delay time from the first tautness to the hold
 * @param gravity acceleration of gravity
 */
@SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
public record MotionSpec(
    double mass,
    double axialInertia,
    double crossInertia,
    double[] tie,
    double[] position,
    double[] velocity,
    double[] attitude,
    double[] spin,
    StretchKernel rope,
    double[] lengths,
    boolean passing,
    double loss,
    double memory,
    double[] ratio,
    double[] place,
    double[] circularFrequency,
    double[] damping,
    double[][] shape,
    double slip,
    double idle,
    double delay,
    double gravity) {

  /** Number of points, without the end. */
  public int points() {
    return ratio.length;
  }

  /** Number of modes. */
  public int modes() {
    return circularFrequency.length;
  }
}
