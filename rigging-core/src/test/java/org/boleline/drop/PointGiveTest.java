package org.boleline.drop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.boleline.Tolerances.ACCOUNT;
import static org.boleline.Tolerances.FIRST_ORDER;
import static org.boleline.Tolerances.ROUNDING;
import static org.boleline.Tolerances.absolute;
import static org.boleline.Tolerances.relative;
import static org.boleline.drop.CatchNumbers.j;
import static org.boleline.drop.CatchNumbers.m;
import static org.boleline.drop.CatchNumbers.n;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.millimetres;
import static org.boleline.units.Amounts.newtons;

import java.util.List;
import java.util.SplittableRandom;
import javax.measure.quantity.Length;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Source;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.StretchPoint;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;

class PointGiveTest {
  private static final double EA = 2e5;
  private static final RopeStretch LINEAR =
      RopeStretch.forDrop(LinearStretch.of(newtons(EA)), Source.PLAN);
  private static final RopeStretch TABLE =
      RopeStretch.forDrop(
          TabulatedStretch.of(
              List.of(StretchPoint.of(newtons(4000), 0.03), StretchPoint.of(newtons(11000), 0.05))),
          Source.PLAN);

  /** Load, points and where the rope is held, in space. */
  private record Route(double[][] places, double[] frictions) {
    int count() {
      return frictions.length;
    }

    double leg(int i) {
      return distance(places[i], places[i + 1]);
    }

    CatchPoint point(int j) {
      return CatchPoint.between(
          new FrictionRing(frictions[j]), toward(j + 1, j), toward(j + 1, j + 2));
    }

    private Vector<Length> toward(int from, int to) {
      return Vector.ofSi(
          Kind.LENGTH,
          places[to][0] - places[from][0],
          places[to][1] - places[from][1],
          places[to][2] - places[from][2]);
    }

    CatchPath path() {
      CatchPath path = CatchPath.of(metres(leg(0)));
      for (int j = 0; j < count(); j++) {
        path = path.over(point(j), metres(leg(j + 1)));
      }
      return path;
    }

