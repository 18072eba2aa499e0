package org.boleline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.boleline.Tolerances;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Source;
import org.boleline.units.Kind;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

/** On a rigid spar the load leg is mass times g and the tail exp(-mu pi) of it: closed forms. */
class RangeStudyTest {
  private static final double MASS = 100;
  private static final Range NORMAL_MASS = range(Input.pieceMass(), Spread.normal(mass(MASS), 0.1));
  private static final Range LOGNORMAL_MASS =
      range(Input.pieceMass(), Spread.lognormal(mass(MASS), 0.3));
  private static final Range FRICTION =
      range(Input.ringFriction(0, 0), Spread.normal(Figure.ofRatio(0.2), Figure.ofRatio(0.03)));

  private static Figure mass(double kilograms) {
    return Figure.of(kilograms, Kind.MASS);
  }

  private static Range range(Input input, Spread spread) {
    return Range.of(input, spread, Source.PLAN);
  }

  private static RangeStudy rigid(Reading reading, Range... ranges) {
    return RangeStudy.of(Plans.rigid(), Plans.RIGID, List.of(ranges), List.of(reading))
        .withSamples(4096);
  }

  private static ReadingRange only(RangeStudy study) {
    return study.run().readings().get(0);
  }

  @Test
  void quantiles_of_a_load_are_those_of_its_exact_distribution() {
    ReadingRange found = only(rigid(Reading.loadLeg(), NORMAL_MASS));
    NormalDistribution exact = new NormalDistribution(MASS * Plans.G, 0.1 * MASS * Plans.G);

    for (double p : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
      QuantileFound quantile = found.quantile(p).orElseThrow();
      double expected = exact.inverseCumulativeProbability(p);
      assertThat(quantile.value().si())
          .isCloseTo(expected, Tolerances.relative(Tolerances.MANY_SAMPLES));
      assertThat(expected).isBetween(quantile.least().si(), quantile.most().si());
      assertThat(quantile.confidenceShare()).isBetween(0.95, 0.96);
    }
    assertThat(found.mean().si())
        .isCloseTo(MASS * Plans.G, Tolerances.relative(Tolerances.MANY_SAMPLES));
    assertThat(found.deviation().si())
        .isCloseTo(0.1 * MASS * Plans.G, Tolerances.relative(5 * Tolerances.MANY_SAMPLES));
    double limit = exact.inverseCumulativeProbability(0.9);
    Chance chance = found.chanceOver(Figure.of(limit, Kind.FORCE));
    assertThat(chance.share()).isCloseTo(0.1, Tolerances.absolute(Tolerances.MANY_SAMPLES));
    assertThat(chance.leastShare()).isLessThan(0.1);
    assertThat(chance.mostShare()).isGreaterThan(0.1);
  }

  @Test
  void bounds_hold_as_often_as_they_say() {
    double exact =
        new NormalDistribution(MASS * Plans.G, 0.1 * MASS * Plans.G)
            .inverseCumulativeProbability(0.8);
    int held = 0;
    int within = 0;
    for (int seed = 0; seed < 60; seed++) {
      RangeStudy study = rigid(Reading.loadLeg(), NORMAL_MASS).withSamples(64).withConfidence(0.8);
      QuantileFound found = only(study.withSeed(seed)).quantile(0.8).orElseThrow();
      held += found.least().si() <= exact && exact <= found.most().si() ? 1 : 0;
      within += Math.abs(found.value().si() - exact) <= 3 * found.standardError().si() ? 1 : 0;
    }
    // a share of 0.8 of 60 less three deviations of a count is 39; Sobol points do better
    assertThat(held).isGreaterThanOrEqualTo(39);
    assertThat(within).isGreaterThanOrEqualTo(54);
  }

