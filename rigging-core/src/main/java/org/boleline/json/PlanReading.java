package org.boleline.json;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Heading;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Limits;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.RangesSpec;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.rope.Sheave;
import org.boleline.rope.StretchPoint;
import org.boleline.stem.Diameters;
import org.boleline.stem.Mark;
import org.boleline.stem.PointMass;
import org.boleline.stem.Root;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.study.Study;
import org.boleline.units.Amounts;
import org.boleline.units.Density;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.wood.Log;
import org.boleline.wood.Species;
import org.boleline.wood.SpeciesPack;
import org.boleline.wood.WoodProperties;
import org.jspecify.annotations.Nullable;

/**
 * From the members of a plan file to a plan.
 *
 * <p>Each method reads one object and leaves the rules to the types it makes; a value that is not
 * there or could not be read is null.
 */
final class PlanReading {
  static final String FORMAT = "rigging-plan/1";

  private static final Heading PLUMB = Heading.of(Amounts.radians(0), Amounts.radians(0));
  private static final Quantity<Angle> NO_ANGLE = Amounts.radians(0);
  private static final Quantity<Length> NO_LENGTH = Amounts.metres(0);

  /** Stand-ins for measures that could not be had, or that are looked at by themselves. */
  private static final Quantity<Length> METRE = Amounts.metres(1);

  private static final Quantity<Force> FORCE = Amounts.newtons(1);
  private static final Quantity<Density> DENSITY = Amounts.kilogramsPerCubicMetre(1000);

  private final Supplier<SpeciesPack> species;
  private List<Study> studies = List.of();

  /** Asks for the species data only if the plan names a species. */
  PlanReading(Supplier<SpeciesPack> species) {
    this.species = species;
  }

  Plan plan(Members m) {
    format(m);
    Plan.Builder plan = Plan.builder();
    @Nullable String title = m.text("title", "text");
    if (title != null) {
      plan.title(title);
    }
    @Nullable String notes = m.text("notes", "text");
    if (notes != null) {
      plan.notes(notes);
    }
    var gravity = m.quantity("gravity", Kind.ACCELERATION);
    if (gravity != null) {
      plan.gravity(gravity);
    }
    plan.stems(m.objects("stems", this::stem));
    @Nullable Piece piece = m.object("piece", this::piece);
    if (piece != null) {
      plan.piece(piece);
    }
    @Nullable Rope rope = m.object("rope", PlanReading::rope);
    if (rope != null) {
      plan.rope(rope);
    }
    plan.arrangements(m.objects("arrangements", PlanReading::arrangement));
    @Nullable Limits limits = m.object("limits", LimitReading::limits);
    if (limits != null) {
      plan.limits(limits);
    }
    @Nullable RangesSpec ranges = RangesReading.ranges(m);
    if (ranges != null) {
      plan.ranges(ranges);
    }
    StudyReading reading = new StudyReading();
    studies = reading.studies(m);
    m.noMore();
    Plan stated = plan.stated(m.refusals());
    if (!m.refusals().hasAny()) {
      reading.check(stated);
    }
    return stated;
  }

  /** Returns the studies that stood beside the plan. */
  List<Study> studies() {
    return studies;
  }

  private static void format(Members m) {
    String wants = JsonText.quoted(FORMAT);
    @Nullable String format = m.text("format", wants);
    if (!FORMAT.equals(format)) {
      m.refusals()
          .at("format")
          .add(
              Refusal.Code.WRONG_FORMAT,
              wants,
              format == null ? "nothing" : JsonText.quoted(format));
    }
  }

