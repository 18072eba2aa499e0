package org.boleline.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CautionTest {
  private static final Pattern BLANK = Pattern.compile("\\{([A-Za-z][A-Za-z0-9]*)}");

  @ParameterizedTest
  @EnumSource
  void braces_of_a_sentence_are_balanced_and_hold_names(CautionCode code) {
    String without = BLANK.matcher(code.sentence()).replaceAll("");
    assertThat(without).doesNotContain("{").doesNotContain("}");
  }

  @ParameterizedTest
  @EnumSource
  void a_sentence_is_one_sentence_or_two_and_judges_nothing(CautionCode code) {
    assertThat(code.sentence()).matches("[A-Z{].*\\.");
    assertThat(code.sentence()).doesNotContainIgnoringCase(" safe").doesNotContain("approved");
  }

  @ParameterizedTest
  @EnumSource
  void all_blanks_are_filled_from_the_values(CautionCode code) {
    Map<String, String> values = new HashMap<>();
    Matcher blanks = BLANK.matcher(code.sentence());
    while (blanks.find()) {
      values.put(blanks.group(1), "<" + blanks.group(1) + ">");
    }
    String sentence = new Caution(code, "/arrangements/0", values).sentence();
    assertThat(sentence).doesNotContain("{").doesNotContain("}");
    assertThat(values.values()).allSatisfy(value -> assertThat(sentence).contains(value));
  }

  @Test
  void values_are_copied_sorted_and_cannot_be_changed() {
    Map<String, String> values = new HashMap<>(Map.of("to", "b", "from", "a"));
    Caution caution = new Caution(CautionCode.ROPE_THROUGH_STEM, "", values);
    values.put("from", "changed");
    assertThat(caution.values().keySet()).containsExactly("from", "to");
    assertThat(caution.values()).containsEntry("from", "a");
    assertThatExceptionOfType(UnsupportedOperationException.class)
        .isThrownBy(() -> caution.values().put("x", "y"));
  }
}
