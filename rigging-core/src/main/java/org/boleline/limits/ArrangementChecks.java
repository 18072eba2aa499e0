package org.boleline.limits;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.boleline.explain.Caution;
import org.boleline.plan.PartLimit.Part;

/**
 * The checks of one arrangement.
 *
 * @param id id of the arrangement
 * @param checks the checks, in the order of the plan; none if {@code whyNot} says so
 * @param whyNot why nothing was checked; empty if it was
 * @param cautions what is to be read with care
 */
public record ArrangementChecks(
    String id, List<Check> checks, String whyNot, List<Caution> cautions) {
  /**
   * Makes the checks; the lists are copied.
   *
   * @param id id of the arrangement
   * @param checks the checks, in the order of the plan; none if {@code whyNot} says so
   * @param whyNot why nothing was checked; empty if it was
   * @param cautions what is to be read with care
   */
  public ArrangementChecks {
    checks = List.copyOf(checks);
    cautions = List.copyOf(cautions);
  }

  /**
   * Returns the checks by demand over capacity, the greatest first. Ratios of diameters, which no
   * load changes, are left out.
   *
   * @return the checks; those that are alike stay in the order of the plan
   */
  public List<Check> byUse() {
    return checks.stream()
        .filter(check -> check.part() != Part.BEND)
        .sorted(Comparator.comparingDouble(Check::usedShare).reversed())
        .toList();
  }

  /**
   * Returns the weakest link: the greatest demand over capacity.
   *
   * <p>A working load limit holds its maker's factor already. Beside strengths it comes out weaker
   * than the part is.
   *
   * @return the check; empty if there is none
   */
  public Optional<Check> weakest() {
    return byUse().stream().findFirst();
  }

  /**
   * Returns the greatest share that a part uses of what its factor leaves.
   *
   * @return the share; above 1 where a factor is not met; empty if no factor is asked for
   */
  public OptionalDouble mostUsedOfAskedShare() {
    return checks.stream().flatMapToDouble(check -> check.usedOfAskedShare().stream()).max();
  }

  /**
   * Returns the checks whose factor is asked for and not found.
   *
   * @return the checks, in the order of the plan
   */
  public List<Check> notMet() {
    return checks.stream().filter(check -> !check.met().orElse(true)).toList();
  }
}