  private Stem stem(Members m) {
    Stem.Builder stem = Stem.builder();
    @Nullable String id = m.text("id", "text");
    if (id != null) {
      stem.id(id);
    }
    var base = m.position("base");
    if (base != null) {
      stem.base(base);
    }
    @Nullable StemShape shape = m.object("shape", PlanReading::shape);
    if (shape != null) {
      stem.shape(shape);
    }
    @Nullable ShapeIs shapeIs = shapeIs(m);
    if (shapeIs != null) {
      stem.shapeIs(shapeIs);
    }
    if (m.has("diameters")) {
      stem.diameters(
          Diameters.stated(
              m.objects("diameters", PlanReading::entry), m.refusals().at("diameters")));
    }
    @Nullable WoodProperties wood = m.object("wood", this::wood);
    if (wood != null) {
      stem.wood(wood);
    }
    @Nullable Boolean ownWeight = m.flag("ownWeight");
    if (ownWeight != null) {
      stem.ownWeight(ownWeight);
    }
    @Nullable Root root =
        m.wordOrObject("root", "clamped", Root.Clamped.CLAMPED, PlanReading::turningRoot);
    if (root != null) {
      stem.root(root);
    }
    stem.masses(
        m.objects(
            "masses",
            mass ->
                PointMass.stated(
                    mass.quantity("at", Kind.LENGTH),
                    mass.quantity("mass", Kind.MASS),
                    mass.refusals())));
    stem.marks(
        m.objects(
            "marks",
            mark ->
                Mark.stated(
                    mark.text("name", "text"), mark.quantity("at", Kind.LENGTH), mark.refusals())));
    return stem.stated(m.refusals());
  }

  private static @Nullable StemShape shape(Members m) {
    boolean isStraight = m.hasAny("lean", "azimuth", "length");
    boolean byStations = m.has("stations");
    boolean byPoints = m.has("points");
    String wants = "one of {\"lean\", \"azimuth\", \"length\"}, {\"stations\"} or {\"points\"}";
    if (isStraight ? byStations || byPoints : byStations && byPoints) {
      m.refusals().add(Refusal.Code.CONFLICT, wants, "more than one of them");
      return null;
    }
    if (byStations) {
      return StemShape.ByStations.stated(
          m.objects(
              "stations",
              station ->
                  StemShape.Station.stated(
                      station.quantity("at", Kind.LENGTH), heading(station), station.refusals())),
          m.refusals().at("stations"));
    }
    if (byPoints) {
      return StemShape.ByPoints.stated(
          m.list("points", "a list of points", Members::position), m.refusals().at("points"));
    }
    if (isStraight) {
      return StemShape.Straight.stated(heading(m), m.quantity("length", Kind.LENGTH), m.refusals());
    }
    m.noMore();
    m.refusals().add(Refusal.Code.MISSING, wants, "none of them");
    return null;
  }

  private static Heading heading(Members m) {
    @Nullable Quantity<Angle> lean = required(m, "lean", Kind.ANGLE);
    @Nullable Quantity<Angle> azimuth = required(m, "azimuth", Kind.ANGLE);
    @Nullable Heading heading =
        m.refusals()
            .trying(
                () ->
                    Heading.of(
                        lean == null ? NO_ANGLE : lean, azimuth == null ? NO_ANGLE : azimuth));
    return heading == null ? PLUMB : heading;
  }

  private static <Q extends Quantity<Q>> @Nullable Quantity<Q> required(
      Members m, String name, Kind<Q> kind) {
    @Nullable Quantity<Q> value = m.quantity(name, kind);
    if (value == null) {
      m.refusals().at(name).add(Refusal.Code.MISSING, QuantityText.wants(kind), "nothing");
    }
    return value;
  }

  private static Diameters.Entry entry(Members m) {
    @Nullable Quantity<Length> cavity = m.quantity("cavity", Kind.LENGTH);
    return Diameters.Entry.stated(
        m.quantity("at", Kind.LENGTH),
        m.quantity("outer", Kind.LENGTH),
        cavity == null ? NO_LENGTH : cavity,
        m.refusals());
  }

  private static @Nullable ShapeIs shapeIs(Members m) {
    String wants = "\"asStanding\" or \"stressFree\"";
    @Nullable String word = m.text("shapeIs", wants);
    if (word == null) {
      return null;
    }
    return switch (word) {
      case "asStanding" -> ShapeIs.AS_STANDING;
      case "stressFree" -> ShapeIs.STRESS_FREE;
      default -> {
        m.refusals().at("shapeIs").add(Refusal.Code.OUT_OF_RANGE, wants, JsonText.quoted(word));
        yield null;
      }
    };
  }

