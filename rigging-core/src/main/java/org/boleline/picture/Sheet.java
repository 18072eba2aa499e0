package org.boleline.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet under way: paper, title, headings, and at its foot what every picture must say.
 *
 * <p>Belongs to one picture and one thread.
 */
final class Sheet {
  static final double MARGIN = 10;

  /** A drawing that has less height than this is not begun. */
  static final double LEAST_ROOM = 40;

  private static final double BREAK = 6;
  private static final double SMALL = 10;
  private static final double SMALL_LINE = 13;
  private static final String DEFERRAL =
      "Numbers of a model, to be read with the cautions of their result. Local codes, makers'"
          + " instructions and the competent person on site decide.";

  private final PictureSpec spec;
  private final Svg svg = new Svg();
  private final double top;
  private final List<String> foot;

  Sheet(PictureSpec spec, String title, List<String> headings, String description) {
    this.spec = spec;
    String id = spec.id();
    svg.open(
        "svg",
        "viewBox",
        "0 0 " + spec.width() + " " + spec.height(),
        "width",
        spec.width(),
        "height",
        spec.height(),
        "id",
        id,
        "role",
        "img",
        "aria-labelledby",
        id + "-title " + id + "-desc",
        "font-family",
        Lettering.FONT,
        "font-size",
        Labels.SIZE);
    svg.text("title", title, "id", id + "-title");
    svg.text("desc", description, "id", id + "-desc");
    if (spec.theme() == Theme.AUTO) {
      svg.text("style", Paint.darkRules(id));
    }
    leaf("rect", Paint.PAPER, "paper", "width", spec.width(), "height", spec.height());
    double y = MARGIN;
    double room = spec.width() - 2 * MARGIN;
    for (int i = 0; i < headings.size(); i++) {
      double size = i == 0 ? 15 : i == 1 ? 13 : 11;
      int most = i < 2 ? 2 : Integer.MAX_VALUE;
      for (String line : Lettering.lines(headings.get(i), size, room / (i == 0 ? 1.1 : 1), most)) {
        y += Math.rint(size * 1.25);
        write(
            line,
            MARGIN,
            y,
            "font-size",
            size,
            "font-weight",
            i == 0 ? "bold" : "normal",
            "text-anchor",
            "start");
      }
    }
    top = y + 8;
    foot = Lettering.lines(DEFERRAL, SMALL, room, 4);
  }

  Svg svg() {
    return svg;
  }

  Theme theme() {
    return spec.theme();
  }

  /** What lies between headings and foot. */
  Rect body() {
    return new Rect(
        MARGIN, top, spec.width() - MARGIN, spec.height() - MARGIN - foot.size() * SMALL_LINE - 4);
  }

  void open(Paint paint, String ownClass, Object... attributes) {
    svg.open("g", paint.attributes(theme(), ownClass, attributes));
  }

  void close() {
    svg.close();
  }

  void leaf(String name, Paint paint, String ownClass, Object... attributes) {
    svg.leaf(name, paint.attributes(theme(), ownClass, attributes));
  }

  /** Text with its baseline at y. */
  void write(String text, double x, double y, Object... attributes) {
    List<Object> all = new ArrayList<>(List.of("x", x, "y", y));
    all.addAll(List.of(attributes));
    svg.text("text", text, Paint.INK.attributes(theme(), "", all.toArray()));
  }

  /** An arrow from a to b: its line and its head; the head alone where it is short. */
  void arrow(Spot a, Spot b, Paint line, Paint head, String ownClass, Object... more) {
    double size = Math.hypot(b.x() - a.x(), b.y() - a.y());
    List<Object> attributes =
        new ArrayList<>(List.of("x1", a.x(), "y1", a.y(), "x2", b.x(), "y2", b.y()));
    attributes.addAll(List.of(more));
    leaf("line", line, ownClass, attributes.toArray());
    if (size > 0) {
      double length = Math.min(size, 9);
      double dx = (b.x() - a.x()) / size;
      double dy = (b.y() - a.y()) / size;
      double half = 0.4 * length;
      double x = b.x() - dx * length;
      double y = b.y() - dy * length;
      leaf(
          "path",
          head,
          "",
          "stroke-width",
          0,
          "d",
          Svg.line(
                  List.of(
                      b,
                      new Spot(x - dy * half, y + dx * half),
                      new Spot(x + dy * half, y - dx * half)))
              + " Z");
    }
  }

  /** Two short strokes across a line, a little before its end: it goes on from there. */
  void breakMark(Spot a, Spot b) {
    double size = a.distance(b);
    if (size < 4 * BREAK) {
      return;
    }
    double dx = (b.x() - a.x()) / size;
    double dy = (b.y() - a.y()) / size;
    StringBuilder strokes = new StringBuilder();
    for (double back : new double[] {BREAK, 2 * BREAK}) {
      Spot middle = b.plus(-back * dx, -back * dy);
      // Aslant, so that they are not taken for ticks of a scale.
      double x = BREAK * (0.5 * dx - dy);
      double y = BREAK * (0.5 * dy + dx);
      strokes.append(strokes.isEmpty() ? "" : " ");
      strokes.append(Svg.line(List.of(middle.plus(-x, -y), middle.plus(x, y))));
    }
    leaf("path", Paint.LINE, "break", "stroke-width", 1.5, "d", strokes.toString());
  }

  /** The labels in their places, with their leaders. */
  void labels(Labels labels) {
    for (Labels.Placed label : labels.placed()) {
      Spot anchor = label.anchor();
      if (label.led()) {
        Spot near = label.room().nearest(anchor.x(), anchor.y());
        leaf(
            "line",
            Paint.FAINT,
            "leader",
            "x1",
            near.x(),
            "y1",
            near.y(),
            "x2",
            anchor.x(),
            "y2",
            anchor.y(),
            "stroke-width",
            1);
      }
    }
    for (Labels.Placed label : labels.placed()) {
      Rect room = label.room();
      svg.open(
          "g",
          "class",
          "label " + label.kind(),
          "text-anchor",
          "middle",
          "data-room",
          Svg.number(room.left())
              + " "
              + Svg.number(room.top())
              + " "
              + Svg.number(room.right())
              + " "
              + Svg.number(room.bottom()),
          "data-at",
          Svg.number(label.anchor().x()) + " " + Svg.number(label.anchor().y()));
      for (int i = 0; i < label.lines().size(); i++) {
        svg.text(
            "text",
            label.lines().get(i),
            Paint.LETTER.attributes(
                theme(),
                "",
                "x",
                room.middleX(),
                "y",
                room.top() + 2 + Labels.LINE_HEIGHT * (i + 0.78),
                "stroke-width",
                3,
                "stroke-linejoin",
                "round",
                "paint-order",
                "stroke",
                "font-weight",
                i == 0 && label.lines().size() > 1 ? "bold" : "normal"));
      }
      svg.close();
    }
  }

  /** Ends a sheet that has no room for its drawing, and says so. */
  String tooSmall() {
    String text = "The sheet is too small for the drawing; see the table.";
    double y = top + 11;
    for (String line : Lettering.lines(text, 11, body().width(), 2)) {
      write(line, MARGIN, y, "font-size", 11);
      y += 14;
    }
    return end();
  }

  String end() {
    double y = spec.height() - MARGIN - (foot.size() - 1) * SMALL_LINE - 2;
    for (String line : foot) {
      write(line, MARGIN, y, "font-size", SMALL);
      y += SMALL_LINE;
    }
    svg.close();
    return svg.end();
  }
}
