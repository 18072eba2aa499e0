package org.boleline.working.problem;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/** A problem as an assessment item of QTI 2.1. */
final class QtiItem {
  private static final String NAMESPACE = "http://www.imsglobal.org/xsd/imsqti_v2p1";
  private static final String RESPONSE = "RESPONSE";
  private static final String FEEDBACK = "FEEDBACK";
  private static final String NONE = "none";

  private final Problem problem;
  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter xml;

  QtiItem(Problem problem) {
    this.problem = problem;
    try {
      this.xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  String xml() {
    try {
      xml.writeStartDocument("UTF-8", "1.0");
      start("assessmentItem");
      xml.writeDefaultNamespace(NAMESPACE);
      attribute(
          "identifier",
          problem.kind().name().toLowerCase(Locale.ROOT)
              + "-"
              + problem.level().number()
              + "-"
              + problem.seed());
      attribute("title", problem.title());
      attribute("adaptive", "false");
      attribute("timeDependent", "false");
      declarations();
      body();
      processing();
      feedback();
      xml.writeEndElement();
      xml.writeEndDocument();
      xml.flush();
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
    return text + "\n";
  }

  private void declarations() throws XMLStreamException {
    start("responseDeclaration");
    declare(RESPONSE, "float");
    start("correctResponse");
    element("value", number(problem.answer()));
    xml.writeEndElement();
    xml.writeEndElement();
    outcome("SCORE", "float", "0");
    outcome(FEEDBACK, "identifier", NONE);
  }

  private void outcome(String identifier, String type, String value) throws XMLStreamException {
    start("outcomeDeclaration");
    declare(identifier, type);
    start("defaultValue");
    element("value", value);
    xml.writeEndElement();
    xml.writeEndElement();
  }

  private void declare(String identifier, String type) throws XMLStreamException {
    attribute("identifier", identifier);
    attribute("cardinality", "single");
    attribute("baseType", type);
  }

  private void body() throws XMLStreamException {
    start("itemBody");
    element("p", problem.question());
    start("p");
    String unit = problem.acceptedUnits().get(0);
    xml.writeCharacters(
        unit.equals("1")
            ? "Answer, to three figures: "
            : "Answer in " + unit + ", to three figures: ");
    xml.writeEmptyElement("textEntryInteraction");
    attribute("responseIdentifier", RESPONSE);
    attribute("expectedLength", "12");
    xml.writeEndElement();
    start("rubricBlock");
    attribute("view", "tutor scorer");
    element("pre", problem.solution().plainText());
    xml.writeEndElement();
    xml.writeEndElement();
  }

  private void processing() throws XMLStreamException {
    start("responseProcessing");
    start("responseCondition");
    start("responseIf");
    near(number(problem.answer()));
    set("SCORE", "float", "1");
    set(FEEDBACK, "identifier", "right");
    xml.writeEndElement();
    List<WrongAnswer> wrong = problem.wrongAnswers();
    for (int i = 0; i < wrong.size(); i++) {
      start("responseElseIf");
      near(number(wrong.get(i).value()));
      set(FEEDBACK, "identifier", "slip-" + (i + 1));
      xml.writeEndElement();
    }
    start("responseElse");
    set(FEEDBACK, "identifier", "wrong");
    xml.writeEndElement();
    xml.writeEndElement();
    xml.writeEndElement();
  }

  /** An absolute tolerance: a relative one turns round where the answer is negative. */
  private void near(String number) throws XMLStreamException {
    String most =
        new BigDecimal(number)
            .abs()
            .multiply(BigDecimal.valueOf(problem.toleranceRatio()))
            .stripTrailingZeros()
            .toPlainString();
    start("equal");
    attribute("toleranceMode", "absolute");
    attribute("tolerance", most + " " + most);
    value("float", number);
    xml.writeEmptyElement("variable");
    attribute("identifier", RESPONSE);
    xml.writeEndElement();
  }

  private void set(String identifier, String type, String value) throws XMLStreamException {
    start("setOutcomeValue");
    attribute("identifier", identifier);
    value(type, value);
    xml.writeEndElement();
  }

  private void value(String type, String value) throws XMLStreamException {
    start("baseValue");
    attribute("baseType", type);
    xml.writeCharacters(value);
    xml.writeEndElement();
  }

  private void feedback() throws XMLStreamException {
    hint("right", "That agrees.");
    hint("wrong", "That does not agree. The cause is not found.");
    List<WrongAnswer> wrong = problem.wrongAnswers();
    for (int i = 0; i < wrong.size(); i++) {
      hint("slip-" + (i + 1), "That does not agree. It is " + wrong.get(i).cause() + ".");
    }
  }

  private void hint(String identifier, String words) throws XMLStreamException {
    start("modalFeedback");
    attribute("outcomeIdentifier", FEEDBACK);
    attribute("identifier", identifier);
    attribute("showHide", "show");
    xml.writeCharacters(words);
    xml.writeEndElement();
  }

  /** The number alone, without its unit. */
  private static String number(String quantity) {
    return quantity.split(" ", 2)[0];
  }

  private void start(String name) throws XMLStreamException {
    xml.writeStartElement(name);
  }

  private void element(String name, String words) throws XMLStreamException {
    start(name);
    xml.writeCharacters(words);
    xml.writeEndElement();
  }

  private void attribute(String name, String value) throws XMLStreamException {
    xml.writeAttribute(name, value);
  }
}
