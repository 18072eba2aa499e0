package org.boleline.internal.coupled;

import org.boleline.internal.rod.Rod;

/**
 * A stem as the solver is told of it, in SI.
 *
 * @param base position of the base
 * @param length length along the centre line
 * @param breaks stations where the profile has kinks or steps
 * @param profile geometry along the length
 * @param e modulus of elasticity
 * @param g shear modulus
 * @param weightDensity weight of the wood for each volume; zero if own weight is off
 * @param rootStiffness rotational stiffness of the root; infinite if clamped
 * @param massAt stations of hung masses
 * @param massWeight their weights
 * @param standing whether the profile's shape already bends under own weight
 */
@SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
public record StemSpec(
    double[] base,
    double length,
    double[] breaks,
    Rod.Profile profile,
    double e,
    double g,
    double weightDensity,
    double rootStiffness,
    double[] massAt,
    double[] massWeight,
    boolean standing) {}
