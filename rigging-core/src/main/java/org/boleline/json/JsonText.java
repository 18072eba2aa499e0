package org.boleline.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.jspecify.annotations.Nullable;

/** JSON text to tree and back. */
final class JsonText {
  /** Greatest size of a document, in bytes of UTF-8. */
  static final int MOST_BYTES = 1024 * 1024;

  /** Greatest depth of a document: objects and lists within each other. */
  static final int MOST_DEPTH = 16;

  private static final int LINE = 100;
  private static final int SHOWN = 80;
  private static final String WANTS_JSON = "JSON text in UTF-8 (RFC 8259)";
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(MOST_DEPTH).build())
          .build();

  private JsonText() {}

  /**
   * Reads bytes as text.
   *
   * @throws org.boleline.explain.PlanRefusedException if there are too many, or they are not UTF-8
   */
  static String decode(byte[] bytes) {
    Refusals refusals = Refusals.none();
    String text = "";
    if (bytes.length > MOST_BYTES) {
      refuseSize(refusals);
    } else {
      try {
        text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      } catch (CharacterCodingException e) {
        refusals.add(Refusal.Code.NOT_JSON, WANTS_JSON, "bytes that are not UTF-8");
      }
    }
    refusals.throwIfAny();
    return text;
  }

  /**
   * Reads text as a tree, or notes why not; a member that stands twice is noted and read on.
   *
   * @return the tree; null if refused
   */
  static @Nullable Json parse(String text, Refusals refusals) {
    if (text.length() > MOST_BYTES || text.getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
      refuseSize(refusals);
      return null;
    }
    String document = text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    try (JsonParser parser = FACTORY.createParser(document)) {
      return new Reading(parser, refusals).document();
    } catch (IOException e) {
      throw new UncheckedIOException("reading from memory", e);
    }
  }

  private static void refuseSize(Refusals refusals) {
    refusals.add(Refusal.Code.TOO_LARGE, "at most " + MOST_BYTES + " bytes of UTF-8", "more");
  }

  /** One pass over a document. */
  private static final class Reading {
    private final JsonParser parser;
    private final Refusals root;

    Reading(JsonParser parser, Refusals root) {
      this.parser = parser;
      this.root = root;
    }

    @Nullable Json document() throws IOException {
      try {
        @Nullable JsonToken first = parser.nextToken();
        if (first == null) {
          root.add(Refusal.Code.NOT_JSON, WANTS_JSON, "nothing");
          return null;
        }
        Json value = value(first, root);
        if (parser.nextToken() != null) {
          root.add(
              Refusal.Code.NOT_JSON, "one JSON value", "more text behind it, at " + position());
          return null;
        }
        return value;
      } catch (StreamConstraintsException e) {
        here()
            .add(
                Refusal.Code.TOO_LARGE,
                "at most " + MOST_DEPTH + " levels, and numbers of at most 1000 characters",
                "more, at " + position());
        return null;
      } catch (JsonProcessingException e) {
        here()
            .add(
                Refusal.Code.NOT_JSON,
                WANTS_JSON,
                "at " + position() + ": " + oneLine(e.getOriginalMessage()));
        return null;
      }
    }

    private Json value(JsonToken token, Refusals place) throws IOException {
      return switch (token) {
        case START_OBJECT -> members(place);
        case START_ARRAY -> elements(place);
        case VALUE_STRING -> new Json.Text(parser.getText());
        case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> new Json.Numeral(parser.getText());
        case VALUE_TRUE -> new Json.Flag(true);
        case VALUE_FALSE -> new Json.Flag(false);
        case VALUE_NULL -> Json.Null.NULL;
        default -> throw new AssertionError("token " + token);
      };
    }

    private Json members(Refusals place) throws IOException {
      Map<String, Json> byName = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String name = parser.currentName();
        Refusals member = place.at(name);
        Json value = value(parser.nextToken(), member);
        if (byName.putIfAbsent(name, value) != null) {
          member.add(Refusal.Code.DUPLICATE, "each member once", quoted(name) + " again");
        }
      }
      return new Json.Members(byName);
    }

    private Json elements(Refusals place) throws IOException {
      List<Json> list = new ArrayList<>();
      while (true) {
        JsonToken token = parser.nextToken();
        if (token == JsonToken.END_ARRAY) {
          return new Json.Elements(list);
        }
        list.add(value(token, place.at(list.size())));
      }
    }

    /** Returns where the parser stands. */
    private Refusals here() {
      Refusals here = root;
      for (JsonPointer rest = parser.getParsingContext().pathAsPointer();
          !rest.matches();
          rest = rest.tail()) {
        here = here.at(rest.getMatchingProperty());
      }
      return here;
    }

    private String position() {
      var location = parser.currentLocation();
      return "line " + location.getLineNr() + ", column " + location.getColumnNr();
    }

    private static String oneLine(String message) {
      String line = message.lines().findFirst().orElse("");
      return line.length() > 200 ? line.substring(0, 200) + "..." : line;
    }
  }

  /** Returns text as a JSON string, shortened if it is long; for messages. */
  static String quoted(String text) {
    StringBuilder out = new StringBuilder();
    printText(text.length() > SHOWN ? text.substring(0, SHOWN) + "..." : text, out);
    return out.toString();
  }

  /** Prints a tree: two blanks an indent, short values on one line, a line feed at the end. */
  static String print(Json value) {
    StringBuilder out = new StringBuilder();
    print(value, 0, 0, out);
    return out.append('\n').toString();
  }

  private static void print(Json value, int indent, int used, StringBuilder out) {
    StringBuilder line = new StringBuilder();
    if (printOnOneLine(value, LINE - 2 * indent - used, line)) {
      out.append(line);
    } else if (value instanceof Json.Members members) {
      String separator = "{";
      for (Map.Entry<String, Json> member : members.byName().entrySet()) {
        newLine(separator, indent + 1, out);
        int start = out.length();
        printText(member.getKey(), out);
        out.append(": ");
        print(member.getValue(), indent + 1, out.length() - start, out);
        separator = ",";
      }
      newLine("", indent, out);
      out.append('}');
    } else if (value instanceof Json.Elements elements) {
      String separator = "[";
      for (Json element : elements.list()) {
        newLine(separator, indent + 1, out);
        print(element, indent + 1, 0, out);
        separator = ",";
      }
      newLine("", indent, out);
      out.append(']');
    } else {
      printOnOneLine(value, Integer.MAX_VALUE, out);
    }
  }

  private static void newLine(String separator, int indent, StringBuilder out) {
    out.append(separator).append('\n').append("  ".repeat(indent));
  }

  /** Prints a value on one line if it has the room; an object among other members has none. */
  private static boolean printOnOneLine(Json value, int room, StringBuilder out) {
    if (value instanceof Json.Members members) {
      String separator = "{";
      for (Map.Entry<String, Json> member : members.byName().entrySet()) {
        if (member.getValue() instanceof Json.Members && members.byName().size() > 1) {
          return false;
        }
        out.append(separator);
        printText(member.getKey(), out);
        out.append(": ");
        if (!printOnOneLine(member.getValue(), room, out)) {
          return false;
        }
        separator = ", ";
      }
      out.append(members.byName().isEmpty() ? "{}" : "}");
    } else if (value instanceof Json.Elements elements) {
      String separator = "[";
      for (Json element : elements.list()) {
        if (!(element instanceof Json.Text || element instanceof Json.Numeral)) {
          return false;
        }
        out.append(separator);
        printOnOneLine(element, room, out);
        separator = ", ";
      }
      out.append(elements.list().isEmpty() ? "[]" : "]");
    } else if (value instanceof Json.Text text) {
      printText(text.text(), out);
    } else if (value instanceof Json.Numeral numeral) {
      out.append(numeral.text());
    } else {
      out.append(value.description());
    }
    return out.length() <= room;
  }

  private static void printText(String text, StringBuilder out) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '"' -> out.append("\\\"");
        case '\\' -> out.append("\\\\");
        case '\n' -> out.append("\\n");
        case '\r' -> out.append("\\r");
        case '\t' -> out.append("\\t");
        default -> {
          if (Character.isISOControl(c) || isLoneSurrogate(text, i)) {
            out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
          } else {
            out.append(c);
          }
        }
      }
    }
    out.append('"');
  }

  private static boolean isLoneSurrogate(String text, int i) {
    char c = text.charAt(i);
    if (Character.isHighSurrogate(c)) {
      return i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1));
    }
    return Character.isLowSurrogate(c)
        && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
  }
}
