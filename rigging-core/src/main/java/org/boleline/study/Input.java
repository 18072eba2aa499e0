package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
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
import org.boleline.stem.Diameters;
import org.boleline.stem.Root;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.Log;
import org.boleline.wood.WoodProperties;
import org.jspecify.annotations.Nullable;

/**
 * One number of a plan that can be read and replaced.
 *
 * <p>It is named as plan files name it: by a JSON pointer such as {@code
 * /stems/0/wood/modulusOfElasticity} or {@code /arrangements/1/contacts/0/at}. One has no member of
 * its own: {@code /stems/0/diameters} is a factor on all diameters of a stem, outer and cavity
 * alike, so that weight and stiffness go together; its value in any plan is 1.
 *
 * <p>What a plan leaves to a default or to data can be read and replaced too; it is stated then.
 * What it does not have, such as the friction of a sheave, is refused with its place.
 *
 * <p>Immutable and thread-safe; equality is that of the pointer.
 */
public final class Input {
  private static final Pattern PLACE =
      Pattern.compile("/(stems|arrangements)/(0|[1-9][0-9]{0,3})/(.+)");
  private static final Pattern CONTACT = Pattern.compile("contacts/(0|[1-9][0-9]{0,3})/(.+)");

  private final String pointer;
  private final String name;
  private final @Nullable Kind<?> kind;
  private final BiFunction<Plan, Refusals, Double> read;
  private final Writing write;

  /** Replaces the number; notes what is wrong. */
  @FunctionalInterface
  private interface Writing {
    Plan with(Plan plan, double si, Refusals refusals);
  }

  /** Replaces a number of a part of a plan; notes what is wrong, at the part. */
  @FunctionalInterface
  private interface Part<T> {
    T with(T part, double si, Refusals refusals);
  }

  private Input(
      String pointer,
      String name,
      @Nullable Kind<?> kind,
      BiFunction<Plan, Refusals, Double> read,
      Writing write) {
    this.pointer = pointer;
    this.name = name;
    this.kind = kind;
    this.read = read;
    this.write = write;
  }

  /**
   * Obtains the mass of the piece; replaced, the piece is one of a stated mass.
   *
   * @return the input {@code /piece/mass}
   */
  public static Input pieceMass() {
    return new Input(
        "/piece/mass",
        "mass of the piece",
        Kind.MASS,
        (plan, refusals) -> Si.value(plan.piece().mass(), Kind.MASS, "mass"),
        (plan, x, refusals) ->
            plan.toBuilder()
                .piece(Piece.stated(Si.of(x, Kind.MASS), refusals.at("piece")))
                .stated(refusals));
  }

  private static Input log(String member, String name, ToDoubleFunction<Log> read) {
    return new Input(
        "/piece/log/" + member,
        name,
        member.equals("density") ? Kind.DENSITY : Kind.LENGTH,
        (plan, refusals) ->
            plan.piece()
                .log()
                .map(read::applyAsDouble)
                .orElseGet(() -> missing(refusals.at("piece").at("log"), "a log")),
        (plan, x, refusals) -> withLog(plan, member, x, refusals));
  }

  private static Plan withLog(Plan plan, String member, double x, Refusals refusals) {
    Log log = plan.piece().log().orElseThrow();
    Refusals at = refusals.at("piece").at("log");
    Quantity<Length> metres = Amounts.metres(x);
    @Nullable Log changed =
        at.trying(
            () ->
                Log.of(
                    member.equals("length") ? metres : log.length(),
                    member.equals("largeEnd") ? metres : log.largeEnd(),
                    member.equals("smallEnd") ? metres : log.smallEnd(),
                    member.equals("density") ? Amounts.kilogramsPerCubicMetre(x) : log.density()));
    return plan.toBuilder()
        .piece(Piece.stated(changed, plan.piece().foliage().orElse(null), refusals.at("piece")))
        .stated(refusals);
  }

  private static Input rope(
      String member,
      String name,
      Kind<?> kind,
      ToDoubleFunction<Rope> read,
      BiFunction<Rope, Double, Rope> write) {
    return new Input(
        "/rope/" + member,
        name,
        kind,
        (plan, refusals) -> {
          double value = read.applyAsDouble(plan.rope().orElse(Rope.UNSTATED));
          return Double.isNaN(value) ? missing(refusals.at("rope").at(member), "a number") : value;
        },
        (plan, x, refusals) -> {
          Rope rope = plan.rope().orElse(Rope.UNSTATED);
          @Nullable Rope changed = refusals.at("rope").trying(() -> write.apply(rope, x));
          return plan.toBuilder().rope(changed == null ? rope : changed).stated(refusals);
        });
  }

