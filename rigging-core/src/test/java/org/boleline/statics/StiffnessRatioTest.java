package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.boleline.Tolerances;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Plan;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The least stiffness ratio against that of a chain of stiff links. */
@Domain(LeaningRig.Domain.class)
@Domain(DomainContext.Global.class)
class StiffnessRatioTest {
  private static void assertSameRatio(Solution found, double allowed) {
    assertThat(found.stiffnessRatio()).isCloseTo(StiffnessChain.ratio(found, 20), within(allowed));
  }

  /** Greenhill's column, half way to its critical weight, and near it. */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.9, 0.99})
  void of_a_column_under_own_weight_is_that_of_a_chain(double share) {
    double density =
        share
            * 7.83734744
            * 9e9
            * Rigs.roundSecondMoment(0.1)
            / 1000
            / Rigs.GRAVITY
            / (Math.PI / 4 * 0.01);
    Solution found =
        Rigs.sound(
            Rigs.straight(10, 0, 0, 0.1, 0.1, Rigs.wood(9e9, density)), Rigs.ideal(10), 1e-3);
    assertSameRatio(found, Tolerances.CHAIN_OF_LINKS);
    assertThat(found.stiffnessRatio()).isCloseTo(1 - share, within(Tolerances.SOLVED_CASE));
  }

  @Property(tries = 12)
  void of_a_leaning_rig_is_that_of_a_chain(
      @ForAll LeaningRig rig, @ForAll @DoubleRange(min = 1, max = 4) double more) {
    Plan plan =
        rig.changed(
            new LeaningRig.Change(1, more, 1, 1, 0, false), Ideal.INSTANCE, Motion.LOWERING);
    Plan unslung =
        plan.toBuilder()
            .arrangements(
                List.of(
                    plan.arrangements().get(0).toBuilder()
                        .contacts(
                            plan.arrangements().get(0).contacts().stream()
                                .map(c -> c.withSling(metres(0)))
                                .toList())
                        .build()))
            .build();
    assertSameRatio(Rigs.sound(unslung), Tolerances.CHAIN_OF_LINKS);
  }

  /** Far bent: a slender leaning stem, whose tip comes down by half its length. */
  @Test
  void of_a_far_bent_stem_is_that_of_a_chain() {
    Solution found =
        Rigs.sound(
            Rigs.straight(12, 0.3, 0.5, 0.15, 0.1, Rigs.wood(9e9, 900)),
            Rigs.ideal(12, 8, 5).tail(Rigs.point(1, 1, 0)),
            800);
    assertSameRatio(found, Tolerances.CHAIN_OF_LINKS);
  }

  /** Whatever the seed: what is called stable has the stiffness that the chain has, above zero. */
  @Test
  void of_random_frictionless_rigs_is_that_of_a_chain() {
    List<String> off =
        LongStream.range(1, 200)
            .parallel()
            .mapToObj(
                seed ->
                    RandomPlans.conservative(seed)
                        .flatMap(StiffnessRatioTest::solution)
                        .map(found -> off(seed, found))
                        .orElse(""))
            .filter(text -> !text.isEmpty())
            .toList();
    assertThat(off).isEmpty();
  }

  private static Optional<Solution> solution(Plan plan) {
    try {
      return Statics.analyse(plan).arrangements().get(0).solution();
    } catch (PlanRefusedException e) {
      return Optional.empty(); // points that the rope pulls together
    }
  }

  private static String off(long seed, Solution found) {
    double chain = Double.NaN;
    for (int count : new int[] {12, 48}) {
      chain = StiffnessChain.ratio(found, count);
      if (chain > 0 && Math.abs(chain - found.stiffnessRatio()) < Tolerances.FAR_BENT_CHAIN) {
        return "";
      }
    }
    return "seed " + seed + ": " + found.stiffnessRatio() + ", chain " + chain;
  }
}
