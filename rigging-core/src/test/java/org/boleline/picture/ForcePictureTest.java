package org.boleline.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.kilonewtons;
import static org.boleline.units.Amounts.metres;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.boleline.Tolerances;
import org.boleline.geometry.Box;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Leg;
import org.boleline.statics.MarkResult;
import org.boleline.statics.RandomPlans;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class ForcePictureTest {
  /** A sheet of a page, a narrow one, and one of a phone. */
  private static final List<PictureSpec> PAGES =
      List.of(PictureSpec.STANDARD, PictureSpec.STANDARD.withSheet(560, 760), Demo.PHONE);

  private static Drawn drawn(StaticResult result, String id, PictureSpec spec) {
    return new Drawn(ForcePicture.of(result, id, spec).svg());
  }

  @ParameterizedTest
  @ValueSource(strings = {"hornbeam", "spruce", "sycamore"})
  void the_demo_sites_are_drawn_as_they_were_solved(String name) {
    StaticResult result = Statics.analyse(Demo.plan(name));
    for (ArrangementResult arrangement : result.arrangements()) {
      for (PictureSpec spec : PAGES) {
        Drawn drawn = drawn(result, arrangement.id(), spec);
        drawn.checkLabels(name);
        drawn.checkNames(name);
        drawn.checkOnSheet(name);
        Solution solution = arrangement.solution().orElseThrow();
        checkGeometry(drawn, solution);
        assertThat(checkLabelsAreThereOrTold(drawn, solution)).as(name).isZero();
      }
    }
  }

  @Test
  void random_rigs_are_drawn_as_they_were_solved_with_no_label_over_another() {
    int drawnCount = 0;
    for (long seed = 0; seed < 500; seed++) {
      StaticResult result;
      try {
        result = Statics.analyse(RandomPlans.of(seed));
      } catch (org.boleline.explain.PlanRefusedException e) {
        continue; // the rope pulls two points together: nothing to draw
      }
      ArrangementResult arrangement = result.arrangements().get(0);
      PictureSpec spec = PAGES.get((int) (seed % PAGES.size()));
      Drawn drawn = drawn(result, arrangement.id(), spec);
      drawn.checkLabels("seed " + seed);
      drawn.checkNames("seed " + seed);
      drawn.checkOnSheet("seed " + seed);
      if (arrangement instanceof Solution solution) {
        checkGeometry(drawn, solution);
        int left = checkLabelsAreThereOrTold(drawn, solution);
        assertThat(left == 0 || spec.width() < PictureSpec.STANDARD.width()).isTrue();
        drawnCount++;
      }
    }
    assertThat(drawnCount).isGreaterThan(300);
  }

  private static void same(Element view, double[] onSheet, double[] place, String what) {
    double[] site = Drawn.site(view, onSheet);
    double[] wanted = Drawn.wanted(view, place);
    assertThat(site).as(what).containsExactly(wanted, within(Tolerances.DRAWN));
  }

  private static void checkGeometry(Drawn drawn, Solution solution) {
    for (Element view : drawn.views()) {
      for (StemResult stem : solution.stems()) {
        checkAxis(view, stem, "axis-loaded", stem.profile().positions(Kind.LENGTH));
        checkAxis(view, stem, "axis-unloaded", stem.profile().unloadedPositions(Kind.LENGTH));
        for (MarkResult mark : stem.marks()) {
          Element arrow = movement(view, stem.id(), mark.name());
          double[] to = mark.position().in(Kind.LENGTH);
          same(view, Drawn.line(arrow).get(1), to, mark.name());
        }
      }
      List<Element> legs = Drawn.ofClass(view, "leg");
      assertThat(legs).hasSameSizeAs(solution.legs());
      for (int i = 0; i < legs.size(); i++) {
        Leg leg = solution.legs().get(i);
        double[] tension = {Si.value(leg.tension(), Kind.FORCE, "tension")};
        assertThat(Drawn.number(legs.get(i), "data-tension")).isEqualTo(tension[0]);
        List<double[]> line = Drawn.line(legs.get(i));
        leg.begin().ifPresent(p -> same(view, line.get(0), p.in(Kind.LENGTH), "leg's beginning"));
        if (legs.get(i).getAttribute("data-broken").equals("false") || i == 0) {
          leg.end().ifPresent(p -> same(view, line.get(1), p.in(Kind.LENGTH), "leg's end"));
        }
      }
      for (int i = 0; i < solution.contacts().size(); i++) {
        checkContact(view, solution.contacts().get(i), "contacts/" + i);
      }
    }
  }

  private static void checkAxis(Element view, StemResult stem, String kind, double[][] wanted) {
    Element axis =
        Drawn.ofClass(view, kind).stream()
            .filter(e -> e.getAttribute("data-stem").equals(stem.id()))
            .findFirst()
            .orElseThrow();
    List<double[]> path = Drawn.path(axis);
    assertThat(path).hasSize(wanted.length);
    for (int i = 0; i < wanted.length; i++) {
      same(view, path.get(i), wanted[i], kind);
    }
  }

  private static Element movement(Element view, String stem, String mark) {
    return Drawn.ofClass(view, "movement").stream()
        .filter(e -> e.getAttribute("data-stem").equals(stem))
        .filter(e -> e.getAttribute("data-name").equals(mark))
        .findFirst()
        .orElseThrow();
  }

  private static void checkContact(Element view, ContactResult contact, String place) {
    Element point =
        Drawn.ofClass(view, "point").stream()
            .filter(e -> e.getAttribute("data-place").equals(place))
            .findFirst()
            .orElseThrow();
    double[] at = {Drawn.number(point, "data-x"), Drawn.number(point, "data-y")};
    double[] position = contact.position().in(Kind.LENGTH);
    same(view, at, position, place);
    List<Element> arrows =
        Drawn.ofClass(view, "force").stream()
            .filter(e -> e.getAttribute("data-place").equals(place))
            .toList();
    assertThat(arrows).hasSize(contact.bears() ? 1 : 0);
    if (contact.bears()) {
      double[] force = contact.force().in(Kind.FORCE);
      double perMetre = Drawn.number(view, "data-force-per-metre");
      List<double[]> line = Drawn.line(arrows.get(0));
      same(view, line.get(0), position, "arrow's beginning");
      double[] tip = new double[3];
      for (int i = 0; i < 3; i++) {
        tip[i] = position[i] + force[i] / perMetre;
      }
      same(view, line.get(1), tip, "arrow's tip");
    }
  }

  /** A label for every point, leg, mark, tip and base, and the piece, or their number is told. */
  private static int checkLabelsAreThereOrTold(Drawn drawn, Solution solution) {
    int points = solution.contacts().size() + (solution.handTension().isPresent() ? 1 : 0);
    int wanted = labels(solution) + (drawn.views().size() - 1) * points;
    int left = wanted - Drawn.ofClass(drawn.root(), "label").size();
    String told = left + (left == 1 ? " label" : " labels") + " left out; see the table.";
    String description = Drawn.all(drawn.root(), "desc").get(0).getTextContent();
    if (left > 0) {
      assertThat(Drawn.texts(drawn.root())).contains(told);
      assertThat(description).contains(told);
    } else {
      assertThat(Drawn.texts(drawn.root())).noneMatch(text -> text.contains("left out"));
      assertThat(description).doesNotContain("left out; see");
    }
    return left;
  }

  /** How many labels a side view has, if there is room for all. */
  private static int labels(Solution solution) {
    int marks = solution.stems().stream().mapToInt(stem -> stem.marks().size()).sum();
    boolean device = solution.handTension().isPresent();
    return solution.contacts().size()
        + solution.legs().size()
        + 1
        + 2 * solution.stems().size()
        + marks
        + (device ? 2 : 0)
        + (solution.arrangement().tagline().isPresent() ? 1 : 0);
  }

  @Test
  void labels_without_room_are_counted_on_the_sheet() {
    int leftCount = 0;
    for (String name : List.of("hornbeam", "spruce", "sycamore")) {
      StaticResult result = Statics.analyse(Demo.plan(name));
      for (ArrangementResult arrangement : result.arrangements()) {
        Drawn drawn = drawn(result, arrangement.id(), PictureSpec.STANDARD.withSheet(320, 380));
        Solution solution = arrangement.solution().orElseThrow();
        leftCount += checkLabelsAreThereOrTold(drawn, solution);
        drawn.checkLabels(name);
        drawn.checkOnSheet(name);
      }
    }
    assertThat(leftCount).isPositive();
  }

  @Test
  void a_sheet_without_room_for_the_drawing_says_so() {
    Plan plan = Demo.plan("hornbeam").toBuilder().title("wide words ".repeat(20)).build();
    Arrangement rings = plan.arrangements().get(3);
    List<Contact> contacts = rings.contacts().stream().map(c -> c.withOpens(false)).toList();
    StaticResult result =
        Statics.analyse(
            plan.toBuilder()
                .arrangements(List.of(rings.toBuilder().contacts(contacts).build()))
                .build());
    Drawn drawn = drawn(result, rings.id(), PictureSpec.STANDARD.withSheet(320, 320));
    assertThat(drawn.views()).isEmpty();
    assertThat(drawn.root().getTextContent()).contains("too small for the drawing");
    drawn.checkOnSheet("small");
  }

  @Test
  void names_stand_nearest_to_what_they_name_on_the_sheets_of_a_page() {
    StaticResult result = Statics.analyse(Demo.plan("hornbeam"));
    for (ArrangementResult arrangement : result.arrangements()) {
      for (PictureSpec spec :
          List.of(PictureSpec.STANDARD, PictureSpec.STANDARD.withSheet(560, 760))) {
        Element view = drawn(result, arrangement.id(), spec).side();
        for (Element name : Drawn.names(view)) {
          assertThat(Drawn.isNearestToItsOwn(view, name)).as(name.getTextContent()).isTrue();
          assertThat(Drawn.away(name, Drawn.numbers(name, "data-at")))
              .as(name.getTextContent())
              .isLessThan(30);
        }
      }
    }
  }

  @Test
  void names_lead_to_the_stem_or_the_point_they_name() {
    StaticResult result = Statics.analyse(Demo.plan("sycamore"));
    for (ArrangementResult arrangement : result.arrangements()) {
      for (PictureSpec spec : List.of(PictureSpec.STANDARD, Demo.PHONE)) {
        Element view = drawn(result, arrangement.id(), spec).side();
        Solution solution = arrangement.solution().orElseThrow();
        for (StemResult stem : solution.stems()) {
          double[][] axis = stem.profile().positions(Kind.LENGTH);
          same(view, named(view, "tip of " + stem.id()), axis[axis.length - 1], "tip");
          same(view, named(view, "base of " + stem.id()), axis[0], "base");
        }
        for (int i = 0; i < solution.contacts().size(); i++) {
          double[] position = solution.contacts().get(i).position().in(Kind.LENGTH);
          same(view, named(view, (i + 1) + " "), position, "point");
        }
      }
    }
  }

  /** Where the label leads that begins with some words. */
  private static double[] named(Element view, String words) {
    Element label =
        Drawn.names(view).stream()
            .filter(name -> Drawn.texts(name).get(0).startsWith(words))
            .findFirst()
            .orElseThrow();
    return Drawn.numbers(label, "data-at");
  }

  @Test
  void the_same_result_gives_the_same_bytes() {
    StaticResult once = Statics.analyse(Demo.plan("hornbeam"));
    StaticResult again = Statics.analyse(Demo.plan("hornbeam"));
    for (ArrangementResult arrangement : once.arrangements()) {
      assertThat(ForcePicture.of(once, arrangement.id(), Demo.PHONE).svg())
          .isEqualTo(ForcePicture.of(again, arrangement.id(), Demo.PHONE).svg());
    }
  }

  @Test
  void text_with_markup_stays_text() {
    String evil = "<script>alert(1)</script> & \"quotes\" ]]> <!--";
    Plan plan = Demo.plan("hornbeam").toBuilder().title(evil).build();
    PictureSpec spec =
        PictureSpec.STANDARD.withBox(
            "<b onload='x'>", Box.between(point(1.6, -2.5, 0), point(4.2, 2.5, 2.9)));
    Drawn drawn = drawn(Statics.analyse(plan), "three rings, device at the base", spec);
    assertThat(Drawn.all(drawn.root(), "title").get(0).getTextContent()).startsWith(evil);
    assertThat(Drawn.all(drawn.root(), "script")).isEmpty();
    assertThat(Drawn.all(drawn.root(), "b")).isEmpty();
    assertThat(Drawn.ofClass(drawn.root(), "box").get(0).getAttribute("data-name"))
        .isEqualTo("<b onload='x'>");
  }

  private static Vector<javax.measure.quantity.Length> point(double x, double y, double z) {
    return Vector.of(metres(x), metres(y), metres(z));
  }

  @Test
  void a_screen_reader_gets_a_title_and_the_numbers() {
    PictureSpec spec = PictureSpec.STANDARD.withId("rig-2");
    Drawn drawn =
        drawn(Statics.analyse(Demo.plan("hornbeam")), "three rings, device at the base", spec);
    Element root = drawn.root();
    assertThat(root.getAttribute("role")).isEqualTo("img");
    assertThat(root.getAttribute("aria-labelledby")).isEqualTo("rig-2-title rig-2-desc");
    Element title = Drawn.all(root, "title").get(0);
    assertThat(title.getAttribute("id")).isEqualTo("rig-2-title");
    Element description = Drawn.all(root, "desc").get(0);
    assertThat(description.getAttribute("id")).isEqualTo("rig-2-desc");
    assertThat(description.getTextContent())
        .contains("Rope from the piece to point 1: 0.932 kN.", "Moment at the base of hornbeam");
  }

  @Test
  void whether_hardware_opens_is_shown_with_the_order_it_implies() {
    Plan plan = Demo.plan("hornbeam");
    Arrangement rings = plan.arrangements().get(3);
    List<Contact> contacts = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      contacts.add(rings.contacts().get(i).withOpens(i == 1));
    }
    StaticResult result =
        Statics.analyse(
            plan.toBuilder()
                .arrangements(List.of(rings.toBuilder().contacts(contacts).build()))
                .build());
    String text = drawn(result, rings.id(), PictureSpec.STANDARD).root().getTextContent();
    assertThat(text).contains("1 ring, threaded", "2 ring, opens", "3 ring, threaded");
    assertThat(text)
        .contains("thread the end of the rope through points 3, then 1. Lay it into point 2");
  }

  private static StaticResult withTail(String site, String id, Tail tail) {
    Plan plan = Demo.plan(site);
    Arrangement way =
        plan.arrangements().stream().filter(a -> a.id().equals(id)).findFirst().orElseThrow();
    return Statics.analyse(
        plan.toBuilder().arrangements(List.of(way.toBuilder().tail(tail).build())).build());
  }

  @Test
  void a_tail_that_ends_off_the_sheet_is_broken_off_and_told() {
    String id = "one point, device at the base";
    StaticResult result = withTail("hornbeam", id, Tail.Point.of(point(-80, 30, 40)));
    Drawn drawn = drawn(result, id, PictureSpec.STANDARD);
    Solution solution = result.arrangement(id).orElseThrow().solution().orElseThrow();
    double[] from = solution.contacts().get(0).position().in(Kind.LENGTH);
    double away = Math.hypot(Math.hypot(from[0] + 80, from[1] - 30), from[2] - 40);
    String told =
        "The tail goes on beyond the sheet: its end lies "
            + PictureUnits.METRIC.length(away)
            + " from point 1.";
    assertThat(Drawn.texts(drawn.root())).contains(told, "the rope goes on");
    assertThat(Drawn.all(drawn.root(), "desc").get(0).getTextContent()).contains(told);
    for (Element view : drawn.views()) {
      assertThat(Drawn.ofClass(view, "tail")).isEmpty();
      assertThat(Drawn.ofClass(view, "break")).hasSize(1);
      List<double[]> leg = Drawn.line(Drawn.ofClass(view, "leg").get(1));
      List<double[]> strokes = Drawn.path(Drawn.ofClass(view, "break").get(0));
      assertThat(strokes).hasSize(4);
      for (double[] end : strokes) {
        assertThat(Math.hypot(end[0] - leg.get(1)[0], end[1] - leg.get(1)[1])).isLessThan(20);
      }
      for (int i = 0; i < 4; i += 2) {
        assertThat(Drawn.cross(strokes.get(i), strokes.get(i + 1), leg.get(0), leg.get(1)))
            .isTrue();
      }
    }
    drawn.checkLabels("far tail");
    drawn.checkOnSheet("far tail");
  }

  @Test
  void a_tail_with_no_stated_end_is_broken_off_and_one_with_an_end_ends_in_a_dot() {
    Drawn down =
        drawn(
            Statics.analyse(Demo.plan("hornbeam")),
            "one point, tail straight down",
            PictureSpec.STANDARD);
    assertThat(Drawn.ofClass(down.side(), "tail")).isEmpty();
    assertThat(Drawn.ofClass(down.side(), "break")).hasSize(1);
    assertThat(down.root().getTextContent()).doesNotContain("beyond the sheet");
    String id = "one point, device at the base";
    Drawn near = drawn(withTail("hornbeam", id, Tail.Point.of(point(-3, 0, 0))), id, Demo.PHONE);
    assertThat(Drawn.ofClass(near.side(), "tail")).hasSize(1);
    assertThat(Drawn.ofClass(near.root(), "break")).isEmpty();
    assertThat(near.root().getTextContent()).doesNotContain("goes on");
  }

  @Test
  void ground_is_drawn_where_it_is_stated_or_a_stem_stands_at_height_zero() {
    String id = "one point, device at the base";
    StaticResult standing = withTail("hornbeam", id, Tail.Point.of(point(-3, 0, 0)));
    assertThat(ground(standing, PictureSpec.STANDARD)).isEqualTo(0, within(Tolerances.DRAWN));
    assertThat(ground(standing, PictureSpec.STANDARD.withGround(metres(-0.4))))
        .isEqualTo(-0.4, within(Tolerances.DRAWN));
    StaticResult slope = withTail("hornbeam", id, Tail.Point.of(point(-3, 0, -2)));
    assertThat(ground(slope, PictureSpec.STANDARD)).isNaN();
    StaticResult crown = Statics.analyse(Demo.plan("sycamore"));
    assertThat(ground(crown, PictureSpec.STANDARD)).isNaN();
    assertThat(ground(crown, PictureSpec.STANDARD.withGround(metres(0))))
        .isEqualTo(0, within(Tolerances.DRAWN));
  }

  /** The height at which the first arrangement has its ground, not a number if it has none. */
  private static double ground(StaticResult result, PictureSpec spec) {
    Element view = drawn(result, result.arrangements().get(0).id(), spec).side();
    return Drawn.ofClass(view, "ground").stream()
        .mapToDouble(line -> Drawn.site(view, Drawn.path(line).get(0))[1])
        .findFirst()
        .orElse(Double.NaN);
  }

  @Test
  void the_headings_are_never_cut() {
    Plan plan = Demo.plan("hornbeam");
    Arrangement rings = plan.arrangements().get(3);
    List<Contact> contacts = new ArrayList<>();
    for (int i = 0; i < 9; i++) {
      Contact ring = rings.contacts().get(1);
      contacts.add(
          Contact.of(ring.stem(), metres(11.6 - i), ring.hardware())
              .withSling(metres(0.2))
              .withOpens(i == 4));
    }
    StaticResult result =
        Statics.analyse(
            plan.toBuilder()
                .arrangements(List.of(rings.toBuilder().contacts(contacts).build()))
                .build());
    assertThat(result.arrangements().get(0).solution().orElseThrow().cautions()).isNotEmpty();
    for (PictureSpec spec : List.of(PictureSpec.STANDARD, Demo.PHONE.withSheet(320, 640))) {
      Drawn drawn = drawn(result, rings.id(), spec);
      String text = String.join(" ", Drawn.texts(drawn.root()));
      assertThat(text)
          .contains(
              "Setting up: Before it is tied to the piece, thread the end of the rope through points"
                  + " 9, then 8, then 7, then 6, then 4, then 3, then 2, then 1. Lay it into point"
                  + " 5 at any time.");
      assertThat(text).contains(" Read with its cautions. ");
      drawn.checkLabels("headings");
      drawn.checkOnSheet("headings");
    }
  }

  @Test
  void a_number_keeps_its_unit_at_the_end_of_a_line() {
    double narrow = Lettering.width("lowering, piece 95", 13);
    assertThat(Lettering.lines("lowering, piece 95 kg", 13, narrow, 9))
        .containsExactly("lowering, piece", "95 kg");
    assertThat(Lettering.lines("moved 3 m 12", 13, Lettering.width("moved", 13), 9))
        .containsExactly("moved", "3 m", "12");
  }

  @Test
  void a_label_leaves_the_head_of_an_arrow_free() {
    Labels labels = new Labels(new Rect(0, 0, 400, 400));
    Spot anchor = new Spot(200, 200);
    labels.place(List.of("12 kN"), "plain", anchor, new Spot(1, 0));
    Labels beside = new Labels(new Rect(0, 0, 400, 400));
    Rect plain = labels.placed().get(0).room();
    Spot head = new Spot(plain.middleX(), plain.middleY());
    beside.head(head);
    beside.place(List.of("12 kN"), "plain", anchor, new Spot(1, 0));
    Rect free = beside.placed().get(0).room();
    assertThat(free.nearest(head.x(), head.y()).distance(head)).isPositive();
  }

  @Test
  void the_wraps_of_a_device_are_counted_in_words_that_fit() {
    Plan plan = Demo.plan("hornbeam");
    Arrangement one = plan.arrangements().get(1);
    for (double wraps : new double[] {0, 1, 1.5}) {
      Tail tail = Tail.Device.of("hornbeam", metres(0.8), 0.18, wraps);
      StaticResult result =
          Statics.analyse(
              plan.toBuilder().arrangements(List.of(one.toBuilder().tail(tail).build())).build());
      assertThat(Drawn.texts(drawn(result, one.id(), PictureSpec.STANDARD).root()))
          .contains(
              wraps == 0 ? "behind no wraps" : wraps == 1 ? "behind 1 wrap" : "behind 1.5 wraps");
    }
  }

  @Test
  void movements_are_enlarged_only_when_asked_for_and_then_it_says_so() {
    StaticResult result = Statics.analyse(Demo.plan("hornbeam"));
    String id = "one point, device at the base";
    Solution solution = result.arrangement(id).orElseThrow().solution().orElseThrow();
    Drawn plain = drawn(result, id, PictureSpec.STANDARD);
    assertThat(plain.root().getTextContent()).contains("movements as they are");
    Drawn enlarged = drawn(result, id, PictureSpec.STANDARD.withMagnification(5));
    assertThat(enlarged.root().getTextContent()).contains("movements drawn 5 times as large");
    Element view = enlarged.side();
    double[][] from = solution.stems().get(0).profile().unloadedPositions(Kind.LENGTH);
    double[][] to = solution.stems().get(0).profile().positions(Kind.LENGTH);
    int last = to.length - 1;
    double[] wanted = new double[3];
    for (int i = 0; i < 3; i++) {
      wanted[i] = from[last][i] + 5 * (to[last][i] - from[last][i]);
    }
    List<double[]> axis = Drawn.path(Drawn.ofClass(view, "axis-loaded").get(0));
    same(view, axis.get(last), wanted, "tip");
    enlarged.checkLabels("enlarged");
    enlarged.checkOnSheet("enlarged");
  }

  @Test
  void forces_are_drawn_to_the_stated_scale() {
    StaticResult result = Statics.analyse(Demo.plan("hornbeam"));
    Drawn drawn =
        drawn(
            result,
            "three rings, device at the base",
            PictureSpec.STANDARD.withForceScale(kilonewtons(2)));
    Element view = drawn.side();
    assertThat(Drawn.number(view, "data-force-per-metre")).isEqualTo(2000);
  }

  @Test
  void themes_differ_in_colour_alone() {
    StaticResult result = Statics.analyse(Demo.plan("spruce"));
    String light = ForcePicture.of(result, "sheave", PictureSpec.STANDARD).svg();
    String dark =
        ForcePicture.of(result, "sheave", PictureSpec.STANDARD.withTheme(Theme.DARK)).svg();
    String auto =
        ForcePicture.of(result, "sheave", PictureSpec.STANDARD.withTheme(Theme.AUTO)).svg();
    String colour = "#[0-9a-f]{6}";
    assertThat(dark).isNotEqualTo(light);
    assertThat(dark.replaceAll(colour, "#")).isEqualTo(light.replaceAll(colour, "#"));
    assertThat(auto.replaceFirst("<style>[^<]*</style>\n?", "")).isEqualTo(light);
    assertThat(auto).contains("prefers-color-scheme: dark");
    assertThat(light).doesNotContain("<style", "style=");
  }

  @Test
  void numbers_can_be_lettered_in_feet_and_pounds() {
    Drawn drawn =
        drawn(
            Statics.analyse(Demo.plan("hornbeam")),
            "three rings, device at the base",
            PictureSpec.STANDARD.withUnits(PictureUnits.US));
    // 95 kg is 209.4 lb; its weight 931.6 N is 209.4 lbf
    assertThat(drawn.root().getTextContent()).contains("209 lb", "209 lbf", "lbf.ft", "ft");
    drawn.checkLabels("feet");
  }

  @Test
  void a_plan_without_a_stable_state_gets_a_sheet_that_says_so() {
    for (long seed = 0; seed < 500; seed++) {
      StaticResult result = Statics.analyse(RandomPlans.of(seed));
      ArrangementResult arrangement = result.arrangements().get(0);
      if (arrangement instanceof org.boleline.statics.LostStability) {
        Drawn drawn = drawn(result, arrangement.id(), PictureSpec.STANDARD);
        assertThat(drawn.root().getTextContent()).contains("No stable state");
        assertThat(drawn.views()).isEmpty();
        return;
      }
    }
    throw new AssertionError("no unstable plan among the seeds");
  }

  @Test
  void wishes_outside_their_range_are_refused() {
    PictureSpec spec = PictureSpec.STANDARD;
    assertThatThrownBy(() -> spec.withMagnification(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> spec.withMagnification(0.5))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> spec.withSheet(100, 960)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> spec.withId("a b")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> spec.withForceScale(kilonewtons(0)))
        .isInstanceOf(IllegalArgumentException.class);
    StaticResult result = Statics.analyse(RandomPlans.of(1));
    assertThatThrownBy(() -> ForcePicture.of(result, "no such", spec))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no such");
  }

  @Test
  void figures_keep_three_places() {
    double[] values = {0, 0.0004, 0.0316, 0.1234, 1.5, 12.345, 123.45, 1234.5, -2.346};
    assertThat(Arrays.stream(values).mapToObj(PictureUnits::number))
        .containsExactly("0", "0", "0.032", "0.123", "1.5", "12.3", "123", "1230", "-2.35");
    assertThat(Arrays.stream(values).mapToObj(PictureUnits::figures))
        .containsExactly("0", "0", "0.032", "0.123", "1.50", "12.3", "123", "1230", "-2.35");
    assertThat(new double[] {PictureUnits.round(7), PictureUnits.round(0.3)})
        .containsExactly(5, 0.2);
  }
}
