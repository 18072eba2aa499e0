package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.boleline.explain.Refusal;
import org.junit.jupiter.api.Test;

class RefusalsPageTest {
  @Test
  void has_one_row_for_each_code_in_the_order_of_the_codes() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "reference", "refusals.md"));
    List<String> rows =
        Pattern.compile("^\\| `([A-Z_]+)` \\| .+ \\| .+ \\|$", Pattern.MULTILINE)
            .matcher(page)
            .results()
            .map((MatchResult row) -> row.group(1))
            .toList();

    assertThat(rows)
        .containsExactlyElementsOf(Stream.of(Refusal.Code.values()).map(Enum::name).toList());
  }
}
