package org.boleline.units;

import javax.measure.Quantity;

/**
 * Quantity kind: mass for each volume. Its SI unit is kilograms per cubic metre.
 *
 * <p>Used for green wood.
 */
public interface Density extends Quantity<Density> {}
