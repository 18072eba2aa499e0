package org.boleline.examples.compare;

/**
 * A line of text with a label in front.
 *
 * @param label what stands in front, such as {@code 1 → 2}; may be empty
 * @param text the text
 */
record Entry(String label, String text) {}
