package org.boleline.explain;

import org.jspecify.annotations.Nullable;

/**
 * A value that a calculation took without being told: a default or a figure from the data.
 *
 * @param name what it is, such as {@code stems/0/wood/density}
 * @param value the value with its unit, in the text form of plan files
 * @param source where it comes from
 * @param spread how far it may be off, in words or as a coefficient of variation; null if not known
 */
public record Datum(String name, String value, Source source, @Nullable String spread) {}
