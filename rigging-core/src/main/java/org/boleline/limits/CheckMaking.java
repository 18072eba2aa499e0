package org.boleline.limits;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Pressure;
import org.boleline.drop.DropFound;
import org.boleline.drop.LetRun;
import org.boleline.drop.TimedCatch;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Source;
import org.boleline.explain.Step;
import org.boleline.internal.limits.LimitKernel;
import org.boleline.limits.Check.State;
import org.boleline.limits.Demands.Loaded;
import org.boleline.plan.AskedFactor;
import org.boleline.plan.Hitch;
import org.boleline.plan.Limits;
import org.boleline.plan.PartLimit;
import org.boleline.plan.PartLimit.CapacityIs;
import org.boleline.plan.PartLimit.Demand;
import org.boleline.plan.PartLimit.Part;
import org.boleline.plan.Plan;
import org.boleline.plan.Reduction;
import org.boleline.plan.Tail;
import org.boleline.rope.Motion;
import org.boleline.rope.Rope;
import org.boleline.statics.Solution;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.boleline.wood.WoodProperties;
import org.jspecify.annotations.Nullable;

/** Makes the checks of one arrangement. */
final class CheckMaking {
  private final Solution slow;
  private final @Nullable DropFound drop;
  private final Set<AskedFactor> used;
  private final Plan plan;
  private final String arrangement;
  private final List<AskedFactor> factors;
  private final List<Check> checks = new ArrayList<>();
  private final List<Caution> cautions = new ArrayList<>();

  /**
   * Makes a maker.
   *
   * @param slow the state in slow motion
   * @param index of the arrangement in the plan
   * @param drop the drop; null if none is worked out
   * @param used takes the factors that a part takes
   */
  CheckMaking(Solution slow, int index, @Nullable DropFound drop, Set<AskedFactor> used) {
    this.slow = slow;
    this.drop = drop;
    this.used = used;
    plan = slow.plan();
    arrangement = "/arrangements/" + index;
    factors = plan.limits().map(Limits::factors).orElse(List.of());
  }

  /**
   * A state that parts are checked in.
   *
   * @param is which one
   * @param demands what the parts have to take
   * @param other the same of the other catch; null if there is none
   */
  private record Way(State is, Demands demands, @Nullable Demands other) {}

  ArrangementChecks checks() {
    List<PartLimit> parts = plan.limits().map(Limits::parts).orElse(List.of());
    for (int k = 0; k < parts.size(); k++) {
      part(parts.get(k), "/limits/parts/" + k);
    }
    plan.limits().flatMap(Limits::handForce).ifPresent(f -> hand(newtons(f)));
    return new ArrangementChecks(slow.id(), checks, "", cautions);
  }

  private static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  private List<Way> slowWays() {
    Optional<Solution> rise = slow.otherEnd();
    if (rise.isEmpty()) {
      return List.of(new Way(State.SLOW, Demands.slow(slow), null));
    }
    return List.of(
        new Way(State.ABOUT_TO_RUN, Demands.slow(slow), null),
        new Way(State.ABOUT_TO_RISE, Demands.slow(rise.get()), null));
  }

  private List<Way> ways(PartLimit part, String place) {
    List<Way> ways = new ArrayList<>();
    @Nullable Demand demand = part.demand().orElse(null);
    if (demand == null || demand == Demand.STATIC) {
      ways.addAll(slowWays());
    }
    if (demand == Demand.STATIC) {
      return ways;
    }
    if (drop == null) {
      if (demand != null) {
        cautions.add(
            new Caution(CautionCode.LIMIT_WITHOUT_PEAK, place, Map.of("name", part.name())));
      }
      return ways;
    }
    Demands locked = Demands.locked(slow, drop);
    @Nullable LetRun run = drop.letRun().orElse(null);
    boolean stillRuns = drop.inTime().filter(TimedCatch.Followed::ropeStillRuns).isPresent();
    @Nullable Demands ran =
        run instanceof LetRun.Stopped && !stillRuns ? Demands.run(slow, drop, run) : null;
    if (demand == Demand.RUN && ran != null) {
      ways.add(new Way(State.RUN, ran, locked));
      return ways;
    }
    if (demand == Demand.RUN) {
      cautions.add(
          new Caution(
              CautionCode.LIMIT_TAKES_LOCKED,
              place,
              Map.of(
                  "name",
                  part.name(),
                  "why",
                  run == null ? "the drop lets nothing run" : "it does not stop")));
    }
    ways.add(new Way(State.LOCKED, locked, ran));
    return ways;
  }

