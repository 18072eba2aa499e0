package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;
import org.boleline.rope.Motion;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.jspecify.annotations.Nullable;

/**
 * One state of an arrangement; a held one has two.
 *
 * @param heading what stands above it
 * @param answer what the analysis says of the arrangement
 * @param state the stable state; null if there is none
 */
record Column(String heading, ArrangementResult answer, @Nullable Solution state) {
  static List<Column> of(StaticResult result) {
    List<Column> columns = new ArrayList<>();
    for (int i = 0; i < result.arrangements().size(); i++) {
      ArrangementResult answer = result.arrangements().get(i);
      String number = Integer.toString(i + 1);
      Solution state = answer.solution().orElse(null);
      if (state != null && state.arrangement().motion() == Motion.HELD) {
        columns.add(new Column(number + " run", answer, state));
        columns.add(new Column(number + " rise", answer, state.otherEnd().orElse(state)));
      } else {
        columns.add(new Column(number, answer, state));
      }
    }
    return columns;
  }
}
