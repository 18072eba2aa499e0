package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.rope.Rope;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Moment;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What a part of the rig can take, to be compared with what it has to.
 *
 * <p>Immutable and thread-safe; equality is exact, on what was stated.
 *
 * <pre>{@code
 * PartLimit knot =
 *     PartLimit.builder(PartLimit.Part.ROPE, "knot at the piece")
 *         .place("piece")
 *         .reductions(List.of(Reduction.of("bowline", 0.7), Reduction.of("wear", 0.9)))
 *         .combined(Reduction.Combined.STACKED)
 *         .build();
 * }</pre>
 */
public final class PartLimit {
  /** Kinds of parts. */
  public enum Part {
    /** Strength of the rope at a place. */
    ROPE("rope", "piece|tail|contacts|contacts/[0-9]+"),
    /** Diameter of what the rope bends over, against the rope's own. */
    BEND("bends", "device|contacts|contacts/[0-9]+"),
    /** A sling, by its hitch. */
    SLING("slings", "device|contacts|contacts/[0-9]+"),
    /** A block or ring, against the force of both legs on it. */
    HARDWARE("hardware", "contacts|contacts/[0-9]+"),
    /** A lowering device, against the tension of the leg into it. */
    DEVICE("device", ""),
    /** What a ground worker can hold behind the wraps: {@link Limits#handForce()}. */
    HAND("hand", ""),
    /** Stress of the outermost fibre of a stem. */
    STEM("stems", ""),
    /** Moment about the base of a stem. */
    ANCHORAGE("anchorage", "");

    private final String text;
    private final Pattern places;

    Part(String text, String places) {
      this.text = text;
      this.places = Pattern.compile(places);
    }

    /**
     * Returns the word of plan files; factors may be asked for it.
     *
     * @return the word
     */
    public String text() {
      return text;
    }

    /**
     * Returns what demand and capacity are of.
     *
     * @return the kind
     */
    public Kind<?> kind() {
      return switch (this) {
        case ROPE, SLING, HARDWARE, DEVICE, HAND -> Kind.FORCE;
        case BEND -> Kind.LENGTH;
        case STEM -> Kind.PRESSURE;
        case ANCHORAGE -> Kind.MOMENT;
      };
    }

    /**
     * Obtains the part that a word of plan files stands for.
     *
     * @param word the word, not null
     * @return the part; empty if there is none of that name
     */
    public static Optional<Part> named(String word) {
      return List.of(values()).stream().filter(p -> p.text.equals(word)).findFirst();
    }
  }

  /** What a limit is compared with. */
  public enum Demand {
    /** Slow, steady motion. */
    STATIC("static"),
    /** The peak of the catch with the rope made fast. */
    PEAK("peak"),
    /** The peak of the catch as it is let run. */
    RUN("run");

    private final String text;

    Demand(String text) {
      this.text = text;
    }

    /**
     * Returns the word of plan files.
     *
     * @return the word
     */
    public String text() {
      return text;
    }

    /**
     * Obtains the demand that a word of plan files stands for.
     *
     * @param word the word, not null
     * @return the demand; empty if there is none of that name
     */
    public static Optional<Demand> named(String word) {
      return List.of(values()).stream().filter(d -> d.text.equals(word)).findFirst();
    }
  }

  /** What a stated capacity is. */
  public enum CapacityIs {
    /** The load that breaks it: a factor asked for all parts of its kind is for this. */
    STRENGTH("strength"),
    /** The working load limit, which holds its maker's factor already. */
    WORKING_LOAD_LIMIT("workingLoadLimit");

    private final String text;

    CapacityIs(String text) {
      this.text = text;
    }

    /**
     * Returns the word of plan files.
     *
     * @return the word
     */
    public String text() {
      return text;
    }

    /**
     * Obtains what a word of plan files stands for.
     *
     * @param word the word, not null
     * @return the meaning; empty if there is none of that name
     */
    public static Optional<CapacityIs> named(String word) {
      return List.of(values()).stream().filter(c -> c.text.equals(word)).findFirst();
    }
  }

  private final Part part;
  private final String name;
  private final @Nullable Double capacity;
  private final @Nullable CapacityIs capacityIs;
  private final @Nullable String place;
  private final @Nullable String stem;
  private final @Nullable Double station;
  private final @Nullable Demand demand;
  private final @Nullable Hitch hitch;
  private final List<Reduction> reductions;
  private final Reduction.@Nullable Combined combined;

