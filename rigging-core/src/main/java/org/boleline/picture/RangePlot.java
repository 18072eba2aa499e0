package org.boleline.picture;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.boleline.units.Kind;

/**
 * How far results spread, and which inputs the spread comes from.
 *
 * <p>Drawn from plain named numbers, whatever study they come from. Immutable and thread-safe.
 */
public final class RangePlot {
  private static final int QUANTILES = 5;
  private static final double ROW = 40;
  private static final double SHARE_ROW = 19;
  private static final double SMALL = 11;
  private final String svg;

  private RangePlot(String svg) {
    this.svg = svg;
  }

  /**
   * A result with its quantiles, or with its ends alone where nobody knows which part is likelier.
   *
   * <p>Immutable and thread-safe.
   */
  public static final class Spread {
    private final String name;
    private final Kind<?> kind;

    /** Five quantiles, or two ends. */
    private final List<Double> values;

    private Spread(String name, Kind<?> kind, List<Double> values) {
      this.name = name;
      this.kind = kind;
      this.values = values;
    }

    /**
     * Obtains the spread of a result.
     *
     * @param <Q> the quantity of the result
     * @param name what it is, in a few words, not null
     * @param kind the kind whose SI unit the numbers are in, not null
     * @param siQuantiles exactly five finite numbers that do not fall: the 5 %, 25 %, 50 %, 75 %
     *     and 95 % quantiles
     * @return the spread
     * @throws IllegalArgumentException if there are not five, one is not finite, or they fall
     */
    public static <Q extends Quantity<Q>> Spread of(
        String name, Kind<Q> kind, double... siQuantiles) {
      if (siQuantiles.length != QUANTILES) {
        throw new IllegalArgumentException(
            "quantiles: wants five numbers, got " + siQuantiles.length);
      }
      return checked(name, kind, siQuantiles);
    }

    /**
     * Obtains the spread of a result of which only the ends are known.
     *
     * @param <Q> the quantity of the result
     * @param name what it is, in a few words, not null
     * @param kind the kind whose SI unit the numbers are in, not null
     * @param siLeast the least found, finite
     * @param siGreatest the greatest found, finite, not below the least
     * @return the spread
     * @throws IllegalArgumentException if one is not finite, or they fall
     */
    public static <Q extends Quantity<Q>> Spread between(
        String name, Kind<Q> kind, double siLeast, double siGreatest) {
      return checked(name, kind, siLeast, siGreatest);
    }

    private static Spread checked(String name, Kind<?> kind, double... si) {
      requireNonNull(name, "name");
      requireNonNull(kind, "kind");
      List<Double> values = new ArrayList<>();
      for (double value : si) {
        double before = values.isEmpty() ? value : values.get(values.size() - 1);
        if (!Double.isFinite(value) || value < before) {
          throw new IllegalArgumentException(
              "quantiles: wants finite numbers that do not fall, got " + value);
        }
        values.add(value);
      }
      return new Spread(name, kind, List.copyOf(values));
    }

    private boolean hasQuantiles() {
      return values.size() == QUANTILES;
    }

    private double least() {
      return values.get(0);
    }

    private double greatest() {
      return values.get(values.size() - 1);
    }
  }

  /**
   * How much of the spread an input stands for.
   *
   * @param name what the input is, in a few words
   * @param share its share, from 0 to 1
   */
  public record Cause(String name, double share) {
    /**
     * Obtains the share of an input.
     *
     * @param name what the input is, in a few words
     * @param share its share, from 0 to 1
     * @throws IllegalArgumentException if the share is outside its range
     */
    public Cause {
      requireNonNull(name, "name");
      if (!(share >= 0 && share <= 1)) {
        throw new IllegalArgumentException("share: wants 0 to 1, got " + share);
      }
    }
  }

