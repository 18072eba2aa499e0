package org.boleline.units;

import javax.measure.Quantity;

/**
 * Quantity kind: stiffness, a force for each length of movement. Its SI unit is newtons per metre.
 *
 * <p>Used for springs in series with a rope.
 */
public interface Stiffness extends Quantity<Stiffness> {}
