package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.boleline.plan.Plan;
import org.boleline.statics.Statics;
import org.junit.jupiter.api.Test;

class PageTest {
  private static Comparison comparison(Plan plan, UnitSystem units) {
    return Comparison.of(Findings.of(Statics.analyse(plan)), units);
  }

  @Test
  void every_page_keeps_to_100_columns_without_blanks_at_line_ends() {
    for (Plan plan : Plans.ALL) {
      for (UnitSystem units : List.of(UnitSystem.SI, UnitSystem.US)) {
        for (Glyphs glyphs : Glyphs.values()) {
          assertThat(Page.print(comparison(plan, units), glyphs).lines())
              .allSatisfy(line -> assertThat(Page.width(line)).isLessThanOrEqualTo(100))
              .noneMatch(line -> line.endsWith(" "))
              .noneMatch(line -> line.contains(Scale.HARD_BLANK));
        }
      }
    }
  }

  @Test
  void more_arrangements_than_fit_side_by_side_follow_below() {
    Table table =
        new Table(
            Collections.nCopies(30, "heading"),
            List.of(new Table.Row("label", "unit", Collections.nCopies(30, "cell"))));
    Comparison comparison =
        new Comparison(
            "",
            "",
            List.of(),
            table,
            "",
            new Table(List.of(), List.of()),
            "",
            List.of(),
            new Table(List.of(), List.of()),
            List.of(),
            "",
            new Table(List.of(), List.of()),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            "");
    String page = Page.print(comparison, Glyphs.UNICODE);

    assertThat(page.lines()).allMatch(line -> line.length() <= 100);
    assertThat(page.split("cell", -1)).hasSize(31);
    assertThat(page.split("label", -1)).hasSizeGreaterThan(4);
  }

  @Test
  void plain_ascii_is_plain_but_for_what_the_plan_itself_says() {
    for (Plan plan : List.of(Plans.HORNBEAM, Plans.SYCAMORE, Plans.SPRUCE, Plans.POLE)) {
      assertThat(Page.print(comparison(plan, UnitSystem.SI), Glyphs.ASCII).chars())
          .allMatch(c -> c == '\n' || (c >= ' ' && c < 127));
    }
    assertThat(Page.print(comparison(Plans.MIXED, UnitSystem.SI), Glyphs.ASCII))
        .contains("Bäume", "->", " x ", "N ");
  }

  @Test
  void what_an_output_can_show_is_asked_of_its_charset() {
    assertThat(Glyphs.of(StandardCharsets.UTF_8)).isEqualTo(Glyphs.UNICODE);
    assertThat(Glyphs.of(StandardCharsets.UTF_16)).isEqualTo(Glyphs.UNICODE);
    assertThat(Glyphs.of(StandardCharsets.US_ASCII)).isEqualTo(Glyphs.ASCII);
    assertThat(Glyphs.of(StandardCharsets.ISO_8859_1)).isEqualTo(Glyphs.ASCII);
    assertThat(Glyphs.of(Charset.forName("windows-1252"))).isEqualTo(Glyphs.ASCII);
  }

  @Test
  void text_of_a_plan_cannot_steer_a_terminal() {
    assertThat(Page.clean("a\u001b[31mb\nc\u0000d\u202ee\u2028f\ud800g"))
        .isEqualTo("a [31mb c de fg");
    assertThat(Page.print(comparison(Plans.MIXED, UnitSystem.SI), Glyphs.UNICODE).chars())
        .noneMatch(c -> c != '\n' && Character.isISOControl(c));
  }

  @Test
  void wide_and_combining_characters_are_counted_as_they_show() {
    assertThat(Page.width("abc")).isEqualTo(3);
    assertThat(Page.width("树木")).isEqualTo(4);
    assertThat(Page.width("u\u0308")).isEqualTo(1);
    assertThat(Page.shortened("abcdefgh", 8)).isEqualTo("abcdefgh");
    assertThat(Page.shortened("abcdefghi", 8)).isEqualTo("abcde…");
  }
}