  /**
   * Obtains the plot. Results of one kind share a scale, which begins at zero if all of them lie on
   * one side of it.
   *
   * @param title what spreads, in a few words, not null
   * @param spreads at least one result, not null
   * @param ofWhat the result whose spread the causes share, in a few words, not null
   * @param causes the inputs, the one that matters most first; may be empty, not null
   * @param spec how the picture is wanted; it uses width, theme and units, not null
   * @return the plot
   * @throws IllegalArgumentException if there is no result
   */
  public static RangePlot of(
      String title, List<Spread> spreads, String ofWhat, List<Cause> causes, PictureSpec spec) {
    if (spreads.isEmpty()) {
      throw new IllegalArgumentException("spreads: wants at least one, got none");
    }
    List<String> headings = new ArrayList<>();
    headings.add(title);
    if (spreads.stream().anyMatch(Spread::hasQuantiles)) {
      headings.add("From quantile to quantile: thin 5 to 95 %, wide 25 to 75 %, line 50 %");
    }
    if (!spreads.stream().allMatch(Spread::hasQuantiles)) {
      boolean some = spreads.stream().anyMatch(Spread::hasQuantiles);
      headings.add(
          (some ? "A thin line alone: from" : "From")
              + " the least to the greatest that was found");
    }
    StringBuilder description = new StringBuilder();
    for (Spread spread : spreads) {
      String values =
          spread.values.stream()
              .map(value -> spec.units().text(value, spread.kind))
              .collect(Collectors.joining(", "));
      description.append(spread.name).append(spread.hasQuantiles() ? ": " : ", ends: ");
      description.append(values).append(". ");
    }
    for (Cause cause : causes) {
      description.append(cause.name()).append(": ").append(percent(cause)).append(" of the spread");
      description.append(" of ").append(ofWhat).append(". ");
    }
    Sheet sheet = new Sheet(spec, title, headings, description.toString());
    Rect body = sheet.body();
    double shares = causes.isEmpty() ? 0 : causes.size() * SHARE_ROW + 26;
    double row = Math.min(ROW, (body.height() - shares) / spreads.size());
    double y = body.top() + 4;
    for (Spread spread : spreads) {
      List<Spread> alike =
          spreads.stream().filter(other -> other.kind.equals(spread.kind)).toList();
      double from = alike.stream().mapToDouble(Spread::least).min().orElse(0);
      double to = alike.stream().mapToDouble(Spread::greatest).max().orElse(0);
      Rect room = new Rect(body.left(), y, body.right(), y + row);
      draw(sheet, room, spread, new Ends(Math.min(0, from), Math.max(0, to)), spec.units());
      y += row;
    }
    if (!causes.isEmpty()) {
      double least = Math.min(body.bottom(), y + 8 + shares);
      sheet.write(
          "what the spread of " + ofWhat + " comes from",
          body.left(),
          y + 20,
          "font-size",
          SMALL,
          "font-weight",
          "bold");
      BarRows.draw(
          sheet,
          new Rect(body.left(), y + 28, body.right(), least),
          causes.stream().map(Cause::name).toList(),
          causes.stream().map(Cause::share).toList(),
          causes.stream().map(RangePlot::percent).toList());
    }
    return new RangePlot(sheet.end());
  }

  private static String percent(Cause cause) {
    return PictureUnits.number(100 * cause.share()) + " %";
  }

  /** The ends of a scale. */
  private record Ends(double from, double to) {}

  /** One result: its name, then its values on its scale. */
  private static void draw(Sheet sheet, Rect room, Spread spread, Ends ends, PictureUnits units) {
    double left = room.left() + 4;
    double scale = ends.to() > ends.from() ? (room.width() - 8) / (ends.to() - ends.from()) : 0;
    List<Double> x = spread.values.stream().map(q -> left + scale * (q - ends.from())).toList();
    double y = room.bottom() - 10;
    String numbers = numbers(spread, room.width(), units);
    double endWidth = Lettering.width(numbers, SMALL);
    sheet.write(
        Lettering.cut(spread.name, SMALL, room.width() - endWidth - 12),
        room.left(),
        room.top() + 11,
        "font-size",
        SMALL,
        "font-weight",
        "bold");
    sheet.write(numbers, room.right(), room.top() + 11, "font-size", SMALL, "text-anchor", "end");
    rule(sheet, left, left + scale * (ends.to() - ends.from()), y, Paint.FAINT, 0.5);
    rule(sheet, x.get(0), x.get(x.size() - 1), y, Paint.LINE, 1.4);
    if (spread.hasQuantiles()) {
      sheet.leaf(
          "rect",
          Paint.FILL,
          "middle-half",
          "x",
          x.get(1),
          "y",
          y - 5,
          "width",
          x.get(3) - x.get(1),
          "height",
          10.0,
          "stroke-width",
          1);
      tick(sheet, "quantile", x.get(0), y, 4);
      tick(sheet, "quantile", x.get(2), y, 8);
      tick(sheet, "quantile", x.get(4), y, 4);
    } else {
      x.forEach(end -> tick(sheet, "end", end, y, 4));
    }
  }

  /** The ends in figures, and the middle where there is one and room for it. */
  private static String numbers(Spread spread, double width, PictureUnits units) {
    String ends =
        units.text(spread.least(), spread.kind)
            + " to "
            + units.text(spread.greatest(), spread.kind);
    if (!spread.hasQuantiles()) {
      return ends;
    }
    double nameWidth = Lettering.width(spread.name, SMALL) * 1.1 + 12;
    String all = ends + ", middle " + units.text(spread.values.get(2), spread.kind);
    return nameWidth + Lettering.width(all, SMALL) > width ? ends : all;
  }

  private static void tick(Sheet sheet, String ownClass, double x, double y, double half) {
    sheet.leaf(
        "line",
        Paint.LINE,
        ownClass,
        "x1",
        x,
        "x2",
        x,
        "y1",
        y - half,
        "y2",
        y + half,
        "stroke-width",
        half > 4 ? 2.4 : 1.4);
  }

  private static void rule(Sheet sheet, double x1, double x2, double y, Paint ink, double weight) {
    sheet.leaf("line", ink, "", "x1", x1, "y1", y, "x2", x2, "y2", y, "stroke-width", weight);
  }

  /**
   * Returns the picture.
   *
   * @return an SVG element as text, to be a file of its own or part of a page
   */
  public String svg() {
    return svg;
  }
}
