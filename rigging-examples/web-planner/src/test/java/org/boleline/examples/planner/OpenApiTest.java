package org.boleline.examples.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The description against the server; that each answer is in it, {@link Client} checks. */
class OpenApiTest {
  @Test
  void describes_every_path_with_its_method_and_no_other() {
    Set<String> served = new TreeSet<>();
    new Planning(Client.PLENTY, new Solves(Client.PLENTY))
        .resources()
        .forEach(
            (path, resource) ->
                served.add(
                    resource.method().toLowerCase(java.util.Locale.ROOT)
                        + " "
                        + (path.startsWith("/assets/") ? "/assets/{file}" : path)));

    Set<String> described = new TreeSet<>();
    Description.whole()
        .path("paths")
        .properties()
        .forEach(
            path ->
                path.getValue()
                    .fieldNames()
                    .forEachRemaining(
                        method -> {
                          if (!method.equals("parameters")) {
                            described.add(method + " " + path.getKey());
                          }
                        }));
    assertThat(described).isEqualTo(served);
  }

  @Test
  void every_reference_leads_somewhere() throws Exception {
    List<String> references = new ArrayList<>();
    collect(Description.whole(), references);
    assertThat(references).hasSizeGreaterThan(20);
    try (Client client = new Client(Client.PLENTY)) {
      for (String reference : new TreeSet<>(references)) {
        if (reference.startsWith("#")) {
          assertThat(Description.whole().at(reference.substring(1)).isObject())
              .as(reference)
              .isTrue();
        } else {
          JsonNode schema = Client.json(client.get(reference));
          assertThat(schema.path("$schema").asText()).as(reference).contains("2020-12");
        }
      }
    }
  }

  private static void collect(JsonNode node, List<String> references) {
    if (node.has("$ref")) {
      references.add(node.path("$ref").asText());
    }
    node.forEach(child -> collect(child, references));
  }
}
