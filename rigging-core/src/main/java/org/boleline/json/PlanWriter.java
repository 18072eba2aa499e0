package org.boleline.json;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.boleline.explain.Datum;
import org.boleline.geometry.Heading;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.rope.StretchPoint;
import org.boleline.stem.Diameters;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.study.StudyPlan;
import org.boleline.units.Kind;
import org.boleline.wood.Log;
import org.boleline.wood.WoodProperties;

/**
 * Writes plans as plan files of the format {@code rigging-plan/1}.
 *
 * <p>Quantities stand in SI units, members in one order; what the plan left to defaults is left
 * out, and so is what it took from a species: the species is named. The same plan gives the same
 * text, and the text reads back to an equal plan, with the species data that the plan was made
 * with.
 */
public final class PlanWriter {
  private PlanWriter() {}

  /**
   * Returns a plan as the text of a plan file.
   *
   * @param plan the plan, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(Plan plan) {
    return JsonText.print(plan(plan).build());
  }

  /**
   * Returns a plan with its studies as the text of a plan file.
   *
   * @param plan the plan with its studies, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(StudyPlan plan) {
    ObjectBuilder object = plan(plan.plan());
    if (!plan.studies().isEmpty()) {
      object.putAll("studies", plan.studies(), study -> StudyWriting.study(study).build());
    }
    return JsonText.print(object.build());
  }

  /** Returns the places that were left to defaults. */
  private static Set<String> left(List<Datum> taken) {
    return taken.stream().map(Datum::name).collect(Collectors.toSet());
  }

  static ObjectBuilder plan(Plan plan) {
    ObjectBuilder object = new ObjectBuilder().put("format", PlanReading.FORMAT);
    if (!plan.title().isEmpty()) {
      object.put("title", plan.title());
    }
    if (!plan.notes().isEmpty()) {
      object.put("notes", plan.notes());
    }
    if (!left(plan.taken()).contains("/gravity")) {
      object.putStated("gravity", plan.gravity(), Kind.ACCELERATION);
    }
    object.putAll("stems", plan.stems(), PlanWriter::stem);
    object.put("piece", piece(plan.piece()));
    plan.rope().ifPresent(rope -> object.put("rope", rope(rope)));
    object.putAll("arrangements", plan.arrangements(), PlanWriter::arrangement);
    plan.limits().ifPresent(limits -> object.put("limits", LimitWriting.limits(limits)));
    plan.ranges().ifPresent(ranges -> RangesWriting.putStated(object, ranges));
    return object;
  }

  private static Json stem(Stem stem) {
    Set<String> left = left(stem.taken());
    ObjectBuilder object = new ObjectBuilder().put("id", stem.id());
    if (!left.contains("/base")) {
      object.putStated("base", stem.base());
    }
    object.put("shape", shape(stem.shape()));
    if (!left.contains("/shapeIs")) {
      object.put("shapeIs", stem.shapeIs() == ShapeIs.AS_STANDING ? "asStanding" : "stressFree");
    }
    object.putAll("diameters", stem.diameters().entries(), PlanWriter::entry);
    object.put("wood", wood(stem.wood()));
    if (!left.contains("/ownWeight")) {
      object.put("ownWeight", stem.ownWeight());
    }
    if (!left.contains("/root")) {
      object.put("root", root(stem.root()));
    }
    if (!stem.masses().isEmpty()) {
      object.putAll(
          "masses",
          stem.masses(),
          mass ->
              new ObjectBuilder()
                  .putStated("at", mass.at(), Kind.LENGTH)
                  .putStated("mass", mass.mass(), Kind.MASS)
                  .build());
    }
    if (!stem.marks().isEmpty()) {
      object.putAll(
          "marks",
          stem.marks(),
          mark ->
              new ObjectBuilder()
                  .put("name", mark.name())
                  .putStated("at", mark.at(), Kind.LENGTH)
                  .build());
    }
    return object.build();
  }

  private static ObjectBuilder putHeading(ObjectBuilder object, Heading heading) {
    return object
        .putStated("lean", heading.lean(), Kind.ANGLE)
        .putStated("azimuth", heading.azimuth(), Kind.ANGLE);
  }

