package org.boleline.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.plan.Plan;
import org.boleline.study.BestStations;
import org.boleline.study.BiggestPiece;
import org.boleline.study.CutPlan;
import org.boleline.study.Figure;
import org.boleline.study.ForkPull;
import org.boleline.study.FrictionTrial;
import org.boleline.study.Input;
import org.boleline.study.Keep;
import org.boleline.study.Reading;
import org.boleline.study.RunNeeded;
import org.boleline.study.Study;
import org.boleline.study.Sweep;
import org.boleline.study.Trial;
import org.boleline.study.WhatChanged;
import org.boleline.study.WrapsWindow;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.jspecify.annotations.Nullable;

/**
 * From the member {@code studies} of a plan file to studies.
 *
 * <p>What a study names is looked up in the plan once that is read.
 */
final class StudyReading {
  private static final String KINDS =
      "\"sweep\", \"biggestPiece\", \"cutPlan\", \"runNeeded\", \"whatChanged\", \"window\","
          + " \"bestStations\", \"forkPull\", \"trial\" or \"frictionTrial\"";

  /** What is looked up in the plan: the id of an arrangement, or an input. */
  private record Name(Refusals at, @Nullable String arrangement, @Nullable Input input) {}

  private final List<Name> names = new ArrayList<>();

  /** Reads the list; what could not be read is left out, and noted. */
  List<Study> studies(Members m) {
    return m.objects("studies", this::study).stream().filter(Objects::nonNull).toList();
  }

  /** Notes what the plan does not have. */
  void check(Plan plan) {
    for (Name name : names) {
      if (name.arrangement != null
          && plan.arrangements().stream().noneMatch(a -> a.id().equals(name.arrangement))) {
        name.at.add(
            Refusal.Code.UNKNOWN_REFERENCE,
            "the id of an arrangement of this plan",
            JsonText.quoted(name.arrangement));
      }
      Input input = name.input;
      if (input != null) {
        Refusals found = Refusals.none();
        found.trying(() -> Input.at(plan, input.pointer()));
        if (found.hasAny()) {
          name.at.add(
              Refusal.Code.UNKNOWN_REFERENCE,
              "the place of a number that this plan has",
              JsonText.quoted(input.pointer()));
        }
      }
    }
  }

  private @Nullable Study study(Members m) {
    @Nullable String kind = m.text("kind", KINDS);
    return switch (kind == null ? "" : kind) {
      case "sweep" -> sweep(m);
      case "biggestPiece" -> biggestPiece(m);
      case "cutPlan" -> cutPlan(m);
      case "runNeeded" -> runNeeded(m);
      case "whatChanged" -> whatChanged(m);
      case "window" -> window(m);
      case "bestStations" -> bestStations(m);
      case "forkPull" -> forkPull(m);
      case "trial" -> trial(m);
      case "frictionTrial" -> frictionTrial(m);
      default -> {
        m.refusals()
            .at("kind")
            .add(
                kind == null ? Refusal.Code.MISSING : Refusal.Code.OUT_OF_RANGE,
                KINDS,
                kind == null ? "nothing" : JsonText.quoted(kind));
        yield null;
      }
    };
  }

  private @Nullable Study sweep(Members m) {
    @Nullable String arrangement = arrangement(m, "arrangement");
    @Nullable Input input = input(m);
    @Nullable List<Reading> readings = readings(m);
    @Nullable Integer steps = whole(m, "steps");
    if (input == null) {
      m.hasAny("from", "to");
      return null;
    }
    @Nullable Figure from = figure(m, "from", input.kind().orElse(null));
    @Nullable Figure to = figure(m, "to", input.kind().orElse(null));
    return arrangement == null || readings == null || steps == null || from == null || to == null
        ? null
        : m.refusals().trying(() -> new Sweep(arrangement, input, from, to, steps, readings));
  }

  private @Nullable Study biggestPiece(Members m) {
    @Nullable String arrangement = arrangement(m, "arrangement");
    @Nullable String word = required(m, "size", "\"mass\" or \"cutLength\"");
    BiggestPiece.@Nullable Size size =
        word == null ? null : m.refusals().trying(() -> BiggestPiece.Size.parse(word));
    List<@Nullable Keep> keeps = m.objects("keeps", StudyReading::keep);
    if (size == null) {
      m.hasAny("least", "most");
      return null;
    }
    @Nullable Figure least = figure(m, "least", size.kind());
    @Nullable Figure most = figure(m, "most", size.kind());
    List<Keep> all = keeps.stream().filter(Objects::nonNull).toList();
    return arrangement == null || least == null || most == null || all.size() < keeps.size()
        ? null
        : m.refusals().trying(() -> new BiggestPiece(arrangement, size, least, most, all));
  }

