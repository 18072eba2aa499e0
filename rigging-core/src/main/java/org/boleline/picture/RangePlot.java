package org.boleline.picture;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
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
   * A result with its quantiles.
   *
   * <p>Immutable and thread-safe.
   */
  public static final class Spread {
    private final String name;
    private final Kind<?> kind;
    private final List<Double> quantiles;

    private Spread(String name, Kind<?> kind, List<Double> quantiles) {
      this.name = name;
      this.kind = kind;
      this.quantiles = quantiles;
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
      requireNonNull(name, "name");
      requireNonNull(kind, "kind");
      if (siQuantiles.length != QUANTILES) {
        throw new IllegalArgumentException(
            "quantiles: wants five numbers, got " + siQuantiles.length);
      }
      List<Double> quantiles = new ArrayList<>();
      for (double value : siQuantiles) {
        double before = quantiles.isEmpty() ? value : quantiles.get(quantiles.size() - 1);
        if (!Double.isFinite(value) || value < before) {
          throw new IllegalArgumentException(
              "quantiles: wants finite numbers that do not fall, got " + value);
        }
        quantiles.add(value);
      }
      return new Spread(name, kind, List.copyOf(quantiles));
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
   * Obtains the plot.
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
    headings.add("From quantile to quantile: thin 5 to 95 %, wide 25 to 75 %, line 50 %");
    StringBuilder description = new StringBuilder();
    for (Spread spread : spreads) {
      description.append(spread.name).append(": ");
      for (int i = 0; i < QUANTILES; i++) {
        description.append(i == 0 ? "" : ", ").append(text(spread, i, spec.units()));
      }
      description.append(". ");
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
      draw(sheet, new Rect(body.left(), y, body.right(), y + row), spread, spec.units());
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

  private static String text(Spread spread, int quantile, PictureUnits units) {
    return units.text(spread.quantiles.get(quantile), spread.kind);
  }

  /** One result: its name, then its quantiles from the lesser of zero and the least to the most. */
  private static void draw(Sheet sheet, Rect room, Spread spread, PictureUnits units) {
    double from = Math.min(0, spread.quantiles.get(0));
    double to = Math.max(0, spread.quantiles.get(QUANTILES - 1));
    double left = room.left() + 4;
    double scale = to > from ? (room.width() - 8) / (to - from) : 0;
    List<Double> x = spread.quantiles.stream().map(q -> left + scale * (q - from)).toList();
    double y = room.bottom() - 10;
    String ends = text(spread, 0, units) + " to " + text(spread, QUANTILES - 1, units);
    double nameWidth = Lettering.width(spread.name, SMALL) * 1.1 + 12;
    String all = ends + ", middle " + text(spread, 2, units);
    String numbers = nameWidth + Lettering.width(all, SMALL) > room.width() ? ends : all;
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
    rule(sheet, left, left + scale * (to - from), y, Paint.FAINT, 0.5);
    rule(sheet, x.get(0), x.get(4), y, Paint.LINE, 1.4);
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
    for (int i : new int[] {0, 2, 4}) {
      sheet.leaf(
          "line",
          Paint.LINE,
          "quantile",
          "x1",
          x.get(i),
          "x2",
          x.get(i),
          "y1",
          y - (i == 2 ? 8 : 4),
          "y2",
          y + (i == 2 ? 8 : 4),
          "stroke-width",
          i == 2 ? 2.4 : 1.4);
    }
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
