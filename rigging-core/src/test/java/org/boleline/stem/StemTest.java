package org.boleline.stem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.boleline.units.Amounts.centimetres;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.feet;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetresPerRadian;

import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.wood.WoodProperties;
import org.junit.jupiter.api.Test;

class StemTest {
  private static final Heading LEANING = Heading.of(degrees(25), degrees(0));
  private static final WoodProperties WOOD =
      WoodProperties.of(gigapascals(9), kilogramsPerCubicMetre(1000));

  private static Stem.Builder straight() {
    return Stem.builder("stem")
        .shape(StemShape.Straight.of(LEANING, metres(12)))
        .diameters(Diameters.tapering(metres(12), centimetres(36), centimetres(16)))
        .wood(WOOD);
  }

  private static List<String> refusals(ThrowingCallable making) {
    PlanRefusedException refused = catchThrowableOfType(PlanRefusedException.class, making);
    assertThat(refused).as("was not refused").isNotNull();
    return refused.refusals().stream()
        .map(refusal -> refusal.code() + " at " + refusal.place())
        .toList();
  }

  @Test
  void has_defaults_and_says_which() {
    Stem stem = straight().build();

    assertThat(stem.base()).isEqualTo(Vector.ofSi(Kind.LENGTH, 0, 0, 0));
    assertThat(stem.shapeIs()).isEqualTo(ShapeIs.AS_STANDING);
    assertThat(stem.ownWeight()).isTrue();
    assertThat(stem.root()).isEqualTo(Root.Clamped.CLAMPED);
    assertThat(stem.masses()).isEmpty();
    assertThat(stem.marks()).isEmpty();
    assertThat(stem.taken())
        .extracting(Datum::name)
        .contains("/base", "/shapeIs", "/ownWeight", "/root");
  }

  @Test
  void does_not_list_what_was_stated() {
    Stem stem =
        straight()
            .base(Vector.ofSi(Kind.LENGTH, 0, 0, 0))
            .shapeIs(ShapeIs.AS_STANDING)
            .ownWeight(true)
            .root(Root.Clamped.CLAMPED)
            .build();

    assertThat(stem.taken())
        .extracting(Datum::name)
        .doesNotContain("/base", "/shapeIs", "/ownWeight", "/root");
    assertThat(stem).isNotEqualTo(straight().build());
  }

  @Test
  void is_equal_on_si_numbers_whatever_the_unit() {
    Stem metric = straight().masses(List.of(PointMass.of(metres(3.048), kilograms(40)))).build();
    Stem us = straight().masses(List.of(PointMass.of(feet(10), kilograms(40)))).build();

    assertThat(us).isEqualTo(metric).hasSameHashCodeAs(metric);
  }

  @Test
  void a_builder_of_a_stem_builds_an_equal_stem() {
    Stem stem =
        straight()
            .base(Vector.ofSi(Kind.LENGTH, 1, 2, 3))
            .shapeIs(ShapeIs.STRESS_FREE)
            .ownWeight(false)
            .root(Root.Turning.of(newtonMetresPerRadian(2e6)))
            .masses(List.of(PointMass.of(metres(11), kilograms(40))))
            .marks(List.of(Mark.of("fork", metres(7))))
            .build();

    assertThat(stem.toBuilder().build()).isEqualTo(stem).hasSameHashCodeAs(stem);
    assertThat(stem.toBuilder().ownWeight(true).build()).isNotEqualTo(stem);
  }

