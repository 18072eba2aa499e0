package org.boleline.working;

import static java.util.Objects.requireNonNull;

import java.util.Arrays;
import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;

/** A line of a worksheet. */
public sealed interface Line {
  /**
   * One use of a formula.
   *
   * @param what what the result is of, or empty to leave it at the meaning of its symbol
   * @param step the step that gave the number
   */
  record Calculation(String what, Step step) implements Line {
    /**
     * Makes a line.
     *
     * @param what what the result is of, or empty to leave it at the meaning of its symbol
     * @param step the step that gave the number
     */
    public Calculation {
      requireNonNull(what, "what");
      requireNonNull(step, "step");
    }
  }

  /**
   * A sentence.
   *
   * @param text the words
   */
  record Remark(String text) implements Line {
    /**
     * Makes a sentence.
     *
     * @param text the words
     */
    public Remark {
      requireNonNull(text, "text");
    }
  }

  /**
   * One number by two routes that share as little as can be.
   *
   * @param what what the number is
   * @param firstRoute the first route, in words
   * @param first the step that ends it
   * @param secondRoute the second route, in words
   * @param second the step that ends it; its result has the unit of the first one's
   */
  record TwoRoutes(String what, String firstRoute, Step first, String secondRoute, Step second)
      implements Line {
    /**
     * Makes a line of two routes.
     *
     * @param what what the number is
     * @param firstRoute the first route, in words
     * @param first the step that ends it
     * @param secondRoute the second route, in words
     * @param second the step that ends it; its result has the unit of the first one's
     * @throws IllegalArgumentException if the units differ
     */
    public TwoRoutes {
      requireNonNull(what, "what");
      requireNonNull(firstRoute, "firstRoute");
      requireNonNull(secondRoute, "secondRoute");
      String unit = first.formula().result().unit();
      String other = second.formula().result().unit();
      if (!unit.equals(other)) {
        throw new IllegalArgumentException("second: wants " + unit + ", got " + other);
      }
    }

    /**
     * Returns the difference over the greater of both.
     *
     * @return the first less the second, over the greater magnitude; zero if both are zero
     */
    public double differenceRatio() {
      double greater = Math.max(Math.abs(first.result()), Math.abs(second.result()));
      return greater == 0 ? 0 : (first.result() - second.result()) / greater;
    }
  }

  /**
   * Rows of numbers that come from the same few formulas.
   *
   * <p>Immutable and thread-safe.
   */
  final class Table implements Line {
    private final String title;
    private final List<Formula> formulas;
    private final List<Symbol> columns;
    private final List<String> names;
    private final double[][] numbers;

    /**
     * Obtains a table.
     *
     * @param title the title
     * @param formulas the formulas that the numbers come from, at least one
     * @param columns what stands in the columns, with the units of the numbers
     * @param names the names of the rows
     * @param rows the numbers, row by row, in the units of the columns; finite
     * @return the table
     * @throws IllegalArgumentException if the counts do not fit or a number is not finite
     */
    public static Table of(
        String title,
        List<Formula> formulas,
        List<Symbol> columns,
        List<String> names,
        double[][] rows) {
      if (rows.length != names.size()) {
        throw new IllegalArgumentException(
            "rows: wants " + names.size() + ", one for each name, got " + rows.length);
      }
      double[][] numbers = new double[rows.length][];
      for (int i = 0; i < rows.length; i++) {
        if (rows[i].length != columns.size()
            || !Arrays.stream(rows[i]).allMatch(Double::isFinite)) {
          throw new IllegalArgumentException(
              "rows: wants " + columns.size() + " finite numbers in each, got another row " + i);
        }
        numbers[i] = rows[i].clone();
      }
      return new Table(title, formulas, columns, names, numbers);
    }

    /** Takes over the numbers, row by row, in the units of the columns. */
    Table(
        String title,
        List<Formula> formulas,
        List<Symbol> columns,
        List<String> names,
        double[][] numbers) {
      this.title = requireNonNull(title);
      this.formulas = List.copyOf(formulas);
      this.columns = List.copyOf(columns);
      this.names = List.copyOf(names);
      this.numbers = numbers;
    }

    /**
     * Returns the title.
     *
     * @return the words
     */
    public String title() {
      return title;
    }

    /**
     * Returns the formulas that the numbers come from.
     *
     * @return the formulas, at least one
     */
    public List<Formula> formulas() {
      return formulas;
    }

    /**
     * Returns what stands in the columns.
     *
     * @return the symbols, with their units
     */
    public List<Symbol> columns() {
      return columns;
    }

    /**
     * Returns the names of the rows.
     *
     * @return the names
     */
    public List<String> names() {
      return names;
    }

    double number(int row, int column) {
      return numbers[row][column];
    }

    @Override
    public String toString() {
      return title;
    }
  }
}
