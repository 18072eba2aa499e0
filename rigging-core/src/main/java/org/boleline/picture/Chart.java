package org.boleline.picture;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.Collectors;
import org.boleline.units.QuantityText;

/**
 * A panel with two axes and lines in it; the axes carry round numbers and their units.
 *
 * <p>Belongs to one picture and one thread.
 */
final class Chart {
  /** Lines tell apart by dashes and ink, so that neither is needed alone. */
  private static final List<Paint> INKS =
      List.of(Paint.ROPE, Paint.FORCE, Paint.MOVEMENT, Paint.PURPLE, Paint.ORANGE, Paint.LINE);

  private static final List<String> DASHES =
      List.of("none", "8 3", "2 3", "10 3 2 3", "14 4", "5 2 1 2 1 2");

  private static final double SMALL = 11;
  private static final double LEFT = 46;
  private static final double BELOW = 32;
  private static final double ABOVE = 20;

  private static final double TOGETHER = 9;
  private static final double MOST_LABEL = 0.8;
  private static final double BOLDER = 1.1;

  private record Mark(double across, double up, String name, String unit, String where) {}

  private final Sheet sheet;
  private final Rect inner;
  private final Labels labels;
  private final double mostAcross;
  private double least;
  private double most;
  private final List<Mark> marks = new ArrayList<>();
  private final List<List<Spot>> lines = new ArrayList<>();

  /** A chart in a room of the sheet; numbers across run from zero. */
  Chart(Sheet sheet, Rect room, double mostAcross) {
    this.sheet = sheet;
    this.mostAcross = mostAcross > 0 ? mostAcross : 1;
    inner =
        new Rect(room.left() + LEFT, room.top() + ABOVE, room.right() - 12, room.bottom() - BELOW);
    labels = new Labels(inner);
  }

  static Paint ink(int index) {
    return INKS.get(index % INKS.size());
  }

  static String dashes(int index) {
    // After a round of inks the dashes are moved on, so that 36 lines differ.
    return DASHES.get((index + index / INKS.size()) % DASHES.size());
  }

  /** Adds a line to be drawn, by its numbers across and up. */
  void add(double[] across, double[] up) {
    List<Spot> line = new ArrayList<>();
    for (int i = 0; i < across.length; i++) {
      line.add(new Spot(across[i], up[i]));
      least = Math.min(least, up[i]);
      most = Math.max(most, up[i]);
    }
    lines.add(line);
  }

  private Spot on(Spot numbers) {
    return new Spot(
        inner.left() + inner.width() * numbers.x() / mostAcross,
        inner.bottom() - inner.height() * (numbers.y() - least) / (most - least));
  }

  /** A round step that makes at most as many as that. */
  private static double step(double range, int count) {
    double step = PictureUnits.round(range / count);
    while (range / step > count) {
      step = PictureUnits.round(step * 2.5);
    }
    return step;
  }

  /** Draws axes and lines; titles tell what is up and what is across. */
  void draw(String up, String across) {
    double step = step(most > least ? most - least : 1, 5);
    least = step * Math.floor(least / step + 1e-9);
    least = Math.abs(least) < 1e-12 * step ? 0 : least;
    most = Math.max(least + step, step * Math.ceil(most / step));
    sheet
        .svg()
        .open(
            "g",
            "class",
            "chart",
            "data-left",
            inner.left(),
            "data-bottom",
            inner.bottom(),
            "data-across",
            QuantityText.number(inner.width() / mostAcross),
            "data-up",
            QuantityText.number(inner.height() / (most - least)),
            "data-least",
            QuantityText.number(least));
    sheet.write(
        up, inner.left() - LEFT, inner.top() - 7, "font-size", SMALL, "font-weight", "bold");
    sheet.write(
        across, inner.right(), inner.bottom() + 27, "font-size", SMALL, "text-anchor", "end");
    int count = (int) Math.rint((most - least) / step);
    for (int i = 0; i <= count; i++) {
      double value = least + i * step;
      double y = on(new Spot(0, value)).y();
      rule(inner.left(), y, inner.right(), y, Math.abs(value) < 1e-9 * step);
      sheet.write(
          PictureUnits.number(value),
          inner.left() - 5,
          y + 4,
          "font-size",
          SMALL,
          "text-anchor",
          "end");
    }
    double wide = step(mostAcross, 8);
    for (int i = 0; i * wide <= mostAcross * (1 + 1e-9); i++) {
      double x = on(new Spot(i * wide, least)).x();
      rule(x, inner.bottom(), x, inner.bottom() + 4, true);
      sheet.write(
          PictureUnits.number(i * wide),
          x,
          inner.bottom() + 15,
          "font-size",
          SMALL,
          "text-anchor",
          "middle");
    }
    for (int i = 0; i < lines.size(); i++) {
      List<Spot> line = lines.get(i).stream().map(this::on).toList();
      sheet.leaf(
          "path",
          ink(i),
          "line",
          "stroke-width",
          1.8,
          "stroke-linejoin",
          "round",
          "stroke-dasharray",
          dashes(i),
          "data-line",
          i,
          "d",
          Svg.line(line));
      labels.avoid(line);
    }
  }

