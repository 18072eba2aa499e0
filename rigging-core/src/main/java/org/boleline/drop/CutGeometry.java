package org.boleline.drop;

import static java.util.Objects.requireNonNull;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Step;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.wood.Log;
import org.jspecify.annotations.Nullable;

/**
 * How far a piece falls that is cut above the point that holds it.
 *
 * <p>The piece goes over, drops past the point and comes to hang below it: from its tie, with its
 * balance point plumb below, turned over if it was tied below its balance point. The fall is that
 * of the balance point, from its place before the cut to its place when the rope has just come taut
 * in that posture. It is far more than the distance from the cut to the point.
 *
 * <p>The piece stood on the axis of a straight stem. The sling hangs plumb from its attachment, as
 * the load pulls it; nothing runs through the point, and the rope has not stretched yet. If the
 * rope draws the point up before the cut, what counts is still the place where it hangs: the tail,
 * led straight down, gives that rope to the load leg as the point comes down.
 *
 * <p>Positions are from the ground plumb below the cut; z is up. Immutable and thread-safe;
 * equality is exact, on what was stated.
 *
 * <pre>{@code
 * CutGeometry cut =
 *     CutGeometry.builder()
 *         .cutHeight(metres(13.5))
 *         .piece(Log.of(metres(1.5), metres(0.265), metres(0.24), kilogramsPerCubicMetre(780)))
 *         .tie(metres(0.3))
 *         .attachment(metres(0.2))
 *         .sling(metres(0.2))
 *         .build();
 * cut.fall(); // 2.25 m
 * cut.groundClearance(); // 11.2 m
 * cut.fallFactor(metres(12.9)); // 0.17
 * }</pre>
 */
public final class CutGeometry {
  private static final double MOST_LENGTH = 200;
  private static final double MOST_ARM = 20;

  /** What was stated, in SI units. */
  private record Stated(
      double height,
      double length,
      double balance,
      double tie,
      double attachment,
      double sling,
      double offset,
      double slack,
      double lean,
      double azimuth) {}

  private final Stated stated;
  private final Step depth;
  private final Step level;
  private final Step distance;
  private final Step leg;
  private final Step tieFall;
  private final Step fall;
  private final Step reach;
  private final Step clearance;

  private CutGeometry(Stated s) {
    stated = s;
    depth = CutFormulas.POINT_DEPTH.step(s.attachment, s.offset, s.sling, s.lean);
    level = CutFormulas.LEVEL_DISTANCE.step(s.tie, s.attachment, s.offset, s.lean);
    distance = CutFormulas.STRAIGHT_DISTANCE.step(s.tie, s.lean, depth.result(), level.result());
    leg = CutFormulas.LOAD_LEG.step(distance.result(), s.slack);
    tieFall = CutFormulas.TIE_FALL.step(s.tie, s.lean, depth.result(), leg.result());
    fall = CutFormulas.BALANCE_FALL.step(s.balance, s.tie, s.lean, depth.result(), leg.result());
    reach = CutFormulas.REACH_BELOW_TIE.step(s.length, s.tie, s.balance);
    clearance =
        CutFormulas.GROUND_CLEARANCE.step(s.height, depth.result(), leg.result(), reach.result());
  }

  /**
   * Returns a builder that has nothing stated yet.
   *
   * @return the builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Returns how far the balance point falls until the rope is taut and the piece hangs.
   *
   * @equation h = c * cos(i) + y + l + |c - t|; on a plumb stem 2 * (b + s + max(c, t)) + e (CUT-6,
   *     CUT-7)
   * @validity as the class says: straight piece and stem, hanging at rest, rope not stretched
   * @source derived: places before the cut and in the hanging posture
   * @accuracy rounding only
   * @return the fall in metres, at least the slack
   */
  public Quantity<Length> fall() {
    return Si.of(fall.result(), Kind.LENGTH);
  }

  /**
   * Returns how far the tie falls until the rope is taut.
   *
   * @return the fall in metres, at least the slack
   */
  public Quantity<Length> tieFall() {
    return Si.of(tieFall.result(), Kind.LENGTH);
  }

  /**
   * Returns the rope between the point and the tie: their straight distance before the cut and the
   * slack.
   *
   * @return the length in metres, at least the slack
   */
  public Quantity<Length> loadLeg() {
    return Si.of(leg.result(), Kind.LENGTH);
  }

  /**
   * Returns how far the point is below the cut.
   *
   * @return the plumb distance in metres; negative above the cut
   */
  public Quantity<Length> pointDepth() {
    return Si.of(depth.result(), Kind.LENGTH);
  }

