package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.boleline.explain.Formula;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pages of the mechanics name every equation of the code, and the code names no other. */
class TheoryPagesTest {
  private static final Pattern ID =
      Pattern.compile(
          "\\b(?:FRI|SHV|TAC|FOR|DRO|WOO|LOG|SEC|SWI|CUT|LIM|STU|RNG|BEA|EQU|RUL|CHK|STA)-[0-9]+\\b");
  private static final Pattern SOLVER_EQUATION = Pattern.compile("(?m)^\\*\\*STA-([0-9]+)\\*\\*");
  private static final String STATICS = "docs/theory/statics.md";

  private static String theory() {
    return Docs.pages("docs/theory").stream().map(Docs::read).collect(Collectors.joining("\n"));
  }

  @Test
  void every_formula_stands_in_a_page_with_its_id_and_its_text() {
    String theory = theory().replace("\\|", "|");
    List<String> missing = new ArrayList<>();
    for (Formula formula : Code.formulas()) {
      String inTable = "| " + formula.id() + " | `" + formula.text() + "`";
      String inText = "**" + formula.id() + "** `" + formula.text() + "`";
      if (!theory.contains(inTable) && !theory.contains(inText)) {
        missing.add(formula.id() + " `" + formula.text() + "`");
      }
    }
    assertThat(missing).isEmpty();
  }

  @Test
  void ids_of_formulas_are_unique() {
    assertThat(Code.formulas().stream().map(Formula::id)).doesNotHaveDuplicates();
  }

  @Test
  void the_equations_of_the_solver_are_numbered_in_order() {
    List<Integer> numbers =
        SOLVER_EQUATION
            .matcher(Docs.read(Docs.file(STATICS)))
            .results()
            .map(id -> Integer.valueOf(id.group(1)))
            .toList();

    assertThat(numbers).containsExactlyElementsOf(IntStream.rangeClosed(1, 22).boxed().toList());
  }

  @Test
  void ids_that_code_and_pages_speak_of_are_there() {
    List<String> known = new ArrayList<>(Code.formulas().stream().map(Formula::id).toList());
    IntStream.rangeClosed(1, 22).forEach(number -> known.add("STA-" + number));
    List<Path> files = new ArrayList<>(Code.files());
    files.addAll(Docs.pages());
    Map<String, List<String>> unknown = new TreeMap<>();
    for (Path file : files) {
      List<String> strange =
          ID.matcher(Docs.read(file))
              .results()
              .map(MatchResult::group)
              .filter(id -> !known.contains(id))
              .toList();
      if (!strange.isEmpty()) {
        unknown.put(Docs.name(file), strange);
      }
    }
    assertThat(unknown).isEmpty();
  }

  /** Numbers of the method that the page names, against the constants in the code. */
  @ParameterizedTest
  @CsvSource({
    "internal.coupled.RigSolver, LITTLE_TURN, 0.35, no node turned by more than 0.35 rad",
    "internal.coupled.RigSolver, AMPLE_STIFFNESS, 0.5, stiffness ratio is above 0.5",
    "internal.coupled.RigSolver, STEP_TURN, 0.2, steps of at most 0.2 rad",
    "internal.coupled.RigSolver, CONVERGED, 1e-12, comes down to 1e-12 of the scale",
    "internal.coupled.RigSolver, STALLED, 2e-10, or to 2e-10 where",
    "internal.coupled.Mesh, FINE, 2e-4, by more than 2e-4 rad",
    "internal.coupled.Mesh, FINE_SHARE, 8e-3, 8e-3 of all that the stem turns",
    "statics.Statics, BALANCED, 1e-9, above 1e-9 is not given as a solution",
    "statics.StemGeometry, ROUNDING, 1e-9, nearer than 1e-9 m are one",
    "internal.rod.Collocation, POINTS, 4, k at four Gauss points",
    "statics.Extraction, MOST_LOAD_FACTOR, 1000, none up to 1000 times the load",
    "statics.BalanceCheck, EXACT, 1e-9, must agree to 1e-9",
    "statics.BalanceCheck, SLICED, 1e-6, over slices of own weight to 1e-6"
  })
  void numbers_of_the_method_are_those_of_the_code(
      String type, String field, double value, String words) {
    Number constant = (Number) Code.constant("org.boleline." + type, field);
    String page = Docs.read(Docs.file(STATICS)).replaceAll("\\s+", " ");

    assertThat(constant.doubleValue()).isEqualTo(value);
    assertThat(page).contains(words);
  }
}