  private void part(PartLimit part, String place) {
    if (part.part() == Part.BEND) {
      bends(part);
      return;
    }
    int before = checks.size();
    for (Way way : ways(part, place)) {
      switch (part.part()) {
        case ROPE -> rope(part, way);
        case SLING, HARDWARE -> atContacts(part, way);
        case DEVICE -> device(part, way);
        case STEM -> stems(part, way);
        case ANCHORAGE -> anchorage(part, way);
        case BEND, HAND -> throw new AssertionError(part);
      }
    }
    boolean made = checks.size() > before;
    if (made && part.part() == Part.ROPE && part.reductions().isEmpty()) {
      cautions.add(
          new Caution(CautionCode.STRENGTH_NOT_REDUCED, place, Map.of("name", part.name())));
    }
    boolean ofStem = part.part() == Part.STEM || part.part() == Part.ANCHORAGE;
    boolean atPeak =
        checks.subList(before, checks.size()).stream()
            .anyMatch(c -> c.state().filter(s -> s == State.LOCKED || s == State.RUN).isPresent());
    if (ofStem && atPeak) {
      cautions.add(
          new Caution(CautionCode.PEAK_ON_STEM_AT_REST, place, Map.of("name", part.name())));
    }
  }

  private void add(
      Subject subject, Way way, ToDoubleFunction<Demands> demand, Check.Capacity capacity) {
    add(subject, load(way, demand), capacity, null, false);
  }

  private static Check.Load load(Way way, ToDoubleFunction<Demands> demand) {
    return new Check.Load(
        way.is(),
        demand.applyAsDouble(way.demands()),
        way.other() == null ? null : (Double) demand.applyAsDouble(way.other()));
  }

  /** What is checked, with the name that factors may be asked for. */
  private record Subject(Part part, String name, String place, String where) {}

  private void add(
      Subject subject,
      Check.Load load,
      Check.Capacity capacity,
      @Nullable Loaded section,
      boolean pressedSide) {
    @Nullable AskedFactor asked = asked(subject, capacity.is());
    @Nullable Double least = null;
    if (asked != null && section != null && pressedSide) {
      least =
          LimitFormulas.LEAST_HOLLOW.value(
              Math.max(0, -section.axial()),
              section.moment(),
              capacity.value() / asked.factor(),
              section.cavity());
    }
    List<Step> steps = new ArrayList<>(capacity.steps());
    if (load.demand() > 0 && Double.isFinite(capacity.value() / load.demand())) {
      steps.add(LimitFormulas.FACTOR.step(capacity.value(), load.demand()));
    }
    checks.add(
        new Check(
            new Check.Subject(
                subject.part(),
                subject.name(),
                subject.place(),
                subject.where(),
                section == null ? null : (Double) section.at()),
            load,
            new Check.Capacity(capacity.value(), capacity.is(), steps),
            new Check.Asked(
                asked == null ? null : (Double) asked.factor(),
                asked == null
                    ? null
                    : new Source(asked.askedBy(), "stated in the plan", Source.Reading.STATED),
                least)));
  }

  /** The factor asked for a part: by its name, else by the word of its kind. */
  private @Nullable AskedFactor asked(Subject subject, CapacityIs is) {
    @Nullable AskedFactor found = null;
    for (AskedFactor factor : factors) {
      if (factor.part().equals(subject.name())) {
        found = factor;
        break;
      }
      if (is == CapacityIs.STRENGTH && factor.part().equals(subject.part().text())) {
        found = factor;
      }
    }
    if (found != null) {
      used.add(found);
    }
    return found;
  }

