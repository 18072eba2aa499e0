package org.boleline.examples.planner;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.ByteArrayOutputStream;
import java.io.InputStreamReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.zip.GZIPOutputStream;
import org.boleline.drop.Drops;
import org.boleline.json.PlanReader;
import org.boleline.json.ResultWriter;
import org.boleline.limits.Checks;
import org.boleline.picture.ForcePicture;
import org.boleline.picture.PictureSpec;
import org.boleline.plan.Plan;
import org.boleline.statics.Statics;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Expectations are those of RFC 9110 (HTTP) and RFC 9457 (problem details). */
class PlannerServerTest {
  private static final String PICTURE = "/picture?arrangement=pole";
  private static Client client;

  @BeforeAll
  static void start() throws Exception {
    client = new Client(new Bounds(64 * 1024, Duration.ofSeconds(30), 2, Duration.ofSeconds(2)));
  }

  @AfterAll
  static void stop() {
    client.close();
  }

  /** A plan that is solved quickly. */
  private static ObjectNode least() throws Exception {
    return (ObjectNode)
        Client.MAPPER.readTree(
            """
            {"format": "rigging-plan/1",
             "stems": [{"id": "pole", "shape": {"lean": "20 deg", "azimuth": "0 deg", "length": "8 m"},
               "diameters": [{"at": "0 m", "outer": "0.3 m"}, {"at": "8 m", "outer": "0.2 m"}],
               "wood": {"modulusOfElasticity": "9 GPa", "density": "800 kg/m3"}}],
             "piece": {"mass": "50 kg"},
             "arrangements": [{"id": "pole", "motion": "lowering",
               "contacts": [{"stem": "pole", "at": "7 m", "hardware": {"ring": {"friction": 0.2}}}],
               "tail": {"direction": "down"}}]}
            """);
  }

  /** A plan that takes longer than a hasty server gives it. */
  private static String slow() throws Exception {
    return slow(30).toString();
  }

  private static ObjectNode slow(int arrangements) throws Exception {
    ObjectNode plan = (ObjectNode) Client.MAPPER.readTree(Client.demo());
    plan.remove(List.of("ranges", "rangeStudy", "notes"));
    ArrayNode ways = (ArrayNode) plan.path("arrangements");
    JsonNode first = ways.get(2);
    ways.removeAll();
    for (int i = 0; i < arrangements; i++) {
      ways.add(((ObjectNode) first.deepCopy()).put("id", "way " + i));
    }
    return plan;
  }

  private static JsonNode problem(HttpResponse<String> response, int status) throws Exception {
    assertThat(response.statusCode()).isEqualTo(status);
    assertThat(response.headers().firstValue("Content-Type")).hasValue("application/problem+json");
    JsonNode problem = Client.json(response);
    assertThat(problem.path("status").asInt()).isEqualTo(status);
    assertThat(problem.path("title").asText()).isNotEmpty();
    assertThat(problem.path("detail").asText()).isNotEmpty();
    assertThat(problem.path("type").asText()).isNotEmpty();
    return problem;
  }

  @Test
  void a_plan_gets_the_result_of_the_library() throws Exception {
    HttpResponse<String> response = client.postPlan("/solve", least().toString());

    assertThat(response.statusCode()).isEqualTo(200);
    Plan plan = PlanReader.read(least().toString());
    assertThat(response.body())
        .isEqualTo(
            ResultWriter.write(
                Checks.of(Drops.analyse(Statics.analyse(plan))), List.of(), List.of()));
  }

  @Test
  void a_plan_gets_the_picture_of_the_library() throws Exception {
    HttpResponse<String> response =
        client.postPlan(PICTURE + "&width=390&height=600&id=3", least().toString());

    assertThat(response.statusCode()).isEqualTo(200);
    Plan plan = PlanReader.read(least().toString());
    PictureSpec spec = PictureSpec.STANDARD.withId("picture-3").withSheet(390, 600);
    assertThat(response.body())
        .isEqualTo(ForcePicture.of(Statics.analyse(plan), "pole", spec).svg());
  }

