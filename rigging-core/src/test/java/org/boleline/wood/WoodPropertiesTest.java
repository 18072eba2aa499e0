package org.boleline.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.units.Amounts.gigapascals;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.megapascals;

import javax.measure.Quantity;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Source.Reading;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class WoodPropertiesTest {
  private static <Q extends Quantity<Q>> double si(Quantity<Q> quantity, Kind<Q> kind) {
    return Si.value(quantity, kind, kind.name());
  }

  /** Shear modulus of wood along the grain as E/16: common practice, no source. */
  @Test
  void the_shear_modulus_defaults_to_a_sixteenth_and_says_so() {
    WoodProperties wood = WoodProperties.of(gigapascals(8), kilogramsPerCubicMetre(990));
    assertThat(si(wood.shearModulus(), Kind.PRESSURE)).isEqualTo(0.5e9);
    assertThat(wood.bendingStrength()).isEmpty();
    assertThat(wood.compressionStrength()).isEmpty();
    assertThat(wood.taken()).hasSize(1);
    Datum taken = wood.taken().get(0);
    assertThat(taken.name()).isEqualTo("shearModulus");
    assertThat(taken.value()).isEqualTo("500000000 Pa");
    assertThat(taken.source().reading()).isEqualTo(Reading.COMMON_PRACTICE);
  }

  @Test
  void what_is_stated_is_not_taken() {
    WoodProperties wood =
        WoodProperties.builder()
            .species(SpeciesPack.standard().species("white oak"))
            .modulusOfElasticity(gigapascals(8))
            .shearModulus(gigapascals(0.6))
            .density(kilogramsPerCubicMetre(1050))
            .bendingStrength(megapascals(50))
            .compressionStrength(megapascals(20))
            .build();
    assertThat(wood.taken()).isEmpty();
    assertThat(wood)
        .isEqualTo(
            WoodProperties.builder()
                .modulusOfElasticity(megapascals(8000))
                .shearModulus(megapascals(600))
                .density(kilogramsPerCubicMetre(1050))
                .bendingStrength(megapascals(50))
                .compressionStrength(megapascals(20))
                .build());
  }

  @Test
  void a_species_gives_the_modulus_for_bending_and_all_that_is_not_stated() {
    Species oak = SpeciesPack.standard().species("white oak");
    WoodProperties wood =
        WoodProperties.builder().species(oak).density(kilogramsPerCubicMetre(1050)).build();
    double e = si(oak.modulusOfElasticity().orElseThrow(), Kind.PRESSURE);
    assertThat(si(wood.modulusOfElasticity(), Kind.PRESSURE)).isEqualTo(e);
    assertThat(e)
        .isCloseTo(
            1.10 * si(oak.apparentModulus().orElseThrow(), Kind.PRESSURE), relative(ROUNDING));
    assertThat(wood.bendingStrength()).isPresent();
    assertThat(si(wood.compressionStrength().orElseThrow(), Kind.PRESSURE))
        .isEqualTo(si(oak.crushingStrength().orElseThrow(), Kind.PRESSURE));
    assertThat(wood.taken())
        .extracting(Datum::name)
        .containsExactly(
            "modulusOfElasticity", "shearModulus", "bendingStrength", "compressionStrength");
    assertThat(wood.taken().get(0).spread()).isEqualTo("coefficient of variation 0.22 (FPL T5-6)");
    assertThat(wood.taken().get(0).source().title()).contains("times 1.10");
  }

  @Test
  void taken_values_read_back_to_the_very_numbers() {
    WoodProperties wood = WoodProperties.from(SpeciesPack.standard().species("American beech"));
    assertThat(wood.taken()).hasSize(5);
    assertThat(QuantityText.parse(wood.taken().get(0).value(), Kind.PRESSURE).getValue())
        .isEqualTo(si(wood.modulusOfElasticity(), Kind.PRESSURE));
    assertThat(QuantityText.parse(wood.taken().get(2).value(), Kind.DENSITY).getValue())
        .isEqualTo(si(wood.density(), Kind.DENSITY));
  }

  @Test
  void a_european_species_needs_a_stated_density_and_gives_its_elastic_limit() {
    Species hornbeam = SpeciesPack.europeanFromMemory().species("hornbeam");
    assertThatThrownBy(() -> WoodProperties.from(hornbeam))
        .isInstanceOf(PlanRefusedException.class)
        .hasMessageContaining("/density: wants a quantity of density")
        .hasMessageContaining("since the data have none of hornbeam (Carpinus betulus)");
    WoodProperties wood =
        WoodProperties.builder().species(hornbeam).density(kilogramsPerCubicMetre(990)).build();
    assertThat(si(wood.compressionStrength().orElseThrow(), Kind.PRESSURE)).isEqualTo(16e6);
    assertThat(wood.taken().get(2).source().title()).contains("elastic limit stands for");
    assertThat(wood.taken())
        .filteredOn(d -> !d.name().equals("shearModulus"))
        .allSatisfy(d -> assertThat(d.source().reading()).isEqualTo(Reading.FROM_MEMORY));
  }

  @Test
  void all_that_is_missing_is_refused_at_once() {
    assertThatThrownBy(() -> WoodProperties.builder().build())
        .isInstanceOf(PlanRefusedException.class)
        .satisfies(
            e ->
                assertThat(((PlanRefusedException) e).refusals())
                    .extracting(Refusal::place)
                    .containsExactly("/modulusOfElasticity", "/density"));
  }

  @Test
  void values_outside_their_range_are_refused_by_name() {
    assertThatThrownBy(() -> WoodProperties.of(gigapascals(0), kilogramsPerCubicMetre(990)))
        .hasMessage("modulusOfElasticity: wants more than zero, got 0 Pa");
    assertThatThrownBy(() -> WoodProperties.builder().density(kilogramsPerCubicMetre(2e5)))
        .hasMessage("density: wants a density above zero to 100000 kg/m3, got 200000 kg/m3");
  }
}
