package org.boleline.limits;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.drop.CatchLoads;
import org.boleline.drop.DropFound;
import org.boleline.drop.LetRun;
import org.boleline.drop.TimedCatch;
import org.boleline.drop.TimedPeak;
import org.boleline.geometry.Vector;
import org.boleline.plan.Tail;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Leg;
import org.boleline.statics.Solution;
import org.boleline.statics.StemProfile;
import org.boleline.statics.StemResult;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What the parts of a rig have to take: in a slow state, or at the peak of a catch.
 *
 * <p>At a peak the rope's forces take the place of the slow ones, on stems in the slow shape. Where
 * the catch was followed in time too, forces and base moments are the greater of both answers;
 * stresses are of the energy balance.
 */
final class Demands {
  /** How near two stations count as one, m. */
  private static final double SAME_STATION = 1e-9;

  private final Solution slow;
  private final @Nullable DropFound drop;
  private final @Nullable CatchLoads peak;
  private final TimedCatch.@Nullable Followed timed;

  private Demands(
      Solution slow,
      @Nullable DropFound drop,
      @Nullable CatchLoads peak,
      TimedCatch.@Nullable Followed timed) {
    this.slow = slow;
    this.drop = drop;
    this.peak = peak;
    this.timed = timed;
  }

  static Demands slow(Solution state) {
    return new Demands(state, null, null, null);
  }

  /** The rope made fast. */
  static Demands locked(Solution slow, DropFound drop) {
    return new Demands(
        slow, drop, drop.loads(), drop.inTime().map(TimedCatch.Followed::locked).orElse(null));
  }

  /** The rope let run. */
  static Demands run(Solution slow, DropFound drop, LetRun run) {
    return new Demands(slow, drop, run.loads(), drop.inTime().orElse(null));
  }

  private static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  /** Indexes of the contacts that the rope bears on. */
  List<Integer> contacts() {
    return IntStream.range(0, slow.contacts().size())
        .filter(j -> slow.contacts().get(j).bears())
        .boxed()
        .toList();
  }

  private int point(int contact) {
    return contacts().indexOf(contact);
  }

  double atPiece() {
    return peak == null
        ? newtons(slow.legs().get(0).tension())
        : Math.max(newtons(peak.loadLeg()), timed == null ? 0 : most(timed.loadLeg()));
  }

  private static double most(TimedPeak<Force> found) {
    return newtons(found.overall());
  }

  /** Tension at the tail, or into the device. */
  double atTail() {
    if (peak == null) {
      return newtons(slow.tailTension());
    }
    double last = newtons(peak.legs().get(peak.legs().size() - 1));
    return timed == null ? last : Math.max(last, most(timed.legs().get(timed.legs().size() - 1)));
  }

  double greatestTension() {
    if (peak == null) {
      return slow.legs().stream()
          .mapToDouble(leg -> Math.max(newtons(leg.tension()), newtons(leg.tensionAtEnd())))
          .max()
          .orElseThrow();
    }
    double energy = peak.legs().stream().mapToDouble(Demands::newtons).max().orElseThrow();
    return timed == null
        ? energy
        : timed.legs().stream().mapToDouble(Demands::most).reduce(energy, Math::max);
  }

  double greatestTensionAt(int contact) {
    if (peak == null) {
      ContactResult found = slow.contacts().get(contact);
      return Math.max(newtons(found.tensionIn()), newtons(found.tensionOut()));
    }
    double energy = newtons(peak.points().get(point(contact)).tight());
    int index = pointInTime(contact);
    if (timed == null || index < 0) {
      return energy;
    }
    return Math.max(
        energy, Math.max(most(timed.legs().get(index)), most(timed.legs().get(index + 1))));
  }

  double forceOn(int contact) {
    if (peak == null) {
      return newtons(slow.contacts().get(contact).forceMagnitude());
    }
    double energy = newtons(peak.points().get(point(contact)).magnitude());
    int index = pointInTime(contact);
    return timed == null || index < 0 ? energy : Math.max(energy, most(timed.points().get(index)));
  }

  /** Index of a contact among the points of the catch in time; negative if it is none. */
  private int pointInTime(int contact) {
    return timed == null || drop == null ? -1 : drop.legsInTimeTo().indexOf("contacts/" + contact);
  }

