package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.Length;
import org.boleline.Tolerances;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.json.PlanReader;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Solved cases.
 *
 * <p>Source: an independent solver of another kind (exact elastica by shooting, about eight
 * digits), in the plane of the lean. Each case is also turned about the vertical, where all three
 * components take part.
 */
class SolvedCasesTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** One arrangement, as given or turned about the vertical. */
  record Case(String id, double azimuth) {
    @Override
    public String toString() {
      return id + ", azimuth " + azimuth;
    }
  }

  static List<Case> cases() throws IOException {
    List<Case> all = new ArrayList<>();
    for (double azimuth : new double[] {0, 0.7, 2.9, -1.3}) {
      expected().get("cases").fieldNames().forEachRemaining(id -> all.add(new Case(id, azimuth)));
    }
    return all;
  }

  private static InputStream resource(String name) {
    return Objects.requireNonNull(SolvedCasesTest.class.getResourceAsStream(name));
  }

  private static JsonNode expected() throws IOException {
    try (InputStream in = resource("solved-cases.json")) {
      return JSON.readTree(in);
    }
  }

  private static Plan plan(Case solved) throws IOException {
    String file =
        solved.id().startsWith("weightless") ? "weightless.json" : "weight-and-slings.json";
    try (InputStream in = resource(file)) {
      return turned(PlanReader.read(in), solved.azimuth());
    }
  }

  private static Plan turned(Plan plan, double azimuth) {
    Stem stem = plan.stems().get(0);
    StemShape.Straight shape = (StemShape.Straight) stem.shape();
    Stem turned =
        stem.toBuilder()
            .shape(
                StemShape.Straight.of(
                    Heading.of(shape.heading().lean(), Amounts.radians(azimuth)), shape.length()))
            .build();
    List<Arrangement> arrangements = new ArrayList<>();
    for (Arrangement arrangement : plan.arrangements()) {
      double[] p = ((Tail.Point) arrangement.tail()).position().in(Kind.LENGTH);
      Vector<Length> point =
          Vector.ofSi(
              Kind.LENGTH,
              p[0] * Math.cos(azimuth) - p[1] * Math.sin(azimuth),
              p[0] * Math.sin(azimuth) + p[1] * Math.cos(azimuth),
              p[2]);
      arrangements.add(arrangement.toBuilder().tail(Tail.Point.of(point)).build());
    }
    return plan.toBuilder().stems(List.of(turned)).arrangements(arrangements).build();
  }

  /** Components along the lean, up, and out of the plane. */
  private static double[] inPlane(double[] v, double azimuth) {
    return new double[] {
      v[0] * Math.cos(azimuth) + v[1] * Math.sin(azimuth),
      v[2],
      -v[0] * Math.sin(azimuth) + v[1] * Math.cos(azimuth)
    };
  }

  private static void assertPlane(double[] found, JsonNode wanted, double scale, String what) {
    double allowed = Tolerances.SOLVED_CASE * scale;
    assertThat(found[0]).as(what + " along").isCloseTo(wanted.get(0).asDouble(), within(allowed));
    assertThat(found[1]).as(what + " up").isCloseTo(wanted.get(1).asDouble(), within(allowed));
    assertThat(found[2]).as(what + " out of plane").isCloseTo(0, within(allowed));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void agrees_with_an_independent_solver(Case solved) throws IOException {
    JsonNode wanted = expected().get("cases").get(solved.id());
    ArrangementResult result = Statics.analyse(plan(solved), solved.id()).orElseThrow();
    Solution found = result.solution().orElseThrow();
    double load = Si.value(found.legs().get(0).tension(), Kind.FORCE, "load");
    StemResult stem = found.stems().get(0);

    assertThat(found.check()).isEmpty();
    assertThat(found.residualForceRatio()).isLessThanOrEqualTo(Tolerances.RESIDUAL);
    assertThat(found.residualMomentRatio()).isLessThanOrEqualTo(Tolerances.RESIDUAL);

    double[] tip = inPlane(stem.tipMovement().in(Kind.LENGTH), solved.azimuth());
    assertPlane(tip, wanted.get("tipMovement"), Math.hypot(tip[0], tip[1]), "tip movement");
    double[] moment = stem.base().moment().in(Kind.MOMENT);
    double bendingOver =
        moment[0] * Math.sin(solved.azimuth()) - moment[1] * Math.cos(solved.azimuth());
    double baseMoment = wanted.get("baseMoment").asDouble();
    assertThat(bendingOver)
        .as("base moment")
        .isCloseTo(baseMoment, within(Tolerances.SOLVED_CASE * baseMoment));
    assertThat(Si.value(stem.base().axial(), Kind.FORCE, "axial"))
        .as("base axial force")
        .isCloseTo(wanted.get("baseAxial").asDouble(), within(Tolerances.SOLVED_CASE * load));
    assertStress(stem.bendingStress(), wanted.get("bendingStress"));
    assertStress(stem.compressionStress(), wanted.get("compressionStress"));
    assertThat(Si.value(found.tailTension(), Kind.FORCE, "tail"))
        .as("tail")
        .isCloseTo(wanted.get("tail").asDouble(), within(Tolerances.SOLVED_CASE * load));

    for (int i = 0; i < found.contacts().size(); i++) {
      JsonNode contactWanted = wanted.get("contacts").get(i);
      ContactResult contact = found.contacts().get(i);
      assertThat(contact.bears())
          .as("bears %s", i)
          .isEqualTo(contactWanted.get("bears").asBoolean());
      assertThat(Si.value(contact.tensionOut(), Kind.FORCE, "tension"))
          .as("tension behind %s", i)
          .isCloseTo(
              contactWanted.get("tensionOut").asDouble(), within(Tolerances.SOLVED_CASE * load));
      assertThat(Si.value(contact.turn().angle(), Kind.ANGLE, "turn"))
          .as("turn %s", i)
          .isCloseTo(contactWanted.get("turn").asDouble(), within(Tolerances.SOLVED_CASE));
      assertPlane(
          inPlane(contact.force().in(Kind.FORCE), solved.azimuth()),
          contactWanted.get("force"),
          load,
          "force " + i);
      if (contact.bears()) {
        assertPlane(
            inPlane(contact.position().in(Kind.LENGTH), solved.azimuth()),
            contactWanted.get("position"),
            Math.hypot(tip[0], tip[1]),
            "position " + i);
      }
    }
  }

  private static void assertStress(Extreme found, JsonNode wanted) {
    double stress = wanted.asDouble();
    assertThat(Si.value(found.value(), Kind.PRESSURE, "stress"))
        .isCloseTo(stress, within(Tolerances.SOLVED_CASE * stress));
  }
}