  /**
   * Obtains the minimum breaking strength of the rope.
   *
   * @return the input {@code /rope/minimumBreakingStrength}
   */
  public static Input ropeStrength() {
    return rope(
        "minimumBreakingStrength",
        "minimum breaking strength of the rope",
        Kind.FORCE,
        rope -> si(rope.minimumBreakingStrength(), Kind.FORCE),
        (rope, x) -> rope.withMinimumBreakingStrength(Si.of(x, Kind.FORCE)));
  }

  /**
   * Obtains the mass of the rope for each length.
   *
   * @return the input {@code /rope/linearDensity}
   */
  public static Input ropeLinearDensity() {
    return rope(
        "linearDensity",
        "linear density of the rope",
        Kind.LINEAR_DENSITY,
        rope -> si(rope.linearDensity(), Kind.LINEAR_DENSITY),
        (rope, x) -> rope.withLinearDensity(Si.of(x, Kind.LINEAR_DENSITY)));
  }

  private static <Q extends Quantity<Q>> double si(Optional<Quantity<Q>> value, Kind<Q> kind) {
    return value.map(q -> Si.value(q, kind, kind.name())).orElse(Double.NaN);
  }

  private static double missing(Refusals at, String wants) {
    at.add(Refusal.Code.MISSING, wants + " that the plan has", "none");
    return Double.NaN;
  }

  private static <T> @Nullable T element(List<T> list, int index, Refusals at, String what) {
    if (index < list.size()) {
      return list.get(index);
    }
    at.add(
        Refusal.Code.UNKNOWN_REFERENCE,
        "one of the " + list.size() + " " + what + " of the plan, counted from 0",
        "" + index);
    return null;
  }

  private static <T> List<T> replaced(List<T> list, int index, T element) {
    List<T> out = new ArrayList<>(list);
    out.set(index, element);
    return out;
  }

  private static int index(int index) {
    if (index < 0) {
      throw new IllegalArgumentException("index: wants zero or more, got " + index);
    }
    return index;
  }

  /** A number of a stem; what reads it notes nothing and returns NaN if the stem has none. */
  private static Input stem(
      int index,
      String member,
      String what,
      @Nullable Kind<?> kind,
      ToDoubleFunction<Stem> read,
      Part<Stem> write) {
    return new Input(
        "/stems/" + index(index) + "/" + member,
        what + " of stem " + (index + 1),
        kind,
        (plan, refusals) -> {
          @Nullable Stem stem =
              element(plan.stems(), index, refusals.at("stems").at(index), "stems");
          double value = stem == null ? Double.NaN : read.applyAsDouble(stem);
          return stem != null && Double.isNaN(value)
              ? missing(at(refusals.at("stems").at(index), member), "a number")
              : value;
        },
        (plan, x, refusals) ->
            plan.toBuilder()
                .stems(
                    replaced(
                        plan.stems(),
                        index,
                        write.with(plan.stems().get(index), x, refusals.at("stems").at(index))))
                .stated(refusals));
  }

  private static Refusals at(Refusals refusals, String members) {
    Refusals at = refusals;
    for (String member : members.split("/", -1)) {
      at = at.at(member);
    }
    return at;
  }

  private static Input wood(
      int index,
      String member,
      String what,
      Kind<?> kind,
      ToDoubleFunction<WoodProperties> read,
      BiFunction<WoodProperties.Builder, Double, WoodProperties.Builder> write) {
    return stem(
        index,
        "wood/" + member,
        what,
        kind,
        stem -> read.applyAsDouble(stem.wood()),
        (stem, x, refusals) -> {
          @Nullable WoodProperties wood =
              refusals.at("wood").trying(() -> write.apply(stated(stem.wood()), x).build());
          return stem.toBuilder().wood(wood == null ? stem.wood() : wood).stated(refusals);
        });
  }

  /** A builder that states what the wood states, and takes from data what the wood took. */
  private static WoodProperties.Builder stated(WoodProperties wood) {
    Set<String> taken = wood.taken().stream().map(Datum::name).collect(Collectors.toSet());
    WoodProperties.Builder builder = WoodProperties.builder();
    wood.species().ifPresent(builder::species);
    if (!taken.contains("modulusOfElasticity")) {
      builder.modulusOfElasticity(wood.modulusOfElasticity());
    }
    if (!taken.contains("shearModulus")) {
      builder.shearModulus(wood.shearModulus());
    }
    if (!taken.contains("density")) {
      builder.density(wood.density());
    }
    if (!taken.contains("bendingStrength")) {
      wood.bendingStrength().ifPresent(builder::bendingStrength);
    }
    if (!taken.contains("compressionStrength")) {
      wood.compressionStrength().ifPresent(builder::compressionStrength);
    }
    return builder;
  }

