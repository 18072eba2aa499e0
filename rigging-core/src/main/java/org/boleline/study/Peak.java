package org.boleline.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.drop.CatchLoads;
import org.boleline.drop.DropFound;
import org.boleline.drop.LetRun;
import org.boleline.drop.TimedCatch;
import org.boleline.statics.Solution;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What the rope has to take in one state of an arrangement, and what it does to its points.
 *
 * <p>Of a catch that was followed in time too, each force is the greater of both answers.
 */
final class Peak {
  private final String state;
  private final double tension;
  private final double[] forces;

  private Peak(String state, double tension, double[] forces) {
    this.state = state;
    this.tension = tension;
    this.forces = forces;
  }

  /** The slow states, then the catch as the plan states it; none without a solution. */
  static List<Peak> of(Evaluation evaluation) {
    List<Peak> found = new ArrayList<>();
    if (evaluation.slow() instanceof Solution slow) {
      found.add(slow(slow.otherEnd().isPresent() ? "slow, about to run" : "slow", slow));
      slow.otherEnd().ifPresent(rise -> found.add(slow("slow, about to rise", rise)));
      evaluation
          .drop()
          .filter(DropFound.class::isInstance)
          .ifPresent(drop -> found.add(caught((DropFound) drop, slow.contacts().size())));
    }
    return found;
  }

  /** The state with the greatest tension. */
  static @Nullable Peak greatest(Evaluation evaluation) {
    @Nullable Peak greatest = null;
    for (Peak peak : of(evaluation)) {
      greatest = greatest == null || peak.tension > greatest.tension ? peak : greatest;
    }
    return greatest;
  }

  private static Peak slow(String state, Solution slow) {
    return new Peak(
        state,
        slow.legs().stream()
            .mapToDouble(leg -> Math.max(newtons(leg.tension()), newtons(leg.tensionAtEnd())))
            .max()
            .orElseThrow(),
        slow.contacts().stream().mapToDouble(c -> newtons(c.forceMagnitude())).toArray());
  }

  private static Peak caught(DropFound drop, int contacts) {
    @Nullable LetRun run = drop.letRun().orElse(null);
    CatchLoads loads = run == null ? drop.loads() : run.loads();
    TimedCatch.@Nullable Followed timed =
        drop.inTime().map(t -> run == null ? t.locked() : t).orElse(null);
    double tension = loads.legs().stream().mapToDouble(Peak::newtons).max().orElseThrow();
    double[] forces = new double[contacts];
    Arrays.fill(forces, Double.NaN);
    for (int i = 0; i < drop.contacts().size(); i++) {
      int contact = drop.contacts().get(i);
      forces[contact] = newtons(loads.points().get(i).magnitude());
      int inTime = timed == null ? -1 : drop.legsInTimeTo().indexOf("contacts/" + contact);
      if (timed != null && inTime >= 0) {
        forces[contact] = Math.max(forces[contact], newtons(timed.points().get(inTime).overall()));
      }
    }
    if (timed != null) {
      tension =
          Math.max(
              tension,
              timed.legs().stream().mapToDouble(l -> newtons(l.overall())).max().orElse(0));
    }
    return new Peak(run == null ? "catch, made fast" : "catch, let run", tension, forces);
  }

  private static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "force");
  }

  String state() {
    return state;
  }

  /** Greatest tension anywhere in the rope, N. */
  double tension() {
    return tension;
  }

  /** Index of the contact with the greatest force. */
  int worstContact() {
    int worst = 0;
    for (int i = 1; i < forces.length; i++) {
      worst = forces[i] > forces[worst] || Double.isNaN(forces[worst]) ? i : worst;
    }
    return worst;
  }

  /** Force on a contact, N; NaN if the rope does not bear on it. */
  double forceOn(int contact) {
    return forces[contact];
  }
}
