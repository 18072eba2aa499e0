/**
 * A standing stem as a crew can describe it: centre line, diameters, wood, root, and what hangs on
 * it.
 *
 * <p>Stations count along the centre line from the base; lean is from the vertical; azimuth is
 * counter-clockwise from +x seen from above.
 *
 * <pre>{@code
 * Stem stem =
 *     Stem.builder("stem")
 *         .shape(Straight.of(Heading.of(degrees(25), degrees(0)), metres(12)))
 *         .diameters(Diameters.tapering(metres(12), centimetres(36), centimetres(16)))
 *         .wood(wood)
 *         .build();
 * }</pre>
 *
 * <p>What describes no stem is refused with all reasons at once, by {@link
 * org.boleline.explain.PlanRefusedException}. The methods named {@code stated} are for readers of
 * files: they note what is wrong in a {@link org.boleline.explain.Refusals} instead of throwing,
 * and what they return must not be used if anything was noted.
 *
 * <p>Thread-safe: all types are immutable, but for the builder.
 */
@NullMarked
package org.boleline.stem;

import org.jspecify.annotations.NullMarked;
