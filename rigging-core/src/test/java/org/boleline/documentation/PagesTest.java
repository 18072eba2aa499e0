package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.boleline.documentation.Docs.Block;
import org.junit.jupiter.api.Test;

/** What holds for every page: its code is compiled, its output was printed, its links lead on. */
class PagesTest {
  private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)\\s]+)\\)");
  private static final Pattern HEADING = Pattern.compile("(?m)^#{1,6} (.+)$");
  private static final Pattern JUDGEMENT =
      Pattern.compile(
          "\\b(is|are|be|looks?|seems?) safe\\b|\\bunsafe\\b|\\bapproved\\b|\\bcompliant\\b",
          Pattern.CASE_INSENSITIVE);

  @Test
  void code_in_pages_is_a_region_of_a_compiled_source() {
    for (Path page : Docs.pages()) {
      for (Block block : Docs.blocks(page)) {
        if (block.language().equals("java")) {
          assertThat(block.marker()).as(at(page, block)).startsWith("code: ");
        }
      }
      fill(page, "code: ", PagesTest::region);
    }
  }

  private static List<String> region(String name) {
    String[] sampleAndRegion = name.split("#", 2);
    return Docs.region(sampleAndRegion[0], sampleAndRegion[1]);
  }

  @Test
  void output_in_pages_is_what_the_library_printed() {
    Set<String> used = new TreeSet<>();
    for (Path page : Docs.pages()) {
      fill(
          page,
          "output: ",
          name -> {
            used.add(name);
            return Outputs.of(name).lines().toList();
          });
    }
    assertThat(used).containsExactlyElementsOf(Outputs.names());
  }

  @Test
  void files_in_pages_are_files_of_this_project() {
    for (Path page : Docs.pages()) {
      fill(page, "file: ", name -> Docs.read(Docs.file(name)).lines().toList());
    }
  }

  private interface Filling {
    List<String> of(String name);
  }

  /** Blocks from the last to the first, so that writing one does not move those still to come. */
  private static void fill(Path page, String kind, Filling filling) {
    List<Block> blocks = new ArrayList<>(Docs.blocks(page));
    Collections.reverse(blocks);
    for (Block block : blocks) {
      if (block.marker().startsWith(kind)) {
        Docs.expectBlock(page, block, filling.of(block.marker().substring(kind.length())));
      }
    }
  }

  @Test
  void lessons_and_guides_show_nothing_that_no_test_looks_at() {
    List<Path> pages = new ArrayList<>(Docs.pages("docs/learn"));
    pages.addAll(Docs.pages("docs/how-to"));
    pages.add(Docs.file("README.md"));
    for (Path page : pages) {
      for (Block block : Docs.blocks(page)) {
        if (Set.of("java", "json", "text", "").contains(block.language())) {
          assertThat(block.marker()).as(at(page, block)).isNotEmpty();
        }
      }
    }
  }

  private static String at(Path page, Block block) {
    return "marker before " + Docs.name(page) + ":" + block.firstLine();
  }

  @Test
  void links_lead_to_files_and_headings_that_are_there() {
    List<String> broken = new ArrayList<>();
    for (Path page : Docs.pages()) {
      String text = withoutBlocks(page);
      for (MatchResult link : LINK.matcher(text).results().toList()) {
        String target = link.group(1);
        if (!target.matches("[a-z]+:.*") && !leadsOn(page, target)) {
          broken.add(Docs.name(page) + " -> " + target);
        }
      }
    }
    assertThat(broken).isEmpty();
  }

  private static boolean leadsOn(Path page, String target) {
    String[] fileAndHeading = target.split("#", 2);
    Path file =
        fileAndHeading[0].isEmpty() ? page : page.resolveSibling(fileAndHeading[0]).normalize();
    return Files.exists(file)
        && (fileAndHeading.length == 1 || anchors(file).contains(fileAndHeading[1]));
  }

  private static Set<String> anchors(Path page) {
    return HEADING
        .matcher(withoutBlocks(page))
        .results()
        .map(heading -> anchor(heading.group(1)))
        .collect(Collectors.toSet());
  }

  /** As code hosts name a heading: lower case, no punctuation, hyphens for blanks. */
  private static String anchor(String heading) {
    return heading
        .strip()
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^a-z0-9 _-]", "")
        .replace(' ', '-');
  }

  private static String withoutBlocks(Path page) {
    return Docs.read(page).replaceAll("(?ms)^```.*?^```$", "");
  }

  @Test
  void no_page_judges() {
    for (Path page : Docs.pages()) {
      assertThat(JUDGEMENT.matcher(Docs.read(page)).results().map(MatchResult::group))
          .as(Docs.name(page))
          .isEmpty();
    }
  }

  @Test
  void every_page_is_reached_from_the_map() {
    Set<Path> reached = new TreeSet<>();
    List<Path> open = new ArrayList<>(List.of(Docs.file("docs/README.md")));
    while (!open.isEmpty()) {
      Path page = open.remove(open.size() - 1);
      if (!reached.add(page)) {
        continue;
      }
      for (MatchResult link : LINK.matcher(withoutBlocks(page)).results().toList()) {
        Path target = page.resolveSibling(link.group(1).replaceFirst("#.*", "")).normalize();
        if (target.startsWith(Docs.file("docs")) && target.toString().endsWith(".md")) {
          open.add(target);
        }
      }
    }
    assertThat(reached).containsAll(Docs.pages("docs"));
  }
}