  /**
   * Obtains the modulus of elasticity of a stem.
   *
   * @param stemIndex index of the stem, zero or more
   * @return the input {@code /stems/i/wood/modulusOfElasticity}
   */
  public static Input modulusOfElasticity(int stemIndex) {
    return wood(
        stemIndex,
        "modulusOfElasticity",
        "modulus of elasticity",
        Kind.PRESSURE,
        wood -> Si.value(wood.modulusOfElasticity(), Kind.PRESSURE, "modulusOfElasticity"),
        (wood, x) -> wood.modulusOfElasticity(Si.of(x, Kind.PRESSURE)));
  }

  /**
   * Obtains the density of the wood of a stem.
   *
   * @param stemIndex index of the stem, zero or more
   * @return the input {@code /stems/i/wood/density}
   */
  public static Input density(int stemIndex) {
    return wood(
        stemIndex,
        "density",
        "density",
        Kind.DENSITY,
        wood -> Si.value(wood.density(), Kind.DENSITY, "density"),
        (wood, x) -> wood.density(Si.of(x, Kind.DENSITY)));
  }

  /**
   * Obtains the bending strength of the wood of a stem.
   *
   * @param stemIndex index of the stem, zero or more
   * @return the input {@code /stems/i/wood/bendingStrength}
   */
  public static Input bendingStrength(int stemIndex) {
    return wood(
        stemIndex,
        "bendingStrength",
        "bending strength",
        Kind.PRESSURE,
        wood -> si(wood.bendingStrength(), Kind.PRESSURE),
        (wood, x) -> wood.bendingStrength(Si.of(x, Kind.PRESSURE)));
  }

  /**
   * Obtains the compression strength of the wood of a stem.
   *
   * @param stemIndex index of the stem, zero or more
   * @return the input {@code /stems/i/wood/compressionStrength}
   */
  public static Input compressionStrength(int stemIndex) {
    return wood(
        stemIndex,
        "compressionStrength",
        "compression strength",
        Kind.PRESSURE,
        wood -> si(wood.compressionStrength(), Kind.PRESSURE),
        (wood, x) -> wood.compressionStrength(Si.of(x, Kind.PRESSURE)));
  }

  /**
   * Obtains the stiffness of the root of a stem.
   *
   * @param stemIndex index of the stem, zero or more
   * @return the input {@code /stems/i/root/rotationalStiffness}; a clamped root has none to read,
   *     but can be given one
   */
  public static Input rootStiffness(int stemIndex) {
    return stem(
        stemIndex,
        "root/rotationalStiffness",
        "root stiffness",
        Kind.ROTATIONAL_STIFFNESS,
        stem ->
            stem.root() instanceof Root.Turning root
                ? Si.value(
                    root.rotationalStiffness(), Kind.ROTATIONAL_STIFFNESS, "rotationalStiffness")
                : Double.NaN,
        (stem, x, refusals) ->
            stem.toBuilder()
                .root(Root.Turning.stated(Si.of(x, Kind.ROTATIONAL_STIFFNESS), refusals.at("root")))
                .stated(refusals));
  }

  /**
   * Obtains the factor on all diameters of a stem, which feeds its weight and its stiffness.
   *
   * @param stemIndex index of the stem, zero or more
   * @return the input {@code /stems/i/diameters}, a pure number; 1 in every plan
   */
  public static Input diametersFactor(int stemIndex) {
    return stem(
        stemIndex,
        "diameters",
        "factor on all diameters",
        null,
        stem -> 1,
        (stem, x, refusals) ->
            stem.toBuilder()
                .diameters(
                    Diameters.stated(
                        stem.diameters().entries().stream()
                            .map(entry -> scaled(entry, x, refusals.at("diameters")))
                            .toList(),
                        refusals.at("diameters")))
                .stated(refusals));
  }

  private static Diameters.Entry scaled(Diameters.Entry entry, double by, Refusals refusals) {
    return Diameters.Entry.stated(
        entry.at(),
        Amounts.metres(by * Si.value(entry.outer(), Kind.LENGTH, "outer")),
        Amounts.metres(by * Si.value(entry.cavity(), Kind.LENGTH, "cavity")),
        refusals);
  }