  /** Moment about the base of a stem, rope and own weight. */
  double baseMoment(int stem) {
    StemResult result = slow.stems().get(stem);
    double[] all = result.base().moment().in(Kind.MOMENT);
    if (peak == null || drop == null) {
      return size(all);
    }
    double[] rig = result.riggingBase().moment().in(Kind.MOMENT);
    double[] rope = drop.baseMoments(peak).get(stem).in(Kind.MOMENT);
    // the ground holds against what acts on the stem
    double energy =
        size(
            new double[] {
              all[0] - rig[0] - rope[0], all[1] - rig[1] - rope[1], all[2] - rig[2] - rope[2]
            });
    return timed == null || timed.baseMoments().isEmpty()
        ? energy
        : Math.max(
            energy, Si.value(timed.baseMoments().get(stem).overall(), Kind.MOMENT, "base moment"));
  }

  /**
   * What a section carries.
   *
   * @param at station, m
   * @param axial axial force, pulled positive, N
   * @param moment bending moment, N.m
   * @param outer outer diameter, m
   * @param cavity diameter of the cavity, m
   */
  record Loaded(double at, double axial, double moment, double outer, double cavity) {
    double pressed() {
      return LimitFormulas.PRESSED.value(axial, moment, outer, cavity);
    }

    double pulled() {
      return LimitFormulas.PULLED.value(axial, moment, outer, cavity);
    }

    double stress(boolean pressedSide) {
      return pressedSide ? pressed() : pulled();
    }
  }

  /** The section with the greatest stress of a stem, or that at a station. */
  Loaded section(int stem, @Nullable Double station, boolean pressedSide) {
    Sections sections = new Sections(stem);
    if (station != null) {
      return sections.worst(station, pressedSide);
    }
    double[] stations = sections.stations;
    @Nullable Loaded worst = null;
    for (double at : stations) {
      Loaded here = sections.worst(at, pressedSide);
      if (worst == null || here.stress(pressedSide) > worst.stress(pressedSide)) {
        worst = here;
      }
    }
    if (worst == null) {
      throw new AssertionError("a stem without sections");
    }
    // between the stations of the profile: a golden section about the worst of them
    double coarse = worst.at();
    for (OptionalInt side : List.of(index(stations, coarse, -1), index(stations, coarse, 1))) {
      if (side.isPresent()) {
        worst = sections.between(worst, stations[side.getAsInt()], pressedSide);
      }
    }
    return worst;
  }

  private static OptionalInt index(double[] stations, double at, int step) {
    for (int i = 0; i < stations.length; i++) {
      if (stations[i] == at && i + step >= 0 && i + step < stations.length) {
        return OptionalInt.of(i + step);
      }
    }
    return OptionalInt.empty();
  }

  /** Internal forces along a stem. */
  private final class Sections {
    private static final int STEPS = 40;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final Stem stem;
    private final double[] stations;
    private final double[][] positions;
    private final double[][] directions;
    private final double[][] forces;
    private final double[][] moments;
    private final double[] diameterStations;
    private final double[] outer;
    private final double[] cavity;

    Sections(int index) {
      stem = slow.plan().stems().get(index);
      StemProfile profile = slow.stems().get(index).profile();
      stations = profile.stations(Kind.LENGTH);
      positions = profile.positions(Kind.LENGTH);
      directions = profile.directions();
      forces = profile.forces(Kind.FORCE);
      moments = profile.moments(Kind.MOMENT);
      Diameters diameters = stem.diameters();
      diameterStations = diameters.stations(Kind.LENGTH);
      outer = diameters.outer(Kind.LENGTH);
      cavity = diameters.cavity(Kind.LENGTH);
    }

    /** The section with the greater stress, just below a step of the diameters or just above. */
    Loaded worst(double at, boolean pressedSide) {
      @Nullable Loaded worst = null;
      for (int i = 1; i < diameterStations.length; i++) {
        double from = diameterStations[i - 1];
        double to = diameterStations[i];
        if (to > from && at >= from - SAME_STATION && at <= to + SAME_STATION) {
          double x = Math.min(1, Math.max(0, (at - from) / (to - from)));
          Loaded here =
              loaded(
                  at,
                  outer[i - 1] + x * (outer[i] - outer[i - 1]),
                  cavity[i - 1] + x * (cavity[i] - cavity[i - 1]));
          if (worst == null || here.stress(pressedSide) > worst.stress(pressedSide)) {
            worst = here;
          }
        }
      }
      if (worst == null) {
        throw new AssertionError("no diameter at " + at);
      }
      return worst;
    }

