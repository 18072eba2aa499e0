package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.internal.drop.CatchKernel;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.units.Stiffness;
import org.jspecify.annotations.Nullable;

/**
 * The way of the rope in a catch: legs and the points between them, from the load to where the rope
 * is held.
 *
 * <p>Lengths are those when the rope is just taut, before it stretches. Wraps on a device where the
 * rope is held are no point: they decide when it slips, not how it stretches.
 *
 * <p>Immutable and thread-safe; equality is exact.
 *
 * <pre>{@code
 * CatchPath path = CatchPath.of(metres(2)).over(block, metres(13)).over(redirect, metres(4));
 * }</pre>
 */
public final class CatchPath {
  private final List<CatchPoint> points;
  private final List<Double> lengths;
  private final @Nullable Double loadEnd;
  private final @Nullable PointGive give;

  private CatchPath(
      List<CatchPoint> points,
      List<Double> lengths,
      @Nullable Double loadEnd,
      @Nullable PointGive give) {
    this.points = List.copyOf(points);
    this.lengths = List.copyOf(lengths);
    this.loadEnd = loadEnd;
    this.give = give;
  }

  /**
   * Obtains the path of one straight leg, from the load to where the rope is held.
   *
   * @param loadLeg its length when the rope is taut, from 0.001 mm to 1 km, not null
   * @return the path
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public static CatchPath of(Quantity<Length> loadLeg) {
    requireNonNull(loadLeg, "loadLeg");
    double length =
        Refusals.check(
            refusals ->
                refusals
                    .at("loadLeg")
                    .between(loadLeg, Kind.LENGTH, CatchBounds.LEAST_LEG, CatchBounds.LEG));
    return new CatchPath(List.of(), List.of(length), null, null);
  }

  /**
   * Returns this path with one more point at its end, and one more leg behind it.
   *
   * @param point the point, not null
   * @param nextLeg length of the leg behind it, from zero to 1 km, not null
   * @return the path
   * @throws org.boleline.explain.PlanRefusedException if the length is outside its range, or there
   *     are more than 24 points, or the give of all points was stated before
   */
  public CatchPath over(CatchPoint point, Quantity<Length> nextLeg) {
    requireNonNull(point, "point");
    requireNonNull(nextLeg, "nextLeg");
    List<CatchPoint> morePoints = new ArrayList<>(points);
    morePoints.add(point);
    List<Double> moreLengths = new ArrayList<>(lengths);
    moreLengths.add(
        Refusals.check(
            refusals -> {
              if (morePoints.size() > CatchBounds.POINTS) {
                refusals
                    .at("points")
                    .add(
                        Refusal.Code.OUT_OF_RANGE,
                        "at most " + CatchBounds.POINTS + " points",
                        String.valueOf(morePoints.size()));
              }
              if (give != null) {
                refusals
                    .at("give")
                    .add(
                        Refusal.Code.CONFLICT,
                        "all points first, then how they give way together",
                        give.toString());
              }
              return refusals.at("nextLeg").between(nextLeg, Kind.LENGTH, 0, CatchBounds.LEG);
            }));
    return new CatchPath(morePoints, moreLengths, loadEnd, null);
  }

  /**
   * Returns this path with a spring between rope and load, such as what ties the piece on.
   *
   * @param stiffness stiffness of the spring, from 1 mN/m to 1 TN/m, not null
   * @return the path
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public CatchPath withSpringAtLoad(Quantity<Stiffness> stiffness) {
    requireNonNull(stiffness, "stiffness");
    double value =
        Refusals.check(
            refusals ->
                refusals
                    .at("stiffness")
                    .between(
                        stiffness,
                        Kind.STIFFNESS,
                        CatchBounds.LEAST_STIFFNESS,
                        CatchBounds.STIFFNESS));
    return new CatchPath(points, lengths, value, give);
  }

  /**
   * Returns this path with points that give way together, as points on one stem do.
   *
   * <p>A spring of a point adds to it: a sling on a stem. No mass is no bound: the forces may be
   * higher or lower.
   *
   * @equation u = C * F; x adds sum of u_j . (a_j + b_j)
   * @validity linear; no mass; rope slips toward the load at every point
   * @source geometry and Hooke's law, derived
   * @accuracy rounding only
   * @param newGive give of all points of this path, not null
   * @return the path
   * @throws org.boleline.explain.PlanRefusedException if the give is of another number of points, a
   *     point does not know the directions of its legs (see {@link CatchPoint#between}), or the
   *     points would lift the load as the tension rises
   */
  public CatchPath withGive(PointGive newGive) {
    requireNonNull(newGive, "newGive");
    return Refusals.check(
        refusals -> {
          if (newGive.count() != points.size()) {
            refusals
                .at("give")
                .add(
                    Refusal.Code.CONFLICT,
                    "the give of " + points.size() + " points",
                    newGive.toString());
          }
          for (int j = 0; j < points.size(); j++) {
            if (points.get(j).directions() == null) {
              refusals
                  .at("points")
                  .at(j)
                  .add(
                      Refusal.Code.MISSING,
                      "a point between two legs of known direction",
                      "a turn alone");
            }
          }
          refusals.throwIfAny();
          double sum = CatchGive.of(points, products(), loadEnd, newGive).sum();
          if (sum < 0) {
            refusals
                .at("give")
                .add(
                    Refusal.Code.CONFLICT,
                    "points that let the load come down as the tension rises",
                    QuantityText.number(sum) + " m/N");
          }
          return new CatchPath(points, lengths, loadEnd, newGive);
        });
  }

  /**
   * Returns how the points give way together.
   *
   * @return the give; empty if each stands for itself
   */
  public Optional<PointGive> give() {
    return Optional.ofNullable(give);
  }

  /**
   * Returns the points, from the load on.
   *
   * @return the points; empty if the rope is one straight leg
   */
  public List<CatchPoint> points() {
    return points;
  }

  /**
   * Returns the lengths of the legs, from the load on.
   *
   * @return the lengths in metres, one more than points
   */
  public List<Quantity<Length>> legs() {
    return lengths.stream().map(length -> Si.of(length, Kind.LENGTH)).toList();
  }

  /**
   * Returns the stiffness of the spring between rope and load.
   *
   * @return the stiffness in newtons per metre; empty if there is none
   */
  public Optional<Quantity<Stiffness>> springAtLoad() {
    return Optional.ofNullable(loadEnd).map(value -> Si.of(value, Kind.STIFFNESS));
  }

  double[] lengthArray() {
    return lengths.stream().mapToDouble(Double::doubleValue).toArray();
  }

  double[] products() {
    return CatchKernel.products(points.stream().mapToDouble(CatchPoint::tensionRatio).toArray());
  }

  CatchGive gives() {
    return CatchGive.of(points, products(), loadEnd, give);
  }

  /** Whether points or load give way. */
  boolean hasSprings() {
    return loadEnd != null || pointsGive();
  }

  /** Whether a point gives way. */
  boolean pointsGive() {
    return give != null || points.stream().anyMatch(point -> point.springRate() != null);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CatchPath p
        && points.equals(p.points)
        && lengths.equals(p.lengths)
        && Objects.equals(loadEnd, p.loadEnd)
        && Objects.equals(give, p.give);
  }

  @Override
  public int hashCode() {
    return 31 * points.hashCode() + lengths.hashCode();
  }

  @Override
  public String toString() {
    return "legs of "
        + String.join(", ", lengths.stream().map(QuantityText::number).toList())
        + " m over "
        + points.size()
        + " points";
  }
}
