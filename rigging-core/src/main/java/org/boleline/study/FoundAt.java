package org.boleline.study;

import java.util.List;

/**
 * The least or the greatest figure that a study of ranges found, and where.
 *
 * <p>It is what was found among corners and samples. A lesser or greater one may lie between them.
 *
 * @param value the figure
 * @param isCorner whether it was found at a corner of the box of intervals, with distributions at
 *     their medians; otherwise at a sample
 * @param inputs the value of each range of the study there, in their order
 */
public record FoundAt(Figure value, boolean isCorner, List<Figure> inputs) {
  /**
   * Makes a found figure; the list is copied.
   *
   * @param value the figure
   * @param isCorner whether it was found at a corner of the box of intervals, with distributions at
   *     their medians; otherwise at a sample
   * @param inputs the value of each range of the study there, in their order
   */
  public FoundAt {
    inputs = List.copyOf(inputs);
  }
}
