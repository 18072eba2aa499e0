package org.boleline.statics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Tail;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Finds legs of the rope that pass through a stem: nearer to an axis than the local radius.
 *
 * <p>Where a leg ends at a contact on the same stem, the stretch of axis about that contact is left
 * out: within the contact's own reach (sling and arm) and two diameters. Searched between the
 * stations of the profile too: they lie farther apart than a stem is thick.
 */
final class LegsThroughStems {
  private static final int THIRDS = 60;

  /** A tenth of a millimetre: a distance is told no finer. */
  private static final double TENTH = 1e-4;

  private final Solution solution;
  private final Resolved resolved;
  private final String place;
  private final List<Caution> found = new ArrayList<>();

  private LegsThroughStems(Solution solution, Resolved resolved, String place) {
    this.solution = solution;
    this.resolved = resolved;
    this.place = place;
  }

  static List<Caution> of(Solution solution, Resolved resolved, String place) {
    LegsThroughStems search = new LegsThroughStems(solution, resolved, place);
    search.all();
    return search.found;
  }

  private void all() {
    for (Leg leg : solution.legs()) {
      double[] pull = leg.pull().in(Kind.FORCE);
      double size = Si.value(leg.tension(), Kind.FORCE, "tension");
      Optional<double[]> begin = leg.begin().map(v -> v.in(Kind.LENGTH));
      Optional<double[]> end = leg.end().map(v -> v.in(Kind.LENGTH));
      if (begin.isEmpty() && end.isEmpty()) {
        continue;
      }
      double[] from = begin.orElseGet(() -> toGround(end.orElseThrow(), pull, -size));
      double[] to = end.orElseGet(() -> toGround(begin.orElseThrow(), pull, size));
      for (int stem = 0; stem < solution.stems().size(); stem++) {
        test(leg, from, to, stem);
      }
    }
  }

  /** Where a leg that starts at a place and goes along a pull comes to the ground. */
  private double[] toGround(double[] from, double[] pull, double size) {
    double ground = Double.POSITIVE_INFINITY;
    for (var stem : resolved.stems) {
      ground = Math.min(ground, stem.base()[2]);
    }
    double height = Math.max(0, from[2] - ground);
    double length = Math.min(height / Math.max(0.1, Math.abs(pull[2] / size)), 100) / size;
    return new double[] {
      from[0] + length * pull[0], from[1] + length * pull[1], from[2] + length * pull[2]
    };
  }

  private void test(Leg leg, double[] start, double[] end, int stem) {
    StemResult result = solution.stems().get(stem);
    Crossing crossing = new Crossing(result.profile(), resolved.geometry[stem], start, end);
    crossing.search(leftOut(leg.from(), stem), leftOut(leg.to(), stem));
    if (crossing.deepest > 0) {
      double radius = crossing.radius(crossing.at, crossing.at);
      double distance = crossing.distance(crossing.at);
      found.add(
          new Caution(
              CautionCode.ROPE_THROUGH_STEM,
              place,
              Map.of(
                  "from",
                  leg.from(),
                  "to",
                  leg.to(),
                  "stem",
                  result.id(),
                  "at",
                  Cautions.rounded(crossing.at) + " m",
                  "distance",
                  Cautions.rounded(TENTH * Math.rint(distance / TENTH)) + " m",
                  "radius",
                  Cautions.rounded(radius) + " m")));
    }
  }

  /** One leg and one stem: where the leg lies deepest in the wood. */
  private static final class Crossing {
    private final StemGeometry geometry;
    private final double[] stations;
    private final double[][] places;
    private final double[] start;
    private final double[] end;
    private double deepest;
    private double at;

    Crossing(StemProfile profile, StemGeometry geometry, double[] start, double[] end) {
      this.geometry = geometry;
      this.start = start;
      this.end = end;
      stations = profile.stations(Kind.LENGTH);
      places = profile.positions(Kind.LENGTH);
    }

