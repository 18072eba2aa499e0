package org.boleline.examples.planner;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.Map;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;

/** A request that gets no result: why, as RFC 9457 has it. */
final class Problem extends Exception {
  private static final long serialVersionUID = 1L;
  private static final JsonFactory FACTORY = new JsonFactory();

  private final int status;
  private final String type;
  private final String title;
  private final transient List<Refusal> refusals;
  private final transient Map<String, String> headers;

  private Problem(
      int status,
      String type,
      String title,
      String detail,
      List<Refusal> refusals,
      Map<String, String> headers) {
    super(detail);
    this.status = status;
    this.type = type;
    this.title = title;
    this.refusals = refusals;
    this.headers = headers;
  }

  /** A problem that its status tells. */
  static Problem of(int status, String title, String detail, Map<String, String> headers) {
    return new Problem(status, "about:blank", title, detail, List.of(), headers);
  }

  static Problem of(int status, String title, String detail) {
    return of(status, title, detail, Map.of());
  }

  /** A problem of a kind that a program may want to tell apart. */
  static Problem named(
      int status, String name, String title, String detail, Map<String, String> headers) {
    return new Problem(status, name(name), title, detail, List.of(), headers);
  }

  /** A plan that was refused: 400 if it could not be read as JSON, 422 otherwise. */
  static Problem of(PlanRefusedException refused) {
    boolean unread =
        refused.refusals().stream()
            .map(Refusal::code)
            .anyMatch(code -> code == Refusal.Code.NOT_JSON || code == Refusal.Code.TOO_LARGE);
    int count = refused.refusals().size();
    return new Problem(
        unread ? 400 : 422,
        name(unread ? "not-json" : "plan-refused"),
        unread ? "The body cannot be read" : "The plan is refused",
        "There " + (count == 1 ? "is 1 reason." : "are " + count + " reasons."),
        refused.refusals(),
        Map.of());
  }

  private static String name(String name) {
    return "urn:org.boleline:problem:" + name;
  }

  Answer answer() {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text).useDefaultPrettyPrinter()) {
      json.writeStartObject();
      json.writeStringField("type", type);
      json.writeStringField("title", title);
      json.writeNumberField("status", status);
      json.writeStringField("detail", String.valueOf(getMessage()));
      if (!refusals.isEmpty()) {
        json.writeArrayFieldStart("errors");
        for (Refusal refusal : refusals) {
          json.writeStartObject();
          json.writeStringField("detail", "wants " + refusal.wants() + ", got " + refusal.got());
          json.writeStringField("pointer", fragment(refusal.place()));
          json.writeStringField("code", refusal.code().name());
          json.writeEndObject();
        }
        json.writeEndArray();
      }
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("writing to memory", e);
    }
    return Answer.of(status, Answer.PROBLEM, text + "\n", headers);
  }

  /** A JSON pointer as the fragment of a URI: RFC 6901, section 6. */
  private static String fragment(String pointer) {
    try {
      return new URI(null, null, pointer).toASCIIString();
    } catch (URISyntaxException e) {
      throw new AssertionError("any text can be a fragment", e);
    }
  }
}
