package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.quantity.Acceleration;
import org.boleline.explain.Datum;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.explain.Source;
import org.boleline.rope.Rope;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A rigging plan: stems, the piece, the rope and the arrangements to compare.
 *
 * <p>Immutable and thread-safe. Equality is exact, on what was stated: a value that was left to its
 * default is not equal to the same value stated, since results list the defaults they took.
 */
public final class Plan {
  private static final double STANDARD_GRAVITY_M_PER_S2 = 9.80665;
  private static final Source STANDARD_GRAVITY =
      new Source(
          "CGPM-1901",
          "Standard acceleration of gravity, third General Conference on Weights and Measures, 1901",
          Source.Reading.DEFAULT);

  private final String title;
  private final String notes;
  private final @Nullable Double gravity;
  private final List<Stem> stems;
  private final Piece piece;
  private final @Nullable Rope rope;
  private final List<Arrangement> arrangements;
  private final @Nullable Limits limits;
  private final @Nullable RangesSpec ranges;

  private Plan(Builder builder, Refusals refusals) {
    this.title = builder.title;
    this.notes = builder.notes;
    this.gravity =
        builder.gravity == null
            ? null
            : (Double)
                refusals
                    .at("gravity")
                    .aboveZero(
                        Si.of(builder.gravity, Kind.ACCELERATION),
                        Kind.ACCELERATION,
                        Bounds.GRAVITY);
    this.stems = builder.stems;
    this.piece =
        refusals
            .at("piece")
            .present(
                builder.piece,
                "one of {\"mass\"} or {\"log\"}",
                Piece.stated(null, Refusals.none()));
    this.rope = builder.rope;
    this.arrangements = builder.arrangements;
    this.limits = builder.limits;
    this.ranges = builder.ranges;
    check(refusals);
  }