  /**
   * Obtains the lean of a straight stem.
   *
   * @param stemIndex index of the stem, zero or more
   * @return the input {@code /stems/i/shape/lean}
   */
  public static Input lean(int stemIndex) {
    return stem(
        stemIndex,
        "shape/lean",
        "lean",
        Kind.ANGLE,
        stem ->
            stem.shape() instanceof StemShape.Straight straight
                ? Si.value(straight.heading().lean(), Kind.ANGLE, "lean")
                : Double.NaN,
        (stem, x, refusals) -> {
          StemShape.Straight straight = (StemShape.Straight) stem.shape();
          @Nullable Heading heading =
              refusals
                  .at("shape")
                  .trying(() -> Heading.of(Amounts.radians(x), straight.heading().azimuth()));
          return stem.toBuilder()
              .shape(
                  StemShape.Straight.stated(
                      heading == null ? straight.heading() : heading,
                      straight.length(),
                      refusals.at("shape")))
              .stated(refusals);
        });
  }

  /** A number of an arrangement; NaN if it has none. */
  private static Input arrangement(
      int index,
      String member,
      String what,
      @Nullable Kind<?> kind,
      ToDoubleFunction<Arrangement> read,
      Part<Arrangement> write) {
    return new Input(
        "/arrangements/" + index(index) + "/" + member,
        what + ", arrangement " + (index + 1),
        kind,
        (plan, refusals) -> {
          @Nullable Arrangement arrangement =
              element(
                  plan.arrangements(),
                  index,
                  refusals.at("arrangements").at(index),
                  "arrangements");
          double value = arrangement == null ? Double.NaN : read.applyAsDouble(arrangement);
          return arrangement != null && Double.isNaN(value)
              ? missing(at(refusals.at("arrangements").at(index), member), "a number")
              : value;
        },
        (plan, x, refusals) ->
            plan.toBuilder()
                .arrangements(
                    replaced(
                        plan.arrangements(),
                        index,
                        write.with(
                            plan.arrangements().get(index),
                            x,
                            refusals.at("arrangements").at(index))))
                .stated(refusals));
  }

  /** A number of a contact; NaN if it has none. */
  private static Input contact(
      int arrangement,
      int index,
      String member,
      String what,
      @Nullable Kind<?> kind,
      ToDoubleFunction<Contact> read,
      Part<Contact> write) {
    return arrangement(
        arrangement,
        "contacts/" + index(index) + "/" + member,
        what + " of point " + (index + 1),
        kind,
        a -> index < a.contacts().size() ? read.applyAsDouble(a.contacts().get(index)) : Double.NaN,
        (a, x, refusals) ->
            a.toBuilder()
                .contacts(
                    replaced(
                        a.contacts(),
                        index,
                        write.with(a.contacts().get(index), x, refusals.at("contacts").at(index))))
                .stated(refusals));
  }

  /** A contact at another station, with all else that it states. */
  static Contact moved(Contact of, double at) {
    return Refusals.check(refusals -> changed(of, at, null, null, null, refusals));
  }

  /** A contact with some of its members replaced; null keeps what it states. */
  private static Contact changed(
      Contact of,
      @Nullable Double at,
      @Nullable Hardware hardware,
      @Nullable Double sling,
      @Nullable Double offset,
      Refusals refusals) {
    Set<String> left = of.taken().stream().map(Datum::name).collect(Collectors.toSet());
    Contact contact =
        Contact.stated(
            of.stem(),
            at == null ? of.at() : Amounts.metres(at),
            hardware == null ? of.hardware() : hardware,
            sling != null ? Amounts.metres(sling) : left.contains("/sling") ? null : of.sling(),
            offset != null ? Amounts.metres(offset) : left.contains("/offset") ? null : of.offset(),
            of.hasRopeWeight(),
            of.hardwareInCatch().orElse(null),
            of.slingStiffness().orElse(null),
            refusals);
    return of.opens().map(contact::withOpens).orElse(contact);
  }

  /**
   * Obtains the station of a contact.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @param contactIndex index of the contact, zero or more
   * @return the input {@code /arrangements/i/contacts/j/at}
   */
  public static Input station(int arrangementIndex, int contactIndex) {
    return contact(
        arrangementIndex,
        contactIndex,
        "at",
        "station",
        Kind.LENGTH,
        c -> Si.value(c.at(), Kind.LENGTH, "at"),
        (c, x, refusals) -> changed(c, x, null, null, null, refusals));
  }

  /**
   * Obtains the length of the sling of a contact.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @param contactIndex index of the contact, zero or more
   * @return the input {@code /arrangements/i/contacts/j/sling}
   */
  public static Input sling(int arrangementIndex, int contactIndex) {
    return contact(
        arrangementIndex,
        contactIndex,
        "sling",
        "sling",
        Kind.LENGTH,
        c -> Si.value(c.sling(), Kind.LENGTH, "sling"),
        (c, x, refusals) -> changed(c, null, null, x, null, refusals));
  }

