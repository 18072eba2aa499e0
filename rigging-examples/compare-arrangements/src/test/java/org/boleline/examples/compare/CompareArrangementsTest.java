package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.boleline.drop.Drops;
import org.boleline.json.ResultWriter;
import org.boleline.limits.Checks;
import org.boleline.statics.Statics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CompareArrangementsTest {
  @TempDir Path folder;

  private String file(String resource) throws IOException {
    Path file = folder.resolve(resource);
    Files.writeString(file, Plans.text(resource));
    return file.toString();
  }

  @Test
  void compares_the_six_arrangements_of_the_hornbeam_by_default() {
    Run run = Run.of();

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    Golden.check(run.out(), "hornbeam.txt");
  }

  @Test
  void shows_pounds_and_feet_if_asked_to() {
    Run run = Run.of("--units", "us");

    assertThat(run.status()).isZero();
    Golden.check(run.out(), "hornbeam.us.txt");
  }

  @Test
  void prints_plain_ascii_where_the_output_cannot_show_more() {
    Run run = Run.of("", StandardCharsets.US_ASCII);

    assertThat(run.out().chars()).allMatch(c -> c == '\n' || (c >= ' ' && c < 127));
    assertThat(run.out()).doesNotContain("?");
    Golden.check(run.out(), "hornbeam.ascii.txt");
    assertThat(Run.of("", StandardCharsets.ISO_8859_1).out()).isEqualTo(run.out());
  }

  @ParameterizedTest
  @CsvSource({"sycamore, 0", "spruce, 0", "mixed, 0", "pole, 3"})
  void compares_the_arrangements_of_a_file(String name, int status) throws IOException {
    Run run = Run.of(file(name + ".json"));

    assertThat(run.status()).isEqualTo(status);
    assertThat(run.err()).isEmpty();
    Golden.check(run.out(), name + ".txt");
  }

  @Test
  void reads_a_plan_from_standard_input() throws IOException {
    Run run = Run.of(Plans.text("spruce.json"), StandardCharsets.UTF_8, "-");

    assertThat(run).isEqualTo(Run.of(file("spruce.json")));
  }

  @Test
  void gives_the_result_as_json_whatever_the_output_can_show() throws IOException {
    String expected =
        ResultWriter.write(
            Checks.of(Drops.analyse(Statics.analyse(Plans.HORNBEAM))),
            List.of(),
            RangeRows.study(Plans.HORNBEAM));
    assertThat(Run.of("--json")).isEqualTo(new Run(0, expected, ""));

    Run pole = Run.of(file("pole.json"), "--json", "--units", "us");
    assertThat(pole.status()).isEqualTo(3);
    assertThat(pole.out())
        .isEqualTo(ResultWriter.write(Checks.of(Drops.analyse(Statics.analyse(Plans.POLE)))));

    java.io.ByteArrayOutputStream bytes = new java.io.ByteArrayOutputStream();
    CompareArrangements.run(
        new String[] {"--json", file("mixed.json")},
        InputStream.nullInputStream(),
        new PrintStream(bytes, false, StandardCharsets.US_ASCII),
        System.err,
        StandardCharsets.US_ASCII);
    assertThat(bytes.toString(StandardCharsets.UTF_8)).contains("Bäume", "树");
  }

  @Test
  void shows_the_working_of_every_arrangement_if_asked_to() {
    Run run = Run.of("--working");

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out().lines()).allMatch(line -> line.length() <= 80);
    Statics.analyse(Plans.HORNBEAM)
        .arrangements()
        .forEach(
            one ->
                assertThat(run.out())
                    .contains("Rope of arrangement " + one.id() + ", contact by contact"));
    assertThat(run.out())
        .contains("Base of stem ", "Rules of thumb beside arrangement ", "To be read with these")
        .contains("Cautions, with the numbers of the arrangements:", "Taken without being stated:");
    assertThat(run.out().replace("\n", " ")).endsWith("the competent person on site do. ");
    assertThat(Run.of("--working", "--units", "us").out()).contains("lbf x 4.448221615");
  }

  @Test
  void shows_no_working_of_what_is_unstable_and_says_so() throws IOException {
    Run run = Run.of(file("pole.json"), "--working");

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out()).contains("has no worksheets. Outcome: ");
  }

  @Test
  void does_not_mix_working_and_json() {
    Run run = Run.of("--working", "--json");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("wants one of --json, --working and --report, got --json and");
    assertThat(Run.of("--working", "--report=x.html").err()).contains("got --working and --report");
  }

  @Test
  void writes_a_report_and_says_where() throws IOException {
    Path report = folder.resolve("pole report.html");
    Run run = Run.of(file("pole.json"), "--report", report.toString());

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isEqualTo("Report written to " + report + System.lineSeparator());
    assertThat(report)
        .hasContent(
            Report.write(
                Plans.asked(Plans.POLE),
                Findings.withCauses(Statics.analyse(Plans.POLE)),
                UnitSystem.SI));
    Run us = Run.of(file("pole.json"), "--units", "us", "--report", report.toString());
    assertThat(us.status()).isEqualTo(3);
    assertThat(report).content().contains("lbf");
  }

  @Test
  void writes_no_report_of_a_refused_plan_and_none_where_it_cannot() throws IOException {
    Path report = folder.resolve("report.html");
    Run refused = Run.of("{}", StandardCharsets.UTF_8, "-", "--report", report.toString());
    assertThat(refused.status()).isEqualTo(2);
    assertThat(report).doesNotExist();

    Path nowhere = folder.resolve("none").resolve("report.html");
    Run unwritten = Run.of(file("pole.json"), "--report", nowhere.toString());
    assertThat(unwritten.status()).isEqualTo(1);
    assertThat(unwritten.out()).isEmpty();
    assertThat(unwritten.err()).contains("cannot write", "none").doesNotContain("Exception");
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "tr", "ar-EG"})
  void says_the_same_in_every_country(String language) throws IOException {
    Locale before = Locale.getDefault();
    Run table = Run.of();
    Run refused = Run.of("--units", "metric");
    String mixed = file("mixed.json");
    Run us = Run.of("--units", "us", mixed);
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      assertThat(Run.of()).isEqualTo(table);
      assertThat(Run.of("--units", "metric")).isEqualTo(refused);
      assertThat(Run.of("--units", "US", mixed)).isEqualTo(us);
      assertThat(Run.of("--units", "SI")).isEqualTo(table);
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void refuses_a_plan_with_every_pointer_and_prints_no_table() throws IOException {
    String plan =
        Plans.text("pole.json")
            .replace("\"30 kg\"", "\"30 m\"")
            .replace("\"at\": \"5 m\"", "\"at\": \"15 m\"")
            .replace("\"motion\"", "\"movement\"");
    for (String[] args : new String[][] {{"-"}, {"-", "--json"}, {"--units", "us", "-"}}) {
      Run run = Run.of(plan, StandardCharsets.UTF_8, args);

      assertThat(run.status()).isEqualTo(2);
      assertThat(run.out()).isEmpty();
      assertThat(run.err().lines())
          .anySatisfy(line -> assertThat(line).startsWith("/piece/mass: wants").contains("30 m"))
          .anySatisfy(line -> assertThat(line).startsWith("/arrangements/1/contacts/0/at: wants"))
          .anySatisfy(line -> assertThat(line).startsWith("/arrangements/0/motion: wants"))
          .allSatisfy(line -> assertThat(line).startsWith("/").contains(", got "));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "nonsense", "[]", "{\"format\": \"rigging-plan/2\"}", "{\"a\": [[["})
  void refuses_what_is_no_plan(String text) {
    Run run = Run.of(text, StandardCharsets.UTF_8, "-");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("/").contains(": wants ").doesNotContain("Exception");
  }

  /** Two points on long slings, and a tail that pulls them to one place in the air: invented. */
  @Test
  void refuses_points_that_the_rope_pulls_together() {
    String plan =
        Plans.text("pole.json")
            .replace("\"lean\": \"0 deg\"", "\"lean\": \"25 deg\"")
            .replace("\"0.1 m\"", "\"0.4 m\"")
            .replace("\"0.05 m\"", "\"0.2 m\"")
            .replace("[\"0 m\", \"0 m\", \"0 m\"]", "[\"-9 m\", \"0 m\", \"14 m\"]")
            .replace(
                "[{\"stem\": \"pole\", \"at\": \"5 m\", \"hardware\": {\"ideal\": {}}}]",
                "[{\"stem\": \"pole\", \"at\": \"11.5 m\", \"hardware\": {\"ideal\": {}}, \"sling\":"
                    + " \"2 m\"}, {\"stem\": \"pole\", \"at\": \"10 m\", \"hardware\": {\"ideal\":"
                    + " {}}, \"sling\": \"1 m\"}]");
    Run run = Run.of(plan, StandardCharsets.UTF_8, "-");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("/arrangements/1/contacts/1: wants neighbouring points");
  }

  @Test
  void says_plainly_that_a_file_cannot_be_read() {
    Run absent = Run.of(folder.resolve("none.json").toString());
    Run directory = Run.of(folder.toString());

    assertThat(absent.status()).isEqualTo(1);
    assertThat(absent.out()).isEmpty();
    assertThat(absent.err()).contains("cannot read", "none.json", "there is no such file");
    assertThat(directory.status()).isEqualTo(1);
    assertThat(directory.err()).contains("cannot read").doesNotContain("Exception");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"--unit", "--units=metric", "--report=x.htm", "--report", "one.json two.json"})
  void refuses_a_command_line_it_does_not_know(String arguments) {
    Run run = Run.of(arguments.split(" ", -1));

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("compare-arrangements: ").contains("Try --help.");
  }

  @Test
  void a_name_that_begins_with_an_at_sign_is_a_file() {
    assertThat(Run.of("@none.json").err()).contains("cannot read @none.json");
  }

  @Test
  void explains_itself() {
    Run help = Run.of("--help");

    assertThat(help.status()).isZero();
    assertThat(help.err()).isEmpty();
    assertThat(help.out())
        .contains(
            "--units",
            "--json",
            "--working",
            "--report",
            "--help",
            "--version",
            "Exit status",
            "local codes");
    assertThat(help.out().lines()).allMatch(line -> line.length() <= Page.WIDTH);
    assertThat(Run.of("-h")).isEqualTo(help);
  }

  @Test
  void says_its_version() {
    assertThat(Run.of("--version").out())
        .isEqualTo(
            "compare-arrangements " + ResultWriter.libraryVersion() + System.lineSeparator());
  }

  @Test
  void fails_if_the_answer_cannot_be_written() {
    OutputStream full =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            throw new IOException("full");
          }
        };
    int status =
        CompareArrangements.run(
            new String[0],
            InputStream.nullInputStream(),
            new PrintStream(full, false, StandardCharsets.UTF_8),
            new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8),
            StandardCharsets.UTF_8);

    assertThat(status).isEqualTo(1);
  }
}
