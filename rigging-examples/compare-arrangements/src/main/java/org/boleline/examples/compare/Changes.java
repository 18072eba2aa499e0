package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.LostStability;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;

/** One sentence for each pair of neighbours: what differs, what it changes most, and why. */
final class Changes {
  private static final int MOST_EFFECTS = 5;

  private Changes() {}

  static List<Entry> of(StaticResult result, UnitSystem units) {
    List<Entry> entries = new ArrayList<>();
    for (int i = 0; i + 1 < result.arrangements().size(); i++) {
      entries.add(
          new Entry(
              (i + 1) + " → " + (i + 2), sentence(result, i, new Wording(result.plan(), units))));
    }
    return entries;
  }

  private static String sentence(StaticResult result, int first, Wording wording) {
    Plan plan = result.plan();
    Arrangement before = plan.arrangements().get(first);
    Arrangement after = plan.arrangements().get(first + 1);
    PlanDifference difference = new PlanDifference(before, after, wording);
    List<String> phrases = difference.phrases();
    if (phrases.isEmpty()) {
      return "Nothing differs in the plan, nor in the numbers.";
    }
    ArrangementResult from = result.arrangements().get(first);
    ArrangementResult to = result.arrangements().get(first + 1);
    String effects =
        from instanceof Solution a && to instanceof Solution b
            ? effects(new Pair(a, b, difference, wording))
            : endings(from, first + 1) + ", while " + endings(to, first + 2);
    return capital(Wording.join(phrases) + ": " + effects + ".");
  }

  /** Says which end is compared where both loads are held; else a change of motion says it. */
  private static String end(Pair pair) {
    return pair.first().otherEnd().isPresent() && pair.second().otherEnd().isPresent()
        ? "about to run, "
        : "";
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private static String effects(Pair pair) {
    List<Effect> found = new ArrayList<>();
    new RopeEffects(pair).addTo(found);
    PointEffects points = new PointEffects(pair);
    points.addForcesTo(found);
    for (int stem = 0; stem < pair.plan().stems().size(); stem++) {
      new StemEffects(pair, stem).addTo(found);
    }
    points.addMovementTo(found);

    // The greatest ones, told in the order of cause and consequence.
    List<Effect> greatest =
        found.stream()
            .filter(effect -> effect.weight() >= Effect.LEAST)
            .sorted(Comparator.comparingDouble(Effect::weight).reversed())
            .limit(MOST_EFFECTS)
            .toList();
    if (greatest.isEmpty()) {
      return "no force, movement or stress changes by as much as "
          + Math.round(100 * Effect.LEAST)
          + " %";
    }
    return end(pair)
        + String.join("; ", found.stream().filter(greatest::contains).map(Effect::text).toList());
  }

  private static String endings(ArrangementResult answer, int number) {
    if (answer instanceof LostStability lost) {
      return lost.ownWeightFactor() < 1
          ? number
              + " cannot stand even without the load: stability is lost at "
              + Figures.three(lost.ownWeightFactor())
              + " of own weight"
          : number
              + " loses stability on the way, at "
              + Figures.three(lost.loadFactor())
              + " of the load";
    }
    if (answer instanceof Solution solution) {
      return number
          + " carries the full load with "
          + Figures.fixed(solution.stiffnessRatio(), 2)
          + " of its stiffness left";
    }
    return number + " could not be solved";
  }
}