  @Test
  void a_view_is_result_and_picture_in_one() throws Exception {
    String plan = least().toString();
    HttpResponse<String> response = client.postPlan("/view?arrangement=pole", plan);

    assertThat(response.statusCode()).isEqualTo(200);
    JsonNode view = Client.json(response);
    assertThat(view.path("result")).isEqualTo(Client.json(client.postPlan("/solve", plan)));
    assertThat(view.path("picture").asText()).isEqualTo(client.postPlan(PICTURE, plan).body());
  }

  @Test
  void files_of_the_page_are_served_with_their_types_and_heads() throws Exception {
    for (Map.Entry<String, Resource> entry :
        new Planning(Client.PLENTY, new Solves(Client.PLENTY)).resources().entrySet()) {
      String path = entry.getKey();
      if (entry.getValue().method().equals("POST")) {
        continue;
      }

      HttpResponse<String> whole = client.get(path);
      assertThat(whole.statusCode()).as(path).isEqualTo(200);
      HttpResponse<String> head =
          client.send(client.to(path).method("HEAD", HttpRequest.BodyPublishers.noBody()).build());
      assertThat(head.statusCode()).as(path).isEqualTo(200);
      assertThat(head.body()).isEmpty();
      assertThat(head.headers().firstValue("Content-Length"))
          .hasValue(Integer.toString(whole.body().getBytes(UTF_8).length));
    }
  }

  @Test
  void every_answer_carries_the_headers_of_security() throws Exception {
    for (HttpResponse<String> response :
        List.of(client.get("/"), client.get("/nowhere"), client.postPlan("/solve", "{"))) {
      var headers = response.headers();
      assertThat(headers.firstValue("Content-Security-Policy").orElseThrow())
          .contains("default-src 'self'", "frame-ancestors 'none'")
          .doesNotContain("unsafe");
      assertThat(headers.firstValue("X-Content-Type-Options")).hasValue("nosniff");
      assertThat(headers.firstValue("Referrer-Policy")).hasValue("no-referrer");
      assertThat(headers.map().keySet())
          .noneMatch(name -> name.toLowerCase(java.util.Locale.ROOT).startsWith("access-control"));
    }
  }

  @Test
  void a_refused_plan_gets_all_reasons_with_their_pointers() throws Exception {
    ObjectNode plan = least();
    ((ObjectNode) plan.path("piece")).put("mass", "50 m");
    ((ObjectNode) plan.at("/arrangements/0/contacts/0")).put("at", "7");
    plan.put("odd name %ü", 1);

    for (String path : List.of("/solve", PICTURE, "/view?arrangement=pole")) {
      JsonNode errors = problem(client.postPlan(path, plan.toString()), 422).path("errors");

      List<String> pointers = new ArrayList<>();
      errors.forEach(error -> pointers.add(error.path("pointer").asText()));
      assertThat(pointers)
          .containsExactlyInAnyOrder(
              "#/piece/mass", "#/arrangements/0/contacts/0/at", "#/odd%20name%20%25%C3%BC");
      errors.forEach(error -> assertThat(error.path("detail").asText()).contains("wants", "got"));
    }
  }

  /** Two points at one place are told apart only once the plan is solved. */
  @Test
  void a_plan_that_is_refused_while_it_is_solved_gets_its_reasons_too() throws Exception {
    ObjectNode plan = least();
    ArrayNode contacts = (ArrayNode) plan.at("/arrangements/0/contacts");
    contacts.add(contacts.get(0).deepCopy());

    for (String path : List.of("/solve", PICTURE, "/view?arrangement=pole")) {
      JsonNode errors = problem(client.postPlan(path, plan.toString()), 422).path("errors");
      assertThat(errors.at("/0/pointer").asText()).startsWith("#/arrangements/0/contacts/1");
    }
  }

