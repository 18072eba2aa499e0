package org.boleline.working.problem;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.boleline.explain.Step;
import org.boleline.units.QuantityText;
import org.boleline.working.Line;
import org.boleline.working.Worksheet;
import org.boleline.working.check.HandCheck;
import org.boleline.working.check.HandStep;
import org.boleline.working.check.Slip;
import org.boleline.working.check.Tolerance;
import org.boleline.working.check.WrongNumber;

/**
 * A problem with its answer, its worked solution and the wrong answers that slips lead to.
 *
 * <p>Its numbers are drawn by a seed, and drawn again until such a tree, rope or catch can be.
 *
 * <p>Immutable and thread-safe.
 */
public final class Problem {
  private static final int MOST_DRAWS = 10_000;
  private static final double TOLERANCE = 0.01;

  /** Wrong answers differ from the right one, and from each other, by more than this. */
  private static final double APART = 2 * TOLERANCE;

  /** A learner would notice that what is further off is no answer; kN for N is not. */
  private static final double MOST_OFF = 1001;

  /** Slips that nobody makes who reads these problems: none is in pounds. */
  private static final Set<Slip> UNLIKELY = Set.of(Slip.EARLY_ROUNDING, Slip.POUND_MASS_FOR_FORCE);

  private static final int MOST_WRONG = 4;
  private static final int FIGURES = 4;

  private final ProblemKind kind;
  private final Level level;
  private final long seed;
  private final Draft draft;
  private final List<WrongAnswer> wrongAnswers;

  private Problem(ProblemKind kind, Level level, long seed, Draft draft) {
    this.kind = kind;
    this.level = level;
    this.seed = seed;
    this.draft = draft;
    this.wrongAnswers = List.copyOf(wrong(draft));
  }

  /**
   * Makes a problem.
   *
   * @param kind what it is about
   * @param level how much it asks
   * @param seed any number; the same makes the same problem
   * @return the problem
   */
  public static Problem of(ProblemKind kind, Level level, long seed) {
    requireNonNull(kind, "kind");
    requireNonNull(level, "level");
    Draw draw = new Draw(kind, level, seed);
    for (int i = 0; i < MOST_DRAWS; i++) {
      Draft draft = Drafts.draw(kind, level, draw);
      if (draft.fits()) {
        return new Problem(kind, level, seed, draft);
      }
    }
    throw new IllegalStateException("no fitting numbers for " + kind + ", level " + level);
  }

  private static List<WrongAnswer> wrong(Draft draft) {
    List<WrongAnswer> answers = new ArrayList<>();
    List<Double> taken = new ArrayList<>(List.of(1.0));
    Set<Slip> named = EnumSet.copyOf(UNLIKELY);
    for (WrongNumber number : WrongNumber.all(draft.solution(), draft.answer(), draft.unit())) {
      double ratio = number.overRightRatio();
      boolean apart =
          taken.stream()
              .allMatch(
                  other ->
                      Math.abs(ratio - other) > APART * Math.max(Math.abs(ratio), Math.abs(other)));
      boolean likely = ratio > 1 / MOST_OFF && ratio < MOST_OFF;
      if (apart && likely && named.add(number.cause().slip())) {
        taken.add(ratio);
        answers.add(new WrongAnswer(shown(draft, ratio * draft.answer().result()), number.cause()));
      }
    }
    answers.sort((a, b) -> a.cause().slip().compareTo(b.cause().slip()));
    return answers.subList(0, Math.min(MOST_WRONG, answers.size()));
  }

  private static String shown(Draft draft, double siValue) {
    boolean pure = draft.unit().equals("1");
    double factor = pure ? 1 : QuantityText.factor(draft.unit()).doubleValue();
    BigDecimal rounded = new BigDecimal(siValue / factor).round(new MathContext(FIGURES));
    int exponent = rounded.precision() - rounded.scale() - 1;
    String number =
        rounded
            .setScale(Math.max(0, FIGURES - 1 - exponent), RoundingMode.HALF_EVEN)
            .toPlainString();
    return pure ? number : number + " " + draft.unit();
  }