  private static ObjectBuilder shape(StemShape shape) {
    ObjectBuilder object = new ObjectBuilder();
    if (shape instanceof StemShape.Straight straight) {
      putHeading(object, straight.heading()).putStated("length", straight.length(), Kind.LENGTH);
    } else if (shape instanceof StemShape.ByStations byStations) {
      object.putAll(
          "stations",
          byStations.stations(),
          station ->
              putHeading(
                      new ObjectBuilder().putStated("at", station.at(), Kind.LENGTH),
                      station.heading())
                  .build());
    } else if (shape instanceof StemShape.ByPoints byPoints) {
      object.putAll("points", byPoints.points(), ObjectBuilder::stated);
    }
    return object;
  }

  private static Json entry(Diameters.Entry entry) {
    ObjectBuilder object =
        new ObjectBuilder()
            .putStated("at", entry.at(), Kind.LENGTH)
            .putStated("outer", entry.outer(), Kind.LENGTH);
    if (entry.isHollow()) {
      object.putStated("cavity", entry.cavity(), Kind.LENGTH);
    }
    return object.build();
  }

  private static Json root(Root root) {
    return root instanceof Root.Turning turning
        ? new ObjectBuilder()
            .putStated(
                "rotationalStiffness", turning.rotationalStiffness(), Kind.ROTATIONAL_STIFFNESS)
            .build()
        : new Json.Text("clamped");
  }

  private static ObjectBuilder piece(Piece piece) {
    ObjectBuilder object = new ObjectBuilder();
    piece
        .log()
        .ifPresentOrElse(
            log -> object.put("log", log(log)).putStated("foliage", piece.foliage(), Kind.MASS),
            () -> object.putStated("mass", piece.mass(), Kind.MASS));
    return object;
  }

  private static ObjectBuilder rope(Rope rope) {
    ObjectBuilder object =
        new ObjectBuilder()
            .putStated("minimumBreakingStrength", rope.minimumBreakingStrength(), Kind.FORCE)
            .putStated("diameter", rope.diameter(), Kind.LENGTH)
            .putStated("linearDensity", rope.linearDensity(), Kind.LINEAR_DENSITY);
    putCurve(object, "stretch", rope.stretch());
    putCurve(object, "dropStretch", rope.dropStretch());
    return object;
  }

  private static void putCurve(ObjectBuilder object, String name, List<StretchPoint> points) {
    if (!points.isEmpty()) {
      object.putAll(
          name,
          points,
          point ->
              new ObjectBuilder()
                  .putStated("tension", point.tension(), Kind.FORCE)
                  .put("elongation", point.elongationFraction())
                  .build());
    }
  }

