package org.boleline.json;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.explain.Caution;
import org.boleline.explain.Datum;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Extreme;
import org.boleline.statics.Leg;
import org.boleline.statics.LostStability;
import org.boleline.statics.MarkResult;
import org.boleline.statics.NotSolved;
import org.boleline.statics.Reaction;
import org.boleline.statics.Share;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Writes results as result files of the format {@code rigging-result/1}.
 *
 * <p>Quantities are numbers with the UCUM code of their SI unit, angles in degrees; members stand
 * in one order. The same result gives the same text.
 */
public final class ResultWriter {
  private static final String FORMAT = "rigging-result/1";

  private ResultWriter() {}

  /**
   * Returns a result as the text of a result file.
   *
   * @param result the result, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(StaticResult result) {
    ObjectBuilder object = new ObjectBuilder().put("format", FORMAT);
    if (!result.plan().title().isEmpty()) {
      object.put("title", result.plan().title());
    }
    object.putAll("cautions", result.cautions(), ResultWriter::caution);
    object.putAll(
        "arrangements", result.arrangements(), arrangement -> answer(arrangement, result));
    return JsonText.print(object.build());
  }

  private static Json answer(ArrangementResult arrangement, StaticResult result) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("id", arrangement.id())
            .put("outcome", arrangement.outcome().text());
    if (arrangement instanceof Solution solution) {
      putState(object, solution);
      solution.otherEnd().ifPresent(other -> object.put("otherEnd", otherEnd(other)));
    } else if (arrangement instanceof LostStability lost) {
      object.put("loadFactor", lost.loadFactor()).put("ownWeightFactor", lost.ownWeightFactor());
    } else if (arrangement instanceof NotSolved gaveUp) {
      object
          .put("reason", gaveUp.reason())
          .put("residual", new ObjectBuilder().put("moment", gaveUp.residual()));
    }
    object.putAll("cautions", arrangement.cautions(), ResultWriter::caution);
    object.putAll("taken", taken(result, arrangement), ResultWriter::datum);
    return object.build();
  }

  /** Returns what one arrangement was analysed with: not what other arrangements alone took. */
  private static List<Datum> taken(StaticResult result, ArrangementResult arrangement) {
    String own = "/arrangements/" + result.arrangements().indexOf(arrangement) + "/";
    return result.taken().stream()
        .filter(datum -> !datum.name().startsWith("/arrangements/") || datum.name().startsWith(own))
        .toList();
  }

  private static ObjectBuilder otherEnd(Solution other) {
    ObjectBuilder object = new ObjectBuilder().put("motion", other.motion().text());
    putState(object, other);
    return object;
  }

  private static void putState(ObjectBuilder object, Solution solution) {
    object
        .put(
            "residual",
            new ObjectBuilder()
                .put("force", solution.residualForceRatio())
                .put("moment", solution.residualMomentRatio()))
        .put("stiffnessRatio", solution.stiffnessRatio())
        .putAll("legs", solution.legs(), leg -> leg(leg, solution))
        .put("contacts", contacts(solution))
        .put("tail", new ObjectBuilder().put("tension", tension(solution, Solution::tailTension)));
    if (solution.handTension().isPresent()) {
      object.put(
          "hand",
          new ObjectBuilder()
              .put("tension", tension(solution, end -> end.handTension().orElseThrow())));
    }
    object.putAll("stems", solution.stems(), ResultWriter::stem);
  }

  /** Returns a tension, or both ends of it if the load is held. */
  private static ObjectBuilder tension(
      Solution solution, Function<Solution, Quantity<Force>> reading) {
    Quantity<Force> one = reading.apply(solution);
    Optional<Quantity<Force>> other = solution.otherEnd().map(reading);
    if (other.isEmpty()) {
      return ObjectBuilder.value(one, Kind.FORCE);
    }
    boolean inOrder =
        Si.value(one, Kind.FORCE, "tension") <= Si.value(other.get(), Kind.FORCE, "tension");
    return new ObjectBuilder()
        .putValue("least", inOrder ? one : other.get(), Kind.FORCE)
        .putValue("most", inOrder ? other.get() : one, Kind.FORCE);
  }

  private static Json leg(Leg leg, Solution solution) {
    return new ObjectBuilder()
        .put("from", leg.from())
        .put("to", leg.to())
        .put("tension", tension(solution, end -> tensionFrom(leg.from(), end)))
        .build();
  }

