package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtonMetresPerRadian;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.boleline.Tolerances;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Sheave;
import org.boleline.stem.PointMass;
import org.boleline.stem.Root;
import org.boleline.stem.Stem;

/**
 * Slender stems: stable, or said to have lost stability; and the load factor means what it says.
 */
class StabilityPropertiesTest {
  private static final double LENGTH = 12;
  private static final double MODULUS = 9e9;

  @Provide
  Arbitrary<Hardware> hardware() {
    return Arbitraries.of(Ideal.INSTANCE, new FrictionRing(0.2), new Sheave(0.95));
  }

  private static double[] stations(int count) {
    return IntStream.range(0, count).mapToDouble(i -> LENGTH * (count - i) / count).toArray();
  }

  private static double weight(double loadNumber, double diameter) {
    return loadNumber * MODULUS * Rigs.roundSecondMoment(diameter) / LENGTH / LENGTH;
  }

  /** Load numbers run to three times what an upright stem with one point bears. */
  @Property(tries = 120)
  void a_slender_stem_nearly_plumb_is_never_called_stable_without_stiffness(
      @ForAll @DoubleRange(min = 0, max = 0.03) double lean,
      @ForAll @DoubleRange(min = 50, max = 150) double slenderness,
      @ForAll @DoubleRange(min = 0.5, max = 1) double taper,
      @ForAll @DoubleRange(min = 0.1, max = 6) double loadNumber,
      @ForAll @IntRange(min = 1, max = 4) int count,
      @ForAll("hardware") Hardware hardware,
      @ForAll @DoubleRange(min = -0.5, max = 0.5) double side) {
    double base = LENGTH / slenderness;
    Stem.Builder stem =
        Rigs.straight(LENGTH, lean, 0.4, base, taper * base, Rigs.wood(MODULUS, 900));
    ArrangementResult found =
        Rigs.result(
            stem,
            Rigs.through(hardware, stations(count)).tail(Rigs.point(0, side, 0)),
            weight(loadNumber, base));
    if (found instanceof LostStability lost) {
      assertThat(lost.loadFactor()).isBetween(0.0, 1.0);
      assertThat(lost.ownWeightFactor()).isBetween(0.0, 1.0);
    } else {
      Rigs.sound(found.solution().orElseThrow());
    }
  }

  /** A column with a rope back to its base: stable just below the load factor, not just above. */
  @Property(tries = 60)
  void the_load_factor_parts_stable_from_unstable(
      @ForAll @DoubleRange(min = 30, max = 80) double slenderness,
      @ForAll @DoubleRange(min = 0.5, max = 1) double taper,
      @ForAll @IntRange(min = 1, max = 5) int count,
      @ForAll("hardware") Hardware hardware,
      @ForAll @DoubleRange(min = 3.5, max = 20) double loadNumber,
      @ForAll boolean ownWeight,
      @ForAll @DoubleRange(min = 0, max = 60) double mass,
      @ForAll @DoubleRange(min = 2, max = 100) double root) {
    double base = LENGTH / slenderness;
    double weight = weight(loadNumber, base);
    Stem.Builder stem =
        Rigs.straight(LENGTH, 0, 0, base, taper * base, Rigs.wood(MODULUS, 900))
            .ownWeight(ownWeight)
            .masses(List.of(PointMass.of(metres(0.8 * LENGTH), kilograms(mass))))
            .root(
                Root.Turning.of(
                    newtonMetresPerRadian(root * MODULUS * Rigs.roundSecondMoment(base) / LENGTH)));
    ArrangementResult full = Rigs.result(stem, Rigs.through(hardware, stations(count)), weight);
    assertThat(full).isInstanceOf(LostStability.class);
    LostStability lost = (LostStability) full;
    assertThat(lost.ownWeightFactor()).isEqualTo(1);
    double factor = lost.loadFactor();
    assertThat(factor).isBetween(0.0, 1.0);
    Solution below =
        Rigs.sound(stem, Rigs.through(hardware, stations(count)), 0.99 * factor * weight);
    assertThat(below.stiffnessRatio()).isLessThan(0.1);
    assertThat(Plain.size(Rigs.tipMovement(below))).isLessThan(Tolerances.EXACT);
    ArrangementResult above =
        Rigs.result(stem, Rigs.through(hardware, stations(count)), 1.01 * factor * weight);
    assertThat(above).isInstanceOf(LostStability.class);
    assertThat(((LostStability) above).loadFactor() * 1.01)
        .isCloseTo(1, within(Tolerances.CRITICAL_LOAD));
  }

  /** The same for own weight alone. */
  @Property(tries = 30)
  void the_own_weight_factor_parts_stable_from_unstable(
      @ForAll @DoubleRange(min = 200, max = 300) double slenderness,
      @ForAll @DoubleRange(min = 0.4, max = 1) double taper,
      @ForAll @DoubleRange(min = 4000, max = 8000) double density) {
    double base = LENGTH / slenderness;
    LostStability lost = (LostStability) own(base, taper, density);
    assertThat(lost.loadFactor()).isZero();
    double factor = lost.ownWeightFactor();
    assertThat(own(base, taper, 0.99 * factor * density)).isInstanceOf(Solution.class);
    assertThat(own(base, taper, 1.01 * factor * density)).isInstanceOf(LostStability.class);
  }

  private static ArrangementResult own(double base, double taper, double density) {
    return Rigs.result(
        Rigs.straight(LENGTH, 0, 0, base, taper * base, Rigs.wood(MODULUS, density)),
        Rigs.ideal(LENGTH),
        1e-4 * weight(1, base));
  }

  /** The least stiffness ratio falls as the load grows, from one to nothing. */
  @Property(tries = 30)
  void the_stiffness_ratio_of_a_column_falls_with_the_load(
      @ForAll @DoubleRange(min = 30, max = 60) double slenderness,
      @ForAll @IntRange(min = 1, max = 4) int count) {
    double base = LENGTH / slenderness;
    Stem.Builder stem =
        Rigs.straight(LENGTH, 0, 0, base, base, Rigs.wood(MODULUS, 900)).ownWeight(false);
    double[] ratios =
        DoubleStream.of(0.01, 0.5, 1, 1.5, 2)
            .map(
                n ->
                    Rigs.sound(stem, Rigs.ideal(stations(count)), weight(n, base)).stiffnessRatio())
            .toArray();
    assertThat(ratios[0]).isBetween(0.98, 1.0);
    for (int i = 1; i < ratios.length; i++) {
      assertThat(ratios[i]).isLessThan(ratios[i - 1]);
    }
  }
}
