/**
 * Demand against capacity: what each part of a rig has to take, and what somebody says it can.
 *
 * <p>The library knows no capacity, no loss of strength and no factor of its own: all of them come
 * from the plan. It says which factors that somebody asks for are met. It judges nothing: local
 * codes, the makers of the equipment and the competent person on site do.
 *
 * <pre>{@code
 * Checks checks = Checks.of(Drops.analyse(Statics.analyse(plan)));
 * for (ArrangementChecks arrangement : checks.arrangements()) {
 *   arrangement.weakest().ifPresent(check -> show(check.sentence()));
 * }
 * }</pre>
 *
 * <p>{@link org.boleline.limits.LeastDiameter} and {@link org.boleline.limits.Spar} answer for a
 * stem by itself. Stresses on the pressed side are positive. Thread-safe: all types are immutable.
 */
@NullMarked
package org.boleline.limits;

import org.jspecify.annotations.NullMarked;
