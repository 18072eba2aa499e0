package org.boleline.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import org.boleline.explain.Datum;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.Hardware;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * The plans between two arrangements: some changes made, others not.
 *
 * <p>Contacts are matched by place, in order; what is left between matches is matched in order as
 * moved, and the rest comes or goes.
 */
final class MixedPlans {
  static final String ID = "mixed";

  private static final String TAIL = "place of tail";
  private static final String WRAPS = "device friction";
  private static final String MOTION = "motion";
  private static final String COUNT = "number of points";
  private static final String PLACES = "positions";
  private static final String FRICTION = "friction";
  private static final String TAGLINE = "tagline";
  private static final String DROP = "drop";
  private static final String PIECE = "piece";
  private static final String ROPE = "rope";
  private static final String STEMS = "stems";
  private static final String GRAVITY = "gravity";
  private static final String LIMITS = "limits";

  /** A contact before and after; one of them may be missing. */
  private record Slot(@Nullable Contact a, @Nullable Contact b) {
    boolean isBoth() {
      return a != null && b != null;
    }
  }

  private final Plan before;
  private final Arrangement a;
  private final Plan after;
  private final Arrangement b;
  private final List<Slot> slots;
  private final List<String> changes;

  MixedPlans(Plan before, Arrangement a, Plan after, Arrangement b) {
    this.before = before;
    this.a = a;
    this.after = after;
    this.b = b;
    this.slots = slots(a.contacts(), b.contacts());
    this.changes = found();
  }

  List<String> changes() {
    return changes;
  }

  private List<String> found() {
    List<String> found = new ArrayList<>();
    boolean devices = a.tail() instanceof Tail.Device && b.tail() instanceof Tail.Device;
    boolean placeOfTail =
        devices
            ? !tail((Tail.Device) a.tail(), (Tail.Device) b.tail()).equals(b.tail())
            : !a.tail().equals(b.tail());
    note(found, TAIL, placeOfTail);
    note(
        found,
        WRAPS,
        devices && !tail((Tail.Device) a.tail(), (Tail.Device) b.tail()).equals(a.tail()));
    note(found, MOTION, a.motion() != b.motion());
    note(found, COUNT, slots.stream().anyMatch(slot -> !slot.isBoth()));
    note(
        found,
        PLACES,
        slots.stream()
            .anyMatch(s -> s.a != null && s.b != null && !mix(s.a, s.b, s.a).equals(s.b)));
    note(
        found,
        FRICTION,
        slots.stream()
            .anyMatch(
                s ->
                    s.a != null
                        && s.b != null
                        && !(s.a.hardware().equals(s.b.hardware())
                            && s.a.hardwareInCatch().equals(s.b.hardwareInCatch()))));
    note(found, TAGLINE, !a.tagline().equals(b.tagline()));
    note(found, DROP, !a.drop().equals(b.drop()));
    note(found, PIECE, !before.piece().equals(after.piece()));
    note(found, ROPE, !before.rope().equals(after.rope()));
    note(found, STEMS, !before.stems().equals(after.stems()));
    note(found, GRAVITY, !Objects.equals(gravity(before), gravity(after)));
    note(found, LIMITS, !before.limits().equals(after.limits()));
    return List.copyOf(found);
  }

  private static double gravity(Plan plan) {
    return Si.value(plan.gravity(), Kind.ACCELERATION, "gravity");
  }

  private static void note(List<String> found, String name, boolean differs) {
    if (differs) {
      found.add(name);
    }
  }

  /** The device of one place with the friction and the wraps of another. */
  private static Tail.Device tail(Tail.Device friction, Tail.Device place) {
    Tail.Device device =
        Tail.Device.of(place.stem(), place.at(), friction.friction(), friction.wraps());
    if (place.taken().isEmpty()) {
      device = device.withOffset(place.offset());
    }
    return friction.frictionInCatch().isPresent()
        ? device.withFrictionInCatch(friction.frictionInCatch().getAsDouble())
        : device;
  }

