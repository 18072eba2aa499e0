package org.boleline.picture;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Time;
import org.boleline.drop.CatchHistory;
import org.boleline.drop.DropFound;
import org.boleline.drop.MotionAccount;
import org.boleline.drop.TimedCatch;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * A catch in time: tension of every leg, force on every point, moment at every base, and where the
 * energy has gone.
 *
 * <p>Immutable and thread-safe.
 */
public final class CatchPlot {
  private static final double ENERGY_ROW = 17;
  private final String svg;

  private CatchPlot(String svg) {
    this.svg = svg;
  }

  /**
   * Obtains the plot of a catch.
   *
   * @param drop the drop it belongs to, which names its legs, not null
   * @param followed the catch with its samples, such as of {@link org.boleline.drop.Drops#sampled},
   *     not null
   * @param spec how the picture is wanted; it uses size, theme and units, not null
   * @return the plot
   * @throws IllegalArgumentException if the catch has no samples
   */
  public static CatchPlot of(DropFound drop, TimedCatch.Followed followed, PictureSpec spec) {
    requireNonNull(spec, "spec");
    if (followed.history().count() == 0) {
      throw new IllegalArgumentException("followed: wants a catch with samples, got one without");
    }
    return new CatchPlot(new Drawing(drop, followed, spec).svg());
  }

  /**
   * Returns the picture.
   *
   * @return an SVG element as text, to be a file of its own or part of a page
   */
  public String svg() {
    return svg;
  }

  /** A bar of the energy account. */
  private record Bar(String name, double joules) {}

  private static final class Drawing {
    private final DropFound drop;
    private final TimedCatch.Followed followed;
    private final CatchHistory history;
    private final PictureUnits units;
    private final double[] times;
    private final Sheet sheet;

    Drawing(DropFound drop, TimedCatch.Followed followed, PictureSpec spec) {
      this.drop = drop;
      this.followed = followed;
      history = followed.history();
      units = spec.units();
      times = history.times(Kind.TIME);
      List<String> headings = new ArrayList<>();
      headings.add(drop.plan().title().isEmpty() ? "A catch" : drop.plan().title());
      headings.add(drop.id() + ": the catch in time");
      headings.add(
          followed.ropeStillRuns()
              ? "The rope still runs when the time is up"
              : "Greatest values are of the whole catch, between samples too");
      sheet = new Sheet(spec, headings.get(0) + ": catch", headings, description());
    }

    String svg() {
      Rect body = sheet.body();
      List<Bar> bars = bars();
      double barsHigh = bars.size() * ENERGY_ROW + 22;
      List<String> names = new ArrayList<>();
      for (int i = 0; i < followed.legs().size(); i++) {
        names.add(
            (i + 1)
                + " "
                + spoken(drop.legsInTimeFrom().get(i))
                + " to "
                + spoken(drop.legsInTimeTo().get(i))
                + "; force on "
                + spoken(drop.legsInTimeTo().get(i)));
      }
      Legend legend = Chart.legend(sheet, names);
      Legend stems = Chart.legend(sheet, bases());
      double legendHigh = legend.height(body.width()) + stems.height(body.width()) + 6;
      boolean bends = !followed.baseMoments().isEmpty();
      Rect charts =
          new Rect(body.left(), body.top(), body.right(), body.bottom() - barsHigh - legendHigh);
      List<Rect> panels = Chart.panels(charts, bends ? 3 : 2);
      tensions(panels.get(0));
      forces(panels.get(1));
      if (bends) {
        moments(panels.get(2));
      }
      double below = charts.bottom() + legend.height(body.width());
      legend.draw(new Rect(body.left(), charts.bottom(), body.right(), below));
      stems.draw(new Rect(body.left(), below, body.right(), charts.bottom() + legendHigh));
      energy(bars, new Rect(body.left(), body.bottom() - barsHigh, body.right(), body.bottom()));
      return sheet.end();
    }

    /** What the lines of the moments are, if there are several. */
    private List<String> bases() {
      int count = followed.baseMoments().size();
      List<String> bases = new ArrayList<>();
      for (int i = 0; i < count && count > 1; i++) {
        bases.add("moment at the base of " + drop.plan().stems().get(i).id());
      }
      return bases;
    }

    private double[] each(double[] values, DoubleUnaryOperator unit) {
      double[] out = new double[values.length];
      for (int i = 0; i < out.length; i++) {
        out[i] = unit.applyAsDouble(values[i]);
      }
      return out;
    }

    private double[] sizes(double[][] vectors, DoubleUnaryOperator unit) {
      double[] out = new double[vectors.length];
      for (int i = 0; i < out.length; i++) {
        out[i] = unit.applyAsDouble(Place.of(vectors[i]).length());
      }
      return out;
    }

    private Chart chart(Rect room) {
      return new Chart(sheet, room, times[times.length - 1]);
    }

