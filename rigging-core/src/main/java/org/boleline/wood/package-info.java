/**
 * Green wood: species data with a source for each figure, logs, and round sections with a cavity.
 *
 * <p>The equations are in {@link org.boleline.wood.WoodFormulas}; every result lists the steps that
 * made it. The figures of {@link org.boleline.wood.SpeciesPack#standard()} come from small clear
 * specimens; a standing tree with knots, decay or reaction wood may lie well below them. Users put
 * their own figures in a pack of their own, or state them.
 *
 * <pre>{@code
 * Species species = SpeciesPack.standard().species("white oak");
 * WoodProperties wood = WoodProperties.from(species);
 * Log log = Log.of(metres(2), centimetres(45), centimetres(40), species);
 * Quantity<Mass> mass = log.mass(); // 291 kg, by cone frustum
 * Section section = Section.offCentre(centimetres(45), centimetres(20), centimetres(5));
 * double left = section.sectionModulusShare(); // of the section modulus of solid wood
 * }</pre>
 *
 * <p>Moduli, strengths and densities are above zero; moisture is in percent of the oven-dry mass.
 * Places along a log are measured from its large end. Thread-safe: all types are immutable.
 */
@NullMarked
package org.boleline.wood;

import org.jspecify.annotations.NullMarked;
