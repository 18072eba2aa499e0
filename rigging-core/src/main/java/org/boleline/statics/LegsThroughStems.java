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
    double[] stations = result.profile().stations(Kind.LENGTH);
    double[][] axis = result.profile().positions(Kind.LENGTH);
    LeftOut first = leftOut(leg.from(), result.id());
    LeftOut last = leftOut(leg.to(), result.id());
    double least = 0;
    double leastAt = -1;
    double leastRadius = 0;
    double leastDistance = 0;
    for (int i = 0; i < stations.length; i++) {
      double at = stations[i];
      double radius = 0.5 * resolved.geometry[stem].outer(at, at);
      double distance = distance(axis[i], start, end);
      if (distance - radius < least && !first.holds(at, radius) && !last.holds(at, radius)) {
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

  private static double distance(double[] p, double[] a, double[] b) {
    double length2 = 0;
    double along = 0;
    for (int d = 0; d < 3; d++) {
      length2 += (b[d] - a[d]) * (b[d] - a[d]);
      along += (p[d] - a[d]) * (b[d] - a[d]);
    }
    double x = length2 == 0 ? 0 : Math.max(0, Math.min(1, along / length2));
    double sum = 0;
    for (int d = 0; d < 3; d++) {
      double gap = p[d] - a[d] - x * (b[d] - a[d]);
      sum += gap * gap;
    }
    return Math.sqrt(sum);
  }
}
