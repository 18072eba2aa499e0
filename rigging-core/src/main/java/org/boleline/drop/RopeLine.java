package org.boleline.drop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Vector;
import org.boleline.rope.Hardware;
import org.boleline.statics.RigAtRest;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Where the rope of a catch runs in space: over its points, from the one next to the piece to where
 * it is held.
 *
 * <p>Friction at a point is that of the turn it has while the piece hangs plumb under the first
 * point; that the turn changes a little in the catch is left out.
 *
 * <p>Immutable and thread-safe; equality is exact.
 *
 * <pre>{@code
 * RopeLine line = RopeLine.of(List.of(top, middle), List.of(ring, sheave), device);
 * }</pre>
 */
public final class RopeLine {
  private static final double NEAR = 1e-3;

  private final List<Vector<Length>> points;
  private final List<CatchPoint> friction;
  private final Vector<Length> end;

  private RopeLine(List<Vector<Length>> points, List<CatchPoint> friction, Vector<Length> end) {
    this.points = List.copyOf(points);
    this.friction = List.copyOf(friction);
    this.end = end;
  }

  /**
   * Obtains a line.
   *
   * @param points places of the points, from the piece on, at least one and at most 24, not null
   * @param hardware what the rope runs over at each, as it acts in a catch, not null
   * @param end where the rope is held, not null
   * @return the line
   * @throws org.boleline.explain.PlanRefusedException if there are no points, too many, not as many
   *     as hardware, neighbours nearer than 1 mm, or a tension ratio is above a million
   */
  public static RopeLine of(
      List<Vector<Length>> points, List<? extends Hardware> hardware, Vector<Length> end) {
    List<Vector<Length>> all = new ArrayList<>(points);
    all.add(end);
    Refusals.check(
        r -> {
          if (points.isEmpty() || points.size() > CatchBounds.POINTS) {
            r.at("points")
                .add(
                    Refusal.Code.OUT_OF_RANGE,
                    "from 1 to " + CatchBounds.POINTS + " points",
                    String.valueOf(points.size()));
          }
          if (points.size() != hardware.size()) {
            r.at("hardware")
                .add(
                    Refusal.Code.CONFLICT,
                    "one for each point: " + points.size(),
                    String.valueOf(hardware.size()));
          }
          for (int j = 0; j + 1 < all.size(); j++) {
            double apart = distance(all.get(j), all.get(j + 1));
            if (apart < NEAR) {
              r.at("points")
                  .at(j)
                  .add(
                      Refusal.Code.SAME_PLACE,
                      "neighbours at least 1 mm apart",
                      QuantityText.number(apart, 3) + " m");
            }
          }
          return 0;
        });
    List<CatchPoint> friction = new ArrayList<>();
    Vector<Length> toLoad = Vector.ofSi(Kind.LENGTH, 0, 0, -1);
    for (int j = 0; j < points.size(); j++) {
      Vector<Length> toTail = from(all.get(j), all.get(j + 1));
      friction.add(CatchPoint.between(hardware.get(j), toLoad, toTail));
      toLoad = from(all.get(j + 1), all.get(j));
    }
    return new RopeLine(points, friction, end);
  }

  /**
   * Obtains the line of an arrangement at rest.
   *
   * @param rig the arrangement, not null
   * @param inCatch what the rope runs over at each point that bears, as it acts in a catch, not
   *     null
   * @return the line
   * @throws org.boleline.explain.PlanRefusedException as {@link #of}
   */
  public static RopeLine over(RigAtRest rig, List<? extends Hardware> inCatch) {
    return of(rig.points(), inCatch, rig.end());
  }

  private static double distance(Vector<Length> a, Vector<Length> b) {
    return Si.value(from(a, b).magnitude(), Kind.LENGTH, "distance");
  }

  private static Vector<Length> from(Vector<Length> a, Vector<Length> b) {
    double[] x = a.in(Kind.LENGTH);
    double[] y = b.in(Kind.LENGTH);
    return Vector.ofSi(Kind.LENGTH, y[0] - x[0], y[1] - x[1], y[2] - x[2]);
  }

  /**
   * Returns the same way of the rope for a catch by energy, with points that do not move.
   *
   * @param loadLeg length of the load leg when the rope is taut, above zero, at most 1 km, not null
   * @return the path
   * @throws org.boleline.explain.PlanRefusedException if the length is outside its range
   */
  public CatchPath path(Quantity<Length> loadLeg) {
    CatchPath path = CatchPath.of(loadLeg);
    for (int j = 0; j < points.size(); j++) {
      Vector<Length> next = j + 1 < points.size() ? points.get(j + 1) : end;
      path = path.over(friction.get(j), from(points.get(j), next).magnitude());
    }
    return path;
  }

  /**
   * Returns where the points are, from the piece on.
   *
   * @return the places in metres
   */
  public List<Vector<Length>> points() {
    return points;
  }

  /**
   * Returns where the rope is held.
   *
   * @return the place in metres
   */
  public Vector<Length> end() {
    return end;
  }

  /**
   * Returns tension before each point over tension behind it, while the rope slips toward the load.
   *
   * @return the ratios, from the piece on
   */
  public List<CatchPoint> friction() {
    return friction;
  }

  double[] places() {
    double[] out = new double[3 * points.size() + 3];
    for (int j = 0; j < points.size(); j++) {
      System.arraycopy(points.get(j).in(Kind.LENGTH), 0, out, 3 * j, 3);
    }
    System.arraycopy(end.in(Kind.LENGTH), 0, out, 3 * points.size(), 3);
    return out;
  }

  /** Lengths of the legs behind the first point. */
  double[] lengths() {
    double[] at = places();
    double[] out = new double[points.size()];
    Arrays.setAll(
        out,
        j -> {
          double x = at[3 * j + 3] - at[3 * j];
          double y = at[3 * j + 4] - at[3 * j + 1];
          double z = at[3 * j + 5] - at[3 * j + 2];
          return Math.sqrt(x * x + y * y + z * z);
        });
    return out;
  }

  double[] ratios() {
    return friction.stream().mapToDouble(CatchPoint::tensionRatio).toArray();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RopeLine l
        && points.equals(l.points)
        && friction.equals(l.friction)
        && end.equals(l.end);
  }

  @Override
  public int hashCode() {
    return 31 * points.hashCode() + end.hashCode();
  }

  @Override
  public String toString() {
    return "rope over " + points.size() + " points";
  }
}
