package org.boleline.explain;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.measure.Quantity;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * A collector of refusals, standing at one place of a plan.
 *
 * <p>Every rule about what can be analysed is written once, against this type: the Java factories
 * run it and throw at the end, the reader of plan files runs it over everything that the file
 * states and throws then. A collector notes one refusal for a place, the first: so a value that
 * could not be read is not called missing as well. Where a number could not be had, the methods
 * return NaN, and rules are written so that a comparison with NaN refuses nothing more.
 *
 * <p>Belongs to one thread; the only type of this package that changes.
 */
public final class Refusals {
  private final String place;
  private final Map<String, Refusal> found;

  private Refusals(String place, Map<String, Refusal> found) {
    this.place = place;
    this.found = found;
  }

  /**
   * Obtains a collector that has noted nothing, at the root.
   *
   * @return the collector
   */
  public static Refusals none() {
    return new Refusals("", new LinkedHashMap<>());
  }

  /**
   * Makes something by rules that collect, and throws if they noted anything.
   *
   * @param <T> what is made
   * @param making makes it, noting what is wrong with it
   * @return what was made, with nothing wrong
   * @throws PlanRefusedException if anything was noted; places are relative to what is made
   */
  public static <T> T check(Function<Refusals, T> making) {
    Refusals refusals = none();
    T made = making.apply(refusals);
    refusals.throwIfAny();
    return made;
  }

  /**
   * Returns a view of this collector that stands at a member of this place.
   *
   * @param member name of the member, not escaped
   * @return the view; what it notes is noted here
   */
  public Refusals at(String member) {
    return new Refusals(place + "/" + member.replace("~", "~0").replace("/", "~1"), found);
  }

  /**
   * Returns a view of this collector that stands at an element of this place.
   *
   * @param index index of the element, from zero
   * @return the view; what it notes is noted here
   */
  public Refusals at(int index) {
    return new Refusals(place + "/" + index, found);
  }

  /**
   * Returns where this collector stands.
   *
   * @return a JSON pointer, escaped as RFC 6901 says; empty at the root
   */
  public String place() {
    return place;
  }

  /**
   * Notes a refusal at this place, unless one is noted here already.
   *
   * <p>That something is missing is not noted either if anything is noted below this place: it was
   * stated, but could not be taken.
   *
   * @param code what kind of reason
   * @param wants what is wanted here, in words
   * @param got what was found, in words
   */
  public void add(Refusal.Code code, String wants, String got) {
    if (code == Refusal.Code.MISSING
        && found.keySet().stream().anyMatch(noted -> noted.startsWith(place + "/"))) {
      return;
    }
    found.putIfAbsent(place, new Refusal(code, place, wants, got));
  }

  /**
   * Tells whether anything is noted, at any place.
   *
   * @return true if there is a refusal
   */
  public boolean hasAny() {
    return !found.isEmpty();
  }

  /**
   * Returns what is noted, at all places.
   *
   * @return the refusals, in the order they were noted
   */
  public List<Refusal> list() {
    return List.copyOf(found.values());
  }

  /**
   * Throws if anything is noted, at any place.
   *
   * @throws PlanRefusedException if there is a refusal
   */
  public void throwIfAny() {
    if (hasAny()) {
      throw new PlanRefusedException(list());
    }
  }

  /**
   * Notes that this place is missing if there is nothing, and returns a stand-in then.
   *
   * @param <T> what it is
   * @param value the value, or null if there is none
   * @param wants what is wanted here, in words
   * @param standIn what takes its place, so that further rules can run
   * @return the value or the stand-in
   */
  public <T> T present(@Nullable T value, String wants, T standIn) {
    if (value == null) {
      add(Refusal.Code.MISSING, wants, "nothing");
      return standIn;
    }
    return value;
  }

  /**
   * Takes a name: text of 1 to 80 characters without control characters.
   *
   * @param text the text, or null if there is none
   * @return the text; empty if there is none
   */
  public String name(@Nullable String text) {
    String wants = "a name of 1 to 80 characters on one line";
    String name = present(text, wants, "");
    if (text != null
        && (name.isBlank()
            || name.length() > 80
            || name.chars().anyMatch(Character::isISOControl))) {
      add(
          Refusal.Code.OUT_OF_RANGE,
          wants,
          name.isBlank() ? "blank text" : "text of " + name.length() + " characters");
    }
    return name;
  }

