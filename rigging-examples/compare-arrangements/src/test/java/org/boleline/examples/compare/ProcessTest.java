package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own. */
class ProcessTest {
  @TempDir Path folder;

  private Run run(String input, String encoding, String... args) throws Exception {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Dstdout.encoding=" + encoding));
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.add(CompareArrangements.class.getName());
    command.addAll(List.of(args));
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    Path in = folder.resolve("in");
    Files.writeString(in, input);
    Process process =
        new ProcessBuilder(command)
            .redirectInput(in.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
    return new Run(process.exitValue(), read(out), read(err));
  }

  private static String read(Path file) throws IOException {
    return Files.readString(file, StandardCharsets.UTF_8);
  }

  @Test
  void prints_the_comparison_and_ends_with_zero() throws Exception {
    Run run = run("", "UTF-8");

    assertThat(run.status()).isZero();
    assertThat(run.err()).isEmpty();
    Golden.check(run.out(), "hornbeam.txt");
  }

  @Test
  void prints_plain_ascii_to_an_output_that_knows_no_more() throws Exception {
    Run run = run("", "US-ASCII");

    assertThat(run.status()).isZero();
    Golden.check(run.out(), "hornbeam.ascii.txt");
  }

  @Test
  void ends_with_three_if_an_arrangement_is_unstable() throws Exception {
    Run run = run(Plans.text("pole.json"), "UTF-8", "-");

    assertThat(run.status()).isEqualTo(3);
    Golden.check(run.out(), "pole.txt");
  }

  @Test
  void ends_with_two_and_no_output_if_the_plan_is_refused() throws Exception {
    Run run = run(Plans.text("pole.json").replace("30 kg", "30 m"), "UTF-8", "-");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).startsWith("/piece/mass: wants");
  }

  @Test
  void ends_with_one_if_the_file_cannot_be_read() throws Exception {
    Run run = run("", "UTF-8", folder.resolve("none.json").toString());

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("there is no such file");
  }
}
