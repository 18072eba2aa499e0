package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropNotAnalysed;
import org.boleline.drop.DropResult;
import org.boleline.drop.Drops;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.limits.ArrangementChecks;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.stem.Stem;
import org.boleline.wood.WoodProperties;
import org.jspecify.annotations.Nullable;

/**
 * One arrangement of a plan, analysed by itself: slow motion, its drop if it states one, and the
 * checks of the plan's limits. A drop that is to be followed in time is worked out by its energy
 * here; the checks follow it in time, as they do in a result.
 *
 * <p>Immutable and thread-safe.
 */
public final class Evaluation {
  private final Plan plan;
  private final ArrangementResult slow;
  private final @Nullable DropAnswer drop;
  private final @Nullable ArrangementChecks checks;

  private Evaluation(
      Plan plan,
      ArrangementResult slow,
      @Nullable DropAnswer drop,
      @Nullable ArrangementChecks checks) {
    this.plan = plan;
    this.slow = slow;
    this.drop = drop;
    this.checks = checks;
  }

  /**
   * Analyses one arrangement in slow motion, its drop if it states one, and its checks if the plan
   * states limits.
   *
   * @param plan the plan, not null
   * @param arrangement id of the arrangement, not null
   * @return the evaluation
   * @throws PlanRefusedException if the plan has no such arrangement, or it cannot be analysed
   */
  public static Evaluation of(Plan plan, String arrangement) {
    return of(plan, arrangement, true, plan.limits().isPresent());
  }

  /**
   * Analyses one arrangement as far as some readings need it: its drop only for readings of drops,
   * its checks only for readings of checks, the load that reaches a strength only for readings of
   * that. The plan it keeps states no strength if none of them needs one.
   *
   * @param plan the plan, not null
   * @param arrangement id of the arrangement, not null
   * @param readings what is to be read, not null
   * @return the evaluation
   * @throws PlanRefusedException if the plan has no such arrangement, or it cannot be analysed
   */
  public static Evaluation of(Plan plan, String arrangement, List<Reading> readings) {
    boolean withChecks =
        plan.limits().isPresent() && readings.stream().anyMatch(Reading::isOfChecks);
    return of(
        withChecks || readings.stream().anyMatch(Reading::isOfStrength)
            ? plan
            : withoutStrength(plan),
        arrangement,
        readings.stream().anyMatch(Reading::isOfDrop),
        withChecks);
  }

  /** The search for the load that reaches a strength costs as much as all the rest. */
  private static Plan withoutStrength(Plan plan) {
    List<Stem> stems = new ArrayList<>();
    for (Stem stem : plan.stems()) {
      WoodProperties wood = stem.wood();
      stems.add(
          stem.toBuilder()
              .wood(
                  WoodProperties.builder()
                      .modulusOfElasticity(wood.modulusOfElasticity())
                      .shearModulus(wood.shearModulus())
                      .density(wood.density())
                      .build())
              .build());
    }
    return plan.toBuilder().stems(stems).build();
  }

  private static Evaluation of(
      Plan plan, String arrangement, boolean withDrop, boolean withChecks) {
    Arrangement stated = find(plan, arrangement);
    Plan alone = alone(plan, byEnergy(stated));
    StaticResult statics = Statics.analyse(alone);
    boolean followed = !byEnergy(stated).equals(stated);
    @Nullable DropResult drops =
        withDrop || (withChecks && !followed) ? Drops.analyse(statics) : null;
    @Nullable DropResult checked =
        withChecks && followed ? Drops.analyse(Statics.analyse(alone(plan, stated))) : drops;
    return new Evaluation(
        alone,
        statics.arrangements().get(0),
        drops == null ? null : drops.drops().get(0).orElse(null),
        withChecks && checked != null ? checks(checked, 0) : null);
  }

  private static Plan alone(Plan plan, Arrangement arrangement) {
    return plan.toBuilder().arrangements(List.of(arrangement)).build();
  }

  /** The checks; of a drop that was not worked out none, since its peaks are not known. */
  private static ArrangementChecks checks(DropResult drops, int index) {
    ArrangementChecks found = Checks.of(drops).arrangements().get(index);
    return drops.drops().get(index).orElse(null) instanceof DropNotAnalysed not
            && found.whyNot().isEmpty()
        ? new ArrangementChecks(
            found.id(), List.of(), "the drop was not analysed: " + not.reason(), found.cautions())
        : found;
  }

  /** A drop that is to be followed in time, by its energy instead. */
  private static Arrangement byEnergy(Arrangement arrangement) {
    return arrangement
        .drop()
        .filter(drop -> drop.level() == DropSpec.Level.IN_TIME)
        .map(drop -> drop.withLevel(DropSpec.Level.GIVING_POINTS))
        .map(drop -> arrangement.toBuilder().drop(drop).build())
        .orElse(arrangement);
  }

  /** Takes what was analysed already. */
  static Evaluation of(Checks checks, String arrangement) {
    Plan plan = checks.statics().plan();
    Arrangement one = find(plan, arrangement);
    int index = plan.arrangements().indexOf(one);
    return new Evaluation(
        alone(plan, one),
        checks.statics().arrangements().get(index),
        checks.drops().flatMap(drops -> drops.drops().get(index)).orElse(null),
        checks.drops().map(drops -> checks(drops, index)).orElse(null));
  }

  /** Finds an arrangement, or refuses. */
  static Arrangement find(Plan plan, String id) {
    requireNonNull(id, "arrangement");
    return plan.arrangements().stream()
        .filter(a -> a.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new PlanRefusedException(
                    List.of(
                        new Refusal(
                            Refusal.Code.UNKNOWN_REFERENCE,
                            "/arrangements",
                            "the id of an arrangement of this plan ("
                                + plan.arrangements().stream()
                                    .map(Arrangement::id)
                                    .collect(Collectors.joining(", "))
                                + ")",
                            "\"" + id + "\""))));
  }

  /**
   * Returns the plan with this arrangement alone.
   *
   * @return the plan
   */
  public Plan plan() {
    return plan;
  }

  /**
   * Returns what slow motion gives.
   *
   * @return the result
   */
  public ArrangementResult slow() {
    return slow;
  }

  /**
   * Returns what the drop gives.
   *
   * @return the answer; empty if the arrangement states no drop, or it was left out
   */
  public Optional<DropAnswer> drop() {
    return Optional.ofNullable(drop);
  }

  /**
   * Returns what the checks of the plan's limits give.
   *
   * @return the checks; empty if the plan states no limits, or they were left out
   */
  public Optional<ArrangementChecks> checks() {
    return Optional.ofNullable(checks);
  }

  @Override
  public String toString() {
    return slow.id() + ": " + slow.outcome().text();
  }
}
