package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.Tolerances.THREE_FIGURES;
import static org.boleline.Tolerances.relative;
import static org.boleline.documentation.FirstPlan.in;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.boleline.drop.CatchPath;
import org.boleline.drop.RopeCatch;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.TwoLegForce;
import org.boleline.stem.TaperedCantilever;
import org.boleline.units.Units;
import org.boleline.wood.Log;
import org.boleline.wood.Section;
import org.junit.jupiter.api.Test;

/** What the lessons of the course say in sentences, and the answers to their questions. */
class CourseTest {
  private static double force(double first, double second, double angle) {
    return in(
        Units.NEWTON,
        TwoLegForce.of(newtons(first), newtons(second), IncludedAngle.of(degrees(angle)))
            .magnitude());
  }

  @Test
  void answers_on_two_legs() {
    assertThat(force(500, 500, 160)).isCloseTo(174, relative(THREE_FIGURES));
    assertThat(force(500, 500, 140)).isCloseTo(342, relative(THREE_FIGURES));
    assertThat(force(932, 932, 30)).isCloseTo(1800, relative(THREE_FIGURES));
    // the law by hand, of the page
    assertThat(force(500, 500, 160))
        .isCloseTo(2 * 500 * Math.cos(Math.toRadians(80)), within(1e-9));
  }

  @Test
  void answers_on_friction() {
    ContactTensions device =
        ContactTensions.fromTight(new FrictionRing(0.18), Turn.ofWraps(1.5), newtons(1000));
    assertThat(1000 / in(Units.NEWTON, device.slack())).isCloseTo(5.45, relative(THREE_FIGURES));
    assertThat(Math.log10(Math.exp(0.18 * 540))).isBetween(42.0, 43.0);
  }

  @Test
  void answers_on_weight() {
    double[] mass = new double[2];
    mass[0] =
        in(
            Units.KILOGRAM,
            Log.of(metres(1), metres(0.4), metres(0.2), kilogramsPerCubicMetre(900)).mass());
    mass[1] =
        in(
            Units.KILOGRAM,
            Log.of(metres(1), metres(0.3), metres(0.3), kilogramsPerCubicMetre(900)).mass());
    assertThat(1 - mass[1] / mass[0]).isCloseTo(0.036, within(5e-4));
  }

  private static double tip(double length, double base, double tip) {
    return in(
        Units.METRE,
        TaperedCantilever.of(
                metres(length), metres(base), metres(tip), gigapascals(8), newtons(100))
            .tipDeflection());
  }

  @Test
  void answers_on_the_beam() {
    assertThat(tip(10, 0.3, 0.3) / tip(5, 0.3, 0.3)).isCloseTo(8, within(1e-9));
    assertThat(tip(10, 0.4, 0.1) / tip(10, 0.4, 0.2)).isCloseTo(2, within(1e-9));
    assertThat(tip(10, 0.2, 0.1) / tip(10, 0.4, 0.1)).isCloseTo(8, within(1e-9));
    Section thin = Section.solid(metres(0.30));
    Section thick = Section.solid(metres(0.36));
    assertThat(
            thin.sectionModulus().getValue().doubleValue()
                / thick.sectionModulus().getValue().doubleValue())
        .isCloseTo(0.58, within(0.005));
    assertThat(
            thin.leastSecondMoment().getValue().doubleValue()
                / thick.leastSecondMoment().getValue().doubleValue())
        .isCloseTo(0.48, within(0.005));
  }

  private static double peak(double fall, double rope) {
    return in(
        Units.NEWTON,
        RopeCatch.of(kilograms(95), metres(fall), Course.rope(), CatchPath.of(metres(rope)))
            .locked()
            .peak());
  }

  @Test
  void answers_on_the_catch() {
    assertThat(peak(0, 13)).isCloseTo(1863, within(0.5));
    assertThat(peak(0, 6.5)).isCloseTo(1863, within(0.5));
    assertThat(peak(1, 6.5) / peak(1, 13)).isCloseTo(1.32, relative(THREE_FIGURES));
  }

  private static List<Double> column(String output, String name) {
    List<Double> found = new ArrayList<>();
    for (MatchResult match :
        Pattern.compile(Pattern.quote(name) + " +([0-9.]+)")
            .matcher(Outputs.of(output))
            .results()
            .toList()) {
      found.add(Double.parseDouble(match.group(1)));
    }
    return found;
  }

  @Test
  void what_the_last_lesson_says_of_its_rows() {
    List<Double> base = new ArrayList<>(column("course/lowering", "base"));
    base.addAll(column("course/raising", "base"));
    assertThat(base).hasSize(12);
    double first = base.get(0);
    assertThat(base).allSatisfy(moment -> assertThat(moment / first).isCloseTo(1, within(3e-3)));

    List<Double> down = column("course/lowering", "device");
    List<Double> up = column("course/raising", "device");
    assertThat(down.subList(2, 5)).containsExactly(484.0, 476.0, 470.0);
    assertThat(down.get(4) / down.get(1)).isBetween(0.5, 0.56);
    assertThat(up.get(4) / up.get(1)).isBetween(1.8, 2.0);
    List<Double> lowered = column("course/lowering", "first point");
    List<Double> raised = column("course/raising", "first point");
    assertThat(lowered.get(4) / lowered.get(1)).isCloseTo(0.8, within(0.02));
    assertThat(raised.get(4) / raised.get(1)).isCloseTo(1.4, within(0.02));
    // the answer to the third question
    assertThat(force(932, 484, 30)).isCloseTo(lowered.get(2), relative(THREE_FIGURES));
  }
}
