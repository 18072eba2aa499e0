package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.Drops;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
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
 * One arrangement of a plan, analysed by itself: slow motion, and its drop if it states one. A drop
 * that is to be followed in time is worked out by its energy here.
 *
 * <p>Immutable and thread-safe.
 */
public final class Evaluation {
  private final Plan plan;
  private final ArrangementResult slow;
  private final @Nullable DropAnswer drop;

  private Evaluation(Plan plan, ArrangementResult slow, @Nullable DropAnswer drop) {
    this.plan = plan;
    this.slow = slow;
    this.drop = drop;
  }

  /**
   * Analyses one arrangement in slow motion, and its drop if it states one.
   *
   * @param plan the plan, not null
   * @param arrangement id of the arrangement, not null
   * @return the evaluation
   * @throws PlanRefusedException if the plan has no such arrangement, or it cannot be analysed
   */
  public static Evaluation of(Plan plan, String arrangement) {
    return of(plan, arrangement, true);
  }

  /**
   * Analyses one arrangement as far as some readings need it: its drop only for readings of drops,
   * the load that reaches a strength only for readings of that. The plan it keeps states no
   * strength then.
   *
   * @param plan the plan, not null
   * @param arrangement id of the arrangement, not null
   * @param readings what is to be read, not null
   * @return the evaluation
   * @throws PlanRefusedException if the plan has no such arrangement, or it cannot be analysed
   */
  public static Evaluation of(Plan plan, String arrangement, List<Reading> readings) {
    return of(
        readings.stream().anyMatch(Reading::isOfStrength) ? plan : withoutStrength(plan),
        arrangement,
        readings.stream().anyMatch(Reading::isOfDrop));
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

  private static Evaluation of(Plan plan, String arrangement, boolean withDrop) {
    Arrangement alone = byEnergy(find(plan, arrangement));
    return of(plan.toBuilder().arrangements(List.of(alone)).build(), withDrop);
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

  private static Evaluation of(Plan alone, boolean withDrop) {
    StaticResult statics = Statics.analyse(alone);
    @Nullable DropAnswer drop =
        withDrop ? Drops.analyse(statics).drops().get(0).orElse(null) : null;
    return new Evaluation(alone, statics.arrangements().get(0), drop);
  }

  /** Takes what was analysed already. */
  static Evaluation of(Checks checks, String arrangement) {
    Plan plan = checks.statics().plan();
    Arrangement one = find(plan, arrangement);
    int index = plan.arrangements().indexOf(one);
    return new Evaluation(
        plan.toBuilder().arrangements(List.of(one)).build(),
        checks.statics().arrangements().get(index),
        checks.drops().flatMap(drops -> drops.drops().get(index)).orElse(null));
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

  @Override
  public String toString() {
    return slow.id() + ": " + slow.outcome().text();
  }
}
