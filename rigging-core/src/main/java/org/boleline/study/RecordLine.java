package org.boleline.study;

/**
 * A line of a record.
 *
 * @param label what it tells; empty for a line without one
 * @param text what is told; empty for a blank to be filled in by hand
 */
public record RecordLine(String label, String text) {
  /**
   * Returns the line as it is printed.
   *
   * @return label and text; underscores in place of an empty text
   */
  public String print() {
    String shown = text.isEmpty() ? "____________________" : text;
    return label.isEmpty() ? shown : label + ": " + shown;
  }
}
