package org.boleline.examples.planner;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/** An HTTP server that solves plans; it runs from its making until it is closed. */
final class PlannerServer implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(PlannerServer.class.getName());
  private static final int REQUESTS = 16;
  private static final Duration LAST_WAIT = Duration.ofSeconds(10);
  private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");

  static {
    // The server of the JDK reads these once. Slow clients may not hold a thread: seconds for a
    // request and for an answer. And no answer waits for the client to confirm its head.
    System.setProperty("sun.net.httpserver.maxReqTime", "20");
    System.setProperty("sun.net.httpserver.maxRspTime", "60");
    System.setProperty("sun.net.httpserver.nodelay", "true");
  }

  private final HttpServer server;
  private final ExecutorService threads = Executors.newFixedThreadPool(REQUESTS);
  private final Semaphore underWay = new Semaphore(REQUESTS);
  private final Solves solves;
  private final Map<String, Resource> resources;

  private PlannerServer(HttpServer server, Bounds bounds) {
    this.server = server;
    solves = new Solves(bounds);
    resources = new Planning(bounds, solves).resources();
  }

  /**
   * Starts a server.
   *
   * @throws IOException if the address cannot be had
   */
  static PlannerServer start(InetSocketAddress address, Bounds bounds) throws IOException {
    PlannerServer planner = new PlannerServer(HttpServer.create(address, 64), bounds);
    planner.server.setExecutor(planner.threads);
    planner.server.createContext("/", planner::handle);
    planner.server.start();
    return planner;
  }

  InetSocketAddress address() {
    return server.getAddress();
  }

  /** Where a browser on this machine finds it. */
  URI page() {
    return URI.create("http://" + host(address().getAddress()) + ":" + address().getPort() + "/");
  }

  /**
   * The host of an address as a URI has it (RFC 3986, section 3.2.2), without a zone: {@code
   * localhost} for what that name reaches.
   */
  static String host(InetAddress address) {
    String host = literal(address);
    return address.isAnyLocalAddress() || host.equals("127.0.0.1") ? "localhost" : host;
  }

  private static String literal(InetAddress address) {
    String text = address.getHostAddress().replaceFirst("%.*", "");
    return address instanceof Inet6Address ? "[" + text + "]" : text;
  }

  /** Lets what is under way end, for some seconds, and stops. */
  @Override
  public void close() {
    boolean quiet = false;
    try {
      quiet = underWay.tryAcquire(REQUESTS, LAST_WAIT.toMillis(), TimeUnit.MILLISECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    if (!quiet) {
      LOG.log(System.Logger.Level.WARNING, "stopped with requests under way");
    }
    server.stop(0);
    threads.shutdownNow();
    solves.close();
  }

  private void handle(HttpExchange exchange) throws IOException {
    // No turn is left only while the server closes: then the connection ends without an answer.
    boolean turn = underWay.tryAcquire();
    try (exchange) {
      if (turn) {
        send(exchange, answer(exchange));
      }
    } finally {
      if (turn) {
        underWay.release();
      }
    }
  }

  private Answer answer(HttpExchange exchange) throws IOException {
    try {
      checkHost(exchange);
      return resource(exchange).work().answer(exchange);
    } catch (Problem e) {
      return e.answer();
    } catch (IOException e) {
      throw e; // the client is gone
    } catch (Exception | AssertionError | StackOverflowError | OutOfMemoryError e) {
      LOG.log(System.Logger.Level.ERROR, "a fault of the program", e);
      return Problem.of(
              500,
              "Internal Server Error",
              "This is a fault of the program, not of the plan; please report it with the plan.")
          .answer();
    }
  }

  /** Against pages that reach this machine by a name of their own: they know no loopback name. */
  private void checkHost(HttpExchange exchange) throws Problem {
    if (!address().getAddress().isLoopbackAddress()) {
      return;
    }
    @Nullable String host = exchange.getRequestHeaders().getFirst("Host");
    String name = host == null ? "" : host.replaceFirst(":[0-9]*$", "").toLowerCase(Locale.ROOT);
    if (!LOOPBACK_NAMES.contains(name) && !name.equals(literal(address().getAddress()))) {
      throw Problem.of(
          421, "Misdirected Request", "This server answers to names of this machine alone.");
    }
  }

  private Resource resource(HttpExchange exchange) throws Problem {
    @Nullable Resource resource = resources.get(String.valueOf(exchange.getRequestURI().getPath()));
    if (resource == null) {
      throw Problem.of(404, "Not Found", "Nothing stands at this path; see /openapi.json.");
    }
    String method = exchange.getRequestMethod();
    if (!(method.equals("HEAD") ? "GET" : method).equals(resource.method())) {
      throw Problem.of(
          405,
          "Method Not Allowed",
          "This path takes " + resource.allow() + ".",
          Map.of("Allow", resource.allow()));
    }
    if (!MediaTypes.accepts(exchange.getRequestHeaders().get("Accept"), resource.type())) {
      throw Problem.of(406, "Not Acceptable", "This path answers " + resource.type() + ".");
    }
    return resource;
  }

  private static void send(HttpExchange exchange, Answer answer) throws IOException {
    Headers headers = exchange.getResponseHeaders();
    headers.set(
        "Content-Security-Policy",
        "default-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none';"
            + " object-src 'none'");
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("Referrer-Policy", "no-referrer");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Content-Type", answer.type());
    answer.headers().forEach(headers::set);
    byte[] body = answer.body();
    if (exchange.getRequestMethod().equals("HEAD")) {
      headers.set("Content-Length", Integer.toString(body.length));
      exchange.sendResponseHeaders(answer.status(), -1);
      return;
    }
    exchange.sendResponseHeaders(answer.status(), body.length);
    try (OutputStream out = exchange.getResponseBody()) {
      out.write(body);
    }
  }
}
