package org.boleline.units;

import javax.measure.Quantity;

/**
 * Quantity kind: moment of a force, a bending or a twisting moment. Its SI unit is newton metres.
 *
 * <p>Own type because the standard library of quantities cannot tell a moment from an energy.
 */
public interface Moment extends Quantity<Moment> {}
