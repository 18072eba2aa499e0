package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.json.PlanTexts.EVERYTHING;
import static org.boleline.json.PlanTexts.LEAST;
import static org.boleline.json.PlanTexts.changed;
import static org.boleline.json.PlanTexts.refusals;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.boleline.explain.Datum;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusal.Code;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlanReaderTest {
  @Test
  void reads_every_member() {
    Plan plan = PlanReader.read(EVERYTHING);

    assertThat(plan.title()).isEqualTo("Every member once: \"quotes\", \\ and ü");
    assertThat(plan.notes()).isEqualTo("Invented.\nTwo lines.");
    assertThat(Si.value(plan.gravity(), Kind.ACCELERATION, "g")).isEqualTo(9.81);
    assertThat(plan.stems()).extracting(stem -> stem.id()).containsExactly("oak", "ash", "lime");
    var oak = plan.stems().get(0);
    assertThat(oak.base().in(Kind.LENGTH)).containsExactly(1, -2, 0.5);
    assertThat(oak.shapeIs()).isEqualTo(ShapeIs.STRESS_FREE);
    assertThat(oak.ownWeight()).isFalse();
    assertThat(oak.diameters().stations(Kind.LENGTH)).containsExactly(0, 2, 2, 12);
    assertThat(oak.diameters().outer(Kind.LENGTH)).containsExactly(0.36, 0.34, 0.34, 0.16);
    assertThat(oak.diameters().cavity(Kind.LENGTH)).containsExactly(0.1, 0.08, 0, 0);
    assertThat(oak.shape()).isInstanceOf(StemShape.ByStations.class);
    assertThat(oak.shape().length(Kind.LENGTH)).isEqualTo(12);
    assertThat(oak.masses()).hasSize(1);
    assertThat(oak.marks()).extracting(mark -> mark.name()).containsExactly("fork", "end");
    assertThat(plan.stems().get(2).base().in(Kind.LENGTH)).containsExactly(4, 0, 0);
    assertThat(plan.stems().get(2).shape().length(Kind.LENGTH)).isEqualTo(8);
    var down = plan.arrangements().get(0);
    assertThat(down.motion()).isEqualTo(Motion.HELD);
    assertThat(down.contacts().get(0).hardware()).isEqualTo(new Sheave(0.95));
    assertThat(Si.value(down.contacts().get(0).offset(), Kind.LENGTH, "offset")).isEqualTo(-0.1);
    assertThat(down.tagline()).isPresent();
    assertThat(down.drop()).isPresent();
    assertThat(plan.limits().orElseThrow().factors()).hasSize(2);
    assertThat(plan.rope().orElseThrow().stretch()).hasSize(2);
    assertThat(plan.rope().orElseThrow().dropStretch()).hasSize(2);
    assertThat(down.contacts().get(0).hardwareInCatch()).contains(new FrictionRing(0.3));
    assertThat(down.contacts().get(0).slingStiffness().map(k -> Si.value(k, Kind.STIFFNESS, "k")))
        .contains(200e3);
    assertThat(down.drop().orElseThrow().level()).isEqualTo(DropSpec.Level.IN_TIME);
    assertThat(Si.value(down.drop().orElseThrow().loadLeg(), Kind.LENGTH, "leg")).isEqualTo(1.2);
    assertThat(((Tail.Device) plan.arrangements().get(1).tail()).frictionInCatch()).hasValue(0.12);
    assertThat(
            plan.arrangements()
                .get(2)
                .drop()
                .flatMap(DropSpec::stopOver)
                .map(s -> Si.value(s, Kind.LENGTH, "stop")))
        .contains(0.8);
  }

  @Test
  void lists_every_default_it_takes_by_its_pointer() {
    assertThat(PlanReader.read(LEAST).taken())
        .extracting(datum -> datum.name() + " = " + datum.value())
        .contains(
            "/gravity = 9.80665 m/s2",
            "/stems/0/base = (0, 0, 0) m",
            "/stems/0/shapeIs = asStanding",
            "/stems/0/ownWeight = true",
            "/stems/0/root = clamped",
            "/arrangements/0/contacts/0/sling = 0 m",
            "/arrangements/0/contacts/0/offset = 0 m");
  }

  @Test
  void reads_a_file_and_a_stream_as_it_reads_text(@TempDir Path folder) throws IOException {
    byte[] bytes = EVERYTHING.getBytes(StandardCharsets.UTF_8);
    Path file = Files.write(folder.resolve("plan.json"), bytes);

    assertThat(PlanReader.read(file)).isEqualTo(PlanReader.read(EVERYTHING));
    assertThat(PlanReader.read(new ByteArrayInputStream(bytes)))
        .isEqualTo(PlanReader.read(EVERYTHING));
  }

  @Test
  void leaves_a_missing_file_to_its_caller(@TempDir Path folder) {
    assertThatThrownBy(() -> PlanReader.read(folder.resolve("none.json")))
        .isInstanceOf(NoSuchFileException.class);
  }

  @Test
  void passes_over_a_byte_order_mark() throws IOException {
    String marked = "\uFEFF" + LEAST;

    assertThat(PlanReader.read(marked)).isEqualTo(PlanReader.read(LEAST));
    assertThat(PlanReader.read(new ByteArrayInputStream(marked.getBytes(StandardCharsets.UTF_8))))
        .isEqualTo(PlanReader.read(LEAST));
  }

  @ParameterizedTest
  @ValueSource(strings = {"de", "tr", "ar-EG", "hi-IN"})
  void reads_the_same_in_every_country(String language) {
    Plan expected = PlanReader.read(EVERYTHING);
    List<Refusal> refused = refusals(changed(EVERYTHING, "9.81 m/s2", "-9.81 m/s2"));
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.forLanguageTag(language));
      assertThat(PlanReader.read(EVERYTHING)).isEqualTo(expected);
      assertThat(PlanWriter.write(expected)).isEqualTo(PlanWriter.write(expected));
      assertThat(refusals(changed(EVERYTHING, "9.81 m/s2", "-9.81 m/s2"))).isEqualTo(refused);
    } finally {
      Locale.setDefault(before);
    }
  }

  @ParameterizedTest(name = "{0} -> {1}: {2} at {3}")
  @MethodSource("refusedChanges")
  void refuses(String from, String to, Code code, String place) {
    List<Refusal> refusals = refusals(changed(EVERYTHING, from, to));

    assertThat(refusals)
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactly(code + " at " + place);
    assertThat(refusals.get(0).wants()).isNotBlank();
    assertThat(refusals.get(0).got()).isNotBlank();
  }

  static Stream<Arguments> refusedChanges() {
    String contact = "/arrangements/0/contacts/0";
    return Stream.of(
        // text
        Arguments.of("\"9.81 m/s2\"", "NaN", Code.NOT_JSON, "/gravity"),
        Arguments.of("\"rigging-plan/1\",", "\"rigging-plan/1\"", Code.NOT_JSON, "/format"),
        Arguments.of(
            "\"9.81 m/s2\"", "[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]", Code.TOO_LARGE, pointer(15)),
        Arguments.of(
            "\"efficiency\": 0.95",
            "\"efficiency\": 0." + "9".repeat(1200),
            Code.TOO_LARGE,
            contact + "/hardware/sheave/efficiency"),
        // format
        Arguments.of("rigging-plan/1", "rigging-plan/2", Code.WRONG_FORMAT, "/format"),
        Arguments.of("\"format\": \"rigging-plan/1\",", "", Code.WRONG_FORMAT, "/format"),
        Arguments.of("\"rigging-plan/1\"", "1", Code.WRONG_TYPE, "/format"),
        // members
        Arguments.of("\"notes\"", "\"note\"", Code.UNKNOWN_MEMBER, "/note"),
        Arguments.of("\"notes\"", "\"a/b~c\"", Code.UNKNOWN_MEMBER, "/a~1b~0c"),
        Arguments.of(
            "{\"ideal\": {}}",
            "{\"ideal\": {\"x\": 1}}",
            Code.UNKNOWN_MEMBER,
            "/arrangements/2/contacts/0/hardware/ideal/x"),
        Arguments.of(
            "{\"ideal\": {}}",
            "{\"pulley\": {}}",
            Code.UNKNOWN_MEMBER,
            "/arrangements/2/contacts/0/hardware/pulley"),
        Arguments.of(
            "\"foliage\": \"12 kg\"",
            "\"foliage\": \"12 kg\", \"twigs\": 1",
            Code.UNKNOWN_MEMBER,
            "/piece/twigs"),
        Arguments.of(
            "\"gravity\": \"9.81 m/s2\"",
            "\"gravity\": \"9.81 m/s2\", \"gravity\": \"9 m/s2\"",
            Code.DUPLICATE,
            "/gravity"),
        // what must be there
        Arguments.of("\"id\": \"point\",", "", Code.MISSING, "/arrangements/2/id"),
        Arguments.of("\"lean\": \"2 deg\", ", "", Code.MISSING, "/stems/1/shape/lean"),
        Arguments.of(
            "\"azimuth\": \"350 deg\"",
            "\"azimuth\": \"350 deg\", \"lean \": 1",
            Code.UNKNOWN_MEMBER,
            "/stems/0/shape/stations/0/lean "),
        Arguments.of(
            "\"shape\": {\"lean\": \"2 deg\", \"azimuth\": \"90 deg\", \"length\": \"15 m\"},",
            "",
            Code.MISSING,
            "/stems/1/shape"),
        Arguments.of(
            "{\"lean\": \"2 deg\", \"azimuth\": \"90 deg\", \"length\": \"15 m\"}",
            "{}",
            Code.MISSING,
            "/stems/1/shape"),
        Arguments.of(
            "\"outer\": \"50 cm\"",
            "\"cavity\": \"1 cm\"",
            Code.MISSING,
            "/stems/1/diameters/0/outer"),
        Arguments.of(
            "{\"rotationalStiffness\": \"2.5 MN.m/rad\"}",
            "{}",
            Code.MISSING,
            "/stems/0/root/rotationalStiffness"),
        Arguments.of(
            "{\"at\": \"11 m\", \"mass\": \"40 kg\"}",
            "{\"at\": \"11 m\"}",
            Code.MISSING,
            "/stems/0/masses/0/mass"),
        Arguments.of("\"name\": \"fork\", ", "", Code.MISSING, "/stems/0/marks/0/name"),
        Arguments.of(
            "{\"tension\": \"5.5 kN\", \"elongation\": 0.05}",
            "{\"tension\": \"5.5 kN\"}",
            Code.MISSING,
            "/rope/stretch/0/elongation"),
        Arguments.of("\"motion\": \"held\",", "", Code.MISSING, "/arrangements/0/motion"),
        Arguments.of(
            "{\"sheave\": {\"efficiency\": 0.95}}",
            "{\"sheave\": {}}",
            Code.MISSING,
            contact + "/hardware/sheave/efficiency"),
        Arguments.of(
            "{\"sheave\": {\"efficiency\": 0.95}}", "{}", Code.MISSING, contact + "/hardware"),
        Arguments.of(
            "\"tail\": {\"direction\": \"down\"},", "", Code.MISSING, "/arrangements/0/tail"),
        Arguments.of("{\"direction\": \"down\"}", "{}", Code.MISSING, "/arrangements/0/tail"),
        Arguments.of(
            "\"friction\": 0.18, ", "", Code.MISSING, "/arrangements/1/tail/device/friction"),
        Arguments.of("\"angle\": \"10 deg\", ", "", Code.MISSING, "/arrangements/0/tagline/angle"),
        Arguments.of("\"fall\": \"2 m\", ", "", Code.MISSING, "/arrangements/0/drop/fall"),
        Arguments.of(
            "{\"slipTension\": \"3 kN\"}", "{}", Code.MISSING, "/arrangements/2/drop/device"),
        Arguments.of(
            ", \"delay\": \"0.9 s\"", "", Code.MISSING, "/arrangements/1/drop/device/delay"),
        Arguments.of(
            "\"askedBy\": \"the crew leader\"",
            "\"askedBy\": \" \"",
            Code.OUT_OF_RANGE,
            "/limits/factors/0/askedBy"),
        Arguments.of(
            "[{\"at\": \"0 m\", \"outer\": \"50 cm\"}, {\"at\": \"15 m\", \"outer\": \"20 cm\"}]",
            "[]",
            Code.MISSING,
            "/stems/1/diameters"),
        Arguments.of(
            "[[\"4 m\", \"0 m\", \"0 m\"], [\"4 m\", \"0 m\", \"3 m\"], [\"4 m\", \"3 m\", \"7 m\"]]",
            "[]",
            Code.MISSING,
            "/stems/2/shape/points"),
        // types
        Arguments.of("\"9.81 m/s2\"", "9.81", Code.WRONG_TYPE, "/gravity"),
        Arguments.of("\"9.81 m/s2\"", "null", Code.WRONG_TYPE, "/gravity"),
        Arguments.of(
            "\"title\": \"Every",
            "\"title\": \"1\", \"format\": \"Every",
            Code.DUPLICATE,
            "/format"),
        Arguments.of(
            "\"length\": \"15 m\"", "\"length\": 15.0", Code.WRONG_TYPE, "/stems/1/shape/length"),
        Arguments.of(
            "\"ownWeight\": false", "\"ownWeight\": \"no\"", Code.WRONG_TYPE, "/stems/0/ownWeight"),
        Arguments.of(
            "\"ropeWeight\": true",
            "\"ropeWeight\": 1",
            Code.WRONG_TYPE,
            "/arrangements/0/contacts/0/ropeWeight"),
        Arguments.of(
            "\"linearDensity\": \"0.13 kg/m\",",
            "",
            Code.CONFLICT,
            "/arrangements/0/contacts/0/ropeWeight"),
        Arguments.of(
            "\"efficiency\": 0.95",
            "\"efficiency\": \"0.95\"",
            Code.WRONG_TYPE,
            contact + "/hardware/sheave/efficiency"),
        Arguments.of(
            "{\"sheave\": {\"efficiency\": 0.95}}",
            "\"sheave\"",
            Code.WRONG_TYPE,
            contact + "/hardware"),
        Arguments.of(
            "{\"ideal\": {}}",
            "{\"ideal\": true}",
            Code.WRONG_TYPE,
            "/arrangements/2/contacts/0/hardware/ideal"),
        Arguments.of(
            "[\"1 m\", \"-2 m\", \"0.5 m\"]",
            "[\"1 m\", \"-2 m\"]",
            Code.WRONG_TYPE,
            "/stems/0/base"),
        Arguments.of(
            "[\"1 m\", \"-2 m\", \"0.5 m\"]",
            "[\"1 m\", 2, \"0.5 m\"]",
            Code.WRONG_TYPE,
            "/stems/0/base/1"),
        Arguments.of("\"root\": \"clamped\"", "\"root\": true", Code.WRONG_TYPE, "/stems/2/root"),
        Arguments.of(
            "[{\"at\": \"11 m\", \"mass\": \"40 kg\"}]",
            "{\"at\": \"11 m\", \"mass\": \"40 kg\"}",
            Code.WRONG_TYPE,
            "/stems/0/masses"),
        Arguments.of(
            "{\"at\": \"11 m\", \"mass\": \"40 kg\"}",
            "\"40 kg\"",
            Code.WRONG_TYPE,
            "/stems/0/masses/0"),
        Arguments.of(
            "{\"at\": \"6 m\", \"lean\": \"20 deg\", \"azimuth\": \"370 deg\"}",
            "6",
            Code.WRONG_TYPE,
            "/stems/0/shape/stations/1"),
        // quantities
        Arguments.of("\"12 kg\"", "\"12 m\"", Code.WRONG_QUANTITY, "/piece/foliage"),
        Arguments.of("\"12 kg\"", "\"12,5 kg\"", Code.WRONG_QUANTITY, "/piece/foliage"),
        Arguments.of("\"12 kg\"", "\"12kg\"", Code.WRONG_QUANTITY, "/piece/foliage"),
        Arguments.of("\"12 kg\"", "\"NaN kg\"", Code.WRONG_QUANTITY, "/piece/foliage"),
        Arguments.of("\"12 kg\"", "\"1e999 kg\"", Code.WRONG_QUANTITY, "/piece/foliage"),
        Arguments.of("\"12 kg\"", "\"\"", Code.WRONG_QUANTITY, "/piece/foliage"),
        Arguments.of(
            "\"10 deg\", \"azimuth\": \"350 deg\"",
            "\"10 deg\", \"azimuth\": \"350\"",
            Code.WRONG_QUANTITY,
            "/stems/0/shape/stations/0/azimuth"),
        // numbers and words
        Arguments.of(
            "\"efficiency\": 0.95",
            "\"efficiency\": 1e999",
            Code.OUT_OF_RANGE,
            contact + "/hardware/sheave/efficiency"),
        Arguments.of(
            "\"efficiency\": 0.95",
            "\"efficiency\": 1.05",
            Code.OUT_OF_RANGE,
            contact + "/hardware/sheave/efficiency"),
        Arguments.of(
            "\"efficiency\": 0.95",
            "\"efficiency\": 0",
            Code.OUT_OF_RANGE,
            contact + "/hardware/sheave/efficiency"),
        Arguments.of(
            "\"efficiency\": 0.95",
            "\"efficiency\": 0.001",
            Code.OUT_OF_RANGE,
            contact + "/hardware/sheave/efficiency"),
        Arguments.of(
            "\"friction\": 0.25",
            "\"friction\": -0.1",
            Code.OUT_OF_RANGE,
            "/arrangements/1/contacts/0/hardware/ring/friction"),
        Arguments.of(
            "\"friction\": 0.4",
            "\"friction\": 3",
            Code.OUT_OF_RANGE,
            "/arrangements/0/contacts/1/hardware/bark/friction"),
        Arguments.of(
            "\"wraps\": 2.5",
            "\"wraps\": 21",
            Code.OUT_OF_RANGE,
            "/arrangements/1/tail/device/wraps"),
        Arguments.of("\"held\"", "\"hold\"", Code.OUT_OF_RANGE, "/arrangements/0/motion"),
        Arguments.of("\"stressFree\"", "\"stress free\"", Code.OUT_OF_RANGE, "/stems/0/shapeIs"),
        Arguments.of(
            "\"root\": \"clamped\"", "\"root\": \"fixed\"", Code.OUT_OF_RANGE, "/stems/2/root"),
        Arguments.of("\"down\"}", "\"up\"}", Code.OUT_OF_RANGE, "/arrangements/0/tail/direction"),
        Arguments.of("\"locked\"", "\"free\"", Code.OUT_OF_RANGE, "/arrangements/0/drop/device"),
        Arguments.of("9.81 m/s2", "0 m/s2", Code.OUT_OF_RANGE, "/gravity"),
        Arguments.of(
            "\"length\": \"15 m\"",
            "\"length\": \"0 m\"",
            Code.OUT_OF_RANGE,
            "/stems/1/shape/length"),
        Arguments.of(
            "\"lean\": \"2 deg\"",
            "\"lean\": \"-2 deg\"",
            Code.OUT_OF_RANGE,
            "/stems/1/shape/lean"),
        Arguments.of(
            "\"lean\": \"2 deg\"",
            "\"lean\": \"181 deg\"",
            Code.OUT_OF_RANGE,
            "/stems/1/shape/lean"),
        Arguments.of(
            "\"azimuth\": \"370 deg\"",
            "\"azimuth\": \"1e9 deg\"",
            Code.OUT_OF_RANGE,
            "/stems/0/shape/stations/1/azimuth"),
        Arguments.of(
            "\"outer\": \"50 cm\"",
            "\"outer\": \"0 cm\"",
            Code.OUT_OF_RANGE,
            "/stems/1/diameters/0/outer"),
        Arguments.of(
            "\"cavity\": \"10 cm\"",
            "\"cavity\": \"36 cm\"",
            Code.OUT_OF_RANGE,
            "/stems/0/diameters/0/cavity"),
        Arguments.of(
            "2.5 MN.m/rad", "0 MN.m/rad", Code.OUT_OF_RANGE, "/stems/0/root/rotationalStiffness"),
        Arguments.of("\"40 kg\"", "\"-40 kg\"", Code.OUT_OF_RANGE, "/stems/0/masses/0/mass"),
        Arguments.of("\"12 kg\"", "\"-12 kg\"", Code.OUT_OF_RANGE, "/piece/foliage"),
        Arguments.of(
            "\"0.2 m\", \"offset\"",
            "\"-0.2 m\", \"offset\"",
            Code.OUT_OF_RANGE,
            contact + "/sling"),
        Arguments.of("\"-0.1 m\"", "\"-21 m\"", Code.OUT_OF_RANGE, contact + "/offset"),
        Arguments.of(
            "\"angle\": \"10 deg\"",
            "\"angle\": \"90 deg\"",
            Code.OUT_OF_RANGE,
            "/arrangements/0/tagline/angle"),
        Arguments.of("\"4.86 m\"", "\"1e9 m\"", Code.OUT_OF_RANGE, "/arrangements/2/tail/point"),
        Arguments.of(
            "\"fall\": \"2 m\"",
            "\"fall\": \"-2 m\"",
            Code.OUT_OF_RANGE,
            "/arrangements/0/drop/fall"),
        Arguments.of(
            "\"3 kN\"", "\"0 kN\"", Code.OUT_OF_RANGE, "/arrangements/2/drop/device/slipTension"),
        Arguments.of(
            "\"0.9 s\"", "\"-0.9 s\"", Code.OUT_OF_RANGE, "/arrangements/1/drop/device/delay"),
        Arguments.of("55 kN", "0 kN", Code.OUT_OF_RANGE, "/rope/minimumBreakingStrength"),
        Arguments.of("14 mm", "-14 mm", Code.OUT_OF_RANGE, "/rope/diameter"),
        Arguments.of("0.13 kg/m", "0 kg/m", Code.OUT_OF_RANGE, "/rope/linearDensity"),
        Arguments.of(
            "\"elongation\": 0.05", "\"elongation\": 0.09", Code.OUT_OF_RANGE, "/rope/stretch"),
        Arguments.of(
            "\"elongation\": 0.05",
            "\"elongation\": 0",
            Code.OUT_OF_RANGE,
            "/rope/stretch/0/elongation"),
        Arguments.of(
            "\"handForce\": \"150 N\",\n",
            "\"handForce\": \"0 N\",\n",
            Code.OUT_OF_RANGE,
            "/limits/handForce"),
        Arguments.of(
            "\"factor\": 10", "\"factor\": 0", Code.OUT_OF_RANGE, "/limits/factors/0/factor"),
        Arguments.of("\"id\": \"down\"", "\"id\": \"\"", Code.OUT_OF_RANGE, "/arrangements/0/id"),
        Arguments.of(
            "\"id\": \"down\"", "\"id\": \"a\\nb\"", Code.OUT_OF_RANGE, "/arrangements/0/id"),
        // names
        Arguments.of(
            "\"id\": \"device\"", "\"id\": \"down\"", Code.DUPLICATE, "/arrangements/1/id"),
        Arguments.of(
            "\"name\": \"end\"", "\"name\": \"fork\"", Code.DUPLICATE, "/stems/0/marks/1/name"),
        Arguments.of(
            "\"for\": \"slings\"", "\"for\": \"rope\"", Code.DUPLICATE, "/limits/factors/1/for"),
        Arguments.of(
            "{\"stem\": \"oak\", \"at\": \"11.5 m\"",
            "{\"stem\": \"elm\", \"at\": \"11.5 m\"",
            Code.UNKNOWN_REFERENCE,
            contact + "/stem"),
        Arguments.of(
            "\"device\": {\"stem\": \"oak\"",
            "\"device\": {\"stem\": \"Oak\"",
            Code.UNKNOWN_REFERENCE,
            "/arrangements/1/tail/device/stem"),
        // stations
        Arguments.of(
            "\"at\": \"11.5 m\"", "\"at\": \"12.01 m\"", Code.STATION_OFF_STEM, contact + "/at"),
        Arguments.of("\"at\": \"11.5 m\"", "\"at\": \"-1 m\"", Code.OUT_OF_RANGE, contact + "/at"),
        Arguments.of(
            "\"at\": \"1 m\", \"friction\"",
            "\"at\": \"13 m\", \"friction\"",
            Code.STATION_OFF_STEM,
            "/arrangements/1/tail/device/at"),
        Arguments.of(
            "\"at\": \"11 m\"", "\"at\": \"13 m\"", Code.STATION_OFF_STEM, "/stems/0/masses/0/at"),
        Arguments.of(
            "\"at\": \"7.5 m\"", "\"at\": \"13 m\"", Code.STATION_OFF_STEM, "/stems/0/marks/0/at"),
        Arguments.of(
            "{\"at\": \"15 m\", \"outer\"",
            "{\"at\": \"16 m\", \"outer\"",
            Code.STATION_OFF_STEM,
            "/stems/1/diameters/1/at"),
        Arguments.of(
            "{\"at\": \"15 m\", \"outer\"",
            "{\"at\": \"14 m\", \"outer\"",
            Code.STATIONS_NOT_IN_ORDER,
            "/stems/1/diameters/1/at"),
        Arguments.of(
            "{\"at\": \"0 m\", \"outer\": \"50 cm\"}",
            "{\"at\": \"1 m\", \"outer\": \"50 cm\"}",
            Code.STATIONS_NOT_IN_ORDER,
            "/stems/1/diameters/0/at"),
        Arguments.of(
            "{\"at\": \"2 m\", \"outer\": \"34 cm\"}",
            "{\"at\": \"1 m\", \"outer\": \"34 cm\"}",
            Code.STATIONS_NOT_IN_ORDER,
            "/stems/0/diameters/2/at"),
        Arguments.of(
            "{\"at\": \"2 m\", \"outer\": \"34 cm\"}",
            "{\"at\": \"2 m\", \"outer\": \"34 cm\"}, {\"at\": \"2 m\", \"outer\": \"33 cm\"}",
            Code.STATIONS_NOT_IN_ORDER,
            "/stems/0/diameters/3/at"),
        Arguments.of(
            "{\"at\": \"0 m\", \"outer\": \"50 cm\"}",
            "{\"at\": \"0 m\", \"outer\": \"50 cm\"}, {\"at\": \"0 m\", \"outer\": \"40 cm\"}",
            Code.STATIONS_NOT_IN_ORDER,
            "/stems/1/diameters/1/at"),
        Arguments.of(
            "{\"at\": \"6 m\", \"lean\"",
            "{\"at\": \"0 m\", \"lean\"",
            Code.STATIONS_NOT_IN_ORDER,
            "/stems/0/shape/stations/1/at"),
        Arguments.of(
            "{\"at\": \"0 m\", \"lean\"",
            "{\"at\": \"1 m\", \"lean\"",
            Code.STATIONS_NOT_IN_ORDER,
            "/stems/0/shape/stations/0/at"),
        // places
        Arguments.of(
            "[\"4 m\", \"0 m\", \"3 m\"], ",
            "[\"4 m\", \"0 m\", \"3 m\"], [\"4 m\", \"0 m\", \"3 m\"], ",
            Code.SAME_PLACE,
            "/stems/2/shape/points/2"),
        Arguments.of(
            "{\"stem\": \"ash\", \"at\": \"9 m\", \"hardware\": {\"bark\": {\"friction\": 0.4}}}",
            "{\"stem\": \"ash\", \"at\": \"9 m\", \"hardware\": {\"ideal\": {}}}, {\"stem\": \"ash\", \"at\": \"900 cm\", \"hardware\": {\"ideal\": {}}}",
            Code.SAME_PLACE,
            "/arrangements/0/contacts/2"),
        Arguments.of(
            "\"device\": {\"stem\": \"oak\", \"at\": \"1 m\", \"friction\": 0.18, \"wraps\": 2.5, \"offset\": \"0.2 m\", \"frictionInCatch\": 0.12}",
            "\"device\": {\"stem\": \"oak\", \"at\": \"11.5 m\", \"friction\": 0.18, \"wraps\": 2.5}",
            Code.SAME_PLACE,
            "/arrangements/1/tail/device"),
        // members against each other
        Arguments.of(
            "\"length\": \"15 m\"",
            "\"length\": \"15 m\", \"points\": []",
            Code.CONFLICT,
            "/stems/1/shape"),
        Arguments.of(
            "{\"ideal\": {}}",
            "{\"ideal\": {}, \"ring\": {\"friction\": 0.2}}",
            Code.CONFLICT,
            "/arrangements/2/contacts/0/hardware"),
        Arguments.of(
            "{\"direction\": \"down\"}",
            "{\"direction\": \"down\", \"point\": [\"0 m\", \"0 m\", \"0 m\"]}",
            Code.CONFLICT,
            "/arrangements/0/tail"),
        Arguments.of("\"foliage\": \"12 kg\"", "\"mass\": \"12 kg\"", Code.CONFLICT, "/piece"),
        Arguments.of(
            "{\"slipTension\": \"3 kN\"}",
            "{\"slipTension\": \"3 kN\", \"delay\": \"1 s\"}",
            Code.CONFLICT,
            "/arrangements/2/drop/device"),
        // drops
        Arguments.of("\"inTime\"", "\"soon\"", Code.OUT_OF_RANGE, "/arrangements/0/drop/level"),
        Arguments.of("\"inTime\"", "3", Code.WRONG_TYPE, "/arrangements/0/drop/level"),
        Arguments.of(
            "\"inTime\"",
            "\"inTime\", \"stopOver\": \"1 m\"",
            Code.CONFLICT,
            "/arrangements/0/drop/stopOver"),
        Arguments.of(
            ", \"stopOver\": \"0.8 m\"", "", Code.MISSING, "/arrangements/2/drop/stopOver"),
        Arguments.of(
            "\"stopOver\": \"0.8 m\"",
            "\"stopOver\": \"0 m\"",
            Code.OUT_OF_RANGE,
            "/arrangements/2/drop/stopOver"),
        Arguments.of(
            "\"loadLeg\": \"1.2 m\"",
            "\"loadLeg\": \"-1.2 m\"",
            Code.OUT_OF_RANGE,
            "/arrangements/0/drop/loadLeg"),
        Arguments.of(
            "\"tieToCentre\": \"0.4 m\"",
            "\"tieToCentre\": \"-0.4 m\"",
            Code.OUT_OF_RANGE,
            "/arrangements/0/drop/tieToCentre"),
        Arguments.of(
            "{\"slipTension\": \"3 kN\"}",
            "{\"handForce\": \"150 N\", \"delay\": \"1 s\"}",
            Code.CONFLICT,
            "/arrangements/2/drop/device"),
        Arguments.of(
            "\"200 kN/m\"", "\"200 kN\"", Code.WRONG_QUANTITY, contact + "/slingStiffness"),
        Arguments.of("\"200 kN/m\"", "\"0 kN/m\"", Code.OUT_OF_RANGE, contact + "/slingStiffness"),
        Arguments.of(
            "{\"ring\": {\"friction\": 0.3}}", "{}", Code.MISSING, contact + "/hardwareInCatch"),
        Arguments.of(
            "{\"ring\": {\"friction\": 0.3}}",
            "{\"sheave\": {\"efficiency\": 0.001}}",
            Code.OUT_OF_RANGE,
            contact + "/hardwareInCatch/sheave/efficiency"),
        Arguments.of(
            "\"frictionInCatch\": 0.12",
            "\"frictionInCatch\": 3",
            Code.OUT_OF_RANGE,
            "/arrangements/1/tail/device/frictionInCatch"),
        Arguments.of(
            "{\"tension\": \"20 kN\", \"elongation\": 0.07}",
            "{\"tension\": \"20 kN\"}",
            Code.MISSING,
            "/rope/dropStretch/1/elongation"),
        Arguments.of("\"20 kN\"", "\"5 kN\"", Code.OUT_OF_RANGE, "/rope/dropStretch"),
        Arguments.of(
            "\"id\": \"lime\",",
            "\"id\": \"lime\", \"base\": [\"3 m\", \"0 m\", \"0 m\"],",
            Code.CONFLICT,
            "/stems/2/base"));
  }

  @Test
  void refuses_a_fall_of_more_than_twice_the_load_leg_and_the_way_to_the_centre_of_gravity() {
    String plan = changed(EVERYTHING, "\"loadLeg\": \"1.2 m\"", "\"loadLeg\": \"0.59 m\"");

    assertThat(refusals(plan)).hasSize(1);
    assertThat(refusals(plan).get(0).code()).isEqualTo(Code.CONFLICT);
    assertThat(refusals(plan).get(0).sentence())
        .startsWith("/arrangements/0/drop/fall: wants at most twice loadLeg and tieToCentre")
        .endsWith("got 2 m");
    assertThat(PlanReader.read(plan.replace("0.59 m", "0.6 m")).arrangements()).hasSize(3);
  }

  private static String pointer(int levels) {
    return "/gravity" + "/0".repeat(levels);
  }

  @Test
  void refuses_with_the_pointer_what_it_wants_and_what_came() {
    assertThat(refusals(changed(LEAST, "\"150 kg\"", "\"12 m\"")).get(0).sentence())
        .isEqualTo(
            "/piece/mass: wants a quantity of mass like \"12.5 kg\" (kg, g, t, lb), got \"12 m\"");
    assertThat(refusals(changed(LEAST, "\"150 kg\"", "12.0")).get(0).sentence())
        .isEqualTo(
            "/piece/mass: wants a quantity of mass like \"12.5 kg\" (kg, g, t, lb), got the number"
                + " 12.0");
    assertThat(refusals(changed(LEAST, "\"piece\"", "\"peace\"")).get(0).sentence())
        .startsWith(
            "/peace: wants one of the members format, title, notes, gravity, stems, piece,");
  }

  @Test
  void refuses_two_stems_of_one_id() {
    assertThat(
            refusals(
                changed(
                    EVERYTHING,
                    "\"id\": \"lime\"",
                    "\"id\": \"ash\"",
                    "\"stem\": \"lime\", \"at\": \"8 m\"",
                    "\"stem\": \"ash\", \"at\": \"8 m\"")))
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactly("DUPLICATE at /stems/2/id");
  }

  @Test
  void knows_the_species_of_the_data_and_no_others() {
    String values = "{\"modulusOfElasticity\": \"9 GPa\", \"density\": \"1000 kg/m3\"}";
    Plan oak = PlanReader.read(changed(LEAST, values, "{\"species\": \"White Oak\"}"));
    Plan both =
        PlanReader.read(
            changed(LEAST, values, "{\"species\": \"white oak\", \"density\": \"1 t/m3\"}"));

    assertThat(oak.taken())
        .extracting(Datum::name)
        .contains("/stems/0/wood/modulusOfElasticity", "/stems/0/wood/density");
    assertThat(both.taken())
        .extracting(Datum::name)
        .contains("/stems/0/wood/modulusOfElasticity")
        .doesNotContain("/stems/0/wood/density");
    for (Plan plan : List.of(oak, both)) {
      assertThat(PlanReader.read(PlanWriter.write(plan))).isEqualTo(plan);
    }
    assertThat(refusals(changed(LEAST, values, "{\"species\": \"white elephant\"}")))
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactly("UNKNOWN_REFERENCE at /stems/0/wood/species");
  }

  @Test
  void refuses_every_wrong_measure_of_a_log_and_of_wood() {
    assertThat(
            refusals(
                changed(
                    EVERYTHING,
                    "\"length\": \"1.5 m\"",
                    "\"length\": \"0 m\"",
                    "\"largeEnd\": \"0.3 m\"",
                    "\"largeEnd\": \"30 m\"",
                    "\"smallEnd\": \"0.25 m\"",
                    "\"smallEnd\": \"0.25 kg\"",
                    "\"density\": \"900 kg/m3\"",
                    "\"density\": \"0 kg/m3\"",
                    "\"50 MPa\"",
                    "\"-50 MPa\"",
                    "\"22 MPa\"",
                    "22",
                    "\"9 GPa\"",
                    "\"9 GN\"")))
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactlyInAnyOrder(
            "OUT_OF_RANGE at /piece/log/length",
            "OUT_OF_RANGE at /piece/log/largeEnd",
            "WRONG_QUANTITY at /piece/log/smallEnd",
            "OUT_OF_RANGE at /piece/log/density",
            "WRONG_QUANTITY at /stems/0/wood/modulusOfElasticity",
            "OUT_OF_RANGE at /stems/0/wood/bendingStrength",
            "WRONG_TYPE at /stems/0/wood/compressionStrength");
  }

  @Test
  void refuses_wood_and_logs_without_their_numbers() {
    String values = "{\"modulusOfElasticity\": \"9 GPa\", \"density\": \"1000 kg/m3\"}";
    assertThat(refusals(changed(LEAST, values, "{}", "{\"mass\": \"150 kg\"}", "{\"log\": {}}")))
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactly(
            "MISSING at /stems/0/wood/modulusOfElasticity",
            "MISSING at /stems/0/wood/density",
            "MISSING at /piece/log/length",
            "MISSING at /piece/log/largeEnd",
            "MISSING at /piece/log/smallEnd");
  }

  @Test
  void gives_all_mistakes_at_once() {
    String text =
        changed(
            EVERYTHING,
            "\"outer\": \"36 cm\"",
            "\"outer\": \"36\"",
            "\"motion\": \"held\"",
            "\"motion\": \"resting\"",
            "{\"stem\": \"oak\", \"at\": \"11.5 m\"",
            "{\"stem\": \"elm\", \"at\": \"11.5 m\"",
            "{\"stem\": \"oak\", \"at\": \"11.5 m\"",
            "{\"stem\": \"oak\", \"at\": \"14 m\"",
            "\"id\": \"ash\",",
            "\"id\": \"oak\", \"hight\": \"15 m\",",
            "\"foliage\"",
            "\"folliage\"");

    assertThat(refusals(text))
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactlyInAnyOrder(
            "WRONG_QUANTITY at /stems/0/diameters/0/outer",
            "DUPLICATE at /stems/1/id",
            "UNKNOWN_MEMBER at /stems/1/hight",
            "UNKNOWN_MEMBER at /piece/folliage",
            "OUT_OF_RANGE at /arrangements/0/motion",
            "UNKNOWN_REFERENCE at /arrangements/0/contacts/0/stem",
            "UNKNOWN_REFERENCE at /arrangements/0/contacts/1/stem",
            "STATION_OFF_STEM at /arrangements/1/contacts/0/at");
  }

  @Test
  void says_once_what_is_missing_from_an_empty_plan() {
    assertThat(refusals("{}"))
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactlyInAnyOrder(
            "WRONG_FORMAT at /format",
            "MISSING at /stems",
            "MISSING at /piece",
            "MISSING at /arrangements");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "\n\n",
        "\uFEFF",
        "{",
        "{]",
        "[1,",
        "tru",
        "{\"a\" 1}",
        "{'a': 1}",
        "// plan\n{}",
        "{\"a\": 01}",
        "{\"a\": .5}",
        "{\"a\": Infinity}",
        "{} {}",
        "{\"a\": \"\u0001\"}"
      })
  void refuses_text_that_is_not_json(String text) {
    assertThat(refusals(text)).extracting(Refusal::code).containsExactly(Code.NOT_JSON);
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "1", "\"plan\"", "null", "true"})
  void refuses_json_that_is_no_object(String text) {
    assertThat(refusals(text))
        .extracting(refusal -> refusal.code() + " at \"" + refusal.place() + "\"")
        .containsExactly("WRONG_TYPE at \"\"");
  }

  @Test
  void refuses_bytes_that_are_not_utf_8() {
    byte[] latin = EVERYTHING.getBytes(StandardCharsets.ISO_8859_1);
    byte[] wide = LEAST.getBytes(StandardCharsets.UTF_16);

    for (byte[] bytes : List.of(latin, wide)) {
      assertThatThrownBy(() -> PlanReader.read(new ByteArrayInputStream(bytes)))
          .isInstanceOfSatisfying(
              PlanRefusedException.class,
              e ->
                  assertThat(e.refusals())
                      .extracting(Refusal::code)
                      .containsExactly(Code.NOT_JSON));
    }
  }

  @Test
  void reads_a_mebibyte_and_no_more() {
    int room = 1024 * 1024 - LEAST.getBytes(StandardCharsets.UTF_8).length;
    String full = LEAST + " ".repeat(room);

    assertThatCode(() -> PlanReader.read(full)).doesNotThrowAnyException();
    assertThat(refusals(full + " "))
        .extracting(refusal -> refusal.code() + " at \"" + refusal.place() + "\"")
        .containsExactly("TOO_LARGE at \"\"");
    assertThatThrownBy(
            () ->
                PlanReader.read(
                    new ByteArrayInputStream((full + " ").getBytes(StandardCharsets.UTF_8))))
        .isInstanceOf(PlanRefusedException.class);
  }

  @Test
  void refuses_a_deep_document_without_reading_it_all() {
    assertThat(refusals("[".repeat(500_000)))
        .extracting(Refusal::code)
        .containsExactly(Code.TOO_LARGE);
  }

  @Test
  void takes_24_contacts_and_no_more() {
    StringBuilder contacts = new StringBuilder();
    for (int i = 0; i < 24; i++) {
      contacts
          .append(i == 0 ? "" : ", ")
          .append("{\"stem\": \"stem\", \"at\": \"")
          .append(12 - 0.25 * i)
          .append(" m\", \"hardware\": {\"ideal\": {}}}");
    }
    String one = "{\"stem\": \"stem\", \"at\": \"11.5 m\", \"hardware\": {\"ideal\": {}}}";

    assertThatCode(() -> PlanReader.read(changed(LEAST, one, contacts.toString())))
        .doesNotThrowAnyException();
    assertThat(refusals(changed(LEAST, one, contacts + ", " + one)))
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactly("OUT_OF_RANGE at /arrangements/0/contacts");
  }

  @Test
  void refuses_a_tail_that_ends_where_the_last_contact_sits() {
    String text =
        changed(
            LEAST,
            "\"at\": \"11.5 m\"",
            "\"at\": \"0 m\"",
            "[\"4.86 m\", \"0 m\", \"1 m\"]",
            "[\"0 m\", \"0 m\", \"0 m\"]");

    assertThat(refusals(text))
        .extracting(refusal -> refusal.code() + " at " + refusal.place())
        .containsExactly("SAME_PLACE at /arrangements/0/tail/point");
  }

  @Test
  void two_slings_at_one_station_leave_room_between() {
    String one = "{\"stem\": \"stem\", \"at\": \"11.5 m\", \"hardware\": {\"ideal\": {}}}";
    String slung =
        "{\"stem\": \"stem\", \"at\": \"11.5 m\", \"hardware\": {\"ideal\": {}}, \"sling\": \"0.3 m\"}";

    assertThatCode(() -> PlanReader.read(changed(LEAST, one, one + ", " + slung)))
        .doesNotThrowAnyException();
  }
}
