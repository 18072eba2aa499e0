package org.boleline.study;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.Log;

/**
 * The biggest piece that keeps to limits, within a range of sizes.
 *
 * <p>Sizes are tried from the least up; the answer is the least size at which a limit is met
 * exactly and beyond which it no longer is. A size that gives no number (unstable, never stops)
 * does not keep to its limit.
 *
 * @param arrangement id of the arrangement
 * @param size what of the piece is varied
 * @param least least size that is looked at
 * @param most greatest size that is looked at
 * @param keeps the limits, at least one
 */
public record BiggestPiece(
    String arrangement, Size size, Figure least, Figure most, List<Keep> keeps) implements Study {
  private static final int SCANNED = 16;
  private static final double CLOSE = 1e-12;

  /** What of the piece is varied. */
  public enum Size {
    /** Its mass. */
    MASS("mass"),
    /** How much of the plan's log is cut, from its small end. */
    CUT_LENGTH("cutLength");

    private final String text;

    Size(String text) {
      this.text = text;
    }

    /**
     * Returns the name as in plan files.
     *
     * @return {@code mass} or {@code cutLength}
     */
    public String text() {
      return text;
    }

    /**
     * Returns what a size is of.
     *
     * @return mass or length
     */
    public Kind<?> kind() {
      return this == MASS ? Kind.MASS : Kind.LENGTH;
    }

    /**
     * Reads a name.
     *
     * @param text the name, not null
     * @return the size
     * @throws IllegalArgumentException if there is no such size
     */
    public static Size parse(String text) {
      for (Size size : values()) {
        if (size.text.equals(text)) {
          return size;
        }
      }
      throw new IllegalArgumentException(
          "size: wants \"mass\" or \"cutLength\", got \"" + text + "\"");
    }
  }

  /**
   * Makes the question.
   *
   * @param arrangement id of the arrangement
   * @param size what of the piece is varied
   * @param least least size that is looked at
   * @param most greatest size that is looked at
   * @param keeps the limits, at least one
   * @throws IllegalArgumentException if a size is of another kind, the range is empty, or no limit
   *     is given
   */
  public BiggestPiece {
    least.requireKind(size.kind());
    most.requireKind(size.kind());
    keeps = List.copyOf(keeps);
    if (!(least.si() > 0 && least.si() < most.si())) {
      throw new IllegalArgumentException(
          "most: wants more than the least size, which is above zero, got "
              + least.text()
              + " to "
              + most.text());
    }
    if (keeps.isEmpty()) {
      throw new IllegalArgumentException("keeps: wants at least one limit, got none");
    }
  }

  @Override
  public String kind() {
    return "biggestPiece";
  }

  /** How the search ended. */
  public enum Outcome {
    /** Some size just keeps to the limits, and a little more does not. */
    FOUND("found"),
    /** Not even the least size keeps to the limits. */
    NOT_EVEN_THE_LEAST("notEvenTheLeast"),
    /** All sizes of the range that were looked at keep to the limits. */
    ALL_OF_THE_RANGE("allOfTheRange");

    private final String text;

    Outcome(String text) {
      this.text = text;
    }

    /**
     * Returns the name as in result files.
     *
     * @return for instance {@code found}
     */
    public String text() {
      return text;
    }
  }

  /**
   * The answer.
   *
   * @param study what was asked
   * @param outcome how the search ended
   * @param biggest the size; the greatest of the range if all of it keeps to the limits
   * @param mass mass of the piece of that size
   * @param governing the limit that ends the search, if one does
   * @param values what is read at that size (at the least size if not even that one does), one for
   *     each limit
   */
  public record Answer(
      BiggestPiece study,
      Outcome outcome,
      Found biggest,
      Found mass,
      Optional<Keep> governing,
      List<Found> values)
      implements StudyAnswer {
    /**
     * Makes an answer.
     *
     * @param study what was asked
     * @param outcome how the search ended
     * @param biggest the size; the greatest of the range if all of it keeps to the limits
     * @param mass mass of the piece of that size
     * @param governing the limit that ends the search, if one does
     * @param values what is read at that size, one for each limit
     */
    public Answer {
      values = List.copyOf(values);
    }
  }

  /**
   * Searches.
   *
   * @equation greatest x below which every limit is kept, and above which one is not
   * @validity 16 sizes of the range are tried first: a limit broken and kept again between two of
   *     them is not seen
   * @source bracketing root finding (Brent)
   * @accuracy 1e-12 of the size, from the side that keeps to the limits; as good as the readings
   * @param plan the plan, not null
   * @return the answer
   * @throws PlanRefusedException if the plan has no such arrangement, or a cut length is asked for
   *     and its piece is no log, or a shorter one
   */
  @Override
  public Answer answer(Plan plan) {
    Evaluation.find(plan, arrangement);
    sized(plan, most.si());
    UnivariateFunction beyond = x -> worst(values(plan, x));
    double low = least.si();
    if (beyond.value(low) > 0) {
      return answer(plan, Outcome.NOT_EVEN_THE_LEAST, low, low);
    }
    for (int i = 1; i <= SCANNED; i++) {
      double next = i == SCANNED ? most.si() : least.si() + (most.si() - least.si()) * i / SCANNED;
      if (beyond.value(next) > 0) {
        double found =
            beyond.value(low) == 0
                ? low
                : new BracketingNthOrderBrentSolver(CLOSE, CLOSE * most.si(), CLOSE, 5)
                    .solve(200, beyond, low, next, AllowedSolution.LEFT_SIDE);
        return answer(plan, Outcome.FOUND, found, Math.min(next, found * (1 + 1e-6)));
      }
      low = next;
    }
    return answer(plan, Outcome.ALL_OF_THE_RANGE, most.si(), most.si());
  }

  private Answer answer(Plan plan, Outcome outcome, double x, double justBeyond) {
    List<Found> there = values(plan, justBeyond);
    Optional<Keep> governing = Optional.empty();
    for (int i = 0; i < keeps.size() && outcome != Outcome.ALL_OF_THE_RANGE; i++) {
      if (keeps.get(i).beyond(there.get(i)) == worst(there)) {
        governing = Optional.of(keeps.get(i));
        break;
      }
    }
    boolean none = outcome == Outcome.NOT_EVEN_THE_LEAST;
    Found no = Found.none("not even the least size keeps to the limits");
    return new Answer(
        this,
        outcome,
        none ? no : Found.of(Figure.of(x, size.kind())),
        none ? no : Found.of(Figure.of(sized(plan, x).piece().mass(), Kind.MASS)),
        governing,
        values(plan, x));
  }

  private double worst(List<Found> found) {
    double worst = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < keeps.size(); i++) {
      worst = Math.max(worst, keeps.get(i).beyond(found.get(i)));
    }
    return worst;
  }

  private List<Found> values(Plan plan, double x) {
    return Reading.values(sized(plan, x), arrangement, keeps.stream().map(Keep::reading).toList());
  }

  private Plan sized(Plan plan, double x) {
    if (size == Size.MASS) {
      return Input.pieceMass().with(plan, x);
    }
    Log log =
        plan.piece()
            .log()
            .filter(whole -> x <= Si.value(whole.length(), Kind.LENGTH, "length"))
            .orElseThrow(
                () ->
                    new PlanRefusedException(
                        List.of(
                            new Refusal(
                                Refusal.Code.CONFLICT,
                                "/piece/log",
                                "a log at least as long as the greatest cut",
                                "another piece"))));
    double length = Si.value(log.length(), Kind.LENGTH, "length");
    Log cut = log.between(Amounts.metres(Math.max(0, length - x)), log.length());
    return plan.toBuilder()
        .piece(plan.piece().foliage().map(f -> Piece.of(cut, f)).orElse(Piece.of(cut)))
        .build();
  }
}
