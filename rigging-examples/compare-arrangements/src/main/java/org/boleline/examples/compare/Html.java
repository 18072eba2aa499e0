package org.boleline.examples.compare;

import java.io.StringWriter;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** HTML under way, well-formed as XML too; the writer of the JDK escapes attributes and text. */
final class Html {
  private final StringWriter out = new StringWriter();
  private final XMLStreamWriter xml;

  Html() {
    out.append("<!DOCTYPE html>\n");
    try {
      xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(out);
    } catch (XMLStreamException e) {
      throw new AssertionError("writing to memory", e);
    }
  }

  /** Starts an element on a line of its own; names and values of attributes by turns. */
  Html open(String name, String... attributes) {
    return written(
        () -> {
          xml.writeCharacters("\n");
          xml.writeStartElement(name);
          attributes(attributes);
        });
  }

  Html close() {
    return written(xml::writeEndElement);
  }

  /** An element that has no content and no end. */
  Html single(String name, String... attributes) {
    return written(
        () -> {
          xml.writeCharacters("\n");
          xml.writeEmptyElement(name);
          attributes(attributes);
        });
  }

  /** Text in the element under way. */
  Html words(String content) {
    return written(() -> xml.writeCharacters(content));
  }

  /** An element with text, in the line under way. */
  Html text(String name, String content, String... attributes) {
    return written(
        () -> {
          xml.writeStartElement(name);
          attributes(attributes);
          xml.writeCharacters(content);
          xml.writeEndElement();
        });
  }

  /** Takes in what is markup already, such as a picture of the library. */
  Html markup(String markup) {
    return written(
        () -> {
          xml.writeCharacters("\n");
          xml.flush();
          out.append(markup.strip());
        });
  }

  private void attributes(String... attributes) throws XMLStreamException {
    for (int i = 0; i < attributes.length; i += 2) {
      xml.writeAttribute(attributes[i], attributes[i + 1]);
    }
  }

  private interface Writing {
    void write() throws XMLStreamException;
  }

  private Html written(Writing writing) {
    try {
      writing.write();
      return this;
    } catch (XMLStreamException e) {
      throw new AssertionError("writing to memory", e);
    }
  }

  /** The whole page, a line feed at its end. */
  String end() {
    written(xml::close);
    return out.toString().strip() + "\n";
  }
}
