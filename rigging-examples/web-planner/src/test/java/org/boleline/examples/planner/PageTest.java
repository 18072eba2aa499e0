package org.boleline.examples.planner;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.boleline.examples.pages.Browser;
import org.boleline.examples.pages.Markup;
import org.boleline.json.PlanReader;
import org.boleline.plan.Plan;
import org.boleline.statics.Solution;
import org.boleline.statics.Statics;
import org.boleline.study.PlannedRanges;
import org.boleline.study.StudyPlan;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page in a real browser; screenshots are left in {@code target/screenshots}. */
class PageTest {
  private static final String A = "[data-panel='0'] ";
  private static final String B = "[data-panel='1'] ";
  private static final String POINT = A + ".handles [data-place='contacts/0']";
  private static final String ARROW_LEFT = "\uE012";
  private static final String POINT_AT = "/arrangements/2/contacts/0/at";
  private static final String TAIL = A + ".handles [data-place='tail']";
  private static final String ARROW_RIGHT = "\uE014";
  private static final String ARROW_UP = "\uE013";
  private static final String PAGE_DOWN = "\uE00F";
  private static final String END = "\uE010";
  private static final String ENTER = "\uE007";
  private static final String TAB = "\uE004";

  private static final double MOST_MILLISECONDS = 100;

  @TempDir static Path profile;
  private static Client client;
  private static Browser browser;

  @BeforeAll
  static void start() throws Exception {
    String missing = Browser.missing();
    if (!missing.isEmpty()) {
      System.out.println("SKIPPED: the page is not tested in a browser: " + missing);
    }
    assumeTrue(missing.isEmpty(), missing);
    client = new Client(Client.PLENTY);
    browser = Browser.start(profile);
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
    if (client != null) {
      client.close();
    }
  }

  @BeforeEach
  void open() throws Exception {
    show(1440, 900, false, "light");
  }

  private static void show(int width, int height, boolean phone, String theme) throws Exception {
    browser.size(width, height, phone);
    browser.theme(theme);
    browser.open(client.base() + "/");
    browser.awaitTrue("document.querySelectorAll('.picture .view').length === 2");
    browser.awaitTrue("document.querySelectorAll('.numbers tbody tr').length > 8");
    browser.awaitTrue(
        "new Set([...document.querySelectorAll('.view-side')].map(v =>"
            + " v.dataset.forcePerMetre)).size === 1");
  }

  @AfterEach
  void nothing_was_complained_of() {
    assertThat(browser.complaints()).allMatch(line -> line.contains("willReadFrequently")); // axe
  }

  private static String cell(String row, int column) {
    return browser
        .run(
            "return [...document.querySelectorAll('.numbers tbody tr')].find(row =>"
                + " row.cells[0].textContent === '"
                + row
                + "')?.cells["
                + column
                + "].textContent ?? ''")
        .asText();
  }

  private static String field(String pointer) {
    return browser
        .run("return document.querySelector(`[data-pointer='" + pointer + "']`).value")
        .asText();
  }

  @Test
  void shows_the_numbers_of_the_library_for_two_arrangements() {
    Plan plan = PlanReader.read(Client.demo());
    for (int column : new int[] {1, 2}) {
      Solution solution = (Solution) Statics.analyse(plan).arrangements().get(column + 1);
      double force = solution.contacts().get(0).forceMagnitude().getValue().doubleValue();
      assertThat(cell("Force on point 1", column))
          .isEqualTo(String.format(Locale.ROOT, "%.2f kN", force / 1000));
    }
    JsonNode scales =
        browser.run(
            "return [...document.querySelectorAll('.view-side')].map(v => v.dataset.forcePerMetre)");
    assertThat(scales.get(0)).as("one scale of forces").isEqualTo(scales.get(1));
    assertThat(browser.text(A + ".cautions")).contains("slow, steady motion");
    assertThat(browser.text(".standing")).contains("local codes", "competent person on site");
  }

  @Test
  void a_held_load_shows_both_of_its_ends_in_every_number() throws Exception {
    ObjectNode held = (ObjectNode) Client.MAPPER.readTree(Client.demo());
    held.remove(List.of("ranges", "rangeStudy"));
    ObjectNode rings = (ObjectNode) held.at("/arrangements/3");
    rings.put("motion", "held").putObject("tail").put("direction", "down");
    Solution run =
        (Solution) Statics.analyse(PlanReader.read(held.toString())).arrangements().get(3);

    choose(B + "[data-key='tail']", "direction");
    browser.click(B + "input[value='held']");

    browser.await("both ends", () -> cell("State", 2).contains("about to rise"));
    assertThat(cell("Force on point 1", 2))
        .isEqualTo(
            ends(
                run,
                end -> end.contacts().get(0).forceMagnitude().getValue().doubleValue() / 1000,
                "%.2f",
                "kN"));
    assertThat(cell("Base moment", 2))
        .isEqualTo(
            ends(
                run,
                end -> end.stems().get(0).base().momentMagnitude().getValue().doubleValue() / 1000,
                "%.1f",
                "kN·m"));
    assertThat(cell("End of stem moves", 2))
        .isEqualTo(
            ends(
                run,
                end -> end.stems().get(0).tipMovement().magnitude().getValue().doubleValue(),
                "%.2f",
                "m"));
    assertThat(cell("Fibre stress", 2)).matches("[\\d.]+ to [\\d.]+\u00a0MPapressed at .*");
    assertThat(cell("Strength reached at", 2)).matches("[\\d.]+ to [\\d.]+\u00a0×\u00a0load");
    assertThat(cell("Stiffness left", 2)).matches("\\d+ to \\d+\u00a0%");
    assertThat(cell("Most used of what was checked", 2)).contains("about to ri");
    assertThat(browser.text(B + ".headline")).contains(cell("Base moment", 2));
    assertThat(spoken(B, "contacts/0")).contains("force " + cell("Force on point 1", 2));
    assertThat(cell("State", 1)).isEqualTo("stable");
  }