    CatchPath onSprings(double stiffness) {
      CatchPath path = CatchPath.of(metres(leg(0)));
      for (int j = 0; j < count(); j++) {
        path =
            path.over(point(j).withStiffness(Si.of(stiffness, Kind.STIFFNESS)), metres(leg(j + 1)));
      }
      return path;
    }
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        (a[0] - b[0]) * (a[0] - b[0])
            + (a[1] - b[1]) * (a[1] - b[1])
            + (a[2] - b[2]) * (a[2] - b[2]));
  }

  private static Route route(SplittableRandom random) {
    int points = random.nextInt(1, 5);
    double[][] places = new double[points + 2][];
    places[0] = new double[] {0, 0, 0};
    places[1] = new double[] {0, 0, random.nextDouble(2, 5)};
    for (int i = 2; i < places.length; i++) {
      places[i] =
          new double[] {
            random.nextDouble(0.5, 3), random.nextDouble(-2, 2), random.nextDouble(0, 6)
          };
    }
    double[] frictions = new double[points];
    for (int i = 0; i < points; i++) {
      frictions[i] = random.nextDouble(0, 0.3);
    }
    return new Route(places, frictions);
  }

  private static double[][] spheres(int points, double compliance) {
    double[][] c = new double[3 * points][3 * points];
    for (int i = 0; i < c.length; i++) {
      c[i][i] = compliance;
    }
    return c;
  }

  /** Like a stem: B B^T. */
  private static double[][] coupled(SplittableRandom random, int points, double size) {
    double[][] b = new double[3 * points][3 * points];
    for (double[] row : b) {
      for (int i = 0; i < row.length; i++) {
        row[i] = random.nextDouble(-1, 1);
      }
    }
    double[][] c = new double[3 * points][3 * points];
    for (int i = 0; i < c.length; i++) {
      for (int k = 0; k < c.length; k++) {
        for (int l = 0; l < c.length; l++) {
          c[i][k] += size * b[i][l] * b[k][l];
        }
      }
    }
    return c;
  }

  private static PointGive give(double[][] compliance) {
    return PointGive.of(compliance, metres(1), newtons(1));
  }

  private static Caught caught(RopeStretch rope, CatchPath path) {
    return RopeCatch.of(kilograms(120), metres(1.5), rope, path).locked();
  }

  @Property(tries = 100)
  void alike_in_all_directions_and_each_for_itself_is_a_spring_at_each_point(
      @ForAll @LongRange(min = 0) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Route route = route(random);
    double stiffness = random.nextDouble(2e4, 1e6);
    Caught springs = caught(TABLE, route.onSprings(stiffness));
    Caught matrix =
        caught(TABLE, route.path().withGive(give(spheres(route.count(), 1 / stiffness))));
    assertThat(n(matrix.peak())).isCloseTo(n(springs.peak()), relative(ACCOUNT));
    assertThat(m(matrix.stretch())).isCloseTo(m(springs.stretch()), relative(ACCOUNT));
    assertThat(j(matrix.energy().storedInSprings()))
        .isCloseTo(j(springs.energy().storedInSprings()), relative(ACCOUNT));
    for (int i = 0; i < route.count(); i++) {
      assertThat(j(matrix.energy().heatAtPoints().get(i)))
          .isCloseTo(
              j(springs.energy().heatAtPoints().get(i)),
              absolute(ACCOUNT * j(springs.energy().given())));
    }
  }

  @Property(tries = 50)
  void slings_on_a_stem_add_up(@ForAll @LongRange(min = 0) long seed) {
    // Half of a spring in the matrix, half at the points: springs in series.
    Route route = route(new SplittableRandom(seed));
    Caught whole = caught(LINEAR, route.onSprings(5e4));
    Caught halves =
        caught(LINEAR, route.onSprings(1e5).withGive(give(spheres(route.count(), 1e-5))));
    assertThat(n(halves.peak())).isCloseTo(n(whole.peak()), relative(ACCOUNT));
    assertThat(halves.energy().residualShare()).isLessThan(ACCOUNT);
  }

  @Property(tries = 200)
  void energy_is_accounted_for(@ForAll @LongRange(min = 0) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Route route = route(random);
    PointGive give = give(coupled(random, route.count(), 1e-5));
    CatchPath path = route.path();
    Assume.that(letsDown(path, give));
    Caught caught = caught(TABLE, path.withGive(give));
    assertThat(caught.energy().residualShare()).isLessThan(ACCOUNT);
    assertThat(j(caught.energy().storedInSprings())).isPositive();
    assertThat(caught.cautions()).anyMatch(c -> c.code() == CautionCode.SPRINGS_WITHOUT_MASS);
    LetRun.Stopped run =
        (LetRun.Stopped)
            RopeCatch.of(kilograms(120), metres(1.5), TABLE, path.withGive(give))
                .running(metres(1));
    assertThat(run.energy().residualShare()).isLessThan(ACCOUNT);
  }

  private static boolean letsDown(CatchPath path, PointGive give) {
    try {
      path.withGive(give);
      return true;
    } catch (PlanRefusedException e) {
      return false;
    }
  }

  @Property(tries = 100)
  void no_give_is_the_rigid_result(@ForAll @LongRange(min = 0) long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Route route = route(random);
    double[][] shape = coupled(random, route.count(), 1);
    Caught rigid = caught(LINEAR, route.path());
    Assume.that(letsDown(route.path(), give(scaled(shape, 1e-6))));
    double before = Double.POSITIVE_INFINITY;
    for (double size : new double[] {1e-5, 1e-7, 1e-9}) {
      double off =
          1
              - n(caught(LINEAR, route.path().withGive(give(scaled(shape, size)))).peak())
                  / n(rigid.peak());
      assertThat(off).isBetween(-ROUNDING, before);
      before = off;
    }
    // The peak falls by less than the give adds to that of the rope: at most twice twelve terms
    // for each pair of points.
    int points = route.count();
    double share = 1e-9 * 12 * 12 * points * points / (route.leg(0) / EA);
    assertThat(before).isLessThan(share);
    assertThat(n(caught(LINEAR, route.path().withGive(give(scaled(shape, 0)))).peak()))
        .isEqualTo(n(rigid.peak()));
  }

  private static double[][] scaled(double[][] c, double factor) {
    double[][] scaled = new double[c.length][c.length];
    for (int i = 0; i < c.length; i++) {
      for (int k = 0; k < c.length; k++) {
        scaled[i][k] = factor * c[i][k];
      }
    }
    return scaled;
  }

  @Property(tries = 100)
  void the_load_comes_down_by_what_the_moved_points_set_free(
      @ForAll @LongRange(min = 0) long seed) {
    // By another route: move the points in space by a millionth of their movement, measure the
    // legs.
    SplittableRandom random = new SplittableRandom(seed);
    Route route = route(random);
    double[][] c = coupled(random, route.count(), 1e-5);
    PointGive give = give(c);
    Assume.that(letsDown(route.path(), give));
    Caught caught = caught(LINEAR, route.path().withGive(give));
    double peak = n(caught.peak());
    int n = route.count();
    double[] forces = new double[3 * n];
    for (int i = 0; i < n; i++) {
      double[] force = caught.loads().points().get(i).vector().orElseThrow().in(Kind.FORCE);
      System.arraycopy(force, 0, forces, 3 * i, 3);
    }
    double step = 1e-6;
    double[][] moved = new double[n + 2][];
    moved[0] = route.places()[0].clone();
    moved[n + 1] = route.places()[n + 1].clone();
    for (int i = 0; i < n; i++) {
      moved[i + 1] = route.places()[i + 1].clone();
      for (int k = 0; k < 3; k++) {
        for (int l = 0; l < 3 * n; l++) {
          moved[i + 1][k] += step * c[3 * i + k][l] * forces[l];
        }
      }
    }
    double[] freed = new double[n + 1];
    for (int i = 0; i <= n; i++) {
      freed[i] = (route.leg(i) - distance(moved[i], moved[i + 1])) / step;
    }
    double travel = 0;
    double rope = 0;
    for (int i = 0; i <= n; i++) {
      travel += freed[i];
      rope += route.leg(i) * n(caught.loads().legs().get(i)) / EA;
    }
    double scale = m(caught.stretch());
    assertThat(m(caught.stretch()) - rope).isCloseTo(travel, absolute(FIRST_ORDER * scale));
    for (int i = 0; i < n; i++) {
      double passed = 0;
      for (int k = i + 1; k <= n; k++) {
        passed += freed[k] + route.leg(k) * n(caught.loads().legs().get(k)) / EA;
      }
      double drop = n(caught.loads().legs().get(i)) - n(caught.loads().legs().get(i + 1));
      // All in proportion to tension: half of drop times rope.
      assertThat(j(caught.energy().heatAtPoints().get(i)))
          .isCloseTo(drop * passed / 2, absolute(FIRST_ORDER * scale * peak));
    }
  }

  @Test
  void numbers_count_in_the_units_that_are_stated() {
    // 1 mm/kN is 1e-6 m/N.
    assertThat(PointGive.of(spheres(2, 1), millimetres(1), kilonewtons(1)).toString())
        .isEqualTo("give of 2 points together");
    Route route = route(new SplittableRandom(3));
    PointGive stated = PointGive.of(spheres(route.count(), 4), millimetres(1), kilonewtons(1));
    assertThat(n(caught(LINEAR, route.path().withGive(stated)).peak()))
        .isCloseTo(
            n(caught(LINEAR, route.path().withGive(give(spheres(route.count(), 4e-6)))).peak()),
            relative(ROUNDING));
    assertThat(stated)
        .isEqualTo(PointGive.of(spheres(route.count(), 4), millimetres(1), kilonewtons(1)))
        .hasSameHashCodeAs(PointGive.of(spheres(route.count(), 4), millimetres(1), kilonewtons(1)))
        .isNotEqualTo(give(spheres(route.count(), 1)));
    assertThat(route.path().withGive(stated)).isNotEqualTo(route.path());
    assertThat(route.path().withGive(stated).give()).contains(stated);
  }

  @Test
  void later_changes_of_the_array_change_nothing() {
    double[][] c = spheres(1, 1e-5);
    PointGive give = give(c);
    c[0][0] = 1;
    assertThat(give).isEqualTo(give(spheres(1, 1e-5)));
  }

  @Test
  void what_gives_no_such_way_is_refused() {
    double[][] lopsided = spheres(1, 1e-5);
    lopsided[0][1] = 1e-6;
    refused(Refusal.Code.CONFLICT, "/compliance", () -> give(lopsided));
    double[][] against = spheres(1, 1e-5);
    against[2][2] = -1e-6;
    refused(Refusal.Code.CONFLICT, "/compliance", () -> give(against));
    double[][] saddle = spheres(1, 1e-5);
    saddle[0][1] = 2e-5;
    saddle[1][0] = 2e-5;
    refused(Refusal.Code.CONFLICT, "/compliance", () -> give(saddle));
    double[][] infinite = spheres(1, 1e-5);
    infinite[1][1] = Double.NaN;
    refused(Refusal.Code.OUT_OF_RANGE, "/compliance/1/1", () -> give(infinite));
    refused(Refusal.Code.OUT_OF_RANGE, "/compliance", () -> give(new double[0][]));
    refused(Refusal.Code.OUT_OF_RANGE, "/compliance", () -> give(new double[4][4]));
    double[][] ragged = spheres(1, 1e-5);
    ragged[2] = new double[2];
    refused(Refusal.Code.OUT_OF_RANGE, "/compliance/2", () -> give(ragged));
    refused(
        Refusal.Code.OUT_OF_RANGE,
        "/force",
        () -> PointGive.of(spheres(1, 1), metres(1), newtons(0)));
    Route route = new Route(new double[][] {{0, 0, 0}, {0, 0, 3}, {1, 0, 0}}, new double[] {0.1});
    refused(Refusal.Code.CONFLICT, "/give", () -> route.path().withGive(give(spheres(2, 1e-5))));
    refused(
        Refusal.Code.CONFLICT,
        "/give",
        () -> route.path().withGive(give(spheres(1, 1e-5))).over(route.point(0), metres(1)));
    refused(
        Refusal.Code.MISSING,
        "/points/0",
        () ->
            CatchPath.of(metres(2))
                .over(CatchPoint.ofRatio(1.2, Turn.HALF), metres(2))
                .withGive(give(spheres(1, 1e-5))));
  }

  @Test
  void points_that_would_lift_the_load_are_refused() {
    // Two points of much friction, the second hardly loaded, on a rocker: the first moves a little
    // along its force, and the second far away from both its neighbours.
    Route route =
        new Route(new double[][] {{0, 0, 0}, {0, 0, 3}, {1, 0, 3}, {1, 0, 0}}, new double[] {1, 1});
    double[][] rocker = new double[6][6];
    double[] way = {0, 0, -1, 0, 0, 4};
    for (int i = 0; i < 6; i++) {
      for (int k = 0; k < 6; k++) {
        rocker[i][k] = 1e-5 * way[i] * way[k];
      }
    }
    refused(Refusal.Code.CONFLICT, "/give", () -> route.path().withGive(give(rocker)));
  }

  private static void refused(Refusal.Code code, String place, Runnable making) {
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(making::run)
        .satisfies(
            e -> {
              assertThat(e.refusals()).hasSize(1);
              assertThat(e.refusals().get(0).code()).isEqualTo(code);
              assertThat(e.refusals().get(0).place()).isEqualTo(place);
            });
  }
}
