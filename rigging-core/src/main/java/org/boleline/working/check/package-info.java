/**
 * A person's own calculation held against a worksheet, and problems to practise on.
 *
 * <p>A {@link org.boleline.working.check.HandCheck} goes through the numbers that a person wrote
 * down, finds the first one that parts from ours, and tries named {@linkplain
 * org.boleline.working.check.Slip slips} to tell how it may have come about. It says "agrees",
 * "parts here, as if ...", or "parts here, cause not found".
 *
 * <pre>{@code
 * Worksheet sheet = Worksheets.of(
 *     ContactTensions.fromTight(new FrictionRing(0.2), Turn.HALF, newtons(2000)));
 * HandCheck check = HandCheck.of(
 *     sheet, List.of(HandStep.of("t", "1.874"), HandStep.of("T_slack", "1067 N")),
 *     Tolerance.relative(0.005));
 * check.sentence();
 * }</pre>
 *
 * <p>Numbers are stated as text with their unit, in any unit of the plan format, since a person's
 * rounding shows in the figures written. Inside all is in SI. Thread-safe: all types are immutable.
 */
@NullMarked
package org.boleline.working.check;

import org.jspecify.annotations.NullMarked;