  /**
   * Returns how the piece hangs in the end.
   *
   * @return the posture
   */
  public CutPosture posture() {
    int sign = Double.compare(stated.tie, stated.balance);
    return sign < 0 ? CutPosture.TURNED_OVER : sign > 0 ? CutPosture.UPRIGHT : CutPosture.ANY;
  }

  /**
   * Returns how high the lowest end of the hanging piece is over the ground when the rope has just
   * come taut.
   *
   * <p>Stretch of rope and rope that is let run come off it, and so does what the stem bends.
   *
   * @return the height in metres; negative if the piece comes to the ground first
   */
  public Quantity<Length> groundClearance() {
    return Si.of(clearance.result(), Kind.LENGTH);
  }

  /**
   * Returns the fall over the rope that catches it.
   *
   * @equation f = h / R (CUT-10)
   * @validity friction at points between left out: with it less of the rope stretches
   * @source definition of the fall factor, with the fall of the balance point
   * @accuracy rounding only
   * @param ropeInService rope from the tie to where it is held, at least the load leg, above zero,
   *     at most 1 km, not null
   * @return the fall factor
   * @throws org.boleline.explain.PlanRefusedException if the length is outside its range
   */
  public double fallFactor(Quantity<Length> ropeInService) {
    return fallFactorStep(ropeInService).result();
  }

  /**
   * Returns the step from the fall to the fall factor.
   *
   * @param ropeInService as for {@link #fallFactor}
   * @return the step
   * @throws org.boleline.explain.PlanRefusedException as {@link #fallFactor}
   */
  public Step fallFactorStep(Quantity<Length> ropeInService) {
    requireNonNull(ropeInService, "ropeInService");
    double rope =
        Refusals.check(
            refusals -> {
              Refusals at = refusals.at("ropeInService");
              double length = at.aboveZero(ropeInService, Kind.LENGTH, 1000);
              if (length < leg.result()) {
                at.add(
                    Refusal.Code.CONFLICT,
                    "at least the rope from the point to the tie, " + metres(leg.result()),
                    metres(length));
              }
              return length;
            });
    return CutFormulas.FALL_FACTOR.step(fall.result(), rope);
  }

  /**
   * Returns where the point hangs.
   *
   * @return its position, in metres
   */
  public Vector<Length> point() {
    return place(
        stated.tie * Math.sin(stated.lean) - level.result(), stated.height - depth.result());
  }

  /**
   * Returns where the tie is before the cut.
   *
   * @return its position, in metres
   */
  public Vector<Length> tieBefore() {
    return alongTheStem(stated.tie);
  }

  /**
   * Returns where the tie is when the piece hangs.
   *
   * @return its position, in metres
   */
  public Vector<Length> tieAfter() {
    return belowThePoint(leg.result());
  }

  /**
   * Returns where the balance point is before the cut.
   *
   * @return its position, in metres
   */
  public Vector<Length> balanceBefore() {
    return alongTheStem(stated.balance);
  }

  /**
   * Returns where the balance point is when the piece hangs.
   *
   * @return its position, in metres
   */
  public Vector<Length> balanceAfter() {
    return belowThePoint(leg.result() + Math.abs(stated.balance - stated.tie));
  }

  private Vector<Length> alongTheStem(double at) {
    return place(at * Math.sin(stated.lean), stated.height + at * Math.cos(stated.lean));
  }

  private Vector<Length> belowThePoint(double distance) {
    double[] point = point().in(Kind.LENGTH);
    return Vector.ofSi(Kind.LENGTH, point[0], point[1], point[2] - distance);
  }

  private Vector<Length> place(double towardTheLean, double height) {
    return Vector.ofSi(
        Kind.LENGTH,
        towardTheLean * Math.cos(stated.azimuth),
        towardTheLean * Math.sin(stated.azimuth),
        height);
  }

  /**
   * Returns the steps that gave the numbers: depth of the point, level and straight distance, load
   * leg, fall of the tie, fall of the balance point, reach below the tie, clearance.
   *
   * @return eight steps
   */
  public List<Step> steps() {
    return List.of(depth, level, distance, leg, tieFall, fall, reach, clearance);
  }

  private static String metres(double value) {
    return QuantityText.print(Si.of(value, Kind.LENGTH), Kind.LENGTH);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof CutGeometry c && stated.equals(c.stated);
  }

  @Override
  public int hashCode() {
    return stated.hashCode();
  }

  @Override
  public String toString() {
    return "fall of " + metres(fall.result()) + ", " + posture();
  }

  /** Builds a cut geometry. Belongs to one thread. */
  public static final class Builder {
    private @Nullable Double cutHeight;
    private @Nullable Double length;
    private @Nullable Double balance;
    private @Nullable Double tie;
    private @Nullable Double attachment;
    private double sling;
    private double offset;
    private double slack;
    private double lean;
    private double azimuth;

