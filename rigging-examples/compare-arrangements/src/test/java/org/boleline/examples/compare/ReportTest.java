package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.boleline.examples.pages.Markup;
import org.boleline.json.ResultWriter;
import org.boleline.plan.Plan;
import org.boleline.statics.Statics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

class ReportTest {
  private static final Pattern NEVER = Pattern.compile("(?i)\\b(safe|approved|compliant)\\b");
  private static final String REPORT = report(Plans.HORNBEAM, UnitSystem.SI);

  private static String report(Plan plan, UnitSystem units) {
    return Report.write(Plans.asked(plan), Findings.withCauses(Statics.analyse(plan)), units);
  }

  static List<String> reports() {
    return List.of(
        REPORT,
        report(Plans.SYCAMORE, UnitSystem.US),
        report(Plans.SPRUCE, UnitSystem.SI),
        report(Plans.MIXED, UnitSystem.US),
        report(Plans.POLE, UnitSystem.SI));
  }

  private static Document parsed(String html) throws Exception {
    DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
    return builder.parse(new InputSource(new StringReader(html)));
  }

  private static List<Element> elements(String name, Element in) {
    NodeList found = in.getElementsByTagName(name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  private static Element section(Document report, String id) {
    return elements("section", report.getDocumentElement()).stream()
        .filter(section -> section.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** The rows of a table, each as the text of its cells; rows that span a table have one. */
  private static List<List<String>> cells(Element table) {
    return elements("tr", table).stream()
        .map(
            row -> {
              List<String> cells = new ArrayList<>();
              for (var node = row.getFirstChild(); node != null; node = node.getNextSibling()) {
                if (node instanceof Element) {
                  cells.add(node.getTextContent());
                }
              }
              return cells;
            })
        .toList();
  }

  @ParameterizedTest
  @MethodSource("reports")
  void keeps_to_the_standard_of_html_and_loads_nothing(String report) throws Exception {
    assertThat(Markup.faults(report)).isEmpty();
    assertThat(report).doesNotContain("<script", "<link", "<img", " src=", "url(", "@import");
    Document document = parsed(report);
    List<String> ids = new ArrayList<>();
    for (Element element : elements("*", document.getDocumentElement())) {
      if (element.hasAttribute("id")) {
        ids.add(element.getAttribute("id"));
      }
    }
    assertThat(ids).doesNotHaveDuplicates();
    for (Element link : elements("a", document.getDocumentElement())) {
      assertThat(link.getAttribute("href")).startsWith("#");
      assertThat(ids).contains(link.getAttribute("href").substring(1));
    }
  }

  @ParameterizedTest
  @MethodSource("reports")
  void every_table_says_what_it_shows_and_defers_to_people(String report) throws Exception {
    Document document = parsed(report);
    for (Element table : elements("table", document.getDocumentElement())) {
      assertThat(elements("caption", table)).hasSize(1);
      for (Element heading : elements("th", table)) {
        assertThat(heading.getAttribute("scope")).isIn("col", "row", "rowgroup");
        assertThat(heading.getTextContent()).isNotBlank();
      }
    }
    String text = document.getDocumentElement().getTextContent();
    assertThat(text).doesNotContainPattern(NEVER).doesNotContain("NaN", "Infinity", "null");
    assertThat(text.split(Pattern.quote(Comparison.STANDING), -1)).hasSize(3);
    assertThat(text).contains(ResultWriter.libraryVersion(), "For the competent person on site");
  }

  @ParameterizedTest
  @MethodSource("reports")
  void no_label_of_a_picture_covers_another(String report) throws Exception {
    int labels = 0;
    for (Element svg : elements("svg", parsed(report).getDocumentElement())) {
      List<double[]> rooms = new ArrayList<>();
      for (Element group : elements("g", svg)) {
        if (group.hasAttribute("data-room")) {
          double[] room =
              Arrays.stream(group.getAttribute("data-room").split(" ", -1))
                  .mapToDouble(Double::parseDouble)
                  .toArray();
          assertThat(rooms).noneMatch(other -> overlap(room, other, 0) && overlap(room, other, 1));
          rooms.add(room);
        }
      }
      labels += rooms.size();
    }
    assertThat(labels).isPositive();
  }

  /** Whether two rooms (left, top, right, bottom) overlap across (0) or down (1). */
  private static boolean overlap(double[] a, double[] b, int way) {
    return Math.min(a[way + 2], b[way + 2]) - Math.max(a[way], b[way]) > 0.01;
  }

  @Test
  void its_tables_hold_the_numbers_of_the_page() throws Exception {
    Comparison comparison =
        Comparison.of(Findings.of(Statics.analyse(Plans.HORNBEAM)), UnitSystem.SI);
    Document document = parsed(REPORT);
    assertThat(shown(document, "numbers")).isEqualTo(stated(comparison.table()));
    assertThat(shown(document, "catches")).isEqualTo(stated(comparison.catches()));
    assertThat(shown(document, "limits")).isEqualTo(stated(comparison.limits()));
    assertThat(shown(document, "ranges")).isEqualTo(stated(comparison.ranges()));
    for (List<Entry> entries :
        List.of(
            comparison.arrangements(),
            comparison.cautions(),
            comparison.changes(),
            comparison.shares(),
            comparison.taken())) {
      assertThat(entries).isNotEmpty();
      entries.forEach(
          entry ->
              assertThat(document.getDocumentElement().getTextContent()).contains(entry.text()));
    }
  }

  private static List<List<String>> shown(Document document, String section) {
    List<List<String>> rows =
        cells(elements("table", section(document, section)).get(0)).stream()
            .filter(row -> row.size() > 1)
            .toList();
    return rows.subList(1, rows.size());
  }

  private static List<List<String>> stated(Table table) {
    List<List<String>> rows = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      if (!row.cells().isEmpty()) {
        List<String> cells = new ArrayList<>(List.of(row.label().strip(), row.unit()));
        cells.addAll(row.cells());
        rows.add(cells);
      }
    }
    assertThat(rows).isNotEmpty();
    return rows;
  }

  @Test
  void shows_every_arrangement_and_every_stem_and_every_catch_in_time() throws Exception {
    Document document = parsed(REPORT);
    assertThat(elements("svg", section(document, "forces"))).hasSize(6);
    assertThat(elements("svg", section(document, "bending"))).hasSize(1);
    assertThat(elements("svg", section(document, "catches"))).hasSize(4);
    assertThat(elements("svg", section(document, "ranges"))).hasSize(5);
    assertThat(section(document, "ranges").getTextContent())
        .contains("what the spread of arrangement", "mass of the piece");
    for (Element svg : elements("svg", document.getDocumentElement())) {
      assertThat(elements("desc", svg).get(0).getTextContent()).isNotBlank();
    }
    // one scale of forces: the arrow of the legend is as long in all
    List<String> scales =
        elements("g", section(document, "forces")).stream()
            .map(view -> view.getAttribute("data-force-per-metre"))
            .filter(scale -> !scale.isEmpty())
            .distinct()
            .toList();
    assertThat(scales).hasSize(1);
  }

  /** A foot is 0.3048 m, a pound 0.45359237 kg: international yard and pound agreement, 1959. */
  @Test
  void shows_all_that_the_plan_states_in_the_units_asked_for() throws Exception {
    Document metric = parsed(REPORT);
    Document us =
        parsed(
            Report.write(
                Plans.asked(Plans.HORNBEAM),
                Findings.of(Statics.analyse(Plans.HORNBEAM)),
                UnitSystem.US));
    assertThat(table(metric, "Stems 1 hornbeam, shape, stations"))
        .contains(List.of("2", "3 m", "20 deg", "0 deg"));
    assertThat(table(metric, "Stems 1 hornbeam, diameters").get(3))
        .containsExactly("3", "1.2 m", "348 mm", "208 mm");
    assertThat(table(us, "Stems 1 hornbeam, diameters").get(1))
        .startsWith("1", "0 ft", "14.17 in"); // 0.36 / 0.0254
    assertThat(table(us, "Stems 1 hornbeam, masses").get(1)).endsWith("33.07 lb"); // 15 kg
    assertThat(table(metric, "Arrangements 4 three rings, device at the base, contacts").get(1))
        .contains("ring (friction 0.25)");
    assertThat(section(metric, "plan").getTextContent().replace(Scale.HARD_BLANK, " "))
        .contains("modulus of elasticity 8000 MPa", "Invented site, names and numbers");
  }

  private static List<List<String>> table(Document document, String caption) {
    return elements("table", section(document, "plan")).stream()
        .filter(table -> elements("caption", table).get(0).getTextContent().equals(caption))
        .findFirst()
        .map(ReportTest::cells)
        .orElseThrow()
        .stream()
        .map(row -> row.stream().map(cell -> cell.replace(Scale.HARD_BLANK, " ")).toList())
        .toList();
  }

  @Test
  void answers_the_studies_that_a_plan_asks_for() throws Exception {
    String report =
        Report.write(
            Plans.ASKING,
            Findings.of(Statics.analyse(Plans.SPRUCE)).answering(Plans.ASKING),
            UnitSystem.SI);
    Document document = parsed(report);
    Element studies = section(document, "studies");

    assertThat(elements("h3", studies)).hasSameSizeAs(Plans.ASKING.studies());
    assertThat(elements("table", studies)).hasSize(4);
    assertThat(studies.getTextContent()).contains("this limit comes first");
    assertThat(section(document, "plan").getTextContent()).contains("window", "least friction");
    assertThat(Markup.faults(report)).isEmpty();
  }

  @Test
  void text_of_a_plan_stays_text() throws Exception {
    String evil = "<script>alert(1)</script> & \"x\" ]]> <!--";
    Plan plan = Plans.POLE.toBuilder().title(evil).notes("<b onclick='x'>\u0000\uFFFE</b>").build();
    String report = report(plan, UnitSystem.SI);
    Document document = parsed(report);

    assertThat(report).doesNotContain("<script", "<b ", "<!-- ", "\u0000", "\uFFFE");
    assertThat(elements("h1", document.getDocumentElement()).get(0).getTextContent())
        .isEqualTo(evil);
    assertThat(Markup.faults(report)).isEmpty();
  }

  @Test
  void the_same_plan_gives_the_same_bytes() {
    assertThat(report(Plans.MIXED, UnitSystem.US)).isEqualTo(report(Plans.MIXED, UnitSystem.US));
  }

  @Test
  void tells_what_is_unstable_or_not_solved() throws Exception {
    Document pole = parsed(report(Plans.POLE, UnitSystem.SI));
    assertThat(section(pole, "numbers").getTextContent()).contains("UNSTABLE");
    assertThat(section(pole, "forces").getTextContent()).contains("No stable state");

    Document given =
        parsed(
            Report.write(
                Plans.asked(Plans.POLE), Findings.of(Plans.notSolved(Plans.POLE)), UnitSystem.SI));
    assertThat(section(given, "cautions").getTextContent()).contains("could not solve");
  }

  @Test
  void names_each_formula_with_its_source() throws Exception {
    List<List<String>> rows = cells(elements("table", section(parsed(REPORT), "sources")).get(0));
    assertThat(rows).hasSizeGreaterThan(10).allSatisfy(row -> assertThat(row).hasSize(4));
    assertThat(rows).anySatisfy(row -> assertThat(row.get(0)).isEqualTo("EQU-1"));
    rows.forEach(row -> row.forEach(cell -> assertThat(cell).isNotBlank()));
  }
}