  /** A ring on a sling of 0.46 m bears where the load is about to run, and not where it rises. */
  @Test
  void a_point_of_a_held_load_tells_at_which_end_it_is_slack() throws Exception {
    put(B + "[data-pointer='/arrangements/3/contacts/1/sling']", "0.46");
    browser.click(B + "input[value='held']");

    browser.await("both ends", () -> cell("State", 2).contains("about to rise"));
    assertThat(cell("Force on point 2", 2))
        .matches("[\\d.]+\u00a0N about to run, slack about to rise");
    assertThat(spoken(B, "contacts/1")).contains(cell("Force on point 2", 2));
  }

  /** What the handle of a place in a panel says of itself. */
  private static String spoken(String panel, String place) {
    return browser
        .run(
            "return document.querySelector(`"
                + panel
                + ".handles [data-place='"
                + place
                + "']`).getAttribute('aria-valuetext')")
        .asText();
  }

  /** A reading at both ends of a held load, least first, as the page writes it. */
  private static String ends(
      Solution run, ToDoubleFunction<Solution> reading, String format, String unit) {
    List<String> numbers =
        Stream.of(run, run.otherEnd().orElseThrow())
            .mapToDouble(reading)
            .sorted()
            .mapToObj(value -> String.format(Locale.ROOT, format, value))
            .toList();
    return numbers.get(0) + " to " + numbers.get(1) + "\u00a0" + unit;
  }

  /** Puts a value into a field as if it had been typed. */
  private static void put(String selector, String value) {
    browser.run(
        "const field = document.querySelector(`"
            + selector
            + "`); field.value = '"
            + value
            + "'; field.dispatchEvent(new Event('input', {bubbles: true})); return null");
  }

  @Test
  void dragging_a_point_moves_picture_and_numbers_within_100_ms() throws Exception {
    String before = cell("Base moment", 1);
    String other = cell("Base moment", 2);
    double median = Double.MAX_VALUE;
    // The first drags find code that has not run yet; any may find a machine that is busy
    // elsewhere.
    for (int i = 1; i <= 6 && (i <= 2 || median >= MOST_MILLISECONDS); i++) {
      browser.run("performance.clearMeasures(); return null");
      browser.drag(POINT, "mouse", i % 2 == 0 ? 60 : -60, i % 2 == 0 ? -60 : 60, 60, 30);
      median = Math.min(median, medianTime("drag " + i));
    }

    assertThat(median).isLessThan(MOST_MILLISECONDS);
    browser.drag(POINT, "mouse", -60, 60, 20, 30);
    browser.await("the numbers follow", () -> !cell("Base moment", 1).equals(before));
    assertThat(cell("Base moment", 2)).isEqualTo(other);
    assertThat(Double.parseDouble(field("/arrangements/2/contacts/0/at"))).isBetween(8.5, 11.0);
  }

  /** The time from a change to its picture, in milliseconds; half of the pictures came sooner. */
  private static double medianTime(String name) {
    List<Double> times = new ArrayList<>();
    browser
        .run(
            "return performance.getEntriesByName('change to picture').map(entry =>"
                + " entry.duration)")
        .forEach(time -> times.add(time.asDouble()));
    times.sort(null);
    assertThat(times).hasSizeGreaterThan(5);
    double median = times.get(times.size() / 2);
    System.out.printf(
        Locale.ROOT,
        "From change to picture, %s: %d pictures, median %.0f ms, 9 of 10 within %.0f ms, all"
            + " within %.0f ms%n",
        name,
        times.size(),
        median,
        times.get(times.size() * 9 / 10),
        times.get(times.size() - 1));
    return median;
  }

  @Test
  void keys_move_the_point_that_has_the_focus() throws Exception {
    browser.run("document.querySelector(`" + POINT + "`).focus(); return null");

    browser.key(ARROW_LEFT);

    browser.await(
        "a tenth of a metre", () -> field("/arrangements/2/contacts/0/at").equals("11.5"));
    JsonNode slider =
        browser.run(
            "const a = document.activeElement; return ['role', 'aria-label', 'aria-valuenow',"
                + " 'aria-valuemax', 'aria-valuetext'].map(name => a.getAttribute(name))");
    assertThat(slider.get(0).asText()).isEqualTo("slider");
    assertThat(slider.get(1).asText()).isEqualTo("Point 1");
    assertThat(slider.get(2).asDouble()).isEqualTo(11.5);
    assertThat(slider.get(3).asDouble()).isEqualTo(12);
    assertThat(slider.get(4).asText()).contains("11.50 m", "force");
    browser.key(TAB);
    assertThat(browser.run("return document.activeElement.dataset.place").asText())
        .isEqualTo("contacts/1");
  }

  @Test
  void fingers_drag_too() throws Exception {
    show(390, 844, true, "light");

    browser.drag(POINT, "touch", -40, 50, 12, 30);

    browser.await(
        "the point has moved",
        () -> Double.parseDouble(field("/arrangements/2/contacts/0/at")) < 11);
  }

  @Test
  void a_tail_to_a_place_is_dragged_in_the_plane_of_the_picture() throws Exception {
    choose(A + "[data-key='tail']", "point");
    browser.awaitTrue("document.querySelector(\"" + A + ".handles [data-place='tail']\")");
    double before = Double.parseDouble(field("/arrangements/2/tail/point/0"));
    String tension = cell("Force on point 3", 1);

    browser.drag(A + ".handles [data-place='tail']", "mouse", 60, 0, 10, 30);

    browser.await("the numbers follow", () -> !cell("Force on point 3", 1).equals(tension));
    assertThat(Double.parseDouble(field("/arrangements/2/tail/point/0")))
        .isGreaterThan(before + 0.3);
  }

