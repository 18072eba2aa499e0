package org.boleline.internal.motion;

import org.boleline.internal.coupled.StemReading;

/**
 * A stem whose forces are read while a catch goes on.
 *
 * @param reading the stem
 * @param firstMode where its modes begin among all
 * @param pointNode node of each point and the end on this stem, minus one for those on others
 */
@SuppressWarnings("ArrayRecordComponent") // kernel data, never compared
public record StemSide(StemReading reading, int firstMode, int[] pointNode) {}
