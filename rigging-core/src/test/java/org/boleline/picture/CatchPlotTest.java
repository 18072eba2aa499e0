package org.boleline.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.seconds;

import java.util.Arrays;
import java.util.List;
import org.boleline.Tolerances;
import org.boleline.drop.DropFound;
import org.boleline.drop.Drops;
import org.boleline.drop.TimedCatch;
import org.boleline.plan.Arrangement;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.rope.Rope;
import org.boleline.rope.StretchPoint;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class CatchPlotTest {
  private static final String RINGS = "three rings, device at the base";
  private final StaticResult statics = Statics.analyse(Demo.plan("hornbeam"));
  private final DropFound drop = (DropFound) Drops.analyse(statics).drop(RINGS).orElseThrow();
  private final TimedCatch.Followed sampled =
      Drops.sampled(statics, RINGS, seconds(0.01)).orElseThrow();

  @Test
  void sampling_does_not_change_the_catch() {
    TimedCatch.Followed plain = drop.inTime().orElseThrow();
    assertThat(sampled.loadLeg().overall()).isEqualTo(plain.loadLeg().overall());
    assertThat(plain.history().count()).isZero();
    assertThat(sampled.history().count()).isEqualTo(501);
  }

  @Test
  void tensions_are_drawn_as_they_were_followed() {
    Drawn drawn = new Drawn(CatchPlot.of(drop, sampled, PictureSpec.STANDARD).svg());
    Element chart = Drawn.ofClass(drawn.root(), "chart").get(0);
    List<Element> lines = Drawn.ofClass(chart, "line");
    assertThat(lines).hasSize(4);
    for (int leg = 0; leg < 4; leg++) {
      double[] tensions = sampled.history().tensions(leg, Kind.FORCE);
      double[] times = sampled.history().times(Kind.TIME);
      List<double[]> path = Drawn.path(lines.get(leg));
      assertThat(path).hasSize(tensions.length);
      for (int i = 0; i < tensions.length; i++) {
        double[] numbers = Drawn.numbers(chart, path.get(i));
        assertThat(numbers[0]).isEqualTo(times[i], within(Tolerances.DRAWN));
        assertThat(numbers[1]).isEqualTo(tensions[i] / 1000, within(Tolerances.DRAWN));
      }
    }
  }

  @Test
  void labels_keep_apart_and_the_account_is_told() {
    for (PictureSpec spec :
        List.of(PictureSpec.STANDARD, Demo.PHONE.withSheet(390, 960).withTheme(Theme.AUTO))) {
      String svg = CatchPlot.of(drop, sampled, spec).svg();
      Drawn drawn = new Drawn(svg);
      drawn.checkLabels("catch");
      drawn.checkOnSheet("catch");
      assertThat(drawn.root().getTextContent()).contains("given by the piece", "lost in stems");
      assertThat(Drawn.ofClass(drawn.root(), "bar")).hasSize(10);
      assertThat(svg).isEqualTo(CatchPlot.of(drop, sampled, spec).svg());
    }
  }

  /** Conservation of energy: what was put in is the sum of what is held and of what is lost. */
  @Test
  void the_bars_of_the_energy_add_up_to_what_was_given() {
    Drawn drawn = new Drawn(CatchPlot.of(drop, sampled, PictureSpec.STANDARD).svg());
    double[] widths =
        Drawn.ofClass(drawn.root(), "bar").stream()
            .mapToDouble(bar -> Drawn.number(bar, "width"))
            .toArray();
    double sum = Arrays.stream(widths).skip(1).sum();
    double gap = sampled.energy().residualShare() * widths[0];
    assertThat(gap).isLessThan(1); // a pixel of some hundred
    assertThat(sum).isCloseTo(widths[0], within(gap + widths.length * Tolerances.DRAWN));
    assertThat(Si.value(sampled.energy().heldByPiece(), Kind.ENERGY, "piece")).isPositive();
  }

  @Test
  void moments_of_several_stems_have_a_legend_of_their_own() {
    Plan plan = Demo.plan("sycamore");
    Arrangement caught =
        plan.arrangements().get(1).toBuilder()
            .drop(
                DropSpec.of(metres(1), DropSpec.Locked.LOCKED)
                    .withLoadLeg(metres(1))
                    .withLevel(DropSpec.Level.IN_TIME))
            .build();
    Rope rope = Rope.UNSTATED.withStretch(List.of(StretchPoint.of(Amounts.newtons(5500), 0.05)));
    StaticResult both =
        Statics.analyse(plan.toBuilder().rope(rope).arrangements(List.of(caught)).build());
    DropFound found = (DropFound) Drops.analyse(both).drop(caught.id()).orElseThrow();
    String svg =
        CatchPlot.of(
                found,
                Drops.sampled(both, caught.id(), seconds(0.05)).orElseThrow(),
                PictureSpec.STANDARD)
            .svg();
    assertThat(svg).contains(">moment at the base of A<", ">moment at the base of B<");
    Drawn drawn = new Drawn(svg);
    drawn.checkLabels("two stems");
    drawn.checkOnSheet("two stems");
    assertThat(CatchPlot.of(drop, sampled, PictureSpec.STANDARD).svg())
        .doesNotContain("moment at the base of hornbeam");
  }

  @Test
  void a_catch_without_samples_is_refused() {
    TimedCatch.Followed plain = drop.inTime().orElseThrow();
    assertThatThrownBy(() -> CatchPlot.of(drop, plain, PictureSpec.STANDARD))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
