package org.boleline.picture;

import java.io.StringWriter;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.boleline.units.QuantityText;

/** SVG text under way: elements, attributes and text, all escaped by the writer of the JDK. */
final class Svg {
  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final double DECIMALS = 1e5;
  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter xml;

  Svg() {
    try {
      xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
    } catch (XMLStreamException e) {
      throw new AssertionError("writing to memory", e);
    }
  }

  /** A coordinate on the sheet, to a hundred-thousandth of a pixel. */
  static String number(double value) {
    return QuantityText.number(Math.rint(value * DECIMALS) / DECIMALS + 0.0);
  }

  /** Coordinates of an SVG path, a line through all points. */
  static String line(List<Spot> points) {
    StringBuilder out = new StringBuilder();
    for (Spot p : points) {
      out.append(out.isEmpty() ? "M" : " L")
          .append(number(p.x()))
          .append(' ')
          .append(number(p.y()));
    }
    return out.toString();
  }

  /** Starts an element; names and values of attributes by turns, numbers as coordinates. */
  Svg open(String name, Object... attributes) {
    try {
      xml.writeCharacters("\n");
      xml.writeStartElement(name);
      if (name.equals("svg")) {
        xml.writeDefaultNamespace(NAMESPACE);
      }
      for (int i = 0; i < attributes.length; i += 2) {
        Object value = attributes[i + 1];
        xml.writeAttribute(
            attributes[i].toString(),
            value instanceof Double number ? number(number) : clean(value.toString()));
      }
      return this;
    } catch (XMLStreamException e) {
      throw new AssertionError("writing to memory", e);
    }
  }

  Svg close() {
    try {
      xml.writeEndElement();
      return this;
    } catch (XMLStreamException e) {
      throw new AssertionError("writing to memory", e);
    }
  }

  Svg leaf(String name, Object... attributes) {
    return open(name, attributes).close();
  }

  Svg text(String name, String content, Object... attributes) {
    open(name, attributes);
    try {
      xml.writeCharacters(clean(content));
    } catch (XMLStreamException e) {
      throw new AssertionError("writing to memory", e);
    }
    return close();
  }

  /** Text without what XML has no place for (XML 1.0, production 2). */
  private static String clean(String any) {
    StringBuilder out = new StringBuilder(any.length());
    any.codePoints().map(c -> isCharacter(c) ? c : 0xFFFD).forEach(out::appendCodePoint);
    return out.toString();
  }

  private static boolean isCharacter(int c) {
    return c == 0x9
        || c == 0xA
        || c == 0xD
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }

  /** The whole text, a line feed at its end. */
  String end() {
    try {
      xml.close();
      return text.toString().strip() + "\n";
    } catch (XMLStreamException e) {
      throw new AssertionError("writing to memory", e);
    }
  }
}