  @Test
  void bounds_hold_as_often_as_they_say_where_two_inputs_act_together() {
    // ln of the tail is normal; a share of 0.9 of 100 less three deviations of a count is 81
    double s = Math.hypot(Math.sqrt(Math.log(1.09)), 0.03 * Math.PI);
    double median = 100 / Math.sqrt(1.09) * Plans.G * Math.exp(-0.2 * Math.PI);
    for (double p : new double[] {0.5, 0.95}) {
      double exact =
          median * Math.exp(s * new NormalDistribution().inverseCumulativeProbability(p));
      int held = 0;
      for (int seed = 0; seed < 100; seed++) {
        RangeStudy study =
            rigid(Reading.tail(), LOGNORMAL_MASS, FRICTION).withSamples(128).withConfidence(0.9);
        QuantileFound found = only(study.withSeed(seed)).quantile(p).orElseThrow();
        held += found.least().si() <= exact && exact <= found.most().si() ? 1 : 0;
      }
      assertThat(held).isGreaterThanOrEqualTo(81);
    }
  }

  @Test
  void a_reading_of_strength_is_the_same_beside_others_as_alone() {
    Range modulus =
        range(Input.modulusOfElasticity(0), Spread.lognormal(Figure.of(8e9, Kind.PRESSURE), 0.2));
    List<Reading> with = List.of(Reading.baseMoment(0), Reading.loadFactorToStrength(0));
    RangeResult both =
        RangeStudy.of(Plans.bending(), "device", List.of(modulus), with).withSamples(32).run();
    RangeResult moment =
        RangeStudy.of(Plans.bending(), "device", List.of(modulus), with.subList(0, 1))
            .withSamples(32)
            .run();

    // the search for the strength is left out where nothing reads it, and changes nothing else
    assertThat(moment.readings().get(0).quantile(0.5))
        .isEqualTo(both.readings().get(0).quantile(0.5));
    assertThat(both.readings().get(1).count()).isPositive();
  }

  @Test
  void shares_of_a_product_are_those_in_closed_form() {
    // mean square of a product: (1 + v^2)(1 + w^2) - 1; exp(-mu pi) is lognormal
    double v2 = 0.09;
    double w2 = Math.expm1(Math.pow(0.03 * Math.PI, 2));
    double all = (1 + v2) * (1 + w2) - 1;

    List<SpreadShare> shares =
        only(rigid(Reading.tail(), LOGNORMAL_MASS, FRICTION).withShares(4096)).shares();

    double[] first = {v2 / all, w2 / all};
    double[] total = {v2 * (1 + w2) / all, w2 * (1 + v2) / all};
    double sum = 0;
    for (int i = 0; i < 2; i++) {
      SpreadShare share = shares.get(i);
      assertThat(share.firstShare())
          .isCloseTo(first[i], Tolerances.absolute(5 * share.firstErrorRatio()));
      assertThat(share.totalShare())
          .isCloseTo(total[i], Tolerances.absolute(5 * share.totalErrorRatio()));
      assertThat(share.firstErrorRatio()).isLessThan(0.05);
      assertThat(share.rowCount()).isEqualTo(4096);
      sum += share.firstShare() - 3 * share.firstErrorRatio();
    }
    assertThat(sum).isLessThanOrEqualTo(1);
  }

  @Test
  void correlated_ranges_count_as_one_and_widen_what_they_share() {
    RangeStudy apart = rigid(Reading.tail(), LOGNORMAL_MASS, FRICTION).withShares(256);
    RangeStudy together = apart.withCorrelation(LOGNORMAL_MASS, FRICTION, -0.9);

    ReadingRange found = only(together);

    // ln of the tail is normal: variances add, and twice the covariance
    double s = Math.sqrt(Math.log(1.09));
    double f = 0.03 * Math.PI;
    double deviation = Math.sqrt(s * s + f * f + 2 * 0.9 * s * f);
    double median = 100 / Math.sqrt(1.09) * Plans.G * Math.exp(-0.2 * Math.PI);
    double z = new NormalDistribution().inverseCumulativeProbability(0.95);
    assertThat(found.quantile(0.95).orElseThrow().value().si())
        .isCloseTo(
            median * Math.exp(z * deviation), Tolerances.relative(5 * Tolerances.MANY_SAMPLES));
    assertThat(found.shares()).hasSize(1);
    assertThat(found.shares().get(0).ranges()).containsExactly(LOGNORMAL_MASS, FRICTION);
    assertThat(found.shares().get(0).totalShare()).isCloseTo(1, Tolerances.absolute(0.1));
  }

