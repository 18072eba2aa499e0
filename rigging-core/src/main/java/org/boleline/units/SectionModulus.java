package org.boleline.units;

import javax.measure.Quantity;

/**
 * Quantity kind: section modulus, second moment of area over the distance of the outermost fibre.
 * Its SI unit is cubic metres.
 *
 * <p>Bending moment over section modulus is the bending stress.
 */
public interface SectionModulus extends Quantity<SectionModulus> {}
