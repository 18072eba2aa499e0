package org.boleline.json;

import java.util.List;
import javax.measure.Quantity;
import org.boleline.study.BestStations;
import org.boleline.study.BiggestPiece;
import org.boleline.study.CutPlan;
import org.boleline.study.Figure;
import org.boleline.study.ForkPull;
import org.boleline.study.Found;
import org.boleline.study.FrictionTrial;
import org.boleline.study.Input;
import org.boleline.study.Keep;
import org.boleline.study.NoAnswer;
import org.boleline.study.Reading;
import org.boleline.study.RunNeeded;
import org.boleline.study.Study;
import org.boleline.study.StudyAnswer;
import org.boleline.study.Sweep;
import org.boleline.study.Trial;
import org.boleline.study.WhatChanged;
import org.boleline.study.WrapsWindow;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/** Studies as plan files state them, and their answers as result files give them. */
final class StudyWriting {
  private StudyWriting() {}

  static ObjectBuilder study(Study study) {
    ObjectBuilder object = new ObjectBuilder().put("kind", study.kind());
    if (study instanceof Sweep sweep) {
      object.put("arrangement", sweep.arrangement()).put("input", sweep.input().pointer());
      putStated(object, "from", sweep.from());
      putStated(object, "to", sweep.to());
      return object.put("steps", sweep.steps()).put("readings", readings(sweep.readings()));
    }
    if (study instanceof BiggestPiece biggest) {
      object.put("arrangement", biggest.arrangement()).put("size", biggest.size().text());
      putStated(object, "least", biggest.least());
      putStated(object, "most", biggest.most());
      return object.putAll("keeps", biggest.keeps(), keep -> keep(keep).build());
    }
    if (study instanceof CutPlan cuts) {
      object
          .put("arrangement", cuts.arrangement())
          .put(
              "lengths",
              ObjectBuilder.list(
                  cuts.lengths().size(), i -> new Json.Text(cuts.lengths().get(i).text())));
      putStated(object, "tie", cuts.tie());
      putStated(object, "attachment", cuts.attachment());
      return object.put("reading", cuts.reading().pointer());
    }
    if (study instanceof RunNeeded needed) {
      return keep(object.put("arrangement", needed.arrangement()), needed.keep());
    }
    if (study instanceof WhatChanged changed) {
      return object
          .put("from", changed.from())
          .put("to", changed.to())
          .put("readings", readings(changed.readings()));
    }
    if (study instanceof WrapsWindow window) {
      object.put("arrangement", window.arrangement());
      putStated(object, "lightest", window.lightest());
      putStated(object, "hand", window.hand());
      putStated(object, "behind", window.behind());
      return object
          .put("leastFriction", window.leastFriction())
          .put("mostFriction", window.mostFriction());
    }
    if (study instanceof ForkPull fork) {
      return object
          .put("arrangement", fork.arrangement())
          .put("first", fork.firstIndex())
          .put("second", fork.secondIndex());
    }
    if (study instanceof Trial trial) {
      object.put("arrangement", trial.arrangement()).put("input", trial.input().pointer());
      putStated(object, "from", trial.from());
      putStated(object, "to", trial.to());
      object.put("reading", trial.reading().pointer());
      putStated(object, "measured", trial.measured());
      putStated(object, "error", trial.error());
      return object;
    }
    if (study instanceof FrictionTrial trial) {
      putStated(object, "tight", trial.tight());
      putStated(object, "slack", trial.slack());
      putStated(object, "error", trial.error());
      putStated(object, "turn", trial.turn());
      return object;
    }
    BestStations best = (BestStations) study;
    object.put("arrangement", best.arrangement()).put("reading", best.reading().pointer());
    putStated(object, "lowest", best.lowest());
    putStated(object, "highest", best.highest());
    return object.put("mostPoints", best.mostPoints());
  }

  private static Json readings(List<Reading> readings) {
    return ObjectBuilder.list(readings.size(), i -> new Json.Text(readings.get(i).pointer()));
  }

  private static ObjectBuilder keep(Keep keep) {
    return keep(new ObjectBuilder(), keep);
  }

  private static ObjectBuilder keep(ObjectBuilder object, Keep keep) {
    object.put("reading", keep.reading().pointer());
    putStated(object, keep.sense() == Keep.Sense.AT_MOST ? "atMost" : "atLeast", keep.limit());
    return object;
  }

  private static void putStated(ObjectBuilder object, String name, Figure figure) {
    if (figure.kind().isPresent()) {
      object.put(name, figure.text());
    } else {
      object.put(name, figure.ratio());
    }
  }