  private void hand(double force) {
    if (!(slow.arrangement().tail() instanceof Tail.Device) || slow.motion() == Motion.RAISING) {
      return;
    }
    Subject subject =
        new Subject(Part.HAND, Part.HAND.text(), arrangement + "/tail/device", " behind the wraps");
    Check.Capacity capacity = new Check.Capacity(force, CapacityIs.STRENGTH, List.of());
    // holding is hardest where it is about to run; about to rise is a pull, not a hold
    State state = slow.otherEnd().isEmpty() ? State.SLOW : State.ABOUT_TO_RUN;
    slow.handTension()
        .ifPresent(
            hand ->
                add(subject, new Check.Load(state, newtons(hand), null), capacity, null, false));
  }

  // Rope and what it runs over

  private Check.Capacity capacity(PartLimit part) {
    Rope rope = plan.rope().orElse(Rope.UNSTATED);
    List<Step> steps = new ArrayList<>();
    double strength =
        newtons(part.capacity(Kind.FORCE).or(rope::minimumBreakingStrength).orElseThrow());
    if (part.hitch().orElse(null) instanceof Hitch.Basket basket) {
      strength =
          step(
              steps,
              LimitFormulas.BASKET.step(
                  strength, Si.value(basket.legs().angle(), Kind.ANGLE, "legs")));
    } else if (part.hitch().orElse(null) instanceof Hitch.Choker choker) {
      strength = step(steps, LimitFormulas.LEFT.step(choker.keptShare(), strength));
      if (choker.angle().isPresent()) {
        double kept =
            step(
                steps,
                LimitFormulas.CHOKE.step(
                    Si.value(choker.angle().get(), Kind.ANGLE, "angle of choke")));
        strength = step(steps, LimitFormulas.LEFT.step(kept, strength));
      }
    }
    @Nullable Double kept = null;
    for (Reduction reduction : part.reductions()) {
      double next = kept(reduction, rope, steps);
      if (kept == null) {
        kept = next;
      } else {
        boolean stacked = part.combined().orElseThrow() == Reduction.Combined.STACKED;
        kept =
            step(steps, (stacked ? LimitFormulas.STACKED : LimitFormulas.WORST).step(kept, next));
      }
    }
    if (kept != null) {
      strength = step(steps, LimitFormulas.LEFT.step(kept, strength));
    }
    return new Check.Capacity(strength, part.capacityIs(), steps);
  }

  private static double step(List<Step> steps, Step step) {
    steps.add(step);
    return step.result();
  }

  private static double kept(Reduction reduction, Rope rope, List<Step> steps) {
    if (reduction.keptShare().isPresent()) {
      return reduction.keptShare().getAsDouble();
    }
    double ratio =
        step(
            steps,
            LimitFormulas.BEND_RATIO.step(
                Si.value(reduction.diameter().orElseThrow(), Kind.LENGTH, "diameter"),
                Si.value(rope.diameter().orElseThrow(), Kind.LENGTH, "diameter")));
    return LimitKernel.inTable(
        reduction.table().stream().mapToDouble(Reduction.AtRatio::ratio).toArray(),
        reduction.table().stream().mapToDouble(Reduction.AtRatio::keptShare).toArray(),
        ratio);
  }

  private Subject atContact(PartLimit part, int contact) {
    return new Subject(
        part.part(),
        part.name(),
        arrangement + "/contacts/" + contact,
        " at point " + (contact + 1));
  }

  private boolean endsOnDevice() {
    return slow.arrangement().tail() instanceof Tail.Device;
  }

  private Subject atTail(PartLimit part) {
    boolean device = endsOnDevice();
    return new Subject(
        part.part(),
        part.name(),
        arrangement + (device ? "/tail/device" : "/tail"),
        device ? " at the device" : " at the tail");
  }

  private void rope(PartLimit part, Way way) {
    Check.Capacity capacity = capacity(part);
    String place = part.place().orElse("");
    switch (place) {
      case "" ->
          add(
              new Subject(Part.ROPE, part.name(), "/rope", " where it pulls hardest"),
              way,
              Demands::greatestTension,
              capacity);
      case "piece" ->
          add(
              new Subject(Part.ROPE, part.name(), "/piece", " at the piece"),
              way,
              Demands::atPiece,
              capacity);
      case "tail" -> add(atTail(part), way, Demands::atTail, capacity);
      default -> {
        for (int contact : contacts(place, way.demands())) {
          add(atContact(part, contact), way, d -> d.greatestTensionAt(contact), capacity);
        }
      }
    }
  }

