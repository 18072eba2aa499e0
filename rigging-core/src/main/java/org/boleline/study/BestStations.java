package org.boleline.study;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Where the points of a rope sit best for one reading, and how many of them: the first contact
 * stays, points are added behind it, one by one, each like the last contact, and their stations are
 * sought within bounds.
 *
 * <p>The answer says for each number of points the best that was found, and which is the least
 * number that is within a thousandth of the best: often more points do not help.
 *
 * @param arrangement id of the arrangement
 * @param reading what is to be small
 * @param lowest lowest station of an added point
 * @param highest highest station of an added point
 * @param mostPoints greatest number of points behind the first contact, from 1 to 4
 */
public record BestStations(
    String arrangement, Reading reading, Figure lowest, Figure highest, int mostPoints)
    implements Study {
  private static final int SCANNED = 12;
  private static final int ROUNDS = 4;
  private static final double ALIKE = 1e-3;
  private static final double CLOSE = 1e-6;

  /**
   * Makes the question.
   *
   * @param arrangement id of the arrangement
   * @param reading what is to be small
   * @param lowest lowest station of an added point
   * @param highest highest station of an added point
   * @param mostPoints greatest number of points behind the first contact, from 1 to 4
   * @throws IllegalArgumentException if a figure is no length, the range is empty, or the number is
   *     outside its range
   */
  public BestStations {
    lowest.requireKind(Kind.LENGTH);
    highest.requireKind(Kind.LENGTH);
    if (!(lowest.si() >= 0 && highest.si() > lowest.si())) {
      throw new IllegalArgumentException(
          "highest: wants more than the lowest station, zero or more, got "
              + highest.text()
              + " over "
              + lowest.text());
    }
    if (mostPoints < 1 || mostPoints > 4) {
      throw new IllegalArgumentException("mostPoints: wants 1 to 4, got " + mostPoints);
    }
  }

  @Override
  public String kind() {
    return "bestStations";
  }

  /**
   * The best that was found with a number of points.
   *
   * @param stations stations of the points behind the first contact, from the piece on
   * @param value the reading there
   */
  public record Best(List<Figure> stations, Found value) {
    /**
     * Makes it.
     *
     * @param stations stations of the points behind the first contact, from the piece on
     * @param value the reading there
     */
    public Best {
      stations = List.copyOf(stations);
    }
  }

  /**
   * The answer.
   *
   * @param study what was asked
   * @param byCount the best for no point behind the first contact, for one, and so on
   * @param enoughIndex the least number of points within a thousandth of the best; -1 if no number
   *     was found at all
   */
  public record Answer(BestStations study, List<Best> byCount, int enoughIndex)
      implements StudyAnswer {
    /**
     * Makes an answer.
     *
     * @param study what was asked
     * @param byCount the best for no point behind the first contact, for one, and so on
     * @param enoughIndex the least number of points within a thousandth of the best, or -1
     */
    public Answer {
      byCount = List.copyOf(byCount);
    }
  }

  /**
   * Seeks.
   *
   * @equation least reading over the stations, one after the other, until none moves it
   * @validity bounded search without derivatives: 13 stations for each point, then Brent's method
   *     between neighbours of the best; a better place in between may be missed
   * @source Brent
   * @accuracy 1e-6 of the station near the place that was found
   * @param plan the plan, not null
   * @return the answer
   * @throws PlanRefusedException if the plan has no such arrangement, or the bounds leave its stem
   */
  @Override
  public Answer answer(Plan plan) {
    Arrangement of = Evaluation.find(plan, arrangement);
    String stem = last(of).stem();
    double length =
        plan.stems().stream()
            .filter(s -> s.id().equals(stem))
            .mapToDouble(s -> Si.value(s.length(), Kind.LENGTH, "length"))
            .findFirst()
            .orElseThrow();
    if (highest.si() > length) {
      throw new PlanRefusedException(
          List.of(
              new Refusal(
                  Refusal.Code.STATION_OFF_STEM,
                  "/arrangements/" + plan.arrangements().indexOf(of) + "/contacts",
                  "stations up to the length of stem " + stem + ", " + length + " m",
                  highest.text())));
    }
    List<Best> byCount = new ArrayList<>();
    double[] stations = {};
    byCount.add(best(plan, of, stations));
    for (int count = 1; count <= mostPoints; count++) {
      stations = sought(plan, of, added(plan, of, stations));
      byCount.add(best(plan, of, stations));
    }
    double least =
        byCount.stream()
            .mapToDouble(b -> b.value.si())
            .filter(v -> !Double.isNaN(v))
            .min()
            .orElse(Double.NaN);
    int enough = -1;
    for (int count = byCount.size() - 1; count >= 0; count--) {
      if (byCount.get(count).value.si() <= least + ALIKE * Math.abs(least)) {
        enough = count;
      }
    }
    return new Answer(this, byCount, enough);
  }

  private static Contact last(Arrangement of) {
    return of.contacts().get(of.contacts().size() - 1);
  }

  private Best best(Plan plan, Arrangement of, double[] stations) {
    List<Figure> list = new ArrayList<>();
    for (double station : stations) {
      list.add(Figure.of(station, Kind.LENGTH));
    }
    return new Best(list, read(plan, of, stations));
  }

  private Found read(Plan plan, Arrangement of, double[] stations) {
    List<Contact> contacts = new ArrayList<>(List.of(of.contacts().get(0)));
    Contact like = last(of);
    for (double station : stations) {
      contacts.add(Input.moved(like, station));
    }
    try {
      Plan changed =
          plan.toBuilder().arrangements(List.of(of.toBuilder().contacts(contacts).build())).build();
      return reading.value(changed, arrangement);
    } catch (PlanRefusedException e) {
      return Reading.refused(e);
    }
  }

  private double value(Plan plan, Arrangement of, double[] stations) {
    double found = read(plan, of, stations).si();
    return Double.isNaN(found) ? Double.MAX_VALUE / 4 : found;
  }

  private static double[] with(double[] stations, int i, double station) {
    double[] out = stations.clone();
    out[i] = station;
    return out;
  }

  private double at(int k) {
    return lowest.si() + (highest.si() - lowest.si()) * k / SCANNED;
  }

  /** One more point, where it does best while the others stay, at the end or before them. */
  private double[] added(Plan plan, Arrangement of, double[] before) {
    double[] best = {};
    double least = Double.POSITIVE_INFINITY;
    for (int place = 0; place <= before.length; place++) {
      double[] more = new double[before.length + 1];
      System.arraycopy(before, 0, more, 0, place);
      System.arraycopy(before, place, more, place + 1, before.length - place);
      for (int k = 0; k <= SCANNED; k++) {
        more[place] = at(k);
        double value = value(plan, of, more);
        if (value < least) {
          least = value;
          best = more.clone();
        }
      }
    }
    return best;
  }

  private double[] sought(Plan plan, Arrangement of, double[] start) {
    double[] best = start;
    double least = value(plan, of, best);
    for (int round = 0; round < ROUNDS; round++) {
      double before = least;
      for (int i = 0; i < best.length; i++) {
        int coordinate = i;
        double[] from = best;
        double step = (highest.si() - lowest.si()) / SCANNED;
        var found =
            new BrentOptimizer(CLOSE, CLOSE * highest.si())
                .optimize(
                    new MaxEval(60),
                    GoalType.MINIMIZE,
                    new UnivariateObjectiveFunction(
                        x -> value(plan, of, with(from, coordinate, x))),
                    new SearchInterval(
                        Math.max(lowest.si(), from[i] - step),
                        Math.min(highest.si(), from[i] + step),
                        from[i]));
        if (found.getValue() < least) {
          least = found.getValue();
          best = with(best, i, found.getPoint());
        }
      }
      if (before - least <= CLOSE * Math.abs(before)) {
        break;
      }
    }
    return best;
  }
}
