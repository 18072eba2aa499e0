package org.boleline.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.boleline.units.Amounts.centimetres;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.seconds;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.boleline.Tolerances;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Source;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.Log;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;

class PlanTest {
  private static final Stem STEM = stem("stem");
  private static final Contact TOP = Contact.of("stem", metres(11.5), new FrictionRing(0.25));
  private static final Arrangement ONE = arrangement("one", Tail.Down.DOWN, TOP);

  private static Stem stem(String id) {
    return Stem.builder(id)
        .shape(StemShape.Straight.of(Heading.of(degrees(25), degrees(0)), metres(12)))
        .diameters(Diameters.tapering(metres(12), centimetres(36), centimetres(16)))
        .wood(WoodProperties.of(gigapascals(9), kilogramsPerCubicMetre(1000)))
        .build();
  }

  private static Arrangement arrangement(String id, Tail tail, Contact... contacts) {
    return Arrangement.builder(id)
        .motion(Motion.LOWERING)
        .contacts(List.of(contacts))
        .tail(tail)
        .build();
  }

  private static Plan.Builder plan(Arrangement... arrangements) {
    return Plan.builder()
        .stems(List.of(STEM))
        .piece(Piece.of(kilograms(150)))
        .arrangements(List.of(arrangements));
  }

  private static List<String> refusals(ThrowingCallable making) {
    PlanRefusedException refused = catchThrowableOfType(PlanRefusedException.class, making);
    assertThat(refused).as("was not refused").isNotNull();
    return refused.refusals().stream()
        .map(refusal -> refusal.code() + " at " + refusal.place())
        .toList();
  }

  @Test
  void lists_what_was_left_to_defaults_with_pointers_into_the_plan() {
    Plan plan =
        plan(arrangement(
                "one",
                Tail.Device.of("stem", metres(1), 0.18, 2),
                TOP.withSling(metres(0.2)),
                Contact.of("stem", metres(8), Ideal.INSTANCE).withOffset(metres(0))))
            .build();

    assertThat(plan.taken())
        .extracting(Datum::name)
        .contains(
            "/gravity",
            "/stems/0/root",
            "/arrangements/0/contacts/0/offset",
            "/arrangements/0/contacts/1/sling",
            "/arrangements/0/tail/device/offset")
        .doesNotContain("/arrangements/0/contacts/0/sling", "/arrangements/0/contacts/1/offset");
    assertThat(plan.taken()).extracting(Datum::source).doesNotContain(Source.PLAN);
  }

  @Test
  void gravity_is_standard_by_default() {
    // 9.80665 m/s2, third General Conference on Weights and Measures, 1901; exact by definition
    assertThat(Si.value(plan(ONE).build().gravity(), Kind.ACCELERATION, "gravity"))
        .isEqualTo(9.80665);
  }

  @Test
  void a_builder_of_a_plan_builds_an_equal_plan() {
    Plan plan =
        plan(ONE.toBuilder()
                .tagline(Tagline.of(degrees(10), degrees(90)))
                .drop(DropSpec.of(metres(1), DropSpec.Slipping.of(newtons(150))))
                .build())
            .title("title")
            .notes("notes")
            .gravity(Si.of(9.8, Kind.ACCELERATION))
            .rope(Rope.UNSTATED.withDiameter(centimetres(1.4)))
            .limits(Limits.of(newtons(150), List.of(AskedFactor.of("rope", 10, "the crew leader"))))
            .build();

    assertThat(plan.toBuilder().build()).isEqualTo(plan).hasSameHashCodeAs(plan);
    assertThat(plan.toBuilder().title("other").build()).isNotEqualTo(plan);
    assertThat(plan(ONE).build()).isNotEqualTo(plan);
  }

  @Test
  void refuses_all_that_is_missing_at_once() {
    assertThat(refusals(() -> Plan.builder().build()))
        .containsExactly("MISSING at /piece", "MISSING at /stems", "MISSING at /arrangements");
    assertThat(refusals(() -> Arrangement.builder().build()))
        .containsExactly(
            "MISSING at /id", "MISSING at /motion", "MISSING at /tail", "MISSING at /contacts");
  }