  /** Opens a plan as if it had been chosen as a file. */
  private static void openPlan(JsonNode plan) throws Exception {
    Path file = Files.createTempFile("plan", ".json");
    try {
      Files.writeString(file, plan.toString());
      browser.run("document.getElementById('file').hidden = false; return null");
      browser.type("#file", file.toString());
      browser.awaitTrue("document.querySelector('#notice').textContent.includes('is open')");
      browser.awaitTrue("document.querySelectorAll('.picture .view-side').length === 2");
    } finally {
      Files.delete(file);
    }
  }

  private static ObjectNode demo() throws Exception {
    return (ObjectNode) Client.MAPPER.readTree(Client.demo());
  }

  /** The demo on a stem that is shortened to a length in metres. */
  private static ObjectNode shortened(double length) throws Exception {
    ObjectNode plan = demo();
    for (String last : List.of("/stems/0/shape/stations/4", "/stems/0/diameters/8")) {
      ((ObjectNode) plan.at(last)).put("at", length + " m");
    }
    return plan;
  }

  @Test
  void a_point_at_the_end_of_a_stem_stays_on_it() throws Exception {
    openPlan(shortened(12.03));
    for (String units : List.of("metric", "us")) {
      choose("#units", units);
      browser.run("document.querySelector(`" + POINT + "`).focus(); return null");
      browser.key(END);
      String end = units.equals("us") ? "39.45" : "12";
      browser.await("the end of the grid", () -> field(POINT_AT).equals(end));
      browser.drag(POINT, "mouse", 120, -120, 12, 30);
      assertThat(field(POINT_AT)).isEqualTo(end);
      browser.await("solved", () -> !cell("Load leg", 1).equals("–"));
      assertThat(browser.run("return document.querySelector('.error') === null").asBoolean())
          .isTrue();
    }
  }

  @Test
  void keys_move_to_the_next_tenth() throws Exception {
    put(A + "[data-pointer='" + POINT_AT + "']", "11.63");
    browser.awaitTrue(stationIs("11.63"));
    for (String[] step :
        new String[][] {
          {ARROW_LEFT, "11.6"}, {ARROW_LEFT, "11.5"}, {ARROW_RIGHT, "11.6"}, {PAGE_DOWN, "10.6"}
        }) {
      browser.run("document.querySelector(`" + POINT + "`).focus(); return null");
      browser.key(step[0]);
      browser.await("at " + step[1], () -> field(POINT_AT).equals(step[1]));
    }
    put(A + "[data-pointer='" + POINT_AT + "']", "10.63");
    browser.awaitTrue(stationIs("10.63"));
    browser.run("document.querySelector(`" + POINT + "`).focus(); return null");
    browser.key(ARROW_RIGHT);
    browser.await("at 10.7", () -> field(POINT_AT).equals("10.7"));
  }

  private static String stationIs(String station) {
    return "document.querySelector(\""
        + POINT
        + "\").getAttribute('aria-valuenow') === '"
        + station
        + "'";
  }

  @Test
  void keys_move_a_tail_along_one_axis_and_leave_the_others() throws Exception {
    ObjectNode plan = demo();
    ((ObjectNode) plan.at("/arrangements/2/tail"))
        .removeAll()
        .set("point", place(-3.217, 1.123, 0.456));
    plan.remove(List.of("ranges", "rangeStudy"));
    openPlan(plan);
    browser.awaitTrue("document.querySelector(\"" + TAIL + "\")");
    browser.run("document.querySelector(\"" + TAIL + "\").focus(); return null");

    browser.key(ARROW_UP);

    browser.await("a step", () -> tailAt(2).equals("0.5"));
    assertThat(List.of(tailAt(0), tailAt(1))).containsExactly("-3.217", "1.123");
    put(A + "[data-pointer='/arrangements/2/tail/point/1']", "0"); // in the plane of the stem
    browser.awaitTrue("document.querySelector('.view-side').dataset.azimuth === '0'");
    browser.run("document.querySelector(\"" + TAIL + "\").focus(); return null");
    browser.key(ARROW_LEFT);
    browser.await("a step", () -> tailAt(0).equals("-3.3"));
    assertThat(List.of(tailAt(1), tailAt(2))).containsExactly("0", "0.5");
  }

  private static JsonNode place(double x, double y, double z) {
    return Client.MAPPER.createArrayNode().add(x + " m").add(y + " m").add(z + " m");
  }

  private static String tailAt(int axis) {
    return field("/arrangements/2/tail/point/" + axis);
  }

  /** Where the end of the rope is drawn in A, in pixels of the sheet. */
  private static JsonNode drawnTail() {
    return browser.run(
        "const r = document.querySelector(\""
            + A
            + ".view-side .tail\").getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height"
            + " / 2]");
  }