  /**
   * Returns what the problem is about.
   *
   * @return the kind
   */
  public ProblemKind kind() {
    return kind;
  }

  /**
   * Returns how much it asks.
   *
   * @return the level
   */
  public Level level() {
    return level;
  }

  /**
   * Returns the seed that makes it.
   *
   * @return the seed
   */
  public long seed() {
    return seed;
  }

  /**
   * Returns a name that tells kind, level and seed.
   *
   * @return for instance {@code Friction, level 2, number 42}
   */
  public String title() {
    return kind.title() + ", level " + level.number() + ", number " + seed;
  }

  /**
   * Returns the question.
   *
   * @return sentences, on one line
   */
  public String question() {
    return draft.question();
  }

  /**
   * Returns the right answer.
   *
   * @return the number with its unit, to four figures
   */
  public String answer() {
    return shown(draft, draft.answer().result());
  }

  /**
   * Returns the step of the worked solution that gives the answer.
   *
   * @return the step, with the answer unrounded
   */
  public Step answerStep() {
    return draft.answer();
  }

  /**
   * Returns the units in which an answer is taken.
   *
   * @return the unit symbols, the one of {@link #answer} first; only {@code 1} for a pure number
   */
  public List<String> acceptedUnits() {
    List<String> units = new ArrayList<>(List.of(draft.unit()));
    QuantityText.symbolsOf(draft.answer().formula().result().unit()).stream()
        .filter(unit -> !unit.equals(draft.unit()))
        .forEach(units::add);
    return List.copyOf(units);
  }

  /**
   * Returns how far an answer may lie off.
   *
   * @return difference over the right answer
   */
  public double toleranceRatio() {
    return TOLERANCE;
  }

  /**
   * Returns the worked solution.
   *
   * @return the worksheet
   */
  public Worksheet solution() {
    return draft.solution();
  }

  /**
   * Returns wrong answers that a learner is likely to give, at most four, each by another slip.
   *
   * @return the answers; none lies within the tolerance of the right one or of another
   */
  public List<WrongAnswer> wrongAnswers() {
    return wrongAnswers;
  }

  /**
   * Holds an answer against the solution.
   *
   * @param answer the number with its unit
   * @return what came of it
   * @throws org.boleline.explain.PlanRefusedException if it has another form or kind of unit
   */
  public HandCheck check(String answer) {
    Step step = draft.answer();
    List<Step> alike =
        solution().steps().stream()
            .filter(other -> other.formula().id().equals(step.formula().id()))
            .toList();
    String name = step.formula().id() + " (" + (alike.indexOf(step) + 1) + ")";
    return HandCheck.of(
        solution(), List.of(HandStep.of(name, answer)), Tolerance.relative(TOLERANCE));
  }

  /**
   * Returns the question as plain text, at most 80 columns wide.
   *
   * @return title, question and how to answer, with a line feed at the end
   */
  public String plainText() {
    return Worksheet.of(title(), List.of()).plus(lines()).plainText();
  }

  /**
   * Returns the question as Markdown.
   *
   * @return title, question and how to answer, with a line feed at the end
   */
  public String markdown() {
    return Worksheet.of(title(), List.of()).plus(lines()).markdown();
  }

  private List<Line> lines() {
    return List.of(new Line.Remark(question()), new Line.Remark(instruction()));
  }

  /** How to answer. */
  String instruction() {
    String units =
        draft.unit().equals("1")
            ? ""
            : "in " + acceptedUnits().stream().collect(Collectors.joining(", ")) + ", ";
    return "Answer " + units + "to three figures.";
  }

  /**
   * Returns the problem as an item of the 1EdTech Question and Test Interoperability format,
   * version 2.1: a number to type in, its tolerance, a hint for each wrong answer, the worked
   * solution for the tutor.
   *
   * @return one XML document
   */
  public String qti() {
    return new QtiItem(this).xml();
  }

  @Override
  public String toString() {
    return title();
  }
}
