package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.junit.jupiter.api.Test;

class BibliographyTest {
  @Test
  void every_source_that_was_read_or_remembered_has_an_entry() {
    String page = Docs.read(Docs.file("docs/bibliography.md"));
    List<String> missing =
        Code.sources().stream()
            .filter(
                source ->
                    source.reading() == Reading.READ || source.reading() == Reading.FROM_MEMORY)
            .map(Source::id)
            .distinct()
            .filter(id -> !page.contains("| " + id + " |"))
            .toList();

    assertThat(missing).isEmpty();
  }
}
