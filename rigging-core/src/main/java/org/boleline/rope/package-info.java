/**
 * Ropes, the hardware they run over, and the friction between the two.
 *
 * <p>Friction is told as a tension ratio: tension on the tight side over tension on the slack side
 * at the moment the rope is about to slip, 1 or more. Which side is tight depends on the {@link
 * org.boleline.rope.Motion}. The equations are in {@link org.boleline.rope.FrictionFormulas}; every
 * result lists the steps that made it.
 *
 * <pre>{@code
 * Hardware ring = new FrictionRing(0.25);
 * double ratio = ring.tensionRatio(Turn.between(IncludedAngle.of(Amounts.degrees(60))));
 *
 * Wraps wraps = Wraps.needed(Amounts.kilonewtons(2), Amounts.newtons(150), 0.2);
 * double onTheDevice = wraps.nextHalfWraps();
 * }</pre>
 *
 * <p>Tensions are zero or more; a rope does not push. Friction and efficiency are pure numbers.
 * Thread-safe: all types are immutable.
 */
@NullMarked
package org.boleline.rope;

import org.jspecify.annotations.NullMarked;
