package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.study.Figure;
import org.boleline.study.Reading;
import org.boleline.study.WhatChanged;

/** Says how much each change between two neighbours adds to a headline figure. */
final class ShareRows {
  private static final List<Reading> READINGS =
      List.of(Reading.baseMoment(0), Reading.contactForce(0), Reading.tail());

  /** A share below this part of the greatest is rounding. */
  private static final double NOTHING = 1e-9;

  private ShareRows() {}

  /** An entry for each figure of each pair; none where a pair has too many changes to share. */
  static List<Entry> of(Plan plan, UnitSystem units) {
    List<Entry> entries = new ArrayList<>();
    List<Arrangement> ways = plan.arrangements();
    for (int i = 1; i < ways.size(); i++) {
      WhatChanged study =
          new WhatChanged(
              ways.get(i - 1).id(), ways.get(i).id(), readings(ways.get(i - 1), ways.get(i)));
      String label = i + " → " + (i + 1);
      try {
        for (WhatChanged.Row row : study.answer(plan).rows()) {
          if (!row.parts().isEmpty()) {
            entries.add(new Entry(label, sentence(study, row, plan, units)));
            label = "";
          }
        }
        if (label.isEmpty()) {
          otherEnd(ways.get(i - 1), ways.get(i), i).ifPresent(entries::add);
        }
      } catch (PlanRefusedException e) {
        entries.add(new Entry(label, "too many changes to share the difference"));
      }
    }
    return entries;
  }

  /** What is held is compared above in the end that raising leads from: these shares cannot. */
  private static Optional<Entry> otherEnd(Arrangement from, Arrangement to, int first) {
    boolean before = from.motion() == Motion.HELD && to.motion() == Motion.RAISING;
    boolean after = from.motion() == Motion.RAISING && to.motion() == Motion.HELD;
    int held = before ? first : first + 1;
    return before || after
        ? Optional.of(
            new Entry(
                "",
                "(Here "
                    + held
                    + " is read about to run; what changes, above, compares it about to rise.)"))
        : Optional.empty();
  }

  /** The headline figures; at both ends if both loads are held. */
  private static List<Reading> readings(Arrangement from, Arrangement to) {
    List<Reading> readings = new ArrayList<>(READINGS);
    if (from.motion() == Motion.HELD && to.motion() == Motion.HELD) {
      READINGS.forEach(reading -> readings.add(reading.aboutToRise()));
    }
    return readings;
  }

  /** What each change adds to a figure that has parts. */
  static String sentence(WhatChanged study, WhatChanged.Row row, Plan plan, UnitSystem units) {
    double greatest =
        row.parts().stream().mapToDouble(part -> Math.abs(si(part.share()))).max().orElse(0);
    double difference = si(row.difference().figure().orElseThrow());
    Scale scale = units.scale(row.reading().kind(), Math.max(greatest, Math.abs(difference)));
    return RangeRows.label(row.reading(), plan, study.from(), study.to())
        + " "
        + signed(scale, difference)
        + ": "
        + row.parts().stream()
            .filter(part -> Math.abs(si(part.share())) > NOTHING * greatest || greatest == 0)
            .sorted(Comparator.comparingDouble(part -> -Math.abs(si(part.share()))))
            .map(
                part ->
                    Page.clean(String.join(" with ", part.changes()))
                        + " "
                        + signed(scale, si(part.share())))
            .collect(Collectors.joining(", "));
  }

  private static String signed(Scale scale, double value) {
    return (value > 0 ? "+" : "") + scale.one(value);
  }

  private static double si(Figure figure) {
    return RangeRows.si(figure);
  }
}
