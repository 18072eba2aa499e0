package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The table in docs/learn/02-plan-from-a-file.md is what the program prints.
 *
 * <p>With {@code -Dregenerate=true} the page is written anew.
 */
class LessonTest {
  private static final Path LESSONS = Path.of("..", "..", "docs", "learn");
  private static final Path PAGE = LESSONS.resolve("02-plan-from-a-file.md");
  private static final String MARKER = "<!-- printed: by the program, checked in its own tests -->";

  @Test
  void the_table_of_the_lesson_is_what_the_program_prints() throws IOException {
    List<String> page = Files.readAllLines(PAGE);
    int start = page.indexOf(MARKER) + 2;
    int end = start + page.subList(start, page.size()).indexOf("```");
    List<String> table = table();

    if (Boolean.getBoolean("regenerate")) {
      page.subList(start, end).clear();
      page.addAll(start, table);
      Files.writeString(PAGE, String.join("\n", page) + "\n");
      return;
    }
    assertThat(page.subList(start, end)).isEqualTo(table);
  }

  /** From the line of the columns' numbers to the stiffness left. */
  private static List<String> table() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ByteArrayOutputStream errors = new ByteArrayOutputStream();
    int status;
    try (PrintStream out = new PrintStream(bytes, false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(errors, false, StandardCharsets.UTF_8)) {
      status =
          CompareArrangements.run(
              new String[] {LESSONS.resolve("first-plan.json").toString()},
              InputStream.nullInputStream(),
              out,
              err,
              StandardCharsets.US_ASCII);
    }
    assertThat(errors.toString(StandardCharsets.UTF_8)).isEmpty();
    assertThat(status).isZero();
    List<String> lines = bytes.toString(StandardCharsets.UTF_8).lines().toList();
    int rule = 0;
    while (!lines.get(rule).startsWith("---")) {
      rule++;
    }
    int last = rule;
    while (!lines.get(last).startsWith("Stiffness left")) {
      last++;
    }
    return lines.subList(rule - 1, last + 1);
  }
}