  private PartLimit(Builder b, Refusals refusals) {
    part = refusals.at("part").present(b.part, wantedParts(), Part.ROPE);
    if (part == Part.HAND) {
      refusals
          .at("part")
          .add(Refusal.Code.CONFLICT, "the member handForce of the limits", "\"hand\"");
    }
    name = refusals.at("name").name(b.name);
    capacity = b.capacity == null ? null : (Double) capacity(b, refusals.at("capacity"));
    boolean isForce = part.kind() == Kind.FORCE;
    if (capacity == null && part != Part.ROPE && part != Part.STEM && b.part != null) {
      refusals.at("capacity").add(Refusal.Code.MISSING, QuantityText.wants(part.kind()), "nothing");
    }
    capacityIs = b.capacityIs;
    allow("capacityIs", capacityIs, isForce && capacity != null, refusals);
    if (isForce && capacity != null) {
      refusals
          .at("capacityIs")
          .present(capacityIs, "\"strength\" or \"workingLoadLimit\"", CapacityIs.STRENGTH);
    }
    place = b.place;
    if (place != null && !part.places.matcher(place).matches()) {
      refusals
          .at("place")
          .add(
              Refusal.Code.OUT_OF_RANGE,
              part.places.pattern().isEmpty()
                  ? "no place, for the part \"" + part.text + "\""
                  : "one of "
                      + part.places
                          .pattern()
                          .replace("[0-9]+", "0, contacts/1 ...")
                          .replace("|", ", "),
              "\"" + place + "\"");
    }
    boolean ofStem = part == Part.STEM || part == Part.ANCHORAGE;
    stem = b.stem;
    allow("stem", stem, ofStem, refusals);
    station =
        b.station == null
            ? null
            : (Double)
                refusals
                    .at("station")
                    .between(Si.of(b.station, Kind.LENGTH), Kind.LENGTH, 0, Bounds.STATION);
    allow("station", station, part == Part.STEM && stem != null, refusals);
    demand = b.demand;
    allow("demand", demand, part != Part.BEND, refusals);
    hitch = b.hitch;
    allow("hitch", hitch, part == Part.SLING, refusals);
    if (part == Part.SLING) {
      refusals
          .at("hitch")
          .present(
              hitch, "one of {\"vertical\"}, {\"choker\"}, {\"basket\"}", Hitch.Vertical.VERTICAL);
    }
    reductions = b.reductions;
    if (!reductions.isEmpty()) {
      allow("reductions", reductions, part == Part.ROPE || part == Part.SLING, refusals);
    }
    combined = b.combined;
    if (reductions.size() > 1) {
      refusals
          .at("combined")
          .present(combined, "\"stacked\" or \"worstOnly\"", Reduction.Combined.STACKED);
    } else {
      allow("combined", combined, false, refusals);
    }
  }

  private static String wantedParts() {
    return "one of rope, bends, slings, hardware, device, stems, anchorage";
  }

  private static void allow(
      String member, @Nullable Object value, boolean allowed, Refusals refusals) {
    if (value != null && !allowed) {
      refusals
          .at(member)
          .add(
              Refusal.Code.CONFLICT,
              "no " + member + " here",
              member.equals("station") ? "one, without a stem" : "one");
    }
  }

  private double capacity(Builder b, Refusals refusals) {
    Kind<?> kind = part.kind();
    if (b.capacityKind != kind) {
      refusals.add(Refusal.Code.WRONG_QUANTITY, QuantityText.wants(kind), "a " + b.capacityKind);
      return Double.NaN;
    }
    return capacity(requireNonNull(b.capacity), kind, refusals);
  }

  private static <Q extends Quantity<Q>> double capacity(
      double value, Kind<Q> kind, Refusals refusals) {
    return refusals.aboveZero(Si.of(value, kind), kind, Bounds.capacity(kind));
  }

  /** Rules against the rest of the plan. */
  void check(Plan plan, Refusals refusals) {
    Rope rope = plan.rope().orElse(Rope.UNSTATED);
    if (part == Part.ROPE && capacity == null && rope.minimumBreakingStrength().isEmpty()) {
      refusals
          .at("capacity")
          .add(
              Refusal.Code.MISSING,
              QuantityText.wants(Kind.FORCE) + ", or minimumBreakingStrength in /rope",
              "neither");
    }
    double ropeDiameter =
        rope.diameter().map(d -> Si.value(d, Kind.LENGTH, "diameter")).orElse(Double.NaN);
    if (part == Part.BEND && Double.isNaN(ropeDiameter)) {
      refusals.add(Refusal.Code.CONFLICT, "the member diameter in /rope", "bends without it");
    }
    for (int i = 0; i < reductions.size(); i++) {
      reductions.get(i).checkRope(ropeDiameter, refusals.at("reductions").at(i));
    }
    int most = plan.arrangements().stream().mapToInt(a -> a.contacts().size()).max().orElse(0);
    if (place != null && place.matches("contacts/[0-9]+") && !contactBelow(most)) {
      refusals
          .at("place")
          .add(
              Refusal.Code.UNKNOWN_REFERENCE,
              "a contact that an arrangement has, below " + most,
              "\"" + place + "\"");
    }
    if (stem == null) {
      return;
    }
    Optional<Stem> found = plan.stems().stream().filter(s -> s.id().equals(stem)).findFirst();
    if (found.isEmpty()) {
      refusals
          .at("stem")
          .add(Refusal.Code.UNKNOWN_REFERENCE, "the id of a stem of this plan", "\"" + stem + "\"");
    } else if (station != null) {
      found.get().checkStation(station, Kind.LENGTH, refusals.at("station"));
    }
  }

