package org.boleline.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Sheave;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Leg;
import org.boleline.statics.MarkResult;
import org.boleline.statics.Solution;
import org.boleline.statics.StemProfile;
import org.boleline.statics.StemResult;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What there is to draw of a solution, in metres and newtons in the plan's axes, with movements
 * enlarged where that is asked for.
 *
 * <p>Belongs to one picture and one thread.
 */
final class Scene {
  /** A leg farther than this times the size of the stems is drawn broken off. */
  private static final double FARTHEST = 2;

  private static final double LOAD_LEG = 0.13;
  private static final double LONGEST_ARROW = 0.17;

  /** A stem: its axis without and with the load, and the radius at each station. */
  record DrawnStem(
      StemResult result,
      List<Double> stations,
      List<Place> unloaded,
      List<Place> loaded,
      List<Double> radii) {}

  /**
   * A leg of the rope; broken off where it leads out of the picture or its length is not stated.
   * How far its end lies from its beginning is told where that end is stated but left off the
   * sheet.
   */
  record DrawnLeg(
      Leg leg,
      Place begin,
      Place end,
      double tension,
      double other,
      boolean broken,
      OptionalDouble beyond) {
    /** Whether the tail leads on from where it is drawn to. */
    boolean goesOn() {
      return broken && leg.to().equals("tail");
    }
  }

  /** A point of the rope: where it hangs from, where the rope runs, and the force there. */
  record DrawnPoint(
      String place,
      String name,
      Place axis,
      Place attachment,
      Place position,
      boolean bears,
      Place force,
      double otherForce,
      @Nullable Hardware hardware,
      @Nullable Boolean opens) {}

  /** A named place on a stem that has moved. */
  record DrawnMark(String stem, String name, Place from, Place to, double moved) {}

  final Solution solution;
  final double size;

  /** The level down to which the rig is drawn. */
  final double floor;

  /** The level of the ground, where it is known. */
  final OptionalDouble ground;

  final List<DrawnStem> stems = new ArrayList<>();
  final List<DrawnPoint> points = new ArrayList<>();
  final List<DrawnLeg> legs = new ArrayList<>();
  final List<DrawnMark> marks = new ArrayList<>();
  final Place piece;
  final Optional<Place> tagline;
  final double forcePerMetre;
  private final double factor;

  Scene(Solution solution, PictureSpec spec) {
    this.solution = solution;
    factor = spec.magnificationFactor();
    Plan plan = solution.plan();
    for (int i = 0; i < plan.stems().size(); i++) {
      stems.add(stem(plan.stems().get(i), solution.stems().get(i)));
    }
    Arrangement arrangement = solution.arrangement();
    for (int i = 0; i < arrangement.contacts().size(); i++) {
      points.add(point(i, arrangement.contacts().get(i)));
    }
    device(arrangement).ifPresent(points::add);
    size = size();
    floor = floor(spec);
    ground = ground(spec);
    Place first = points.get(0).position();
    Leg load = solution.legs().get(0);
    Place pull = Place.of(load.pull().in(Kind.FORCE));
    double above = first.z() - floor;
    double hangs =
        ground.isEmpty()
            ? LOAD_LEG * size
            : Math.min(LOAD_LEG * size, Math.max(0.6 * above, LOAD_LEG / 3 * size));
    piece = placeOf(load.to()).plus(pull.times(-hangs / pull.length()));
    tagline = arrangement.tagline().map(this::end);
    for (Leg leg : solution.legs()) {
      legs.add(leg(leg));
    }
    for (DrawnStem stem : stems) {
      marks(stem);
    }
    double greatest = 0;
    for (DrawnPoint point : points) {
      greatest = Math.max(greatest, point.force().length());
    }
    forcePerMetre =
        spec.forceScale()
            .map(f -> Si.value(f, Kind.FORCE, "forceScale"))
            .orElse(PictureUnits.round(Math.max(1e-9, 2.5 * greatest / (LONGEST_ARROW * size))));
  }

  /** Where a level line from the piece is broken off. */
  private Place end(Tagline line) {
    double azimuth = Si.value(line.azimuth(), Kind.ANGLE, "azimuth");
    return piece.plus(
        new Place(StrictMath.cos(azimuth), StrictMath.sin(azimuth), 0).times(LOAD_LEG * size));
  }

