package org.boleline.units;

import javax.measure.Quantity;

/**
 * Quantity kind: rotational stiffness, a moment for each radian of rotation. Its SI unit is newton
 * metres per radian.
 *
 * <p>Used for a root that gives way.
 */
public interface RotationalStiffness extends Quantity<RotationalStiffness> {}
