package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Datum;
import org.boleline.explain.Refusals;
import org.boleline.explain.Source;
import org.boleline.rope.Hardware;
import org.boleline.rope.Ideal;
import org.boleline.rope.Sheave;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.units.Stiffness;
import org.jspecify.annotations.Nullable;

/**
 * A redirect of the rope on a stem.
 *
 * <p>It may sit on the axis, on a rigid arm square to the axis (its offset), and at the end of a
 * sling. Immutable and thread-safe; equality is exact, on what was stated.
 */
public final class Contact {
  private final String stem;
  private final double at;
  private final Hardware hardware;
  private final @Nullable Double sling;
  private final @Nullable Double offset;
  private final boolean ropeWeight;
  private final @Nullable Hardware hardwareInCatch;
  private final @Nullable Double slingStiffness;
  private final @Nullable Boolean opens;

  private Contact(
      String stem,
      double at,
      Hardware hardware,
      @Nullable Double sling,
      @Nullable Double offset,
      boolean ropeWeight,
      @Nullable Hardware hardwareInCatch,
      @Nullable Double slingStiffness,
      @Nullable Boolean opens) {
    this.stem = stem;
    this.at = at;
    this.hardware = hardware;
    this.sling = sling;
    this.offset = offset;
    this.ropeWeight = ropeWeight;
    this.hardwareInCatch = hardwareInCatch;
    this.slingStiffness = slingStiffness;
    this.opens = opens;
  }

  /**
   * Obtains a contact on the axis of a stem, without a sling.
   *
   * @param stem id of the stem, not null
   * @param at station on the stem, zero or more, not null
   * @param hardware what the rope runs over, a sheave of an efficiency of 0.01 or more, not null
   * @return the contact
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public static Contact of(String stem, Quantity<Length> at, Hardware hardware) {
    requireNonNull(stem, "stem");
    requireNonNull(at, "at");
    requireNonNull(hardware, "hardware");
    return Refusals.check(
        refusals -> stated(stem, at, hardware, null, null, false, null, null, refusals));
  }

  /**
   * Obtains a contact as stated, for readers of files.
   *
   * @param stem id of the stem, or null if that could not be had
   * @param at station on the stem, or null if that could not be had
   * @param hardware what the rope runs over, or null if that could not be had
   * @param sling length of the sling, or null if none is stated
   * @param offset the rigid arm, or null if none is stated
   * @param ropeWeight whether the weight of the leg behind it counts
   * @param hardwareInCatch the hardware as it acts in a catch, or null if none is stated
   * @param slingStiffness stiffness of the sling, or null if none is stated
   * @param refusals notes what is wrong, at the contact
   * @return the contact
   */
  public static Contact stated(
      @Nullable String stem,
      @Nullable Quantity<Length> at,
      @Nullable Hardware hardware,
      @Nullable Quantity<Length> sling,
      @Nullable Quantity<Length> offset,
      boolean ropeWeight,
      @Nullable Hardware hardwareInCatch,
      @Nullable Quantity<Stiffness> slingStiffness,
      Refusals refusals) {
    checkEfficiency(hardware, refusals.at("hardware"));
    checkEfficiency(hardwareInCatch, refusals.at("hardwareInCatch"));
    return new Contact(
        refusals.at("stem").present(stem, "the id of a stem of this plan", ""),
        Bounds.station(at, refusals),
        refusals
            .at("hardware")
            .present(hardware, "one of ideal, ring, sheave, bark", Ideal.INSTANCE),
        sling == null
            ? null
            : (Double) refusals.at("sling").between(sling, Kind.LENGTH, 0, Bounds.REACH),
        Bounds.offset(offset, refusals),
        ropeWeight,
        hardwareInCatch,
        slingStiffness == null
            ? null
            : (Double)
                refusals
                    .at("slingStiffness")
                    .aboveZero(slingStiffness, Kind.STIFFNESS, Bounds.STIFFNESS),
        null);
  }