  @Test
  void threads_and_watching_change_nothing_and_seeds_change_the_draw() throws InterruptedException {
    RangeStudy study =
        RangeStudy.of(
                Plans.bending(),
                "device",
                List.of(
                    range(
                        Input.modulusOfElasticity(0),
                        Spread.lognormal(Figure.of(8e9, Kind.PRESSURE), 0.2)),
                    range(
                        Input.deviceFriction(1),
                        Spread.interval(Figure.ofRatio(0.1), Figure.ofRatio(0.3)))),
                List.of(Reading.baseMoment(0), Reading.hand()))
            .withSamples(200)
            .withShares(50);
    List<Integer> steps = Collections.synchronizedList(new ArrayList<>());
    RangeWatch watch =
        new RangeWatch() {
          @Override
          public void progress(int doneCount, int allCount) {
            steps.add(doneCount);
            assertThat(allCount).isEqualTo(200 + 3 * 50 + 2);
          }
        };
    List<String> alone = print(study.run());

    for (int threads = 1; threads <= 3; threads++) {
      ExecutorService executor = Executors.newFixedThreadPool(threads);
      try {
        assertThat(print(study.run(watch, executor))).isEqualTo(alone);
      } finally {
        executor.shutdown();
      }
    }
    assertThat(steps.subList(0, steps.size() / 3)).isSorted().endsWith(352);
    assertThat(print(study.withSeed(2).run())).isNotEqualTo(alone);
  }

  private static List<String> print(RangeResult result) {
    List<String> lines = new ArrayList<>();
    for (ReadingRange range : result.readings()) {
      lines.add(range + " " + range.least() + range.greatest() + range.shares());
    }
    return lines;
  }

  @Test
  void of_an_interval_only_least_and_greatest_are_told() {
    Range interval = range(Input.pieceMass(), Spread.interval(mass(80), mass(130)));
    RangeResult result = rigid(Reading.loadLeg(), FRICTION, interval).run();
    ReadingRange found = result.readings().get(0);

    assertThat(found.least().orElseThrow().value().si())
        .isCloseTo(80 * Plans.G, Tolerances.relative(Tolerances.EXACT));
    assertThat(found.greatest().orElseThrow().value().si())
        .isCloseTo(130 * Plans.G, Tolerances.relative(Tolerances.EXACT));
    assertThat(found.greatest().orElseThrow().isCorner()).isTrue();
    assertThat(found.greatest().orElseThrow().inputs().get(1)).isEqualTo(mass(130));
    assertThat(found.mean().reason().orElseThrow()).contains("interval");
    assertThatThrownBy(() -> found.chanceOver(Figure.of(1000, Kind.FORCE)))
        .isInstanceOfSatisfying(
            PlanRefusedException.class,
            e -> assertThat(e.refusals().get(0).place()).isEqualTo("/ranges/1/interval"));
    assertThatThrownBy(() -> found.quantile(0.5)).isInstanceOf(PlanRefusedException.class);
    assertThat(result.cautions())
        .extracting(c -> c.code())
        .containsExactly(CautionCode.RANGE_OF_A_BOX);
  }

  @Test
  void samples_without_a_result_are_counted_and_shown() {
    // a normal mass with a variation of 0.5 is below zero in Phi(-2) = 2.28 percent of draws
    Range wide = range(Input.pieceMass(), Spread.normal(mass(MASS), 0.5));
    RangeResult result = rigid(Reading.loadLeg(), wide).withSamples(2048).run();
    ReadingRange found = result.readings().get(0);

    assertThat(result.refusedCount()).isBetween(40, 54);
    assertThat(result.solvedCount() + result.refusedCount()).isEqualTo(2048);
    assertThat(found.lostCount()).isEqualTo(result.refusedCount());
    assertThat(result.cautions())
        .singleElement()
        .satisfies(
            caution -> {
              assertThat(caution.code()).isEqualTo(CautionCode.SAMPLES_WITHOUT_RESULT);
              assertThat(caution.sentence()).doesNotContain("{");
            });
    Chance chance = found.chanceOver(Figure.of(MASS * Plans.G, Kind.FORCE));
    assertThat(chance.shareWithLost() - chance.share())
        .isCloseTo(result.refusedCount() / 2048.0, Tolerances.absolute(Tolerances.ROUNDING));
    assertThat(chance.mostShare()).isGreaterThan(chance.shareWithLost());
  }