  /** The picture has to shrink for such a tail; while the tail is dragged it may not. */
  @Test
  void a_tail_that_is_dragged_follows_the_pointer() throws Exception {
    choose(A + "[data-key='tail']", "point");
    browser.awaitTrue("document.querySelector(\"" + TAIL + "\")");
    browser.run(
        "window.spots = []; const panel = document.querySelector(`"
            + A
            + "`); let held = false; addEventListener('pointerdown', () => { held = true; }, true);"
            + " addEventListener('pointerup', () => { held = false; }, true); const look = () => {"
            + " const r = panel.querySelector('.view-side .tail').getBoundingClientRect();"
            + " spots.push([r.x + r.width / 2, r.y + r.height / 2]); }; new MutationObserver(() =>"
            + " held && look()).observe(panel.querySelector('.picture'), {childList: true});"
            + " document.querySelector(`"
            + TAIL
            + "`).scrollIntoView({block: 'center'}); look(); return null");
    String scale = scaleOfA();

    browser.drag(TAIL, "mouse", -190, 40, 20, 60);

    browser.await("the picture fits again", () -> !scaleOfA().equals(scale));
    JsonNode spots = browser.run("return window.spots");
    assertThat(spots.size()).isGreaterThan(5);
    double step = 0.05 * Double.parseDouble(scale) + 1; // of the grid, and a pixel
    double left = spots.get(0).get(0).asDouble();
    for (JsonNode spot : spots) {
      // The hand goes along a straight line; the pictures come after it, one after the other.
      double right = spot.get(0).asDouble() - spots.get(0).get(0).asDouble();
      double down = spot.get(1).asDouble() - spots.get(0).get(1).asDouble();
      assertThat(Math.abs(190 * down + 40 * right) / Math.hypot(190, 40)).isLessThan(step);
      assertThat(spot.get(0).asDouble()).isLessThanOrEqualTo(left + 0.1);
      left = spot.get(0).asDouble();
    }
    assertThat(
            browser
                .run("return document.querySelector(\"" + A + ".picture > svg\").style.transform")
                .asText())
        .isEmpty();
    JsonNode ring =
        browser.run(
            "const r = document.querySelector(\""
                + TAIL
                + " .ring\").getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2]");
    assertThat(ring.get(0).asDouble()).isCloseTo(drawnTail().get(0).asDouble(), within(1.0));
    assertThat(ring.get(1).asDouble()).isCloseTo(drawnTail().get(1).asDouble(), within(1.0));
  }

  private static String scaleOfA() {
    return browser
        .run("return document.querySelector(\"" + A + ".view-side\").dataset.scale")
        .asText();
  }

  @Test
  void a_tail_whose_leg_is_broken_off_cannot_be_dragged() throws Exception {
    choose(A + "[data-key='tail']", "point");
    browser.awaitTrue("document.querySelector(\"" + TAIL + "\")");

    put(A + "[data-pointer='/arrangements/2/tail/point/0']", "-80");

    browser.awaitTrue(
        "document.querySelector(`" + A + ".leg[data-to='tail']`).dataset.broken === 'true'");
    browser.awaitTrue("!document.querySelector(\"" + TAIL + "\")");
    put(A + "[data-pointer='/arrangements/2/tail/point/0']", "-8");
    browser.awaitTrue("document.querySelector(\"" + TAIL + "\")");
  }

  /** A plan after an edit as the page makes it, with what the page says of it. */
  private static JsonNode edited(JsonNode plan, String edit) throws Exception {
    browser.run(
        "window.edited = null; import('/assets/plan.js').then(({changeHardware, removePoint, tidy})"
            + " => { const plan = "
            + plan
            + "; const told = "
            + edit
            + "; window.edited = {plan, told}; }); return null");
    browser.awaitTrue("window.edited");
    return browser.run("return window.edited");
  }

  private static void readsBack(JsonNode edited) {
    StudyPlan read = PlanReader.readWithStudies(edited.path("plan").toString());
    PlannedRanges.of(read.plan());
  }

  /** A plan that has each member of the format. */
  private static ObjectNode everything() throws Exception {
    return (ObjectNode)
        Client.MAPPER.readTree(
            Path.of("../../rigging-core/src/test/resources/plans/everything.json").toFile());
  }

  private static ObjectNode study(String json) throws Exception {
    return (ObjectNode) Client.MAPPER.readTree(json);
  }

  @Test
  void what_names_later_points_follows_them_when_a_point_is_removed() throws Exception {
    ObjectNode plan = demo();
    plan.putArray("studies")
        .add(
            study(
                """
                {"kind": "sweep", "arrangement": "three rings, device at the base",
                 "input": "/arrangements/3/contacts/2/hardware/ring/friction", "from": 0.1, "to": 0.3, "steps": 2,
                 "readings": ["/contacts/2/forceMagnitude", "/contacts/1/forceMagnitude", "/legs/0/tension"]}
                """))
        .add(
            study(
                """
                {"kind": "forkPull", "arrangement": "three rings, device at the base", "first": 0, "second": 2}
                """))
        .add(
            study(
                """
                {"kind": "forkPull", "arrangement": "three rings, device at the base", "first": 0, "second": 1}
                """))
        .add(
            study(
                """
                {"kind": "forkPull", "arrangement": "three rings, raising", "first": 0, "second": 1}
                """));

    JsonNode edited = edited(plan, "removePoint(plan, 3, 1)");

    readsBack(edited);
    assertThat(edited.at("/plan/ranges/4/input").toString())
        .isEqualTo(
            ("['/arrangements/3/contacts/0/hardware/ring/friction',"
                    + "'/arrangements/3/contacts/1/hardware/ring/friction',"
                    + "'/arrangements/5/contacts/0/hardware/ring/friction',"
                    + "'/arrangements/5/contacts/1/hardware/ring/friction',"
                    + "'/arrangements/5/contacts/2/hardware/ring/friction']")
                .replace('\'', '"'));
    JsonNode studies = edited.at("/plan/studies");
    assertThat(studies).hasSize(3);
    assertThat(studies.at("/0/input").asText())
        .isEqualTo("/arrangements/3/contacts/1/hardware/ring/friction");
    assertThat(studies.at("/0/readings").toString())
        .isEqualTo("[\"/contacts/1/forceMagnitude\",\"/legs/0/tension\"]");
    assertThat(studies.at("/1/second").asInt()).isEqualTo(1);
    assertThat(studies.at("/2/arrangement").asText()).isEqualTo("three rings, raising");
    assertThat(edited.path("told").toString())
        .isEqualTo(
            "[\"With that the plan lost 1 reading of a study, 1 study.\","
                + "\"1 range has fewer inputs now.\"]");
  }