  /**
   * Obtains the rigid arm of a contact.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @param contactIndex index of the contact, zero or more
   * @return the input {@code /arrangements/i/contacts/j/offset}
   */
  public static Input offset(int arrangementIndex, int contactIndex) {
    return contact(
        arrangementIndex,
        contactIndex,
        "offset",
        "offset",
        Kind.LENGTH,
        c -> Si.value(c.offset(), Kind.LENGTH, "offset"),
        (c, x, refusals) -> changed(c, null, null, null, x, refusals));
  }

  /**
   * Obtains the friction of the ring of a contact.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @param contactIndex index of the contact, zero or more
   * @return the input {@code /arrangements/i/contacts/j/hardware/ring/friction}
   */
  public static Input ringFriction(int arrangementIndex, int contactIndex) {
    return hardware(
        arrangementIndex,
        contactIndex,
        "ring/friction",
        "friction of the ring",
        h -> h instanceof FrictionRing ring ? ring.friction() : Double.NaN,
        FrictionRing::new);
  }

  /**
   * Obtains the friction of rope on bark at a contact.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @param contactIndex index of the contact, zero or more
   * @return the input {@code /arrangements/i/contacts/j/hardware/bark/friction}
   */
  public static Input barkFriction(int arrangementIndex, int contactIndex) {
    return hardware(
        arrangementIndex,
        contactIndex,
        "bark/friction",
        "friction of the bark",
        h -> h instanceof Bark bark ? bark.friction() : Double.NaN,
        Bark::new);
  }

  /**
   * Obtains the efficiency of the sheave of a contact.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @param contactIndex index of the contact, zero or more
   * @return the input {@code /arrangements/i/contacts/j/hardware/sheave/efficiency}
   */
  public static Input sheaveEfficiency(int arrangementIndex, int contactIndex) {
    return hardware(
        arrangementIndex,
        contactIndex,
        "sheave/efficiency",
        "efficiency of the sheave",
        h -> h instanceof Sheave sheave ? sheave.efficiency() : Double.NaN,
        Sheave::new);
  }

  private static Input hardware(
      int arrangement,
      int contact,
      String member,
      String what,
      ToDoubleFunction<Hardware> read,
      DoubleFunction<Hardware> make) {
    return contact(
        arrangement,
        contact,
        "hardware/" + member,
        what,
        null,
        c -> read.applyAsDouble(c.hardware()),
        (c, x, refusals) -> {
          Refusals at = refusals.at("hardware").at(member.substring(0, member.indexOf('/')));
          @Nullable Hardware made = at.trying(() -> make.apply(x));
          return made == null ? c : changed(c, null, made, null, null, refusals);
        });
  }

  /** A number of a lowering device at the tail. */
  private static Input device(
      int arrangement,
      String member,
      String what,
      @Nullable Kind<?> kind,
      ToDoubleFunction<Tail.Device> read) {
    return arrangement(
        arrangement,
        "tail/device/" + member,
        what,
        kind,
        a -> a.tail() instanceof Tail.Device device ? read.applyAsDouble(device) : Double.NaN,
        (a, x, refusals) -> {
          Tail.Device of = (Tail.Device) a.tail();
          Tail changed =
              Tail.Device.stated(
                  of.stem(),
                  member.equals("at") ? Amounts.metres(x) : of.at(),
                  member.equals("friction") ? x : of.friction(),
                  member.equals("wraps") ? x : of.wraps(),
                  member.equals("offset")
                      ? Amounts.metres(x)
                      : of.taken().isEmpty() ? of.offset() : null,
                  of.frictionInCatch().isPresent() ? of.frictionInCatch().getAsDouble() : null,
                  refusals.at("tail").at("device"));
          return a.toBuilder().tail(changed).stated(refusals);
        });
  }

  /**
   * Obtains the station of the lowering device.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/tail/device/at}
   */
  public static Input deviceStation(int arrangementIndex) {
    return device(
        arrangementIndex,
        "at",
        "station of the device",
        Kind.LENGTH,
        device -> Si.value(device.at(), Kind.LENGTH, "at"));
  }

  /**
   * Obtains the friction of the lowering device.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/tail/device/friction}
   */
  public static Input deviceFriction(int arrangementIndex) {
    return device(
        arrangementIndex, "friction", "friction of the device", null, Tail.Device::friction);
  }

  /**
   * Obtains the number of wraps on the lowering device.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/tail/device/wraps}
   */
  public static Input wraps(int arrangementIndex) {
    return device(arrangementIndex, "wraps", "wraps on the device", null, Tail.Device::wraps);
  }

  /**
   * Obtains the rigid arm of the lowering device.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/tail/device/offset}
   */
  public static Input deviceOffset(int arrangementIndex) {
    return device(
        arrangementIndex,
        "offset",
        "offset of the device",
        Kind.LENGTH,
        device -> Si.value(device.offset(), Kind.LENGTH, "offset"));
  }

