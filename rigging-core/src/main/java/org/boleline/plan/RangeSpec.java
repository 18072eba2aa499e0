package org.boleline.plan;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How far inputs of a plan may be off, as a person states it: places and figures as text.
 *
 * <p>The package of studies reads them and says what is wrong with them.
 *
 * @param inputs JSON pointers into the plan; one draw feeds them all
 * @param form {@code interval}, {@code uniform}, {@code triangular}, {@code normal} or {@code
 *     lognormal}
 * @param figures the figures of the form by name, as plan files write them, such as {@code 8e9 Pa}
 *     or {@code 0.2}
 * @param source who says so
 */
public record RangeSpec(
    List<String> inputs, String form, Map<String, String> figures, String source) {
  /**
   * Makes a statement; list and map are copied, the map sorted by name.
   *
   * @param inputs JSON pointers into the plan; one draw feeds them all
   * @param form {@code interval}, {@code uniform}, {@code triangular}, {@code normal} or {@code
   *     lognormal}
   * @param figures the figures of the form by name, as plan files write them
   * @param source who says so
   */
  public RangeSpec {
    inputs = List.copyOf(inputs);
    figures = Collections.unmodifiableMap(new TreeMap<>(figures));
  }
}
