package org.boleline.units;

import javax.measure.Quantity;

/**
 * Quantity kind: mass for each length. Its SI unit is kilograms per metre.
 *
 * <p>Used for ropes.
 */
public interface LinearDensity extends Quantity<LinearDensity> {}