  private DrawnStem stem(Stem stem, StemResult result) {
    StemProfile profile = result.profile();
    List<Double> stations = Arrays.stream(profile.stations(Kind.LENGTH)).boxed().toList();
    List<Place> from = places(profile.unloadedPositions(Kind.LENGTH));
    List<Place> to = places(profile.positions(Kind.LENGTH));
    List<Place> loaded = new ArrayList<>();
    for (int i = 0; i < to.size(); i++) {
      loaded.add(enlarged(to.get(i), to.get(i).minus(from.get(i))));
    }
    List<Double> radii = stations.stream().map(s -> radius(stem.diameters(), s)).toList();
    return new DrawnStem(result, stations, from, loaded, radii);
  }

  private static List<Place> places(double[][] rows) {
    return Arrays.stream(rows).map(Place::of).toList();
  }

  private static double radius(Diameters diameters, double station) {
    double[] at = diameters.stations(Kind.LENGTH);
    double[] outer = diameters.outer(Kind.LENGTH);
    for (int i = 1; i < at.length; i++) {
      if (station <= at[i]) {
        double way = at[i] - at[i - 1];
        double share = way > 0 ? (station - at[i - 1]) / way : 0;
        return (outer[i - 1] + share * (outer[i] - outer[i - 1])) / 2;
      }
    }
    return outer[outer.length - 1] / 2;
  }

  private Place enlarged(Place place, Place movement) {
    return factor == 1 ? place : place.plus(movement.times(factor - 1));
  }

  private DrawnPoint point(int index, Contact contact) {
    ContactResult result = solution.contacts().get(index);
    Place moved = Place.of(result.movement().in(Kind.LENGTH));
    Place axis = onStem(result.stem(), metres(result.at()));
    return new DrawnPoint(
        "contacts/" + index,
        (index + 1) + " " + name(contact.hardware()),
        axis,
        enlarged(Place.of(result.attachment().in(Kind.LENGTH)), moved),
        enlarged(Place.of(result.position().in(Kind.LENGTH)), moved),
        result.bears(),
        Place.of(result.force().in(Kind.FORCE)),
        solution
            .otherEnd()
            .map(o -> newtons(o.contacts().get(index).forceMagnitude()))
            .orElse(newtons(result.forceMagnitude())),
        contact.hardware(),
        contact.opens().orElse(null));
  }

  static String name(Hardware hardware) {
    return hardware instanceof Sheave
        ? "sheave"
        : hardware instanceof FrictionRing ? "ring" : hardware instanceof Bark ? "bark" : "point";
  }

  private Optional<DrawnPoint> device(Arrangement arrangement) {
    Leg last = solution.legs().get(solution.legs().size() - 1);
    if (!(arrangement.tail() instanceof Tail.Device device) || last.end().isEmpty()) {
      return Optional.empty();
    }
    Place axis = onStem(device.stem(), metres(device.at()));
    Place moved = movement(device.stem(), metres(device.at()));
    Place place = enlarged(Place.of(last.end().get().in(Kind.LENGTH)), moved);
    Place force = Place.of(last.pullAtEnd().in(Kind.FORCE));
    return Optional.of(
        new DrawnPoint(
            "device",
            "device",
            axis,
            place,
            place,
            true,
            force,
            solution.otherEnd().map(o -> newtons(o.tailTension())).orElse(force.length()),
            null,
            null));
  }

  private int stemIndex(String id) {
    for (int i = 0; i < stems.size(); i++) {
      if (stems.get(i).result().id().equals(id)) {
        return i;
      }
    }
    throw new AssertionError("no stem " + id);
  }

  private Place onStem(String id, double at) {
    DrawnStem stem = stems.get(stemIndex(id));
    return along(stem.stations(), stem.loaded(), at);
  }

  private Place movement(String id, double at) {
    DrawnStem stem = stems.get(stemIndex(id));
    List<Place> loaded = places(stem.result().profile().positions(Kind.LENGTH));
    return along(stem.stations(), loaded, at).minus(along(stem.stations(), stem.unloaded(), at));
  }