  private void check(Refusals refusals) {
    if (stems.isEmpty()) {
      refusals.at("stems").add(Refusal.Code.MISSING, "at least one stem", "none");
    }
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < stems.size(); i++) {
      checkUnique(stems.get(i).id(), "stem", ids, refusals.at("stems").at(i).at("id"));
    }
    if (arrangements.isEmpty()) {
      refusals.at("arrangements").add(Refusal.Code.MISSING, "at least one arrangement", "none");
    }
    ids.clear();
    for (int i = 0; i < arrangements.size(); i++) {
      Refusals at = refusals.at("arrangements").at(i);
      checkUnique(arrangements.get(i).id(), "arrangement", ids, at.at("id"));
      checkPath(arrangements.get(i), at);
    }
    if (limits != null) {
      limits.check(this, refusals.at("limits"));
    }
  }

  private static void checkUnique(String id, String what, Set<String> ids, Refusals refusals) {
    if (!ids.add(id)) {
      refusals.add(
          Refusal.Code.DUPLICATE,
          "an id that no other " + what + " of this plan has",
          "\"" + id + "\" again");
    }
  }

  private void checkPath(Arrangement arrangement, Refusals refusals) {
    @Nullable Place before = null;
    for (int i = 0; i < arrangement.contacts().size(); i++) {
      Contact contact = arrangement.contacts().get(i);
      Refusals at = refusals.at("contacts").at(i);
      checkStation(contact.stem(), contact.atMetres(), at);
      if (contact.hasRopeWeight() && (rope == null || rope.linearDensity().isEmpty())) {
        at.at("ropeWeight")
            .add(
                Refusal.Code.CONFLICT,
                "false, or the member linearDensity in /rope",
                "true without it");
      }
      Place here = place(contact);
      checkApart(before, here, at);
      before = here;
    }
    if (arrangement.tail() instanceof Tail.Device device) {
      Refusals at = refusals.at("tail").at("device");
      checkStation(device.stem(), device.atMetres(), at);
      checkApart(before, new Place(device.stem(), device.atMetres(), device.offsetMetres(), 0), at);
    } else if (arrangement.tail() instanceof Tail.Point point
        && before != null
        && before.isBaseOf(stem(before.stem), point)) {
      refusals
          .at("tail")
          .at("point")
          .add(
              Refusal.Code.SAME_PLACE,
              "a point away from the last contact, which sits at the base of its stem",
              point.position().toString());
    }
  }

  private void checkStation(String id, double at, Refusals refusals) {
    @Nullable Stem stem = stem(id);
    if (stem == null) {
      refusals
          .at("stem")
          .add(
              Refusal.Code.UNKNOWN_REFERENCE,
              "the id of a stem of this plan ("
                  + stems.stream().map(Stem::id).collect(Collectors.joining(", "))
                  + ")",
              "\"" + id + "\"");
    } else {
      stem.checkStation(at, Kind.LENGTH, refusals.at("at"));
    }
  }

  private @Nullable Stem stem(String id) {
    return stems.stream().filter(stem -> stem.id().equals(id)).findFirst().orElse(null);
  }

  private static void checkApart(@Nullable Place before, Place here, Refusals refusals) {
    if (before != null && before.leavesNoRoomTo(here)) {
      refusals.add(
          Refusal.Code.SAME_PLACE,
          "a place away from the rope's point before it",
          "the same stem, station and offset, without slings");
    }
  }

  private static Place place(Contact contact) {
    return new Place(
        contact.stem(), contact.atMetres(), contact.offsetMetres(), contact.slingMetres());
  }

  /** Where a point of the rope is attached; lengths in metres. */
  private record Place(String stem, double at, double offset, double sling) {
    boolean leavesNoRoomTo(Place other) {
      return stem.equals(other.stem)
          && sling + other.sling <= Bounds.SAME_PLACE
          && Math.hypot(at - other.at, offset - other.offset) <= Bounds.SAME_PLACE;
    }

    boolean isBaseOf(@Nullable Stem owner, Tail.Point point) {
      if (owner == null || at + Math.abs(offset) + sling > Bounds.SAME_PLACE) {
        return false;
      }
      double[] base = owner.base().in(Kind.LENGTH);
      double[] end = point.position().in(Kind.LENGTH);
      return Math.abs(base[0] - end[0]) <= Bounds.SAME_PLACE
          && Math.abs(base[1] - end[1]) <= Bounds.SAME_PLACE
          && Math.abs(base[2] - end[2]) <= Bounds.SAME_PLACE;
    }
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
   * Returns a builder that holds all of this plan.
   *
   * @return the builder
   */
  public Builder toBuilder() {
    Builder builder =
        builder().title(title).notes(notes).stems(stems).piece(piece).arrangements(arrangements);
    builder.gravity = gravity;
    builder.rope = rope;
    builder.limits = limits;
    builder.ranges = ranges;
    return builder;
  }

  /**
   * Returns the title.
   *
   * @return the text; empty if none is stated
   */
  public String title() {
    return title;
  }

  /**
   * Returns remarks about the plan, such as where its numbers come from.
   *
   * @return the text; empty if none is stated
   */
  public String notes() {
    return notes;
  }

  /**
   * Returns the acceleration of gravity.
   *
   * @return the acceleration in metres per second squared, above zero; standard gravity, 9.80665
   *     m/s2, by default
   */
  public Quantity<Acceleration> gravity() {
    return Si.of(gravity == null ? STANDARD_GRAVITY_M_PER_S2 : gravity, Kind.ACCELERATION);
  }

  /**
   * Returns the stems.
   *
   * @return at least one, each with its own id
   */
  public List<Stem> stems() {
    return stems;
  }

  /**
   * Returns the piece.
   *
   * @return what hangs on the rope
   */
  public Piece piece() {
    return piece;
  }

  /**
   * Returns the rope.
   *
   * @return the rope; empty if none is stated
   */
  public Optional<Rope> rope() {
    return Optional.ofNullable(rope);
  }

  /**
   * Returns the arrangements.
   *
   * @return at least one, each with its own id
   */
  public List<Arrangement> arrangements() {
    return arrangements;
  }

  /**
   * Returns what somebody asks the arrangements to keep to.
   *
   * @return the limits; empty if none are stated
   */
  public Optional<Limits> limits() {
    return Optional.ofNullable(limits);
  }

  /**
   * Returns how far inputs may be off.
   *
   * @return the ranges and the study that is asked for; empty if none are stated
   */
  public Optional<RangesSpec> ranges() {
    return Optional.ofNullable(ranges);
  }

  /**
   * Returns what was left to defaults or taken from data.
   *
   * @return the data, in the order of the plan; the names are JSON pointers, such as {@code
   *     /stems/0/root}
   */
  public List<Datum> taken() {
    List<Datum> taken = new ArrayList<>();
    if (gravity == null) {
      taken.add(
          new Datum(
              "/gravity",
              QuantityText.print(gravity(), Kind.ACCELERATION),
              STANDARD_GRAVITY,
              null));
    }
    for (int i = 0; i < stems.size(); i++) {
      add(taken, "/stems/" + i, stems.get(i).taken());
    }
    piece.log().ifPresent(log -> add(taken, "/piece/log/", log.taken()));
    for (int i = 0; i < arrangements.size(); i++) {
      String place = "/arrangements/" + i;
      List<Contact> contacts = arrangements.get(i).contacts();
      for (int j = 0; j < contacts.size(); j++) {
        add(taken, place + "/contacts/" + j, contacts.get(j).taken());
      }
      add(taken, place + "/tail", arrangements.get(i).tail().taken());
      arrangements.get(i).drop().ifPresent(drop -> add(taken, place + "/drop", drop.taken()));
    }
    return List.copyOf(taken);
  }

  private static void add(List<Datum> taken, String place, List<Datum> more) {
    for (Datum datum : more) {
      taken.add(new Datum(place + datum.name(), datum.value(), datum.source(), datum.spread()));
    }
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Plan p
        && title.equals(p.title)
        && notes.equals(p.notes)
        && Objects.equals(gravity, p.gravity)
        && stems.equals(p.stems)
        && piece.equals(p.piece)
        && Objects.equals(rope, p.rope)
        && arrangements.equals(p.arrangements)
        && Objects.equals(limits, p.limits)
        && Objects.equals(ranges, p.ranges);
  }

  @Override
  public int hashCode() {
    return Objects.hash(title, notes, gravity, stems, piece, rope, arrangements, limits, ranges);
  }

  @Override
  public String toString() {
    return "plan \"" + title + "\": " + stems + ", " + piece + ", " + arrangements;
  }

  /** Builds a plan. Belongs to one thread. */
  public static final class Builder {
    private String title = "";
    private String notes = "";
    private @Nullable Double gravity;
    private List<Stem> stems = List.of();
    private @Nullable Piece piece;
    private @Nullable Rope rope;
    private List<Arrangement> arrangements = List.of();
    private @Nullable Limits limits;
    private @Nullable RangesSpec ranges;

    private Builder() {}

    /**
     * States the title.
     *
     * @param title any text, not null
     * @return this builder
     */
    public Builder title(String title) {
      this.title = requireNonNull(title, "title");
      return this;
    }

    /**
     * States remarks about the plan.
     *
     * @param notes any text, not null
     * @return this builder
     */
    public Builder notes(String notes) {
      this.notes = requireNonNull(notes, "notes");
      return this;
    }

    /**
     * States the acceleration of gravity.
     *
     * @param gravity above zero, at most 1000 m/s2, not null
     * @return this builder
     */
    public Builder gravity(Quantity<Acceleration> gravity) {
      this.gravity = Si.value(gravity, Kind.ACCELERATION, "gravity");
      return this;
    }

    /**
     * States the stems, in place of those stated before.
     *
     * @param stems at least one, each with its own id, not null
     * @return this builder
     */
    public Builder stems(List<Stem> stems) {
      this.stems = List.copyOf(stems);
      return this;
    }

    /**
     * States the piece.
     *
     * @param piece what hangs on the rope, not null
     * @return this builder
     */
    public Builder piece(Piece piece) {
      this.piece = requireNonNull(piece, "piece");
      return this;
    }

    /**
     * States the rope.
     *
     * @param rope the rope, not null
     * @return this builder
     */
    public Builder rope(Rope rope) {
      this.rope = requireNonNull(rope, "rope");
      return this;
    }

    /**
     * States the arrangements, in place of those stated before.
     *
     * @param arrangements at least one, each with its own id, not null
     * @return this builder
     */
    public Builder arrangements(List<Arrangement> arrangements) {
      this.arrangements = List.copyOf(arrangements);
      return this;
    }

    /**
     * States limits.
     *
     * @param limits what somebody asks the arrangements to keep to, not null
     * @return this builder
     */
    public Builder limits(Limits limits) {
      this.limits = requireNonNull(limits, "limits");
      return this;
    }

    /**
     * States how far inputs may be off.
     *
     * @param ranges the ranges and the study that is asked for, not null
     * @return this builder
     */
    public Builder ranges(RangesSpec ranges) {
      this.ranges = requireNonNull(ranges, "ranges");
      return this;
    }

    /**
     * Returns the plan.
     *
     * @return the plan
     * @throws org.boleline.explain.PlanRefusedException if a part is missing or outside its range,
     *     an id stands twice, a contact or device names a stem that is not there or a station that
     *     its stem does not have, or two neighbouring points of the rope are at the same place:
     *     with all reasons
     */
    public Plan build() {
      return Refusals.check(this::stated);
    }

    /**
     * Returns the plan as stated, for readers of files.
     *
     * @param refusals notes what is wrong, at the plan
     * @return the plan
     */
    public Plan stated(Refusals refusals) {
      return new Plan(this, refusals);
    }
  }
}
