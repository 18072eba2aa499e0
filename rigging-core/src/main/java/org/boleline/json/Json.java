package org.boleline.json;

import java.util.List;
import java.util.Map;

/** A JSON value as a tree; members and elements keep their order. */
sealed interface Json {
  /** Returns what the value is, for messages. */
  String description();

  /** Members by name, in order; whoever makes it does not change the map afterwards. */
  record Members(Map<String, Json> byName) implements Json {
    @Override
    public String description() {
      return "an object";
    }
  }

  /** Elements, in order. */
  record Elements(List<Json> list) implements Json {
    @Override
    public String description() {
      return "a list";
    }
  }

  /** Text. */
  record Text(String text) implements Json {
    @Override
    public String description() {
      return "the text " + JsonText.quoted(text);
    }
  }

  /** A number as it is written. */
  record Numeral(String text) implements Json {
    @Override
    public String description() {
      return "the number " + text;
    }
  }

  /** True or false. */
  record Flag(boolean value) implements Json {
    @Override
    public String description() {
      return value ? "true" : "false";
    }
  }

  /** Nothing, said. */
  enum Null implements Json {
    /** The only one. */
    NULL;

    @Override
    public String description() {
      return "null";
    }
  }
}
