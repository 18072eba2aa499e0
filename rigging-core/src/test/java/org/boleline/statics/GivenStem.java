package org.boleline.statics;

import java.util.List;
import org.boleline.stem.Diameters;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** A stem as the plan states it, read by plain code: direction, section and weight anywhere. */
final class GivenStem {
  final Stem stem;
  final double length;
  final double modulus;
  final double shearModulus;
  private final double weightDensity;

  GivenStem(Stem stem, double gravity) {
    this.stem = stem;
    length = Si.value(stem.length(), Kind.LENGTH, "length");
    modulus = Si.value(stem.wood().modulusOfElasticity(), Kind.PRESSURE, "modulus");
    shearModulus = Si.value(stem.wood().shearModulus(), Kind.PRESSURE, "modulus");
    weightDensity =
        stem.ownWeight() ? gravity * Si.value(stem.wood().density(), Kind.DENSITY, "density") : 0;
  }

  boolean isStanding() {
    return stem.shapeIs() == ShapeIs.AS_STANDING;
  }

  double[] base() {
    return stem.base().in(Kind.LENGTH);
  }

  /** Rotational stiffness of the root; infinite if clamped. */
  double rootStiffness() {
    return stem.root() instanceof Root.Turning turning
        ? Si.value(turning.rotationalStiffness(), Kind.ROTATIONAL_STIFFNESS, "stiffness")
        : Double.POSITIVE_INFINITY;
  }

  /** Unit vector along the given shape; {@code side} tells on which side of a kink. */
  double[] direction(double at, double side) {
    StemShape shape = stem.shape();
    if (shape instanceof StemShape.ByPoints line) {
      List<double[]> p = line.points().stream().map(v -> v.in(Kind.LENGTH)).toList();
      double from = 0;
      for (int i = 1; i < p.size(); i++) {
        double[] step = Plain.minus(p.get(i), p.get(i - 1));
        from += Plain.size(step);
        if (side < from || i == p.size() - 1) {
          return Plain.unit(step);
        }
      }
    }
    double[] heading = heading(at, side);
    return Plain.direction(heading[0], heading[1]);
  }

  /** Lean and azimuth of the given shape. */
  double[] heading(double at, double side) {
    StemShape shape = stem.shape();
    if (shape instanceof StemShape.Straight straight) {
      return new double[] {
        Si.value(straight.heading().lean(), Kind.ANGLE, "lean"),
        Si.value(straight.heading().azimuth(), Kind.ANGLE, "azimuth")
      };
    }
    if (shape instanceof StemShape.ByStations by) {
      double[] s = by.stations(Kind.LENGTH);
      return new double[] {
        Lines.read(s, by.leans(Kind.ANGLE), at, side),
        Lines.read(s, by.azimuths(Kind.ANGLE), at, side)
      };
    }
    double[] t = direction(at, side);
    return new double[] {Math.acos(Math.max(-1, Math.min(1, t[2]))), Math.atan2(t[1], t[0])};
  }

  /** Arm of an offset in the given shape: square to the axis, toward the underside. */
  double[] arm(double at, double offset) {
    double[] heading = heading(at, at - 1e-9);
    return Plain.times(offset, Plain.direction(heading[0] + Math.PI / 2, heading[1]));
  }

  double outer(double at, double side) {
    Diameters diameters = stem.diameters();
    return Lines.read(diameters.stations(Kind.LENGTH), diameters.outer(Kind.LENGTH), at, side);
  }

  double cavity(double at, double side) {
    Diameters diameters = stem.diameters();
    return Lines.read(diameters.stations(Kind.LENGTH), diameters.cavity(Kind.LENGTH), at, side);
  }

  double area(double at, double side) {
    return Math.PI / 4 * (Math.pow(outer(at, side), 2) - Math.pow(cavity(at, side), 2));
  }

  double secondMoment(double at, double side) {
    return Math.PI / 64 * (Math.pow(outer(at, side), 4) - Math.pow(cavity(at, side), 4));
  }

  double weightPerLength(double at, double side) {
    return weightDensity * area(at, side);
  }

  /** Values given at stations, joined by straight lines; two at one station are a step. */
  private static final class Lines {
    static double read(double[] x, double[] y, double at, double side) {
      for (int i = 0; i + 1 < x.length; i++) {
        boolean last = i + 2 == x.length;
        if (x[i + 1] > x[i] && (side < x[i + 1] || last)) {
          return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
        }
      }
      throw new AssertionError("no piece of positive length");
    }
  }
}