    void search(LeftOut first, LeftOut last) {
      double length = stations[stations.length - 1];
      double[] cuts =
          DoubleStream.concat(
                  Arrays.stream(stations),
                  DoubleStream.of(first.from(), first.to(), last.from(), last.to()))
              .filter(s -> s >= 0 && s <= length)
              .sorted()
              .distinct()
              .toArray();
      for (int i = 1; i < cuts.length; i++) {
        double middle = 0.5 * (cuts[i - 1] + cuts[i]);
        if (!first.holds(middle) && !last.holds(middle)) {
          stretch(cuts[i - 1], cuts[i], middle);
        }
      }
    }

    /**
     * Searches a stretch between stations. The axis is taken as straight there and the radius is
     * linear: then the depth has one summit, and thirds find it.
     */
    private void stretch(double from, double to, double middle) {
      double most = Math.max(radius(from, middle), radius(to, middle)) + 0.5 * (to - from);
      if (distance(middle) > most) {
        return;
      }
      double low = from;
      double high = to;
      for (int i = 0; i < THIRDS; i++) {
        double third = (high - low) / 3;
        if (depth(low + third, middle) < depth(high - third, middle)) {
          low += third;
        } else {
          high -= third;
        }
      }
      for (double station : new double[] {from, 0.5 * (low + high), to}) {
        double depth = depth(station, middle);
        if (depth > deepest) {
          deepest = depth;
          at = station;
        }
      }
    }

    private double depth(double station, double side) {
      return radius(station, side) - distance(station);
    }

    double radius(double station, double side) {
      return 0.5 * geometry.outer(station, side);
    }

    double distance(double station) {
      int found = Arrays.binarySearch(stations, station);
      if (found >= 0) {
        return Math.sqrt(distance2(places[found], start, end));
      }
      int after = -found - 1;
      double share = (station - stations[after - 1]) / (stations[after] - stations[after - 1]);
      double[] p = new double[3];
      for (int k = 0; k < 3; k++) {
        p[k] = places[after - 1][k] + share * (places[after][k] - places[after - 1][k]);
      }
      return Math.sqrt(distance2(p, start, end));
    }
  }

  /** The stretch of axis about a leg's end that does not count; without one, both not a number. */
  private record LeftOut(double from, double to) {
    boolean holds(double station) {
      return station > from && station < to;
    }
  }

  private LeftOut leftOut(String end, int stem) {
    Arrangement arrangement = solution.arrangement();
    String id = solution.stems().get(stem).id();
    if (end.startsWith("contacts/")) {
      Contact contact = arrangement.contacts().get(Integer.parseInt(end.substring(9)));
      if (contact.stem().equals(id)) {
        return about(
            stem,
            Si.value(contact.at(), Kind.LENGTH, "at"),
            Si.value(contact.sling(), Kind.LENGTH, "sling")
                + Math.abs(Si.value(contact.offset(), Kind.LENGTH, "offset")));
      }
    } else if (end.equals("device")
        && arrangement.tail() instanceof Tail.Device device
        && device.stem().equals(id)) {
      return about(
          stem,
          Si.value(device.at(), Kind.LENGTH, "at"),
          Math.abs(Si.value(device.offset(), Kind.LENGTH, "offset")));
    }
    return new LeftOut(Double.NaN, Double.NaN);
  }

  /** The reach of a sling and arm and two diameters, to both sides of a station. */
  private LeftOut about(int stem, double station, double reach) {
    double all = reach + 2 * resolved.geometry[stem].outer(station, station);
    return new LeftOut(station - all, station + all);
  }

  /** Square of the distance of a place from a stretch of rope. */
  private static double distance2(double[] p, double[] a, double[] b) {
    double ux = b[0] - a[0];
    double uy = b[1] - a[1];
    double uz = b[2] - a[2];
    double px = p[0] - a[0];
    double py = p[1] - a[1];
    double pz = p[2] - a[2];
    double length2 = ux * ux + uy * uy + uz * uz;
    double along = px * ux + py * uy + pz * uz;
    double x = along <= 0 ? 0 : along >= length2 ? 1 : along / length2;
    px -= x * ux;
    py -= x * uy;
    pz -= x * uz;
    return px * px + py * py + pz * pz;
  }
}
