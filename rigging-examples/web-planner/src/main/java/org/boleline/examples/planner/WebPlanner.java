package org.boleline.examples.planner;

import java.io.IOException;
import java.io.PrintStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.UnknownHostException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** Starts the planner's server from the command line. */
public final class WebPlanner {
  private static final int REFUSED = 2;
  private static final int FAILED = 1;
  private static final String USAGE =
      """
      usage: java -jar web-planner.jar [--port NUMBER] [--bind ADDRESS]

        --port NUMBER   port to listen on; 8080 if not stated, 0 for any that is free
        --bind ADDRESS  address to listen on; 127.0.0.1 if not stated, which only this
                        machine reaches. There is no login and no encryption: for other
                        machines put a server in front that has both.
        --help          this text
      """;

  private WebPlanner() {}

  /**
   * Starts the server, which runs until the process is stopped.
   *
   * @param args see {@code --help}
   */
  public static void main(String[] args) {
    int status = run(args, System.out, System.err);
    if (status != 0) {
      System.exit(status);
    }
  }

  /**
   * Returns the exit status; if it is zero, the server runs on, or help was all there was to do.
   */
  private static int run(String[] args, PrintStream out, PrintStream err) {
    if (List.of(args).contains("--help")) {
      out.print(USAGE);
      return 0;
    }
    Optional<InetSocketAddress> wanted = address(args);
    if (wanted.isEmpty()) {
      err.print(USAGE);
      return REFUSED;
    }
    InetSocketAddress address = wanted.get();
    try {
      PlannerServer server = PlannerServer.start(address, Bounds.standard());
      Runtime.getRuntime().addShutdownHook(new Thread(server::close, "stop"));
      out.println("Planner at " + server.page());
      if (!address.getAddress().isLoopbackAddress()) {
        out.println("Other machines can reach it: there is no login and no encryption.");
      }
      out.println("Ctrl-C stops it.");
      out.flush();
      return 0;
    } catch (IOException e) {
      err.println("web-planner: cannot listen on " + address + ": " + e.getMessage());
      return FAILED;
    }
  }

  private static Optional<InetSocketAddress> address(String[] args) {
    int port = 8080;
    InetAddress bind = InetAddress.getLoopbackAddress();
    Deque<String> rest = new ArrayDeque<>(List.of(args));
    try {
      while (!rest.isEmpty()) {
        String name = rest.remove();
        String value = rest.isEmpty() ? "" : rest.remove();
        if (name.equals("--port")) {
          port = Integer.parseInt(value);
        } else if (name.equals("--bind") && !value.isEmpty()) {
          bind = InetAddress.getByName(value);
        } else {
          return Optional.empty();
        }
      }
      return Optional.of(new InetSocketAddress(bind, port));
    } catch (IllegalArgumentException | UnknownHostException e) {
      return Optional.empty();
    }
  }
}
