package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Compares a page with one that was read and found right: the words exactly, the numbers to one
 * unit of their last printed figure, which is where a page that is as right may round otherwise.
 *
 * <p>Lines may break elsewhere, as numbers may get longer. To renew a page after a change that is
 * meant, write the output of the program over it, and read it.
 */
final class Golden {
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]+(\\.[0-9]+)?");

  private Golden() {}

  static void check(String found, String resource) {
    String golden = Plans.text(resource);
    String ourWords = words(found);
    String theirWords = words(golden);
    int same = Arrays.mismatch(ourWords.toCharArray(), theirWords.toCharArray());
    assertThat(about(ourWords, same)).isEqualTo(about(theirWords, same));
    Matcher ours = NUMBER.matcher(found);
    Matcher theirs = NUMBER.matcher(golden);
    while (theirs.find()) {
      assertThat(ours.find()).isTrue();
      BigDecimal expected = new BigDecimal(theirs.group());
      assertThat(new BigDecimal(ours.group()))
          .as("in \"..." + golden.substring(Math.max(0, theirs.start() - 60), theirs.end()) + "\"")
          .isCloseTo(expected, within(expected.ulp()));
    }
  }

  /** What stands about the first place that differs; nothing if there is none. */
  private static String about(String text, int place) {
    return place < 0
        ? ""
        : text.substring(
            Math.max(0, Math.min(text.length(), place - 80)), Math.min(text.length(), place + 80));
  }

  private static String words(String text) {
    return NUMBER
        .matcher(text)
        .replaceAll("#")
        .replaceAll("\\s+", " ")
        .replaceAll("─+", "─")
        .replaceAll("-{5,}", "-----");
  }
}