  @Test
  void refuses_references_that_lead_nowhere() {
    Plan.Builder plan =
        plan(
            arrangement(
                "one",
                Tail.Device.of("elm", metres(1), 0.18, 2),
                Contact.of("oak", metres(1), Ideal.INSTANCE),
                Contact.of("stem", metres(12.1), Ideal.INSTANCE)),
            arrangement("one", Tail.Device.of("stem", metres(13), 0.18, 2), TOP));

    assertThat(refusals(plan::build))
        .containsExactly(
            "UNKNOWN_REFERENCE at /arrangements/0/contacts/0/stem",
            "STATION_OFF_STEM at /arrangements/0/contacts/1/at",
            "UNKNOWN_REFERENCE at /arrangements/0/tail/device/stem",
            "DUPLICATE at /arrangements/1/id",
            "STATION_OFF_STEM at /arrangements/1/tail/device/at");
    assertThat(refusals(() -> plan(ONE).stems(List.of(STEM, stem("stem"))).build()))
        .containsExactly("DUPLICATE at /stems/1/id");
  }

  @Test
  void refuses_neighbours_on_the_rope_without_room_between() {
    assertThat(refusals(() -> plan(arrangement("one", Tail.Down.DOWN, TOP, TOP)).build()))
        .containsExactly("SAME_PLACE at /arrangements/0/contacts/1");
    assertThat(
            refusals(
                () ->
                    plan(arrangement("one", Tail.Device.of("stem", metres(11.5), 0.2, 1), TOP))
                        .build()))
        .containsExactly("SAME_PLACE at /arrangements/0/tail/device");
    assertThat(
            refusals(
                () ->
                    plan(arrangement(
                            "one",
                            Tail.Point.of(Vector.ofSi(Kind.LENGTH, 0, 0, 0)),
                            Contact.of("stem", metres(0), Ideal.INSTANCE)))
                        .build()))
        .containsExactly("SAME_PLACE at /arrangements/0/tail/point");
  }

  @Test
  void refuses_the_weight_of_a_rope_whose_linear_density_is_not_stated() {
    Contact low = Contact.of("stem", metres(3), Ideal.INSTANCE).withRopeWeight(true);
    Plan.Builder plan =
        plan(
            arrangement("one", Tail.Down.DOWN, TOP, low),
            arrangement("two", Tail.Down.DOWN, TOP.withRopeWeight(true), low));

    assertThat(refusals(plan::build))
        .containsExactly(
            "CONFLICT at /arrangements/0/contacts/1/ropeWeight",
            "CONFLICT at /arrangements/1/contacts/0/ropeWeight",
            "CONFLICT at /arrangements/1/contacts/1/ropeWeight");
    assertThat(refusals(() -> plan.rope(Rope.UNSTATED.withDiameter(centimetres(1.4))).build()))
        .hasSize(3);
    Rope rope = Rope.UNSTATED.withLinearDensity(Si.of(0.13, Kind.LINEAR_DENSITY));
    assertThat(plan.rope(rope).build().arrangements()).hasSize(2);
  }

  @Test
  void a_contact_keeps_the_weight_of_the_rope_through_other_changes() {
    Contact weighed = TOP.withRopeWeight(true);

    assertThat(TOP.hasRopeWeight()).isFalse();
    assertThat(weighed.hasRopeWeight()).isTrue();
    assertThat(weighed).isNotEqualTo(TOP);
    assertThat(weighed.toString()).isNotEqualTo(TOP.toString());
    assertThat(weighed.withRopeWeight(false)).isEqualTo(TOP).hasSameHashCodeAs(TOP);
    assertThat(weighed.withSling(metres(0.2)).withOffset(metres(0.1)))
        .isEqualTo(TOP.withSling(metres(0.2)).withOffset(metres(0.1)).withRopeWeight(true));
    assertThat(weighed.taken()).isEqualTo(TOP.taken());
  }

