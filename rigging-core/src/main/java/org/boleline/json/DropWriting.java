package org.boleline.json;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import org.boleline.drop.CatchLoads;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropNotAnalysed;
import org.boleline.drop.EnergyAccount;
import org.boleline.drop.LetRun;
import org.boleline.drop.MotionAccount;
import org.boleline.drop.PointLoad;
import org.boleline.drop.TimedCatch;
import org.boleline.drop.TimedPeak;
import org.boleline.geometry.Vector;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.units.Kind;
import org.boleline.units.Moment;

/** The drop of an arrangement as result files give it. */
final class DropWriting {
  private DropWriting() {}

  static ObjectBuilder drop(DropAnswer answer) {
    if (answer instanceof DropNotAnalysed not) {
      return new ObjectBuilder().put("outcome", "notAnalysed").put("reason", not.reason());
    }
    DropFound found = (DropFound) answer;
    ObjectBuilder locked =
        new ObjectBuilder().put("outcome", "stopped").put("overWeight", found.overWeightRatio());
    putLoads(locked, found, found.loads(), found.energy());
    locked
        .putValue("stretch", found.stretch(), Kind.LENGTH)
        .putValue("clearanceNeeded", found.clearanceNeeded(), Kind.LENGTH);
    found.energy().ifPresent(energy -> locked.put("energy", energy(energy)));
    ObjectBuilder object =
        new ObjectBuilder()
            .put("outcome", "analysed")
            .put("level", found.spec().level().text())
            .put("levelUsed", found.levelUsed().text())
            .put("knownBias", found.knownBias())
            .put("locked", locked);
    found.letRun().ifPresent(run -> object.put("letRun", letRun(found, run)));
    found.inTime().ifPresent(caught -> object.put("inTime", beside(found, caught)));
    return object;
  }

  private static ObjectBuilder letRun(DropFound found, LetRun run) {
    ObjectBuilder object = new ObjectBuilder();
    if (run instanceof LetRun.Stopped stopped) {
      object.put("outcome", "stopped");
      putLoads(object, found, run.loads(), Optional.of(stopped.energy()));
      return object
          .putValue("slipTension", run.slipTension(), Kind.FORCE)
          .putValue("run", stopped.run(), Kind.LENGTH)
          .putValue("runBeforeHold", stopped.runBeforeHold(), Kind.LENGTH)
          .putValue("stretch", stopped.stretch(), Kind.LENGTH)
          .putValue("clearanceNeeded", stopped.clearanceNeeded(), Kind.LENGTH)
          .put("energy", energy(stopped.energy()));
    }
    LetRun.NeverStops never = (LetRun.NeverStops) run;
    object.put("outcome", "neverStops");
    putLoads(object, found, run.loads(), Optional.empty());
    return object
        .putValue("slipTension", run.slipTension(), Kind.FORCE)
        .putValue("runBeforeHold", never.runBeforeHold(), Kind.LENGTH)
        .putValue("speedAtSlip", never.speedAtSlip(), Kind.SPEED)
        .putValue("acceleration", never.acceleration(), Kind.ACCELERATION);
  }

  private static void putLoads(
      ObjectBuilder object, DropFound found, CatchLoads loads, Optional<EnergyAccount> energy) {
    List<Quantity<Force>> tensions = loads.legs();
    List<Vector<Moment>> moments = found.baseMoments(loads);
    Plan plan = found.plan();
    object
        .putValue("loadLeg", loads.loadLeg(), Kind.FORCE)
        .put(
            "legs",
            ObjectBuilder.list(
                tensions.size(),
                i ->
                    new ObjectBuilder()
                        .put("from", found.legsFrom().get(i))
                        .put("to", found.legsTo().get(i))
                        .putValue("tension", tensions.get(i), Kind.FORCE)
                        .build()))
        .put(
            "contacts",
            ObjectBuilder.list(
                loads.points().size(),
                i ->
                    contact(
                        found,
                        i,
                        loads.points().get(i),
                        energy.map(account -> account.heatAtPoints().get(i)))))
        .put(
            "stems",
            ObjectBuilder.list(
                moments.size(),
                i ->
                    new ObjectBuilder()
                        .put("id", plan.stems().get(i).id())
                        .putValue("baseMoment", moments.get(i))
                        .putValue("baseMomentMagnitude", moments.get(i).magnitude(), Kind.MOMENT)
                        .build()));
  }

