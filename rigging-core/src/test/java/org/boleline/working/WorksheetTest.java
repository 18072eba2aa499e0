package org.boleline.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.boleline.units.Amounts.newtons;
import static org.boleline.units.Amounts.poundsForce;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.boleline.Tolerances;
import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.geometry.Turn;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.units.QuantityText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** What holds for every worksheet, of every kind. */
class WorksheetTest {
  private static final int WIDTH = 80;

  /** The elements of MathML Core (W3C), by its list of elements; from memory. */
  private static final Set<String> MATHML_CORE =
      Set.of(
          "annotation",
          "annotation-xml",
          "maction",
          "math",
          "merror",
          "mfrac",
          "mi",
          "mmultiscripts",
          "mn",
          "mo",
          "mover",
          "mpadded",
          "mphantom",
          "mprescripts",
          "mroot",
          "mrow",
          "ms",
          "mspace",
          "msqrt",
          "mstyle",
          "msub",
          "msubsup",
          "msup",
          "mtable",
          "mtd",
          "mtext",
          "mtr",
          "munder",
          "munderover",
          "semantics");

  /** Elements of MathML Core that take a fixed number of children; from memory. */
  private static final Map<String, Integer> CHILDREN = Map.of("mfrac", 2, "msub", 2, "msup", 2);

  private static final Set<String> TOKENS = Set.of("mi", "mn", "mo", "mtext");

  /** Second routes that sum over slices or pieces. */
  private static final Set<Formula> SUMMED =
      Set.of(
          EquilibriumFormulas.FORCE_SIZE,
          EquilibriumFormulas.MOMENT_SIZE,
          EquilibriumFormulas.BY_PIECES,
          EquilibriumFormulas.WRAPS_BY_PIECES,
          EquilibriumFormulas.DEFLECTION_BY_SLICES,
          EquilibriumFormulas.SLOPE_BY_SLICES);

  private static final List<Sheets.Case> CASES = Sheets.all();