  private @Nullable Study cutPlan(Members m) {
    @Nullable String arrangement = arrangement(m, "arrangement");
    @Nullable List<Figure> lengths = lengths(m);
    @Nullable Figure tie = figure(m, "tie", Kind.LENGTH);
    @Nullable Figure attachment = figure(m, "attachment", Kind.LENGTH);
    @Nullable Reading reading = reading(m);
    return arrangement == null
            || lengths == null
            || tie == null
            || attachment == null
            || reading == null
        ? null
        : m.refusals().trying(() -> new CutPlan(arrangement, lengths, tie, attachment, reading));
  }

  private @Nullable Study runNeeded(Members m) {
    @Nullable String arrangement = arrangement(m, "arrangement");
    @Nullable Keep keep = keep(m);
    return arrangement == null || keep == null
        ? null
        : m.refusals().trying(() -> new RunNeeded(arrangement, keep));
  }

  private static @Nullable Keep keep(Members m) {
    @Nullable Reading reading = reading(m);
    @Nullable String side = m.oneOf("atMost", "atLeast");
    if (reading == null || side == null) {
      if (side == null) {
        m.refusals().add(Refusal.Code.MISSING, "one of the members atMost, atLeast", "neither");
      }
      return null;
    }
    @Nullable Figure limit = figure(m, side, reading.kind().orElse(null));
    return limit == null
        ? null
        : new Keep(
            reading, side.equals("atMost") ? Keep.Sense.AT_MOST : Keep.Sense.AT_LEAST, limit);
  }

  private @Nullable Study whatChanged(Members m) {
    @Nullable String from = arrangement(m, "from");
    @Nullable String to = arrangement(m, "to");
    @Nullable List<Reading> readings = readings(m);
    return from == null || to == null || readings == null
        ? null
        : m.refusals().trying(() -> new WhatChanged(from, to, readings));
  }

  private @Nullable Study window(Members m) {
    @Nullable String arrangement = arrangement(m, "arrangement");
    @Nullable Figure lightest = figure(m, "lightest", Kind.MASS);
    @Nullable Figure hand = figure(m, "hand", Kind.FORCE);
    @Nullable Figure behind = figure(m, "behind", Kind.FORCE);
    @Nullable Double least = number(m, "leastFriction");
    @Nullable Double most = number(m, "mostFriction");
    return arrangement == null
            || lightest == null
            || hand == null
            || behind == null
            || least == null
            || most == null
        ? null
        : m.refusals()
            .trying(() -> new WrapsWindow(arrangement, lightest, hand, behind, least, most));
  }

  private @Nullable Study bestStations(Members m) {
    @Nullable String arrangement = arrangement(m, "arrangement");
    @Nullable Reading reading = reading(m);
    @Nullable Figure lowest = figure(m, "lowest", Kind.LENGTH);
    @Nullable Figure highest = figure(m, "highest", Kind.LENGTH);
    @Nullable Integer most = whole(m, "mostPoints");
    return arrangement == null
            || reading == null
            || lowest == null
            || highest == null
            || most == null
        ? null
        : m.refusals().trying(() -> new BestStations(arrangement, reading, lowest, highest, most));
  }

  private @Nullable Study forkPull(Members m) {
    @Nullable String arrangement = arrangement(m, "arrangement");
    @Nullable Integer first = whole(m, "first");
    @Nullable Integer second = whole(m, "second");
    return arrangement == null || first == null || second == null
        ? null
        : m.refusals().trying(() -> new ForkPull(arrangement, first, second));
  }

  private @Nullable Study trial(Members m) {
    @Nullable String arrangement = arrangement(m, "arrangement");
    @Nullable Input input = input(m);
    @Nullable Reading reading = reading(m);
    if (input == null || reading == null) {
      m.hasAny("from", "to", "measured", "error");
      return null;
    }
    @Nullable Figure from = figure(m, "from", input.kind().orElse(null));
    @Nullable Figure to = figure(m, "to", input.kind().orElse(null));
    @Nullable Figure measured = figure(m, "measured", reading.kind().orElse(null));
    @Nullable Figure error = figure(m, "error", reading.kind().orElse(null));
    return arrangement == null || from == null || to == null || measured == null || error == null
        ? null
        : m.refusals()
            .trying(() -> new Trial(arrangement, input, from, to, reading, measured, error));
  }

  private @Nullable Study frictionTrial(Members m) {
    @Nullable Figure tight = figure(m, "tight", Kind.FORCE);
    @Nullable Figure slack = figure(m, "slack", Kind.FORCE);
    @Nullable Figure error = figure(m, "error", Kind.FORCE);
    @Nullable Figure turn = figure(m, "turn", Kind.ANGLE);
    return tight == null || slack == null || error == null || turn == null
        ? null
        : m.refusals().trying(() -> new FrictionTrial(tight, slack, error, turn));
  }

