package org.boleline.examples.compare;

import java.util.EnumMap;
import java.util.Map;
import org.boleline.statics.Share;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;

/**
 * The moment that a stem's base carries, split by origin: each part as it counts along the whole,
 * so that the parts add up to it.
 */
final class BaseMoment {
  private final double[] direction;
  private final Map<Share.Origin, Double> parts = new EnumMap<>(Share.Origin.class);
  private double total;

  private BaseMoment(StemResult stem, double[] direction) {
    this.direction = direction;
    for (Share share : stem.shares()) {
      double part = Triple.dot(share.moment().in(Kind.MOMENT), direction);
      parts.put(share.origin(), part);
      total += part;
    }
  }

  /** Splits the moment along itself. */
  static BaseMoment of(StemResult stem) {
    double[] moment = stem.base().moment().in(Kind.MOMENT);
    double size = Triple.size(moment);
    for (int d = 0; d < 3; d++) {
      moment[d] = size == 0 ? 0 : -moment[d] / size; // the ground answers, the shares act
    }
    return new BaseMoment(stem, moment);
  }

  /** Splits another stem state's moment along the direction of this one. */
  BaseMoment alongside(StemResult stem) {
    return new BaseMoment(stem, direction);
  }

  /** The angle to another stem state's moment in degrees, 0 to 180; 0 if either is nothing. */
  double turnTo(StemResult stem) {
    BaseMoment other = of(stem);
    double sizes = Triple.size(direction) * Triple.size(other.direction);
    return sizes == 0
        ? 0
        : Math.toDegrees(
            Math.acos(Math.max(-1, Math.min(1, Triple.dot(direction, other.direction)))));
  }

  /** The sum of the parts, N.m. */
  double total() {
    return total;
  }

  boolean has(Share.Origin origin) {
    return parts.containsKey(origin);
  }

  /** A part, N.m; negative if it relieves the base, zero if it is not there. */
  double part(Share.Origin origin) {
    return parts.getOrDefault(origin, 0.0);
  }
}
