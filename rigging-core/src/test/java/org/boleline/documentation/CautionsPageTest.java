package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.boleline.explain.CautionCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CautionsPageTest {
  private static final Pattern ENTRY =
      Pattern.compile("(?ms)^### ([A-Z_]+)\n\n> ([^\n]+)\n\n(.+?)\n(?=\n###|\\z)");

  /** Sentence and explanation of each code, in the order of the page. */
  private static Map<String, String[]> entries() {
    Map<String, String[]> entries = new LinkedHashMap<>();
    String page = Docs.read(Docs.file("docs/reference/cautions.md"));
    for (MatchResult entry : ENTRY.matcher(page).results().toList()) {
      entries.put(entry.group(1), new String[] {entry.group(2), entry.group(3)});
    }
    return entries;
  }

  @Test
  void has_an_entry_for_each_code_in_the_order_of_the_codes() {
    assertThat(entries().keySet())
        .containsExactlyElementsOf(Stream.of(CautionCode.values()).map(Enum::name).toList());
  }

  @Test
  void gives_the_sentence_of_the_code_and_says_when_it_is_raised() {
    Map<String, String[]> entries = entries();
    for (CautionCode code : CautionCode.values()) {
      assertThat(entries.get(code.name())[0]).isEqualTo(code.sentence());
      assertThat(entries.get(code.name())[1]).startsWith("Raised ");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "LARGE_MOVEMENT, LARGE_MOVEMENT, more than 0.1 of the length",
    "LOW_STIFFNESS, LOW_STIFFNESS, is below 0.3",
    "TAIL_UNDER_LOAD, UNDER_LOAD, less than 2 m",
    "HAND_LEG_LEFT_OUT, HAND_LEG, above 0.05 of the tension"
  })
  void names_the_threshold_of_the_code_and_whose_choice_it_is(
      String code, String field, String words) {
    String text = entries().get(code)[1].replaceAll("\\s+", " ");
    double threshold = (double) Code.constant("org.boleline.statics.Cautions", field);

    assertThat(text).contains(words).contains("our choice");
    assertThat(Double.parseDouble(words.replaceAll("[^0-9.]", ""))).isEqualTo(threshold);
  }
}