  private void rule(double x1, double y1, double x2, double y2, boolean strong) {
    sheet.leaf(
        "line",
        strong ? Paint.LINE : Paint.FAINT,
        "",
        "x1",
        x1,
        "y1",
        y1,
        "x2",
        x2,
        "y2",
        y2,
        "stroke-width",
        strong ? 1.0 : 0.4);
  }

  /**
   * Marks a place on a line; places that nearly coincide share one label.
   *
   * @param name name or number of the line
   * @param unit unit of the numbers up
   * @param where told behind the number, with a blank before it; may be empty
   */
  void mark(double across, double up, String name, String unit, String where) {
    marks.add(new Mark(across, up, name, unit, where));
  }

  /** Names what was marked and ends the chart. */
  void end() {
    marks.forEach(m -> labels.thing(on(m)));
    List<Mark> open = new ArrayList<>(marks);
    while (!open.isEmpty()) {
      Mark first = open.get(0);
      Spot p = on(first);
      List<Mark> together =
          open.stream()
              .filter(m -> m.where().equals(first.where()))
              .filter(m -> on(m).distance(p) < TOGETHER)
              .toList();
      open.removeAll(together);
      together.forEach(m -> dot(on(m)));
      labels.avoid(List.of(p.plus(-3, 0), p.plus(3, 0)));
      labels.place(text(together), "mark", p, new Spot(1, -1));
    }
    sheet.labels(labels);
    if (labels.leftOut() > 0) {
      sheet.write(
          Labels.leftOutText(labels.leftOut()),
          inner.left() - LEFT,
          inner.bottom() + 27,
          "font-size",
          SMALL);
    }
    sheet.svg().close();
  }

  private Spot on(Mark mark) {
    return on(new Spot(mark.across(), mark.up()));
  }

  private void dot(Spot p) {
    sheet.leaf(
        "circle", Paint.INK, "greatest", "stroke-width", 0, "cx", p.x(), "cy", p.y(), "r", 2.6);
  }

  /** Names and values in one line, or in as many as they need. */
  private List<String> text(List<Mark> marks) {
    String names = marks.stream().map(Mark::name).collect(Collectors.joining(", ")) + ":";
    DoubleSummaryStatistics up = marks.stream().mapToDouble(Mark::up).summaryStatistics();
    String least = PictureUnits.figures(up.getMin());
    String most = PictureUnits.figures(up.getMax());
    String values =
        (least.equals(most) ? least : least + " to " + most)
            + " "
            + marks.get(0).unit()
            + marks.get(0).where();
    double room = MOST_LABEL * inner.width();
    if (Lettering.width(names + " " + values, Labels.SIZE) <= room) {
      return List.of(names + " " + values);
    }
    List<String> lines =
        new ArrayList<>(Lettering.lines(names, Labels.SIZE, room / BOLDER, Integer.MAX_VALUE));
    lines.addAll(Lettering.lines(values, Labels.SIZE, room, Integer.MAX_VALUE));
    return lines;
  }

  static Legend legend(Sheet sheet, List<String> names) {
    Legend legend = new Legend(sheet);
    for (int i = 0; i < names.size(); i++) {
      legend.line(names.get(i), ink(i), 1.8, dashes(i));
    }
    return legend;
  }

  /** Whether a room leaves too little between a chart's title and the numbers below it. */
  static boolean isTooSmall(Rect room) {
    return room.height() - ABOVE - BELOW < Sheet.LEAST_ROOM;
  }

  /** Cuts a room into panels, one below the other. */
  static List<Rect> panels(Rect room, int count) {
    List<Rect> panels = new ArrayList<>();
    double high = room.height() / count;
    for (int i = 0; i < count; i++) {
      panels.add(
          new Rect(room.left(), room.top() + i * high, room.right(), room.top() + (i + 1) * high));
    }
    return panels;
  }
}