  @Test
  void what_is_of_a_ring_goes_with_it() throws Exception {
    ObjectNode plan = everything();
    ((ObjectNode) plan.at("/rangeStudy/correlations/0"))
        .withArray("between")
        .set(1, "/arrangements/1/contacts/0/hardware/ring/friction");

    JsonNode edited =
        edited(plan, "changeHardware(plan, plan.arrangements[1].contacts[0], 'sheave')");

    readsBack(edited);
    assertThat(edited.at("/plan/ranges")).hasSize(4);
    assertThat(edited.at("/plan/rangeStudy").has("correlations")).isFalse();
    assertThat(edited.at("/plan/studies")).hasSize(9);
    assertThat(edited.path("told").toString())
        .isEqualTo("[\"With that the plan lost 1 range, 1 correlation of ranges, 1 study.\"]");
    JsonNode caught =
        edited(plan, "changeHardware(plan, plan.arrangements[0].contacts[0], 'bark')");
    readsBack(caught);
    assertThat(caught.at("/plan/arrangements/0/contacts/0").has("hardwareInCatch")).isFalse();
    assertThat(caught.at("/plan/ranges")).hasSize(5);
  }

  @Test
  void a_drop_caught_by_hand_is_made_fast_without_a_device() throws Exception {
    JsonNode edited =
        edited(everything(), "(plan.arrangements[1].tail = {direction: 'down'}, tidy(plan))");

    readsBack(edited);
    assertThat(edited.at("/plan/arrangements/1/drop/device").asText()).isEqualTo("locked");
    assertThat(edited.at("/told/0").asText()).contains("“device”", "a hand needs a device");
  }

  @Test
  void a_limit_of_a_point_that_no_arrangement_has_goes() throws Exception {
    ObjectNode plan = everything();
    ((ObjectNode) plan.at("/limits/parts/1")).put("place", "contacts/1");

    JsonNode edited = edited(plan, "removePoint(plan, 0, 1)");

    readsBack(edited);
    assertThat(edited.at("/plan/limits/parts")).hasSize(8);
    assertThat(edited.path("told").toString())
        .isEqualTo("[\"With that the plan lost 1 study, 1 limit of a part.\"]");
    assertThat(edited(everything(), "tidy(plan)").path("told")).isEmpty();
    assertThat(edited(everything(), "tidy(plan)").path("plan")).isEqualTo(everything());
  }

  /**
   * A plan whose first arrangement has three points and the others one each, with limits of two
   * rings.
   */
  private static ObjectNode ringsOfThree() throws Exception {
    ObjectNode plan = everything();
    plan.remove("studies");
    ArrayNode contacts = (ArrayNode) plan.at("/arrangements/0/contacts");
    contacts.add(((ObjectNode) contacts.get(1).deepCopy()).put("at", "8 m"));
    ObjectNode limits = (ObjectNode) plan.path("limits");
    limits
        .putArray("parts")
        .add(
            study(
                """
                {"part": "hardware", "name": "middle ring", "capacity": "100 N",
                 "capacityIs": "strength", "place": "contacts/1"}
                """))
        .add(
            study(
                """
                {"part": "hardware", "name": "low ring", "capacity": "20 kN",
                 "capacityIs": "strength", "place": "contacts/2"}
                """));
    limits
        .putArray("factors")
        .add(study("{\"for\": \"low ring\", \"factor\": 5, \"askedBy\": \"the crew leader\"}"));
    ((ObjectNode) plan.path("rangeStudy"))
        .putArray("readings")
        .add("/contacts/0/forceMagnitude")
        .add("/contacts/2/forceMagnitude");
    return plan;
  }

  @Test
  void a_limit_of_a_point_follows_it_if_no_other_arrangement_has_that_number() throws Exception {
    JsonNode edited = edited(ringsOfThree(), "removePoint(plan, 0, 1)");

    readsBack(edited);
    JsonNode limits = edited.at("/plan/limits");
    assertThat(limits.path("parts")).hasSize(1);
    assertThat(limits.at("/parts/0/name").asText()).isEqualTo("low ring");
    assertThat(limits.at("/parts/0/place").asText()).isEqualTo("contacts/1");
    assertThat(limits.at("/factors/0/factor").asInt()).isEqualTo(5);
    assertThat(edited.at("/plan/rangeStudy/readings").toString())
        .isEqualTo("[\"/contacts/0/forceMagnitude\",\"/contacts/1/forceMagnitude\"]");
    assertThat(edited.path("told").toString())
        .isEqualTo("[\"With that the plan lost 1 limit of a part.\"]");

    JsonNode last = edited(ringsOfThree(), "removePoint(plan, 0, 2)");
    readsBack(last);
    assertThat(last.at("/plan/limits/parts/0/place").asText()).isEqualTo("contacts/1");
    assertThat(last.at("/plan/limits").has("factors")).isFalse();
    assertThat(last.path("told").toString())
        .isEqualTo(
            "[\"With that the plan lost 1 reading of a study, 1 limit of a part, 1 factor asked.\"]");
  }

  @Test
  void a_limit_of_a_point_that_others_have_stays_and_the_page_says_so() throws Exception {
    ObjectNode plan = ringsOfThree();
    ArrayNode others = (ArrayNode) plan.at("/arrangements/1/contacts");
    others.add(((ObjectNode) others.get(0).deepCopy()).put("at", "3 m"));

    JsonNode edited = edited(plan, "removePoint(plan, 0, 1)");

    readsBack(edited);
    assertThat(edited.at("/plan/limits/parts/0/place").asText()).isEqualTo("contacts/1");
    assertThat(edited.at("/plan/limits/parts/1/place").asText()).isEqualTo("contacts/1");
    assertThat(edited.path("told").toString())
        .isEqualTo(
            "[\"Limits and readings by point number stay as they were where another arrangement has"
                + " that point too.\",\"A limit or reading that followed its point is now of that"
                + " point of another arrangement too.\"]");
    assertThat(edited(plan, "removePoint(plan, 1, 1)").path("told").toString())
        .as("the others have that point")
        .isEqualTo(
            "[\"Limits and readings by point number stay as they were where another arrangement has"
                + " that point too.\"]");
  }

