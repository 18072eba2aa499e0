package org.boleline.working.check;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.boleline.explain.Step;
import org.boleline.working.Worksheet;

/**
 * What a number comes to with a slip.
 *
 * @param cause the slip, and where
 * @param overRightRatio the wrong number over the right one
 */
public record WrongNumber(Cause cause, double overRightRatio) {
  /**
   * Makes a wrong number.
   *
   * @param cause the slip, and where
   * @param overRightRatio the wrong number over the right one
   */
  public WrongNumber {
    requireNonNull(cause, "cause");
  }

  /**
   * Returns what each slip makes of a step's result, if it is the only number that is written down.
   *
   * @param sheet the worksheet
   * @param step one of its steps, whose result is not zero
   * @param unit the unit the person works in, such as {@code N}
   * @return a number for each slip and each way it can be made that gives a finite one, the
   *     likelier places first
   * @throws IllegalArgumentException if the step is not of the sheet or its result is zero
   */
  public static List<WrongNumber> all(Worksheet sheet, Step step, String unit) {
    Chain chain = Chain.of(sheet);
    int target =
        IntStream.range(0, chain.uses().size())
            .filter(i -> chain.uses().get(i).step().equals(step))
            .findFirst()
            .orElseThrow(
                () -> new IllegalArgumentException("step: wants one of the sheet, got another"));
    if (step.result() == 0) {
      throw new IllegalArgumentException("step: wants a result other than zero, got zero");
    }
    List<WrongNumber> numbers = new ArrayList<>();
    for (Trials.Trial trial :
        Trials.of(chain, target, Set.of(), PersonsUnits.of(Set.of(unit)), 1)) {
      double ratio = chain.replay(target, Map.of(), trial.way()) / step.result();
      if (Double.isFinite(ratio)) {
        numbers.add(new WrongNumber(new Cause(trial.slip(), List.of(trial.place())), ratio));
      }
    }
    return numbers.stream().distinct().collect(Collectors.toUnmodifiableList());
  }
}
