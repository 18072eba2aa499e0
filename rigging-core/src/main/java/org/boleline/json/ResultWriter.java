package org.boleline.json;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropResult;
import org.boleline.explain.Caution;
import org.boleline.explain.Datum;
import org.boleline.geometry.Vector;
import org.boleline.limits.ArrangementChecks;
import org.boleline.limits.Checks;
import org.boleline.plan.Arrangement;
import org.boleline.plan.SettingUp;
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
import org.boleline.study.RangeResult;
import org.boleline.study.StudyAnswer;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * Writes results as result files of the format {@code rigging-result/1}.
 *
 * <p>The same result gives the same text. Quantities are numbers with the UCUM code of their unit,
 * angles in degrees. Each answer stands alone: it carries the cautions and the data taken that
 * concern it, also those of the whole plan.
 */
public final class ResultWriter {
  static final String FORMAT = "rigging-result/1";
  private static final String ARRANGEMENTS = "/arrangements/";

  private ResultWriter() {}

  /**
   * Returns a result of slow motion as the text of a result file.
   *
   * @param result the result, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(StaticResult result) {
    requireNonNull(result, "result");
    return JsonText.print(
        result(
                result,
                result.cautions(),
                result.taken(),
                index -> Optional.empty(),
                index -> Optional.empty(),
                List.of())
            .build());
  }

  /**
   * Returns a result of slow motion and drops as the text of a result file.
   *
   * @param result the result, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(DropResult result) {
    requireNonNull(result, "result");
    return JsonText.print(
        result(
                result.statics(),
                result.cautions(),
                result.taken(),
                result.drops()::get,
                index -> Optional.empty(),
                List.of())
            .build());
  }

  /**
   * Returns checks, with the result of slow motion and drops they are of, as the text of a result
   * file.
   *
   * @param checks the checks, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(Checks checks) {
    return write(checks, List.of(), List.of());
  }

  /**
   * Returns checks, with the result of slow motion and drops they are of, the answers to studies
   * and ranges of figures, as the text of a result file.
   *
   * @param checks the checks, not null
   * @param studies the answers, not null
   * @param ranges ranges of its plan's arrangements, at most one each, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(Checks checks, List<StudyAnswer> studies, List<RangeResult> ranges) {
    ObjectBuilder object = result(checks, ranges);
    if (!studies.isEmpty()) {
      object.putAll("studies", studies, answer -> StudyWriting.answer(answer).build());
    }
    return JsonText.print(object.build());
  }

  static ObjectBuilder result(Checks checks, List<RangeResult> ranges) {
    requireNonNull(checks, "checks");
    return result(
        checks.statics(),
        checks.cautions(),
        checks.drops().map(DropResult::taken).orElseGet(checks.statics()::taken),
        index -> checks.drops().flatMap(drops -> drops.drops().get(index)),
        index -> Optional.of(checks.arrangements().get(index)),
        List.copyOf(ranges));
  }

  private static ObjectBuilder result(
      StaticResult result,
      List<Caution> cautions,
      List<Datum> taken,
      IntFunction<Optional<DropAnswer>> drops,
      IntFunction<Optional<ArrangementChecks>> checks,
      List<RangeResult> ranges) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("format", FORMAT)
            .put(
                "library",
                new ObjectBuilder().put("name", "Boleline").put("version", libraryVersion()));
    if (!result.plan().title().isEmpty()) {
      object.put("title", result.plan().title());
    }
    object.put(
        "arrangements",
        ObjectBuilder.list(
            result.arrangements().size(),
            index ->
                withSettingUp(
                        answer(
                            result.arrangements().get(index),
                            drops.apply(index),
                            checks.apply(index),
                            ranges,
                            cautions,
                            taken,
                            index),
                        result.plan().arrangements().get(index))
                    .build()));
    object.putAll("cautions", cautions, ResultWriter::caution);
    return object.putAll("taken", taken, ResultWriter::datum);
  }

  /**
   * Returns the version of this library, as results name it.
   *
   * @return the version, such as {@code 0.1.0}
   */
  public static String libraryVersion() {
    try (InputStream stream = ResultWriter.class.getResourceAsStream("version.txt")) {
      return new String(
              requireNonNull(stream, "version.txt").readAllBytes(), StandardCharsets.UTF_8)
          .strip();
    } catch (IOException e) {
      throw new UncheckedIOException("reading from the class path", e);
    }
  }

