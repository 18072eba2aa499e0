package org.boleline.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** A picture read back from its SVG, as a program that shares nothing with the writer sees it. */
final class Drawn {
  private final Element root;

  Drawn(String svg) {
    try {
      root =
          DocumentBuilderFactory.newDefaultInstance()
              .newDocumentBuilder()
              .parse(new InputSource(new StringReader(svg)))
              .getDocumentElement();
    } catch (ParserConfigurationException | SAXException | IOException e) {
      throw new AssertionError("not XML: " + svg, e);
    }
  }

  Element root() {
    return root;
  }

  static List<Element> all(Element within, String tag) {
    List<Element> found = new ArrayList<>();
    NodeList nodes = within.getElementsByTagName(tag);
    for (int i = 0; i < nodes.getLength(); i++) {
      found.add((Element) nodes.item(i));
    }
    return found;
  }

  static List<Element> ofClass(Element within, String name) {
    return all(within, "*").stream()
        .filter(e -> Arrays.asList(e.getAttribute("class").split(" ", -1)).contains(name))
        .toList();
  }

  static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  /** What stands on the sheet, line by line. */
  static List<String> texts(Element within) {
    return all(within, "text").stream().map(Element::getTextContent).toList();
  }

  /** Whether two lines cross. */
  static boolean cross(double[] a, double[] b, double[] c, double[] d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(double[] a, double[] b, double[] p) {
    return Math.signum((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]));
  }

  Element side() {
    return ofClass(root, "view-side").get(0);
  }

  List<Element> views() {
    return ofClass(root, "view");
  }

  /** The points of a path of straight lines, on the sheet. */
  static List<double[]> path(Element path) {
    List<double[]> points = new ArrayList<>();
    String[] numbers = path.getAttribute("d").replaceAll("[MLZ]", " ").strip().split("\\s+", -1);
    for (int i = 0; i < numbers.length; i += 2) {
      points.add(new double[] {Double.parseDouble(numbers[i]), Double.parseDouble(numbers[i + 1])});
    }
    return points;
  }

  static List<double[]> line(Element line) {
    return List.of(
        new double[] {number(line, "x1"), number(line, "y1")},
        new double[] {number(line, "x2"), number(line, "y2")});
  }

  /**
   * From the sheet back to the site: metres along the azimuth of the view, and upward or across.
   */
  static double[] site(Element view, double[] onSheet) {
    double scale = number(view, "data-scale");
    return new double[] {
      (onSheet[0] - number(view, "data-left")) / scale,
      (number(view, "data-top") - onSheet[1]) / scale
    };
  }

  /** From the sheet back to the numbers of a chart: across and up. */
  static double[] numbers(Element chart, double[] onSheet) {
    return new double[] {
      (onSheet[0] - number(chart, "data-left")) / number(chart, "data-across"),
      number(chart, "data-least")
          + (number(chart, "data-bottom") - onSheet[1]) / number(chart, "data-up")
    };
  }

  /** Where a place of the site should be, by the words of the format. */
  static double[] wanted(Element view, double[] place) {
    double azimuth = Math.toRadians(number(view, "data-azimuth"));
    double along = place[0] * Math.cos(azimuth) + place[1] * Math.sin(azimuth);
    double across = place[1] * Math.cos(azimuth) - place[0] * Math.sin(azimuth);
    boolean above = view.getAttribute("class").contains("view-above");
    return new double[] {along, above ? across : place[2]};
  }

  /** Rooms of all labels: left, top, right, bottom. */
  static List<double[]> rooms(Element within) {
    return ofClass(within, "label").stream().map(label -> numbers(label, "data-room")).toList();
  }

  /** Numbers with blanks between them. */
  static double[] numbers(Element element, String attribute) {
    return Arrays.stream(element.getAttribute(attribute).split(" ", -1))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  /** How far the room of a label is from a place on the sheet. */
  static double away(Element label, double[] place) {
    double[] room = numbers(label, "data-room");
    return Math.hypot(
        Math.max(room[0], Math.min(room[2], place[0])) - place[0],
        Math.max(room[1], Math.min(room[3], place[1])) - place[1]);
  }

  /** The names in a view: of points, marks and tips, bases, the piece and the tagline. */
  static List<Element> names(Element view) {
    List<Element> names = new ArrayList<>();
    for (String kind :
        List.of("force-name", "mark-name", "base-name", "piece-name", "tagline-name", "number")) {
      names.addAll(ofClass(view, kind));
    }
    return names;
  }

  /**
   * Whether no other thing that has a name lies nearer to a label than its own. Things less than a
   * pixel apart are one to the eye.
   */
  static boolean isNearestToItsOwn(Element view, Element label) {
    double[] at = numbers(label, "data-at");
    return names(view).stream()
        .map(other -> numbers(other, "data-at"))
        .filter(other -> Math.hypot(other[0] - at[0], other[1] - at[1]) > 1.001)
        .allMatch(other -> away(label, other) >= away(label, at));
  }

  /** A label is nearer to what it names than to any other such thing, or a line leads there. */
  void checkNames(String of) {
    for (Element view : views()) {
      List<double[]> led =
          ofClass(view, "leader").stream().map(leader -> line(leader).get(1)).toList();
      for (Element label : ofClass(view, "label")) {
        double[] at = numbers(label, "data-at");
        boolean isLed =
            led.stream().anyMatch(end -> Math.hypot(end[0] - at[0], end[1] - at[1]) == 0);
        assertThat(isLed || (away(label, at) < 10 && isNearestToItsOwn(view, label)))
            .as("%s: %s at what it names", of, label.getTextContent())
            .isTrue();
      }
    }
  }

  void checkLabels(String of) {
    double[] sheet =
        Arrays.stream(root.getAttribute("viewBox").split(" ", -1))
            .mapToDouble(Double::parseDouble)
            .toArray();
    List<double[]> rooms = rooms(root);
    for (int i = 0; i < rooms.size(); i++) {
      double[] a = rooms.get(i);
      assertThat(a[0] >= 0 && a[1] >= 0 && a[2] <= sheet[2] && a[3] <= sheet[3])
          .as("%s: label %s on the sheet", of, Arrays.toString(a))
          .isTrue();
      for (int j = 0; j < i; j++) {
        double[] b = rooms.get(j);
        assertThat(a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3])
            .as("%s: labels %s and %s overlap", of, Arrays.toString(a), Arrays.toString(b))
            .isFalse();
      }
    }
  }

  void checkOnSheet(String of) {
    double width = number(root, "width");
    double height = number(root, "height");
    List<double[]> points = new ArrayList<>();
    for (Element line : all(root, "line")) {
      points.addAll(line(line));
    }
    for (String kind : List.of("stem-loaded", "stem-unloaded", "axis", "sling", "piece", "line")) {
      ofClass(root, kind).forEach(e -> points.addAll(path(e)));
    }
    for (Element circle : all(root, "circle")) {
      points.add(new double[] {number(circle, "cx"), number(circle, "cy")});
    }
    for (Element rect : all(root, "rect")) {
      double x = rect.hasAttribute("x") ? number(rect, "x") : 0;
      double y = rect.hasAttribute("y") ? number(rect, "y") : 0;
      points.add(new double[] {x, y});
      points.add(new double[] {x + number(rect, "width"), y + number(rect, "height")});
    }
    for (double[] p : points) {
      assertThat(p[0] >= 0 && p[0] <= width && p[1] >= 0 && p[1] <= height)
          .as("%s: %s on the sheet of %s by %s", of, Arrays.toString(p), width, height)
          .isTrue();
    }
  }
}