    private Builder() {}

    /**
     * States the height of the cut.
     *
     * @param height over the ground, zero to 200 m, not null
     * @return this builder
     */
    public Builder cutHeight(Quantity<Length> height) {
      cutHeight = Si.value(height, Kind.LENGTH, "cutHeight");
      return this;
    }

    /**
     * States the piece by a log that stood with its large end on the cut.
     *
     * @param log the log; gives length and balance point, of the wood alone, not null
     * @return this builder
     */
    public Builder piece(Log log) {
      return piece(log.length(), log.balancePoint());
    }

    /**
     * States the piece.
     *
     * @param length from the cut to the far end, above zero, at most 200 m, not null
     * @param balancePoint centre of gravity above the cut, along the piece, zero to its length, not
     *     null
     * @return this builder
     */
    public Builder piece(Quantity<Length> length, Quantity<Length> balancePoint) {
      this.length = Si.value(length, Kind.LENGTH, "length");
      balance = Si.value(balancePoint, Kind.LENGTH, "balancePoint");
      return this;
    }

    /**
     * States where the rope is tied to the piece.
     *
     * @param tie above the cut, along the piece, zero to its length, not null
     * @return this builder
     */
    public Builder tie(Quantity<Length> tie) {
      this.tie = Si.value(tie, Kind.LENGTH, "tie");
      return this;
    }

    /**
     * States where the point is fixed to the stem: its sling, or the point itself without one.
     *
     * @param attachment below the cut, along the stem, zero to 200 m, not null
     * @return this builder
     */
    public Builder attachment(Quantity<Length> attachment) {
      this.attachment = Si.value(attachment, Kind.LENGTH, "attachment");
      return this;
    }

    /**
     * States the sling that the point hangs on; without this there is none.
     *
     * @param sling from the attachment to where the rope bears, zero to 20 m, not null
     * @return this builder
     */
    public Builder sling(Quantity<Length> sling) {
      this.sling = Si.value(sling, Kind.LENGTH, "sling");
      return this;
    }

    /**
     * States a rigid arm from the axis of the stem to the attachment, square to it in the plumb
     * plane of the lean; without this the attachment is on the axis.
     *
     * @param offset positive toward the underside (on a plumb stem: toward the azimuth), negative
     *     toward the upper side, at most 20 m either way, not null
     * @return this builder
     */
    public Builder offset(Quantity<Length> offset) {
      this.offset = Si.value(offset, Kind.LENGTH, "offset");
      return this;
    }

    /**
     * States the slack of the rope between point and tie before the cut; without this there is
     * none.
     *
     * @param slack length of that rope less the straight distance, zero to 200 m, not null
     * @return this builder
     */
    public Builder slack(Quantity<Length> slack) {
      this.slack = Si.value(slack, Kind.LENGTH, "slack");
      return this;
    }

    /**
     * States where stem and piece point; without this they are plumb.
     *
     * @param heading lean, at most a right angle, and azimuth, not null
     * @return this builder
     */
    public Builder heading(Heading heading) {
      lean = Si.value(heading.lean(), Kind.ANGLE, "lean");
      azimuth = Si.value(heading.azimuth(), Kind.ANGLE, "azimuth");
      return this;
    }

    /**
     * Returns the cut geometry.
     *
     * @return the geometry
     * @throws org.boleline.explain.PlanRefusedException if something is missing or outside its
     *     range: with all reasons
     */
    public CutGeometry build() {
      return new CutGeometry(Refusals.check(this::stated));
    }

    private Stated stated(Refusals refusals) {
      double n = refusals.at("length").aboveZero(length(length), Kind.LENGTH, MOST_LENGTH);
      double most = Double.isNaN(n) ? MOST_LENGTH : n;
      return new Stated(
          from(refusals.at("cutHeight"), cutHeight, 0, MOST_LENGTH),
          n,
          from(refusals.at("balancePoint"), balance, 0, most),
          from(refusals.at("tie"), tie, 0, most),
          from(refusals.at("attachment"), attachment, 0, MOST_LENGTH),
          from(refusals.at("sling"), sling, 0, MOST_ARM),
          from(refusals.at("offset"), offset, -MOST_ARM, MOST_ARM),
          from(refusals.at("slack"), slack, 0, MOST_LENGTH),
          refusals.at("lean").between(Si.of(lean, Kind.ANGLE), Kind.ANGLE, 0, Math.PI / 2),
          azimuth);
    }

    private static double from(
        Refusals refusals, @Nullable Double value, double least, double most) {
      return refusals.between(length(value), Kind.LENGTH, least, most);
    }

    private static @Nullable Quantity<Length> length(@Nullable Double value) {
      return value == null ? null : Si.of(value, Kind.LENGTH);
    }
  }
}
