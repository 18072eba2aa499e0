package org.boleline.statics;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.boleline.internal.rod.Rod;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** Direction and diameters of a stem at any station, in SI, for the kernels. */
final class StemGeometry implements Rod.Profile {
  /** Stations nearer than this are one, m: between them there would be next to no stem. */
  private static final double ROUNDING = 1e-9;

  private final double[] stations;
  private final double[] outer;
  private final double[] cavity;
  private final double[] kinks;
  private final Centre centre;

  /** Direction of the given shape. */
  private interface Centre {
    /** Lean and azimuth at a station, on the side of a second one. */
    void heading(double at, double side, double[] out);

    /** Unit tangent at a station, on the side of a second one. */
    default void tangent(double at, double side, double[] out) {
      heading(at, side, out);
      double lean = out[0];
      double azimuth = out[1];
      out[0] = Math.sin(lean) * Math.cos(azimuth);
      out[1] = Math.sin(lean) * Math.sin(azimuth);
      out[2] = Math.cos(lean);
    }
  }

  StemGeometry(Stem stem) {
    Diameters diameters = stem.diameters();
    stations = diameters.stations(Kind.LENGTH);
    outer = diameters.outer(Kind.LENGTH);
    cavity = diameters.cavity(Kind.LENGTH);
    StemShape shape = stem.shape();
    if (shape instanceof StemShape.Straight straight) {
      kinks = new double[0];
      double lean = Si.value(straight.heading().lean(), Kind.ANGLE, "lean");
      double azimuth = Si.value(straight.heading().azimuth(), Kind.ANGLE, "azimuth");
      centre =
          (at, side, out) -> {
            out[0] = lean;
            out[1] = azimuth;
          };
    } else if (shape instanceof StemShape.ByStations by) {
      kinks = by.stations(Kind.LENGTH);
      double[] leans = by.leans(Kind.ANGLE);
      double[] azimuths = by.azimuths(Kind.ANGLE);
      centre =
          (at, side, out) -> {
            int i = segment(kinks, side);
            double x = (at - kinks[i]) / (kinks[i + 1] - kinks[i]);
            out[0] = leans[i] + x * (leans[i + 1] - leans[i]);
            out[1] = azimuths[i] + x * (azimuths[i + 1] - azimuths[i]);
          };
    } else {
      StemShape.ByPoints points = (StemShape.ByPoints) shape;
      double[][] p = points.pointsFromBase(Kind.LENGTH);
      kinks = new double[p.length];
      double[][] unit = new double[p.length - 1][3];
      for (int i = 0; i + 1 < p.length; i++) {
        double x = p[i + 1][0] - p[i][0];
        double y = p[i + 1][1] - p[i][1];
        double z = p[i + 1][2] - p[i][2];
        double size = Math.sqrt(x * x + y * y + z * z);
        kinks[i + 1] = kinks[i] + size;
        unit[i] = new double[] {x / size, y / size, z / size};
      }
      centre =
          new Centre() {
            @Override
            public void heading(double at, double side, double[] out) {
              double[] t = unit[segment(kinks, side)];
              out[0] = Math.atan2(Math.hypot(t[0], t[1]), t[2]);
              out[1] = Math.atan2(t[1], t[0]);
            }

            @Override
            public void tangent(double at, double side, double[] out) {
              System.arraycopy(unit[segment(kinks, side)], 0, out, 0, 3);
            }
          };
    }
  }

  /** Index of the segment of rising stations that holds a station; never an empty one. */
  private static int segment(double[] rising, double at) {
    int i = 0;
    while (i + 2 < rising.length && (rising[i + 1] <= at || rising[i + 1] == rising[i])) {
      i++;
    }
    return i;
  }

  /** Stations where the profile has kinks or steps, within a length; well apart. */
  double[] breaks(double length) {
    double[] all =
        DoubleStream.concat(Arrays.stream(stations), Arrays.stream(kinks)).sorted().toArray();
    double[] apart = new double[all.length];
    int n = 0;
    for (double s : all) {
      double before = n == 0 ? 0 : apart[n - 1];
      if (s - before > ROUNDING && length - s > ROUNDING) {
        apart[n++] = s;
      }
    }
    return Arrays.copyOf(apart, n);
  }

  /** The station, or the one of some others that only rounding keeps it apart from. */
  static double snapped(double at, double... others) {
    for (double other : others) {
      if (Math.abs(at - other) <= ROUNDING) {
        return other;
      }
    }
    return at;
  }

  @Override
  public void tangent(double at, double cellMiddle, double[] out) {
    centre.tangent(at, cellMiddle, out);
  }

  @Override
  public double outer(double at, double cellMiddle) {
    return linear(outer, at, cellMiddle);
  }

  @Override
  public double cavity(double at, double cellMiddle) {
    return linear(cavity, at, cellMiddle);
  }

  private double linear(double[] values, double at, double side) {
    if (stations.length == 1) {
      return values[0];
    }
    int i = segment(stations, side);
    double x = (at - stations[i]) / (stations[i + 1] - stations[i]);
    return values[i] + x * (values[i + 1] - values[i]);
  }

  /**
   * Arm from the axis toward the underside: square to the axis, in the vertical plane through it.
   *
   * @param at station
   * @param offset length of the arm; negative toward the upper side
   */
  double[] arm(double at, double offset) {
    if (offset == 0) {
      return new double[3];
    }
    double[] heading = new double[3];
    double below = Math.nextDown(at);
    centre.heading(at, Math.max(0, below), heading);
    double lean = heading[0];
    double azimuth = heading[1];
    return new double[] {
      offset * Math.cos(lean) * Math.cos(azimuth),
      offset * Math.cos(lean) * Math.sin(azimuth),
      -offset * Math.sin(lean)
    };
  }
}
