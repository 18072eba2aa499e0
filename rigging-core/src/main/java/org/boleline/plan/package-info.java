/**
 * What a person states: stems, the piece, the rope and the arrangements to compare. No calculation.
 *
 * <pre>{@code
 * Plan plan =
 *     Plan.builder()
 *         .title("One point on a leaning stem")
 *         .stems(List.of(stem))
 *         .piece(Piece.of(kilograms(150)))
 *         .arrangements(
 *             List.of(
 *                 Arrangement.builder("one point")
 *                     .motion(Motion.LOWERING)
 *                     .contacts(List.of(Contact.of("stem", metres(11.5), new Sheave(0.95))))
 *                     .tail(Tail.Down.DOWN)
 *                     .build()))
 *         .build();
 * }</pre>
 *
 * <p>Stations count along a stem from its base; positions are in the plan's axes, z up; masses, not
 * weights, are stated. What describes nothing that can be analysed is refused with all reasons at
 * once, by {@link org.boleline.explain.PlanRefusedException}. The methods named {@code stated} are
 * for readers of files: they note what is wrong in a {@link org.boleline.explain.Refusals} instead
 * of throwing, and what they return must not be used if anything was noted.
 *
 * <p>Thread-safe: all types are immutable, but for the builders.
 */
@NullMarked
package org.boleline.plan;

import org.jspecify.annotations.NullMarked;
