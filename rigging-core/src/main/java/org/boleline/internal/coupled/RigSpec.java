package org.boleline.internal.coupled;

import org.boleline.internal.path.RopePath;

/**
 * An arrangement as the solver is told of it, in SI.
 *
 * @param stems the stems
 * @param contactStem stem of each contact; one entry more for a lowering device on a stem
 * @param contactAt its station
 * @param contactArm rigid arm from the axis, in the given shape
 * @param law friction law of each contact
 * @param parameter its parameter
 * @param sling sling length of each contact
 * @param ropeWeight weight of each length of the leg behind each contact, N/m; zero where it does
 *     not count
 * @param raising true if tension rises toward the tail
 * @param loadDirection unit vector from the first contact toward the load
 * @param end how the rope ends
 * @param endPoint where it ends, if at a fixed point
 * @param load tension of the load leg at full load
 */
@SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
public record RigSpec(
    StemSpec[] stems,
    int[] contactStem,
    double[] contactAt,
    double[][] contactArm,
    int[] law,
    double[] parameter,
    double[] sling,
    double[] ropeWeight,
    boolean raising,
    double[] loadDirection,
    RopePath.End end,
    double[] endPoint,
    double load) {}
