package org.boleline.json;

import java.util.List;
import javax.measure.Quantity;
import org.boleline.study.BestStations;
import org.boleline.study.BiggestPiece;
import org.boleline.study.Figure;
import org.boleline.study.Found;
import org.boleline.study.Input;
import org.boleline.study.Keep;
import org.boleline.study.NoAnswer;
import org.boleline.study.Reading;
import org.boleline.study.Study;
import org.boleline.study.StudyAnswer;
import org.boleline.study.Sweep;
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
    ObjectBuilder object = new ObjectBuilder().put("reading", keep.reading().pointer());
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
    if (answer instanceof WhatChanged.Answer changed) {
      return object.putAll("differences", changed.rows(), StudyWriting::row);
    }
    if (answer instanceof WrapsWindow.Answer window) {
      return object
          .put("leastWraps", found(window.leastWraps()))
          .put("mostWraps", found(window.mostWraps()))
          .put("isEmpty", window.isEmpty());
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
