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

  private CatchPath(List<CatchPoint> points, List<Double> lengths, @Nullable Double loadEnd) {
    this.points = List.copyOf(points);
    this.lengths = List.copyOf(lengths);
    this.loadEnd = loadEnd;
  }

  /**
   * Obtains the path of one straight leg, from the load to where the rope is held.
   *
   * @param loadLeg its length when the rope is taut, above zero, at most 1 km, not null
   * @return the path
   * @throws org.boleline.explain.PlanRefusedException if it is outside its range
   */
  public static CatchPath of(Quantity<Length> loadLeg) {
    requireNonNull(loadLeg, "loadLeg");
    double length =
        Refusals.check(
            refusals -> refusals.at("loadLeg").aboveZero(loadLeg, Kind.LENGTH, CatchBounds.LEG));
    return new CatchPath(List.of(), List.of(length), null);
  }

  /**
   * Returns this path with one more point at its end, and one more leg behind it.
   *
   * @param point the point, not null
   * @param nextLeg length of the leg behind it, from zero to 1 km, not null
   * @return the path
   * @throws org.boleline.explain.PlanRefusedException if the length is outside its range, or there
   *     are more than 24 points
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
              return refusals.at("nextLeg").between(nextLeg, Kind.LENGTH, 0, CatchBounds.LEG);
            }));
    return new CatchPath(morePoints, moreLengths, loadEnd);
  }

  /**
   * Returns this path with a spring between rope and load, such as what ties the piece on.
   *
   * @param stiffness stiffness of the spring, above zero, at most 1 TN/m, not null
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
                    .aboveZero(stiffness, Kind.STIFFNESS, CatchBounds.STIFFNESS));
    return new CatchPath(points, lengths, value);
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

  @Nullable Double loadSpring() {
    return loadEnd;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CatchPath p
        && points.equals(p.points)
        && lengths.equals(p.lengths)
        && Objects.equals(loadEnd, p.loadEnd);
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