  @Test
  void takes_neighbours_apart_by_station_offset_sling_or_stem() {
    Contact low = Contact.of("stem", metres(3), Ideal.INSTANCE);
    Plan plan =
        plan(
                arrangement("station", Tail.Down.DOWN, TOP, low, TOP),
                arrangement("offset", Tail.Down.DOWN, TOP, TOP.withOffset(metres(0.1))),
                arrangement("sling", Tail.Down.DOWN, TOP, TOP.withSling(metres(0.1))),
                arrangement(
                    "stem", Tail.Down.DOWN, TOP, Contact.of("other", metres(11.5), Ideal.INSTANCE)))
            .stems(List.of(STEM, stem("other")))
            .build();

    assertThat(plan.arrangements()).hasSize(4);
  }

  @Test
  void refuses_impossible_parts_where_they_are_made() {
    assertThat(refusals(() -> Piece.of(kilograms(0)))).containsExactly("OUT_OF_RANGE at /mass");
    assertThat(refusals(() -> TOP.withSling(metres(-1)))).containsExactly("OUT_OF_RANGE at /sling");
    assertThat(refusals(() -> TOP.withOffset(metres(21))))
        .containsExactly("OUT_OF_RANGE at /offset");
    assertThat(refusals(() -> Contact.of("stem", metres(1), new Sheave(0.001))))
        .containsExactly("OUT_OF_RANGE at /hardware/sheave/efficiency");
    assertThat(refusals(() -> Tail.Device.of("stem", metres(-1), -0.1, 21)))
        .containsExactly(
            "OUT_OF_RANGE at /at", "OUT_OF_RANGE at /friction", "OUT_OF_RANGE at /wraps");
    assertThat(refusals(() -> Tail.Point.of(Vector.ofSi(Kind.LENGTH, 0, 1e6, 0))))
        .containsExactly("OUT_OF_RANGE at /point");
    assertThat(refusals(() -> Tagline.of(degrees(90), degrees(0))))
        .containsExactly("OUT_OF_RANGE at /angle");
    assertThat(refusals(() -> DropSpec.of(metres(-1), DropSpec.Locked.LOCKED)))
        .containsExactly("OUT_OF_RANGE at /fall");
    assertThat(refusals(() -> DropSpec.Slipping.of(newtons(0))))
        .containsExactly("OUT_OF_RANGE at /slipTension");
    assertThat(refusals(() -> DropSpec.ByHand.of(newtons(-1), seconds(-1))))
        .containsExactly("OUT_OF_RANGE at /handForce", "OUT_OF_RANGE at /delay");
    assertThat(refusals(() -> AskedFactor.of("", 0, "")))
        .containsExactly(
            "OUT_OF_RANGE at /for", "OUT_OF_RANGE at /factor", "OUT_OF_RANGE at /askedBy");
    assertThat(
            refusals(
                () ->
                    Limits.of(
                        newtons(0),
                        List.of(AskedFactor.of("rope", 5, "a"), AskedFactor.of("rope", 10, "b")))))
        .containsExactlyInAnyOrder("OUT_OF_RANGE at /handForce", "DUPLICATE at /factors/1/for");
    assertThat(refusals(() -> plan(ONE).gravity(Si.of(0.0, Kind.ACCELERATION)).build()))
        .containsExactly("OUT_OF_RANGE at /gravity");
    assertThat(
            refusals(
                () ->
                    Arrangement.builder("many")
                        .motion(Motion.RAISING)
                        .tail(Tail.Down.DOWN)
                        .contacts(java.util.Collections.nCopies(25, TOP))
                        .build()))
        .containsExactly("OUT_OF_RANGE at /contacts");
  }

  @Test
  void a_piece_of_a_log_weighs_log_and_foliage() {
    // an even cylinder: pi / 4 * 0.2^2 * 2 = 0.0628... m3, by hand
    Log log = Log.of(metres(2), metres(0.2), metres(0.2), kilogramsPerCubicMetre(1000));
    Piece piece = Piece.of(log, kilograms(10));

    assertThat(Si.value(piece.mass(), Kind.MASS, "mass"))
        .isCloseTo(20 * Math.PI + 10, Tolerances.relative(Tolerances.ROUNDING));
    assertThat(piece.log()).contains(log);
    assertThat(Piece.of(log).foliage()).isEmpty();
  }

  @Test
  void says_which_argument_is_null() {
    assertThatThrownBy(() -> Contact.of("stem", metres(1), null))
        .isInstanceOf(NullPointerException.class)
        .hasMessage("hardware");
  }
}
