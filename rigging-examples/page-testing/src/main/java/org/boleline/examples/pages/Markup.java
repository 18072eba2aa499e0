package org.boleline.examples.pages;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/** A page held against the HTML standard, by the validator that its editors use. */
public final class Markup {
  /** What is younger than the validator: {@code paint-order} is of SVG 2, section 13.7. */
  private static final String YOUNGER = "Attribute “paint-order” not allowed on element “text”";

  private Markup() {}

  /**
   * Returns what is wrong with a page.
   *
   * @param html the page
   * @return errors and warnings, each with what stands there; empty if there are none
   */
  public static List<String> faults(String html) {
    EmbeddedValidator validator = new EmbeddedValidator();
    validator.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
    List<String> faults = new ArrayList<>();
    try {
      String report =
          validator.validate(new ByteArrayInputStream(html.getBytes(StandardCharsets.UTF_8)));
      for (JsonNode message : new ObjectMapper().readTree(report).path("messages")) {
        String text = message.path("message").asText();
        boolean told = message.path("type").asText().equals("info") && !message.has("subType");
        if (!told && !text.startsWith(YOUNGER)) {
          faults.add(text + " at " + message.path("extract").asText());
        }
      }
    } catch (IOException | SAXException e) {
      throw new IllegalStateException("the validator", e);
    }
    return faults;
  }
}
