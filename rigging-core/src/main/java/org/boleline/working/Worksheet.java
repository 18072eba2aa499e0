package org.boleline.working;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.boleline.explain.Caution;
import org.boleline.explain.Step;

/**
 * A result as a hand calculation: a title and lines.
 *
 * <p>The steps are those that gave the result, so that a worksheet cannot part from the number it
 * explains.
 *
 * <p>Immutable and thread-safe.
 */
public final class Worksheet {
  private static final int FIGURES = 4;
  private static final int MOST_FIGURES = 15;

  private final String title;
  private final List<Line> lines;
  private final UnitSystem units;
  private final int figures;

  private Worksheet(String title, List<Line> lines, UnitSystem units, int figures) {
    this.title = requireNonNull(title, "title");
    this.lines = List.copyOf(lines);
    this.units = requireNonNull(units, "units");
    this.figures = figures;
  }

  /**
   * Obtains a worksheet, in SI units and with results rounded to four figures.
   *
   * @param title what is worked out
   * @param lines its lines
   * @return the worksheet
   */
  public static Worksheet of(String title, List<Line> lines) {
    return new Worksheet(title, lines, UnitSystem.SI, FIGURES);
  }

  /**
   * Obtains a worksheet of steps alone.
   *
   * @param title what is worked out
   * @param steps the steps, in order
   * @return the worksheet
   */
  public static Worksheet ofSteps(String title, List<Step> steps) {
    List<Line> lines = new ArrayList<>();
    steps.forEach(step -> lines.add(new Line.Calculation("", step)));
    return of(title, lines);
  }

  /**
   * Returns a copy that shows its numbers in other units.
   *
   * @param newUnits the units
   * @return the copy
   */
  public Worksheet withUnits(UnitSystem newUnits) {
    return new Worksheet(title, lines, newUnits, figures);
  }

  /**
   * Returns a copy with results rounded to another number of figures.
   *
   * @param newCount how many significant figures, 1 to 15
   * @return the copy
   * @throws IllegalArgumentException if the count is outside
   */
  public Worksheet withFigures(int newCount) {
    if (newCount < 1 || newCount > MOST_FIGURES) {
      throw new IllegalArgumentException("figures: wants 1 to 15, got " + newCount);
    }
    return new Worksheet(title, lines, units, newCount);
  }

  /**
   * Returns a copy with lines added at its end.
   *
   * @param more the lines
   * @return the copy
   */
  public Worksheet plus(List<? extends Line> more) {
    List<Line> all = new ArrayList<>(lines);
    all.addAll(more);
    return new Worksheet(title, all, units, figures);
  }

  /**
   * Returns what is worked out.
   *
   * @return the title
   */
  public String title() {
    return title;
  }

  /**
   * Returns the lines.
   *
   * @return the lines, in order
   */
  public List<Line> lines() {
    return lines;
  }

  /**
   * Returns the units shown.
   *
   * @return the units
   */
  public UnitSystem units() {
    return units;
  }

  /**
   * Returns how many significant figures rounded results have.
   *
   * @return the count
   */
  public int figuresCount() {
    return figures;
  }

  /**
   * Returns the steps of all lines, those of two routes too, each once.
   *
   * @return the steps, in order
   */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Line line : lines) {
      if (line instanceof Line.Calculation calculation) {
        steps.add(calculation.step());
      } else if (line instanceof Line.TwoRoutes two) {
        steps.addAll(List.of(two.first(), two.second()));
      }
    }
    return steps.stream().distinct().toList();
  }

  /** The number of the line that shows a step by itself, or zero. */
  int lineOf(Step step) {
    int number = 0;
    for (Line line : lines) {
      if (!(line instanceof Line.Remark)) {
        number++;
      }
      if (line instanceof Line.Calculation calculation && calculation.step() == step) {
        return number;
      }
    }
    return 0;
  }

  /**
   * Returns a caution for each number that lies outside the range of its formula.
   *
   * @return the cautions
   */
  public List<Caution> cautions() {
    List<Caution> cautions = new ArrayList<>();
    steps().forEach(step -> cautions.addAll(step.cautions("")));
    return List.copyOf(cautions);
  }

  /**
   * Returns the worksheet as plain text of at most 80 columns.
   *
   * @return the text, with line feeds, also at its end
   */
  public String plainText() {
    return new PlainSheet(this).text();
  }

  /**
   * Returns the worksheet as Markdown, with LaTeX math between dollar signs.
   *
   * @return the text, with line feeds, also at its end
   */
  public String markdown() {
    return new MarkdownSheet(this).text();
  }

  /**
   * Returns the worksheet as a part of an HTML page, with MathML. It has no style and no script.
   *
   * @return one {@code section} element, well-formed XML, with a line feed at its end
   */
  public String html() {
    return new HtmlSheet(this).section();
  }

  /**
   * Returns the worksheet as an HTML page of its own, which loads nothing.
   *
   * @return the page, with a line feed at its end
   */
  public String htmlPage() {
    return new HtmlSheet(this).page();
  }

  @Override
  public String toString() {
    return title;
  }
}
