package org.boleline.limits;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropResult;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.plan.AskedFactor;
import org.boleline.plan.Limits;
import org.boleline.plan.Plan;
import org.boleline.statics.Outcome;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.units.QuantityText;

/**
 * What the parts of a rig have to take against what the plan says they can, for each arrangement.
 *
 * <p>Only what the plan states is checked: the parts of its limits and the hand force. A factor is
 * asked for a part by its name, or for all parts of a kind by its word; the name goes first.
 *
 * <p>Immutable and thread-safe.
 */
public final class Checks {
  private final StaticResult statics;
  private final Optional<DropResult> drops;
  private final List<ArrangementChecks> arrangements;
  private final List<Caution> cautions;

  private Checks(
      StaticResult statics,
      Optional<DropResult> drops,
      List<ArrangementChecks> arrangements,
      List<Caution> cautions) {
    this.statics = statics;
    this.drops = drops;
    this.arrangements = List.copyOf(arrangements);
    this.cautions = List.copyOf(cautions);
  }

  /**
   * Checks slow motion alone.
   *
   * @param result the analysis in slow motion, not null
   * @return the checks
   */
  public static Checks of(StaticResult result) {
    return of(result, Optional.empty(), result.cautions());
  }

  /**
   * Checks slow motion and the peaks of catches.
   *
   * @param result the drops and the analysis in slow motion, not null
   * @return the checks
   */
  public static Checks of(DropResult result) {
    return of(result.statics(), Optional.of(result), result.cautions());
  }

  private static Checks of(
      StaticResult statics, Optional<DropResult> drops, List<Caution> planCautions) {
    Plan plan = statics.plan();
    Set<AskedFactor> used = new HashSet<>();
    List<ArrangementChecks> arrangements = new ArrayList<>();
    for (int i = 0; i < plan.arrangements().size(); i++) {
      arrangements.add(arrangement(statics, drops, i, used));
    }
    List<Caution> cautions = new ArrayList<>(planCautions);
    cautions.removeIf(caution -> caution.code() == CautionCode.LIMITS_NOT_CHECKED);
    List<AskedFactor> factors = plan.limits().map(Limits::factors).orElse(List.of());
    for (int k = 0; k < factors.size(); k++) {
      AskedFactor asked = factors.get(k);
      if (!used.contains(asked)) {
        cautions.add(
            new Caution(
                CautionCode.FACTOR_ASKED_OF_NOTHING,
                "/limits/factors/" + k,
                Map.of("part", asked.part(), "factor", QuantityText.number(asked.factor()))));
      }
    }
    return new Checks(statics, drops, arrangements, cautions);
  }

  private static ArrangementChecks arrangement(
      StaticResult statics, Optional<DropResult> drops, int index, Set<AskedFactor> used) {
    String id = statics.arrangements().get(index).id();
    Optional<Solution> solution = statics.arrangements().get(index).solution();
    if (solution.isEmpty()) {
      boolean unstable = statics.arrangements().get(index).outcome() == Outcome.UNSTABLE;
      return new ArrangementChecks(
          id,
          List.of(),
          unstable
              ? "nothing is checked: the loading path loses stability before the full load"
              : "nothing is checked: this arrangement could not be solved",
          List.of());
    }
    Optional<DropAnswer> answer = drops.flatMap(result -> result.drops().get(index));
    CheckMaking making =
        new CheckMaking(
            solution.get(),
            index,
            answer.orElse(null) instanceof DropFound found ? found : null,
            used);
    return making.checks();
  }

  /**
   * Returns the analysis in slow motion.
   *
   * @return the result
   */
  public StaticResult statics() {
    return statics;
  }

  /**
   * Returns the drops.
   *
   * @return the result; empty if slow motion alone was checked
   */
  public Optional<DropResult> drops() {
    return drops;
  }

  /**
   * Returns the checks.
   *
   * @return one for each arrangement, in the plan's order
   */
  public List<ArrangementChecks> arrangements() {
    return arrangements;
  }

  /**
   * Returns the checks of one arrangement.
   *
   * @param id id of the arrangement
   * @return the checks; empty if the plan has no such arrangement
   */
  public Optional<ArrangementChecks> arrangement(String id) {
    return arrangements.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /**
   * Returns the cautions that belong to the whole plan; of limits, for each factor that no part of
   * the plan's limits takes.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    return cautions;
  }
}
