package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.boleline.Tolerances;

/**
 * The pages of the documentation and the blocks in them that come from code.
 *
 * <p>A fenced block may carry a marker, a comment on the line before it:
 *
 * <ul>
 *   <li>{@code code: FirstPlan.java#stem}: the region of that name in a source of this package;
 *   <li>{@code output: first-plan}: what {@link Outputs} says under that name;
 *   <li>{@code file: rigging-core/src/test/resources/...}: a file of this project, whole;
 *   <li>{@code drawing}: drawn by hand.
 * </ul>
 *
 * <p>With {@code -Dregenerate=true} the tests write what they would else compare.
 */
final class Docs {
  private static final boolean REGENERATE = Boolean.getBoolean("regenerate");
  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
  private static final Path SAMPLES =
      ROOT.resolve("rigging-core/src/test/java/org/boleline/documentation");
  private static final String FENCE = "```";
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(?:\\.[0-9]+)?(?:e-?[0-9]+)?");

  private Docs() {}

  /** A fenced block: its language, its marker (empty if none), its lines, and where they start. */
  record Block(String language, String marker, List<String> lines, int firstLine) {
    String text() {
      return String.join("\n", lines);
    }
  }

  static Path file(String name) {
    return ROOT.resolve(name);
  }

  /** README, DEVELOPERS and all pages under docs, in order of their names. */
  static List<Path> pages() {
    try (Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
      Stream<Path> top = Stream.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md"));
      return Stream.concat(top, docs.filter(path -> path.toString().endsWith(".md")))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Path> pages(String folder) {
    return pages().stream().filter(page -> page.startsWith(ROOT.resolve(folder))).toList();
  }

  static String name(Path page) {
    return ROOT.relativize(page).toString().replace('\\', '/');
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<Block> blocks(Path page) {
    List<Block> blocks = new ArrayList<>();
    List<String> lines = read(page).lines().toList();
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith(FENCE)) {
        String language = lines.get(i).substring(FENCE.length()).strip();
        int end = i + 1;
        while (end < lines.size() && !lines.get(end).equals(FENCE)) {
          end++;
        }
        assertThat(end).as("end of the block at %s:%s", name(page), i + 1).isLessThan(lines.size());
        String before = i == 0 ? "" : lines.get(i - 1);
        blocks.add(new Block(language, marker(before), lines.subList(i + 1, end), i + 1));
        i = end;
      }
    }
    return blocks;
  }

  private static String marker(String line) {
    return line.startsWith("<!-- ") && line.endsWith(" -->")
        ? line.substring("<!-- ".length(), line.length() - " -->".length())
        : "";
  }

  /** The lines of a region of a sample, without the indent they have in common. */
  static List<String> region(String sample, String name) {
    List<String> found = new ArrayList<>();
    boolean inside = false;
    boolean closed = false;
    for (String line : read(SAMPLES.resolve(sample)).lines().toList()) {
      String text = line.strip();
      if (text.equals("// region " + name)) {
        inside = true;
      } else if (inside && text.equals("// endregion")) {
        inside = false;
        closed = true;
      } else if (inside) {
        found.add(line);
      }
    }
    assertThat(closed).as("region %s of %s", name, sample).isTrue();
    int indent =
        found.stream()
            .filter(line -> !line.isBlank())
            .mapToInt(line -> line.length() - line.stripLeading().length())
            .min()
            .orElse(0);
    return found.stream()
        .map(line -> line.isBlank() ? "" : line.substring(indent))
        .collect(Collectors.joining("\n"))
        .strip()
        .lines()
        .toList();
  }

  /** Demands that a page be as given; writes it instead when regenerating. */
  static void expectPage(Path page, String wanted) {
    if (REGENERATE) {
      write(page, wanted);
    }
    assertThat(Files.exists(page) ? read(page) : "")
        .as("%s; to write it anew: mvn -pl rigging-core test -Dregenerate=true", name(page))
        .isEqualTo(wanted);
  }

  /**
   * Demands that a drawing be the given one, its numbers to a ten-thousandth of a pixel; writes it
   * instead when regenerating.
   */
  static void expectDrawing(Path file, String wanted) {
    String found = Files.exists(file) ? read(file) : "";
    double[] there = numbers(found);
    double[] here = numbers(wanted);
    boolean same =
        NUMBER.matcher(found).replaceAll("#").equals(NUMBER.matcher(wanted).replaceAll("#"));
    for (int i = 0; same && i < here.length; i++) {
      same =
          Math.abs(there[i] - here[i])
              <= Tolerances.ON_SHEET * 2 + Tolerances.EXACT * Math.abs(here[i]);
    }
    if (!same && REGENERATE) {
      write(file, wanted);
      return;
    }
    assertThat(same)
        .as("%s is drawn by the library; to write it anew: -Dregenerate=true", name(file))
        .isTrue();
  }

  /** Demands that a block hold the given lines; writes them instead when regenerating. */
  static void expectBlock(Path page, Block block, List<String> wanted) {
    if (sameToNineFigures(block.text(), String.join("\n", wanted))) {
      return;
    }
    if (REGENERATE) {
      List<String> lines = new ArrayList<>(read(page).lines().toList());
      lines.subList(block.firstLine(), block.firstLine() + block.lines().size()).clear();
      lines.addAll(block.firstLine(), wanted);
      write(page, String.join("\n", lines) + "\n");
      return;
    }
    assertThat(block.text())
        .as(
            "%s:%s, %s; to write it anew: mvn -pl rigging-core test -Dregenerate=true",
            name(page), block.firstLine(), block.marker())
        .isEqualTo(String.join("\n", wanted));
  }

  /**
   * Machines may differ in the last figure of an exponential or a sine, and so may printed ones.
   */
  private static boolean sameToNineFigures(String a, String b) {
    if (!NUMBER.matcher(a).replaceAll("#").equals(NUMBER.matcher(b).replaceAll("#"))) {
      return false;
    }
    double[] left = numbers(a);
    double[] right = numbers(b);
    for (int i = 0; i < left.length; i++) {
      if (Math.abs(left[i] - right[i]) > Tolerances.EXACT * Math.abs(right[i])) {
        return false;
      }
    }
    return true;
  }

  private static double[] numbers(String text) {
    return NUMBER
        .matcher(text)
        .results()
        .mapToDouble(number -> Double.parseDouble(number.group()))
        .toArray();
  }

  private static void write(Path page, String text) {
    try {
      Files.createDirectories(page.getParent());
      Files.writeString(page, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
