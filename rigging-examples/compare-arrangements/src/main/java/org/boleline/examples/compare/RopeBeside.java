package org.boleline.examples.compare;

import java.util.List;
import org.boleline.plan.Tail;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Leg;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;

/** How far a rope that runs along a stem strays from the stem's axis. */
final class RopeBeside {
  private RopeBeside() {}

  /**
   * Returns the greatest distance, in metres, of the axis from legs that run between two places of
   * the stem, or NaN if there is no such leg.
   */
  static double stem(Solution state, String id) {
    StemResult stem = state.stem(id).orElseThrow();
    double[] stations = stem.profile().stations(Kind.LENGTH);
    double[][] axis = stem.profile().positions(Kind.LENGTH);
    double greatest = Double.NaN;
    for (Leg leg : state.legs()) {
      double from = station(state, leg.from(), id);
      double to = station(state, leg.to(), id);
      if (Double.isNaN(from) || Double.isNaN(to)) {
        continue;
      }
      double[] begin = leg.begin().orElseThrow().in(Kind.LENGTH);
      double[] end = leg.end().orElseThrow().in(Kind.LENGTH);
      for (int i = 0; i < stations.length; i++) {
        if (stations[i] >= Math.min(from, to) && stations[i] <= Math.max(from, to)) {
          double distance = distance(axis[i], begin, end);
          greatest = Double.isNaN(greatest) ? distance : Math.max(greatest, distance);
        }
      }
    }
    return greatest;
  }

  /** The station where a leg ends on a stem; NaN if it ends elsewhere. */
  private static double station(Solution state, String place, String stem) {
    List<ContactResult> contacts = state.contacts();
    for (int j = 0; j < contacts.size(); j++) {
      if (place.equals("contacts/" + j) && contacts.get(j).stem().equals(stem)) {
        return Wording.metres(contacts.get(j).at());
      }
    }
    return place.equals("device")
            && state.arrangement().tail() instanceof Tail.Device device
            && device.stem().equals(stem)
        ? Wording.metres(device.at())
        : Double.NaN;
  }

  private static double distance(double[] point, double[] begin, double[] end) {
    double[] leg = Triple.minus(end, begin);
    double[] beside = Triple.minus(point, begin);
    double along = Triple.dot(beside, leg) / Triple.dot(leg, leg);
    double within = Math.max(0, Math.min(1, along));
    return Triple.size(Triple.minus(beside, Triple.times(within, leg)));
  }
}
