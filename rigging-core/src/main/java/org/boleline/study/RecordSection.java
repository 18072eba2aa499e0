package org.boleline.study;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of a record under one heading.
 *
 * @param title the heading
 * @param lines the lines
 */
public record RecordSection(String title, List<RecordLine> lines) {
  /**
   * Makes the section; the list is copied.
   *
   * @param title the heading
   * @param lines the lines
   */
  public RecordSection {
    lines = List.copyOf(lines);
  }

  /**
   * Returns the section as plain text.
   *
   * @return the heading, then each line after two blanks
   */
  public List<String> print() {
    List<String> printed = new ArrayList<>();
    printed.add(title);
    lines.forEach(line -> printed.add("  " + line.print()));
    return printed;
  }
}
