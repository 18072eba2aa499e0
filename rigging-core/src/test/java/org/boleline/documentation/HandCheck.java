package org.boleline.documentation;

import static java.util.Locale.ROOT;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.newtons;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.boleline.explain.Caution;
import org.boleline.explain.Step;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.TwoLegForce;
import org.boleline.rope.Wraps;

/** The code of docs/how-to/check-a-hand-calculation.md. */
final class HandCheck {
  private HandCheck() {}

  static List<Step> steps() {
    // region steps
    IncludedAngle legs = IncludedAngle.of(degrees(30));
    ContactTensions ring =
        ContactTensions.fromTight(new FrictionRing(0.25), Turn.between(legs), newtons(931.6));
    TwoLegForce force = TwoLegForce.of(ring.tight(), ring.slack(), legs);
    Wraps wraps = Wraps.needed(ring.slack(), newtons(150), 0.18);

    List<Step> steps = new ArrayList<>();
    steps.addAll(ring.steps()); // tension ratio, slack tension
    steps.addAll(force.steps()); // force on the ring, its direction
    steps.addAll(wraps.steps()); // wraps: exact, next half, next whole
    // endregion
    return steps;
  }

  static void printed(PrintStream out) {
    List<Step> steps = steps();
    // region print
    for (Step step : steps) {
      out.println(step);
    }
    // endregion
  }

  // region first-departure
  /** The first step whose result is not the sheet's, to three figures. */
  static Optional<Step> firstDeparture(List<Step> steps, double... sheet) {
    for (int i = 0; i < sheet.length; i++) {
      double found = steps.get(i).result();
      if (Math.abs(sheet[i] - found) > 0.005 * Math.abs(found)) {
        return Optional.of(steps.get(i));
      }
    }
    return Optional.empty();
  }

  // endregion

  static void checked(PrintStream out) {
    List<Step> steps = steps();
    // region check
    // ratio, slack tension in N, force in N, direction in rad
    Optional<Step> departure = firstDeparture(steps, 1.924, 484, 1800, 0.262);
    out.println(departure.map(Step::toString).orElse("the sheet agrees"));
    // endregion
  }

  static void textbook(PrintStream out) {
    // region textbook
    IncludedAngle legs = IncludedAngle.of(degrees(30));
    TwoLegForce textbook = TwoLegForce.withEqualTensions(newtons(931.6), legs);
    out.println(textbook.steps().get(1));
    // endregion
  }

  static void cautions(PrintStream out) {
    // region cautions
    Step rough = new FrictionRing(0.9).step(Turn.HALF);
    for (Caution caution : rough.cautions("sheet, line 1")) {
      out.printf(ROOT, "%s: %s%n", caution.place(), caution.sentence());
    }
    // endregion
  }
}
