package org.boleline.stem;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/** The centre line of a stem, from its base. */
public sealed interface StemShape {
  /**
   * Returns the length of the centre line.
   *
   * @return the length in metres, above zero
   */
  Quantity<Length> length();

  /**
   * Returns the length of the centre line as a number, for bulk use.
   *
   * @param kind {@link Kind#LENGTH}: names the unit at the place of use
   * @return the length in metres
   */
  double length(Kind<Length> kind);

  /**
   * Returns how far a station may miss the end of the stem and still be meant: rounding of units
   * for a stated length, a millimetre for a measured line, whose length nobody can state exactly.
   *
   * @return the allowance in metres
   */
  default Quantity<Length> allowance() {
    double length = length(Kind.LENGTH);
    return Si.of(Double.isNaN(length) ? 0 : Bounds.ROUNDING * length, Kind.LENGTH);
  }

  /** A straight stem. */
  final class Straight implements StemShape {
    private final Heading heading;
    private final double length;

    private Straight(Heading heading, double length) {
      this.heading = heading;
      this.length = length;
    }

    /**
     * Obtains a straight stem.
     *
     * @param heading where it points, its azimuth at most 100 rad either way, not null
     * @param length its length, from 0.01 m to 200 m, not null
     * @return the shape
     * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
     */
    public static Straight of(Heading heading, Quantity<Length> length) {
      requireNonNull(heading, "heading");
      requireNonNull(length, "length");
      return Refusals.check(refusals -> stated(heading, length, refusals));
    }

    /**
     * Obtains a straight stem as stated, for readers of files.
     *
     * @param heading where it points; a stand-in if that could not be had
     * @param length its length, or null if that could not be had
     * @param refusals notes what is wrong, at the shape
     * @return the shape
     */
    public static Straight stated(
        Heading heading, @Nullable Quantity<Length> length, Refusals refusals) {
      return new Straight(
          Bounds.heading(heading, refusals),
          refusals.at("length").between(length, Kind.LENGTH, Bounds.LEAST_LENGTH, Bounds.LENGTH));
    }

    /**
     * Returns where the stem points.
     *
     * @return the heading
     */
    public Heading heading() {
      return heading;
    }

    @Override
    public Quantity<Length> length() {
      return Si.of(length, Kind.LENGTH);
    }

    @Override
    public double length(Kind<Length> kind) {
      return length;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Straight s
          && heading.equals(s.heading)
          && Double.compare(length, s.length) == 0;
    }

    @Override
    public int hashCode() {
      return 31 * heading.hashCode() + Double.hashCode(length);
    }

    @Override
    public String toString() {
      return "straight, " + heading + ", " + QuantityText.print(length(), Kind.LENGTH);
    }
  }

  /** Where a stem points at a station. */
  final class Station {
    private final double at;
    private final Heading heading;

    private Station(double at, Heading heading) {
      this.at = at;
      this.heading = heading;
    }

    /**
     * Obtains a station.
     *
     * @param at where along the stem, zero or more, at most 200 m, not null
     * @param heading where the stem points there, its azimuth at most 100 rad either way, not null
     * @return the station
     * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
     */
    public static Station of(Quantity<Length> at, Heading heading) {
      requireNonNull(at, "at");
      requireNonNull(heading, "heading");
      return Refusals.check(refusals -> stated(at, heading, refusals));
    }

    /**
     * Obtains a station as stated, for readers of files.
     *
     * @param at where along the stem, or null if that could not be had
     * @param heading where the stem points; a stand-in if that could not be had
     * @param refusals notes what is wrong, at the station
     * @return the station
     */
    public static Station stated(
        @Nullable Quantity<Length> at, Heading heading, Refusals refusals) {
      return new Station(Bounds.station(at, refusals), Bounds.heading(heading, refusals));
    }

    /**
     * Returns where along the stem.
     *
     * @return the station in metres from the base
     */
    public Quantity<Length> at() {
      return Si.of(at, Kind.LENGTH);
    }

