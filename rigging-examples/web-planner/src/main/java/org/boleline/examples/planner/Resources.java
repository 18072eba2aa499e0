package org.boleline.examples.planner;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** Files of the page, from the class path. */
final class Resources {
  private Resources() {}

  static byte[] read(String name) {
    try (InputStream stream = Resources.class.getResourceAsStream(name)) {
      return Objects.requireNonNull(stream, name).readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("reading from the class path", e);
    }
  }
}
