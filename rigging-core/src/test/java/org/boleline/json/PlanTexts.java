package org.boleline.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;

/** Plan files of the tests, and changed copies of them. All of them are invented. */
final class PlanTexts {
  /** Uses every member of the format. */
  static final String EVERYTHING = resource("everything.json");

  /** Uses no member that may be left out. */
  static final String LEAST = resource("least.json");

  private PlanTexts() {}

  static String resource(String name) {
    try (InputStream stream = PlanTexts.class.getResourceAsStream("/plans/" + name)) {
      return new String(
          Objects.requireNonNull(stream, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Returns a text with the first place where something stands changed. */
  static String changed(String text, String from, String to) {
    int at = text.indexOf(from);
    if (at < 0) {
      throw new IllegalArgumentException("not in the plan: " + from);
    }
    return text.substring(0, at) + to + text.substring(at + from.length());
  }

  /** Returns a text with several places changed: from, to, from, to. */
  static String changed(String text, String from, String to, String... more) {
    String changed = changed(text, from, to);
    for (int i = 0; i < more.length; i += 2) {
      changed = changed(changed, more[i], more[i + 1]);
    }
    return changed;
  }

  /** Returns the refusals of a text. */
  static List<Refusal> refusals(String text) {
    try {
      PlanReader.read(text);
    } catch (PlanRefusedException e) {
      return e.refusals();
    }
    throw new AssertionError("was not refused");
  }
}
