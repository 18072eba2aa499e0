package org.boleline.study;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Length;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.stem.StemShape;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;

/**
 * What a cut leaves of the centre line of a stem, and where the stem points at the cut.
 *
 * @param shape the centre line from the base to the cut
 * @param heading where the stem points at the cut
 */
record Stump(StemShape shape, Heading heading) {
  /** Stations of a stem, and points of its line, are no closer than this, in metres. */
  private static final double SAME_PLACE = 1e-3;

  static Stump of(StemShape shape, double at) {
    if (shape instanceof StemShape.Straight straight) {
      return new Stump(
          StemShape.Straight.of(straight.heading(), Amounts.metres(at)), straight.heading());
    }
    return shape instanceof StemShape.ByStations by
        ? byStations(by, at)
        : byPoints((StemShape.ByPoints) shape, at);
  }

  private static Stump byStations(StemShape.ByStations shape, double at) {
    double[] stations = shape.stations(Kind.LENGTH);
    Heading heading =
        Heading.of(
            Amounts.radians(linear(stations, shape.leans(Kind.ANGLE), at)),
            Amounts.radians(linear(stations, shape.azimuths(Kind.ANGLE), at)));
    List<StemShape.Station> left = new ArrayList<>();
    for (int i = 0; i < stations.length && (i == 0 || stations[i] <= at - SAME_PLACE); i++) {
      left.add(shape.stations().get(i));
    }
    left.add(StemShape.Station.of(Amounts.metres(at), heading));
    return new Stump(StemShape.ByStations.of(left), heading);
  }

  private static Stump byPoints(StemShape.ByPoints shape, double at) {
    List<Vector<Length>> points = shape.points();
    List<Vector<Length>> left = new ArrayList<>(points.subList(0, 1));
    double along = 0;
    int i = 1;
    double[] from = points.get(0).in(Kind.LENGTH);
    double[] to = points.get(1).in(Kind.LENGTH);
    double length = distance(from, to);
    while (i + 1 < points.size() && along + length < at) {
      left.add(points.get(i));
      along += length;
      i++;
      from = to;
      to = points.get(i).in(Kind.LENGTH);
      length = distance(from, to);
    }
    if (at - along < SAME_PLACE && left.size() > 1) {
      left.remove(left.size() - 1);
    }
    double share = (at - along) / length;
    double x = to[0] - from[0];
    double y = to[1] - from[1];
    double z = to[2] - from[2];
    left.add(
        Vector.ofSi(Kind.LENGTH, from[0] + share * x, from[1] + share * y, from[2] + share * z));
    return new Stump(
        StemShape.ByPoints.of(left),
        Heading.of(
            Amounts.radians(Math.atan2(Math.hypot(x, y), z)), Amounts.radians(Math.atan2(y, x))));
  }

  private static double distance(double[] a, double[] b) {
    return Math.hypot(Math.hypot(b[0] - a[0], b[1] - a[1]), b[2] - a[2]);
  }

  /** A value between those at places in order, as on a straight line. */
  static double linear(double[] x, double[] y, double at) {
    for (int i = 0; i + 1 < x.length; i++) {
      if (at <= x[i + 1] && x[i + 1] > x[i]) {
        return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
      }
    }
    return y[y.length - 1];
  }
}
