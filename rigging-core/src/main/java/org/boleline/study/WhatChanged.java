package org.boleline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.jspecify.annotations.Nullable;

/**
 * What changed a reading between two arrangements: the difference, split into one share for each
 * change.
 *
 * <p>The shares are fair in Shapley's sense: each is the mean, over all orders in which the changes
 * could be made, of what that change adds when its turn comes. So no order is preferred, equal
 * changes get equal shares, and the shares add up to the difference. Every mixed plan in between is
 * analysed. Where some mixed plan gives no number, changes are taken together, as few as will do;
 * the answer names them together.
 *
 * <p>A held load is read at one end, as {@link Reading} tells: about to run, unless the reading
 * asks for the other.
 *
 * @param from id of the arrangement that is compared with
 * @param to id of the arrangement that is explained
 * @param readings what is read, at least one
 */
public record WhatChanged(String from, String to, List<Reading> readings) implements Study {
  private static final int MOST = 8;

  /**
   * Makes the question.
   *
   * @param from id of the arrangement that is compared with
   * @param to id of the arrangement that is explained
   * @param readings what is read, at least one
   * @throws IllegalArgumentException if nothing is to be read
   */
  public WhatChanged {
    readings = List.copyOf(readings);
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("readings: wants at least one, got none");
    }
  }

  @Override
  public String kind() {
    return "whatChanged";
  }

  /**
   * The share of one change, or of several that had to be taken together.
   *
   * @param changes the changes, by name; at least one
   * @param share what they add, of the reading's kind
   */
  public record Part(List<String> changes, Figure share) {
    /**
     * Makes a part.
     *
     * @param changes the changes, by name; at least one
     * @param share what they add, of the reading's kind
     */
    public Part {
      changes = List.copyOf(changes);
    }
  }

  /**
   * The difference of one reading.
   *
   * @param reading what is read
   * @param before what it is in the first arrangement
   * @param after what it is in the second
   * @param difference second less first
   * @param parts the shares, which add up to the difference; none if a reading has no number
   */
  public record Row(
      Reading reading, Found before, Found after, Found difference, List<Part> parts) {
    /**
     * Makes a row.
     *
     * @param reading what is read
     * @param before what it is in the first arrangement
     * @param after what it is in the second
     * @param difference second less first
     * @param parts the shares, which add up to the difference; none if a reading has no number
     */
    public Row {
      parts = List.copyOf(parts);
    }
  }

  /**
   * The answer.
   *
   * @param study what was asked
   * @param changes the changes, by name
   * @param rows one for each reading
   */
  public record Answer(WhatChanged study, List<String> changes, List<Row> rows)
      implements StudyAnswer {
    /**
     * Makes an answer.
     *
     * @param study what was asked
     * @param changes the changes, by name
     * @param rows one for each reading
     */
    public Answer {
      changes = List.copyOf(changes);
      rows = List.copyOf(rows);
    }
  }

  /**
   * Splits the difference within one plan.
   *
   * @equation share = sum of w * (v with it - v without it), w = s! * (n - s - 1)! / n! (STU-1,
   *     docs/theory/studies.md)
   * @validity at most 8 changes
   * @source Shapley 1953
   * @accuracy the shares add up to the difference but for rounding
   * @param plan the plan, not null
   * @return the answer
   * @throws PlanRefusedException if the plan lacks an arrangement, or there are more than 8 changes
   */
  @Override
  public Answer answer(Plan plan) {
    return answer(plan, plan);
  }

  /**
   * Splits the difference between two plans.
   *
   * @equation as {@link #answer(Plan)}
   * @validity at most 8 changes
   * @source Shapley 1953
   * @accuracy the shares add up to the difference but for rounding
   * @param before the plan of the first arrangement, not null
   * @param after the plan of the second arrangement, not null
   * @return the answer
   * @throws PlanRefusedException if a plan lacks its arrangement, or there are more than 8 changes
   */
  public Answer answer(Plan before, Plan after) {
    Arrangement first = Evaluation.find(before, from);
    Arrangement second = Evaluation.find(after, to);
    MixedPlans mixed = new MixedPlans(before, first, after, second);
    List<String> changes = mixed.changes();
    if (changes.size() > MOST) {
      throw new PlanRefusedException(
          List.of(
              new Refusal(
                  Refusal.Code.OUT_OF_RANGE,
                  "/arrangements",
                  "at most " + MOST + " changes",
                  String.join(", ", changes))));
    }
    List<List<Found>> values =
        IntStream.range(0, 1 << changes.size()).mapToObj(made -> read(mixed, made)).toList();
    List<Row> rows = new ArrayList<>();
    for (int k = 0; k < readings.size(); k++) {
      int reading = k;
      rows.add(
          row(readings.get(k), changes, values.stream().map(found -> found.get(reading)).toList()));
    }
    return new Answer(this, changes, rows);
  }

  private List<Found> read(MixedPlans mixed, int made) {
    try {
      return Reading.values(mixed.plan(made), MixedPlans.ID, readings);
    } catch (PlanRefusedException e) {
      return readings.stream().map(reading -> Reading.refused(e)).toList();
    }
  }

  private static Row row(Reading reading, List<String> changes, List<Found> found) {
    Found before = found.get(0);
    Found after = found.get(found.size() - 1);
    double difference = after.si() - before.si();
    if (Double.isNaN(difference)) {
      Found none = Found.none(before.reason().or(after::reason).orElseThrow());
      return new Row(reading, before, after, none, List.of());
    }
    double[] values = found.stream().mapToDouble(Found::si).toArray();
    List<Part> parts = new ArrayList<>();
    for (Map.Entry<Integer, Double> share : Shapley.shares(changes.size(), values).entrySet()) {
      parts.add(
          new Part(
              IntStream.range(0, changes.size())
                  .filter(i -> (share.getKey() & 1 << i) != 0)
                  .mapToObj(changes::get)
                  .toList(),
              Figure.of(share.getValue(), reading.kindOrNull())));
    }
    return new Row(
        reading, before, after, Found.of(Figure.of(difference, reading.kindOrNull())), parts);
  }

  /** Shares by exact enumeration. */
  static final class Shapley {
    private Shapley() {}

    /**
     * Returns the shares of groups of changes: of single ones if every mixture has a value, else of
     * as many groups as there can be.
     *
     * @param n number of changes
     * @param values the value for every set of changes made, by its bits; NaN for none, but not of
     *     the first and the last
     * @return shares by the bits of their group
     */
    static Map<Integer, Double> shares(int n, double[] values) {
      List<Integer> groups = n == 0 ? List.of() : groups(n, values);
      int count = groups.size();
      Map<Integer, Double> shares = new LinkedHashMap<>();
      for (int i = 0; i < count; i++) {
        double sum = 0;
        for (int others = 0; others < 1 << count; others++) {
          if ((others & 1 << i) == 0) {
            double weight = StudyFormulas.COALITION_WEIGHT.value(Integer.bitCount(others), count);
            int made = union(groups, others);
            sum += weight * (values[made | groups.get(i)] - values[made]);
          }
        }
        shares.put(groups.get(i), sum);
      }
      return shares;
    }

    private static int union(List<Integer> groups, int of) {
      int bits = 0;
      for (int i = 0; i < groups.size(); i++) {
        bits |= (of & 1 << i) == 0 ? 0 : groups.get(i);
      }
      return bits;
    }

    /** The finest partition all of whose unions have values; the first one of its size. */
    private static List<Integer> groups(int n, double[] values) {
      for (int count = n; count > 1; count--) {
        @Nullable List<Integer> found = partition(n, count, 0, new int[0], values);
        if (found != null) {
          return found;
        }
      }
      return List.of((1 << n) - 1);
    }

    private static @Nullable List<Integer> partition(
        int n, int count, int next, int[] groups, double[] values) {
      if (next == n) {
        List<Integer> list = Arrays.stream(groups).boxed().toList();
        boolean all =
            groups.length == count
                && IntStream.range(0, 1 << count)
                    .noneMatch(of -> Double.isNaN(values[union(list, of)]));
        return all ? list : null;
      }
      for (int g = 0; g <= Math.min(groups.length, count - 1); g++) {
        int[] more = Arrays.copyOf(groups, Math.max(groups.length, g + 1));
        more[g] |= 1 << next;
        @Nullable List<Integer> found = partition(n, count, next + 1, more, values);
        if (found != null) {
          return found;
        }
      }
      return null;
    }
  }

  /**
   * Says a row in words, the greatest share first.
   *
   * @param row the row, not null
   * @return one line
   */
  public static String words(Row row) {
    Optional<Figure> difference = row.difference().figure();
    if (difference.isEmpty()) {
      return row.reading().name() + ": " + row.difference();
    }
    return row.reading().name()
        + ": "
        + difference.get().text()
        + " = "
        + row.parts().stream()
            .sorted((a, b) -> Double.compare(Math.abs(b.share().si()), Math.abs(a.share().si())))
            .map(part -> String.join(" with ", part.changes()) + " " + part.share().text())
            .collect(Collectors.joining(" + "));
  }
}