  private static Root turningRoot(Members m) {
    return Root.Turning.stated(
        m.quantity("rotationalStiffness", Kind.ROTATIONAL_STIFFNESS), m.refusals());
  }

  private @Nullable Piece piece(Members m) {
    @Nullable Quantity<Mass> foliage = m.quantity("foliage", Kind.MASS);
    @Nullable String kind = m.oneOf("mass", "log");
    if ("mass".equals(kind)) {
      if (foliage != null) {
        m.refusals()
            .at("foliage")
            .add(Refusal.Code.CONFLICT, "foliage beside a log only", "foliage beside a mass");
      }
      return Piece.stated(m.quantity("mass", Kind.MASS), m.refusals());
    }
    if ("log".equals(kind)) {
      return Piece.stated(m.object("log", this::log), foliage, m.refusals());
    }
    m.refusals().add(Refusal.Code.MISSING, "one of the members mass, log", "neither");
    return null;
  }

  private static Rope rope(Members m) {
    Rope rope = Rope.UNSTATED;
    rope =
        with(
            m,
            rope,
            m.quantity("minimumBreakingStrength", Kind.FORCE),
            Rope::withMinimumBreakingStrength);
    rope = with(m, rope, m.quantity("diameter", Kind.LENGTH), Rope::withDiameter);
    // Already refused: these stand in, so that limits that want them are not refused as well.
    if (m.has("minimumBreakingStrength") && rope.minimumBreakingStrength().isEmpty()) {
      rope = rope.withMinimumBreakingStrength(FORCE);
    }
    if (m.has("diameter") && rope.diameter().isEmpty()) {
      rope = rope.withDiameter(Amounts.millimetres(1));
    }
    boolean weighs = m.has("linearDensity");
    rope = with(m, rope, m.quantity("linearDensity", Kind.LINEAR_DENSITY), Rope::withLinearDensity);
    if (weighs && rope.linearDensity().isEmpty()) {
      // Already refused: stands in, so that legs whose weight counts are not refused for it.
      rope = rope.withLinearDensity(Amounts.kilogramsPerMetre(1));
    }
    rope = with(m, rope, curve(m, "stretch"), Rope::withStretch);
    return with(m, rope, curve(m, "dropStretch"), Rope::withDropStretch);
  }

  private static List<StretchPoint> curve(Members m, String name) {
    List<StretchPoint> curve = new ArrayList<>();
    for (@Nullable StretchPoint point : m.objects(name, PlanReading::stretchPoint)) {
      if (point != null) {
        curve.add(point);
      }
    }
    return curve;
  }

  private static <V> Rope with(
      Members m, Rope rope, @Nullable V value, BiFunction<Rope, V, Rope> change) {
    if (value == null) {
      return rope;
    }
    @Nullable Rope changed = m.refusals().trying(() -> change.apply(rope, value));
    return changed == null ? rope : changed;
  }

  private static @Nullable StretchPoint stretchPoint(Members m) {
    @Nullable Quantity<Force> tension = required(m, "tension", Kind.FORCE);
    @Nullable Double elongation = m.number("elongation");
    if (elongation == null) {
      m.refusals()
          .at("elongation")
          .add(Refusal.Code.MISSING, "a number above zero, such as 0.03 for 3 %", "nothing");
    }
    // each number beside a stand-in first, so that both are noted if both are wrong
    if (tension != null) {
      m.refusals().trying(() -> StretchPoint.of(tension, 1));
    }
    return elongation == null
        ? null
        : m.refusals().trying(() -> StretchPoint.of(tension == null ? FORCE : tension, elongation));
  }

