package org.boleline.study;

import java.util.ArrayList;
import java.util.List;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Plan;

/**
 * One input moved over a range: what the readings become, how steep they are, and by how many per
 * cent they move for one per cent of the input.
 *
 * @param arrangement id of the arrangement
 * @param input what is moved
 * @param from where it starts, of the input's kind
 * @param to where it ends, of the input's kind, not where it starts
 * @param steps number of steps between, from 1 to 1000: one more points
 * @param readings what is read, at least one
 */
public record Sweep(
    String arrangement, Input input, Figure from, Figure to, int steps, List<Reading> readings)
    implements Study {
  /** Step of the central difference over the size of the input or of its range. */
  private static final double STEP = 1e-3;

  /** Least agreement of the slopes over one step and over two, relative. */
  private static final double EVEN = 0.01;

  /** A difference below this share of the reading is noise of the solver. */
  private static final double NOISE = 1e-6;

  /**
   * Makes a sweep.
   *
   * @param arrangement id of the arrangement
   * @param input what is moved
   * @param from where it starts, of the input's kind
   * @param to where it ends, of the input's kind, not where it starts
   * @param steps number of steps between, from 1 to 1000: one more points
   * @param readings what is read, at least one
   * @throws IllegalArgumentException if a figure is of another kind, the range is empty, or a count
   *     is outside its range
   */
  public Sweep {
    from.requireKind(input.kindOrNull());
    to.requireKind(input.kindOrNull());
    readings = List.copyOf(readings);
    if (from.equals(to)) {
      throw new IllegalArgumentException(
          "to: wants another end than " + from.text() + ", got " + to.text());
    }
    if (steps < 1 || steps > 1000) {
      throw new IllegalArgumentException("steps: wants 1 to 1000, got " + steps);
    }
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("readings: wants at least one, got none");
    }
  }

  @Override
  public String kind() {
    return "sweep";
  }

  /**
   * One point of the sweep.
   *
   * @param input the input there
   * @param rows one for each reading
   */
  public record Point(Figure input, List<Row> rows) {
    /**
     * Makes a point.
     *
     * @param input the input there
     * @param rows one for each reading
     */
    public Point {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A reading at a point.
   *
   * @param value what is read
   * @param slope how much it grows for one more SI unit of the input, in the reading's unit; none
   *     where it is not smooth
   * @param elasticity per cent of the reading for one per cent of the input; a pure number
   */
  public record Row(Found value, Found slope, Found elasticity) {}

  /**
   * The answer.
   *
   * @param study what was asked
   * @param points the points, in the order of the sweep
   */
  public record Answer(Sweep study, List<Point> points) implements StudyAnswer {
    /**
     * Makes an answer.
     *
     * @param study what was asked
     * @param points the points, in the order of the sweep
     */
    public Answer {
      points = List.copyOf(points);
    }
  }

  /**
   * Works the sweep out.
   *
   * @equation d = (y_more - y_less) / (2 * h); e = d * x / y (STU-4, STU-5, docs/theory/studies.md)
   * @validity where the slope over twice the step agrees to 1 %; elsewhere no slope is given
   * @source central difference
   * @accuracy slopes to about 1e-3; the step is 1e-3 of the input or of the range, the greater
   * @param plan the plan, not null
   * @return the answer
   * @throws PlanRefusedException if the plan has no such arrangement or input
   */
  @Override
  public Answer answer(Plan plan) {
    Evaluation.find(plan, arrangement);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      double x = i == steps ? to.si() : from.si() + (to.si() - from.si()) * i / steps;
      points.add(point(plan, x));
    }
    return new Answer(this, points);
  }

  private Point point(Plan plan, double x) {
    double h = STEP * Math.max(Math.abs(x), Math.abs(to.si() - from.si()));
    List<Found> here = read(plan, x);
    List<Found> less = read(plan, x - h);
    List<Found> more = read(plan, x + h);
    List<Found> farLess = read(plan, x - 2 * h);
    List<Found> farMore = read(plan, x + 2 * h);
    List<Row> rows = new ArrayList<>();
    for (int k = 0; k < readings.size(); k++) {
      double y = here.get(k).si();
      Found slope =
          slope(y, h, less.get(k), more.get(k), farLess.get(k).si(), farMore.get(k).si(), k);
      Found elasticity =
          slope.figure().isEmpty() || y == 0
              ? Found.none(slope.reason().orElse("the reading is zero"))
              : Found.of(Figure.ofRatio(StudyFormulas.ELASTICITY.value(slope.si(), x, y)));
      rows.add(new Row(here.get(k), slope, elasticity));
    }
    return new Point(Figure.of(x, input.kindOrNull()), rows);
  }

  private Found slope(
      double y, double h, Found less, Found more, double farLess, double farMore, int k) {
    if (Double.isNaN(y) || Double.isNaN(less.si()) || Double.isNaN(more.si())) {
      return Found.none("no number on both sides: at an end of what can be worked out");
    }
    double near = StudyFormulas.SLOPE.value(more.si(), less.si(), h);
    double far = (farMore - farLess) / (4 * h);
    if (Double.isNaN(far)) {
      return Found.none("no number on both sides: at an end of what can be worked out");
    }
    double apart = Math.abs(far - near);
    return apart <= EVEN * Math.abs(near) || apart * h <= NOISE * Math.abs(y)
        ? Found.of(Figure.of(near, readings.get(k).kindOrNull()))
        : Found.none("not smooth here: the slope over twice the step is another one");
  }

  private List<Found> read(Plan plan, double x) {
    return Reading.values(plan, arrangement, readings, input, x);
  }
}
