package org.boleline.drop;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Source;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.plan.DropSpec;
import org.boleline.plan.DropSpec.Level;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Rope;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * The drops that a plan states, worked out by energy.
 *
 * <p>The rope runs as in the plan's analysis of slow motion, over the contacts that bear there, and
 * the piece falls plumb under the first of them. A tagline is left out. Where a drop is to be
 * followed in time, that stands beside the energy balance with giving points; it begins with the
 * stems at rest.
 *
 * <p>Thread-safe; keeps no state.
 *
 * <pre>{@code
 * DropResult result = Drops.analyse(Statics.analyse(plan));
 * result.drop("one ring").ifPresent(drop -> show(drop)); // locked, and let run beside it
 * }</pre>
 */
public final class Drops {
  private Drops() {}

  /**
   * Works out the drops of a plan.
   *
   * @param statics the analysis of the plan in slow motion, not null
   * @return an answer for each arrangement with a drop
   */
  public static DropResult analyse(StaticResult statics) {
    return analyse(statics, () -> false);
  }

  /**
   * Works out the drops of a plan, unless someone who waits for it gives up.
   *
   * @param statics the analysis of the plan in slow motion, not null
   * @param cancelled asked before each drop and at every step of one that is followed in time, from
   *     the calling thread; not null
   * @return as {@link #analyse(StaticResult)}
   * @throws CancellationException if it was cancelled
   */
  public static DropResult analyse(StaticResult statics, BooleanSupplier cancelled) {
    Plan plan = statics.plan();
    List<Optional<DropAnswer>> drops = new ArrayList<>();
    List<Datum> assumed = new ArrayList<>();
    for (int i = 0; i < plan.arrangements().size(); i++) {
      Optional<DropSpec> spec = plan.arrangements().get(i).drop();
      if (spec.isEmpty()) {
        drops.add(Optional.empty());
        continue;
      }
      if (cancelled.getAsBoolean()) {
        throw new CancellationException();
      }
      DropAnswer answer = answer(statics, i, spec.get(), cancelled);
      drops.add(Optional.of(answer));
      if (answer instanceof DropFound) {
        RiggedPath.assumed(plan, i).ifPresent(assumed::add);
      }
    }
    return new DropResult(statics, drops, assumed);
  }

  /**
   * Follows the drop of one arrangement in time and keeps samples, for plots and moving pictures.
   *
   * <p>The same motion as {@link DropFound#inTime()} of a drop whose level is {@code inTime}.
   *
   * @param statics the analysis of the plan in slow motion, not null
   * @param arrangement id of the arrangement, not null
   * @param every time between samples, from 10 us to 600 s, not null
   * @return the catch with its history; empty if the arrangement states no drop, has no slow state,
   *     the plan states no stretch of the rope, or the motion could not be followed
   * @throws PlanRefusedException if the time between samples is outside its range
   */
  public static Optional<TimedCatch.Followed> sampled(
      StaticResult statics, String arrangement, Quantity<Time> every) {
    Plan plan = statics.plan();
    for (int i = 0; i < plan.arrangements().size(); i++) {
      Optional<DropSpec> spec = plan.arrangements().get(i).drop();
      Optional<Solution> slow = statics.arrangements().get(i).solution();
      RopeStretch stretch = stretch(plan);
      if (plan.arrangements().get(i).id().equals(arrangement)
          && spec.isPresent()
          && slow.isPresent()
          && stretch != null) {
        return Optional.ofNullable(
            inTime(
                plan, i, spec.get(), new RiggedPath(slow.get(), i), stretch, every, () -> false));
      }
    }
    return Optional.empty();
  }

  private static DropAnswer answer(
      StaticResult statics, int index, DropSpec spec, BooleanSupplier cancelled) {
    String id = statics.plan().arrangements().get(index).id();
    Optional<Solution> slow = statics.arrangements().get(index).solution();
    if (slow.isEmpty()) {
      return DropNotAnalysed.because(
          id, index, "it starts from the slow state of this arrangement, and there is none");
    }
    try {
      RiggedPath rigged = new RiggedPath(slow.get(), index);
      if (spec.level() == Level.CONSTANT_FORCE) {
        return stop(statics.plan(), spec, rigged);
      }
      RopeStretch stretch = stretch(statics.plan());
      return stretch == null
          ? DropNotAnalysed.because(
              id, index, "the plan states no stretch of the rope (stretch or dropStretch)")
          : caught(statics.plan(), index, spec, rigged, stretch, cancelled);
    } catch (PlanRefusedException e) {
      return DropNotAnalysed.because(
          id, index, "it goes beyond what is computed (" + e.refusals().get(0).sentence() + ")");
    }
  }

  private static @Nullable RopeStretch stretch(Plan plan) {
    Rope rope = plan.rope().orElse(Rope.UNSTATED);
    if (!rope.dropStretch().isEmpty()) {
      return new RopeStretch(
          TabulatedStretch.of(rope.dropStretch()),
          RopeStretch.Pull.DROP,
          RopeStretch.Wear.WORKED,
          Source.PLAN);
    }
    return rope.stretch().isEmpty()
        ? null
        : new RopeStretch(
            TabulatedStretch.of(rope.stretch()),
            RopeStretch.Pull.SLOW,
            RopeStretch.Wear.NOT_STATED,
            Source.PLAN);
  }

