package org.boleline.study;

import java.util.ArrayList;
import java.util.List;
import org.boleline.explain.Step;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.FrictionFormulas;
import org.boleline.rope.Motion;
import org.boleline.units.Kind;

/**
 * How many wraps a lowering device needs to hold the heaviest piece, against how many still let the
 * lightest one run by its own weight: the window between cannot hold and cannot run.
 *
 * <p>Held is looked at with the least friction, running with the most. The window may be empty:
 * then no number of wraps does both.
 *
 * @param arrangement id of the arrangement; its tail ends on a lowering device
 * @param lightest mass of the lightest piece that must still run; the plan's piece is the heaviest
 * @param hand greatest force of the hand behind the wraps
 * @param behind least tension behind the wraps when nobody holds, such as the weight of the rope
 *     that hangs there
 * @param leastFriction least coefficient of friction on the device
 * @param mostFriction greatest coefficient of friction on the device
 */
public record WrapsWindow(
    String arrangement,
    Figure lightest,
    Figure hand,
    Figure behind,
    double leastFriction,
    double mostFriction)
    implements Study {
  /**
   * Makes the question.
   *
   * @param arrangement id of the arrangement; its tail ends on a lowering device
   * @param lightest mass of the lightest piece that must still run
   * @param hand greatest force of the hand behind the wraps
   * @param behind least tension behind the wraps when nobody holds
   * @param leastFriction least coefficient of friction on the device
   * @param mostFriction greatest coefficient of friction on the device
   * @throws IllegalArgumentException if a figure is of another kind or not above zero, or the
   *     frictions are not in order, above zero and at most 2
   */
  public WrapsWindow {
    lightest.requireAboveZero("lightest", Kind.MASS);
    hand.requireAboveZero("hand", Kind.FORCE);
    behind.requireAboveZero("behind", Kind.FORCE);
    if (!(leastFriction > 0 && mostFriction >= leastFriction && mostFriction <= 2)) {
      throw new IllegalArgumentException(
          "mostFriction: wants at least the least friction, both above 0 and at most 2, got "
              + mostFriction
              + " and "
              + leastFriction);
    }
  }

  @Override
  public String kind() {
    return "window";
  }

  /**
   * The answer.
   *
   * @param study what was asked
   * @param leastWraps fewer than these cannot hold the heaviest piece
   * @param mostWraps more than these cannot let the lightest piece run
   * @param isEmpty whether no number of wraps does both; false if either is not known
   * @param steps the steps that gave the two
   */
  public record Answer(
      WrapsWindow study, Found leastWraps, Found mostWraps, boolean isEmpty, List<Step> steps)
      implements StudyAnswer {
    /**
     * Makes an answer.
     *
     * @param study what was asked
     * @param leastWraps fewer than these cannot hold the heaviest piece
     * @param mostWraps more than these cannot let the lightest piece run
     * @param isEmpty whether no number of wraps does both; false if either is not known
     * @param steps the steps that gave the two
     */
    public Answer {
      steps = List.copyOf(steps);
    }
  }

  /**
   * Finds the window.
   *
   * @equation n = ln(T_tight / T_hand) / (2 * pi * mu) for both ends (FRI-11)
   * @validity slow; tension at the device from the analysis while lowering, whatever motion the
   *     arrangement states; what the rope turns besides the wraps, its stiffness and weight are
   *     left out
   * @source Euler-Eytelwein
   * @accuracy as good as the tension at the device
   * @param plan the plan, not null
   * @return the answer
   * @throws org.boleline.explain.PlanRefusedException if the plan has no such arrangement, or its
   *     tail ends on no device
   */
  @Override
  public Answer answer(Plan plan) {
    Arrangement stated = Evaluation.find(plan, arrangement);
    Input.wraps(plan.arrangements().indexOf(stated)).value(plan);
    Plan lowering =
        plan.toBuilder()
            .arrangements(List.of(stated.toBuilder().motion(Motion.LOWERING).build()))
            .build();
    List<Step> steps = new ArrayList<>();
    Found least = wraps(lowering, hand.si(), leastFriction, steps);
    Found most =
        wraps(Input.pieceMass().with(lowering, lightest.si()), behind.si(), mostFriction, steps);
    return new Answer(this, least, most, least.si() > most.si(), steps);
  }

  private Found wraps(Plan plan, double behind, double friction, List<Step> steps) {
    Found tail = Reading.tail().value(plan, arrangement);
    if (tail.figure().isEmpty()) {
      return tail;
    }
    Step step = FrictionFormulas.WRAPS_NEEDED.step(tail.si(), behind, friction, 0);
    steps.add(step);
    return Found.of(Figure.ofRatio(step.result()));
  }
}