    private void tensions(Rect room) {
      Chart chart = chart(room);
      for (int i = 0; i < followed.legs().size(); i++) {
        chart.add(times, each(history.tensions(i, Kind.FORCE), units::forces));
      }
      chart.draw("tension of legs, " + units.forceUnit(), "time, s");
      for (int i = 0; i < followed.legs().size(); i++) {
        double most = Scene.newtons(followed.legs().get(i).overall());
        chart.mark(
            seconds(followed.legs().get(i).overallAt()),
            units.forces(most),
            Integer.toString(i + 1),
            units.forceUnit(),
            "");
      }
      chart.end();
    }

    private void forces(Rect room) {
      Chart chart = chart(room);
      for (int i = 0; i < followed.points().size(); i++) {
        chart.add(times, sizes(history.forces(i, Kind.FORCE), units::forces));
      }
      chart.draw("force on points, " + units.forceUnit(), "time, s");
      for (int i = 0; i < followed.points().size(); i++) {
        double most = Scene.newtons(followed.points().get(i).overall());
        chart.mark(
            seconds(followed.points().get(i).overallAt()),
            units.forces(most),
            spoken(drop.legsInTimeTo().get(i)),
            units.forceUnit(),
            "");
      }
      chart.end();
    }

    private void moments(Rect room) {
      Chart chart = chart(room);
      for (int i = 0; i < followed.baseMoments().size(); i++) {
        chart.add(times, sizes(history.baseMoments(i, Kind.MOMENT), units::moments));
      }
      chart.draw("moment at the base of stems, " + units.momentUnit(), "time, s");
      for (int i = 0; i < followed.baseMoments().size(); i++) {
        double most = Si.value(followed.baseMoments().get(i).overall(), Kind.MOMENT, "moment");
        chart.mark(
            seconds(followed.baseMoments().get(i).overallAt()),
            units.moments(most),
            drop.plan().stems().get(i).id(),
            units.momentUnit(),
            "");
      }
      chart.end();
    }

    private static double seconds(Quantity<Time> time) {
      return Si.value(time, Kind.TIME, "time");
    }

    private static double joules(Quantity<Energy> energy) {
      return Si.value(energy, Kind.ENERGY, "energy");
    }

    private static String spoken(String place) {
      return place.startsWith("contacts/")
          ? "point " + (Integer.parseInt(place.substring("contacts/".length())) + 1)
          : place;
    }

    private List<Bar> bars() {
      MotionAccount account = followed.energy();
      List<Bar> bars = new ArrayList<>();
      bars.add(new Bar("given by the piece", joules(account.given())));
      bars.add(new Bar("still in the piece", joules(account.heldByPiece())));
      bars.add(new Bar("stored in the rope", joules(account.storedInRope())));
      bars.add(new Bar("held by stems", joules(account.heldByStems())));
      for (int i = 0; i < account.heatAtPoints().size(); i++) {
        bars.add(
            new Bar(
                "friction at " + spoken(drop.legsInTimeTo().get(i)),
                joules(account.heatAtPoints().get(i))));
      }
      bars.add(new Bar("device, hand", joules(account.takenAtDeviceAtMost())));
      bars.add(new Bar("lost in the rope", joules(account.lostInRope())));
      bars.add(new Bar("lost in stems", joules(account.lostInStems())));
      return bars;
    }

    private void energy(List<Bar> bars, Rect room) {
      sheet.write(
          "energy when the time is up, " + units.energyUnit(),
          room.left(),
          room.top() + 14,
          "font-size",
          11,
          "font-weight",
          "bold");
      BarRows.draw(
          sheet,
          new Rect(room.left(), room.top() + 20, room.right(), room.bottom()),
          bars.stream().map(Bar::name).toList(),
          bars.stream().map(bar -> units.energies(bar.joules())).toList(),
          bars.stream().map(bar -> PictureUnits.figures(units.energies(bar.joules()))).toList());
    }

    private String description() {
      StringBuilder out = new StringBuilder("Greatest values.");
      for (int i = 0; i < followed.legs().size(); i++) {
        out.append(" Rope from ").append(spoken(drop.legsInTimeFrom().get(i))).append(" to ");
        out.append(spoken(drop.legsInTimeTo().get(i))).append(": ");
        out.append(units.force(Scene.newtons(followed.legs().get(i).overall())));
        out.append("; force on ").append(spoken(drop.legsInTimeTo().get(i))).append(": ");
        out.append(units.force(Scene.newtons(followed.points().get(i).overall()))).append('.');
      }
      for (Bar bar : bars()) {
        out.append(" Energy ").append(bar.name()).append(": ");
        out.append(PictureUnits.figures(units.energies(bar.joules()))).append(' ');
        out.append(units.energyUnit()).append('.');
      }
      return out.toString();
    }
  }
}
