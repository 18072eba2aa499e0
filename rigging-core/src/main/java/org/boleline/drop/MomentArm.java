package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Moment about the base of a stem for each newton of the load leg, from the points that sit on that
 * stem.
 *
 * <p>Points stay where they are; own weight, and what else pulls on the stem, is not in it.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class MomentArm {
  private final Vector<Length> vector;

  private MomentArm(Vector<Length> vector) {
    this.vector = vector;
  }

  /**
   * Obtains the arm of points on a stem.
   *
   * @equation arm = sum of (r_j - base) x F_j / T
   * @validity rope that slips toward the load at every point
   * @source moments, derived
   * @accuracy rounding only
   * @param path the path, not null
   * @param base base of the stem, not null
   * @param positions where the points of the path are that sit on that stem, by their number from 0
   *     at the load, not null
   * @return the arm
   * @throws IndexOutOfBoundsException if the path has no point of that number
   * @throws org.boleline.explain.PlanRefusedException if one of these points does not know the
   *     directions of its legs (see {@link CatchPoint#between})
   */
  public static MomentArm of(
      CatchPath path, Vector<Length> base, Map<Integer, Vector<Length>> positions) {
    requireNonNull(path, "path");
    requireNonNull(base, "base");
    List<CatchPoint> points = path.points();
    double[] products = path.products();
    double[] from = base.in(Kind.LENGTH);
    double[] sum = new double[3];
    Refusals.check(
        refusals -> {
          for (Integer j : positions.keySet().stream().sorted().toList()) {
            double[] d = points.get(j).directions();
            if (d == null) {
              refusals
                  .at("points")
                  .at(j)
                  .add(
                      Refusal.Code.MISSING,
                      "a point between two legs of known direction",
                      "a turn alone");
              continue;
            }
            double[] at = requireNonNull(positions.get(j), "position").in(Kind.LENGTH);
            double[] r = new double[3];
            double[] f = new double[3];
            for (int c = 0; c < 3; c++) {
              r[c] = at[c] - from[c];
              f[c] = d[c] / products[j] + d[c + 3] / products[j + 1];
            }
            for (int c = 0; c < 3; c++) {
              int next = (c + 1) % 3;
              int last = (c + 2) % 3;
              sum[c] += r[next] * f[last] - r[last] * f[next];
            }
          }
          return sum;
        });
    return new MomentArm(Vector.ofSi(Kind.LENGTH, sum));
  }

  /**
   * Returns the moment for each newton of the load leg.
   *
   * @return the moment in newton metres for each newton: metres, along the axis of the moment
   */
  public Vector<Length> vector() {
    return vector;
  }

  /**
   * Returns the size of the moment for each newton of the load leg.
   *
   * @return the length in metres, zero or more
   */
  public Quantity<Length> length() {
    return vector.magnitude();
  }

  double metres() {
    return Si.value(length(), Kind.LENGTH, "length");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof MomentArm a && vector.equals(a.vector);
  }

  @Override
  public int hashCode() {
    return vector.hashCode();
  }

  @Override
  public String toString() {
    return "arm of " + QuantityText.print(length(), Kind.LENGTH);
  }
}
