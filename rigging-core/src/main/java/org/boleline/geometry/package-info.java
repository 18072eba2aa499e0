/**
 * Angles and directions with one meaning each, and vectors with a unit.
 *
 * <p>Right-handed axes, z up; azimuth counter-clockwise from +x seen from above; lean from the
 * vertical. The rope's turn and the angle between its legs are two types that cannot be confused.
 *
 * <pre>{@code
 * Turn turn = Turn.between(IncludedAngle.of(Amounts.degrees(60))); // 120 degrees of turn
 * }</pre>
 *
 * <p>Thread-safe: all types are immutable.
 */
@NullMarked
package org.boleline.geometry;

import org.jspecify.annotations.NullMarked;