  /**
   * Obtains a coordinate of the fixed point at the tail.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @param axisIndex 0 for x, 1 for y, 2 for z
   * @return the input {@code /arrangements/i/tail/point/k}
   */
  public static Input tailPoint(int arrangementIndex, int axisIndex) {
    if (axisIndex < 0 || axisIndex > 2) {
      throw new IllegalArgumentException("axisIndex: wants 0, 1 or 2, got " + axisIndex);
    }
    return arrangement(
        arrangementIndex,
        "tail/point/" + axisIndex,
        "xyz".charAt(axisIndex) + " of the tail point",
        Kind.LENGTH,
        a ->
            a.tail() instanceof Tail.Point point
                ? point.position().in(Kind.LENGTH)[axisIndex]
                : Double.NaN,
        (a, x, refusals) -> {
          double[] position = ((Tail.Point) a.tail()).position().in(Kind.LENGTH);
          position[axisIndex] = x;
          return a.toBuilder()
              .tail(
                  Tail.Point.stated(
                      Vector.ofSi(Kind.LENGTH, position), refusals.at("tail").at("point")))
              .stated(refusals);
        });
  }

  /** A number of the drop. */
  private static Input drop(
      int arrangement, String member, String what, Kind<?> kind, ToDoubleFunction<DropSpec> read) {
    return arrangement(
        arrangement,
        "drop/" + member,
        what,
        kind,
        a -> a.drop().isPresent() ? read.applyAsDouble(a.drop().get()) : Double.NaN,
        (a, x, refusals) -> {
          DropSpec of = a.drop().orElseThrow();
          Refusals at = refusals.at("drop");
          Set<String> left = of.taken().stream().map(Datum::name).collect(Collectors.toSet());
          boolean legLeft = left.contains("/loadLeg");
          boolean inTime = of.level() == DropSpec.Level.IN_TIME;
          DropSpec changed =
              DropSpec.stated(
                  member.equals("fall") ? Amounts.metres(x) : of.fall(),
                  hold(of.hold(), member, x, at.at("device")),
                  member.equals("loadLeg") ? Amounts.metres(x) : legLeft ? null : of.loadLeg(),
                  left.contains("/tieToCentre") ? null : of.tieToCentre(),
                  left.contains("/level") ? null : of.level(),
                  of.stopOver().orElse(null),
                  inTime && !left.contains("/stemDamping") ? of.stemDampingRatio() : null,
                  inTime && !left.contains("/duration") ? of.duration() : null,
                  at);
          return a.toBuilder().drop(changed).stated(refusals);
        });
  }

  private static DropSpec.Hold hold(DropSpec.Hold of, String member, double x, Refusals at) {
    if (of instanceof DropSpec.Slipping && member.equals("device/slipTension")) {
      return DropSpec.Slipping.stated(Amounts.newtons(x), at);
    }
    if (of instanceof DropSpec.ByHand hand && member.startsWith("device/")) {
      return DropSpec.ByHand.stated(
          member.equals("device/handForce") ? Amounts.newtons(x) : hand.handForce(),
          member.equals("device/delay") ? Amounts.seconds(x) : hand.delay(),
          at);
    }
    return of;
  }

  /**
   * Obtains how far the piece falls before the rope is taut.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/drop/fall}
   */
  public static Input fall(int arrangementIndex) {
    return drop(
        arrangementIndex,
        "fall",
        "fall",
        Kind.LENGTH,
        drop -> Si.value(drop.fall(), Kind.LENGTH, "fall"));
  }

  /**
   * Obtains the length of the load leg when the rope is just taut in a drop.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/drop/loadLeg}
   */
  public static Input loadLeg(int arrangementIndex) {
    return drop(
        arrangementIndex,
        "loadLeg",
        "load leg",
        Kind.LENGTH,
        drop -> Si.value(drop.loadLeg(), Kind.LENGTH, "loadLeg"));
  }

  /**
   * Obtains the tension at which the rope slips in a drop.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/drop/device/slipTension}
   */
  public static Input slipTension(int arrangementIndex) {
    return drop(
        arrangementIndex,
        "device/slipTension",
        "slip tension",
        Kind.FORCE,
        drop ->
            drop.hold() instanceof DropSpec.Slipping slipping
                ? Si.value(slipping.slipTension(), Kind.FORCE, "slipTension")
                : Double.NaN);
  }

  /**
   * Obtains the force of the hand behind the wraps in a drop.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/drop/device/handForce}
   */
  public static Input handForce(int arrangementIndex) {
    return drop(
        arrangementIndex,
        "device/handForce",
        "hand force",
        Kind.FORCE,
        drop ->
            drop.hold() instanceof DropSpec.ByHand hand
                ? Si.value(hand.handForce(), Kind.FORCE, "handForce")
                : Double.NaN);
  }