  private static ObjectBuilder withSettingUp(ObjectBuilder answer, Arrangement arrangement) {
    SettingUp.of(arrangement)
        .ifPresent(
            order ->
                answer.put(
                    "settingUp",
                    new ObjectBuilder()
                        .put("thread", contacts(order.thread()))
                        .put("layIn", contacts(order.layIn()))
                        .put("notStated", contacts(order.notStated()))
                        .put("inWords", order.sentence())));
    return answer;
  }

  private static Json contacts(List<Integer> numbers) {
    return new Json.Elements(
        numbers.stream().<Json>map(i -> new Json.Text("contacts/" + i)).toList());
  }

  private static ObjectBuilder answer(
      ArrangementResult answer,
      Optional<DropAnswer> drop,
      Optional<ArrangementChecks> checks,
      List<RangeResult> ranges,
      List<Caution> cautions,
      List<Datum> taken,
      int index) {
    ObjectBuilder object =
        new ObjectBuilder().put("id", answer.id()).put("outcome", answer.outcome().text());
    if (answer instanceof Solution solution) {
      new State(solution, solution.otherEnd().orElse(null)).putIn(object);
      solution
          .otherEnd()
          .ifPresent(
              rise -> {
                ObjectBuilder end = new ObjectBuilder();
                new State(rise, null).putIn(end);
                object.put("aboutToRise", end);
              });
    } else if (answer instanceof LostStability lost) {
      object.put("loadFactor", lost.loadFactor()).put("ownWeightFactor", lost.ownWeightFactor());
    } else if (answer instanceof NotSolved given) {
      object
          .put("reason", given.reason())
          .put("residual", new ObjectBuilder().put("moment", given.residual()));
    }
    drop.ifPresent(found -> object.put("drop", DropWriting.drop(found)));
    checks.ifPresent(found -> CheckWriting.putIn(object, found));
    List<Caution> own = new ArrayList<>(answer.cautions());
    drop.ifPresent(found -> own.addAll(found.cautions()));
    checks.ifPresent(found -> own.addAll(found.cautions()));
    for (RangeResult range : ranges) {
      if (range.study().arrangement().equals(answer.id())) {
        object.put("ranges", RangesWriting.found(range));
        own.addAll(range.cautions());
      }
    }
    cautions.stream().filter(c -> concerns(c.place(), index)).forEach(own::add);
    object.putAll("cautions", own, ResultWriter::caution);
    return object.putAll(
        "taken",
        taken.stream().filter(datum -> concerns(datum.name(), index)).toList(),
        ResultWriter::datum);
  }

  /** Whether a place of the plan is of no other arrangement. */
  private static boolean concerns(String place, int index) {
    return !place.startsWith(ARRANGEMENTS) || (place + "/").startsWith(ARRANGEMENTS + index + "/");
  }

