package org.boleline.statics;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import org.boleline.geometry.Vector;
import org.boleline.internal.coupled.RestingRig;
import org.boleline.internal.coupled.SmallMotions;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * An arrangement before the load comes: its stems carry their own weight alone.
 *
 * <p>It says where the rope then runs, how far its points give way to small forces, and how the
 * stems vibrate. A catch begins here. Friction acts as in lowering; it decides which way slings
 * point.
 *
 * <p>Immutable and thread-safe.
 */
public final class RigAtRest {
  private final Plan plan;
  private final Arrangement arrangement;
  private final RestingRig kernel;

  private RigAtRest(Plan plan, Arrangement arrangement, RestingRig kernel) {
    this.plan = plan;
    this.arrangement = arrangement;
    this.kernel = kernel;
  }

  /**
   * Brings the stems of a plan to rest and lays the rope of one arrangement over them.
   *
   * @equation K dy = 0 at rest; K y = w^2 J^T m J y for the modes (docs/theory/catch-in-time.md)
   * @validity slender stems; small movements about the rest under own weight; rotation of
   *     cross-sections carries no energy
   * @source Kirchhoff's rod, linearised; Rayleigh-Ritz over all unknowns of the statics
   * @accuracy frequencies of the lowest modes to about 1e-6
   * @param plan the plan, not null
   * @param arrangement the id of the arrangement, not null
   * @return the arrangement at rest; empty if the plan has no such arrangement, its stems do not
   *     stand under their own weight, or the rope has no way over the points
   */
  public static Optional<RigAtRest> of(Plan plan, String arrangement) {
    requireNonNull(arrangement, "arrangement");
    Resolved resolved = new Resolved(plan);
    double[] densities = new double[resolved.stems.length];
    double lowest = Double.POSITIVE_INFINITY;
    for (int i = 0; i < densities.length; i++) {
      densities[i] = Si.value(plan.stems().get(i).wood().density(), Kind.DENSITY, "density");
      lowest = Math.min(lowest, resolved.stems[i].base()[2]);
    }
    for (Arrangement one : plan.arrangements()) {
      if (one.id().equals(arrangement)) {
        RestingRig kernel =
            RestingRig.of(
                resolved.spec(one, Motion.LOWERING),
                densities,
                resolved.gravity,
                new double[] {0, 0, lowest});
        return Optional.ofNullable(kernel).map(found -> new RigAtRest(plan, one, found));
      }
    }
    return Optional.empty();
  }

  /**
   * Returns the plan.
   *
   * @return the plan
   */
  public Plan plan() {
    return plan;
  }

  /**
   * Returns the arrangement.
   *
   * @return the arrangement
   */
  public Arrangement arrangement() {
    return arrangement;
  }

  /**
   * Returns which contacts of the arrangement bear; the slings of the others are slack.
   *
   * @return indices into {@link Arrangement#contacts()}, from the piece toward the tail
   */
  public List<Integer> bearing() {
    return Arrays.stream(kernel.bearing()).boxed().toList();
  }

  /**
   * Returns where the rope runs over the points that bear.
   *
   * @return positions in metres, one for each of {@link #bearing}
   */
  public List<Vector<Length>> points() {
    List<Vector<Length>> out = new ArrayList<>();
    for (int j = 0; j < kernel.bearing().length; j++) {
      out.add(position(j));
    }
    return out;
  }

  /**
   * Returns where the rope ends: the lowering device, the stated point, or below the last contact
   * at the height of the lowest stem base.
   *
   * @return the position in metres
   */
  public Vector<Length> end() {
    return position(kernel.bearing().length);
  }

  private Vector<Length> position(int j) {
    return Vector.ofSi(Kind.LENGTH, Arrays.copyOfRange(kernel.place(), 3 * j, 3 * j + 3));
  }

  /**
   * Returns the frequencies at which a stem vibrates by itself, without piece and rope.
   *
   * @param stem the id of the stem, not null
   * @return the lowest frequencies in hertz, rising, at most {@value RestingRig#MOST_MODES}; none
   *     if no point of the rope is on that stem
   * @throws IllegalArgumentException if the plan has no such stem
   */
  public List<Quantity<Frequency>> frequencies(String stem) {
    for (int i = 0; i < plan.stems().size(); i++) {
      if (plan.stems().get(i).id().equals(stem)) {
        SmallMotions motions = kernel.stems().get(i);
        return Arrays.stream(motions.circularFrequency())
            .mapToObj(w -> Si.of(w / (2 * Math.PI), Kind.FREQUENCY))
            .toList();
      }
    }
    throw new IllegalArgumentException("no stem " + stem);
  }

  /**
   * Returns how many modes of a stem a catch in time counts, of {@link #frequencies}.
   *
   * @param stem the id of the stem, not null
   * @return as many as make up 99 % of the give along the rope's pull, none above 300 Hz
   * @throws IllegalArgumentException if the plan has no such stem
   */
  public int modes(String stem) {
    for (int i = 0; i < plan.stems().size(); i++) {
      if (plan.stems().get(i).id().equals(stem)) {
        return kernel.modes()[i];
      }
    }
    throw new IllegalArgumentException("no stem " + stem);
  }

  /**
   * Returns the bare numbers, in SI, for the packages of this library above this one.
   *
   * @return the kernel; no part of what is promised
   */
  public RestingRig kernel() {
    return kernel;
  }

  @Override
  public String toString() {
    return "arrangement " + arrangement.id() + " at rest";
  }
}