  private static Json contact(
      DropFound found, int point, PointLoad load, Optional<Quantity<Energy>> heat) {
    int index = found.contacts().get(point);
    Contact contact = found.arrangement().contacts().get(index);
    ObjectBuilder object =
        new ObjectBuilder()
            .put("contact", "contacts/" + index)
            .put("stem", contact.stem())
            .putValue("at", contact.at(), Kind.LENGTH)
            .putValue("tensionIn", load.tight(), Kind.FORCE)
            .putValue("tensionOut", load.slack(), Kind.FORCE);
    load.vector().ifPresent(force -> object.putValue("force", force));
    object.putValue("forceMagnitude", load.magnitude(), Kind.FORCE);
    heat.ifPresent(joules -> object.putValue("heat", joules, Kind.ENERGY));
    return object.build();
  }

  private static ObjectBuilder energy(EnergyAccount energy) {
    return new ObjectBuilder()
        .putValue("given", energy.given(), Kind.ENERGY)
        .putValue("storedInRope", energy.storedInRope(), Kind.ENERGY)
        .putValue("storedInSprings", energy.storedInSprings(), Kind.ENERGY)
        .putValue("heatInDeviceAtMost", energy.heatInDeviceAtMost(), Kind.ENERGY)
        .putValue("takenByHand", energy.takenByHand(), Kind.ENERGY);
  }

  /** A catch in time, with the locked one in it unless it is locked itself. */
  private static ObjectBuilder beside(DropFound found, TimedCatch.Followed caught) {
    ObjectBuilder object = inTime(found, caught);
    if (!caught.equals(caught.locked())) {
      object.put("locked", inTime(found, caught.locked()));
    }
    return object;
  }

  private static ObjectBuilder inTime(DropFound found, TimedCatch.Followed caught) {
    List<String> from = found.legsInTimeFrom();
    List<String> to = found.legsInTimeTo();
    Plan plan = found.plan();
    MotionAccount energy = caught.energy();
    return new ObjectBuilder()
        .put("outcome", caught.ropeStillRuns() ? "stillRuns" : "stopped")
        .put(
            "legs",
            ObjectBuilder.list(
                from.size(),
                i ->
                    new ObjectBuilder()
                        .put("from", from.get(i))
                        .put("to", to.get(i))
                        .put("tension", peak(caught.legs().get(i), Kind.FORCE))
                        .build()))
        .put(
            "points",
            ObjectBuilder.list(
                to.size(),
                i ->
                    new ObjectBuilder()
                        .put("point", to.get(i))
                        .put("forceMagnitude", peak(caught.points().get(i), Kind.FORCE))
                        .build()))
        .put(
            "stems",
            ObjectBuilder.list(
                caught.baseMoments().size(),
                i ->
                    new ObjectBuilder()
                        .put("id", plan.stems().get(i).id())
                        .put("baseMomentMagnitude", peak(caught.baseMoments().get(i), Kind.MOMENT))
                        .build()))
        .put("depth", peak(caught.depth(), Kind.LENGTH))
        .putValue("run", caught.run(), Kind.LENGTH)
        .put(
            "energy",
            new ObjectBuilder()
                .putValue("given", energy.given(), Kind.ENERGY)
                .putValue("storedInRope", energy.storedInRope(), Kind.ENERGY)
                .putValue("heldByStems", energy.heldByStems(), Kind.ENERGY)
                .putValue("takenAtDeviceAtMost", energy.takenAtDeviceAtMost(), Kind.ENERGY)
                .putValue("lostInStems", energy.lostInStems(), Kind.ENERGY)
                .put("residual", energy.residualShare()));
  }

  private static <Q extends Quantity<Q>> ObjectBuilder peak(TimedPeak<Q> peak, Kind<Q> kind) {
    return new ObjectBuilder()
        .putValue("firstPulse", peak.firstPulse(), kind)
        .putValue("firstPulseAt", peak.firstPulseAt(), Kind.TIME)
        .putValue("overall", peak.overall(), kind)
        .putValue("overallAt", peak.overallAt(), Kind.TIME);
  }
}