  private static void checkEfficiency(@Nullable Hardware hardware, Refusals refusals) {
    if (hardware instanceof Sheave sheave) {
      refusals
          .at("sheave")
          .at("efficiency")
          .number(sheave.efficiency(), Bounds.LEAST_EFFICIENCY, 1);
    }
  }

  private Contact with(
      @Nullable Quantity<Length> newSling,
      @Nullable Quantity<Length> newOffset,
      @Nullable Hardware newHardwareInCatch,
      @Nullable Quantity<Stiffness> newSlingStiffness) {
    return Refusals.check(
            refusals ->
                stated(
                    stem,
                    at(),
                    hardware,
                    newSling,
                    newOffset,
                    ropeWeight,
                    newHardwareInCatch,
                    newSlingStiffness,
                    refusals))
        .opening(opens);
  }

  private Contact opening(@Nullable Boolean newOpens) {
    return new Contact(
        stem, at, hardware, sling, offset, ropeWeight, hardwareInCatch, slingStiffness, newOpens);
  }

  private @Nullable Quantity<Length> statedSling() {
    return sling == null ? null : sling();
  }

  private @Nullable Quantity<Length> statedOffset() {
    return offset == null ? null : offset();
  }

  private @Nullable Quantity<Stiffness> statedStiffness() {
    return slingStiffness == null ? null : Si.of(slingStiffness, Kind.STIFFNESS);
  }

  /**
   * Returns this contact at the end of a sling.
   *
   * @param sling length of the sling, zero or more, at most 20 m, not null; zero puts the hardware
   *     on the stem
   * @return the contact
   * @throws org.boleline.explain.PlanRefusedException if the length is outside its range
   */
  public Contact withSling(Quantity<Length> sling) {
    requireNonNull(sling, "sling");
    return with(sling, statedOffset(), hardwareInCatch, statedStiffness());
  }

  /**
   * Returns this contact on a rigid arm from the axis, square to it in the vertical plane through
   * it.
   *
   * @param offset length of the arm, positive toward the underside of the stem (for a plumb stem:
   *     toward its azimuth), negative toward its upper side; at most 20 m either way, not null
   * @return the contact
   * @throws org.boleline.explain.PlanRefusedException if the length is outside its range
   */
  public Contact withOffset(Quantity<Length> offset) {
    requireNonNull(offset, "offset");
    return with(statedSling(), offset, hardwareInCatch, statedStiffness());
  }

  /**
   * Returns this contact with the weight of the rope between it and the next one that bears, or the
   * tail, counted or not.
   *
   * <p>The plan's rope has to state its linear density then. The leg to the piece has no stated
   * length: its rope is weighed with the piece.
   *
   * @param counts whether it counts; it does not by default
   * @return the contact
   * @validity a rope taut enough to be nearly straight (STA-22)
   */
  public Contact withRopeWeight(boolean counts) {
    return new Contact(
        stem, at, hardware, sling, offset, counts, hardwareInCatch, slingStiffness, opens);
  }

  /**
   * Returns this contact with the way its hardware takes the rope.
   *
   * <p>No analysis uses it: it settles in which order the rope can be set up, see {@link
   * SettingUp}.
   *
   * @param ropeCanBeLaidIn true if the hardware can be opened to lay the rope in, false if an end
   *     of the rope has to be threaded through
   * @return the contact
   */
  public Contact withOpens(boolean ropeCanBeLaidIn) {
    return opening(ropeCanBeLaidIn);
  }

  /**
   * Returns this contact with hardware of its own for catches.
   *
   * <p>Friction in a catch is its own datum: a sheave may not spin up, so that the rope slides on
   * it as on a ring.
   *
   * @param newHardwareInCatch what the rope runs over as it acts in a catch, a sheave of an
   *     efficiency of 0.01 or more, not null
   * @return the contact
   * @throws org.boleline.explain.PlanRefusedException if a value is outside its range
   */
  public Contact withHardwareInCatch(Hardware newHardwareInCatch) {
    requireNonNull(newHardwareInCatch, "newHardwareInCatch");
    return with(statedSling(), statedOffset(), newHardwareInCatch, statedStiffness());
  }

