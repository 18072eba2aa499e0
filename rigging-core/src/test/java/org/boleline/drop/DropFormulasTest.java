package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.m;
import static org.boleline.drop.CatchNumbers.n;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.metresPerSecond;
import static org.boleline.units.Amounts.newtons;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Formula;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class DropFormulasTest {
  private static final double G = 9.80665;

  @Test
  void ids_count_up() {
    assertThat(DropFormulas.all().stream().map(Formula::id))
        .containsExactlyElementsOf(
            IntStream.rangeClosed(1, DropFormulas.all().size()).mapToObj(i -> "DRO-" + i).toList());
  }

  @Property
  void a_standard_fall_is_a_linear_catch_of_that_length(
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 1000) double mass,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 50) double fall,
      @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 60) double length,
      @ForAll @Scale(3) @DoubleRange(min = 1, max = 900) double modulus) {
    StandardFall standard = StandardFall.of(kilograms(mass), fall / length, kilonewtons(modulus));
    LinearCatch linear =
        LinearCatch.of(
            kilograms(mass), metres(fall), Si.of(1000 * modulus / length, Kind.STIFFNESS));
    assertThat(n(standard.peak())).isCloseTo(n(linear.peak()), relative(EXACT));
    assertThat(standard.strainFraction() * length).isCloseTo(m(linear.stretch()), relative(EXACT));
  }

  @Property
  void the_modulus_comes_back_from_the_peak(
      @ForAll @Scale(3) @DoubleRange(min = 1, max = 500) double mass,
      @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 2) double factor,
      @ForAll @Scale(3) @DoubleRange(min = 10, max = 900) double modulus) {
    StandardFall there = StandardFall.of(kilograms(mass), factor, kilonewtons(modulus));
    StandardFall back = StandardFall.ofPeak(kilograms(mass), factor, there.peak());
    assertThat(n(back.modulus())).isCloseTo(1000 * modulus, relative(EXACT));
    assertThat(n(back.peak())).isCloseTo(n(there.peak()), relative(EXACT));
  }

  @Property
  void the_weight_falls_as_far_as_the_spring_stores(
      @ForAll @Scale(3) @DoubleRange(min = 1, max = 500) double mass,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 50) double fall,
      @ForAll @Scale(3) @DoubleRange(min = 1e3, max = 1e6) double stiffness) {
    LinearCatch caught =
        LinearCatch.of(kilograms(mass), metres(fall), Si.of(stiffness, Kind.STIFFNESS));
    double x = m(caught.stretch());
    assertThat(stiffness * x * x / 2).isCloseTo(mass * G * (fall + x), relative(EXACT));
  }

  @Property
  void the_peak_by_speed_alone_is_short_by_one_to_two_weights(
      @ForAll @Scale(3) @DoubleRange(min = 1, max = 500) double mass,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 50) double fall,
      @ForAll @Scale(3) @DoubleRange(min = 1e3, max = 1e6) double stiffness) {
    LinearCatch caught =
        LinearCatch.of(kilograms(mass), metres(fall), Si.of(stiffness, Kind.STIFFNESS));
    double weights = (n(caught.peak()) - n(caught.peakBySpeedAlone())) / (mass * G);
    assertThat(weights).isBetween(1 - EXACT, 2 + EXACT);
  }

  @Property
  void a_stop_by_constant_force_is_the_gentlest_over_its_distance(
      @ForAll @Scale(3) @DoubleRange(min = 1, max = 500) double mass,
      @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 50) double fall,
      @ForAll @Scale(3) @DoubleRange(min = 1e3, max = 1e6) double stiffness) {
    // A spring over the same way pulls twice as hard at its end as on average.
    LinearCatch spring =
        LinearCatch.of(kilograms(mass), metres(fall), Si.of(stiffness, Kind.STIFFNESS));
    Stop stop =
        Stop.of(kilograms(mass), metresPerSecond(Math.sqrt(2 * G * fall)), spring.stretch());
    assertThat(2 * n(stop.force())).isCloseTo(n(spring.peak()), relative(EXACT));
  }

  @Test
  void gravity_can_be_another_one() {
    // Moon, from memory: 1.62 m/s2. By hand: F = W (1 + sqrt(1 + 2 k h / W)).
    double w = 100 * 1.62;
    LinearCatch caught =
        LinearCatch.of(kilograms(100), metres(2), Si.of(5000, Kind.STIFFNESS))
            .withGravity(Si.of(1.62, Kind.ACCELERATION));
    assertThat(n(caught.peak())).isCloseTo(w * (1 + Math.sqrt(1 + 20000 / w)), relative(EXACT));
    assertThat(
            n(
                StandardFall.of(kilograms(100), 0.5, newtons(20000))
                    .withGravity(Si.of(1.62, Kind.ACCELERATION))
                    .peak()))
        .isCloseTo(n(caught.peak()), relative(EXACT));
    Stop stop =
        Stop.of(kilograms(100), metresPerSecond(2), metres(1))
            .withGravity(Si.of(1.62, Kind.ACCELERATION));
    assertThat(n(stop.force())).isCloseTo(100 * (1.62 + 2), relative(EXACT));
  }

  @Test
  void a_fall_factor_above_two_is_cautioned() {
    assertThat(StandardFall.of(kilograms(80), 2, kilonewtons(30)).steps().get(1).cautions("/fall"))
        .isEmpty();
    assertThat(
            StandardFall.of(kilograms(80), 2.1, kilonewtons(30)).steps().get(1).cautions("/fall"))
        .extracting(c -> c.code())
        .containsExactly(CautionCode.OUTSIDE_RANGE);
  }

  @Test
  void numbers_are_those_of_their_steps() {
    LinearCatch linear = LinearCatch.of(kilograms(9), metres(1), Si.of(70, Kind.STIFFNESS));
    assertThat(linear.steps().get(1).result()).isEqualTo(n(linear.peak()));
    assertThat(linear.steps().get(2).result()).isEqualTo(m(linear.stretch()));
    assertThat(linear.steps().get(4).result()).isEqualTo(n(linear.peakBySpeedAlone()));
    Stop stop = Stop.of(kilograms(9), metresPerSecond(2), metres(1));
    assertThat(stop.steps().get(1).result()).isEqualTo(n(stop.force()));
  }

  @Test
  void bad_input_is_refused_all_at_once() {
    assertThat(places(() -> LinearCatch.of(kilograms(-1), metres(-1), Si.of(0, Kind.STIFFNESS))))
        .containsExactly("/mass", "/fall", "/stiffness");
    assertThat(places(() -> Stop.of(kilograms(0), metresPerSecond(-1), metres(0))))
        .containsExactly("/mass", "/speed", "/distance");
    assertThat(places(() -> StandardFall.of(kilograms(0), -1, newtons(0))))
        .containsExactly("/mass", "/fallFactor", "/modulus");
    assertThat(places(() -> StandardFall.of(kilograms(1), Double.NaN, newtons(1))))
        .containsExactly("/fallFactor");
    assertThat(places(() -> StandardFall.ofPeak(kilograms(100), 0, newtons(1900))))
        .containsExactly("/fallFactor", "/peak");
    assertThat(
            places(
                () ->
                    Stop.of(kilograms(1), metresPerSecond(1), metres(1))
                        .withGravity(Si.of(0, Kind.ACCELERATION))))
        .containsExactly("/gravity");
    assertThatNullPointerException()
        .isThrownBy(() -> Stop.of(null, metresPerSecond(1), metres(1)))
        .withMessage("mass");
  }

  private static List<String> places(Runnable making) {
    List<Refusal> found = new ArrayList<>();
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(making::run)
        .satisfies(e -> found.addAll(e.refusals()));
    return found.stream().map(Refusal::place).toList();
  }

  @Test
  void equality_is_exact() {
    Stop stop = Stop.of(kilograms(1), metresPerSecond(1), metres(1));
    assertThat(stop)
        .isEqualTo(Stop.of(kilograms(1), metresPerSecond(1), metres(1)))
        .hasSameHashCodeAs(Stop.of(kilograms(1), metresPerSecond(1), metres(1)))
        .isNotEqualTo(Stop.of(kilograms(1), metresPerSecond(1), metres(2)));
    StandardFall fall = StandardFall.of(kilograms(1), 1, newtons(10));
    assertThat(fall)
        .isEqualTo(StandardFall.of(kilograms(1), 1, newtons(10)))
        .hasSameHashCodeAs(StandardFall.of(kilograms(1), 1, newtons(10)))
        .isNotEqualTo(StandardFall.of(kilograms(1), 1, newtons(11)));
  }
}