  private static String focused() {
    return browser
        .run(
            "const a = document.activeElement; return [a.closest('[data-panel]')?.dataset.panel,"
                + " a.dataset.key ?? a.dataset.pointer ?? a.className ?? a.nodeName].join(' ')")
        .asText();
  }

  private static void focus(String selector) {
    browser.run("document.querySelector(`" + selector + "`).focus(); return null");
  }

  @Test
  void the_focus_stays_in_its_panel_when_both_show_the_same() throws Exception {
    choose(B + ".way", "2");
    browser.awaitTrue(
        "document.querySelectorAll(`[data-pointer='" + POINT_AT + "']`).length === 2");
    focus(A + "[data-key='hardware-0']");
    choose(A + "[data-key='hardware-0']", "ring");
    assertThat(focused()).isEqualTo("0 hardware-0");
    browser.run("scrollTo(0, 0); return null");
    browser.click(B + "input[value='raising']");
    assertThat(
            browser
                .run("return document.querySelector(`" + A + "input[value='raising']`).checked")
                .asBoolean())
        .isTrue();
  }

  @Test
  void the_focus_goes_to_the_point_that_takes_the_place_of_a_removed_one() throws Exception {
    focus(A + "[data-key='remove-1']");
    browser.key(ENTER);
    assertThat(focused()).isEqualTo("0 remove-1");
    browser.key(ENTER);
    assertThat(focused()).as("the last one cannot be removed").isEqualTo("0 hardware-0");
  }

  @Test
  void the_focus_stays_at_the_choice_of_a_stem() throws Exception {
    ObjectNode plan = demo();
    ObjectNode other = plan.at("/stems/0").deepCopy();
    other.put("id", "other").putArray("base").add("3 m").add("0 m").add("0 m");
    plan.withArray("stems").add(other);
    openPlan(plan);
    for (String key : List.of("stem-1", "stem-tail")) {
      focus(A + "[data-key='" + key + "']");
      choose(A + "[data-key='" + key + "']", "other");
      assertThat(focused()).isEqualTo("0 " + key);
    }
  }

  /** The end of the rope is moved by keys until it is drawn no more. */
  @Test
  void the_focus_of_a_handle_that_goes_passes_to_its_field() throws Exception {
    choose(A + "[data-key='tail']", "point");
    browser.awaitTrue("document.querySelector(\"" + TAIL + "\")");
    focus(TAIL);
    for (int i = 0;
        i < 60
            && browser.run("return Boolean(document.querySelector(\"" + TAIL + "\"))").asBoolean();
        i++) {
      browser.key(PAGE_DOWN);
    }
    browser.await("its field", () -> focused().equals("0 /arrangements/2/tail/point/0"));
  }

  private static void choose(String selector, String value) {
    browser.run(
        "const box = document.querySelector(`"
            + selector
            + "`); box.value = '"
            + value
            + "'; box.dispatchEvent(new Event('change', {bubbles: true})); return null");
  }

  @Test
  void hardware_motion_and_piece_change_the_numbers() throws Exception {
    String sheave = cell("Tail", 1);
    choose(A + "[data-key='hardware-0']", "ring");
    browser.await("a ring", () -> !cell("Tail", 1).equals(sheave));
    String ring = cell("Tail", 1);
    browser.click(A + "input[value='raising']");
    browser.await("raising", () -> !cell("Tail", 1).equals(ring));
    String heavy = cell("Load leg", 2);
    browser.type("#piece input", "0"); // behind 95
    browser.await("a piece of 950 kg", () -> !cell("Load leg", 2).equals(heavy));
    assertThat(field("/piece/mass")).isEqualTo("950");
  }

  @Test
  void points_are_added_and_removed() throws Exception {
    browser.click(A + "[data-key='add']");
    browser.await("a fourth point", () -> !cell("Force on point 4", 1).isEmpty());
    assertThat(cell("Force on point 4", 2)).isEqualTo("–");

    browser.click(A + "[aria-label='Remove point 1']");

    browser.await("three points", () -> cell("Force on point 4", 1).isEmpty());
    assertThat(field("/arrangements/2/contacts/0/at")).isEqualTo("8.0");
  }

  @Test
  void a_refused_value_is_told_at_its_field_and_goes_when_it_is_mended() throws Exception {
    String input = A + "[data-pointer='/arrangements/2/contacts/0/at']";
    browser.type(input, "9"); // behind 11.6: still on the stem
    browser.type(input, "9x");
    browser.awaitTrue(
        "document.querySelector(`" + input + "`).getAttribute('aria-invalid') === 'true'");
    String told =
        browser
            .run(
                "const id = document.querySelector(`"
                    + input
                    + "`).getAttribute('aria-describedby');"
                    + " return document.getElementById(id).textContent")
            .asText();
    assertThat(told).contains("wants a quantity of length", "11.699x m");
    assertThat(cell("Load leg", 1)).isEqualTo("–");
    assertThat(spoken(A, "contacts/0")).as("no force of the old result").doesNotContain("force");
    for (String old : List.of(".headline", ".cautions")) {
      assertThat(
              browser
                  .run(
                      "return getComputedStyle(document.querySelector(`"
                          + A
                          + old
                          + "`)).visibility")
                  .asText())
          .as(old)
          .isEqualTo("hidden");
    }
    assertThat(browser.complaints()).allMatch(line -> line.contains("422"));

    browser.type(input, "\uE003\uE003\uE003"); // backspace
    browser.awaitTrue("!document.querySelector('.error')");
    assertThat(cell("Load leg", 1)).isEqualTo("932 N");
    assertThat(spoken(A, "contacts/0")).contains("force");
    assertThat(browser.complaints()).allMatch(line -> line.contains("422"));
  }