  /**
   * Obtains the time after which the hand holds in a drop.
   *
   * @param arrangementIndex index of the arrangement, zero or more
   * @return the input {@code /arrangements/i/drop/device/delay}
   */
  public static Input delay(int arrangementIndex) {
    return drop(
        arrangementIndex,
        "device/delay",
        "delay",
        Kind.TIME,
        drop ->
            drop.hold() instanceof DropSpec.ByHand hand
                ? Si.value(hand.delay(), Kind.TIME, "delay")
                : Double.NaN);
  }

  /**
   * Obtains an input by its name in plan files, whether or not some plan has it.
   *
   * @param pointer a JSON pointer into a plan, not null
   * @return the input
   * @throws IllegalArgumentException if it names no number that can be replaced
   */
  public static Input parse(String pointer) {
    requireNonNull(pointer, "pointer");
    @Nullable Input found = whole(pointer);
    Matcher place = PLACE.matcher(pointer);
    if (found == null && place.matches()) {
      int index = Integer.parseInt(place.group(2));
      found =
          place.group(1).equals("stems")
              ? ofStem(index, place.group(3))
              : ofArrangement(index, place.group(3));
    }
    if (found == null) {
      throw new IllegalArgumentException(
          "input: wants the place of a number in the plan, such as"
              + " \"/stems/0/wood/modulusOfElasticity\", got \""
              + pointer
              + "\"");
    }
    return found;
  }

  private static @Nullable Input whole(String pointer) {
    return switch (pointer) {
      case "/piece/mass" -> pieceMass();
      case "/piece/log/length" ->
          log("length", "length of the log", l -> Si.value(l.length(), Kind.LENGTH, "length"));
      case "/piece/log/largeEnd" ->
          log("largeEnd", "large end", l -> Si.value(l.largeEnd(), Kind.LENGTH, "largeEnd"));
      case "/piece/log/smallEnd" ->
          log("smallEnd", "small end", l -> Si.value(l.smallEnd(), Kind.LENGTH, "smallEnd"));
      case "/piece/log/density" ->
          log("density", "density of the log", l -> Si.value(l.density(), Kind.DENSITY, "density"));
      case "/rope/minimumBreakingStrength" -> ropeStrength();
      case "/rope/linearDensity" -> ropeLinearDensity();
      default -> null;
    };
  }

  private static @Nullable Input ofStem(int index, String member) {
    return switch (member) {
      case "wood/modulusOfElasticity" -> modulusOfElasticity(index);
      case "wood/density" -> density(index);
      case "wood/bendingStrength" -> bendingStrength(index);
      case "wood/compressionStrength" -> compressionStrength(index);
      case "root/rotationalStiffness" -> rootStiffness(index);
      case "diameters" -> diametersFactor(index);
      case "shape/lean" -> lean(index);
      default -> null;
    };
  }

  private static @Nullable Input ofArrangement(int index, String member) {
    Matcher contact = CONTACT.matcher(member);
    if (contact.matches()) {
      return ofContact(index, Integer.parseInt(contact.group(1)), contact.group(2));
    }
    return switch (member) {
      case "tail/device/at" -> deviceStation(index);
      case "tail/device/friction" -> deviceFriction(index);
      case "tail/device/wraps" -> wraps(index);
      case "tail/device/offset" -> deviceOffset(index);
      case "tail/point/0" -> tailPoint(index, 0);
      case "tail/point/1" -> tailPoint(index, 1);
      case "tail/point/2" -> tailPoint(index, 2);
      case "drop/fall" -> fall(index);
      case "drop/loadLeg" -> loadLeg(index);
      case "drop/device/slipTension" -> slipTension(index);
      case "drop/device/handForce" -> handForce(index);
      case "drop/device/delay" -> delay(index);
      default -> null;
    };
  }

  private static @Nullable Input ofContact(int arrangement, int index, String member) {
    return switch (member) {
      case "at" -> station(arrangement, index);
      case "sling" -> sling(arrangement, index);
      case "offset" -> offset(arrangement, index);
      case "hardware/ring/friction" -> ringFriction(arrangement, index);
      case "hardware/bark/friction" -> barkFriction(arrangement, index);
      case "hardware/sheave/efficiency" -> sheaveEfficiency(arrangement, index);
      default -> null;
    };
  }

