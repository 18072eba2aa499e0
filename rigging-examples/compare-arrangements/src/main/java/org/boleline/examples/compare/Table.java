package org.boleline.examples.compare;

import java.util.List;

/**
 * The numbers of all arrangements side by side.
 *
 * @param headings one for each column
 * @param rows the rows; a row without cells is a heading, or a blank line
 */
record Table(List<String> headings, List<Row> rows) {
  /**
   * One row.
   *
   * @param label what it shows
   * @param unit the unit of its numbers; may be empty
   * @param cells one for each column
   */
  record Row(String label, String unit, List<String> cells) {}
}
