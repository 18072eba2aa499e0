package org.boleline.json;

import javax.measure.Quantity;
import org.boleline.limits.ArrangementChecks;
import org.boleline.limits.Check;
import org.boleline.limits.Check.State;
import org.boleline.units.Kind;

/** The checks of an arrangement as result files give them. */
final class CheckWriting {
  private CheckWriting() {}

  static void putIn(ObjectBuilder object, ArrangementChecks checks) {
    if (!checks.whyNot().isEmpty()) {
      object.put("notChecked", checks.whyNot());
      return;
    }
    object.putAll("checks", checks.checks(), check -> check(check, check.kind()));
    checks
        .weakest()
        .ifPresent(
            weakest ->
                object
                    .put("weakestCheck", (double) checks.checks().indexOf(weakest))
                    .put("mostUsed", weakest.usedShare()));
    checks.mostUsedOfAskedShare().ifPresent(share -> object.put("mostUsedOfAsked", share));
  }

  private static <Q extends Quantity<Q>> Json check(Check check, Kind<Q> kind) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("name", check.name())
            .put("part", check.part().text())
            .put("place", check.place())
            .put("where", check.where());
    check.station().ifPresent(at -> object.putValue("at", at, Kind.LENGTH));
    check.state().ifPresent(state -> putState(object, state));
    object
        .putValue("demand", check.demand(kind), kind)
        .putValue("capacity", check.capacity(kind), kind)
        .put("capacityIs", check.capacityIs().text())
        .put("used", check.usedShare());
    check.factorFound().ifPresent(factor -> object.put("factorFound", factor));
    check.factorAsked().ifPresent(factor -> object.put("factorAsked", factor));
    check.askedBy().ifPresent(source -> object.put("askedBy", source.id()));
    check.met().ifPresent(met -> object.put("met", met));
    check
        .otherDemand(kind)
        .ifPresent(
            demand ->
                object.putValue(
                    check.state().orElseThrow() == State.RUN ? "lockedDemand" : "runDemand",
                    demand,
                    kind));
    check.leastDiameter().ifPresent(least -> object.putValue("leastDiameter", least, Kind.LENGTH));
    return object.build();
  }

  private static void putState(ObjectBuilder object, State state) {
    object.put("demandIs", state.demandIs());
    switch (state) {
      case LOCKED -> object.put("catch", "locked");
      case RUN -> object.put("catch", "run");
      case ABOUT_TO_RUN -> object.put("end", "aboutToRun");
      case ABOUT_TO_RISE -> object.put("end", "aboutToRise");
      case SLOW -> {}
    }
  }
}