  /**
   * Returns this contact on a sling that stretches as a spring in a catch.
   *
   * <p>The analysis of slow motion does not use it.
   *
   * @param newSlingStiffness force over stretch of the sling, above zero, at most 1 TN/m, not null
   * @return the contact
   * @throws org.boleline.explain.PlanRefusedException if the stiffness is outside its range
   */
  public Contact withSlingStiffness(Quantity<Stiffness> newSlingStiffness) {
    requireNonNull(newSlingStiffness, "newSlingStiffness");
    return with(statedSling(), statedOffset(), hardwareInCatch, newSlingStiffness);
  }

  double atMetres() {
    return at;
  }

  double slingMetres() {
    return sling == null ? 0 : sling;
  }

  double offsetMetres() {
    return offset == null ? 0 : offset;
  }

  /**
   * Returns the stem.
   *
   * @return its id
   */
  public String stem() {
    return stem;
  }

  /**
   * Returns the station on the stem.
   *
   * @return the station in metres from the base
   */
  public Quantity<Length> at() {
    return Si.of(at, Kind.LENGTH);
  }

  /**
   * Returns what the rope runs over.
   *
   * @return the hardware
   */
  public Hardware hardware() {
    return hardware;
  }

  /**
   * Returns the length of the sling.
   *
   * @return the length in metres, zero or more; zero by default
   */
  public Quantity<Length> sling() {
    return Si.of(slingMetres(), Kind.LENGTH);
  }

  /**
   * Returns the rigid arm from the axis to where the sling or the hardware sits.
   *
   * @return the arm in metres, positive toward the underside, negative toward the upper side; zero
   *     by default
   */
  public Quantity<Length> offset() {
    return Si.of(offsetMetres(), Kind.LENGTH);
  }

  /**
   * Tells whether the weight of the leg behind this contact counts.
   *
   * @return true if it does; false by default
   */
  public boolean hasRopeWeight() {
    return ropeWeight;
  }

  /**
   * Returns what the rope runs over as it acts in a catch.
   *
   * @return the hardware; empty if none is stated
   */
  public Optional<Hardware> hardwareInCatch() {
    return Optional.ofNullable(hardwareInCatch);
  }

  /**
   * Returns the stiffness of the sling, as a spring.
   *
   * @return the stiffness in newtons per metre; empty if none is stated
   */
  public Optional<Quantity<Stiffness>> slingStiffness() {
    return Optional.ofNullable(statedStiffness());
  }

  /**
   * Tells whether the hardware can be opened to lay the rope in.
   *
   * @return true if it can, false if an end has to be threaded through; empty if it is not stated
   */
  public Optional<Boolean> opens() {
    return Optional.ofNullable(opens);
  }

  /**
   * Returns what was left to defaults; that the weight of the rope does not count is not among it.
   *
   * @return the data; the names are JSON pointers from this contact, such as {@code /sling}
   */
  public List<Datum> taken() {
    List<Datum> taken = new ArrayList<>();
    if (sling == null) {
      taken.add(new Datum("/sling", "0 m", Source.DEFAULT, null));
    }
    if (offset == null) {
      taken.add(new Datum("/offset", "0 m", Source.DEFAULT, null));
    }
    return List.copyOf(taken);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Contact c
        && stem.equals(c.stem)
        && Double.compare(at, c.at) == 0
        && hardware.equals(c.hardware)
        && Objects.equals(sling, c.sling)
        && Objects.equals(offset, c.offset)
        && ropeWeight == c.ropeWeight
        && Objects.equals(hardwareInCatch, c.hardwareInCatch)
        && Objects.equals(slingStiffness, c.slingStiffness)
        && Objects.equals(opens, c.opens);
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        stem, at, hardware, sling, offset, ropeWeight, hardwareInCatch, slingStiffness, opens);
  }

  @Override
  public String toString() {
    return hardware
        + " on "
        + stem
        + " at "
        + QuantityText.print(at(), Kind.LENGTH)
        + (ropeWeight ? ", rope weighed behind it" : "");
  }
}