  static ObjectBuilder answer(StudyAnswer answer) {
    ObjectBuilder object = new ObjectBuilder().put("study", study(answer.study()));
    if (answer instanceof NoAnswer no) {
      return object.put("reason", no.reason());
    }
    if (answer instanceof Sweep.Answer sweep) {
      return object.putAll("points", sweep.points(), point -> point(sweep.study(), point));
    }
    if (answer instanceof BiggestPiece.Answer biggest) {
      object
          .put("outcome", biggest.outcome().text())
          .put("biggest", found(biggest.biggest()))
          .put("mass", found(biggest.mass()));
      biggest.governing().ifPresent(keep -> object.put("governing", keep(keep)));
      return object.putAll("values", biggest.values(), found -> found(found).build());
    }
    if (answer instanceof CutPlan.Answer cuts) {
      return object.putAll("cuts", cuts.cuts(), StudyWriting::cut);
    }
    if (answer instanceof RunNeeded.Answer needed) {
      return object
          .put("run", found(needed.run()))
          .put("slipTension", found(needed.slipTension()))
          .put("clearance", found(needed.clearance()));
    }
    if (answer instanceof WhatChanged.Answer changed) {
      return object.putAll("differences", changed.rows(), StudyWriting::row);
    }
    if (answer instanceof WrapsWindow.Answer window) {
      return object
          .put("leastWraps", found(window.leastWraps()))
          .put("mostWraps", found(window.mostWraps()))
          .put("isEmpty", window.isEmpty());
    }
    if (answer instanceof ForkPull.Answer fork) {
      return object.put("opening", found(fork.opening())).put("sway", found(fork.sway()));
    }
    if (answer instanceof Trial.Answer trial) {
      return object
          .put("value", found(trial.value()))
          .put("least", found(trial.least()))
          .put("most", found(trial.most()));
    }
    if (answer instanceof FrictionTrial.Answer trial) {
      return object
          .put("value", figure(trial.value()))
          .put("least", figure(trial.least()))
          .put("most", figure(trial.most()));
    }
    BestStations.Answer best = (BestStations.Answer) answer;
    object.putAll(
        "byCount",
        best.byCount(),
        b ->
            new ObjectBuilder()
                .putAll("stations", b.stations(), station -> figure(station).build())
                .put("value", found(b.value()))
                .build());
    return best.enoughIndex() < 0 ? object : object.put("enoughPoints", best.enoughIndex());
  }

  private static Json cut(CutPlan.Cut cut) {
    return new ObjectBuilder()
        .put("at", figure(cut.at()))
        .put("length", figure(cut.length()))
        .put("mass", figure(cut.mass()))
        .put("fall", found(cut.fall()))
        .put("value", found(cut.value()))
        .put("halved", found(cut.halved()))
        .build();
  }

  private static Json point(Sweep study, Sweep.Point point) {
    return new ObjectBuilder()
        .put("input", figure(point.input()))
        .put(
            "readings",
            ObjectBuilder.list(
                point.rows().size(),
                i -> {
                  Sweep.Row row = point.rows().get(i);
                  return new ObjectBuilder()
                      .put("value", found(row.value()))
                      .put("slope", slope(study.input(), row.slope()))
                      .put("elasticity", found(row.elasticity()))
                      .build();
                }))
        .build();
  }

  /** A slope, in the SI unit of the reading over that of the input. */
  private static ObjectBuilder slope(Input input, Found slope) {
    @Nullable Figure figure = slope.figure().orElse(null);
    if (figure == null) {
      return found(slope);
    }
    String below = input.kind().map(Kind::ucum).orElse("1");
    String above = figure.kind().map(Kind::ucum).orElse("1");
    String unit =
        below.equals("1") ? above : above + "/" + (below.contains("/") ? "(" + below + ")" : below);
    return new ObjectBuilder().put("value", si(figure)).put("unit", unit);
  }

  private static double si(Figure figure) {
    @Nullable Kind<?> kind = figure.kind().orElse(null);
    return kind == null ? figure.ratio() : si(figure, kind);
  }

  private static <Q extends Quantity<Q>> double si(Figure figure, Kind<Q> kind) {
    return Si.value(figure.in(kind), kind, kind.name());
  }

  private static Json row(WhatChanged.Row row) {
    return new ObjectBuilder()
        .put("reading", row.reading().pointer())
        .put("before", found(row.before()))
        .put("after", found(row.after()))
        .put("difference", found(row.difference()))
        .putAll(
            "shares",
            row.parts(),
            part ->
                new ObjectBuilder()
                    .put(
                        "changes",
                        ObjectBuilder.list(
                            part.changes().size(), i -> new Json.Text(part.changes().get(i))))
                    .put("share", figure(part.share()))
                    .build())
        .build();
  }

  private static ObjectBuilder found(Found found) {
    @Nullable Figure figure = found.figure().orElse(null);
    return figure == null
        ? new ObjectBuilder().put("reason", found.reason().orElse(""))
        : figure(figure);
  }

  private static ObjectBuilder figure(Figure figure) {
    @Nullable Kind<?> kind = figure.kind().orElse(null);
    return kind == null
        ? new ObjectBuilder().put("value", figure.ratio()).put("unit", "1")
        : figure(figure, kind);
  }

  private static <Q extends Quantity<Q>> ObjectBuilder figure(Figure figure, Kind<Q> kind) {
    return ObjectBuilder.value(figure.in(kind), kind);
  }
}