  /**
   * Takes a quantity with bounds that both are allowed.
   *
   * @param <Q> the quantity type
   * @param quantity the quantity, or null if there is none
   * @param kind what it must be of
   * @param least least value in the SI unit, in
   * @param most greatest value in the SI unit, in
   * @return the value in the SI unit, or NaN if there is none within the bounds
   */
  public <Q extends Quantity<Q>> double between(
      @Nullable Quantity<Q> quantity, Kind<Q> kind, double least, double most) {
    double value = value(quantity, kind);
    return value < least || value > most
        ? refuseRange("from " + text(least, kind), most, value, kind)
        : value;
  }

  /**
   * Takes a quantity that must be above zero.
   *
   * @param <Q> the quantity type
   * @param quantity the quantity, or null if there is none
   * @param kind what it must be of
   * @param most greatest value in the SI unit, in
   * @return the value in the SI unit, or NaN if there is none within the bounds
   */
  public <Q extends Quantity<Q>> double aboveZero(
      @Nullable Quantity<Q> quantity, Kind<Q> kind, double most) {
    double value = value(quantity, kind);
    return value <= 0 || value > most ? refuseRange("above zero", most, value, kind) : value;
  }

  /**
   * Takes a pure number with bounds that both are allowed.
   *
   * @param number the number, or null if there is none
   * @param least least value, in
   * @param most greatest value, in
   * @return the number, or NaN if there is none within the bounds
   */
  public double number(@Nullable Double number, double least, double most) {
    String wants =
        "a number from " + QuantityText.number(least) + " to " + QuantityText.number(most);
    if (number == null) {
      add(Refusal.Code.MISSING, wants, "nothing");
      return Double.NaN;
    }
    double value = number;
    if (!(value >= least && value <= most)) {
      add(
          Refusal.Code.OUT_OF_RANGE,
          wants,
          Double.isFinite(value) ? QuantityText.number(value) : "no finite number");
      return Double.NaN;
    }
    return value + 0.0; // no minus zero
  }

  /**
   * Makes something by a factory that throws, and notes here what it refuses.
   *
   * <p>Takes over the refusals of a {@link PlanRefusedException} below this place, and the message
   * of an {@link IllegalArgumentException} of the form {@code member: wants ..., got ...} as one
   * refusal at that member; a name of several words, such as {@code linear density}, is the member
   * {@code linearDensity}.
   *
   * @param <T> what is made
   * @param making makes it
   * @return what was made; null if it was refused
   */
  public <T> @Nullable T trying(Supplier<T> making) {
    try {
      return making.get();
    } catch (PlanRefusedException e) {
      for (Refusal refusal : e.refusals()) {
        new Refusals(place + refusal.place(), found)
            .add(refusal.code(), refusal.wants(), refusal.got());
      }
    } catch (IllegalArgumentException e) {
      String message = requireNonNull(e.getMessage(), "a refusal without a message");
      int wants = message.indexOf(": wants ");
      int got = message.indexOf(", got ", wants);
      if (wants <= 0 || got < 0) {
        throw e;
      }
      at(memberName(message.substring(0, wants)))
          .add(
              Refusal.Code.OUT_OF_RANGE,
              message.substring(wants + ": wants ".length(), got),
              message.substring(got + ", got ".length()));
    }
    return null;
  }

  private static String memberName(String words) {
    StringBuilder name = new StringBuilder();
    for (String word : words.split(" ", -1)) {
      boolean first = name.isEmpty();
      name.append(first ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }
    return name.toString();
  }

  private <Q extends Quantity<Q>> double value(@Nullable Quantity<Q> quantity, Kind<Q> kind) {
    if (quantity == null) {
      add(Refusal.Code.MISSING, QuantityText.wants(kind), "nothing");
      return Double.NaN;
    }
    try {
      return Si.value(quantity, kind, kind.name()) + 0.0; // no minus zero
    } catch (IllegalArgumentException e) {
      add(Refusal.Code.WRONG_QUANTITY, QuantityText.wants(kind), quantity.toString());
      return Double.NaN;
    }
  }

  private <Q extends Quantity<Q>> double refuseRange(
      String least, double most, double value, Kind<Q> kind) {
    add(
        Refusal.Code.OUT_OF_RANGE,
        "a " + kind + " " + least + " to " + text(most, kind),
        text(value, kind));
    return Double.NaN;
  }

  private static <Q extends Quantity<Q>> String text(double value, Kind<Q> kind) {
    return QuantityText.print(Si.of(value, kind), kind);
  }
}
