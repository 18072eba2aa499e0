package org.boleline.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.boleline.Tolerances;
import org.boleline.picture.RangePlot.Cause;
import org.boleline.picture.RangePlot.Spread;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class RangePlotTest {
  private static final List<Spread> SPREADS =
      List.of(
          Spread.of("force on the outer point", Kind.FORCE, 1500, 1650, 1720, 1800, 2000),
          Spread.of("<movement>", Kind.LENGTH, 0.1, 0.13, 0.156, 0.18, 0.25));
  private static final List<Cause> CAUSES =
      List.of(new Cause("friction of the rings", 0.6), new Cause("mass of the piece", 0.3));

  private static Drawn drawn(PictureSpec spec) {
    return new Drawn(RangePlot.of("Ranges", SPREADS, "the force", CAUSES, spec).svg());
  }

  @Test
  void quantiles_stand_in_proportion_from_zero() {
    List<Element> lines =
        Drawn.ofClass(drawn(PictureSpec.STANDARD.withSheet(720, 400)).root(), "quantile");
    assertThat(lines).hasSize(6);
    // sheet of 720 with margins of 10 and 4: zero at 14, the greatest at 706
    double scale = (706 - 14) / 2000.0;
    assertThat(Drawn.number(lines.get(0), "x1"))
        .isEqualTo(14 + 1500 * scale, within(Tolerances.ON_SHEET));
    assertThat(Drawn.number(lines.get(1), "x1"))
        .isEqualTo(14 + 1720 * scale, within(Tolerances.ON_SHEET));
    assertThat(Drawn.number(lines.get(2), "x1")).isEqualTo(706, within(Tolerances.ON_SHEET));
  }

  @Test
  void causes_stand_in_proportion_with_their_numbers() {
    Drawn drawn = drawn(PictureSpec.STANDARD.withSheet(390, 400));
    List<Element> bars = Drawn.ofClass(drawn.root(), "bar");
    assertThat(Drawn.number(bars.get(1), "width"))
        .isEqualTo(Drawn.number(bars.get(0), "width") / 2, within(Tolerances.ON_SHEET));
    assertThat(drawn.root().getTextContent()).contains("60 %", "30 %", "<movement>");
    drawn.checkOnSheet("ranges");
  }

  @Test
  void results_of_one_kind_share_a_scale_and_ends_alone_have_no_middle() {
    List<Spread> alike =
        List.of(
            Spread.between("a", Kind.FORCE, 1000, 2000),
            Spread.between("b", Kind.FORCE, 500, 4000),
            Spread.between("c", Kind.LENGTH, -0.1, 0.1));
    Drawn drawn =
        new Drawn(
            RangePlot.of("Ranges", alike, "", List.of(), PictureSpec.STANDARD.withSheet(720, 400))
                .svg());
    List<Element> ends = Drawn.ofClass(drawn.root(), "end");

    assertThat(ends).hasSize(6);
    double wide = 706 - 14;
    double[] shares = {0.25, 0.5, 0.125, 1, 0, 1};
    for (int i = 0; i < shares.length; i++) {
      assertThat(Drawn.number(ends.get(i), "x1"))
          .isEqualTo(14 + shares[i] * wide, within(Tolerances.ON_SHEET));
    }
    assertThat(Drawn.ofClass(drawn.root(), "middle-half")).isEmpty();
    assertThat(drawn.root().getTextContent())
        .contains("From the least to the greatest that was found", "a, ends: ")
        .doesNotContain("quantile");
    drawn.checkOnSheet("ends");
  }

  @Test
  void numbers_that_are_no_quantiles_are_refused() {
    assertThatThrownBy(() -> Spread.of("a", Kind.FORCE, 1, 2, 3))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Spread.of("a", Kind.FORCE, 1, 2, 3, 5, 4))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Spread.of("a", Kind.FORCE, 1, 2, 3, 4, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Spread.between("a", Kind.FORCE, 2, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Spread.between("a", Kind.FORCE, 1, Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Cause("a", 1.5)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> RangePlot.of("a", List.of(), "b", List.of(), PictureSpec.STANDARD))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
