package org.boleline.examples.planner;

import com.sun.net.httpserver.HttpExchange;

/**
 * What stands at a path.
 *
 * @param method GET, which HEAD goes with, or POST
 * @param type media type of the answer, without its parameters
 * @param work how to answer
 */
record Resource(String method, String type, Work work) {
  /** Answers one request. */
  @FunctionalInterface
  interface Work {
    Answer answer(HttpExchange exchange) throws Exception;
  }

  static Resource file(String type, String name) {
    byte[] bytes = Resources.read(name);
    return new Resource("GET", type, exchange -> Answer.file(type, bytes));
  }

  String allow() {
    return method.equals("GET") ? "GET, HEAD" : method;
  }
}