  private static Arrangement arrangement(Members m) {
    Arrangement.Builder arrangement = Arrangement.builder();
    @Nullable String id = m.text("id", "text");
    if (id != null) {
      arrangement.id(id);
    }
    @Nullable String word = m.text("motion", "\"lowering\", \"raising\" or \"held\"");
    @Nullable Motion motion = word == null ? null : m.refusals().trying(() -> Motion.parse(word));
    if (motion != null) {
      arrangement.motion(motion);
    }
    arrangement.contacts(m.objects("contacts", PlanReading::contact));
    @Nullable Tail tail = m.object("tail", PlanReading::tail);
    if (tail != null) {
      arrangement.tail(tail);
    }
    @Nullable Tagline tagline =
        m.object(
            "tagline",
            line ->
                Tagline.stated(
                    line.quantity("angle", Kind.ANGLE),
                    line.quantity("azimuth", Kind.ANGLE),
                    line.refusals()));
    if (tagline != null) {
      arrangement.tagline(tagline);
    }
    @Nullable DropSpec drop = m.object("drop", PlanReading::drop);
    if (drop != null) {
      arrangement.drop(drop);
    }
    return arrangement.stated(m.refusals());
  }

  private static Contact contact(Members m) {
    Contact contact =
        Contact.stated(
            m.text("stem", "the id of a stem"),
            m.quantity("at", Kind.LENGTH),
            m.object("hardware", PlanReading::hardware),
            m.quantity("sling", Kind.LENGTH),
            m.quantity("offset", Kind.LENGTH),
            Boolean.TRUE.equals(m.flag("ropeWeight")),
            m.object("hardwareInCatch", PlanReading::hardware),
            m.quantity("slingStiffness", Kind.STIFFNESS),
            m.refusals());
    @Nullable Boolean opens = m.flag("opens");
    return opens == null ? contact : contact.withOpens(opens);
  }

  private static @Nullable Hardware hardware(Members m) {
    @Nullable String kind = m.oneOf("ideal", "ring", "sheave", "bark");
    if (kind == null) {
      m.refusals()
          .add(Refusal.Code.MISSING, "one of the members ideal, ring, sheave, bark", "none");
      return null;
    }
    return switch (kind) {
      case "ring" -> m.object(kind, ring -> friction(ring, FrictionRing::new));
      case "sheave" -> m.object(kind, sheave -> number(sheave, "efficiency", Sheave::new));
      case "bark" -> m.object(kind, bark -> friction(bark, Bark::new));
      default -> m.object(kind, ideal -> Ideal.INSTANCE);
    };
  }

  private static @Nullable Hardware friction(Members m, DoubleFunction<Hardware> making) {
    return number(m, "friction", making);
  }

  private static @Nullable Hardware number(
      Members m, String name, DoubleFunction<Hardware> making) {
    @Nullable Double number = m.number(name);
    if (number == null) {
      m.refusals().at(name).add(Refusal.Code.MISSING, "a number, such as 0.25", "nothing");
      return null;
    }
    return m.refusals().trying(() -> making.apply(number));
  }

  private static @Nullable Tail tail(Members m) {
    @Nullable String kind = m.oneOf("point", "direction", "device");
    if (kind == null) {
      m.refusals().add(Refusal.Code.MISSING, "one of the members point, direction, device", "none");
      return null;
    }
    return switch (kind) {
      case "point" -> Tail.Point.stated(m.position(kind), m.refusals());
      case "device" ->
          m.object(
              kind,
              device ->
                  Tail.Device.stated(
                      device.text("stem", "the id of a stem"),
                      device.quantity("at", Kind.LENGTH),
                      device.number("friction"),
                      device.number("wraps"),
                      device.quantity("offset", Kind.LENGTH),
                      device.number("frictionInCatch"),
                      device.refusals()));
      default -> direction(m);
    };
  }

  private static Tail direction(Members m) {
    @Nullable String word = m.text("direction", "\"down\"");
    if (word != null && !word.equals("down")) {
      m.refusals()
          .at("direction")
          .add(Refusal.Code.OUT_OF_RANGE, "\"down\"", JsonText.quoted(word));
    }
    return Tail.Down.DOWN;
  }

  private static DropSpec drop(Members m) {
    @Nullable String word = m.text("level", "the name of a level, such as \"givingPoints\"");
    return DropSpec.stated(
        m.quantity("fall", Kind.LENGTH),
        m.wordOrObject("device", "locked", DropSpec.Locked.LOCKED, PlanReading::hold),
        m.quantity("loadLeg", Kind.LENGTH),
        m.quantity("tieToCentre", Kind.LENGTH),
        word == null ? null : m.refusals().trying(() -> DropSpec.Level.parse(word)),
        m.quantity("stopOver", Kind.LENGTH),
        m.number("stemDamping"),
        m.quantity("duration", Kind.TIME),
        m.refusals());
  }

