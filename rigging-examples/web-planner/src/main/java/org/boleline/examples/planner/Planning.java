package org.boleline.examples.planner;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.sun.net.httpserver.HttpExchange;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.boleline.drop.Drops;
import org.boleline.explain.CautionCode;
import org.boleline.explain.PlanRefusedException;
import org.boleline.json.PlanReader;
import org.boleline.json.ResultWriter;
import org.boleline.limits.Checks;
import org.boleline.picture.ForcePicture;
import org.boleline.picture.PictureSpec;
import org.boleline.picture.PictureUnits;
import org.boleline.picture.Theme;
import org.boleline.plan.Plan;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.units.Amounts;
import org.jspecify.annotations.Nullable;

/** What the server answers: results, pictures, and the files of the page. */
final class Planning {
  private static final List<String> ASSETS =
      List.of(
          "planner.css",
          "icon.svg",
          "page.js",
          "numbers.js",
          "picture.js",
          "plan.js",
          "quantities.js",
          "server.js");
  private static final JsonFactory FACTORY = new JsonFactory();
  private static final int DRAINED = 1024 * 1024;

  private final Bounds bounds;
  private final Solves solves;

  Planning(Bounds bounds, Solves solves) {
    this.bounds = bounds;
    this.solves = solves;
  }

  /** Everything there is, by path. */
  Map<String, Resource> resources() {
    Map<String, Resource> all = new LinkedHashMap<>();
    all.put("/solve", new Resource("POST", Answer.JSON, this::solve));
    all.put("/picture", new Resource("POST", Answer.SVG, this::picture));
    all.put("/view", new Resource("POST", Answer.JSON, this::view));
    all.put("/", Resource.file("text/html; charset=utf-8", "index.html"));
    all.put("/openapi.json", Resource.file(Answer.JSON, "openapi.json"));
    all.put("/demo.json", Resource.file(Answer.JSON, "hornbeam.json"));
    all.put("/cautions.json", new Resource("GET", Answer.JSON, exchange -> cautions()));
    for (String schema : List.of("rigging-plan-1", "rigging-result-1")) {
      all.put(
          "/schemas/" + schema + ".json",
          Resource.file("application/schema+json", schema + ".schema.json"));
    }
    for (String asset : ASSETS) {
      String type =
          switch (asset.substring(asset.lastIndexOf('.'))) {
            case ".css" -> "text/css; charset=utf-8";
            case ".js" -> "text/javascript; charset=utf-8";
            default -> Answer.SVG;
          };
      all.put("/assets/" + asset, Resource.file(type, "assets/" + asset));
    }
    return all;
  }

  private Answer solve(HttpExchange exchange) throws IOException, Problem {
    Query.of(exchange.getRequestURI(), Set.of());
    Plan plan = plan(exchange);
    return Answer.ok(
        Answer.JSON, solves.run(givenUp -> result(Statics.analyse(plan, givenUp), givenUp)));
  }

  private static String result(StaticResult solved, BooleanSupplier givenUp) {
    return ResultWriter.write(Checks.of(Drops.analyse(solved, givenUp)), List.of(), List.of());
  }

  private Answer picture(HttpExchange exchange) throws IOException, Problem {
    Drawing drawing = drawing(exchange);
    return Answer.ok(
        Answer.SVG, solves.run(givenUp -> drawing.svg(Statics.analyse(drawing.plan(), givenUp))));
  }

  /** Result and picture of one solve, for whoever shows both while a plan changes. */
  private Answer view(HttpExchange exchange) throws IOException, Problem {
    Drawing drawing = drawing(exchange);
    return Answer.ok(
        Answer.JSON,
        solves.run(
            givenUp -> {
              StaticResult solved = Statics.analyse(drawing.plan(), givenUp);
              StringWriter text = new StringWriter();
              try (JsonGenerator json = FACTORY.createGenerator(text)) {
                json.writeStartObject();
                json.writeFieldName("result");
                json.writeRawValue(result(solved, givenUp).strip());
                json.writeStringField("picture", drawing.svg(solved));
                json.writeEndObject();
              }
              return text.toString();
            }));
  }

  /**
   * What is to be drawn.
   *
   * @param plan the plan
   * @param arrangement id of one of its arrangements
   * @param spec how
   */
  private record Drawing(Plan plan, String arrangement, PictureSpec spec) {
    String svg(StaticResult solved) {
      return ForcePicture.of(solved, arrangement, spec).svg();
    }
  }

  private Drawing drawing(HttpExchange exchange) throws IOException, Problem {
    Query query =
        Query.of(
            exchange.getRequestURI(),
            Set.of("arrangement", "id", "width", "height", "theme", "units", "newtonsPerMetre"));
    String arrangement = query.required("arrangement");
    PictureSpec spec = spec(query);
    Plan plan = plan(exchange);
    if (plan.arrangements().stream().noneMatch(way -> way.id().equals(arrangement))) {
      throw Query.refused("arrangement names none of the plan");
    }
    return new Drawing(plan, arrangement, spec);
  }

  private static PictureSpec spec(Query query) throws Problem {
    String theme = query.oneOf("theme", List.of("light", "dark", "auto"));
    String units = query.oneOf("units", List.of("metric", "us"));
    PictureSpec spec =
        PictureSpec.STANDARD
            .withId("picture-" + query.whole("id", 0, 99, 0))
            .withSheet(query.whole("width", 320, 2000, 720), query.whole("height", 320, 2000, 960))
            .withTheme(Theme.valueOf(theme.toUpperCase(Locale.ROOT)))
            .withUnits(PictureUnits.valueOf(units.toUpperCase(Locale.ROOT)));
    int force = query.whole("newtonsPerMetre", 1, 100_000_000, 0);
    return force == 0 ? spec : spec.withForceScale(Amounts.newtons(force));
  }

  /** The plan in the body of a request. */
  private Plan plan(HttpExchange exchange) throws IOException, Problem {
    @Nullable String type = exchange.getRequestHeaders().getFirst("Content-Type");
    if (type == null || !MediaTypes.isJson(type)) {
      throw Problem.of(
          415,
          "Unsupported Media Type",
          "The body is to be application/json in UTF-8.",
          Map.of("Accept-Post", Answer.JSON));
    }
    if (!MediaTypes.isPlain(exchange.getRequestHeaders().get("Content-Encoding"))) {
      throw Problem.of(
          415,
          "Unsupported Media Type",
          "The body is to be sent as it is, without a content coding.",
          Map.of("Accept-Encoding", "identity"));
    }
    InputStream stream = exchange.getRequestBody();
    byte[] body = stream.readNBytes(bounds.bytes() + 1);
    if (body.length > bounds.bytes()) {
      stream.readNBytes(DRAINED); // so that a client that still writes comes to read
      throw Problem.of(
          413,
          "Content Too Large",
          "A plan has at most " + bounds.bytes() + " bytes here.",
          Map.of("Connection", "close"));
    }
    try {
      return PlanReader.read(new ByteArrayInputStream(body));
    } catch (PlanRefusedException e) {
      throw Problem.of(e);
    }
  }

  /** The sentences of all cautions, with their blanks in braces. */
  private static Answer cautions() throws IOException {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = FACTORY.createGenerator(text)) {
      json.writeStartObject();
      for (CautionCode code : CautionCode.values()) {
        json.writeStringField(code.name(), code.sentence());
      }
      json.writeEndObject();
    }
    return Answer.ok(Answer.JSON, text.toString());
  }
}
