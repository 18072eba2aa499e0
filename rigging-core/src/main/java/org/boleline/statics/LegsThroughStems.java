package org.boleline.statics;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
 * out: within the contact's own reach (sling and arm) and two diameters.
 */
final class LegsThroughStems {
  private final Solution solution;
  private final Resolved resolved;
  private final String place;
  private final List<Axis> axes = new ArrayList<>();
  private final List<Caution> found = new ArrayList<>();

  /** Stations along a stem, and place and radius there. */
  @SuppressWarnings("ArrayRecordComponent") // never compared
  private record Axis(double[] stations, double[][] places, double[] radii) {}

  private LegsThroughStems(Solution solution, Resolved resolved, String place) {
    this.solution = solution;
    this.resolved = resolved;
    this.place = place;
    for (int stem = 0; stem < solution.stems().size(); stem++) {
      StemProfile profile = solution.stems().get(stem).profile();
      double[] stations = profile.stations(Kind.LENGTH);
      double[] radii = new double[stations.length];
      for (int i = 0; i < radii.length; i++) {
        radii[i] = 0.5 * resolved.geometry[stem].outer(stations[i], stations[i]);
      }
      axes.add(new Axis(stations, profile.positions(Kind.LENGTH), radii));
    }
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
    Axis axis = axes.get(stem);
    LeftOut first = leftOut(leg.from(), result.id());
    LeftOut last = leftOut(leg.to(), result.id());
    double least = 0;
    double leastAt = -1;
    double leastRadius = 0;
    double leastDistance = 0;
    for (int i = 0; i < axis.stations.length; i++) {
      double at = axis.stations[i];
      double radius = axis.radii[i];
      double distance2 = distance2(axis.places[i], start, end);
      if (distance2 >= radius * radius || first.holds(at, radius) || last.holds(at, radius)) {
        continue;
      }
      double distance = Math.sqrt(distance2);
      if (distance - radius < least) {
        least = distance - radius;
        leastAt = at;
        leastRadius = radius;
        leastDistance = distance;
      }
    }
    if (leastAt >= 0) {
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
                  Cautions.rounded(leastAt) + " m",
                  "distance",
                  Cautions.rounded(leastDistance) + " m",
                  "radius",
                  Cautions.rounded(leastRadius) + " m")));
    }
  }

  /** The stretch of axis about a leg's end that does not count; none has a negative reach. */
  private record LeftOut(double station, double reach) {
    boolean holds(double at, double radius) {
      return reach >= 0 && Math.abs(at - station) < reach + 4 * radius;
    }
  }

  private LeftOut leftOut(String end, String stem) {
    Arrangement arrangement = solution.arrangement();
    if (end.startsWith("contacts/")) {
      Contact contact = arrangement.contacts().get(Integer.parseInt(end.substring(9)));
      if (contact.stem().equals(stem)) {
        return new LeftOut(
            Si.value(contact.at(), Kind.LENGTH, "at"),
            Si.value(contact.sling(), Kind.LENGTH, "sling")
                + Math.abs(Si.value(contact.offset(), Kind.LENGTH, "offset")));
      }
    } else if (end.equals("device")
        && arrangement.tail() instanceof Tail.Device device
        && device.stem().equals(stem)) {
      return new LeftOut(
          Si.value(device.at(), Kind.LENGTH, "at"),
          Math.abs(Si.value(device.offset(), Kind.LENGTH, "offset")));
    }
    return new LeftOut(0, -1);
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