  static List<Sheets.Case> cases() {
    return CASES;
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_number_of_the_library_is_the_result_of_a_line_bit_for_bit(Sheets.Case one) {
    assertThat(one.sheet().steps().stream().map(Step::result)).contains(one.headline());
    assertThat(one.sheet().plainText().replaceAll("\\s+", ""))
        .contains("=" + QuantityText.number(one.headline()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void every_line_has_formula_unit_and_source(Sheets.Case one) {
    assertThat(one.sheet().steps()).isNotEmpty();
    String html = one.sheet().html();
    for (Line line : one.sheet().lines()) {
      if (line instanceof Line.Table table) {
        assertThat(table.formulas()).isNotEmpty().allSatisfy(WorksheetTest::complete);
        assertThat(table.columns()).allSatisfy(c -> assertThat(c.unit()).isNotBlank());
      }
    }
    for (Step step : one.sheet().steps()) {
      complete(step.formula());
      assertThat(html).contains(step.formula().id() + ": <math");
    }
  }

  private static void complete(Formula formula) {
    assertThat(formula.id()).matches("[A-Z]+-[0-9]+");
    assertThat(formula.source().title()).isNotBlank();
    assertThat(formula.validity()).isNotBlank();
    assertThat(formula.result().unit()).isNotBlank();
    assertThat(formula.inputs()).allSatisfy(s -> assertThat(s.unit()).isNotBlank());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void plain_text_fits_80_columns_in_both_unit_systems(Sheets.Case one) {
    for (UnitSystem units : UnitSystem.values()) {
      String text = one.sheet().withUnits(units).withFigures(6).plainText();
      assertThat(text.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(WIDTH));
      assertThat(text.lines()).noneMatch(l -> l.endsWith(" "));
      assertThat(text).doesNotContain("NaN").doesNotContain("Infinity");
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void html_is_well_formed_with_mathml_core_alone(Sheets.Case one) throws Exception {
    Document page = xml(one.sheet().htmlPage());
    NodeList all = page.getElementsByTagName("math");
    assertThat(all.getLength()).isPositive();
    for (int i = 0; i < all.getLength(); i++) {
      Element math = (Element) all.item(i);
      assertThat(math.getAttribute("alttext")).isNotBlank();
      mathml(math);
    }
    NodeList tables = page.getElementsByTagName("table");
    for (int i = 0; i < tables.getLength(); i++) {
      assertThat(((Element) tables.item(i)).getElementsByTagName("caption").getLength())
          .isEqualTo(1);
    }
    assertThat(one.sheet().htmlPage()).doesNotContain("color");
  }

  private static void mathml(Element element) {
    assertThat(MATHML_CORE).contains(element.getTagName());
    int children = 0;
    for (int i = 0; i < element.getChildNodes().getLength(); i++) {
      if (element.getChildNodes().item(i) instanceof Element child) {
        children++;
        mathml(child);
      } else if (!TOKENS.contains(element.getTagName())) {
        assertThat(element.getChildNodes().item(i).getTextContent()).isBlank();
      }
    }
    Integer wanted = CHILDREN.get(element.getTagName());
    if (wanted != null) {
      assertThat(children).as(element.getTagName()).isEqualTo(wanted);
    }
  }

  private static Document xml(String text) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(text)));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void markdown_closes_its_math_and_keeps_its_tables_whole(Sheets.Case one) {
    String text = one.sheet().markdown();
    String bare = text.replace("\\$", "").replace("\\|", "").replace("\\\\", "");
    assertThat(bare.chars().filter(c -> c == '$').count() % 2).isZero();
    for (String part : bare.split("\\$", -1)) {
      String braces = part.replace("\\{", "").replace("\\}", "");
      assertThat(braces.chars().filter(c -> c == '{').count())
          .isEqualTo(braces.chars().filter(c -> c == '}').count());
    }
    int columns = 0;
    for (String line : bare.lines().toList()) {
      if (line.startsWith("|")) {
        int found = (int) line.chars().filter(c -> c == '|').count();
        assertThat(columns == 0 || columns == found).as(line).isTrue();
        columns = found;
      } else {
        columns = 0;
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void two_routes_agree(Sheets.Case one) {
    for (Line line : one.sheet().lines()) {
      if (line instanceof Line.TwoRoutes two) {
        double greatest = Math.max(Math.abs(two.first().result()), Math.abs(two.second().result()));
        boolean summed = SUMMED.contains(two.second().formula());
        double most = summed ? Tolerances.BY_SLICES : Tolerances.EXACT;
        assertThat(greatest < 1e-6 || Math.abs(two.differenceRatio()) <= most)
            .as("%s: %s", two.what(), two.differenceRatio())
            .isTrue();
      }
    }
  }

  @Test
  void a_number_outside_its_range_is_said_to_be_and_cautioned() {
    Worksheet sheet =
        Worksheets.of(ContactTensions.fromTight(new FrictionRing(0.9), Turn.HALF, newtons(100)));

    assertThat(sheet.plainText()).contains("range 0.05 to 0.6: OUTSIDE");
    assertThat(sheet.html()).contains("0.05 to 0.6: OUTSIDE");
    assertThat(sheet.markdown()).contains("0.05 to 0.6: OUTSIDE");
    assertThat(sheet.cautions().stream().map(caution -> caution.values().get("formula")))
        .containsExactly("FRI-2", "EQU-17");
  }

  /** The pound-force is exactly 4.4482216152605 N: CGPM 1901 and the agreement of 1959. */
  @Test
  void foot_pound_units_show_their_conversion() {
    String text =
        Worksheets.of(ContactTensions.fromTight(new FrictionRing(0.2), Turn.HALF, poundsForce(450)))
            .withUnits(UnitSystem.FOOT_POUND)
            .plainText();

    assertThat(text)
        .contains("T_tight = 2001.699726867225 N (450 lbf x 4.448221615)")
        .contains("= 240.1 lbf (4 figures)");
  }

  @Test
  void words_of_a_user_are_only_words() throws Exception {
    String words = "A <b>&\"$x$ | *y* [z](w) `v`\n# \u001b[1m\u009b1m\u202e\ufffe\u2028";
    Worksheet sheet = Worksheet.of(words, List.of(new Line.Remark(words)));

    assertThat(xml(sheet.html()).getElementsByTagName("b").getLength()).isZero();
    for (String text : List.of(sheet.plainText(), sheet.markdown(), sheet.html())) {
      assertThat(text).doesNotContain("\u001b", "\u009b", "\u202e", "\ufffe", "\u2028");
    }
    assertThat(sheet.markdown()).contains("\\<b\\>\\&\"\\$x\\$ \\| \\*y\\* &#91;z&#93;(w) \\`v\\`");
    assertThat(sheet.markdown().lines().filter(l -> l.startsWith("#"))).hasSize(1);
  }

  @Test
  void a_sentence_stays_a_sentence_in_markdown() {
    assertThat(Worksheet.of("t", List.of(new Line.Remark("- a"))).markdown()).contains("\n\\- a");
    assertThat(Worksheet.of("t", List.of(new Line.Remark("12. a"))).markdown())
        .contains("\n12\\. a");
    assertThat(Worksheet.of("t", List.of(new Line.Remark("a - b."))).markdown())
        .contains("\na - b.");
  }

  @ParameterizedTest
  @MethodSource("cases")
  void sections_by_hand_are_those_reported(Sheets.Case one) {
    for (Line line : one.sheet().lines()) {
      if (line instanceof Line.Table table
          && table.columns().equals(EquilibriumFormulas.SECTIONS)) {
        double force = 1;
        double moment = 1;
        for (int i = 0; i < table.names().size(); i++) {
          force = Math.max(force, table.number(i, 1));
          moment = Math.max(moment, table.number(i, 3));
        }
        for (int i = 0; i < table.names().size(); i++) {
          assertThat(table.number(i, 0))
              .isCloseTo(table.number(i, 1), within(Tolerances.BY_SLICES * force));
          assertThat(table.number(i, 2))
              .isCloseTo(table.number(i, 3), within(Tolerances.BY_SLICES * moment));
        }
      }
    }
  }

  @Test
  void figures_and_units_of_routes_are_checked() {
    Worksheet sheet = Worksheet.of("none", List.of());
    Step force = EquilibriumFormulas.FORCE_SUM.step(1, 2);
    Step moment = EquilibriumFormulas.MOMENT_SUM.step(1, 2);

    assertThatIllegalArgumentException().isThrownBy(() -> sheet.withFigures(0));
    assertThatIllegalArgumentException().isThrownBy(() -> sheet.withFigures(16));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Line.TwoRoutes("x", "a", force, "b", moment));
  }
}