  @Test
  void units_change_fields_and_numbers_but_not_the_plan() throws Exception {
    choose("#units", "us");
    browser.await("pounds-force", () -> cell("Load leg", 1).equals("209 lbf"));
    assertThat(field("/arrangements/2/contacts/0/at")).isEqualTo("38.058");
    assertThat(browser.text(A + ".picture desc")).contains("lbf");
    choose("#units", "metric");
    browser.await("newtons", () -> cell("Load leg", 1).equals("932 N"));
    assertThat(field("/arrangements/2/contacts/0/at")).isEqualTo("11.6");
  }

  /**
   * By hand, at 0.3048 m to the foot and 4.4482216 N to the pound-force: 0.01 m are 0.0328084 ft,
   * 12 m 39.37008 ft, 5 kN 1124.0447 lbf, 1 mm 0.00328084 ft, -20 m -65.6168 ft, 20 m 65.6168 ft.
   */
  @Test
  void a_bound_that_is_told_in_other_units_is_within_itself() throws Exception {
    Map<String, String> restated = new LinkedHashMap<>();
    restated.put(
        "wants a length from 0.01 m to 12 m, got 0 m",
        "wants a length from 0.032809 ft to 39.37 ft, got 0 ft");
    restated.put(
        "wants a force above zero to 5 kN, got 0 N",
        "wants a force above zero to 1124 lbf, got 0 lbf");
    restated.put(
        "wants a station at least 1 mm above the one before it, 12 m, got 12 m",
        "wants a station at least 0.0032809 ft above the one before it, 39.371 ft, got 39.37 ft");
    restated.put(
        "wants a station not below the one before it, 12 m, got 1 m",
        "wants a station not below the one before it, 39.371 ft, got 3.2808 ft");
    restated.put(
        "wants a centre line of at most 12 m, got 20 m",
        "wants a centre line of at most 39.37 ft, got 65.616 ft");
    restated.put(
        "wants a length from -20 m to 20 m, got 6.096 m",
        "wants a length from -65.616 ft to 65.616 ft, got 20 ft");
    for (Map.Entry<String, String> told : restated.entrySet()) {
      browser.run(
          "window.restated = null; import('/assets/quantities.js').then(({restateAll}) => {"
              + " window.restated = restateAll('"
              + told.getKey()
              + "', 'us'); }); return null");
      browser.awaitTrue("window.restated");
      assertThat(browser.run("return window.restated").asText()).isEqualTo(told.getValue());
    }
  }

  /** What is wider than its field or cell, as it would be cut or run into the next one. */
  private static String cut() {
    return browser
        .run(
            "return [...document.querySelectorAll('input[data-pointer], .numbers th, .numbers"
                + " td')].filter(node => node.scrollWidth > node.clientWidth).map(node =>"
                + " node.value ?? node.textContent).join('; ')")
        .asText();
  }

  /** 12 m are 39.3701 ft, at 0.3048 m to the foot. */
  @Test
  void a_refusal_is_told_in_the_units_that_are_shown() throws Exception {
    choose("#units", "us");
    put(A + "[data-pointer='" + POINT_AT + "']", "45");
    browser.awaitTrue("document.querySelector('.error')");
    assertThat(browser.text(".error"))
        .isEqualTo("wants a station from 0 ft to the length of the stem, 39.37 ft, got 45 ft");
    put(A + "[data-pointer='" + POINT_AT + "']", "39.37");
    browser.awaitTrue("!document.querySelector('.error')");
    put(A + "[data-pointer='" + POINT_AT + "']", "9x");
    browser.awaitTrue("document.querySelector('.error')");
    assertThat(browser.text(".error"))
        .contains("like \"12.5 m\" (m, cm, mm, ft, in), got \"9x ft\"");
    assertThat(browser.complaints()).allMatch(line -> line.contains("422"));
  }

  @Test
  void no_value_is_cut_in_feet_and_pounds() throws Exception {
    for (int width : new int[] {1280, 390}) {
      show(width, 844, width == 390, "light");
      choose("#units", "us");
      browser.await("pounds-force", () -> cell("Load leg", 1).equals("209 lbf"));
      assertThat(cut()).as("at %d", width).isEmpty();
      browser.type(A + "[data-pointer='" + POINT_AT + "']", "00125");
      assertThat(field(POINT_AT)).isEqualTo("38.05800125");
      assertThat(cut()).as("typed, at %d", width).isEmpty();
    }
  }

  @Test
  void a_long_name_stays_within_the_table_of_a_phone() throws Exception {
    show(390, 844, true, "light");
    ObjectNode plan = demo();
    String name = "hornbeam-over-the-glasshouse-behind-the-garden-wall";
    ObjectNode other = plan.at("/stems/0").deepCopy();
    other.put("id", name).putArray("base").add("3 m").add("0 m").add("0 m");
    plan.withArray("stems").add(other);
    openPlan(plan);
    browser.await("its row", () -> !cell("Base moment, " + name, 1).isEmpty());
    assertThat(cut()).isEmpty();
    assertThat(browser.run("return document.documentElement.scrollWidth - innerWidth").asInt())
        .isLessThanOrEqualTo(0);
    browser.size(240, 600, true);
    browser.awaitTrue(
        "(box => box.scrollWidth > box.clientWidth && getComputedStyle(box).overflowX === 'auto')"
            + "(document.querySelector('.numbers .wide'))");
  }