  /** A default or a figure from data: its place in the plan, its value and where it comes from. */
  private static Json datum(Datum datum) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("name", datum.name())
            .put("value", datum.value())
            .put("source", datum.source().id() + ": " + datum.source().title())
            .put("reading", text(datum.source().reading()));
    if (datum.spread() != null) {
      object.put("spread", datum.spread());
    }
    return object.build();
  }

  /** A caution: its stable code, its place and its values by name. */
  static Json caution(Caution caution) {
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

  /** A constant as files write it: {@code OWN_WEIGHT} as {@code ownWeight}. */
  private static String text(Enum<?> constant) {
    StringBuilder out = new StringBuilder();
    for (String word : constant.name().toLowerCase(Locale.ROOT).split("_", -1)) {
      out.append(out.isEmpty() ? word.charAt(0) : Character.toUpperCase(word.charAt(0)))
          .append(word, 1, word.length());
    }
    return out.toString();
  }

  /**
   * A stable state.
   *
   * @param shown the state that is written
   * @param other the other end of a held load; null if there is none: then tensions are plain
   */
  private record State(Solution shown, @Nullable Solution other) {
    void putIn(ObjectBuilder object) {
      object
          .put(
              "residual",
              new ObjectBuilder()
                  .put("force", shown.residualForceRatio())
                  .put("moment", shown.residualMomentRatio()))
          .put("stiffnessRatio", shown.stiffnessRatio())
          .putAll("legs", shown.legs(), this::leg);
      object
          .put("contacts", ObjectBuilder.list(shown.contacts().size(), this::contact))
          .put("tail", new ObjectBuilder().put("tension", tension(Solution::tailTension)));
      if (shown.handTension().isPresent()) {
        object.put(
            "hand",
            new ObjectBuilder().put("tension", tension(s -> s.handTension().orElseThrow())));
      }
      object.putAll("stems", shown.stems(), ResultWriter::stem);
    }

    /** A tension of this state, or its two ends. */
    private ObjectBuilder tension(Function<Solution, Quantity<Force>> reading) {
      List<Double> ends = new ArrayList<>(List.of(newtons(reading.apply(shown))));
      if (other != null) {
        ends.add(newtons(reading.apply(other)));
      }
      return tension(ends);
    }

    private ObjectBuilder tension(List<Double> newtons) {
      if (other == null) {
        return newtons(newtons.get(0));
      }
      double least = newtons.stream().mapToDouble(x -> x).min().orElseThrow();
      double most = newtons.stream().mapToDouble(x -> x).max().orElseThrow();
      return new ObjectBuilder().put("least", newtons(least)).put("most", newtons(most));
    }

    private Json leg(Leg leg) {
      List<Double> ends = new ArrayList<>(List.of(newtons(leg.tension())));
      if (other != null) {
        ends.addAll(between(other, leg));
      }
      ObjectBuilder out =
          new ObjectBuilder()
              .put("from", leg.from())
              .put("to", leg.to())
              .put("tension", tension(ends));
      if (newtons(leg.weight()) > 0) {
        out.put("tensionAtEnd", tension(s -> tensionInto(s, leg.to())))
            .putValue("weight", leg.weight(), Kind.FORCE);
      }
      return out.build();
    }

    /** Tension of a state where the rope comes into a contact, or into tail or device. */
    private static Quantity<Force> tensionInto(Solution state, String place) {
      return place.startsWith("contacts/")
          ? state
              .contacts()
              .get(Integer.parseInt(place.substring("contacts/".length())))
              .tensionIn()
          : state.tailTension();
    }

    /** Tensions of another state along a leg: more than one if other contacts bear there. */
    private static List<Double> between(Solution other, Leg leg) {
      List<Double> out = new ArrayList<>();
      boolean within = leg.from().equals("piece");
      if (within) {
        out.add(newtons(other.legs().get(0).tension()));
      }
      for (int j = 0; j < other.contacts().size(); j++) {
        String contact = "contacts/" + j;
        if (contact.equals(leg.to())) {
          break;
        }
        within |= contact.equals(leg.from());
        if (within) {
          out.add(newtons(other.contacts().get(j).tensionOut()));
        }
      }
      return out;
    }

    private Json contact(int index) {
      ContactResult contact = shown.contacts().get(index);
      return new ObjectBuilder()
          .put("stem", contact.stem())
          .putValue("at", contact.at(), Kind.LENGTH)
          .put("bears", contact.bears())
          .putValue("turn", contact.turn().angle(), Kind.ANGLE)
          .put("tensionIn", tension(s -> s.contacts().get(index).tensionIn()))
          .put("tensionOut", tension(s -> s.contacts().get(index).tensionOut()))
          .putValue("force", contact.force())
          .putValue("forceMagnitude", contact.forceMagnitude(), Kind.FORCE)
          .putValue("along", contact.along(), Kind.FORCE)
          .putValue("across", contact.across(), Kind.FORCE)
          .putValue("position", contact.position())
          .putValue("attachment", contact.attachment())
          .putValue("movement", contact.movement())
          .build();
    }
  }

  private static double newtons(Quantity<Force> force) {
    return Si.value(force, Kind.FORCE, "tension");
  }

  private static ObjectBuilder newtons(double force) {
    return ObjectBuilder.value(Si.of(force, Kind.FORCE), Kind.FORCE);
  }

  private static Json stem(StemResult stem) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("id", stem.id())
            .put(
                "tip",
                putMovement(
                    new ObjectBuilder().putValue("position", stem.tipPosition()),
                    stem.tipMovement()))
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
                    .put("strengthGoverning", text(reach.governing())));
    return object.putAll("marks", stem.marks(), ResultWriter::mark).build();
  }

  private static ObjectBuilder putMovement(ObjectBuilder object, Vector<Length> movement) {
    return object
        .putValue("movement", movement)
        .putValue("movementMagnitude", movement.magnitude(), Kind.LENGTH);
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
        .put("origin", text(share.origin()))
        .putValue("force", share.force())
        .putValue("moment", share.moment())
        .build();
  }

  private static ObjectBuilder extreme(Extreme extreme) {
    return ObjectBuilder.value(extreme.value(), Kind.PRESSURE)
        .putValue("at", extreme.at(), Kind.LENGTH);
  }

  private static Json mark(MarkResult mark) {
    return putMovement(
            new ObjectBuilder()
                .put("name", mark.name())
                .putValue("at", mark.at(), Kind.LENGTH)
                .putValue("position", mark.position()),
            mark.movement())
        .build();
  }
}