  /** Indexes of the contacts that a place names and that bear in a state. */
  private static List<Integer> contacts(String place, Demands demands) {
    return demands.contacts().stream()
        .filter(j -> place.isEmpty() || place.equals("contacts") || place.equals("contacts/" + j))
        .toList();
  }

  private void atContacts(PartLimit part, Way way) {
    Check.Capacity capacity = capacity(part);
    String place = part.place().orElse("");
    if (place.equals("device")) {
      if (endsOnDevice()) {
        add(atTail(part), way, Demands::atTail, capacity);
      }
      return;
    }
    for (int contact : contacts(place, way.demands())) {
      add(atContact(part, contact), way, d -> d.forceOn(contact), capacity);
    }
  }

  private void device(PartLimit part, Way way) {
    if (endsOnDevice()) {
      add(atTail(part), way, Demands::atTail, capacity(part));
    }
  }

  /** The ratio D:d as a factor: diameter of the bend over that of the rope. */
  private void bends(PartLimit part) {
    double rope =
        Si.value(
            plan.rope().flatMap(Rope::diameter).orElseThrow(), Kind.LENGTH, "diameter of the rope");
    Check.Capacity capacity =
        new Check.Capacity(
            Si.value(part.capacity(Kind.LENGTH).orElseThrow(), Kind.LENGTH, "diameter"),
            CapacityIs.STRENGTH,
            List.of());
    Check.Load load = new Check.Load(null, rope, null);
    String place = part.place().orElse("");
    if (place.equals("device")) {
      if (endsOnDevice()) {
        add(atTail(part), load, capacity, null, false);
      }
      return;
    }
    for (int contact : contacts(place, Demands.slow(slow))) {
      add(atContact(part, contact), load, capacity, null, false);
    }
  }

  // Stems

  private List<Integer> stemsOf(PartLimit part) {
    List<Integer> stems = new ArrayList<>();
    for (int k = 0; k < plan.stems().size(); k++) {
      if (part.stem().isEmpty() || part.stem().get().equals(plan.stems().get(k).id())) {
        stems.add(k);
      }
    }
    return stems;
  }

  private void stems(PartLimit part, Way way) {
    for (int k : stemsOf(part)) {
      Stem stem = plan.stems().get(k);
      WoodProperties wood = stem.wood();
      Optional<Quantity<Pressure>> stated = part.capacity(Kind.PRESSURE);
      stated
          .or(wood::compressionStrength)
          .ifPresent(strength -> stem(part, way, k, strength, true));
      if (stated.isEmpty()) {
        wood.bendingStrength().ifPresent(strength -> stem(part, way, k, strength, false));
      }
    }
  }

  private void stem(
      PartLimit part, Way way, int k, Quantity<Pressure> strength, boolean pressedSide) {
    String id = plan.stems().get(k).id();
    @Nullable Double station =
        part.station().map(s -> (Double) Si.value(s, Kind.LENGTH, "station")).orElse(null);
    Loaded section = way.demands().section(k, station, pressedSide);
    Subject subject =
        new Subject(
            Part.STEM,
            part.name(),
            "/stems/" + k,
            " on the " + (pressedSide ? "pressed" : "pulled") + " side of " + id);
    add(
        subject,
        load(way, d -> d.section(k, station, pressedSide).stress(pressedSide)),
        new Check.Capacity(
            Si.value(strength, Kind.PRESSURE, "strength"),
            CapacityIs.STRENGTH,
            List.of(
                (pressedSide ? LimitFormulas.PRESSED : LimitFormulas.PULLED)
                    .step(section.axial(), section.moment(), section.outer(), section.cavity()))),
        section,
        pressedSide);
  }

  private void anchorage(PartLimit part, Way way) {
    for (int k : stemsOf(part)) {
      add(
          new Subject(
              Part.ANCHORAGE, part.name(), "/stems/" + k, " of " + plan.stems().get(k).id()),
          way,
          d -> d.baseMoment(k),
          new Check.Capacity(
              Si.value(part.capacity(Kind.MOMENT).orElseThrow(), Kind.MOMENT, "moment"),
              CapacityIs.STRENGTH,
              List.of()));
    }
  }
}