  private static DropFound caught(
      Plan plan,
      int index,
      DropSpec spec,
      RiggedPath rigged,
      RopeStretch stretch,
      BooleanSupplier cancelled) {
    CatchPath path = rigged.path(spec.loadLeg(), spec.level() != Level.RIGID_POINTS);
    boolean gives = path.hasSprings();
    RopeCatch rope =
        RopeCatch.of(plan.piece().mass(), spec.fall(), stretch, path, spec.tieToCentre())
            .withGravity(plan.gravity());
    Caught locked = rope.locked();
    List<Caution> cautions = new ArrayList<>(rigged.frictionCautions());
    cautions.addAll(locked.cautions());
    @Nullable LetRun letRun = letRun(rope, plan, index, spec, cautions);
    if (letRun != null) {
      cautions.addAll(letRun.cautions());
    }
    TimedCatch.@Nullable Followed inTime =
        spec.level() == Level.IN_TIME
            ? inTime(plan, index, spec, rigged, stretch, null, cancelled)
            : null;
    if (inTime != null) {
      inTime.cautions().stream().map(rigged::placedInTime).forEach(cautions::add);
    }
    Level byEnergy = gives ? Level.GIVING_POINTS : Level.RIGID_POINTS;
    return new DropFound(
        spec,
        inTime == null ? byEnergy : Level.IN_TIME,
        rigged,
        weight(plan),
        locked.loads(),
        Si.value(locked.stretch(), Kind.LENGTH, "stretch"),
        locked.steps(),
        rope,
        locked.energy(),
        letRun,
        inTime,
        placed(cautions, rigged));
  }

  /** The catch step by step; null if it could not be followed. */
  private static TimedCatch.@Nullable Followed inTime(
      Plan plan,
      int index,
      DropSpec spec,
      RiggedPath rigged,
      RopeStretch stretch,
      @Nullable Quantity<Time> every,
      BooleanSupplier cancelled) {
    Optional<CatchInTime.Builder> stated = rigged.inTime(spec, stretch);
    if (stated.isEmpty()) {
      return null;
    }
    CatchInTime.Builder builder = stated.get();
    if (every != null) {
      builder.sampled(every);
    }
    if (spec.hold() instanceof DropSpec.Slipping slipping) {
      builder.slipping(slipping);
    } else if (spec.hold() instanceof DropSpec.ByHand hand
        && plan.arrangements().get(index).tail() instanceof Tail.Device device) {
      builder.byHand(hand, inCatch(device), Turn.ofWraps(device.wraps()));
    }
    return builder.build().follow(cancelled) instanceof TimedCatch.Followed followed
        ? followed
        : null;
  }

  private static FrictionRing inCatch(Tail.Device device) {
    return new FrictionRing(device.frictionInCatch().orElse(device.friction()));
  }

  private static @Nullable LetRun letRun(
      RopeCatch rope, Plan plan, int index, DropSpec spec, List<Caution> cautions) {
    if (spec.hold() instanceof DropSpec.Slipping slipping) {
      return rope.letRun(slipping);
    }
    if (spec.hold() instanceof DropSpec.ByHand hand
        && plan.arrangements().get(index).tail() instanceof Tail.Device device) {
      if (device.frictionInCatch().isEmpty()) {
        cautions.add(
            RiggedPath.slowFriction(
                "/arrangements/" + index + "/tail/device/friction", "lowering device"));
      }
      return rope.letRun(hand, inCatch(device), Turn.ofWraps(device.wraps()));
    }
    return null;
  }

  /** A constant force stops the piece; the points share it by their friction. */
  private static DropFound stop(Plan plan, DropSpec spec, RiggedPath rigged) {
    CatchPath path = rigged.path(spec.loadLeg(), false);
    double fall = Si.value(spec.fall(), Kind.LENGTH, "fall");
    double gravity = Si.value(plan.gravity(), Kind.ACCELERATION, "gravity");
    Stop stop =
        Stop.of(
                plan.piece().mass(),
                Si.of(DropFormulas.FALL_SPEED.value(gravity, fall), Kind.SPEED),
                spec.stopOver().orElseThrow())
            .withGravity(plan.gravity());
    List<Step> steps = new ArrayList<>();
    steps.add(DropFormulas.FALL_SPEED.step(gravity, fall));
    steps.addAll(stop.steps());
    // How the points share a tension does not depend on the stretch.
    CatchModel model = new CatchModel(LinearStretch.of(Amounts.newtons(1)), path, 0, false);
    CatchLoads loads = model.loads(Si.value(stop.force(), Kind.FORCE, "force"), steps);
    List<Caution> cautions = new ArrayList<>(rigged.frictionCautions());
    cautions.add(new Caution(CautionCode.CATCH_BY_ENERGY, "", Map.of()));
    return new DropFound(
        spec,
        Level.CONSTANT_FORCE,
        rigged,
        weight(plan),
        loads,
        Si.value(spec.stopOver().orElseThrow(), Kind.LENGTH, "stopOver"),
        steps,
        null,
        null,
        null,
        null,
        placed(cautions, rigged));
  }

  private static double weight(Plan plan) {
    return DropFormulas.WEIGHT_OF_PIECE.value(
        Si.value(plan.piece().mass(), Kind.MASS, "mass"),
        Si.value(plan.gravity(), Kind.ACCELERATION, "gravity"));
  }

  /** Cautions with their places in the plan; of those alike but for numbers the first alone. */
  private static List<Caution> placed(List<Caution> cautions, RiggedPath rigged) {
    List<Caution> found = new ArrayList<>();
    Set<String> seen = new LinkedHashSet<>();
    for (Caution caution : cautions) {
      Caution placed = rigged.placed(caution);
      if (seen.add(placed.code() + placed.place() + placed.values().getOrDefault("symbol", ""))) {
        found.add(placed);
      }
    }
    return found;
  }
}
