package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.List;
import org.boleline.explain.Source;
import org.boleline.units.QuantityText;

/**
 * How many pulls of one force a rope is said to take to the end of its life. The user states it and
 * answers for it; the library has none.
 *
 * <p>Immutable and thread-safe.
 */
public final class LifeCurve {
  /**
   * A point of the curve.
   *
   * @param strengthShare force over the stated breaking strength, above 0, to 1
   * @param pullCount pulls to the end of life at that force, 1 or more
   */
  public record Point(double strengthShare, double pullCount) {}

  private final List<Point> points;
  private final Source source;

  private LifeCurve(List<Point> points, Source source) {
    this.points = List.copyOf(points);
    this.source = requireNonNull(source, "source");
  }

  /**
   * Obtains a curve.
   *
   * @param points two or more points; forces rise, pulls fall, not null
   * @param source who says so, not null
   * @return the curve
   * @throws IllegalArgumentException if there are fewer points, or they are not in order or outside
   *     their ranges
   */
  public static LifeCurve of(List<Point> points, Source source) {
    boolean good = points.size() >= 2;
    for (int i = 0; i < points.size(); i++) {
      Point point = points.get(i);
      good &=
          point.strengthShare() > 0
              && point.strengthShare() <= 1
              && point.pullCount() >= 1
              && Double.isFinite(point.pullCount())
              && (i == 0 || isBelow(points.get(i - 1), point));
    }
    if (!good) {
      throw new IllegalArgumentException(
          "points: wants two or more, forces rising to 1 at most, pulls falling to 1 at least, got "
              + points);
    }
    return new LifeCurve(points, source);
  }

  private static boolean isBelow(Point before, Point point) {
    return point.strengthShare() > before.strengthShare() && point.pullCount() < before.pullCount();
  }

  /**
   * Returns who states the curve.
   *
   * @return the source
   */
  public Source source() {
    return source;
  }

  /**
   * Returns the share of the life that one pull uses. Below the first point a pull counts as one at
   * the first point, which is more than it does.
   *
   * @equation N = N_1 * (N_2 / N_1)^((w - w_1) / (w_2 - w_1)); D = 1 / N (RNG-9, RNG-8,
   *     docs/theory/ranges.md)
   * @validity up to the last point of the curve
   * @source the user's curve
   * @accuracy as the curve's
   * @param strengthShare force over the stated breaking strength, zero or more
   * @return the share; none above the last point
   * @throws IllegalArgumentException if the force is below zero or not finite
   */
  public Found damage(double strengthShare) {
    if (!(strengthShare >= 0 && Double.isFinite(strengthShare))) {
      throw new IllegalArgumentException("strengthShare: wants zero or more, got " + strengthShare);
    }
    Point first = points.get(0);
    if (strengthShare <= first.strengthShare()) {
      return damageOf(first.pullCount());
    }
    for (Point second : points.subList(1, points.size())) {
      if (strengthShare <= second.strengthShare()) {
        return damageOf(
            RangeFormulas.PULLS_BETWEEN.value(
                strengthShare,
                first.strengthShare(),
                second.strengthShare(),
                first.pullCount(),
                second.pullCount()));
      }
      first = second;
    }
    return Found.none(
        "the curve ends at "
            + QuantityText.number(first.strengthShare(), 3)
            + " of the strength, this pull is "
            + QuantityText.number(strengthShare, 3));
  }

  private static Found damageOf(double pulls) {
    return Found.of(Figure.ofRatio(RangeFormulas.DAMAGE.value(pulls)));
  }

  @Override
  public String toString() {
    return points + " by " + source.id();
  }
}
