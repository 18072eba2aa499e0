package org.boleline.examples.planner;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.http.HttpResponse;

/** The server's description of itself (OpenAPI 3.1), as tests use it. */
final class Description {
  private Description() {}

  static JsonNode whole() {
    try {
      return Client.MAPPER.readTree(Resources.read("openapi.json"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Requires that the description knows the status and the media type of an answer. */
  static void holds(HttpResponse<String> response) {
    String path = response.uri().getPath();
    JsonNode paths = whole().path("paths");
    JsonNode item = path.startsWith("/assets/") ? paths.path("/assets/{file}") : paths.path(path);
    if (item.isMissingNode()) {
      assertThat(response.statusCode()).as(path).isIn(404, 421);
      return;
    }
    JsonNode operation = item.has("post") ? item.path("post") : item.path("get");
    JsonNode answer = operation.path("responses").path(Integer.toString(response.statusCode()));
    assertThat(answer.isObject()).as("%s answers %s", path, response.statusCode()).isTrue();
    JsonNode content = resolved(answer).path("content");
    String type = response.headers().firstValue("Content-Type").orElse("").split(";", -1)[0];
    assertThat(content.has(type) || content.has("*/*")).as("%s as %s", path, type).isTrue();
  }

  static JsonNode resolved(JsonNode node) {
    return node.has("$ref") ? whole().at(node.path("$ref").asText().substring(1)) : node;
  }
}
