package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Names of tests, files and versions that pages speak of are there. */
class NamesInPagesTest {
  private static final Pattern TEST = Pattern.compile("`([A-Z][A-Za-z]*Test)`");
  private static final Pattern PLACE =
      Pattern.compile("`((?:rigging-core|rigging-examples|docs)/[A-Za-z0-9/._-]+)`");

  private static Set<String> testClasses() throws IOException {
    try (Stream<Path> files = Files.walk(Docs.file("."))) {
      return new TreeSet<>(
          files
              .map(file -> file.getFileName().toString())
              .filter(name -> name.endsWith("Test.java"))
              .map(name -> name.substring(0, name.length() - ".java".length()))
              .toList());
    }
  }

  @Test
  void tests_that_pages_name_are_there() throws IOException {
    Set<String> named = new TreeSet<>();
    for (Path page : Docs.pages()) {
      TEST.matcher(Docs.read(page)).results().map(name -> name.group(1)).forEach(named::add);
    }
    named.remove("XTest"); // stands for any
    assertThat(testClasses()).containsAll(named);
  }

  @Test
  void places_that_pages_name_are_there() {
    List<String> missing = new ArrayList<>();
    for (Path page : Docs.pages()) {
      for (MatchResult place : PLACE.matcher(Docs.read(page)).results().toList()) {
        boolean built = place.group(1).contains("/target/") || place.group(1).endsWith("/target");
        if (!built && !Files.exists(Docs.file(place.group(1)))) {
          missing.add(Docs.name(page) + ": " + place.group(1));
        }
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void versions_in_the_guide_for_host_programs_are_those_of_the_build() {
    String build = Docs.read(Docs.file("pom.xml"));
    String guide = Docs.read(Docs.file("docs/how-to/read-a-plan.md"));

    assertThat(guide)
        .contains("<version>" + property(build, "jackson.version") + "</version>")
        .contains(
            "<version>" + property(build, "revision").replace("-SNAPSHOT", "") + "</version>");
  }

  private static String property(String build, String name) {
    int start = build.indexOf("<" + name + ">") + name.length() + 2;
    return build.substring(start, build.indexOf("</" + name + ">", start));
  }
}
