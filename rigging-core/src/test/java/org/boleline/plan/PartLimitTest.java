package org.boleline.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetres;

import java.util.List;
import org.boleline.explain.PlanRefusedException;
import org.boleline.geometry.IncludedAngle;
import org.boleline.plan.PartLimit.CapacityIs;
import org.boleline.plan.PartLimit.Part;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;

class PartLimitTest {
  private static PartLimit.Builder device() {
    return PartLimit.builder(Part.DEVICE, "device")
        .force(kilonewtons(10), CapacityIs.WORKING_LOAD_LIMIT);
  }

  @Test
  void equal_statements_are_equal_and_others_are_not() {
    assertThat(device().build()).isEqualTo(device().build()).hasSameHashCodeAs(device().build());
    assertThat(device().build())
        .isNotEqualTo(device().capacityIs(CapacityIs.STRENGTH).build())
        .isNotEqualTo(device().name("other").build())
        .hasToString("device: device");
    assertThat(Hitch.Choker.of(0.8))
        .isEqualTo(Hitch.Choker.of(0.8))
        .isNotEqualTo(Hitch.Choker.of(0.8).withAngle(degrees(90)));
    assertThat(Reduction.of("wear", 0.9))
        .isEqualTo(Reduction.of("wear", 0.9))
        .isNotEqualTo(Reduction.of("wear", 0.9).withSource("nobody"));
  }

  @Test
  void all_that_does_not_belong_to_a_part_is_refused_at_once() {
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(
            () ->
                PartLimit.builder(Part.ANCHORAGE, "root")
                    .moment(newtonMetres(1))
                    .capacityIs(CapacityIs.STRENGTH)
                    .place("piece")
                    .station(metres(1))
                    .hitch(Hitch.Vertical.VERTICAL)
                    .reductions(List.of(Reduction.of("wear", 0.9)))
                    .combined(Reduction.Combined.STACKED)
                    .build())
        .satisfies(
            e ->
                assertThat(e.refusals())
                    .extracting(r -> r.place())
                    .containsExactlyInAnyOrder(
                        "/capacityIs", "/place", "/station", "/hitch", "/reductions", "/combined"));
  }

  @Test
  void a_capacity_of_another_kind_is_refused() {
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(() -> device().capacity(metres(1), Kind.LENGTH).build())
        .satisfies(e -> assertThat(e.refusals().get(0).place()).isEqualTo("/capacity"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> device().build().capacity(Kind.LENGTH))
        .withMessageContaining("wants force");
  }

  @Test
  void legs_of_a_basket_that_are_all_but_opposite_are_refused() {
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(() -> new Hitch.Basket(IncludedAngle.of(degrees(171))));
  }

  @Test
  void words_that_are_none_name_nothing() {
    assertThat(Part.named("ropes")).isEmpty();
    assertThat(CapacityIs.named("wll")).isEmpty();
    assertThat(PartLimit.Demand.named("slow")).isEmpty();
    assertThat(Reduction.Combined.named("")).isEmpty();
    for (Part part : Part.values()) {
      assertThat(Part.named(part.text())).contains(part);
    }
  }
}