  /** The answers of the server are kept back, so that there is time to look. */
  @Test
  void nothing_of_the_last_plan_is_seen_while_another_one_is_worked_out() throws Exception {
    browser.run(
        "const ask = fetch; const gate = new Promise(open => { window.openGate = open; }); window.fetch"
            + " = async (...all) => { if (all[0].startsWith('view')) await gate; return ask(...all);"
            + " }; return null");
    choose(B + ".way", "0");
    browser.awaitTrue("document.querySelector('.panel.slow')");
    assertThat(seen(A)).isEqualTo("visible, not busy");
    assertThat(seen(B)).isEqualTo("hidden, busy");
    assertThat(browser.text(B + ".headline") + browser.text(B + ".cautions")).isEmpty();
    assertThat(
            browser
                .run(
                    "return getComputedStyle(document.querySelector(`"
                        + B
                        + ".picture`), '::before').content")
                .asText())
        .contains("Working");
    browser.run("openGate(); return null");
    browser.awaitTrue("!document.querySelector('[aria-busy]')");
    assertThat(seen(B)).isEqualTo("visible, not busy");
    assertThat(browser.run("return document.querySelector('.slow') === null").asBoolean()).isTrue();
  }

  @Test
  void the_page_asks_a_busy_server_once_more() throws Exception {
    browser.run(
        "const ask = fetch; window.asked = 0; window.busy = 1; window.fetch = async (...all) => {"
            + " asked++; if (asked > busy) return ask(...all); return new"
            + " Response(JSON.stringify({title: 'All places are taken', detail: 'Ask again.'}),"
            + " {status: 503, headers: {'Retry-After': '1'}}); }; return null");
    choose(B + ".way", "0");
    browser.awaitTrue("asked === 2 && !document.querySelector('[aria-busy]')");
    assertThat(browser.text(B + ".problems")).isEmpty();

    browser.run("asked = 0; busy = 9; return null");
    choose(B + ".way", "1");
    browser.awaitTrue("asked === 2 && !document.querySelector('[aria-busy]')");
    assertThat(browser.text(B + ".problems")).isEqualTo("All places are taken. Ask again.");
  }

  /** Whether the picture of a panel is to be seen, and whether the panel says that it is busy. */
  private static String seen(String panel) {
    return browser
        .run(
            "const room = document.querySelector(`"
                + panel
                + ".picture`); return getComputedStyle(room.querySelector('svg')).visibility + ', '"
                + " + (room.closest('[aria-busy=true]') ? 'busy' : 'not busy')")
        .asText();
  }

  @Test
  void a_picture_is_drawn_anew_for_another_width() throws Exception {
    browser.size(700, 900, false);
    browser.awaitTrue(
        "[...document.querySelectorAll('.picture')].every(room =>"
            + " Number(room.querySelector('svg').getAttribute('width')) === room.clientWidth)");
  }

  @Test
  void a_plan_file_is_opened_or_refused_with_its_reasons() throws Exception {
    Path good = Files.createTempFile("spruce", ".json");
    Path bad = Files.createTempFile("bad", ".json");
    try {
      Files.copy(
          Path.of(
              "../compare-arrangements/src/main/resources/org/boleline/examples/compare/spruce.json"),
          good,
          java.nio.file.StandardCopyOption.REPLACE_EXISTING);
      Files.writeString(bad, "{\"format\": \"rigging-plan/1\", \"stem\": []}");
      browser.run("document.getElementById('file').hidden = false; return null");

      browser.type("#file", bad.toString());
      browser.awaitTrue("document.querySelector('#notice').textContent.includes('not opened')");
      assertThat(browser.text("#notice")).contains("/stem: ", "/stems: ", "/piece: ");
      assertThat(browser.text("#title")).contains("Hornbeam");
      assertThat(browser.complaints()).allMatch(line -> line.contains("422"));

      browser.type("#file", good.toString());
      browser.awaitTrue("document.querySelector('#title').textContent.includes('pruce')");
      browser.await("numbers", () -> cell("Base moment", 1).endsWith("m"));
    } finally {
      Files.delete(good);
      Files.delete(bad);
    }
  }

  @Test
  void a_changed_plan_is_saved_as_a_file_that_reads_back() throws Exception {
    choose(B + "[data-key='hardware-0']", "sheave"); // three of the ranges are of ring friction
    browser.click(B + "[aria-label='Remove point 2']");
    browser.run(
        "window.saved = []; const make = URL.createObjectURL; URL.createObjectURL = blob => {"
            + " blob.text().then(text => window.saved.push(text)); return make(blob); };"
            + " return null");
    browser.click("#save");
    browser.awaitTrue("document.querySelector('#notice').textContent.includes('was saved')");

    assertThat(browser.text("#notice")).doesNotContain("not open");
    Plan saved = PlanReader.read(browser.run("return window.saved[0]").asText());
    assertThat(saved.arrangements()).hasSize(6);
    assertThat(saved.arrangements().get(3).contacts()).hasSize(2);
    assertThat(saved.arrangements().get(2).drop()).isPresent();
  }

  @Test
  void the_page_keeps_to_the_standard_of_html() throws Exception {
    assertThat(Markup.faults(client.get("/").body())).isEmpty();
  }

  @Test
  void axe_finds_no_serious_fault_at_any_size_and_theme() throws Exception {
    for (String theme : List.of("light", "dark")) {
      for (int width : new int[] {390, 1440}) {
        boolean phone = width < 1000;
        show(width, phone ? 844 : 900, phone, theme);
        String name = (phone ? "phone-" : "laptop-") + theme;
        browser.screenshot(name, false);
        browser.screenshot(name + "-whole", true);
        assertThat(browser.accessibilityFaults()).as(name).isEmpty();
        assertThat(browser.run("return document.documentElement.scrollWidth - innerWidth").asInt())
            .as("nothing sticks out at %s", name)
            .isLessThanOrEqualTo(0);
      }
    }
  }
}