    /**
     * Returns where the stem points there.
     *
     * @return the heading
     */
    public Heading heading() {
      return heading;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Station s
          && Double.compare(at, s.at) == 0
          && heading.equals(s.heading);
    }

    @Override
    public int hashCode() {
      return 31 * Double.hashCode(at) + heading.hashCode();
    }

    @Override
    public String toString() {
      return QuantityText.print(at(), Kind.LENGTH) + ": " + heading;
    }
  }

  /**
   * A stem whose lean and azimuth are stated at stations and vary linearly in between.
   *
   * <p>Azimuths vary as the numbers they are: from 350 to 370 degrees the stem turns on by 20
   * degrees, from 350 to 10 it turns back by 340.
   */
  final class ByStations implements StemShape {
    private final List<Station> stations;

    private ByStations(List<Station> stations) {
      this.stations = List.copyOf(stations);
    }

    /**
     * Obtains a shape from stations.
     *
     * @param stations at least two, increasing by 1 mm or more, the first at zero and the last at
     *     the end of the stem, not null
     * @return the shape
     * @throws org.boleline.explain.PlanRefusedException if there are fewer, or they are not in
     *     order
     */
    public static ByStations of(List<Station> stations) {
      requireNonNull(stations, "stations");
      return Refusals.check(refusals -> stated(stations, refusals));
    }

    /**
     * Obtains a shape from stations as stated, for readers of files.
     *
     * @param stations the stations, as stated
     * @param refusals notes what is wrong, at the list
     * @return the shape
     */
    public static ByStations stated(List<Station> stations, Refusals refusals) {
      if (stations.size() < 2) {
        refusals.add(Refusal.Code.MISSING, "at least two stations", "" + stations.size());
      }
      for (int i = 0; i < stations.size(); i++) {
        double at = stations.get(i).at;
        if (i == 0 && at > 0) {
          Bounds.refuseOrder("the first station at 0 m", at, refusals.at(i));
        } else if (i > 0 && at < stations.get(i - 1).at + Bounds.SAME_PLACE) {
          Bounds.refuseOrder(
              "a station at least 1 mm above the one before it, "
                  + Bounds.metres(stations.get(i - 1).at),
              at,
              refusals.at(i));
        }
      }
      return new ByStations(stations);
    }

    /**
     * Returns the stations.
     *
     * @return at least two, in order
     */
    public List<Station> stations() {
      return stations;
    }

    /**
     * Returns where the stations are, for bulk use.
     *
     * @param kind {@link Kind#LENGTH}: names the unit at the place of use
     * @return a new array in metres, increasing from zero
     */
    public double[] stations(Kind<Length> kind) {
      return stations.stream().mapToDouble(s -> s.at).toArray();
    }

    /**
     * Returns the leans at the stations, for bulk use.
     *
     * @param kind {@link Kind#ANGLE}: names the unit at the place of use
     * @return a new array in radians
     */
    public double[] leans(Kind<Angle> kind) {
      return stations.stream().mapToDouble(s -> Si.value(s.heading.lean(), kind, "lean")).toArray();
    }

    /**
     * Returns the azimuths at the stations, for bulk use.
     *
     * @param kind {@link Kind#ANGLE}: names the unit at the place of use
     * @return a new array in radians
     */
    public double[] azimuths(Kind<Angle> kind) {
      return stations.stream()
          .mapToDouble(s -> Si.value(s.heading.azimuth(), kind, "azimuth"))
          .toArray();
    }

    @Override
    public Quantity<Length> length() {
      return Si.of(length(Kind.LENGTH), Kind.LENGTH);
    }

    @Override
    public double length(Kind<Length> kind) {
      return stations.isEmpty() ? Double.NaN : stations.get(stations.size() - 1).at;
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof ByStations s && stations.equals(s.stations);
    }

    @Override
    public int hashCode() {
      return stations.hashCode();
    }

    @Override
    public String toString() {
      return "by stations " + stations;
    }
  }

  /**
   * A measured centre line: points joined by straight pieces, the first of them the base.
   *
   * <p>The points may be positions in the plan's axes or counted from the base: the first one tells
   * which, since it is the base itself.
   */
  final class ByPoints implements StemShape {
    private final List<Vector<Length>> points;
    private final double length;