  private @Nullable Input input(Members m) {
    @Nullable String pointer = required(m, "input", "the place of a number in the plan");
    @Nullable Input input = pointer == null ? null : parsed(m, "input", () -> Input.parse(pointer));
    if (input != null) {
      names.add(new Name(m.refusals().at("input"), null, input));
    }
    return input;
  }

  private @Nullable String arrangement(Members m, String name) {
    @Nullable String id = required(m, name, "the id of an arrangement");
    if (id != null) {
      names.add(new Name(m.refusals().at(name), id, null));
    }
    return id;
  }

  private static @Nullable String required(Members m, String name, String wants) {
    @Nullable String text = m.text(name, wants);
    if (text == null) {
      m.refusals().at(name).add(Refusal.Code.MISSING, wants, "nothing");
    }
    return text;
  }

  private static @Nullable Double number(Members m, String name) {
    @Nullable Double number = m.number(name);
    if (number == null) {
      m.refusals().at(name).add(Refusal.Code.MISSING, "a number", "nothing");
    }
    return number;
  }

  private static @Nullable Integer whole(Members m, String name) {
    @Nullable Double number = number(m, name);
    if (number == null) {
      return null;
    }
    int whole = number.intValue();
    if (whole != number) {
      m.refusals()
          .at(name)
          .add(Refusal.Code.OUT_OF_RANGE, "a whole number", QuantityText.number(number));
      return null;
    }
    return whole;
  }

  /** What a factory of a text makes; its refusal is noted at the member. */
  private static <T> @Nullable T parsed(Members m, String name, Supplier<T> making) {
    try {
      return making.get();
    } catch (IllegalArgumentException e) {
      String message = String.valueOf(e.getMessage());
      int wants = message.indexOf(": wants ") + ": wants ".length();
      int got = message.indexOf(", got ", wants);
      m.refusals()
          .at(name)
          .add(
              Refusal.Code.UNKNOWN_REFERENCE,
              message.substring(wants, got),
              message.substring(got + ", got ".length()));
      return null;
    }
  }

  private static @Nullable Reading reading(Members m) {
    @Nullable String pointer = required(m, "reading", "the place of a number in a result");
    return pointer == null ? null : parsed(m, "reading", () -> Reading.parse(pointer));
  }

  private static @Nullable List<Reading> readings(Members m) {
    String wants = "a list of places of numbers in a result";
    List<@Nullable Reading> readings =
        m.list(
            "readings",
            wants,
            (value, at) -> {
              if (value instanceof Json.Text text) {
                @Nullable Reading reading = null;
                try {
                  reading = Reading.parse(text.text());
                } catch (IllegalArgumentException e) {
                  at.add(
                      Refusal.Code.UNKNOWN_REFERENCE,
                      "the place of a number in a result",
                      JsonText.quoted(text.text()));
                }
                return reading;
              }
              at.add(
                  Refusal.Code.WRONG_TYPE,
                  "the place of a number in a result",
                  value.description());
              return null;
            });
    if (readings.isEmpty()) {
      m.refusals().at("readings").add(Refusal.Code.MISSING, wants, "none");
      return null;
    }
    List<Reading> all = readings.stream().filter(Objects::nonNull).toList();
    return all.size() < readings.size() ? null : all;
  }

  private static @Nullable List<Figure> lengths(Members m) {
    String wants = "a list of lengths";
    List<@Nullable Figure> lengths =
        m.list(
            "lengths",
            wants,
            (value, at) -> {
              @Nullable Quantity<Length> length = Members.quantity(value, Kind.LENGTH, at);
              return length == null ? null : Figure.of(length, Kind.LENGTH);
            });
    if (lengths.isEmpty()) {
      m.refusals().at("lengths").add(Refusal.Code.MISSING, wants, "none");
      return null;
    }
    List<Figure> all = lengths.stream().filter(Objects::nonNull).toList();
    return all.size() < lengths.size() ? null : all;
  }

  private static @Nullable Figure figure(Members m, String name, @Nullable Kind<?> kind) {
    if (kind == null) {
      @Nullable Double number = number(m, name);
      return number == null ? null : Figure.ofRatio(number);
    }
    return quantity(m, name, kind);
  }

  private static <Q extends Quantity<Q>> @Nullable Figure quantity(
      Members m, String name, Kind<Q> kind) {
    @Nullable Quantity<Q> quantity = m.quantity(name, kind);
    if (quantity == null) {
      m.refusals().at(name).add(Refusal.Code.MISSING, QuantityText.wants(kind), "nothing");
      return null;
    }
    return Figure.of(quantity, kind);
  }
}