  private static DropSpec.@Nullable Hold hold(Members m) {
    boolean slips = m.has("slipTension");
    boolean byHand = m.hasAny("handForce", "delay");
    String wants = "one of {\"slipTension\"} or {\"handForce\", \"delay\"}";
    if (slips && byHand) {
      m.refusals().add(Refusal.Code.CONFLICT, wants, "both");
      return null;
    }
    if (slips) {
      return DropSpec.Slipping.stated(m.quantity("slipTension", Kind.FORCE), m.refusals());
    }
    if (byHand) {
      return DropSpec.ByHand.stated(
          m.quantity("handForce", Kind.FORCE), m.quantity("delay", Kind.TIME), m.refusals());
    }
    m.noMore();
    m.refusals().add(Refusal.Code.MISSING, wants, "neither");
    return null;
  }

  private @Nullable WoodProperties wood(Members m) {
    WoodProperties.Builder wood = WoodProperties.builder();
    boolean isKnown = true;
    if (m.has("species")) {
      @Nullable Species found = species(m);
      isKnown = found != null;
      if (found != null) {
        wood.species(found);
      }
    }
    take(m, "modulusOfElasticity", Kind.PRESSURE, wood::modulusOfElasticity);
    take(m, "shearModulus", Kind.PRESSURE, wood::shearModulus);
    take(m, "density", Kind.DENSITY, wood::density);
    take(m, "bendingStrength", Kind.PRESSURE, wood::bendingStrength);
    take(m, "compressionStrength", Kind.PRESSURE, wood::compressionStrength);
    return isKnown ? m.refusals().trying(wood::build) : null;
  }

  private static <Q extends Quantity<Q>> void take(
      Members m, String name, Kind<Q> kind, Function<Quantity<Q>, WoodProperties.Builder> stating) {
    @Nullable Quantity<Q> value = m.quantity(name, kind);
    if (value != null) {
      m.refusals().trying(() -> stating.apply(value));
    }
  }

  private @Nullable Species species(Members m) {
    @Nullable String name = m.text("species", "the name of a species in the data");
    return name == null
        ? null
        : m.refusals().at("species").trying(() -> species.get().species(name));
  }

  private @Nullable Log log(Members m) {
    @Nullable Quantity<Length> length = required(m, "length", Kind.LENGTH);
    @Nullable Quantity<Length> largeEnd = required(m, "largeEnd", Kind.LENGTH);
    @Nullable Quantity<Length> smallEnd = required(m, "smallEnd", Kind.LENGTH);
    @Nullable String of = m.oneOf("species", "density");
    if (of == null) {
      m.refusals().add(Refusal.Code.MISSING, "one of the members species, density", "neither");
    }
    @Nullable Species known = "species".equals(of) ? species(m) : null;
    @Nullable Quantity<Density> density =
        "density".equals(of) ? m.quantity("density", Kind.DENSITY) : null;
    // each measure beside stand-ins first, so that every one that is wrong is noted
    Refusals here = m.refusals();
    if (length != null) {
      here.trying(() -> Log.of(length, METRE, METRE, DENSITY));
    }
    if (largeEnd != null) {
      here.trying(() -> Log.of(METRE, largeEnd, NO_LENGTH, DENSITY));
    }
    if (smallEnd != null && largeEnd == null) {
      here.trying(() -> Log.of(METRE, METRE, smallEnd, DENSITY));
    }
    if (density != null) {
      here.trying(() -> Log.of(METRE, METRE, METRE, density));
    }
    if (length == null || largeEnd == null || smallEnd == null) {
      return null;
    }
    if (known != null) {
      return here.trying(() -> Log.of(length, largeEnd, smallEnd, known));
    }
    return density == null ? null : here.trying(() -> Log.of(length, largeEnd, smallEnd, density));
  }
}
