package org.boleline.units;

import javax.measure.Quantity;

/**
 * Quantity kind: flexural rigidity, modulus of elasticity times second moment of area. Its SI unit
 * is newton square metres.
 *
 * <p>The resistance of a section to bending.
 */
public interface FlexuralRigidity extends Quantity<FlexuralRigidity> {}
