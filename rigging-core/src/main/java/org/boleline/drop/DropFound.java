package org.boleline.drop;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.explain.Caution;
import org.boleline.explain.Step;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.DropSpec;
import org.boleline.plan.DropSpec.Level;
import org.boleline.plan.Plan;
import org.boleline.units.Kind;
import org.boleline.units.Moment;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * The drop of an arrangement, worked out.
 *
 * <p>{@link #loads} and what goes with them are of the rope made fast. They are always there, also
 * beside a run, because a worker may fail to let it run. Points and legs are those that the rope
 * bears on when the slow load hangs: {@link #contacts} names them.
 *
 * <p>Immutable and thread-safe.
 */
public final class DropFound implements DropAnswer {
  private static final String NOT_COMPARED = " Not compared with measured drops.";

  private final DropSpec spec;
  private final Level levelUsed;
  private final RiggedPath rigged;
  private final double weight;
  private final CatchLoads loads;
  private final double stretch;
  private final List<Step> steps;
  private final @Nullable RopeCatch rope;
  private final @Nullable EnergyAccount energy;
  private final @Nullable LetRun letRun;
  private final TimedCatch.@Nullable Followed inTime;
  private final List<Caution> cautions;

  DropFound(
      DropSpec spec,
      Level levelUsed,
      RiggedPath rigged,
      double weight,
      CatchLoads loads,
      double stretch,
      List<Step> steps,
      @Nullable RopeCatch rope,
      @Nullable EnergyAccount energy,
      @Nullable LetRun letRun,
      TimedCatch.@Nullable Followed inTime,
      List<Caution> cautions) {
    this.spec = spec;
    this.levelUsed = levelUsed;
    this.rigged = rigged;
    this.weight = weight;
    this.loads = loads;
    this.stretch = stretch;
    this.steps = List.copyOf(steps);
    this.rope = rope;
    this.energy = energy;
    this.letRun = letRun;
    this.inTime = inTime;
    this.cautions = List.copyOf(cautions);
  }

  @Override
  public String id() {
    return rigged.arrangement().id();
  }

  @Override
  public List<Caution> cautions() {
    return cautions;
  }

  /**
   * Returns the plan that states the drop.
   *
   * @return the plan
   */
  public Plan plan() {
    return rigged.plan();
  }

  /**
   * Returns the arrangement that the drop is of.
   *
   * @return the arrangement
   */
  public Arrangement arrangement() {
    return rigged.arrangement();
  }

  /**
   * Returns the drop as the plan states it.
   *
   * @return the drop
   */
  public DropSpec spec() {
    return spec;
  }

  /**
   * Returns how the drop was worked out, which may be plainer than what was asked for.
   *
   * @return the level
   */
  public Level levelUsed() {
    return levelUsed;
  }

  /**
   * Returns which way the numbers are likely to be off.
   *
   * @return plain sentences
   */
  public String knownBias() {
    return switch (levelUsed) {
      case CONSTANT_FORCE ->
          "A constant force is the least that stops the piece over this distance: the peak of a"
              + " real one lies above it."
              + NOT_COMPARED;
      case RIGID_POINTS ->
          "The energy balance leaves out that slings and stems give way, mass and damping of the"
              + " rope, and the turning of the piece. Most of it takes energy, so forces come out"
              + " mostly too high; masses that the rope must move can add to them."
              + NOT_COMPARED;
      case IN_TIME ->
          "The catch in time leaves out mass and damping of the rope, mass of the hardware, air, and"
              + " what the piece strikes. The stems bend by their lowest modes. The energy balance"
              + " beside it takes them as springs without mass, which is no bound."
              + NOT_COMPARED;
      case GIVING_POINTS ->
          "The energy balance leaves out mass and damping of the rope, and the turning of the"
              + " piece. Most of it takes energy, so forces come out mostly too high; but points"
              + " that give way as springs without mass are no bound, and masses that the rope must"
              + " move can add to the forces."
              + NOT_COMPARED;
    };
  }

  /**
   * Returns the contacts that the rope bears on, in the order of the points of {@link #loads}.
   *
   * @return their indexes in the arrangement, from the piece toward the tail
   */
  public List<Integer> contacts() {
    return rigged.bearing();
  }

  /**
   * Returns from where each leg of {@link #loads} runs.
   *
   * @return {@code piece}, or a contact such as {@code contacts/0}, for each leg
   */
  public List<String> legsFrom() {
    return rigged.ends().stream().map(ends -> ends[0]).toList();
  }

  /**
   * Returns to where each leg of {@link #loads} runs.
   *
   * @return a contact such as {@code contacts/0}, {@code tail} or {@code device}, for each leg
   */
  public List<String> legsTo() {
    return rigged.ends().stream().map(ends -> ends[1]).toList();
  }

  /**
   * Returns the greatest tensions and forces on the rope made fast.
   *
   * @return the loads
   */
  public CatchLoads loads() {
    return loads;
  }

  /**
   * Returns the greatest tension of the load leg as a multiple of the weight.
   *
   * @return tension over weight, 1 or more
   */
  public double overWeightRatio() {
    return Si.value(loads.loadLeg(), Kind.FORCE, "load leg") / weight;
  }

  /**
   * Returns how far the piece comes down after the rope is taut and made fast.
   *
   * @return the travel in metres, above zero; for a constant force the stated distance
   */
  public Quantity<Length> stretch() {
    return Si.of(stretch, Kind.LENGTH);
  }

  /**
   * Returns the room that the piece needs below where it starts, on the rope made fast: fall and
   * stretch, without any margin.
   *
   * @return the length in metres
   */
  public Quantity<Length> clearanceNeeded() {
    return Si.of(Si.value(spec.fall(), Kind.LENGTH, "fall") + stretch, Kind.LENGTH);
  }

  /**
   * Returns where the energy has gone, on the rope made fast.
   *
   * @return the account; empty for a constant force, which does not tell
   */
  public Optional<EnergyAccount> energy() {
    return Optional.ofNullable(energy);
  }

  /**
   * Returns the steps that gave the numbers of the rope made fast.
   *
   * @return the steps
   */
  public List<Step> steps() {
    return steps;
  }

  /**
   * Returns what comes out if the rope runs as the plan states.
   *
   * @return the answer; empty if the plan states a locked rope, and for a constant force
   */
  public Optional<LetRun> letRun() {
    return Optional.ofNullable(letRun);
  }

  /**
   * Returns the catch step by step in time: as the plan states it, with the locked one beside it.
   *
   * @return the catch; empty unless the plan asks for it and it could be followed
   */
  public Optional<TimedCatch.Followed> inTime() {
    return Optional.ofNullable(inTime);
  }

  /**
   * Returns from where each leg of {@link #inTime} runs.
   *
   * @return as {@link #legsFrom}
   */
  public List<String> legsInTimeFrom() {
    return rigged.endsInTime().stream().map(ends -> ends[0]).toList();
  }

  /**
   * Returns to where each leg of {@link #inTime} runs.
   *
   * @return as {@link #legsTo}
   */
  public List<String> legsInTimeTo() {
    return rigged.endsInTime().stream().map(ends -> ends[1]).toList();
  }

  /**
   * Returns the catch as an energy balance, for other questions.
   *
   * @return the catch; empty for a constant force
   */
  public Optional<RopeCatch> rope() {
    return Optional.ofNullable(rope);
  }

  /**
   * Returns what comes out if the rope runs just so far.
   *
   * @equation K = s * (T - W), the one T above W
   * @validity as {@link RopeCatch#running}
   * @source energy balance, derived
   * @accuracy as {@link RopeCatch#running}
   * @param run how far it runs, measured at the load, from zero to 1 km, not null
   * @return the catch with a device that slips so; empty for a constant force
   * @throws org.boleline.explain.PlanRefusedException if the run is outside its range
   */
  public Optional<LetRun.Stopped> running(Quantity<Length> run) {
    return rope()
        .map(caught -> caught.running(run))
        .filter(LetRun.Stopped.class::isInstance)
        .map(LetRun.Stopped.class::cast);
  }

  /**
   * Returns the moments of the rope about the bases of the stems, in the shape that the slow load
   * gives them: without own weight, and without the stem's mass being set in motion.
   *
   * @equation M = sum of r x F over the contacts and the device of the stem
   * @validity stem at rest, in its shape under the slow load
   * @source statics
   * @accuracy rounding only
   * @param of loads of this drop, locked or let run, not null
   * @return a moment for each stem, in the order of the plan, in newton metres; on the stem
   */
  public List<Vector<Moment>> baseMoments(CatchLoads of) {
    return rigged.baseMoments(of);
  }

  @Override
  public String toString() {
    return id() + ": load leg " + QuantityText.print(loadLeg(), Kind.FORCE);
  }

  private Quantity<Force> loadLeg() {
    return loads.loadLeg();
  }
}
