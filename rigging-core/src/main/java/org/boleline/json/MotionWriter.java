package org.boleline.json;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.boleline.drop.CatchHistory;
import org.boleline.drop.DropFound;
import org.boleline.drop.Swing;
import org.boleline.drop.SwingHistory;
import org.boleline.drop.TimedCatch;
import org.boleline.explain.Caution;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;

/**
 * Writes motions as files of the format {@code rigging-motion/1}: frames at even times, for a host
 * that draws a moving picture.
 *
 * <p>The same motion gives the same text.
 */
public final class MotionWriter {
  private MotionWriter() {}

  /**
   * Returns a catch in time as the text of a motion file.
   *
   * @param drop the drop it belongs to, which names its legs, not null
   * @param sampled the catch with its samples, such as of {@link org.boleline.drop.Drops#sampled},
   *     not null
   * @return JSON text, a line feed at its end
   * @throws IllegalArgumentException if the catch has no samples
   */
  public static String write(DropFound drop, TimedCatch.Followed sampled) {
    CatchHistory history = sampled.history();
    if (history.count() == 0) {
      throw new IllegalArgumentException("sampled: wants a catch with samples, got one without");
    }
    List<String> from = drop.legsInTimeFrom();
    List<String> to = drop.legsInTimeTo();
    int legs = from.size();
    double[] times = history.times(Kind.TIME);
    double[][] piece = history.piece(Kind.LENGTH);
    double[] lean = history.lean(Kind.ANGLE);
    double[] runs = history.runs(Kind.LENGTH);
    List<double[]> tensions = new ArrayList<>();
    List<double[][]> places = new ArrayList<>();
    for (int i = 0; i < legs; i++) {
      tensions.add(history.tensions(i, Kind.FORCE));
      places.add(history.places(i, Kind.LENGTH));
    }
    ObjectBuilder object = head("catch", drop.plan().title());
    object.put("arrangement", drop.id());
    object.put(
        "legs",
        ObjectBuilder.list(
            legs, i -> new ObjectBuilder().put("from", from.get(i)).put("to", to.get(i)).build()));
    object.putAll("stems", drop.plan().stems(), MotionWriter::stem);
    object.put(
        "frames",
        ObjectBuilder.list(
            times.length,
            i ->
                new ObjectBuilder()
                    .put("time", times[i])
                    .put("piece", numbers(piece[i]))
                    .put("lean", Math.toDegrees(lean[i]))
                    .put("points", ObjectBuilder.list(legs, j -> numbers(places.get(j)[i])))
                    .put(
                        "tensions", numbers(tensions.stream().mapToDouble(leg -> leg[i]).toArray()))
                    .put("run", runs[i])
                    .build()));
    return end(object, sampled.cautions());
  }

  /**
   * Returns a swing as the text of a motion file.
   *
   * @param swing the swing, not null
   * @param history its samples, not null
   * @return JSON text, a line feed at its end
   */
  public static String write(Swing swing, SwingHistory history) {
    requireNonNull(swing, "swing");
    double[] times = history.times(Kind.TIME);
    double[][] piece = history.piece(Kind.LENGTH);
    double[] tensions = history.tensions(Kind.FORCE);
    Json point = numbers(history.point().in(Kind.LENGTH));
    ObjectBuilder object = head("swing", "");
    object.put(
        "legs",
        ObjectBuilder.list(
            1, i -> new ObjectBuilder().put("from", "piece").put("to", "point").build()));
    object.put(
        "frames",
        ObjectBuilder.list(
            times.length,
            i ->
                new ObjectBuilder()
                    .put("time", times[i])
                    .put("piece", numbers(piece[i]))
                    .put("points", ObjectBuilder.list(1, j -> point))
                    .put("tensions", numbers(tensions[i]))
                    .build()));
    return end(object, swing.cautions());
  }

  private static ObjectBuilder head(String of, String title) {
    ObjectBuilder object =
        new ObjectBuilder()
            .put("format", "rigging-motion/1")
            .put(
                "library",
                new ObjectBuilder()
                    .put("name", "Boleline")
                    .put("version", ResultWriter.libraryVersion()))
            .put("of", of);
    if (!title.isEmpty()) {
      object.put("title", title);
    }
    return object.put(
        "units",
        new ObjectBuilder()
            .put("time", "s")
            .put("length", "m")
            .put("force", "N")
            .put("angle", "deg"));
  }

  private static String end(ObjectBuilder object, List<Caution> cautions) {
    return JsonText.print(object.putAll("cautions", cautions, ResultWriter::caution).build());
  }

  private static Json stem(Stem stem) {
    return new ObjectBuilder()
        .put("id", stem.id())
        .put("base", numbers(stem.base().in(Kind.LENGTH)))
        .build();
  }

  private static Json numbers(double... values) {
    return new Json.Elements(
        Arrays.stream(values)
            .<Json>mapToObj(v -> new Json.Numeral(QuantityText.number(v)))
            .toList());
  }
}
