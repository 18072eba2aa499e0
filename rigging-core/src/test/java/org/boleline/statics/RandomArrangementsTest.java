package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.plan.Plan;
import org.junit.jupiter.api.Test;

/**
 * Random arrangements end in a solution that is in balance, or in a reason with a name.
 *
 * <p>500 of them; another number with {@code -Drandom.arrangements=20000}, which is what the
 * profile {@code many} sets, and with {@code -Drandom.first} another first seed. Endings are
 * counted and printed.
 */
class RandomArrangementsTest {
  private static final int COUNT = Integer.getInteger("random.arrangements", 500);
  private static final long FIRST = Long.getLong("random.first", 1);
  private static final double LONG_SECONDS =
      Double.parseDouble(System.getProperty("random.long", "3"));

  /** How one arrangement ended. */
  private enum Ending {
    SOLUTION,
    LOST_STABILITY,
    PULLED_TOGETHER,
    NOT_SOLVED,
    WRONG
  }

  private record Outcome(long seed, Ending ending, String detail, double seconds) {}

  @Test
  void every_random_arrangement_ends_in_balance_or_in_a_named_reason() {
    List<Outcome> outcomes =
        LongStream.range(FIRST, FIRST + COUNT)
            .parallel()
            .mapToObj(RandomArrangementsTest::outcome)
            .toList();
    Map<Ending, Long> counts =
        outcomes.stream()
            .collect(Collectors.groupingBy(Outcome::ending, TreeMap::new, Collectors.counting()));
    System.out.println("Random arrangements: " + counts);
    outcomes.stream()
        .filter(o -> o.seconds > LONG_SECONDS || o.ending.compareTo(Ending.NOT_SOLVED) >= 0)
        .forEach(System.out::println);
    assertThat(outcomes).filteredOn(o -> o.ending == Ending.WRONG).isEmpty();
    assertThat(counts.getOrDefault(Ending.NOT_SOLVED, 0L))
        .as("unsolved: one in some thousands, where friction makes the rope jump onto a point")
        .isLessThanOrEqualTo(COUNT / 2000);
    assertThat(counts).containsKeys(Ending.SOLUTION, Ending.LOST_STABILITY);
  }

  private static Outcome outcome(long seed) {
    long start = System.nanoTime();
    Plan plan = RandomPlans.of(seed);
    Ending ending;
    String detail = "";
    double seconds = 0;
    try {
      ArrangementResult result = Statics.analyse(plan).arrangements().get(0);
      seconds = (System.nanoTime() - start) / 1e9;
      List<String> wrong = wrong(result);
      if (!wrong.isEmpty()) {
        ending = Ending.WRONG;
        detail = String.join("; ", wrong);
      } else if (result instanceof Solution) {
        ending = Ending.SOLUTION;
      } else if (result instanceof NotSolved notSolved) {
        ending = Ending.NOT_SOLVED;
        detail = notSolved.reason();
      } else {
        ending = Ending.LOST_STABILITY;
      }
    } catch (PlanRefusedException e) {
      boolean together = e.refusals().stream().allMatch(r -> r.code() == Refusal.Code.SAME_PLACE);
      ending = together ? Ending.PULLED_TOGETHER : Ending.WRONG;
      detail = e.getMessage();
    } catch (RuntimeException | AssertionError e) {
      ending = Ending.WRONG;
      detail = e + " at " + e.getStackTrace()[0];
    }
    return new Outcome(seed, ending, detail, seconds);
  }

  private static List<String> wrong(ArrangementResult result) {
    List<String> wrong = new ArrayList<>();
    if (result instanceof Solution solution) {
      wrong.addAll(wrong(solution));
      solution.otherEnd().ifPresent(other -> wrong.addAll(wrong(other)));
    } else if (result instanceof LostStability lost) {
      if (!(lost.loadFactor() >= 0 && lost.loadFactor() <= 1)) {
        wrong.add("load factor " + lost.loadFactor());
      }
      if (!(lost.ownWeightFactor() >= 0 && lost.ownWeightFactor() <= 1)) {
        wrong.add("own weight factor " + lost.ownWeightFactor());
      }
    } else if (result instanceof NotSolved notSolved && !Double.isFinite(notSolved.residual())) {
      wrong.add("residual " + notSolved.residual());
    }
    return wrong;
  }

  private static List<String> wrong(Solution solution) {
    List<String> wrong = EquilibriumCheck.of(solution);
    solution.check().forEach(imbalance -> wrong.add("check(): " + imbalance));
    return wrong;
  }
}