    Loaded between(Loaded worst, double end, boolean pressedSide) {
      double a = worst.at();
      double b = end;
      Loaded best = worst;
      for (int i = 0; i < STEPS; i++) {
        Loaded left = worst(b - GOLDEN * (b - a), pressedSide);
        Loaded right = worst(a + GOLDEN * (b - a), pressedSide);
        boolean goLeft = left.stress(pressedSide) > right.stress(pressedSide);
        Loaded better = goLeft ? left : right;
        best = better.stress(pressedSide) > best.stress(pressedSide) ? better : best;
        if (goLeft) {
          b = right.at();
        } else {
          a = left.at();
        }
      }
      return best;
    }

    private Loaded loaded(double at, double outerThere, double cavityThere) {
      int i = 1;
      while (i < stations.length - 1 && stations[i] < at) {
        i++;
      }
      double gap = stations[i] - stations[i - 1];
      double x = gap > 0 ? Math.min(1, Math.max(0, (at - stations[i - 1]) / gap)) : 1;
      double[] place = mix(positions, i, x);
      double[] along = mix(directions, i, x);
      double[] force = mix(forces, i, x);
      double[] moment = mix(moments, i, x);
      addPeak(at, place, force, moment);
      double size = size(along);
      double axial = dot(force, along) / size;
      double twist = dot(moment, along) / size;
      double bending = Math.sqrt(Math.max(0, dot(moment, moment) - twist * twist));
      return new Loaded(at, axial, bending, outerThere, cavityThere);
    }

    /** Adds what the rope does at the peak more than in the slow state, of all that is above. */
    private void addPeak(double at, double[] place, double[] force, double[] moment) {
      if (peak == null) {
        return;
      }
      List<Integer> bearing = contacts();
      for (int point = 0; point < bearing.size(); point++) {
        ContactResult contact = slow.contacts().get(bearing.get(point));
        if (contact.stem().equals(stem.id()) && isAbove(contact.at(), at)) {
          Vector<Force> then = peak.points().get(point).vector().orElseThrow();
          add(
              place,
              contact.position(),
              minus(then.in(Kind.FORCE), contact.force().in(Kind.FORCE)),
              force,
              moment);
        }
      }
      if (slow.arrangement().tail() instanceof Tail.Device device
          && device.stem().equals(stem.id())
          && isAbove(device.at(), at)) {
        Leg last = slow.legs().get(slow.legs().size() - 1);
        double[] pull = last.pullAtEnd().in(Kind.FORCE);
        double then = newtons(peak.legs().get(peak.legs().size() - 1));
        double more = size(pull) > 0 ? then / size(pull) - 1 : 0;
        add(
            place,
            last.end().orElseThrow(),
            new double[] {more * pull[0], more * pull[1], more * pull[2]},
            force,
            moment);
      }
    }

    private static boolean isAbove(Quantity<Length> station, double at) {
      return Si.value(station, Kind.LENGTH, "at") >= at - SAME_STATION;
    }

    private static void add(
        double[] place, Vector<Length> from, double[] more, double[] force, double[] moment) {
      double[] arm = minus(from.in(Kind.LENGTH), place);
      moment[0] += arm[1] * more[2] - arm[2] * more[1];
      moment[1] += arm[2] * more[0] - arm[0] * more[2];
      moment[2] += arm[0] * more[1] - arm[1] * more[0];
      for (int d = 0; d < 3; d++) {
        force[d] += more[d];
      }
    }

    private static double[] mix(double[][] rows, int i, double x) {
      double[] out = new double[3];
      for (int d = 0; d < 3; d++) {
        out[d] = rows[i - 1][d] + x * (rows[i][d] - rows[i - 1][d]);
      }
      return out;
    }
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double size(double[] v) {
    return Math.sqrt(dot(v, v));
  }
}
