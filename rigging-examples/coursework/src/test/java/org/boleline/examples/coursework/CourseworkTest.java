package org.boleline.examples.coursework;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.boleline.working.problem.Level;
import org.boleline.working.problem.Problem;
import org.boleline.working.problem.ProblemKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

class CourseworkTest {
  /** A ring, 3400 N, friction 0.27, 35 degrees between the legs: exp(0.27 * 145 deg) = 1.980. */
  private static final String[] RING = {"check", "redirects", "2", "42"};

  private static final Path STEPS = Path.of("src", "main", "steps", "redirects-2-42.csv");

  @TempDir Path folder;

  private record Run(int status, String out, String err) {}

  private static Run run(String... arguments) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Coursework.run(new PrintWriter(out), new PrintWriter(err), arguments);
    return new Run(status, out.toString(), err.toString());
  }

  private static Run check(Path file) {
    return run(Stream.concat(Stream.of(RING), Stream.of(file.toString())).toArray(String[]::new));
  }

  private Path file(String... lines) throws IOException {
    return Files.write(folder.resolve("steps.csv"), List.of(lines));
  }

  @ParameterizedTest
  @EnumSource(Level.class)
  void a_sheet_asks_each_kind_and_solves_it(Level level) {
    Run run = run("sheet", "--level", String.valueOf(level.number()), "--seed", "7");

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    String[] parts = run.out().split("\n# Solutions\n", -1);
    assertThat(parts).hasSize(2);
    int number = 1;
    for (ProblemKind kind : ProblemKind.values()) {
      Problem problem = Problem.of(kind, level, 7);
      String heading = "\n## " + number++ + ". " + problem.title() + "\n";
      assertThat(parts[0]).contains(heading + "\n" + problem.question() + "\n");
      assertThat(parts[1]).contains(heading + "\n**" + problem.answer() + "**\n");
      problem
          .wrongAnswers()
          .forEach(
              wrong ->
                  assertThat(parts[1])
                      .contains("\n| " + wrong.value() + " | " + wrong.cause() + " |\n"));
      problem
          .solution()
          .markdown()
          .lines()
          .filter(line -> !line.startsWith("#"))
          .forEach(line -> assertThat(parts[1]).contains("\n" + line + "\n"));
    }
  }

  @Test
  void a_sheet_without_solutions_gives_none_away() {
    Run run = run("sheet", "--questions-only");

    assertThat(run.status()).isZero();
    assertThat(run.out()).doesNotContain("Solutions");
    for (ProblemKind kind : ProblemKind.values()) {
      Problem problem = Problem.of(kind, Level.FIRST, 1);
      assertThat(run.out()).contains(problem.question()).doesNotContain(problem.answer());
    }
  }

  @Test
  void the_headings_of_a_sheet_go_down_one_at_a_time() {
    int before = 0;
    for (String line : run("sheet", "--level", "3").out().split("\n", -1)) {
      if (line.startsWith("#")) {
        int depth = line.indexOf(' ');
        assertThat(depth).as(line).isBetween(1, before + 1);
        before = depth;
      }
    }
    assertThat(before).isPositive();
  }

  @Test
  void the_same_seed_makes_the_same_sheet_and_another_another() {
    assertThat(run("sheet", "--seed", "5").out())
        .isEqualTo(run("sheet", "--seed", "5").out())
        .isNotEqualTo(run("sheet", "--seed", "6").out());
  }

  @ParameterizedTest
  @EnumSource(ProblemKind.class)
  void an_item_is_a_document_with_the_question(ProblemKind kind) throws Exception {
    Run run = run("item", kind.name(), "2", "42");

    Document item =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(run.out().getBytes(StandardCharsets.UTF_8)));
    assertThat(run.status()).isZero();
    assertThat(item.getDocumentElement().getTextContent())
        .contains(Problem.of(kind, Level.SECOND, 42).question());
  }

  @Test
  void the_steps_in_the_example_part_where_one_tension_is_used_for_both_legs() {
    Run run = check(STEPS);

    assertThat(run.status()).isEqualTo(Coursework.PARTS);
    assertThat(run.err()).isEmpty();
    assertThat(run.out().replaceAll("\\s+", " "))
        .contains("Step 1, FRI-2, t: written 1.98 (4 figures), ours 1.9804: agrees.")
        .contains("T_slack: written 1717 N (4 figures), ours 1716.83 N: agrees.")
        .contains("R: written 6485 N (4 figures), ours 4906.18 N: parts here, as if one tension");
    // 2 * T * cos(q / 2), the textbook multiplier of equal tensions
    assertThat(2 * 3400 * Math.cos(Math.toRadians(35) / 2)).isBetween(6484.5, 6485.5);
  }

  @Test
  void the_right_force_agrees_in_any_unit() throws IOException {
    assertThat(check(file("step,value", "FOR-1,4906 N")).status()).isZero();
    assertThat(check(file("step,value", "FOR-1,1103 lbf")).status()).isZero();
  }

  @Test
  void refuses_steps_that_are_not_on_the_worksheet_all_at_once() throws IOException {
    Run run = check(file("step,value", "T_tail,1 N", "T_slack,5 kg"));

    assertThat(run.status()).isEqualTo(Coursework.REFUSED);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("/step 1/name: wants").contains("/step 2/value: wants");
  }

  @Test
  void refuses_files_that_are_no_short_text() throws IOException {
    Path noText = Files.write(folder.resolve("bytes"), new byte[] {(byte) 0xff, (byte) 0xfe});
    Path tooLong = Files.write(folder.resolve("long"), new byte[1_000_001]);
    for (Path file : List.of(noText, tooLong, folder, folder.resolve("missing"))) {
      Run run = check(file);
      assertThat(run.status()).isEqualTo(Coursework.REFUSED);
      assertThat(run.out()).isEmpty();
      assertThat(run.err()).contains(file + ": wants a text file");
    }
  }

  @Test
  void a_file_writes_no_commands_to_the_terminal() throws IOException {
    assertThat(check(file("step,value", "\u001b[31mT,1 N")).err())
        .doesNotContain("\u001b")
        .contains("[31mT");
  }

  @ParameterizedTest
  @CsvSource({
    "item bends 1 1,FRICTION",
    "item friction 4 1,'wants 1, 2 or 3, got 4'",
    "sheet --level 0,'wants 1, 2 or 3, got 0'",
    "sheet --seed x,seed",
    "'solve',solve"
  })
  void refuses_a_command_line_that_it_does_not_know(String line, String reason) {
    Run run = run(line.split(" ", -1));

    assertThat(run.status()).isEqualTo(Coursework.REFUSED);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(reason);
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "sheet --help", "item --help", "check --help", ""})
  void help_defers_to_those_on_site(String line) {
    Run run = line.isEmpty() ? run() : run(line.split(" ", -1));

    assertThat(run.status()).isZero();
    assertThat(run.out().replaceAll("\\s+", " ")).contains("the competent person on site decide");
  }
}