  @Test
  void what_is_no_json_or_nested_too_deep_is_a_bad_request() throws Exception {
    assertThat(problem(client.postPlan("/solve", "{\"format\": "), 400).path("type").asText())
        .isEqualTo("urn:org.boleline:problem:not-json");
    problem(client.postPlan("/solve", ""), 400);
    problem(client.postPlan("/solve", "[".repeat(60_000)), 400);
    HttpRequest notUtf8 =
        client
            .to("/solve")
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofByteArray(new byte[] {'"', (byte) 0xff, '"'}))
            .build();
    problem(client.send(notUtf8), 400);
  }

  @Test
  void a_body_beyond_the_bound_is_too_large() throws Exception {
    String most = " ".repeat(64 * 1024 - least().toString().length()) + least();
    assertThat(client.postPlan("/solve", most).statusCode()).isEqualTo(200);
    problem(client.postPlan("/solve", " " + most), 413);
    problem(client.postPlan(PICTURE, " ".repeat(900_000)), 413);
  }

  @Test
  void a_body_of_another_type_is_not_read() throws Exception {
    for (String type :
        List.of("text/plain", "application/json; charset=latin1", "application/xml")) {
      HttpRequest request =
          client
              .to("/solve")
              .header("Content-Type", type)
              .POST(HttpRequest.BodyPublishers.ofString("{}"))
              .build();
      HttpResponse<String> response = client.send(request);
      problem(response, 415);
      assertThat(response.headers().firstValue("Accept-Post")).hasValue("application/json");
    }
    HttpRequest utf8 =
        client
            .to("/solve")
            .header("Content-Type", "application/json; charset=UTF-8")
            .POST(HttpRequest.BodyPublishers.ofString(least().toString()))
            .build();
    assertThat(client.send(utf8).statusCode()).isEqualTo(200);
  }

  /**
   * RFC 9110, section 15.5.16: a content coding that is not read is answered with those that are.
   */
  @Test
  void a_body_with_a_content_coding_is_not_read() throws Exception {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
      out.write(least().toString().getBytes(UTF_8));
    }
    HttpRequest.Builder request =
        client
            .to("/solve")
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofByteArray(packed.toByteArray()));
    HttpResponse<String> response = client.send(request.header("Content-Encoding", "gzip").build());
    problem(response, 415);
    assertThat(response.headers().firstValue("Accept-Encoding")).hasValue("identity");
    assertThat(response.headers().firstValue("Accept-Post")).isEmpty();
    HttpRequest plain =
        client
            .to("/solve")
            .header("Content-Type", "application/json")
            .header("Content-Encoding", "identity")
            .POST(HttpRequest.BodyPublishers.ofString(least().toString()))
            .build();
    assertThat(client.send(plain).statusCode()).isEqualTo(200);
  }

  /** RFC 9110, section 12.5.1 with 5.6.1: nothing is asked for. */
  @Test
  void an_empty_accept_takes_all() {
    for (List<String> accept : List.of(List.of(""), List.of(" , ,"), List.of("", ""))) {
      assertThat(MediaTypes.accepts(accept, Answer.JSON)).isTrue();
    }
    assertThat(MediaTypes.accepts(List.of(",text/html,"), Answer.JSON)).isFalse();
  }

  @Test
  void a_client_that_takes_no_type_of_the_answer_is_told() throws Exception {
    for (String accept : List.of("text/html", "application/json;q=0, */*", "image/*")) {
      HttpRequest request =
          client
              .to("/solve")
              .header("Content-Type", "application/json")
              .header("Accept", accept)
              .POST(HttpRequest.BodyPublishers.ofString("{}"))
              .build();
      problem(client.send(request), 406);
    }
    problem(client.send(client.to("/").header("Accept", "image/png").build()), 406);
    HttpRequest browser =
        client.to("/").header("Accept", "text/html,application/xhtml+xml;q=0.9,*/*;q=0.8").build();
    assertThat(client.send(browser).statusCode()).isEqualTo(200);
  }

  @Test
  void unknown_paths_and_methods_are_told() throws Exception {
    problem(client.get("/nowhere"), 404);
    problem(client.get("/assets/../index.html"), 404);
    problem(client.get("/assets/nothing.js"), 404);
    HttpResponse<String> response = client.get("/solve");
    problem(response, 405);
    assertThat(response.headers().firstValue("Allow")).hasValue("POST");
    response = client.postPlan("/", "{}");
    problem(response, 405);
    assertThat(response.headers().firstValue("Allow")).hasValue("GET, HEAD");
    HttpRequest preflight =
        client.to("/solve").method("OPTIONS", HttpRequest.BodyPublishers.noBody()).build();
    problem(client.send(preflight), 405);
  }

  @Test
  void a_query_that_cannot_be_read_is_a_bad_request() throws Exception {
    String plan = least().toString();
    for (String query :
        List.of(
            "",
            "?arrangement=other",
            "?arrangement=pole&arrangement=pole",
            "?arrangement=pole&width=5",
            "?arrangement=pole&height=1e3",
            "?arrangement=pole&theme=red",
            "?arrangement=pole&colour=red",
            "?arrangement=%zz")) {
      String path = "/picture" + query;
      if (query.contains("%zz")) {
        assertThat(raw("POST " + path + " HTTP/1.1", "localhost")).startsWith("HTTP/1.1 400");
      } else {
        problem(client.postPlan(path, plan), 400);
      }
    }
    problem(client.postPlan("/solve?x=1", plan), 400);
  }

  /** Sends a request by hand, as clients of the JDK do not let one state the host. */
  private static String raw(String line, String host) throws Exception {
    return raw(line, host, client.server());
  }

  private static String raw(String line, String host, PlannerServer server) throws Exception {
    try (Socket socket = new Socket()) {
      socket.connect(server.address());
      socket
          .getOutputStream()
          .write(
              (line
                      + "\r\nHost: "
                      + host
                      + "\r\nContent-Type: application/json\r\nContent-Length: 0\r\n\r\n")
                  .getBytes(UTF_8));
      return new BufferedReader(new InputStreamReader(socket.getInputStream(), UTF_8)).readLine();
    }
  }

  @Test
  void names_that_are_not_of_this_machine_are_misdirected() throws Exception {
    for (String host : List.of("localhost", "LOCALHOST:8080", "127.0.0.1:1", "[::1]:80")) {
      assertThat(raw("GET / HTTP/1.1", host)).as(host).startsWith("HTTP/1.1 200");
    }
    for (String host :
        List.of("rebound.example", "localhost.example", "127.0.0.1.example", "", "example:80")) {
      assertThat(raw("GET / HTTP/1.1", host)).as(host).startsWith("HTTP/1.1 421");
    }
  }

  /** All of 127.0.0.0/8 is this machine (RFC 1122, section 3.2.1.3). */
  @Test
  void a_server_at_another_loopback_address_answers_to_it() throws Exception {
    InetSocketAddress wanted = new InetSocketAddress(InetAddress.getByName("127.0.0.5"), 0);
    try (PlannerServer other = PlannerServer.start(wanted, Client.PLENTY)) {
      assertThat(other.page().toString())
          .isEqualTo("http://127.0.0.5:" + other.address().getPort() + "/");
      HttpResponse<String> page =
          HttpClient.newHttpClient()
              .send(
                  HttpRequest.newBuilder(other.page()).build(),
                  HttpResponse.BodyHandlers.ofString(UTF_8));
      assertThat(page.statusCode()).isEqualTo(200);
      for (String host : List.of("localhost", "127.0.0.5")) {
        assertThat(raw("GET / HTTP/1.1", host, other)).as(host).startsWith("HTTP/1.1 200");
      }
      for (String host : List.of("127.0.0.6", "rebound.example")) {
        assertThat(raw("GET / HTTP/1.1", host, other)).as(host).startsWith("HTTP/1.1 421");
      }
    }
  }

  /** RFC 3986, section 3.2.2: an address of version 6 stands in brackets. */
  @Test
  void the_page_of_each_address_can_be_opened() throws Exception {
    Map<String, String> hosts =
        Map.of(
            "127.0.0.1", "localhost",
            "0.0.0.0", "localhost",
            "::", "localhost",
            "::1", "[0:0:0:0:0:0:0:1]",
            "fe80::1", "[fe80:0:0:0:0:0:0:1]",
            "192.0.2.7", "192.0.2.7");
    for (Map.Entry<String, String> entry : hosts.entrySet()) {
      assertThat(PlannerServer.host(InetAddress.getByName(entry.getKey())))
          .isEqualTo(entry.getValue());
    }
  }

  @Test
  void a_plan_that_takes_too_long_is_given_up() throws Exception {
    Bounds hasty = new Bounds(256 * 1024, Duration.ofMillis(30), 1, Duration.ZERO);
    try (Client other = new Client(hasty)) {
      HttpResponse<String> response = other.postPlan("/solve", slow());

      assertThat(problem(response, 503).path("type").asText())
          .isEqualTo("urn:org.boleline:problem:too-long");
      assertThat(response.headers().firstValue("Retry-After")).isPresent();
    }
  }

  @Test
  void work_that_is_given_up_is_told_so_and_keeps_its_place_until_it_ends() throws Exception {
    CountDownLatch told = new CountDownLatch(1);
    CountDownLatch end = new CountDownLatch(1);
    try (Solves solves =
        new Solves(new Bounds(1, Duration.ofMillis(30), 1, Duration.ofMillis(30)))) {
      Solves.Work<String> stubborn =
          givenUp -> {
            while (!givenUp.getAsBoolean()) {
              Thread.onSpinWait();
            }
            told.countDown();
            end.await();
            return "late";
          };
      assertThatExceptionOfType(Problem.class)
          .isThrownBy(() -> solves.run(stubborn))
          .withMessageContaining("Send fewer");
      told.await();
      assertThatExceptionOfType(Problem.class)
          .isThrownBy(() -> solves.run(givenUp -> "next"))
          .withMessageContaining("Ask again");
    } finally {
      end.countDown();
    }
  }

  /** Without the word that no one waits any more, this plan would hold its place for minutes. */
  @Test
  void a_plan_that_is_given_up_frees_its_place() throws Exception {
    Bounds hasty = new Bounds(256 * 1024, Duration.ofSeconds(4), 1, Duration.ofSeconds(10));
    ObjectNode plan = slow(200);
    for (JsonNode way : plan.withArray("arrangements")) {
      ((ObjectNode) way)
          .putObject("drop")
          .put("fall", "2 m")
          .put("device", "locked")
          .put("level", "inTime")
          .put("duration", "600 s");
    }
    try (Client other = new Client(hasty)) {
      assertThat(problem(other.postPlan("/solve", plan.toString()), 503).path("type").asText())
          .isEqualTo("urn:org.boleline:problem:too-long");
      assertThat(other.postPlan("/solve", Client.demo()).statusCode()).isEqualTo(200);
    }
  }

  @Test
  void no_more_plans_are_solved_at_once_than_there_are_places() throws Exception {
    Bounds one = new Bounds(256 * 1024, Duration.ofSeconds(30), 1, Duration.ZERO);
    CompletableFuture<HttpResponse<String>> first;
    CompletableFuture<HttpResponse<String>> second;
    try (Client other = new Client(one)) {
      String plan = slow();
      first = CompletableFuture.supplyAsync(() -> sent(other, plan));
      second = CompletableFuture.supplyAsync(() -> sent(other, plan));
      CompletableFuture.anyOf(first, second).get();
    }

    // Closing the server let the other one end.
    HttpResponse<String> refused = first.get().statusCode() == 503 ? first.get() : second.get();
    assertThat(problem(refused, 503).path("type").asText())
        .isEqualTo("urn:org.boleline:problem:busy");
    assertThat(refused.headers().firstValue("Retry-After")).isPresent();
    assertThat(first.get().statusCode() + second.get().statusCode()).isEqualTo(200 + 503);
  }

  private static HttpResponse<String> sent(Client other, String plan) {
    try {
      return other.postPlan("/solve", plan);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }
}
