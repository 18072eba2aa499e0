package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.seconds;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.boleline.drop.DropFound;
import org.boleline.drop.Drops;
import org.boleline.drop.Swing;
import org.boleline.drop.TimedCatch;
import org.boleline.explain.Refusals;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.junit.jupiter.api.Test;

class MotionWriterTest {
  private static final String RINGS = "three rings, device at the base";

  private static StaticResult hornbeam() throws IOException {
    return Statics.analyse(
        PlanReader.read(
            Path.of(
                "../rigging-examples/compare-arrangements/src/main/resources/org/boleline/examples"
                    + "/compare/hornbeam.json")));
  }

  private static void expectValid(String text) throws IOException {
    String schema = Files.readString(Path.of("../docs/reference/rigging-motion-1.schema.json"));
    assertThat(
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema, InputFormat.JSON)
                .validate(text, InputFormat.JSON))
        .isEmpty();
  }

  private static List<Json> frames(String text) {
    Json tree = JsonText.parse(text, Refusals.none());
    return ((Json.Elements) ((Json.Members) tree).byName().get("frames")).list();
  }

  private static Json member(Json of, String name) {
    return ((Json.Members) of).byName().get(name);
  }

  @Test
  void a_catch_is_written_frame_by_frame() throws IOException {
    StaticResult statics = hornbeam();
    DropFound drop = (DropFound) Drops.analyse(statics).drop(RINGS).orElseThrow();
    TimedCatch.Followed sampled = Drops.sampled(statics, RINGS, seconds(0.05)).orElseThrow();
    String text = MotionWriter.write(drop, sampled);
    expectValid(text);
    assertThat(text).isEqualTo(MotionWriter.write(drop, sampled));
    List<Json> frames = frames(text);
    assertThat(frames).hasSize(101);
    double[] tensions = sampled.history().tensions(0, Kind.FORCE);
    double[][] piece = sampled.history().piece(Kind.LENGTH);
    for (int i = 0; i < frames.size(); i++) {
      List<Json> legs = ((Json.Elements) member(frames.get(i), "tensions")).list();
      assertThat(legs).hasSize(4);
      assertThat(((Json.Numeral) legs.get(0)).text()).isEqualTo(QuantityText.number(tensions[i]));
      Json height = ((Json.Elements) member(frames.get(i), "piece")).list().get(2);
      assertThat(((Json.Numeral) height).text()).isEqualTo(QuantityText.number(piece[i][2]));
    }
    assertThatThrownBy(() -> MotionWriter.write(drop, drop.inTime().orElseThrow()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_swing_is_written_frame_by_frame() throws IOException {
    Swing swing = Swing.of(kilograms(100), metres(6), degrees(60)).withSlack(metres(1));
    String text = MotionWriter.write(swing, swing.history(seconds(0.1), seconds(2)));
    expectValid(text);
    assertThat(frames(text)).hasSize(21);
    assertThat(text).contains("ROPE_COMES_TAUT");
  }
}
