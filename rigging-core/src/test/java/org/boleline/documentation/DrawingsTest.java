package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The drawings in the pages are those that the library draws. */
class DrawingsTest {
  @Test
  void drawings_in_pages_are_what_the_library_draws() {
    assertThat(Drawings.all()).hasSize(3);
    Drawings.all()
        .forEach((name, svg) -> Docs.expectDrawing(Docs.file("docs/how-to/" + name), svg));
  }
}