  private static Json arrangement(Arrangement arrangement) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("id", arrangement.id())
            .put("motion", arrangement.motion().text())
            .putAll("contacts", arrangement.contacts(), PlanWriter::contact)
            .put("tail", tail(arrangement.tail()));
    arrangement
        .tagline()
        .ifPresent(
            line ->
                object.put(
                    "tagline",
                    new ObjectBuilder()
                        .putStated("angle", line.angle(), Kind.ANGLE)
                        .putStated("azimuth", line.azimuth(), Kind.ANGLE)));
    arrangement.drop().ifPresent(drop -> object.put("drop", drop(drop)));
    return object.build();
  }

  private static Json contact(Contact contact) {
    Set<String> left = left(contact.taken());
    ObjectBuilder object =
        new ObjectBuilder()
            .put("stem", contact.stem())
            .putStated("at", contact.at(), Kind.LENGTH)
            .put("hardware", hardware(contact.hardware()));
    if (!left.contains("/sling")) {
      object.putStated("sling", contact.sling(), Kind.LENGTH);
    }
    if (!left.contains("/offset")) {
      object.putStated("offset", contact.offset(), Kind.LENGTH);
    }
    if (contact.hasRopeWeight()) {
      object.put("ropeWeight", true);
    }
    contact
        .hardwareInCatch()
        .ifPresent(inCatch -> object.put("hardwareInCatch", hardware(inCatch)));
    object.putStated("slingStiffness", contact.slingStiffness(), Kind.STIFFNESS);
    contact.opens().ifPresent(opens -> object.put("opens", opens));
    return object.build();
  }

  private static ObjectBuilder hardware(Hardware hardware) {
    ObjectBuilder numbers = new ObjectBuilder();
    if (hardware instanceof FrictionRing ring) {
      numbers.put("friction", ring.friction());
    } else if (hardware instanceof Bark bark) {
      numbers.put("friction", bark.friction());
    } else if (hardware instanceof Sheave sheave) {
      numbers.put("efficiency", sheave.efficiency());
    }
    return new ObjectBuilder().put(hardware.name(), numbers);
  }

  private static ObjectBuilder tail(Tail tail) {
    ObjectBuilder object = new ObjectBuilder();
    if (tail instanceof Tail.Point point) {
      object.putStated("point", point.position());
    } else if (tail instanceof Tail.Device device) {
      ObjectBuilder inner =
          new ObjectBuilder()
              .put("stem", device.stem())
              .putStated("at", device.at(), Kind.LENGTH)
              .put("friction", device.friction())
              .put("wraps", device.wraps());
      if (device.taken().isEmpty()) {
        inner.putStated("offset", device.offset(), Kind.LENGTH);
      }
      device.frictionInCatch().ifPresent(friction -> inner.put("frictionInCatch", friction));
      object.put("device", inner);
    } else {
      object.put("direction", "down");
    }
    return object;
  }

  private static ObjectBuilder drop(DropSpec drop) {
    Set<String> left = left(drop.taken());
    ObjectBuilder object =
        new ObjectBuilder()
            .putStated("fall", drop.fall(), Kind.LENGTH)
            .put("device", hold(drop.hold()));
    if (!left.contains("/loadLeg")) {
      object.putStated("loadLeg", drop.loadLeg(), Kind.LENGTH);
    }
    if (!left.contains("/tieToCentre")) {
      object.putStated("tieToCentre", drop.tieToCentre(), Kind.LENGTH);
    }
    if (!left.contains("/level")) {
      object.put("level", drop.level().text());
    }
    if (drop.level() == DropSpec.Level.IN_TIME && !left.contains("/stemDamping")) {
      object.put("stemDamping", drop.stemDampingRatio());
    }
    if (drop.level() == DropSpec.Level.IN_TIME && !left.contains("/duration")) {
      object.putStated("duration", drop.duration(), Kind.TIME);
    }
    return object.putStated("stopOver", drop.stopOver(), Kind.LENGTH);
  }

  private static Json hold(DropSpec.Hold hold) {
    if (hold instanceof DropSpec.Slipping slipping) {
      return new ObjectBuilder()
          .putStated("slipTension", slipping.slipTension(), Kind.FORCE)
          .build();
    }
    if (hold instanceof DropSpec.ByHand byHand) {
      return new ObjectBuilder()
          .putStated("handForce", byHand.handForce(), Kind.FORCE)
          .putStated("delay", byHand.delay(), Kind.TIME)
          .build();
    }
    return new Json.Text("locked");
  }

  private static ObjectBuilder wood(WoodProperties wood) {
    Set<String> left = left(wood.taken());
    ObjectBuilder object = new ObjectBuilder();
    wood.species().ifPresent(species -> object.put("species", species.commonName()));
    if (!left.contains("modulusOfElasticity")) {
      object.putStated("modulusOfElasticity", wood.modulusOfElasticity(), Kind.PRESSURE);
    }
    if (!left.contains("shearModulus")) {
      object.putStated("shearModulus", wood.shearModulus(), Kind.PRESSURE);
    }
    if (!left.contains("density")) {
      object.putStated("density", wood.density(), Kind.DENSITY);
    }
    if (!left.contains("bendingStrength")) {
      object.putStated("bendingStrength", wood.bendingStrength(), Kind.PRESSURE);
    }
    if (!left.contains("compressionStrength")) {
      object.putStated("compressionStrength", wood.compressionStrength(), Kind.PRESSURE);
    }
    return object;
  }

  private static ObjectBuilder log(Log log) {
    ObjectBuilder object =
        new ObjectBuilder()
            .putStated("length", log.length(), Kind.LENGTH)
            .putStated("largeEnd", log.largeEnd(), Kind.LENGTH)
            .putStated("smallEnd", log.smallEnd(), Kind.LENGTH);
    log.species()
        .ifPresentOrElse(
            species -> object.put("species", species.commonName()),
            () -> object.putStated("density", log.density(), Kind.DENSITY));
    return object;
  }
}
