package org.boleline.study;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Limits;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.stem.Stem;
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
  private record Slot(@Nullable Contact a, @Nullable Contact b) {}

  private static final List<String> ALL =
      List.of(
          TAIL, WRAPS, MOTION, COUNT, PLACES, FRICTION, TAGLINE, DROP, PIECE, ROPE, STEMS, GRAVITY,
          LIMITS);

  /** All that a reading depends on; whether it can be analysed shows when its plan is built. */
  private record Mixture(
      Motion motion,
      List<Contact> contacts,
      Tail tail,
      Optional<Tagline> tagline,
      Optional<DropSpec> drop,
      Piece piece,
      Optional<Rope> rope,
      List<Stem> stems,
      double gravity,
      Optional<Limits> limits) {
    Plan plan() {
      Arrangement.Builder mixed =
          Arrangement.builder(ID).motion(motion).contacts(contacts).tail(tail);
      tagline.ifPresent(mixed::tagline);
      drop.ifPresent(mixed::drop);
      Plan.Builder plan =
          Plan.builder()
              .stems(stems)
              .piece(piece)
              .gravity(Si.of(gravity, Kind.ACCELERATION))
              .arrangements(List.of(mixed.build()));
      rope.ifPresent(plan::rope);
      limits.ifPresent(plan::limits);
      return plan.build();
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
    this.a = plain(a);
    this.after = after;
    this.b = plain(b);
    this.slots = slots(this.a.contacts(), this.b.contacts());
    this.changes = ALL.stream().filter(this::isNeeded).toList();
  }

  /** What differs, in the order of {@link #ALL}: all of it made is the second arrangement. */
  List<String> changes() {
    return changes;
  }

  /** Whether the second arrangement is missed without a change. */
  private boolean isNeeded(String change) {
    return !mixture(made -> !made.equals(change)).equals(mixture(made -> true));
  }

  /** The plan in which some changes are made, by their bits. */
  Plan plan(int bits) {
    return mixture(
            change -> {
              int i = changes.indexOf(change);
              return i >= 0 && (bits & 1 << i) != 0;
            })
        .plan();
  }

  private Mixture mixture(Predicate<String> made) {
    List<Contact> contacts = new ArrayList<>();
    for (Slot slot : slots) {
      if (slot.a != null && slot.b != null) {
        contacts.add(
            mix(made.test(FRICTION) ? slot.b : slot.a, made.test(PLACES) ? slot.b : slot.a));
      } else if (slot.a != null && !made.test(COUNT)) {
        contacts.add(slot.a);
      } else if (slot.b != null && made.test(COUNT)) {
        contacts.add(slot.b);
      }
    }
    Tail tail = made.test(TAIL) ? b.tail() : a.tail();
    if (a.tail() instanceof Tail.Device x && b.tail() instanceof Tail.Device y) {
      tail = mix(made.test(WRAPS) ? y : x, made.test(TAIL) ? y : x);
    }
    return new Mixture(
        (made.test(MOTION) ? b : a).motion(),
        contacts,
        tail,
        (made.test(TAGLINE) ? b : a).tagline(),
        (made.test(DROP) ? b : a).drop(),
        (made.test(PIECE) ? after : before).piece(),
        (made.test(ROPE) ? after : before).rope(),
        (made.test(STEMS) ? after : before).stems(),
        Si.value((made.test(GRAVITY) ? after : before).gravity(), Kind.ACCELERATION, "gravity"),
        (made.test(LIMITS) ? after : before).limits());
  }

  /** The device of one place with the friction and the wraps of another. */
  private static Tail.Device mix(Tail.Device friction, Tail.Device place) {
    Tail.Device device =
        Tail.Device.of(place.stem(), place.at(), friction.friction(), friction.wraps())
            .withOffset(place.offset());
    return friction.frictionInCatch().isPresent()
        ? device.withFrictionInCatch(friction.frictionInCatch().getAsDouble())
        : device;
  }

  /** The same without what no reading depends on: what was stated, and whether hardware opens. */
  private static Arrangement plain(Arrangement way) {
    return way.toBuilder()
        .contacts(way.contacts().stream().map(contact -> mix(contact, contact)).toList())
        .tail(way.tail() instanceof Tail.Device device ? mix(device, device) : way.tail())
        .build();
  }

  /** A contact at a place with other hardware. */
  private static Contact mix(Contact hardware, Contact place) {
    Contact contact =
        Contact.of(place.stem(), place.at(), hardware.hardware())
            .withSling(place.sling())
            .withOffset(place.offset())
            .withRopeWeight(place.hasRopeWeight());
    contact = place.slingStiffness().map(contact::withSlingStiffness).orElse(contact);
    return hardware.hardwareInCatch().map(contact::withHardwareInCatch).orElse(contact);
  }

  private static boolean isSamePlace(Contact a, Contact b) {
    return mix(a, b).equals(a);
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
}