  private boolean contactBelow(int count) {
    String digits = requireNonNull(place).substring("contacts/".length());
    return digits.length() < 4 && Integer.parseInt(digits) < count;
  }

  /**
   * Obtains a builder.
   *
   * @param part kind of the part, not null
   * @param name what the check is called, one line of at most 80 characters, unique in the limits,
   *     not null
   * @return the builder
   */
  public static Builder builder(Part part, String name) {
    return new Builder().part(part).name(name);
  }

  /**
   * Obtains a builder that holds nothing yet.
   *
   * @return the builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Returns the kind of the part.
   *
   * @return the kind
   */
  public Part part() {
    return part;
  }

  /**
   * Returns what the check is called.
   *
   * @return the name
   */
  public String name() {
    return name;
  }

  /**
   * Returns the stated capacity.
   *
   * @param <Q> what it is of
   * @param kind that of the part, not null
   * @return the capacity in the SI unit, above zero; empty if it comes from rope or wood
   * @throws IllegalArgumentException if the part is of another kind
   */
  public <Q extends Quantity<Q>> Optional<Quantity<Q>> capacity(Kind<Q> kind) {
    if (kind != part.kind()) {
      throw new IllegalArgumentException("kind: wants " + part.kind() + ", got " + kind);
    }
    return capacity == null ? Optional.empty() : Optional.of(Si.of(capacity, kind));
  }

  /**
   * Returns what the stated capacity is.
   *
   * @return the meaning; {@link CapacityIs#STRENGTH} where none is stated
   */
  public CapacityIs capacityIs() {
    return capacityIs == null ? CapacityIs.STRENGTH : capacityIs;
  }

  /**
   * Returns where along the rope.
   *
   * @return {@code piece}, {@code tail}, {@code device}, {@code contacts} for each of them, or one
   *     such as {@code contacts/0}; empty if not stated: of a rope the whole, else each contact
   */
  public Optional<String> place() {
    return Optional.ofNullable(place);
  }

  /**
   * Returns the stem.
   *
   * @return its id; empty for each stem
   */
  public Optional<String> stem() {
    return Optional.ofNullable(stem);
  }

  /**
   * Returns the station at which the stress is wanted.
   *
   * @return the station in metres; empty for the greatest stress of the stem
   */
  public Optional<Quantity<Length>> station() {
    return station == null ? Optional.empty() : Optional.of(Si.of(station, Kind.LENGTH));
  }

  /**
   * Returns what the limit is compared with.
   *
   * @return the demand; empty for slow motion and, where a drop is worked out, the locked catch too
   */
  public Optional<Demand> demand() {
    return Optional.ofNullable(demand);
  }

  /**
   * Returns how a sling holds on.
   *
   * @return the hitch; empty unless the part is a sling
   */
  public Optional<Hitch> hitch() {
    return Optional.ofNullable(hitch);
  }

  /**
   * Returns what takes strength off.
   *
   * @return the reductions, as stated; may be empty
   */
  public List<Reduction> reductions() {
    return reductions;
  }

