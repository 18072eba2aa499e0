package org.boleline.explain;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * Something that was computed but is to be read with care.
 *
 * <p>Stable: a host program may translate by {@code code} and {@code values}.
 *
 * @param code what kind of care
 * @param place where: a JSON pointer into the plan, or empty for the whole
 * @param values numbers and names that belong to it, as text, by name
 */
public record Caution(CautionCode code, String place, Map<String, String> values) {
  /**
   * Makes a caution; the values are copied and sorted by name.
   *
   * @param code what kind of care
   * @param place where: a JSON pointer into the plan, or empty for the whole
   * @param values numbers and names that belong to it, as text, by name
   */
  public Caution {
    values = Collections.unmodifiableMap(new TreeMap<>(values));
  }

  /**
   * Returns the caution as one English sentence.
   *
   * @return the sentence, with the values put in
   */
  public String sentence() {
    String text = code.sentence();
    for (Map.Entry<String, String> value : values.entrySet()) {
      text = text.replace("{" + value.getKey() + "}", value.getValue());
    }
    return text;
  }
}