  private static Place along(List<Double> stations, List<Place> places, double at) {
    for (int i = 1; i < stations.size(); i++) {
      if (at <= stations.get(i)) {
        double way = stations.get(i) - stations.get(i - 1);
        double share = way > 0 ? (at - stations.get(i - 1)) / way : 0;
        return places.get(i - 1).times(1 - share).plus(places.get(i).times(share));
      }
    }
    return places.get(places.size() - 1);
  }

  private Place placeOf(String name) {
    for (DrawnPoint point : points) {
      if (point.place().equals(name)) {
        return point.position();
      }
    }
    throw new AssertionError("no place " + name);
  }

  /** The greatest extent of stems and points along an axis. */
  private double size() {
    List<Place> all = new ArrayList<>();
    stems.forEach(stem -> all.addAll(stem.loaded()));
    stems.forEach(stem -> all.addAll(stem.unloaded()));
    points.forEach(point -> all.add(point.position()));
    double size = 0.1;
    for (ToDoubleFunction<Place> axis :
        List.<ToDoubleFunction<Place>>of(Place::x, Place::y, Place::z)) {
      DoubleSummaryStatistics along = all.stream().mapToDouble(axis).summaryStatistics();
      size = Math.max(size, along.getMax() - along.getMin());
    }
    return size;
  }

  private double floor(PictureSpec spec) {
    if (spec.ground().isPresent()) {
      return metres(spec.ground().get());
    }
    double level = Double.MAX_VALUE;
    for (Stem stem : solution.plan().stems()) {
      level = Math.min(level, stem.base().in(Kind.LENGTH)[2]);
    }
    double lowest = level;
    if (solution.arrangement().tail() instanceof Tail.Point point) {
      double tail = point.position().in(Kind.LENGTH)[2];
      return tail > lowest - FARTHEST * size ? Math.min(lowest, tail) : lowest;
    }
    return lowest;
  }

  /** As stated; else that of the lowest base at height zero, if no part of the rig is below it. */
  private OptionalDouble ground(PictureSpec spec) {
    if (spec.ground().isPresent()) {
      return OptionalDouble.of(floor);
    }
    List<Place> all = new ArrayList<>();
    stems.forEach(stem -> all.addAll(stem.unloaded()));
    stems.forEach(stem -> all.addAll(stem.loaded()));
    points.forEach(point -> all.add(point.position()));
    boolean below = floor < 0 || all.stream().anyMatch(place -> place.z() < -1e-9 * size);
    boolean rooted = stems.stream().anyMatch(stem -> stem.unloaded().get(0).z() == 0);
    return rooted && !below ? OptionalDouble.of(0) : OptionalDouble.empty();
  }

  private DrawnLeg leg(Leg leg) {
    Place begin = leg.from().equals("piece") ? piece : placeOf(leg.from());
    Place end;
    boolean broken = leg.from().equals("piece");
    OptionalDouble beyond = OptionalDouble.empty();
    if (!leg.to().equals("tail")) {
      end = placeOf(leg.to());
    } else {
      Place stated = leg.end().map(place -> Place.of(place.in(Kind.LENGTH))).orElse(null);
      Place pull = Place.of(leg.pull().in(Kind.FORCE));
      double way =
          stated == null ? Math.max(0.1 * size, begin.z() - floor) : stated.minus(begin).length();
      broken = stated == null || way > FARTHEST * size;
      beyond = stated != null && broken ? OptionalDouble.of(way) : beyond;
      end =
          stated == null || broken
              ? begin.plus(pull.times(Math.min(way, FARTHEST * size) / pull.length()))
              : stated;
    }
    double tension = newtons(leg.tension());
    return new DrawnLeg(leg, begin, end, tension, otherTension(leg, tension), broken, beyond);
  }

  /** The tension of the same leg in the other state of a held load. */
  private double otherTension(Leg leg, double tension) {
    return solution
        .otherEnd()
        .map(
            other ->
                leg.to().startsWith("contacts/")
                    ? newtons(
                        other
                            .contacts()
                            .get(Integer.parseInt(leg.to().substring("contacts/".length())))
                            .tensionIn())
                    : newtons(other.tailTension()))
        .orElse(tension);
  }

