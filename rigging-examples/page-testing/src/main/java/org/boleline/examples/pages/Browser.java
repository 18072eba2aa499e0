package org.boleline.examples.pages;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A Chromium without a window, driven as W3C WebDriver has it. */
public final class Browser implements AutoCloseable {
  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final Pattern STARTED = Pattern.compile("started successfully on port (\\d+)");
  private static final Pattern SHEET = Pattern.compile("/Type\\s*/Page\\b(?!s)");
  private static final Path FOLDER = Path.of("target", "screenshots");
  private static final String ELEMENT = "element-6066-11e4-a52e-4f735466cecf";

  private final Process driver;
  private final HttpClient client = HttpClient.newHttpClient();
  private final String session;

  private Browser(Process driver, String session) {
    this.driver = driver;
    this.session = session;
  }

  /** A program of one of these names on the path. */
  private static Optional<Path> program(String... names) {
    return Stream.of(names)
        .flatMap(
            name ->
                Stream.of(System.getenv("PATH").split(File.pathSeparator, -1))
                    .map(folder -> Path.of(folder, name)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** What is missing to drive a browser; empty if nothing is. */
  public static String missing() {
    if (program("chromium", "chromium-browser", "google-chrome").isEmpty()) {
      return "no Chromium on the path (Debian: apt-get install chromium)";
    }
    return program("chromedriver").isEmpty()
        ? "no chromedriver on the path (Debian: apt-get install chromium-driver)"
        : "";
  }

  /** Starts a browser whose profile is in an empty folder. */
  public static Browser start(Path folder) throws Exception {
    Process driver =
        new ProcessBuilder(program("chromedriver").orElseThrow().toString(), "--port=0")
            .redirectErrorStream(true)
            .start();
    try {
      BufferedReader lines =
          new BufferedReader(
              new InputStreamReader(driver.getInputStream(), StandardCharsets.UTF_8));
      String port = null;
      for (String line = lines.readLine(); line != null && port == null; line = lines.readLine()) {
        Matcher started = STARTED.matcher(line);
        port = started.find() ? started.group(1) : null;
        if (port != null) {
          break;
        }
      }
      if (port == null) {
        throw new IOException("chromedriver did not start");
      }
      ObjectNode wanted = MAPPER.createObjectNode();
      ObjectNode always = wanted.putObject("capabilities").putObject("alwaysMatch");
      always.putObject("goog:loggingPrefs").put("browser", "ALL");
      ObjectNode options = always.putObject("goog:chromeOptions");
      options.put(
          "binary",
          program("chromium", "chromium-browser", "google-chrome").orElseThrow().toString());
      ArrayNode arguments = options.putArray("args");
      List.of(
              "--headless",
              "--no-sandbox",
              "--disable-gpu",
              "--disable-quic",
              "--no-first-run",
              "--disable-background-networking",
              "--disable-component-update",
              "--disable-sync",
              "--user-data-dir=" + folder)
          .forEach(arguments::add);
      String base = "http://localhost:" + port + "/session";
      Browser starting = new Browser(driver, base);
      String id = starting.call("POST", "", wanted).path("sessionId").asText();
      return new Browser(driver, base + "/" + id);
    } catch (IOException | RuntimeException e) {
      driver.destroy();
      throw e;
    }
  }

  private JsonNode call(String method, String path, JsonNode body) {
    try {
      HttpRequest request =
          HttpRequest.newBuilder(URI.create(session + path))
              .timeout(Duration.ofSeconds(60))
              .method(method, HttpRequest.BodyPublishers.ofString(body.toString()))
              .build();
      HttpResponse<String> response =
          client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
      JsonNode value = MAPPER.readTree(response.body()).path("value");
      if (response.statusCode() != 200) {
        throw new IllegalStateException(path + ": " + value.path("message").asText());
      }
      return value;
    } catch (IOException | InterruptedException e) {
      throw new IllegalStateException(path, e);
    }
  }

  private static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  private void command(String name, ObjectNode parameters) {
    call("POST", "/goog/cdp/execute", object().put("cmd", name).set("params", parameters));
  }

  public void open(String url) {
    call("POST", "/url", object().put("url", url));
  }

  /** Makes the sheet so large, and a phone's if it is one. */
  public void size(int width, int height, boolean phone) {
    command(
        "Emulation.setDeviceMetricsOverride",
        object()
            .put("width", width)
            .put("height", height)
            .put("deviceScaleFactor", 1)
            .put("mobile", phone));
  }

  public void theme(String name) {
    ObjectNode media = object();
    media.putArray("features").addObject().put("name", "prefers-color-scheme").put("value", name);
    command("Emulation.setEmulatedMedia", media);
  }

  /** Runs the body of a function in the page and returns what it returns. */
  public JsonNode run(String script) {
    ObjectNode body = object().put("script", script);
    body.putArray("args");
    return call("POST", "/execute/sync", body);
  }

  public String text(String selector) {
    return run("return document.querySelector(`" + selector + "`).textContent").asText();
  }

  /** Waits until something holds, for some seconds. */
  public void await(String what, Supplier<Boolean> condition) throws InterruptedException {
    for (int i = 0; i < 400; i++) {
      if (condition.get()) {
        return;
      }
      Thread.sleep(25);
    }
    throw new AssertionError("waited in vain: " + what);
  }

  public void awaitTrue(String script) throws InterruptedException {
    await(script, () -> run("return Boolean(" + script + ")").asBoolean());
  }

  private String element(String selector) {
    return call("POST", "/element", object().put("using", "css selector").put("value", selector))
        .path(ELEMENT)
        .asText();
  }

  public void type(String selector, String keys) {
    call("POST", "/element/" + element(selector) + "/value", object().put("text", keys));
  }

  public void click(String selector) {
    call("POST", "/element/" + element(selector) + "/click", object());
  }

  /** Presses a key where the focus is. */
  public void key(String key) {
    ObjectNode actions = object();
    ObjectNode source = actions.putArray("actions").addObject();
    source.put("type", "key").put("id", "keys");
    ArrayNode steps = source.putArray("actions");
    steps.addObject().put("type", "keyDown").put("value", key);
    steps.addObject().put("type", "keyUp").put("value", key);
    call("POST", "/actions", actions);
  }

  /** Drags from the middle of an element by so many pixels, in steps of some milliseconds. */
  public void drag(String selector, String pointer, int right, int down, int steps, int pause) {
    JsonNode from =
        run(
            "const node = document.querySelector(`"
                + selector
                + "`); node.scrollIntoView({block: 'center'});"
                + " const r = node.getBoundingClientRect();"
                + " return [Math.round(r.x + r.width / 2), Math.round(r.y + r.height / 2)]");
    ObjectNode actions = object();
    ObjectNode source = actions.putArray("actions").addObject();
    source.put("type", "pointer").put("id", "pointer-" + pointer);
    source.putObject("parameters").put("pointerType", pointer);
    ArrayNode list = source.putArray("actions");
    move(list, from.get(0).asInt(), from.get(1).asInt(), 0);
    list.addObject().put("type", "pointerDown").put("button", 0);
    for (int i = 1; i <= steps; i++) {
      move(
          list,
          from.get(0).asInt() + right * i / steps,
          from.get(1).asInt() + down * i / steps,
          pause);
    }
    list.addObject().put("type", "pointerUp").put("button", 0);
    call("POST", "/actions", actions);
  }

  private static void move(ArrayNode list, int x, int y, int milliseconds) {
    list.addObject()
        .put("type", "pointerMove")
        .put("duration", milliseconds)
        .put("x", x)
        .put("y", y);
  }

  /** What the page wrote to the console as an error or a warning. */
  public List<String> complaints() {
    JsonNode log = call("POST", "/se/log", object().put("type", "browser"));
    return Stream.iterate(0, i -> i + 1)
        .limit(log.size())
        .map(log::get)
        .filter(entry -> !entry.path("level").asText().matches("INFO|DEBUG"))
        .map(entry -> entry.path("message").asText())
        .toList();
  }

  /**
   * Returns what axe-core finds wrong with the page.
   *
   * @return rules that are broken, with where; empty if there are none
   */
  public List<String> accessibilityFaults() throws IOException, InterruptedException {
    run(
        axe()
            + "\nwindow.found = null; axe.run().then(result => { window.found ="
            + " result.violations.map(v => `${v.impact} ${v.id}: ${v.nodes.map(n =>"
            + " n.html).join(' | ')}`); }); return null");
    awaitTrue("window.found");
    List<String> found = new ArrayList<>();
    run("return window.found").forEach(fault -> found.add(fault.asText()));
    return found;
  }

  /** The text of axe-core, from its jar on the class path. */
  private static String axe() throws IOException {
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator, -1)) {
      if (entry.contains("axe-core")) {
        try (ZipFile jar = new ZipFile(entry)) {
          ZipEntry file =
              jar.stream()
                  .filter(e -> e.getName().endsWith("/axe.min.js"))
                  .findFirst()
                  .orElseThrow();
          return new String(jar.getInputStream(file).readAllBytes(), StandardCharsets.UTF_8);
        }
      }
    }
    throw new IOException("no axe-core on the class path");
  }

  /** Shows the page as on paper, or on a screen again. */
  public void onPaper(boolean paper) {
    command("Emulation.setEmulatedMedia", object().put("media", paper ? "print" : ""));
  }

  /**
   * Prints the page.
   *
   * @param name name of the file in target/screenshots
   * @param centimetresWide width of the paper
   * @param centimetresHigh height of the paper
   * @return how many sheets it takes
   */
  public int print(String name, double centimetresWide, double centimetresHigh) throws IOException {
    ObjectNode paper = object().put("background", false);
    paper.putObject("page").put("width", centimetresWide).put("height", centimetresHigh);
    byte[] pdf = Base64.getDecoder().decode(call("POST", "/print", paper).asText());
    Files.createDirectories(FOLDER);
    Files.write(FOLDER.resolve(name + ".pdf"), pdf);
    Matcher sheets = SHEET.matcher(new String(pdf, StandardCharsets.ISO_8859_1));
    return (int) sheets.results().count();
  }

  /** Saves the sheet as it is seen, or all of it. */
  public void screenshot(String name, boolean whole) throws IOException {
    Files.createDirectories(FOLDER);
    ObjectNode parameters = object().put("format", "png").put("captureBeyondViewport", whole);
    if (whole) {
      JsonNode size =
          run(
              "return [document.documentElement.scrollWidth,"
                  + " document.documentElement.scrollHeight]");
      parameters
          .putObject("clip")
          .put("x", 0)
          .put("y", 0)
          .put("width", size.get(0).asInt())
          .put("height", size.get(1).asInt())
          .put("scale", 1);
    }
    JsonNode picture =
        call(
            "POST",
            "/goog/cdp/execute",
            object().put("cmd", "Page.captureScreenshot").set("params", parameters));
    Files.write(
        FOLDER.resolve(name + ".png"), Base64.getDecoder().decode(picture.path("data").asText()));
  }

  @Override
  public void close() {
    try {
      call("DELETE", "", object());
    } finally {
      driver.destroy();
    }
  }
}
