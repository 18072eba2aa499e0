package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.plan.SettingUp;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Hardware;
import org.boleline.rope.Sheave;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/** Says in words what a plan states. */
final class Wording {
  private final UnitSystem units;
  private final boolean severalStems;

  Wording(Plan plan, UnitSystem units) {
    this.units = units;
    severalStems = plan.stems().size() > 1;
  }

  UnitSystem units() {
    return units;
  }

  static double metres(Quantity<Length> length) {
    return Si.value(length, Kind.LENGTH, "length");
  }

  static double degrees(Quantity<Angle> angle) {
    return Math.toDegrees(Si.value(angle, Kind.ANGLE, "angle"));
  }

  /** Words with a capital in front. */
  static String capital(String words) {
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Joins words as in "a, b and c". */
  static String join(List<String> words) {
    int last = words.size() - 1;
    return last < 1
        ? String.join("", words)
        : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  String length(Quantity<Length> length) {
    return units.statedLength(metres(length));
  }

  /** A station, with its stem if there are several. */
  String place(String stem, Quantity<Length> at) {
    return severalStems ? length(at) + " on " + Page.clean(stem) : length(at);
  }

  /** What the stem is called, if a name is needed to tell. */
  String ofStem(String stem) {
    return severalStems ? " of " + Page.clean(stem) : "";
  }

  String position(Vector<Length> position) {
    double[] xyz = position.in(Kind.LENGTH);
    return "("
        + units.bareStatedLength(xyz[0])
        + ", "
        + units.bareStatedLength(xyz[1])
        + ", "
        + units.bareStatedLength(xyz[2])
        + ")"
        + Scale.HARD_BLANK
        + units.length().shown();
  }

  /** The hardware with its number, one of it or several. */
  static String hardware(Hardware hardware, boolean several) {
    if (hardware instanceof FrictionRing ring) {
      return (several ? "rings" : "a ring") + " (friction " + Figures.stated(ring.friction()) + ")";
    }
    if (hardware instanceof Sheave sheave) {
      return (several ? "sheaves" : "a sheave")
          + " (efficiency "
          + Figures.stated(sheave.efficiency())
          + ")";
    }
    if (hardware instanceof Bark bark) {
      return "bare bark" + " (friction " + Figures.stated(bark.friction()) + ")";
    }
    return several ? "points without friction" : "a point without friction";
  }

  /** Where the rope ends: the object of "the tail goes to". */
  String tail(Tail tail) {
    if (tail instanceof Tail.Device device) {
      return "a device at " + place(device.stem(), device.at());
    }
    if (tail instanceof Tail.Point point) {
      return "a fixed point at " + position(point.position());
    }
    return "straight down";
  }

  /** The whole arrangement on one line. */
  String arrangement(Arrangement arrangement) {
    List<String> parts = new ArrayList<>();
    parts.add(arrangement.motion().text());
    parts.add(contacts(arrangement.contacts()));
    Tail tail = arrangement.tail();
    parts.add(
        tail instanceof Tail.Device device
            ? "tail to "
                + tail(tail)
                + ", "
                + wraps(device.wraps())
                + " (friction "
                + Figures.stated(device.friction())
                + ")"
            : tail instanceof Tail.Down ? "tail straight down" : "tail to " + tail(tail));
    arrangement
        .tagline()
        .ifPresent(
            line ->
                parts.add(
                    "load leg "
                        + Figures.stated(degrees(line.angle()))
                        + "° out of plumb toward azimuth "
                        + Figures.stated(degrees(line.azimuth()))
                        + "°"));
    String words = String.join("; ", parts);
    return SettingUp.of(arrangement)
        .map(order -> words + ". Setting up: " + order.sentence())
        .orElse(words);
  }

  static String wraps(double wraps) {
    return wraps == 0 ? "no wraps" : Figures.stated(wraps) + (wraps == 1 ? " wrap" : " wraps");
  }

  /** Contacts in their order; neighbours of one kind are named together. */
  String contacts(List<Contact> contacts) {
    List<String> words = new ArrayList<>();
    int from = 0;
    for (int to = 1; to <= contacts.size(); to++) {
      Contact first = contacts.get(from);
      if (to == contacts.size() || !kind(contacts.get(to)).equals(kind(first))) {
        List<Contact> run = contacts.subList(from, to);
        words.add(hardware(first.hardware(), run.size() > 1) + " at " + places(run) + slung(first));
        from = to;
      }
    }
    return join(words);
  }

  /** The places of contacts. */
  String places(List<Contact> contacts) {
    return join(contacts.stream().map(c -> place(c.stem(), c.at())).toList());
  }

  private String kind(Contact contact) {
    return hardware(contact.hardware(), true) + slung(contact);
  }

  private String slung(Contact contact) {
    double sling = metres(contact.sling());
    double offset = metres(contact.offset());
    return (sling > 0 ? ", slung " + length(contact.sling()) : "")
        + (offset == 0
            ? ""
            : ", "
                + units.statedLength(Math.abs(offset))
                + (offset > 0 ? " on the underside" : " on the upper side"))
        + (contact.hasRopeWeight() ? ", rope behind weighed" : "");
  }
}
