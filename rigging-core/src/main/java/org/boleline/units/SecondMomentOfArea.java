package org.boleline.units;

import javax.measure.Quantity;

/**
 * Quantity kind: second moment of area of a section. Its SI unit is metres to the fourth power.
 *
 * <p>Times the modulus of elasticity it is the flexural rigidity.
 */
public interface SecondMomentOfArea extends Quantity<SecondMomentOfArea> {}