    private ByPoints(List<Vector<Length>> points, double length) {
      this.points = List.copyOf(points);
      this.length = length;
    }

    /**
     * Obtains a measured centre line.
     *
     * @param points at least two, from the base upward, two neighbours at least 1 mm apart, not
     *     null
     * @return the shape
     * @throws org.boleline.explain.PlanRefusedException if there are fewer, or two neighbours are
     *     at the same place
     */
    public static ByPoints of(List<Vector<Length>> points) {
      requireNonNull(points, "points");
      return Refusals.check(refusals -> stated(points, refusals));
    }

    /**
     * Obtains a measured centre line as stated, for readers of files.
     *
     * @param points the points as stated, null where one could not be had
     * @param refusals notes what is wrong, at the list
     * @return the shape
     */
    public static ByPoints stated(List<@Nullable Vector<Length>> points, Refusals refusals) {
      if (points.size() < 2) {
        refusals.add(Refusal.Code.MISSING, "at least two points", "" + points.size());
      }
      List<Vector<Length>> known = new ArrayList<>();
      double length = points.isEmpty() ? Double.NaN : 0;
      @Nullable Vector<Length> before = null;
      for (int i = 0; i < points.size(); i++) {
        Vector<Length> point = Bounds.position(points.get(i), refusals.at(i));
        if (points.get(i) != null) {
          known.add(point);
        }
        if (i > 0) {
          double step =
              before == null || points.get(i) == null ? Double.NaN : distance(before, point);
          if (step < Bounds.SAME_PLACE) {
            refusals
                .at(i)
                .add(
                    Refusal.Code.SAME_PLACE,
                    "a point at least 1 mm from the one before",
                    point.toString());
          }
          length += step;
        }
        before = points.get(i);
      }
      if (length > Bounds.LENGTH) {
        refusals.add(
            Refusal.Code.OUT_OF_RANGE,
            "a centre line of at most " + Bounds.metres(Bounds.LENGTH),
            Bounds.metres(length));
      }
      return new ByPoints(known, length);
    }

    private static double distance(Vector<Length> a, Vector<Length> b) {
      double[] p = a.in(Kind.LENGTH);
      double[] q = b.in(Kind.LENGTH);
      return Math.hypot(Math.hypot(q[0] - p[0], q[1] - p[1]), q[2] - p[2]);
    }

    /** Tells whether the first point is the base, or zero because points count from the base. */
    boolean startsAt(Vector<Length> base) {
      return points.isEmpty()
          || points.get(0).equals(Vector.ofSi(Kind.LENGTH, 0, 0, 0))
          || distance(points.get(0), base) <= Bounds.SAME_PLACE;
    }

    /**
     * Returns the points as stated.
     *
     * @return at least two, from the base upward
     */
    public List<Vector<Length>> points() {
      return points;
    }

    /**
     * Returns the points counted from the first one, for bulk use.
     *
     * @param kind {@link Kind#LENGTH}: names the unit at the place of use
     * @return a new array of x, y and z in metres for each point; the first is zero
     */
    public double[][] pointsFromBase(Kind<Length> kind) {
      double[][] from = new double[points.size()][];
      double[] first = points.get(0).in(kind);
      for (int i = 0; i < from.length; i++) {
        double[] p = points.get(i).in(kind);
        from[i] = new double[] {p[0] - first[0], p[1] - first[1], p[2] - first[2]};
      }
      return from;
    }

    @Override
    public Quantity<Length> length() {
      return Si.of(length, Kind.LENGTH);
    }

    @Override
    public double length(Kind<Length> kind) {
      return length;
    }

    @Override
    public Quantity<Length> allowance() {
      return Amounts.metres(Bounds.SAME_PLACE);
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof ByPoints p && points.equals(p.points);
    }

    @Override
    public int hashCode() {
      return points.hashCode();
    }

    @Override
    public String toString() {
      return "by points " + points;
    }
  }
}