  /** Returns the tension of the leg that leaves a place, also where a sling is slack at one end. */
  private static Quantity<Force> tensionFrom(String place, Solution solution) {
    return place.equals("piece")
        ? solution.contacts().get(0).tensionIn()
        : solution
            .contacts()
            .get(Integer.parseInt(place.substring(place.indexOf('/') + 1)))
            .tensionOut();
  }

  private static Json contacts(Solution solution) {
    return ObjectBuilder.list(solution.contacts().size(), index -> contact(solution, index));
  }

  private static Json contact(Solution solution, int index) {
    ContactResult contact = solution.contacts().get(index);
    return new ObjectBuilder()
        .put("stem", contact.stem())
        .putValue("at", contact.at(), Kind.LENGTH)
        .put("bears", contact.bears())
        .putValue("turn", contact.turn().angle(), Kind.ANGLE)
        .put("tensionIn", tension(solution, end -> end.contacts().get(index).tensionIn()))
        .put("tensionOut", tension(solution, end -> end.contacts().get(index).tensionOut()))
        .putValue("force", contact.force())
        .putValue("forceMagnitude", contact.forceMagnitude(), Kind.FORCE)
        .putValue("along", contact.along(), Kind.FORCE)
        .putValue("across", contact.across(), Kind.FORCE)
        .putValue("position", contact.position())
        .putValue("movement", contact.movement())
        .build();
  }

  private static Json stem(StemResult stem) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("id", stem.id())
            .put(
                "tip",
                new ObjectBuilder()
                    .putValue("position", stem.tipPosition())
                    .putValue("movement", stem.tipMovement())
                    .putValue("movementMagnitude", stem.tipMovement().magnitude(), Kind.LENGTH))
            .put("base", reaction(stem.base()))
            .put("riggingBase", reaction(stem.riggingBase()))
            .putAll("shares", stem.shares(), ResultWriter::share)
            .put("bendingStress", extreme(stem.bendingStress()))
            .put("compressionStress", extreme(stem.compressionStress()))
            .put("tensionStress", extreme(stem.tensionStress()));
    stem.strengthReach()
        .ifPresent(
            reach ->
                object
                    .put("loadFactorToStrength", reach.loadFactor())
                    .put("strengthReached", word(reach.governing())));
    if (!stem.marks().isEmpty()) {
      object.putAll("marks", stem.marks(), ResultWriter::mark);
    }
    return object.build();
  }

  private static ObjectBuilder reaction(Reaction reaction) {
    return new ObjectBuilder()
        .putValue("force", reaction.force())
        .putValue("moment", reaction.moment())
        .putValue("momentMagnitude", reaction.momentMagnitude(), Kind.MOMENT)
        .putValue("axial", reaction.axial(), Kind.FORCE)
        .putValue("shear", reaction.shear(), Kind.FORCE);
  }

  private static Json share(Share share) {
    return new ObjectBuilder()
        .put("origin", word(share.origin()))
        .putValue("force", share.force())
        .putValue("moment", share.moment())
        .build();
  }

  private static ObjectBuilder extreme(Extreme extreme) {
    return ObjectBuilder.value(extreme.value(), Kind.PRESSURE)
        .putValue("at", extreme.at(), Kind.LENGTH);
  }

  private static Json mark(MarkResult mark) {
    return new ObjectBuilder()
        .put("name", mark.name())
        .putValue("at", mark.at(), Kind.LENGTH)
        .putValue("position", mark.position())
        .putValue("movement", mark.movement())
        .putValue("movementMagnitude", mark.movement().magnitude(), Kind.LENGTH)
        .build();
  }

  private static Json caution(Caution caution) {
    ObjectBuilder values = new ObjectBuilder();
    for (Map.Entry<String, String> value : caution.values().entrySet()) {
      values.put(value.getKey(), value.getValue());
    }
    return new ObjectBuilder()
        .put("code", caution.code().name())
        .put("place", caution.place())
        .put("values", values)
        .build();
  }

  private static Json datum(Datum datum) {
    return new ObjectBuilder()
        .put("name", datum.name())
        .put("value", datum.value())
        .put("source", datum.source().id() + ": " + datum.source().title())
        .build();
  }

  /**
   * Returns the name of a constant as result files write words: {@code OWN_WEIGHT} as ownWeight.
   */
  private static String word(Enum<?> constant) {
    StringBuilder word = new StringBuilder();
    for (String part : constant.name().toLowerCase(Locale.ROOT).split("_", -1)) {
      word.append(
          word.isEmpty()
              ? part
              : part.substring(0, 1).toUpperCase(Locale.ROOT) + part.substring(1));
    }
    return word.toString();
  }
}