  /**
   * Returns how several reductions act together.
   *
   * @return the choice; empty unless there are several
   */
  public Optional<Reduction.Combined> combined() {
    return Optional.ofNullable(combined);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PartLimit p
        && part == p.part
        && name.equals(p.name)
        && Objects.equals(capacity, p.capacity)
        && capacityIs == p.capacityIs
        && Objects.equals(place, p.place)
        && Objects.equals(stem, p.stem)
        && Objects.equals(station, p.station)
        && demand == p.demand
        && Objects.equals(hitch, p.hitch)
        && reductions.equals(p.reductions)
        && combined == p.combined;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        part,
        name,
        capacity,
        capacityIs,
        place,
        stem,
        station,
        demand,
        hitch,
        reductions,
        combined);
  }

  @Override
  public String toString() {
    return part.text + ": " + name;
  }

  /** Builds the limit of a part. Belongs to one thread. */
  public static final class Builder {
    private @Nullable Part part;
    private @Nullable String name;
    private @Nullable Double capacity;
    private @Nullable Kind<?> capacityKind;
    private @Nullable CapacityIs capacityIs;
    private @Nullable String place;
    private @Nullable String stem;
    private @Nullable Double station;
    private @Nullable Demand demand;
    private @Nullable Hitch hitch;
    private List<Reduction> reductions = List.of();
    private Reduction.@Nullable Combined combined;

    private Builder() {}

    /**
     * States the kind of the part.
     *
     * @param part any but {@link Part#HAND}, not null
     * @return this builder
     */
    public Builder part(Part part) {
      this.part = requireNonNull(part, "part");
      return this;
    }

    /**
     * States what the check is called.
     *
     * @param name one line of at most 80 characters, unique in the limits, not null
     * @return this builder
     */
    public Builder name(String name) {
      this.name = requireNonNull(name, "name");
      return this;
    }

    /**
     * States a force: of a rope, sling, hardware or device.
     *
     * @param force what it can take, above zero, at most 1 GN, not null
     * @param is what the force is, not null
     * @return this builder
     */
    public Builder force(Quantity<Force> force, CapacityIs is) {
      return capacity(force, Kind.FORCE).capacityIs(is);
    }

    /**
     * States a stress that a stem can take, in place of the strength of its wood.
     *
     * @param stress the stress, above zero, at most 10 TPa, not null
     * @return this builder
     */
    public Builder stress(Quantity<Pressure> stress) {
      return capacity(stress, Kind.PRESSURE);
    }

    /**
     * States a moment that the root can take.
     *
     * @param moment the moment, above zero, at most 1 TN.m, not null
     * @return this builder
     */
    public Builder moment(Quantity<Moment> moment) {
      return capacity(moment, Kind.MOMENT);
    }

    /**
     * States the diameter of what the rope bends over.
     *
     * @param diameter the diameter, above zero, at most 20 m, not null
     * @return this builder
     */
    public Builder diameter(Quantity<Length> diameter) {
      return capacity(diameter, Kind.LENGTH);
    }

    /**
     * States what the part can take.
     *
     * @param <Q> what it is of
     * @param newCapacity above zero, not null
     * @param kind that of the part, not null
     * @return this builder
     */
    public <Q extends Quantity<Q>> Builder capacity(Quantity<Q> newCapacity, Kind<Q> kind) {
      this.capacity = Si.value(newCapacity, kind, "capacity");
      this.capacityKind = kind;
      return this;
    }

    /**
     * States what the capacity is; of a force it must be stated.
     *
     * @param is the meaning, not null
     * @return this builder
     */
    public Builder capacityIs(CapacityIs is) {
      this.capacityIs = requireNonNull(is, "capacityIs");
      return this;
    }

    /**
     * States where along the rope.
     *
     * @param place as {@link PartLimit#place()}, not null
     * @return this builder
     */
    public Builder place(String place) {
      this.place = requireNonNull(place, "place");
      return this;
    }

    /**
     * States the stem.
     *
     * @param id id of the stem, not null
     * @return this builder
     */
    public Builder stem(String id) {
      this.stem = requireNonNull(id, "stem");
      return this;
    }

    /**
     * States the station at which the stress of the stem is wanted.
     *
     * @param station from the base, zero or more, not null
     * @return this builder
     */
    public Builder station(Quantity<Length> station) {
      this.station = Si.value(station, Kind.LENGTH, "station");
      return this;
    }

    /**
     * States what the limit is compared with.
     *
     * @param demand the demand, not null
     * @return this builder
     */
    public Builder demand(Demand demand) {
      this.demand = requireNonNull(demand, "demand");
      return this;
    }

    /**
     * States how a sling holds on.
     *
     * @param hitch the hitch, not null
     * @return this builder
     */
    public Builder hitch(Hitch hitch) {
      this.hitch = requireNonNull(hitch, "hitch");
      return this;
    }

    /**
     * States what takes strength off a rope or a sling.
     *
     * @param reductions any number, not null
     * @return this builder
     */
    public Builder reductions(List<Reduction> reductions) {
      this.reductions = List.copyOf(reductions);
      return this;
    }

    /**
     * States how several reductions act together.
     *
     * @param combined the choice, not null
     * @return this builder
     */
    public Builder combined(Reduction.Combined combined) {
      this.combined = requireNonNull(combined, "combined");
      return this;
    }

    /**
     * Returns the limit.
     *
     * @return the limit
     * @throws org.boleline.explain.PlanRefusedException if a value is missing, outside its range or
     *     does not belong to the part: with all reasons
     */
    public PartLimit build() {
      return Refusals.check(this::stated);
    }

    /**
     * Returns the limit as stated, for readers of files.
     *
     * @param refusals notes what is wrong, at the limit
     * @return the limit
     */
    public PartLimit stated(Refusals refusals) {
      return new PartLimit(this, refusals);
    }
  }
}
