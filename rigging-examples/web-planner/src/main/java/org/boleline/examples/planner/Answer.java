package org.boleline.examples.planner;

import java.nio.charset.StandardCharsets;
import java.util.Map;

/** What goes back to a client. */
final class Answer {
  static final String JSON = "application/json";
  static final String PROBLEM = "application/problem+json";
  static final String SVG = "image/svg+xml";

  private final int status;
  private final String type;
  private final byte[] body;
  private final Map<String, String> headers;

  private Answer(int status, String type, byte[] body, Map<String, String> headers) {
    this.status = status;
    this.type = type;
    this.body = body;
    this.headers = headers;
  }

  static Answer of(int status, String type, String text, Map<String, String> headers) {
    return new Answer(status, type, text.getBytes(StandardCharsets.UTF_8), Map.copyOf(headers));
  }

  static Answer ok(String type, String text) {
    return of(200, type, text, Map.of("Cache-Control", "no-store"));
  }

  static Answer file(String type, byte[] bytes) {
    return new Answer(200, type, bytes.clone(), Map.of("Cache-Control", "no-cache"));
  }

  int status() {
    return status;
  }

  String type() {
    return type;
  }

  byte[] body() {
    return body.clone();
  }

  Map<String, String> headers() {
    return headers;
  }
}