  /** A contact at a place with other hardware. */
  private static Contact mix(Contact hardware, Contact place, Contact catching) {
    Contact contact = Contact.of(place.stem(), place.at(), hardware.hardware());
    List<String> left = place.taken().stream().map(Datum::name).toList();
    if (!left.contains("/sling")) {
      contact = contact.withSling(place.sling());
    }
    if (!left.contains("/offset")) {
      contact = contact.withOffset(place.offset());
    }
    contact = contact.withRopeWeight(place.hasRopeWeight());
    if (place.slingStiffness().isPresent()) {
      contact = contact.withSlingStiffness(place.slingStiffness().get());
    }
    contact = hardware.opens().map(contact::withOpens).orElse(contact);
    @Nullable Hardware inCatch = catching.hardwareInCatch().orElse(null);
    return inCatch == null ? contact : contact.withHardwareInCatch(inCatch);
  }

  private static boolean isSamePlace(Contact a, Contact b) {
    return mix(a, b, a).equals(a);
  }

  private static List<Slot> slots(List<Contact> a, List<Contact> b) {
    int[][] common = new int[a.size() + 1][b.size() + 1];
    for (int i = a.size() - 1; i >= 0; i--) {
      for (int j = b.size() - 1; j >= 0; j--) {
        common[i][j] =
            isSamePlace(a.get(i), b.get(j))
                ? common[i + 1][j + 1] + 1
                : Math.max(common[i + 1][j], common[i][j + 1]);
      }
    }
    List<Slot> slots = new ArrayList<>();
    List<Contact> gone = new ArrayList<>();
    List<Contact> come = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < a.size() && j < b.size()) {
      if (isSamePlace(a.get(i), b.get(j))) {
        moved(gone, come, slots);
        slots.add(new Slot(a.get(i++), b.get(j++)));
      } else if (common[i + 1][j] >= common[i][j + 1]) {
        gone.add(a.get(i++));
      } else {
        come.add(b.get(j++));
      }
    }
    gone.addAll(a.subList(i, a.size()));
    come.addAll(b.subList(j, b.size()));
    moved(gone, come, slots);
    return Collections.unmodifiableList(slots);
  }

  private static void moved(List<Contact> gone, List<Contact> come, List<Slot> slots) {
    for (int k = 0; k < Math.max(gone.size(), come.size()); k++) {
      slots.add(
          new Slot(k < gone.size() ? gone.get(k) : null, k < come.size() ? come.get(k) : null));
    }
    gone.clear();
    come.clear();
  }

  private boolean made(String change, int bits) {
    int i = changes.indexOf(change);
    return i >= 0 && (bits & 1 << i) != 0;
  }

  /** The plan in which some changes are made, by their bits. */
  Plan plan(int bits) {
    List<Contact> contacts = new ArrayList<>();
    for (Slot slot : slots) {
      if (slot.a != null && slot.b != null) {
        Contact hardware = made(FRICTION, bits) ? slot.b : slot.a;
        contacts.add(mix(hardware, made(PLACES, bits) ? slot.b : slot.a, hardware));
      } else if (slot.a != null && !made(COUNT, bits)) {
        contacts.add(slot.a);
      } else if (slot.b != null && made(COUNT, bits)) {
        contacts.add(slot.b);
      }
    }
    Tail tail = made(TAIL, bits) ? b.tail() : a.tail();
    if (a.tail() instanceof Tail.Device x && b.tail() instanceof Tail.Device y) {
      tail = tail(made(WRAPS, bits) ? y : x, made(TAIL, bits) ? y : x);
    }
    Arrangement.Builder mixed =
        Arrangement.builder(ID)
            .motion(made(MOTION, bits) ? b.motion() : a.motion())
            .contacts(contacts)
            .tail(tail);
    (made(TAGLINE, bits) ? b : a).tagline().ifPresent(mixed::tagline);
    (made(DROP, bits) ? b : a).drop().ifPresent(mixed::drop);
    Plan.Builder plan =
        Plan.builder()
            .stems((made(STEMS, bits) ? after : before).stems())
            .piece((made(PIECE, bits) ? after : before).piece())
            .gravity((made(GRAVITY, bits) ? after : before).gravity())
            .arrangements(List.of(mixed.build()));
    (made(ROPE, bits) ? after : before).rope().ifPresent(plan::rope);
    (made(LIMITS, bits) ? after : before).limits().ifPresent(plan::limits);
    return plan.build();
  }
}
