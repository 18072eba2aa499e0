package org.boleline.json;

import java.util.List;
import java.util.Map;
import org.boleline.explain.Caution;
import org.boleline.explain.Datum;

/** Parts of a result file that belong to no analysis. */
final class ResultParts {
  static final String FORMAT = "rigging-result/1";

  private ResultParts() {}

  /** A default or a figure from data: its place in the plan, its value and where it comes from. */
  static Json datum(Datum datum) {
    return new ObjectBuilder()
        .put("name", datum.name())
        .put("value", datum.value())
        .put("source", datum.source().title())
        .build();
  }

  /** A caution: its stable code, its place and its values by name. */
  static Json caution(Caution caution) {
    ObjectBuilder values = new ObjectBuilder();
    for (Map.Entry<String, String> value : caution.values().entrySet()) {
      values.put(value.getKey(), value.getValue());
    }
    return new ObjectBuilder()
        .put("code", caution.code().name())
        .put("place", caution.place())
        .put("values", values)
        .build();
  }

  /** A quantity that lies between two ends. */
  static ObjectBuilder range(ObjectBuilder least, ObjectBuilder most) {
    return new ObjectBuilder().put("least", least).put("most", most);
  }

  /** Cautions and data taken, at the end of an arrangement. */
  static void putNotes(ObjectBuilder result, List<Caution> cautions, List<Datum> taken) {
    result.putAll("cautions", cautions, ResultParts::caution);
    result.putAll("taken", taken, ResultParts::datum);
  }
}
