package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.boleline.explain.Refusals;
import org.boleline.units.QuantityText;
import org.junit.jupiter.api.Test;

class JsonTextTest {
  private static Json parsed(String text) {
    Refusals refusals = Refusals.none();
    Json tree = JsonText.parse(text, refusals);
    refusals.throwIfAny();
    return tree;
  }

  @Property(tries = 300, edgeCases = EdgeCasesMode.NONE)
  void what_is_printed_reads_back_to_the_same_tree(@ForAll("trees") Json tree) {
    String text = JsonText.print(tree);

    assertThat(parsed(text)).isEqualTo(tree);
    assertThat(JsonText.print(parsed(text))).isEqualTo(text);
    assertThat(text).endsWith("\n").doesNotContain("\r");
  }

  @Provide
  Arbitrary<Json> trees() {
    return tree(3);
  }

  private static Arbitrary<Json> tree(int depth) {
    Arbitrary<Json> leaf =
        Arbitraries.oneOf(
            Arbitraries.strings().ofMaxLength(40).map(Json.Text::new),
            Arbitraries.doubles().map(number -> new Json.Numeral(QuantityText.number(number))),
            Arbitraries.of(true, false).map(Json.Flag::new),
            Arbitraries.just(Json.Null.NULL));
    if (depth == 0) {
      return leaf;
    }
    Arbitrary<Json> inner = tree(depth - 1);
    return Arbitraries.oneOf(
        leaf,
        inner.list().ofMaxSize(5).map(list -> new Json.Elements(List.copyOf(list))),
        Arbitraries.maps(Arbitraries.strings().ofMaxLength(12), inner)
            .ofMaxSize(5)
            .map(Json.Members::new));
  }

  @Test
  void short_values_stand_on_one_line() {
    Json quantity = new ObjectBuilder().put("value", 0.5).put("unit", "m").build();

    assertThat(JsonText.print(quantity)).isEqualTo("{\"value\": 0.5, \"unit\": \"m\"}\n");
    assertThat(JsonText.print(new ObjectBuilder().put("length", quantity).build()))
        .isEqualTo("{\"length\": {\"value\": 0.5, \"unit\": \"m\"}}\n");
    assertThat(JsonText.print(new ObjectBuilder().put("id", "a").put("at", quantity).build()))
        .isEqualTo("{\n  \"id\": \"a\",\n  \"at\": {\"value\": 0.5, \"unit\": \"m\"}\n}\n");
    assertThat(JsonText.print(new ObjectBuilder().build())).isEqualTo("{}\n");
    assertThat(JsonText.print(new Json.Elements(List.of()))).isEqualTo("[]\n");
  }

  @Test
  void no_line_of_short_values_is_longer_than_100_characters() {
    ObjectBuilder object = new ObjectBuilder();
    for (int i = 0; i < 40; i++) {
      ObjectBuilder inner = new ObjectBuilder();
      for (int j = 0; j <= i; j++) {
        inner.put("m" + j, j);
      }
      object.put("member" + i, inner);
    }

    assertThat(JsonText.print(object.build()).lines()).allMatch(line -> line.length() <= 100);
  }
}
