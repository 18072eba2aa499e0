package org.boleline.examples.coursework;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lesson for jshell, in a jshell of its own. */
class FourArrangementsTest {
  /** 95 kg times the standard acceleration of free fall, 9.80665 m/s2. */
  private static final double WEIGHT = 95 * 9.80665;

  private static String output = "";

  @BeforeAll
  static void run(@TempDir Path folder) throws Exception {
    Path out = folder.resolve("out");
    Path in = Files.writeString(folder.resolve("in"), "/exit\n");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "jshell").toString(),
                "--feedback",
                "silent",
                "--class-path",
                System.getProperty("java.class.path"),
                Path.of("src", "main", "jshell", "four-arrangements.jsh").toString())
            .redirectErrorStream(true)
            .redirectInput(in.toFile())
            .redirectOutput(out.toFile())
            .start();
    assertThat(process.waitFor(5, TimeUnit.MINUTES)).isTrue();
    assertThat(process.exitValue()).isZero();
    output = Files.readString(out);
  }

  /** Tail, hold, force, base and tip of the line that starts with a name. */
  private static double[] row(String name) {
    String line = output.lines().filter(l -> l.startsWith(name + "  ")).findFirst().orElseThrow();
    return Arrays.stream(line.substring(name.length()).trim().split(" +", -1))
        .mapToDouble(Double::parseDouble)
        .toArray();
  }

  @Test
  void runs_to_its_end_without_a_complaint() {
    assertThat(output)
        .doesNotContain("Error")
        .doesNotContain("Exception")
        .doesNotContain("rror:")
        .contains("1. Where")
        .contains("2. How many")
        .contains("3. Sheaves or rings")
        .contains("4. And when")
        .contains("competent person on site decide");
    assertThat(output.lines()).allMatch(line -> line.length() <= 80);
  }

  /** Efficiency of a sheave: tension let out over tension put in, at half a turn. */
  @Test
  void a_sheave_that_turns_the_rope_right_round_lets_its_efficiency_through() {
    double[] straightDown = row("sheave, tail straight down");

    assertThat(straightDown[0]).isCloseTo(0.95 * WEIGHT, within(0.5));
    assertThat(straightDown[2]).isCloseTo(1.95 * WEIGHT, within(0.5));
  }

  /** Euler and Eytelwein: 2 wraps with a coefficient of 0.18. */
  @Test
  void the_hand_holds_what_the_wraps_leave() {
    for (String name :
        new String[] {"sheave, device at the foot", "three sheaves", "three rings"}) {
      assertThat(row(name)[1])
          .isCloseTo(row(name)[0] / Math.exp(0.18 * 2 * 2 * Math.PI), within(0.6));
    }
  }

  /** Friction divides the weight while lowering and multiplies it while raising. */
  @Test
  void friction_takes_while_lowering_what_it_asks_while_raising() {
    for (String points : new String[] {"three sheaves", "three rings"}) {
      double lowering = row(points + ", lowering")[0];
      double raising = row(points + ", raising")[0];
      assertThat(lowering).isLessThan(WEIGHT);
      assertThat(raising).isGreaterThan(WEIGHT);
      // but for the little that the stem bends otherwise
      assertThat(Math.sqrt(lowering * raising)).isCloseTo(WEIGHT, within(0.005 * WEIGHT));
    }
  }

  @Test
  void the_tail_along_the_stem_bends_it_less_than_the_tail_straight_down() {
    double[] down = row("sheave, tail straight down");
    double[] along = row("sheave, device at the foot");

    assertThat(along[3]).isLessThan(down[3]);
    assertThat(along[4]).isLessThan(down[4]);
  }
}
