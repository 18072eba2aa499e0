package org.boleline.examples.compare;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/**
 * A run of the program on captured streams.
 *
 * @param status its exit status
 * @param out what it printed
 * @param err what it printed on standard error
 */
record Run(int status, String out, String err) {
  static Run of(String... args) {
    return of("", StandardCharsets.UTF_8, args);
  }

  static Run of(String input, Charset charset, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    InputStream in = new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8));
    int status =
        CompareArrangements.run(
            args,
            in,
            new PrintStream(out, false, charset),
            new PrintStream(err, true, charset),
            charset);
    return new Run(status, out.toString(charset), err.toString(charset));
  }
}