  private void marks(DrawnStem stem) {
    StemResult result = stem.result();
    int last = stem.loaded().size() - 1;
    marks.add(
        new DrawnMark(
            result.id(),
            stems.size() > 1 ? "tip of " + result.id() : "tip",
            stem.unloaded().get(last),
            stem.loaded().get(last),
            metres(result.tipMovement().magnitude())));
    for (MarkResult mark : result.marks()) {
      Place to = Place.of(mark.position().in(Kind.LENGTH));
      Place moved = Place.of(mark.movement().in(Kind.LENGTH));
      marks.add(
          new DrawnMark(
              result.id(), mark.name(), to.minus(moved), enlarged(to, moved), moved.length()));
    }
  }

  /** All that has to be on the sheet; boxes as far as they are near. */
  List<Place> extremes(PictureSpec spec) {
    List<Place> all = new ArrayList<>();
    for (DrawnStem stem : stems) {
      for (int i = 0; i < stem.radii().size(); i++) {
        double r = stem.radii().get(i);
        for (Place place : List.of(stem.unloaded().get(i), stem.loaded().get(i))) {
          all.add(place.plus(new Place(r, r, r)));
          all.add(place.minus(new Place(r, r, r)));
        }
      }
    }
    for (DrawnPoint point : points) {
      all.add(point.position());
      all.add(point.attachment());
      all.add(tip(point));
    }
    for (DrawnLeg leg : legs) {
      all.add(leg.begin());
      all.add(leg.end());
    }
    tagline.ifPresent(all::add);
    Place base = stems.get(0).unloaded().get(0);
    all.add(new Place(base.x(), base.y(), floor));
    for (PictureSpec.NamedBox box : spec.boxes()) {
      for (Vector<Length> corner : List.of(box.box().least(), box.box().most())) {
        Place place = Place.of(corner.in(Kind.LENGTH));
        all.add(
            new Place(
                near(place.x(), base.x()), near(place.y(), base.y()), near(place.z(), base.z())));
      }
    }
    return all;
  }

  private double near(double coordinate, double middle) {
    return Math.max(middle - 1.5 * size, Math.min(middle + 1.5 * size, coordinate));
  }

  /** Where the arrow of a point's force ends. */
  Place tip(DrawnPoint point) {
    return point.position().plus(point.force().times(1 / forcePerMetre));
  }

  /** The azimuth of the plumb plane that best holds stems, points and tail, toward the load. */
  int azimuthDegrees() {
    List<Place> all = new ArrayList<>();
    for (DrawnStem stem : stems) {
      int last = stem.unloaded().size() - 1;
      all.add(stem.unloaded().get(0));
      all.add(stem.unloaded().get(last / 2));
      all.add(stem.unloaded().get(last));
    }
    points.forEach(point -> all.add(point.attachment()));
    legs.forEach(leg -> all.add(leg.end()));
    all.add(piece);
    double x = all.stream().mapToDouble(Place::x).average().orElse(0);
    double y = all.stream().mapToDouble(Place::y).average().orElse(0);
    double xx = 0;
    double yy = 0;
    double xy = 0;
    for (Place p : all) {
      xx += (p.x() - x) * (p.x() - x);
      yy += (p.y() - y) * (p.y() - y);
      xy += (p.x() - x) * (p.y() - y);
    }
    if (xx + yy < 1e-6 * size * size) {
      return 0;
    }
    double azimuth = StrictMath.atan2(2 * xy, xx - yy) / 2;
    Place base = stems.get(0).unloaded().get(0);
    double toward =
        (piece.x() - base.x()) * StrictMath.cos(azimuth)
            + (piece.y() - base.y()) * StrictMath.sin(azimuth);
    int degrees = (int) Math.rint(StrictMath.toDegrees(azimuth));
    return Math.floorMod(toward < -1e-9 ? degrees + 180 : degrees, 360);
  }

  static double metres(Quantity<Length> length) {
    return Si.value(length, Kind.LENGTH, "length");
  }

  static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }
}
