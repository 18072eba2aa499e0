package org.boleline.examples.planner;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;

/** A server and a client of it, for tests. Each answer is held against the description. */
final class Client implements AutoCloseable {
  static final ObjectMapper MAPPER = new ObjectMapper();
  static final Bounds PLENTY = Bounds.standard();

  private final PlannerServer server;
  private final HttpClient client = HttpClient.newHttpClient();

  Client(Bounds bounds) throws IOException {
    server =
        PlannerServer.start(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), bounds);
  }

  PlannerServer server() {
    return server;
  }

  String base() {
    return "http://localhost:" + server.address().getPort();
  }

  HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create(base() + path)).timeout(Duration.ofSeconds(60));
  }

  HttpRequest post(String path, String body) {
    return to(path)
        .header("Content-Type", "application/json")
        .POST(HttpRequest.BodyPublishers.ofString(body))
        .build();
  }

  HttpResponse<String> send(HttpRequest request) throws Exception {
    HttpResponse<String> response = client.send(request, HttpResponse.BodyHandlers.ofString(UTF_8));
    Description.holds(response);
    return response;
  }

  HttpResponse<String> get(String path) throws Exception {
    return send(to(path).build());
  }

  HttpResponse<String> postPlan(String path, String body) throws Exception {
    return send(post(path, body));
  }

  static JsonNode json(HttpResponse<String> response) throws IOException {
    return MAPPER.readTree(response.body());
  }

  static String demo() {
    return new String(Resources.read("hornbeam.json"), UTF_8);
  }

  @Override
  public void close() {
    server.close();
  }
}
