package org.boleline.statics;

/**
 * Something that does not balance in a result.
 *
 * @param what which balance, in words
 * @param place where, such as {@code contacts/0}
 * @param sizeRatio how much is missing, relative to the load, to the load times a length, or as a
 *     ratio
 * @param allowedRatio how much would be let pass
 */
public record Imbalance(String what, String place, double sizeRatio, double allowedRatio) {}
