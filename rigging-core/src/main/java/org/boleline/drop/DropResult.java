package org.boleline.drop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Datum;
import org.boleline.statics.StaticResult;

/**
 * The drops of a plan, beside its analysis in slow motion.
 *
 * <p>Immutable and thread-safe.
 */
public final class DropResult {
  private final StaticResult statics;
  private final List<Optional<DropAnswer>> drops;
  private final List<Datum> assumed;

  DropResult(StaticResult statics, List<Optional<DropAnswer>> drops, List<Datum> assumed) {
    this.statics = statics;
    this.drops = List.copyOf(drops);
    this.assumed = List.copyOf(assumed);
  }

  /**
   * Returns the analysis in slow motion that the drops started from.
   *
   * @return the result
   */
  public StaticResult statics() {
    return statics;
  }

  /**
   * Returns the drops.
   *
   * @return one for each arrangement, in the plan's order; empty where no drop is stated
   */
  public List<Optional<DropAnswer>> drops() {
    return drops;
  }

  /**
   * Returns the answers, of those arrangements alone that state a drop.
   *
   * @return the answers, in the plan's order
   */
  public List<DropAnswer> answers() {
    return drops.stream().flatMap(Optional::stream).toList();
  }

  /**
   * Returns the drop of one arrangement.
   *
   * @param id id of the arrangement
   * @return the answer; empty if the plan has no such arrangement, or that states no drop
   */
  public Optional<DropAnswer> drop(String id) {
    return answers().stream().filter(d -> d.id().equals(id)).findFirst();
  }

  /**
   * Returns the cautions that belong to the whole plan, without those that drops were left out.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    return statics.cautions().stream()
        .filter(caution -> caution.code() != CautionCode.DROP_NOT_ANALYSED)
        .toList();
  }

  /**
   * Returns every default, datum and assumption that was used without being stated.
   *
   * @return the data, with their sources
   */
  public List<Datum> taken() {
    List<Datum> taken = new ArrayList<>(statics.taken());
    taken.addAll(assumed);
    return List.copyOf(taken);
  }
}
