package org.boleline.drop;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.internal.drop.MonotoneCurve;
import org.boleline.internal.drop.StretchKernel;
import org.boleline.rope.StretchPoint;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * A rope whose stretch is known at points.
 *
 * <p>Between the points, and from the origin to the first, a monotone piecewise cubic (conditions
 * of Fritsch and Carlson 1980, slopes of Fritsch and Butland 1984): tension rises with strain
 * everywhere and the curve goes through every point. Beyond the last point the curve goes on at its
 * last slope, {@link #lastSlope}; a catch that gets there raises a caution.
 *
 * <p>Immutable and thread-safe; equality is exact, on the points.
 */
public final class TabulatedStretch implements StretchCurve {
  private final List<StretchPoint> points;
  private final MonotoneCurve kernel;

  private TabulatedStretch(List<StretchPoint> points) {
    this.points = points;
    kernel =
        new MonotoneCurve(
            points.stream().mapToDouble(StretchPoint::elongationFraction).toArray(),
            points.stream().mapToDouble(TabulatedStretch::newtons).toArray());
  }

  private static double newtons(StretchPoint point) {
    return Si.value(point.tension(), Kind.FORCE, "tension");
  }

  /**
   * Obtains a curve.
   *
   * @param points the points without the origin, tension and elongation both rising; at least one,
   *     at most 1000; not null
   * @return the curve
   * @throws org.boleline.explain.PlanRefusedException if there is no point, tension or elongation
   *     does not rise from one to the next, or a value is outside its range
   */
  public static TabulatedStretch of(List<StretchPoint> points) {
    List<StretchPoint> copy = List.copyOf(points);
    return Refusals.check(
        refusals -> {
          if (copy.isEmpty() || copy.size() > 1000) {
            refusals.add(
                copy.isEmpty() ? Refusal.Code.MISSING : Refusal.Code.OUT_OF_RANGE,
                "1 to 1000 points of the stretch curve",
                copy.isEmpty() ? "none" : String.valueOf(copy.size()));
          }
          for (int i = 0; i < copy.size(); i++) {
            Refusals at = refusals.at(i);
            StretchPoint point = copy.get(i);
            at.at("tension")
                .between(point.tension(), Kind.FORCE, CatchBounds.LEAST_FORCE, CatchBounds.FORCE);
            at.at("elongation").number(point.elongationFraction(), 1e-9, 10);
            if (i > 0 && !rises(copy.get(i - 1), point)) {
              at.add(
                  Refusal.Code.OUT_OF_RANGE,
                  "tension and elongation above those of the point before",
                  point.toString());
            }
          }
          refusals.throwIfAny();
          return new TabulatedStretch(copy);
        });
  }

  private static boolean rises(StretchPoint from, StretchPoint to) {
    return newtons(from) < newtons(to) && from.elongationFraction() < to.elongationFraction();
  }

  /**
   * Returns the points.
   *
   * @return the points without the origin, at least one
   */
  public List<StretchPoint> points() {
    return points;
  }

  /**
   * Returns the slope with which the curve goes on beyond its last point.
   *
   * @return tension over strain there, in newtons, above zero
   */
  public Quantity<Force> lastSlope() {
    return Si.of(kernel.lastSlope(), Kind.FORCE);
  }

  @Override
  public TabulatedStretch times(double stiffnessFactor) {
    double factor = StiffnessFactor.checked(stiffnessFactor);
    List<StretchPoint> scaled = new ArrayList<>();
    for (StretchPoint point : points) {
      scaled.add(
          StretchPoint.of(Si.of(factor * newtons(point), Kind.FORCE), point.elongationFraction()));
    }
    return of(scaled);
  }

  StretchKernel kernel() {
    return kernel;
  }

  StretchPoint last() {
    return points.get(points.size() - 1);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof TabulatedStretch s && points.equals(s.points);
  }

  @Override
  public int hashCode() {
    return points.hashCode();
  }

  @Override
  public String toString() {
    return "stretch through "
        + points.size()
        + " points to "
        + QuantityText.print(last().tension(), Kind.FORCE);
  }
}