  /**
   * Obtains an input of a plan by its name in plan files.
   *
   * @param plan the plan that must have it, not null
   * @param pointer a JSON pointer into the plan, not null
   * @return the input
   * @throws IllegalArgumentException if it names no number that can be replaced
   * @throws PlanRefusedException if the plan has no such number; holds its place
   */
  public static Input at(Plan plan, String pointer) {
    Input input = parse(pointer);
    input.value(plan);
    return input;
  }

  /** All inputs that a plan has, in the order of its file; nothing stands for no number. */
  static List<Input> all(Plan plan) {
    List<String> pointers =
        new ArrayList<>(
            List.of(
                "/piece/mass",
                "/piece/log/length",
                "/piece/log/largeEnd",
                "/piece/log/smallEnd",
                "/piece/log/density",
                "/rope/minimumBreakingStrength",
                "/rope/linearDensity"));
    for (int i = 0; i < plan.stems().size(); i++) {
      String stem = "/stems/" + i + "/";
      for (String member :
          List.of(
              "shape/lean",
              "wood/modulusOfElasticity",
              "wood/density",
              "wood/bendingStrength",
              "wood/compressionStrength",
              "root/rotationalStiffness")) {
        pointers.add(stem + member);
      }
    }
    for (int i = 0; i < plan.arrangements().size(); i++) {
      String arrangement = "/arrangements/" + i + "/";
      for (int k = 0; k < plan.arrangements().get(i).contacts().size(); k++) {
        for (String member :
            List.of(
                "at",
                "sling",
                "offset",
                "hardware/ring/friction",
                "hardware/bark/friction",
                "hardware/sheave/efficiency")) {
          pointers.add(arrangement + "contacts/" + k + "/" + member);
        }
      }
      for (String member :
          List.of(
              "tail/point/0",
              "tail/point/1",
              "tail/point/2",
              "tail/device/at",
              "tail/device/friction",
              "tail/device/wraps",
              "tail/device/offset",
              "drop/fall",
              "drop/loadLeg",
              "drop/device/slipTension",
              "drop/device/handForce",
              "drop/device/delay")) {
        pointers.add(arrangement + member);
      }
    }
    return pointers.stream().map(Input::parse).filter(input -> input.isOf(plan)).toList();
  }

  private boolean isOf(Plan plan) {
    Refusals refusals = Refusals.none();
    return !Double.isNaN(read.apply(plan, refusals)) && !refusals.hasAny();
  }

  /**
   * Returns the name that people read. It counts from one, as people do; pointers count from zero.
   *
   * @return for instance {@code modulus of elasticity of stem 1}
   */
  public String name() {
    return name;
  }

  /**
   * Returns the name in plan files.
   *
   * @return a JSON pointer into the plan
   */
  public String pointer() {
    return pointer;
  }

  /**
   * Returns what the number is of.
   *
   * @return the kind; empty for a pure number
   */
  public Optional<Kind<?>> kind() {
    return Optional.ofNullable(kind);
  }

  /** Returns the kind, or null for a pure number. */
  @Nullable Kind<?> kindOrNull() {
    return kind;
  }

  /**
   * Reads the number.
   *
   * @param plan the plan, not null
   * @return the number
   * @throws PlanRefusedException if the plan has no such number; holds its place
   */
  public Figure value(Plan plan) {
    requireNonNull(plan, "plan");
    double si = Refusals.check(refusals -> read.apply(plan, refusals));
    return Figure.of(si, kind);
  }

  /**
   * Replaces the number.
   *
   * @param plan the plan, not null
   * @param figure the new number, of this input's kind, not null
   * @return the plan with that number
   * @throws IllegalArgumentException if the number is of another kind
   * @throws PlanRefusedException if the plan has no place for it, or it makes a plan that cannot be
   *     analysed: with all reasons
   */
  public Plan with(Plan plan, Figure figure) {
    figure.requireKind(kind);
    return with(plan, figure.si());
  }

  /** Replaces the number by one in the SI unit. */
  Plan with(Plan plan, double si) {
    if (!makesItsOwnPlace()) {
      value(plan);
    } else {
      Refusals.check(
          refusals -> {
            if (pointer.startsWith("/stems")) {
              int index = Integer.parseInt(pointer.split("/", -1)[2]);
              element(plan.stems(), index, refusals.at("stems").at(index), "stems");
            }
            return plan;
          });
    }
    return Refusals.check(refusals -> write.with(plan, si, refusals));
  }

  /** Whether a plan that does not state the number can be given it. */
  private boolean makesItsOwnPlace() {
    return pointer.startsWith("/rope/")
        || pointer.endsWith("Strength")
        || pointer.endsWith("/root/rotationalStiffness");
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Input i && pointer.equals(i.pointer);
  }

  @Override
  public int hashCode() {
    return pointer.hashCode();
  }

  @Override
  public String toString() {
    return pointer;
  }
}
