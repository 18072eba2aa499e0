package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;

/**
 * A rope from a stem "A" at x = 0 to an end at x = 6 passes a stem "B" at x = 3 half way: there it
 * is at the mean of both heights, and half as far aside as its end. Both stems stand upright and so
 * stiff that they do not move; A is 0.3 m thick, B 0.2 m. The leg down from the first point to the
 * piece lies along the axis of A and is left aside.
 */
class LegsThroughStemsTest {
  private static final double HIGH = 9;

  private static Stem upright(String id, double x, double diameter) {
    return Rigs.straight(10, 0, 0, diameter, diameter, Rigs.wood(1e13, 500))
        .id(id)
        .base(Vector.ofSi(Kind.LENGTH, x, 0, 0))
        .build();
  }

  private static List<Caution> cautions(Tail tail, Contact... contacts) {
    Plan plan =
        Plan.builder()
            .stems(List.of(upright("A", 0, 0.3), upright("B", 3, 0.2)))
            .piece(Piece.of(kilograms(50)))
            .arrangements(
                List.of(
                    Arrangement.builder("only")
                        .motion(Motion.LOWERING)
                        .contacts(List.of(contacts))
                        .tail(tail)
                        .build()))
            .build();
    return Statics.analyse(plan).arrangements().get(0).solution().orElseThrow().cautions().stream()
        .filter(caution -> caution.code() == CautionCode.ROPE_THROUGH_STEM)
        .filter(caution -> !"piece".equals(caution.values().get("from")))
        .toList();
  }

  private static Contact on(String stem, double at) {
    return Contact.of(stem, metres(at), Ideal.INSTANCE);
  }

  private static Caution only(List<Caution> cautions) {
    assertThat(cautions).hasSize(1);
    return cautions.get(0);
  }

  private static double metresOf(Caution caution, String value) {
    return Double.parseDouble(caution.values().get(value).replace(" m", ""));
  }

  @Test
  void a_leg_across_another_stem_is_found_at_any_height() {
    for (double height = 1; height < 8.5; height += 0.07) {
      Contact point = on("A", HIGH);
      double end = 2 * height - HIGH;
      // through the axis, 0.09 m beside it, and 0.11 m beside it: past the bark
      Caution through = only(cautions(Rigs.point(6, 0, end), point));
      assertThat(through.values()).containsEntry("stem", "B");
      assertThat(metresOf(through, "distance")).isZero();
      assertThat(metresOf(through, "radius")).isEqualTo(0.1);
      assertThat(metresOf(through, "at")).isEqualTo(height, within(0.0051)); // in three figures
      Caution beside = only(cautions(Rigs.point(6, 0.18, end), point));
      assertThat(metresOf(beside, "distance")).isEqualTo(0.09); // 3 * 0.18 / hypot(6, 0.18)
      assertThat(cautions(Rigs.point(6, 0.22, end), point)).isEmpty();
    }
  }

  @Test
  void about_its_own_point_a_leg_may_lie_in_the_wood() {
    // From A to B level at 9 m: it begins and ends in the wood of the stems that it ends at.
    Tail beside = Rigs.point(9, 0, 0);
    assertThat(cautions(beside, on("A", HIGH), on("B", HIGH))).isEmpty();
    // Down along A from its axis at 9 m to its axis at 1 m: more than two diameters, 0.6 m, away
    // from both it is still in the wood.
    Caution along = only(cautions(Rigs.point(0, 0, 1), on("A", HIGH)));
    assertThat(along.values()).containsEntry("stem", "A");
    assertThat(metresOf(along, "at")).isLessThanOrEqualTo(HIGH - 0.6);
    assertThat(metresOf(along, "distance")).isZero();
    // To a point 0.5 m below, the leg is no longer than what is left out.
    assertThat(cautions(Rigs.point(0.2, 0, HIGH - 0.5), on("A", HIGH))).isEmpty();
  }
}
