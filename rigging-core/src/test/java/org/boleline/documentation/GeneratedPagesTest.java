package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.explain.Symbol;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.junit.jupiter.api.Test;

/**
 * Pages that are written from the code alone.
 *
 * <p>{@code mvn -pl rigging-core test -Dtest=GeneratedPagesTest -Dregenerate=true} writes them
 * anew.
 */
class GeneratedPagesTest {
  /** What the letters of an id stand for, and the page that explains the equations. */
  private record Family(String title, String page) {}

  private static final Map<String, Family> FAMILIES = new LinkedHashMap<>();

  static {
    FAMILIES.put("FRI", new Family("Friction", "friction"));
    FAMILIES.put("SHV", new Family("Sheaves", "friction"));
    FAMILIES.put("TAC", new Family("Tackles", "friction"));
    FAMILIES.put("FOR", new Family("Force of two legs", "two-legs"));
    FAMILIES.put("WOO", new Family("Green wood", "wood-and-logs"));
    FAMILIES.put("LOG", new Family("Logs", "wood-and-logs"));
    FAMILIES.put("DRO", new Family("Drops", "drop"));
    FAMILIES.put("SEC", new Family("Sections with a cavity", "sections"));
    FAMILIES.put("SWI", new Family("Swings", "swing"));
    FAMILIES.put("CUT", new Family("Cuts above the point", "cut-above-the-point"));
    FAMILIES.put("STU", new Family("Studies", "studies"));
    FAMILIES.put("LIM", new Family("Limits", "limits"));
    FAMILIES.put("RNG", new Family("Ranges", "ranges"));
    FAMILIES.put("BEA", new Family("Tapered cantilever", "tapered-cantilever"));
    FAMILIES.put("EQU", new Family("Balance by hand", "balance-by-hand"));
    FAMILIES.put("RUL", new Family("Rules of thumb", "rules-of-thumb"));
    FAMILIES.put("CHK", new Family("Hand checks", "hand-checks"));
  }

  private static final int DIGITS = 12;

  @Test
  void the_page_of_formulas_is_what_the_code_holds() {
    StringBuilder page =
        new StringBuilder(
            """
            # Formulas

            Written from the code by `GeneratedPagesTest`; do not edit by hand.

            Each equation that a single number comes from is one object, `Formula`: its text, symbols, units,
            range, source and code. A `Step` is one use of it with the numbers put in; its result is the number
            the library returns, bit for bit. A number outside its range is computed, and the step cautions
            `OUTSIDE_RANGE`.

            The equations of rope and bending stems, STA-1 to STA-22, are solved together and not one by one.
            They stand in [statics](../theory/statics.md).

            Units are UCUM codes; 1 is a pure number. *any* means: any finite number.
            """);
    List<Formula> formulas = Code.formulas();
    assertThat(formulas.stream().map(GeneratedPagesTest::letters)).isSubsetOf(FAMILIES.keySet());
    FAMILIES.forEach(
        (letters, family) -> {
          page.append("\n## ").append(family.title()).append("\n\n");
          page.append("Explained in [").append(family.page()).append("](../theory/");
          page.append(family.page()).append(".md).\n");
          formulas.stream()
              .filter(formula -> letters(formula).equals(letters))
              .sorted(Comparator.comparingInt(GeneratedPagesTest::number))
              .forEach(formula -> append(page, formula));
        });
    Docs.expectPage(Docs.file("docs/reference/formulas.md"), page.toString());
  }

  private static String letters(Formula formula) {
    return formula.id().substring(0, formula.id().indexOf('-'));
  }

  private static int number(Formula formula) {
    return Integer.parseInt(formula.id().substring(formula.id().indexOf('-') + 1));
  }

