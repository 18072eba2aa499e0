package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.Arrays;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;

/**
 * How all points of a path give way together: a force on one moves the others as well, as points on
 * one stem do.
 *
 * <p>A matrix: the movement of each point in three components of space, for a force on each point
 * in the same components. Row 3 j + c is component c of point j, from the load on; columns alike.
 * Linear, and without mass: no bound for a real stem.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class PointGive {
  /** How far the matrix may be off its mirror image, and off giving way, of its greatest number. */
  private static final double SAME = 1e-9;

  private final double[][] compliance;

  private PointGive(double[][] compliance) {
    this.compliance = compliance;
  }

  /**
   * Obtains the give of points.
   *
   * @param compliance three rows and three columns for each point: numbers in movement over force,
   *     each at most 1 m/N; not null
   * @param movement unit of movement of the numbers, such as one millimetre, not null
   * @param force unit of force of the numbers, such as one kilonewton, not null
   * @return the give
   * @throws org.boleline.explain.PlanRefusedException if a unit is not above zero, the matrix is
   *     not square with three rows for each of 1 to 24 points, a number is not finite or outside
   *     its range, the matrix is not symmetric (to 1e-9 of its greatest number), or some force
   *     would move points against itself
   */
  public static PointGive of(
      double[][] compliance, Quantity<Length> movement, Quantity<Force> force) {
    requireNonNull(compliance, "compliance");
    requireNonNull(movement, "movement");
    requireNonNull(force, "force");
    return Refusals.check(
        refusals -> {
          double unit =
              refusals.at("movement").aboveZero(movement, Kind.LENGTH, CatchBounds.LEG)
                  / refusals.at("force").aboveZero(force, Kind.FORCE, CatchBounds.FORCE);
          refusals.throwIfAny();
          Refusals at = refusals.at("compliance");
          int size = compliance.length;
          if (size == 0 || size % 3 != 0 || size > 3 * CatchBounds.POINTS) {
            at.add(
                Refusal.Code.OUT_OF_RANGE,
                "three rows for each of 1 to " + CatchBounds.POINTS + " points",
                size + " rows");
          }
          double[][] si = new double[size][];
          for (int i = 0; i < size; i++) {
            si[i] = compliance[i].clone();
            if (si[i].length != size) {
              at.at(i).add(Refusal.Code.OUT_OF_RANGE, size + " numbers", si[i].length + " numbers");
            }
            for (int j = 0; j < si[i].length; j++) {
              si[i][j] =
                  at.at(i).at(j).number(si[i][j] * unit, -CatchBounds.GIVE, CatchBounds.GIVE);
            }
          }
          refusals.throwIfAny();
          shape(si, at);
          return new PointGive(si);
        });
  }

  /** Notes what is not symmetric or gives way against the force. */
  private static void shape(double[][] c, Refusals at) {
    double most = 0;
    double off = 0;
    for (int i = 0; i < c.length; i++) {
      for (int j = 0; j < c.length; j++) {
        most = Math.max(most, Math.abs(c[i][j]));
        off = Math.max(off, Math.abs(c[i][j] - c[j][i]));
      }
    }
    if (off > SAME * most) {
      at.add(
          Refusal.Code.CONFLICT,
          "a matrix that is symmetric: one point moves under a force on another as that one does"
              + " under the same force on it",
          "numbers that differ by " + QuantityText.number(off) + " m/N");
    }
    if (most == 0 || at.hasAny()) {
      return;
    }
    double[][] mean = new double[c.length][c.length];
    for (int i = 0; i < c.length; i++) {
      for (int j = 0; j < c.length; j++) {
        mean[i][j] = (c[i][j] / 2 + c[j][i] / 2) / most;
      }
    }
    double least = 0;
    for (double value :
        new EigenDecomposition(new Array2DRowRealMatrix(mean, false)).getRealEigenvalues()) {
      least = Math.min(least, value);
    }
    if (least < -SAME * c.length) {
      at.add(
          Refusal.Code.CONFLICT,
          "points that no force moves against itself: a positive semidefinite matrix",
          "an eigenvalue of " + QuantityText.number(least * most) + " m/N");
    }
    for (int i = 0; i < c.length; i++) {
      for (int j = 0; j < c.length; j++) {
        c[i][j] = mean[i][j] * most;
      }
    }
  }

  /**
   * Returns how many points it is of.
   *
   * @return the count, 1 or more
   */
  public int count() {
    return compliance.length / 3;
  }

  /** In metres per newton; not to be changed. */
  double[][] matrix() {
    return compliance;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PointGive g && Arrays.deepEquals(compliance, g.compliance);
  }

  @Override
  public int hashCode() {
    return Arrays.deepHashCode(compliance);
  }

  @Override
  public String toString() {
    return "give of " + count() + " points together";
  }
}
