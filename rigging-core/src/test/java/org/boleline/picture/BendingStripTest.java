package org.boleline.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.boleline.Tolerances;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.statics.StemProfile;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class BendingStripTest {
  private static StaticResult hornbeam() {
    return Statics.analyse(Demo.plan("hornbeam"));
  }

  @Test
  void moments_are_drawn_as_they_were_solved() {
    StaticResult result = hornbeam();
    Drawn drawn = new Drawn(BendingStrip.of(result, "hornbeam", PictureSpec.STANDARD).svg());
    Element chart = Drawn.ofClass(drawn.root(), "chart").get(0);
    List<Element> lines = Drawn.ofClass(chart, "line");
    assertThat(lines).hasSameSizeAs(result.arrangements());
    for (int i = 0; i < lines.size(); i++) {
      Solution solution = result.arrangements().get(i).solution().orElseThrow();
      StemProfile profile = solution.stems().get(0).profile();
      double[][] moments = profile.moments(Kind.MOMENT);
      double[] stations = profile.stations(Kind.LENGTH);
      List<double[]> path = Drawn.path(lines.get(i));
      for (int j = 0; j < path.size(); j++) {
        double[] numbers = Drawn.numbers(chart, path.get(j));
        assertThat(numbers[0]).isEqualTo(stations[j], within(Tolerances.DRAWN));
        double size =
            Math.sqrt(
                moments[j][0] * moments[j][0]
                    + moments[j][1] * moments[j][1]
                    + moments[j][2] * moments[j][2]);
        assertThat(numbers[1]).isEqualTo(size / 1000, within(Tolerances.DRAWN));
      }
    }
  }

  @Test
  void a_held_load_has_a_line_for_each_end() {
    Plan plan = Demo.plan("hornbeam");
    Arrangement held = plan.arrangements().get(0).toBuilder().motion(Motion.HELD).build();
    StaticResult result = Statics.analyse(plan.toBuilder().arrangements(List.of(held)).build());
    String svg = BendingStrip.of(result, "hornbeam", PictureSpec.STANDARD).svg();
    Element chart = Drawn.ofClass(new Drawn(svg).root(), "chart").get(0);
    Solution run = result.arrangements().get(0).solution().orElseThrow();
    List<Solution> ends = List.of(run, run.otherEnd().orElseThrow());
    List<Element> lines = Drawn.ofClass(chart, "line");
    assertThat(lines).hasSize(2);
    for (int i = 0; i < 2; i++) {
      double[] base = Drawn.numbers(chart, Drawn.path(lines.get(i)).get(0));
      double moment =
          Si.value(ends.get(i).stems().get(0).base().momentMagnitude(), Kind.MOMENT, "moment");
      assertThat(base[1]).isEqualTo(moment / 1000, within(Tolerances.DRAWN));
    }
    assertThat(svg)
        .contains("1 about to run: " + held.id(), "1 about to rise: " + held.id())
        .contains("1 run, 1 rise: ");
  }

  @Test
  void the_greatest_stress_lies_on_the_line_where_the_section_steps() {
    StaticResult result = hornbeam();
    Drawn drawn = new Drawn(BendingStrip.of(result, "hornbeam", PictureSpec.STANDARD).svg());
    Element chart = Drawn.ofClass(drawn.root(), "chart").get(1);
    List<double[]> line = Drawn.path(Drawn.ofClass(chart, "line").get(0));
    double[] dot = new double[2];
    Element greatest = Drawn.ofClass(chart, "greatest").get(0);
    dot[0] = Drawn.number(greatest, "cx");
    dot[1] = Drawn.number(greatest, "cy");
    double nearest =
        line.stream().mapToDouble(p -> Math.hypot(p[0] - dot[0], p[1] - dot[1])).min().orElse(9);
    assertThat(nearest).isLessThan(0.5); // half a pixel
    assertThat(drawn.root().getTextContent()).contains(" at 1.2 m");
  }

  @Test
  void labels_keep_apart_on_every_sheet() {
    for (String name : List.of("hornbeam", "spruce", "sycamore")) {
      StaticResult result = Statics.analyse(Demo.plan(name));
      String stem = result.plan().stems().get(0).id();
      for (PictureSpec spec : List.of(PictureSpec.STANDARD, Demo.PHONE)) {
        String svg = BendingStrip.of(result, stem, spec).svg();
        Drawn drawn = new Drawn(svg);
        drawn.checkLabels(name);
        drawn.checkOnSheet(name);
        assertThat(svg).isEqualTo(BendingStrip.of(result, stem, spec).svg());
      }
    }
  }

  @Test
  void values_of_many_arrangements_are_told_in_full_on_a_phone() {
    StaticResult six = hornbeam();
    List<Arrangement> twelve = new ArrayList<>();
    for (Arrangement arrangement : six.plan().arrangements()) {
      twelve.add(arrangement);
      twelve.add(arrangement.toBuilder().id(arrangement.id() + ", again").build());
    }
    StaticResult more = Statics.analyse(six.plan().toBuilder().arrangements(twelve).build());
    for (StaticResult result : List.of(six, more)) {
      for (PictureSpec spec : List.of(Demo.PHONE, Demo.PHONE.withSheet(320, 640))) {
        Drawn drawn = new Drawn(BendingStrip.of(result, "hornbeam", spec).svg());
        drawn.checkLabels("hornbeam");
        drawn.checkNames("hornbeam");
        for (Element chart : Drawn.ofClass(drawn.root(), "chart")) {
          List<String> said =
              Drawn.ofClass(chart, "label").stream()
                  .map(label -> String.join(" ", Drawn.texts(label)))
                  .toList();
          assertThat(said)
              .allMatch(text -> text.matches("[0-9, ]+: [0-9. to]+ (kN.m|MPa) at .* m"));
          List<Integer> numbers =
              said.stream()
                  .flatMap(text -> Arrays.stream(text.split(":", -1)[0].split(", ", -1)))
                  .map(Integer::valueOf)
                  .sorted()
                  .toList();
          assertThat(numbers)
              .containsExactlyElementsOf(
                  IntStream.rangeClosed(1, result.arrangements().size()).boxed().toList());
        }
      }
    }
    Drawn small =
        new Drawn(BendingStrip.of(more, "hornbeam", Demo.PHONE.withSheet(320, 420)).svg());
    assertThat(Drawn.ofClass(small.root(), "chart")).isEmpty();
    assertThat(small.root().getTextContent()).contains("too small for the drawing");
    small.checkOnSheet("small");
  }

  @Test
  void a_chart_tells_how_many_labels_found_no_room() {
    Sheet sheet = new Sheet(PictureSpec.STANDARD, "title", List.of("title"), "words");
    Chart chart = new Chart(sheet, new Rect(10, 100, 260, 240), 80);
    chart.add(new double[] {0, 80}, new double[] {0, 80});
    for (int i = 1; i < 80; i++) {
      chart.mark(i, i, "leg " + i, "kN", "");
    }
    chart.draw("tension", "time, s");
    chart.end();
    Element root = new Drawn(sheet.end()).root();
    int labelled =
        Drawn.ofClass(root, "label").stream()
            .mapToInt(label -> Drawn.texts(label).get(0).split(",", -1).length)
            .sum();
    assertThat(labelled).isLessThan(79);
    assertThat(Drawn.texts(root)).anyMatch(text -> text.matches("[0-9]+ labels left out"));
  }

  @Test
  void a_stem_that_is_not_there_is_refused() {
    StaticResult result = hornbeam();
    assertThatThrownBy(() -> BendingStrip.of(result, "oak", PictureSpec.STANDARD))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("oak");
  }
}