  @Test
  void unstable_samples_are_counted_apart() {
    RangeResult result =
        RangeStudy.of(
                Plans.bending(),
                "away",
                List.of(
                    range(
                        Input.modulusOfElasticity(0),
                        Spread.uniform(
                            Figure.of(1e6, Kind.PRESSURE), Figure.of(8e9, Kind.PRESSURE)))),
                List.of(Reading.baseMoment(0)))
            .withSamples(64)
            .run();

    assertThat(
            result.solvedCount()
                + result.unstableCount()
                + result.refusedCount()
                + result.notSolvedCount())
        .isEqualTo(64);
    assertThat(result.readings().get(0).count()).isEqualTo(result.solvedCount());
  }

  @Test
  void a_range_of_another_arrangement_changes_nothing() {
    Range here = range(Input.pieceMass(), Spread.interval(mass(80), mass(120)));
    Range there =
        range(Input.ringFriction(0, 0), Spread.uniform(Figure.ofRatio(0.1), Figure.ofRatio(0.3)));
    List<Reading> readings = List.of(Reading.loadLeg());
    RangeStudy both =
        RangeStudy.of(Plans.bending(), "device", List.of(here, there), readings)
            .withSamples(32)
            .withShares(32);

    assertThat(both.bearing()).containsExactly(here);
    assertThat(only(both).shares()).hasSize(1);
    assertThat(only(both).least().orElseThrow().value())
        .isEqualTo(
            only(RangeStudy.of(Plans.bending(), "device", List.of(here), readings).withSamples(32))
                .least()
                .orElseThrow()
                .value());
  }

  @Test
  void a_watch_can_stop_it() throws InterruptedException {
    RangeWatch stop =
        new RangeWatch() {
          private volatile int done;

          @Override
          public void progress(int doneCount, int allCount) {
            done = doneCount;
          }

          @Override
          public boolean isCancelled() {
            return done >= 128;
          }
        };
    RangeStudy study = rigid(Reading.loadLeg(), NORMAL_MASS);

    assertThatThrownBy(() -> study.run(stop)).isInstanceOf(CancellationException.class);
    ExecutorService executor = Executors.newFixedThreadPool(2);
    try {
      assertThatThrownBy(() -> study.run(stop, executor)).isInstanceOf(CancellationException.class);
    } finally {
      executor.shutdown();
    }
  }

  @Test
  void what_cannot_be_studied_is_refused_with_its_place() {
    assertThatThrownBy(
            () ->
                rigid(
                    Reading.tail(),
                    range(
                        Input.sheaveEfficiency(0, 0),
                        Spread.uniform(Figure.ofRatio(0.8), Figure.ofRatio(0.9)))))
        .isInstanceOfSatisfying(
            PlanRefusedException.class,
            e -> assertThat(e.refusals().get(0).place()).isEqualTo("/ranges/0/input"));
    assertThatThrownBy(() -> rigid(Reading.tail(), NORMAL_MASS, LOGNORMAL_MASS))
        .isInstanceOf(PlanRefusedException.class);
    assertThatThrownBy(() -> rigid(Reading.tail())).isInstanceOf(PlanRefusedException.class);
    Range interval = range(Input.pieceMass(), Spread.interval(mass(80), mass(130)));
    assertThatThrownBy(
            () ->
                rigid(Reading.tail(), interval, FRICTION).withCorrelation(interval, FRICTION, 0.5))
        .hasMessageStartingWith("between: wants");
    assertThatThrownBy(
            () ->
                rigid(Reading.tail(), NORMAL_MASS, FRICTION)
                    .withCorrelation(NORMAL_MASS, FRICTION, 1))
        .hasMessageStartingWith("coefficient: wants");
  }
}