  private static void append(StringBuilder page, Formula formula) {
    page.append("\n### ").append(formula.id()).append("\n\n");
    page.append("`").append(formula.text()).append("`\n\n");
    page.append("| symbol | meaning | unit | range |\n|---|---|---|---|\n");
    append(page, formula.result());
    formula.inputs().forEach(symbol -> append(page, symbol));
    page.append("\nHolds for: ").append(formula.validity()).append(".\n\n");
    page.append("Source: ").append(source(formula.source())).append(".\n");
  }

  private static void append(StringBuilder page, Symbol symbol) {
    page.append("| `").append(symbol.name()).append("` | ").append(symbol.meaning());
    page.append(" | ").append(symbol.unit()).append(" | ").append(range(symbol)).append(" |\n");
  }

  private static String range(Symbol symbol) {
    boolean below = Double.isInfinite(symbol.least());
    boolean above = Double.isInfinite(symbol.most());
    if (below && above) {
      return "any";
    }
    return above
        ? number(symbol.least()) + " or more"
        : number(symbol.least()) + " to " + number(symbol.most());
  }

  /** Multiples of pi by name: only they have many figures here. */
  private static String number(double value) {
    double halves = value / Math.PI * 2;
    if (value != 0 && halves == Math.rint(halves)) {
      return halves == 1 ? "pi/2" : halves == 2 ? "pi" : QuantityText.number(halves / 2) + " pi";
    }
    return QuantityText.number(value);
  }

  static String source(Source source) {
    String title = source.title();
    return switch (source.reading()) {
      case READ -> source.id() + ": " + title;
      case DERIVED -> "derived: " + title;
      case COMMON_PRACTICE -> source.id() + ": " + title;
      case FROM_MEMORY -> source.id() + ": " + title + " (from memory)";
      case STATED, DEFAULT -> title;
    };
  }

  @Test
  void the_page_of_units_is_what_the_code_reads() {
    StringBuilder page =
        new StringBuilder(
            """
            # Units and their symbols

            Written from the code by `GeneratedPagesTest`; do not edit by hand.

            In text a quantity is a number, one blank, a symbol of this table: `"36 cm"`, `"2.5 MN.m/rad"`. The
            number has a decimal point, never a comma, and may have a sign and an exponent. Nothing else is read,
            whatever the country of the machine. A symbol belongs to one kind of quantity: a moment is not an
            energy, though both are newtons times metres.

            Text is converted in decimal arithmetic and rounded to a double once. A factor that has no finite
            decimal form is shown to 12 figures and used to 50.

            Results use the SI unit of the kind, the first of its row, except that angles are written in degrees.

            | kind | symbol | times the SI unit |
            |---|---|---|
            """);
    for (Kind<?> kind : Code.constants(Kind.class)) {
      assertThat(QuantityText.symbols(kind).get(0)).isEqualTo(kind.ucum());
      for (String symbol : QuantityText.symbols(kind)) {
        page.append("| ").append(kind.name()).append(" | `").append(symbol).append("` | ");
        page.append(factor(symbol)).append(" |\n");
      }
    }
    page.append(
        """

        Inch (0.0254 m), foot (0.3048 m) and pound (0.45359237 kg) are exact by the international yard and
        pound agreement of 1959. Pound-force and kilogram-force are those masses under standard gravity, 9.80665
        m/s2, exact by the third General Conference on Weights and Measures, 1901. Degree is pi/180. These
        definitions are from memory, and every constant is checked against them in `UnitsTest`.

        In code the same units are constants of `org.boleline.units.Units`, and `Amounts` has factories such as
        `metres(12.5)` and `poundsForce(400)`.
        """);
    Docs.expectPage(Docs.file("docs/reference/units-and-symbols.md"), page.toString());
  }

  private static String factor(String symbol) {
    BigDecimal factor = QuantityText.factor(symbol).stripTrailingZeros();
    if (factor.precision() <= 2 * DIGITS) {
      return factor.toPlainString();
    }
    return "about " + factor.round(new MathContext(DIGITS)).toPlainString();
  }
}
