package org.boleline.wood;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.relative;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Formula;
import org.junit.jupiter.api.Test;

class WoodFormulasTest {
  @Test
  void ids_are_numbered_through_and_every_symbol_stands_in_the_text() {
    List<Formula> all = WoodFormulas.all();
    assertThat(all).extracting(Formula::id).doesNotHaveDuplicates();
    for (String family : List.of("WOO", "LOG", "SEC")) {
      List<String> ids = all.stream().map(Formula::id).filter(id -> id.startsWith(family)).toList();
      for (int i = 0; i < ids.size(); i++) {
        assertThat(ids.get(i)).isEqualTo(family + "-" + (i + 1));
      }
    }
    for (Formula formula : all) {
      assertThat(formula.text()).startsWith(formula.result().name() + " = ");
      formula
          .inputs()
          .forEach(symbol -> assertThat(formula.text()).as(formula.id()).contains(symbol.name()));
    }
  }

  /** Wood Handbook Ch. 4, eq. 4-14, by hand: 0.60 and 64 percent make 984 kg/m3. */
  @Test
  void green_density_by_hand() {
    assertThat(WoodFormulas.GREEN_DENSITY.value(0.60, 64)).isCloseTo(984, relative(EXACT));
    assertThat(WoodFormulas.GREEN_DENSITY.value(0.60, 0)).isCloseTo(600, relative(EXACT));
  }

  /** Fibre saturation is 30 percent (Wood Handbook Ch. 4): below it the equation does not hold. */
  @Property
  void moisture_below_fibre_saturation_brings_a_caution(
      @ForAll @DoubleRange(min = 0, max = 29.9) double dry,
      @ForAll @DoubleRange(min = 30, max = 250) double green) {
    assertThat(WoodFormulas.GREEN_DENSITY.step(0.5, dry).cautions("here"))
        .extracting(Caution::code)
        .containsExactly(CautionCode.OUTSIDE_RANGE);
    assertThat(WoodFormulas.GREEN_DENSITY.step(0.5, green).cautions("here")).isEmpty();
  }
}