  @Test
  void keeps_no_list_that_its_caller_can_change() {
    List<Mark> marks = new java.util.ArrayList<>(List.of(Mark.of("fork", metres(7))));
    Stem stem = straight().marks(marks).build();
    marks.clear();

    assertThat(stem.marks()).hasSize(1);
    assertThatThrownBy(() -> stem.marks().clear())
        .isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void refuses_all_that_is_missing_at_once() {
    assertThat(refusals(() -> Stem.builder().build()))
        .containsExactly(
            "MISSING at /id", "MISSING at /shape", "MISSING at /diameters", "MISSING at /wood");
  }

  @Test
  void refuses_stations_off_the_stem_and_names_twice() {
    Stem.Builder stem =
        straight()
            .masses(List.of(PointMass.of(metres(12.1), kilograms(1))))
            .marks(List.of(Mark.of("a", metres(1)), Mark.of("a", metres(13))));

    assertThat(refusals(stem::build))
        .containsExactly(
            "STATION_OFF_STEM at /masses/0/at",
            "STATION_OFF_STEM at /marks/1/at",
            "DUPLICATE at /marks/1/name");
  }

  @Test
  void takes_the_end_of_the_stem_in_another_unit_for_the_end() {
    Stem stem =
        Stem.builder("stem")
            .shape(StemShape.Straight.of(LEANING, metres(12.192)))
            .diameters(Diameters.tapering(feet(40), centimetres(36), centimetres(16)))
            .wood(WOOD)
            .marks(List.of(Mark.of("end", feet(40 + 1e-9))))
            .build();

    assertThat(stem.shape().length(Kind.LENGTH)).isEqualTo(12.192);
  }

  @Test
  void refuses_diameters_that_do_not_span_the_stem() {
    assertThat(
            refusals(
                () ->
                    straight()
                        .diameters(Diameters.tapering(metres(11), centimetres(36), centimetres(16)))
                        .build()))
        .containsExactly("STATIONS_NOT_IN_ORDER at /diameters/1/at");
    assertThat(
            refusals(
                () ->
                    straight()
                        .diameters(Diameters.tapering(metres(13), centimetres(36), centimetres(16)))
                        .build()))
        .containsExactly("STATION_OFF_STEM at /diameters/1/at");
  }

  @Test
  void refuses_impossible_parts_where_they_are_made() {
    assertThat(refusals(() -> StemShape.Straight.of(LEANING, metres(0))))
        .containsExactly("OUT_OF_RANGE at /length");
    assertThat(refusals(() -> Diameters.Entry.of(metres(-1), metres(0), metres(-1))))
        .containsExactly(
            "OUT_OF_RANGE at /at", "OUT_OF_RANGE at /outer", "OUT_OF_RANGE at /cavity");
    assertThat(refusals(() -> Diameters.of(List.of()))).containsExactly("MISSING at ");
    assertThat(refusals(() -> StemShape.ByStations.of(List.of()))).containsExactly("MISSING at ");
    assertThat(refusals(() -> StemShape.ByPoints.of(List.of()))).containsExactly("MISSING at ");
    assertThat(refusals(() -> Root.Turning.of(newtonMetresPerRadian(0))))
        .containsExactly("OUT_OF_RANGE at /rotationalStiffness");
    assertThat(refusals(() -> PointMass.of(metres(300), kilograms(-1))))
        .containsExactly("OUT_OF_RANGE at /at", "OUT_OF_RANGE at /mass");
    assertThat(refusals(() -> Mark.of("", metres(1)))).containsExactly("OUT_OF_RANGE at /name");
  }

  @Test
  void says_which_argument_is_null() {
    assertThatThrownBy(() -> StemShape.Straight.of(null, metres(1)))
        .isInstanceOf(NullPointerException.class)
        .hasMessage("heading");
    assertThatThrownBy(() -> Diameters.Entry.of(metres(1), null))
        .isInstanceOf(NullPointerException.class)
        .hasMessage("outer");
  }

  @Test
  void a_measured_line_starts_at_its_first_point() {
    StemShape.ByPoints line =
        StemShape.ByPoints.of(
            List.of(
                Vector.ofSi(Kind.LENGTH, 4, 0, 1),
                Vector.ofSi(Kind.LENGTH, 4, 0, 4),
                Vector.ofSi(Kind.LENGTH, 4, 3, 8)));
    Stem.Builder stem =
        Stem.builder("line")
            .shape(line)
            .diameters(Diameters.tapering(metres(8.0004), centimetres(36), centimetres(16)))
            .wood(WOOD);

    assertThat(line.length(Kind.LENGTH)).isEqualTo(8); // 3 and the hypotenuse of 3 and 4
    assertThat(line.pointsFromBase(Kind.LENGTH)[2]).containsExactly(0, 3, 7);
    assertThat(stem.build().base()).isEqualTo(Vector.ofSi(Kind.LENGTH, 4, 0, 1));
    assertThat(stem.base(Vector.ofSi(Kind.LENGTH, 4, 0, 1)).build().base())
        .isEqualTo(Vector.ofSi(Kind.LENGTH, 4, 0, 1));
    assertThat(refusals(() -> stem.base(Vector.ofSi(Kind.LENGTH, 5, 0, 1)).build()))
        .containsExactly("CONFLICT at /base");
  }

  @Test
  void points_may_count_from_the_base() {
    Stem stem =
        Stem.builder("line")
            .base(Vector.ofSi(Kind.LENGTH, 4, 0, 1))
            .shape(
                StemShape.ByPoints.of(
                    List.of(Vector.ofSi(Kind.LENGTH, 0, 0, 0), Vector.ofSi(Kind.LENGTH, 0, 0, 5))))
            .diameters(Diameters.tapering(metres(5), centimetres(36), centimetres(16)))
            .wood(WOOD)
            .build();

    assertThat(stem.base()).isEqualTo(Vector.ofSi(Kind.LENGTH, 4, 0, 1));
  }

  @Test
  void gives_bulk_numbers_in_the_named_unit() {
    StemShape.ByStations shape =
        StemShape.ByStations.of(
            List.of(
                StemShape.Station.of(metres(0), Heading.of(degrees(0), degrees(0))),
                StemShape.Station.of(feet(10), Heading.of(degrees(180), degrees(-90)))));

    assertThat(shape.stations(Kind.LENGTH)).containsExactly(0, 3.048);
    assertThat(shape.leans(Kind.ANGLE)).containsExactly(0, Math.PI);
    assertThat(shape.azimuths(Kind.ANGLE)).containsExactly(0, -Math.PI / 2);
  }
}
