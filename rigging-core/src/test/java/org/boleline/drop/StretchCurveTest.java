package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.boleline.Tolerances.EXACT;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.j;
import static org.boleline.drop.CatchNumbers.m;
import static org.boleline.drop.CatchNumbers.n;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.newtons;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.boleline.explain.PlanRefusedException;
import org.boleline.rope.StretchPoint;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StretchCurveTest {
  private static final TabulatedStretch SOFTENING = table(0.011, 5000, 0.017, 10000, 0.027, 15000);
  private static final TabulatedStretch STIFFENING = table(0.05, 3000, 0.09, 9000, 0.12, 18000);

  private static TabulatedStretch table(double... strainsAndTensions) {
    List<StretchPoint> points = new ArrayList<>();
    for (int i = 0; i < strainsAndTensions.length; i += 2) {
      points.add(StretchPoint.of(newtons(strainsAndTensions[i + 1]), strainsAndTensions[i]));
    }
    return TabulatedStretch.of(points);
  }

  @ParameterizedTest
  @CsvSource({
    "0.004, 1281.2512017590102, 2.283424291144874",
    "0.011, 5000.0, 23.50444591930201",
    "0.0135, 7008.198658303524, 38.34710172855482",
    "0.02, 11834.547872340425, 101.20337651451604",
    "0.0269, 14970.555664893618, 194.7967154154469"
  })
  void a_table_is_the_monotone_cubic_of_another_library(
      double strain, double tension, double energy) {
    // scipy.interpolate.PchipInterpolator and its integral, SciPy 1.17.1, same points.
    assertThat(n(SOFTENING.tension(strain))).isCloseTo(tension, relative(EXACT));
    assertThat(j(SOFTENING.energy(metres(1), newtons(tension)))).isCloseTo(energy, relative(EXACT));
  }

  @ParameterizedTest
  @CsvSource({
    "0.004, 62.742709677419285, 0.1105190537634407",
    "0.03, 1364.9032258064512, 15.767419354838704",
    "0.06, 4046.370967741935, 93.88272849462363",
    "0.1, 11427.03533026114, 384.96159754224277",
    "0.119, 17636.810291858677, 658.556588517665"
  })
  void so_is_a_table_of_a_rope_that_stiffens(double strain, double tension, double energy) {
    // As above.
    assertThat(n(STIFFENING.tension(strain))).isCloseTo(tension, relative(EXACT));
    assertThat(j(STIFFENING.energy(metres(1), newtons(tension))))
        .isCloseTo(energy, relative(EXACT));
  }

  @Test
  void beyond_the_last_point_a_table_goes_on_at_its_last_slope() {
    // Slopes at the last points by the same library.
    assertThat(n(STIFFENING.lastSlope())).isCloseTo(364285.7142857142, relative(EXACT));
    assertThat(n(SOFTENING.lastSlope())).isCloseTo(291666.6666666671, relative(EXACT));
    double slope = n(STIFFENING.lastSlope());
    assertThat(n(STIFFENING.tension(0.15))).isCloseTo(18000 + 0.03 * slope, relative(ROUNDING));
    assertThat(STIFFENING.strainFraction(newtons(18000 + 0.03 * slope)))
        .isCloseTo(0.15, relative(ROUNDING));
    double atLast = j(STIFFENING.energy(metres(1), newtons(18000)));
    assertThat(j(STIFFENING.energy(metres(1), newtons(18000 + 0.03 * slope))))
        .isCloseTo(atLast + 0.03 * (18000 + 0.015 * slope), relative(ROUNDING));
  }

  @Test
  void a_table_that_would_end_level_ends_with_its_last_chord() {
    // Three-point slope at the end by hand: (3 * 1 - 1 * 9) / 2 kN for chords 9 and 1: below zero.
    TabulatedStretch level = table(0.01, 9000, 0.02, 10000);
    assertThat(n(level.lastSlope())).isCloseTo(1000 / 0.01, relative(EXACT));
  }

  @Test
  void one_point_is_a_straight_line() {
    TabulatedStretch line = table(0.02, 5000);
    assertThat(n(line.tension(0.01))).isCloseTo(2500, relative(ROUNDING));
    assertThat(n(line.tension(0.05))).isCloseTo(12500, relative(ROUNDING));
    assertThat(j(line.energy(metres(4), newtons(5000)))).isCloseTo(200, relative(ROUNDING));
  }

  @Provide
  Arbitrary<TabulatedStretch> tables() {
    return Arbitraries.doubles()
        .between(0.02, 1)
        .ofScale(4)
        .list()
        .ofMinSize(2)
        .ofMaxSize(14)
        .map(
            steps -> {
              List<StretchPoint> points = new ArrayList<>();
              double strain = 0;
              double tension = 0;
              for (int i = 0; i + 1 < steps.size(); i += 2) {
                strain += 0.03 * steps.get(i);
                tension += 9000 * steps.get(i + 1);
                points.add(StretchPoint.of(newtons(tension), strain));
              }
              return TabulatedStretch.of(points);
            });
  }

  @Property(tries = 300)
  void tension_rises_and_strain_is_its_inverse(
      @ForAll("tables") TabulatedStretch table,
      @ForAll @Scale(9) @DoubleRange(min = 1e-6, max = 2) double share) {
    double strain = share * table.last().elongationFraction();
    double tension = n(table.tension(strain));
    assertThat(n(table.tension(strain * 1.001))).isGreaterThan(tension);
    assertThat(n(table.tension(table.strainFraction(newtons(tension)))))
        .isCloseTo(tension, relative(EXACT));
  }

  @Property(tries = 300)
  void it_goes_through_its_points(@ForAll("tables") TabulatedStretch table) {
    for (StretchPoint point : table.points()) {
      assertThat(n(table.tension(point.elongationFraction())))
          .isCloseTo(n(point.tension()), relative(ROUNDING));
      assertThat(table.strainFraction(point.tension()))
          .isCloseTo(point.elongationFraction(), relative(ROUNDING));
    }
  }

  @Property(tries = 100)
  void energy_is_the_area_under_the_curve(
      @ForAll("tables") TabulatedStretch table,
      @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 2) double share) {
    double strain = share * table.last().elongationFraction();
    // Gauss quadrature of another library, exact for cubics, piece by piece.
    GaussIntegrator gauss = new GaussIntegratorFactory().legendre(3, 0, 1);
    double area = 0;
    double from = 0;
    List<Double> ends =
        new ArrayList<>(table.points().stream().map(StretchPoint::elongationFraction).toList());
    ends.add(Double.MAX_VALUE);
    for (double end : ends) {
      double start = from;
      double h = Math.min(end, strain) - start;
      if (h > 0) {
        area += h * gauss.integrate(s -> n(table.tension(start + s * h)));
      }
      from = end;
    }
    assertThat(j(table.energy(metres(1), table.tension(strain)))).isCloseTo(area, relative(EXACT));
  }

  @Property(tries = 200)
  void a_power_law_goes_through_its_point_and_stores_its_integral(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 4) double exponent,
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.5) double strain) {
    PowerStretch power = PowerStretch.of(StretchPoint.of(kilonewtons(10), 0.05), exponent);
    double tension = n(power.tension(strain));
    // Logarithms are in proportion.
    assertThat(Math.log(tension / 10000))
        .isCloseTo(
            exponent * Math.log(strain / 0.05), org.assertj.core.api.Assertions.offset(EXACT));
    assertThat(power.strainFraction(newtons(tension))).isCloseTo(strain, relative(EXACT));
    assertThat(j(power.energy(metres(2), newtons(tension))))
        .isCloseTo(2 * tension * strain / (exponent + 1), relative(EXACT));
    assertThat(DropFormulas.POWER_TENSION.value(strain, 10000, 0.05, exponent))
        .isCloseTo(tension, relative(ROUNDING));
    assertThat(DropFormulas.POWER_ENERGY.value(tension, strain, exponent) * 2)
        .isCloseTo(j(power.energy(metres(2), newtons(tension))), relative(EXACT));
  }

  @Test
  void with_the_exponent_one_a_power_law_is_linear() {
    PowerStretch power = PowerStretch.of(StretchPoint.of(kilonewtons(10), 0.05), 1);
    LinearStretch linear = LinearStretch.of(kilonewtons(200));
    assertThat(n(power.tension(0.031))).isCloseTo(n(linear.tension(0.031)), relative(ROUNDING));
    assertThat(m(power.stretch(metres(7), newtons(900))))
        .isCloseTo(m(linear.stretch(metres(7), newtons(900))), relative(ROUNDING));
  }

  @Property(tries = 100)
  void a_stiffer_rope_pulls_harder_by_the_factor_at_any_strain(
      @ForAll("tables") TabulatedStretch table,
      @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 5) double factor) {
    List<StretchCurve> curves =
        List.of(
            table,
            LinearStretch.of(kilonewtons(90)),
            PowerStretch.of(StretchPoint.of(kilonewtons(3), 0.04), 1.7));
    for (StretchCurve curve : curves) {
      assertThat(n(curve.times(factor).tension(0.03)))
          .isCloseTo(factor * n(curve.tension(0.03)), relative(EXACT));
    }
  }

  @Test
  void what_is_no_curve_is_refused() {
    refused("from 1 to 1000 points", "", () -> TabulatedStretch.of(List.of()));
    refused("", "/1", () -> table(0.02, 5000, 0.02, 6000));
    refused("", "/1", () -> table(0.02, 5000, 0.03, 4000));
    refused("", "/exponent", () -> PowerStretch.of(StretchPoint.of(newtons(1), 0.1), 0));
    refused("", "/modulus", () -> LinearStretch.of(newtons(-1)));
    refused("", "/stiffnessFactor", () -> SOFTENING.times(0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SOFTENING.tension(-0.1))
        .withMessageContaining("strain");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SOFTENING.tension(Double.NaN))
        .withMessageContaining("strain");
  }

  private static void refused(String wants, String place, Runnable making) {
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(making::run)
        .satisfies(e -> assertThat(e.refusals().get(0).place()).isEqualTo(place))
        .satisfies(e -> assertThat("from " + e.refusals().get(0).wants()).contains(wants));
  }

  @Test
  void equality_is_exact() {
    assertThat(table(0.02, 5000)).isEqualTo(table(0.02, 5000)).hasSameHashCodeAs(table(0.02, 5000));
    assertThat(table(0.02, 5000)).isNotEqualTo(table(0.02, 5001));
    assertThat(LinearStretch.of(kilonewtons(1)))
        .isEqualTo(LinearStretch.of(newtons(1000)))
        .hasSameHashCodeAs(LinearStretch.of(newtons(1000)))
        .isNotEqualTo(LinearStretch.of(newtons(1001)));
    PowerStretch power = PowerStretch.of(StretchPoint.of(newtons(5), 0.1), 2);
    assertThat(power)
        .isEqualTo(PowerStretch.of(StretchPoint.of(newtons(5), 0.1), 2))
        .hasSameHashCodeAs(PowerStretch.of(StretchPoint.of(newtons(5), 0.1), 2))
        .isNotEqualTo(PowerStretch.of(StretchPoint.of(newtons(5), 0.1), 3));
  }
}
