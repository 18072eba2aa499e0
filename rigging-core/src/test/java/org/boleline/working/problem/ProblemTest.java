package org.boleline.working.problem;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Step;
import org.boleline.internal.notation.Equation;
import org.boleline.units.QuantityText;
import org.boleline.working.check.Cause;
import org.boleline.working.check.HandCheck;
import org.boleline.working.check.Slip;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** Problems can be solved from their text alone, by plain arithmetic, and their answers hold. */
class ProblemTest {
  private static final int SEEDS = 10_000;
  private static final int CHECKED = 300;
  private static final double G = 9.80665;
  private static final Pattern NUMBER = Pattern.compile("[0-9]+(\\.[0-9]+)?");

  private static final List<Level> LEVELS = List.of(Level.FIRST, Level.SECOND, Level.THIRD);

  private static Level level(long seed) {
    return LEVELS.get((int) (seed % 3));
  }

  static Stream<Arguments> kindsAndLevels() {
    return Stream.of(ProblemKind.values())
        .flatMap(kind -> Stream.of(Level.values()).map(level -> Arguments.of(kind, level)));
  }

  /** The numbers of a question, in the order of its text. */
  private static List<Double> numbers(String question) {
    List<Double> numbers = new ArrayList<>();
    // units with a figure in them are not numbers
    Matcher matcher = NUMBER.matcher(question.replace("kg/m3", "kg"));
    while (matcher.find()) {
      numbers.add(Double.parseDouble(matcher.group()));
    }
    return numbers;
  }

  /** The answer in the SI unit, from the words of the question alone. */
  private static double byHand(Problem problem) {
    String question = problem.question();
    double[] x = numbers(question).stream().mapToDouble(Double::doubleValue).toArray();
    boolean raised = question.contains("raised");
    return switch (problem.kind()) {
      case FRICTION ->
          switch (problem.level()) {
            case FIRST -> x[2] / Math.exp(x[1] * rad(x[0]));
            case SECOND -> x[0] * Math.exp(x[2] * rad(180 - x[1]));
            case THIRD ->
                Math.log(x[0] / Math.exp(x[1] * rad(180 - x[2])) / x[4]) / (2 * Math.PI * x[3]);
          };
      case REDIRECTS ->
          switch (problem.level()) {
            case FIRST -> 2 * x[0] * Math.cos(rad(x[1]) / 2);
            case SECOND -> twoLegs(x[0], x[0] / Math.exp(x[1] * rad(180 - x[2])), x[2]);
            case THIRD -> {
              double first = x[0] / Math.exp(x[1] * rad(180 - x[2]));
              // the moment of the friction at the pin is a share of the force on it
              double share = (1 - x[3]) / (1 + x[3]);
              double low = 0;
              double high = first;
              for (int i = 0; i < 200; i++) {
                double middle = (low + high) / 2;
                boolean lost = first - middle > share * twoLegs(first, middle, 180 - x[4]);
                low = lost ? middle : low;
                high = lost ? high : middle;
              }
              yield twoLegs(first, low, 180 - x[4]);
            }
          };
      case WEIGHTS -> {
        double large = x[1] / 100;
        double small = problem.level() == Level.FIRST ? large : x[2] / 100;
        double square = large * large + large * small + small * small;
        yield problem.level() == Level.THIRD
            ? x[0] / 4 * (large * large + 2 * large * small + 3 * small * small) / square
            : Math.PI / 12 * x[0] * square * x[problem.level() == Level.FIRST ? 2 : 3] * G;
      }
      case BEAMS ->
          switch (problem.level()) {
            case FIRST -> x[0] * x[1];
            case SECOND -> 32 * x[0] * x[1] / (Math.PI * Math.pow(x[2] / 100, 3));
            case THIRD ->
                64
                    * x[1]
                    * Math.pow(x[0], 3)
                    / (3 * Math.PI * x[4] * 1e9 * Math.pow(x[2] / 100, 3) * x[3] / 100);
          };
      case CATCHES ->
          switch (problem.level()) {
            case FIRST -> x[0] * (G + x[1] * x[1] / (2 * x[2]));
            case SECOND -> peak(x[0] * G, x[2] * 1000, x[1]);
            case THIRD -> {
              double ratio = Math.exp(x[5] * rad(180 - x[6]));
              yield peak(x[0] * G, x[4] * 1000 / (x[2] + x[3] / ratio), x[1]);
            }
          };
      case ARRANGEMENTS -> {
        double weight = x[3] * G;
        double sign = raised ? 1 : -1;
        yield switch (problem.level()) {
          case FIRST -> (weight + weight * Math.exp(sign * x[0] * Math.PI)) * x[2];
          case SECOND ->
              weight
                  * Math.exp(
                      sign
                          * (x[0] * rad(180 - x[4])
                              + x[0] * rad(x[5])
                              + x[7] * 2 * Math.PI * x[6]));
          case THIRD -> {
            double tail = weight * Math.exp(sign * x[0] * rad(90 + x[4]));
            yield (weight + tail * Math.sin(rad(x[4]))) * x[2] - tail * Math.cos(rad(x[4])) * x[1];
          }
        };
      }
    };
  }

  private static double rad(double degrees) {
    return Math.toRadians(degrees);
  }

  private static double twoLegs(double first, double second, double degrees) {
    return Math.sqrt(first * first + second * second + 2 * first * second * Math.cos(rad(degrees)));
  }

  private static double peak(double weight, double stiffness, double fall) {
    return weight * (1 + Math.sqrt(1 + 2 * stiffness * fall / weight));
  }

  @ParameterizedTest
  @EnumSource
  void ten_thousand_of_each_kind_can_be_solved_from_their_text(ProblemKind kind) {
    Set<String> questions = new HashSet<>();
    for (long seed = 0; seed < SEEDS; seed++) {
      Problem problem = Problem.of(kind, level(seed), seed);
      double answer = problem.answerStep().result();

      assertThat(byHand(problem))
          .as("%s: %s", problem, problem.question())
          .isCloseTo(answer, within(1e-9 * Math.abs(answer)));
      assertThat(problem.solution().steps()).contains(problem.answerStep());
      List<Double> values = new ArrayList<>(List.of(parsed(problem.answer())));
      problem.wrongAnswers().forEach(wrong -> values.add(parsed(wrong.value())));
      assertApart(problem, values);
      questions.add(problem.question());
    }
    assertThat(questions.size()).isGreaterThan(SEEDS / 2);
  }

  private static double parsed(String quantity) {
    return Double.parseDouble(quantity.split(" ", 2)[0]);
  }

  private static void assertApart(Problem problem, List<Double> values) {
    for (int i = 0; i < values.size(); i++) {
      for (int k = 0; k < i; k++) {
        double greater = Math.max(Math.abs(values.get(i)), Math.abs(values.get(k)));
        assertThat(Math.abs(values.get(i) - values.get(k)))
            .as("%s: %s", problem, values)
            .isGreaterThan(problem.toleranceRatio() * greater);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("kindsAndLevels")
  void right_answers_agree_and_wrong_ones_are_traced_to_their_slip(ProblemKind kind, Level level) {
    Set<Slip> slips = EnumSet.noneOf(Slip.class);
    for (long seed = 0; seed < CHECKED; seed++) {
      Problem problem = Problem.of(kind, level, seed);

      assertThat(problem.check(problem.answer()).finding()).isEqualTo("agrees");
      assertThat(problem.wrongAnswers()).hasSizeBetween(2, 4);
      for (WrongAnswer wrong : problem.wrongAnswers()) {
        HandCheck check = problem.check(wrong.value());
        assertThat(check.causes())
            .as("%s: %s", problem, wrong)
            .extracting(Cause::slip)
            .contains(wrong.cause().slip());
        slips.add(wrong.cause().slip());
      }
    }
    assertThat(slips).hasSizeGreaterThanOrEqualTo(2).doesNotContain(Slip.EARLY_ROUNDING);
  }

  /** The answer's equation, read from the text of the worksheet's formula, gives the answer. */
  @ParameterizedTest
  @MethodSource("kindsAndLevels")
  void the_worksheet_reproduces_the_answer(ProblemKind kind, Level level) {
    for (long seed = 0; seed < CHECKED; seed++) {
      Problem problem = Problem.of(kind, level, seed);
      Step step = problem.answerStep();
      Map<String, Double> numbers = new LinkedHashMap<>();
      for (int i = 0; i < step.formula().inputs().size(); i++) {
        numbers.put(step.formula().inputs().get(i).name(), step.input(i));
      }

      assertThat(Equation.parse(step.formula().text()).value(numbers))
          .isCloseTo(step.result(), within(1e-12 * Math.abs(step.result())));
      assertThat(problem.solution().plainText()).contains("[" + step.formula().id() + "]");
    }
  }

  @ParameterizedTest
  @MethodSource("kindsAndLevels")
  void an_answer_may_come_in_any_unit_of_its_kind(ProblemKind kind, Level level) {
    Problem problem = Problem.of(kind, level, 5);
    double si = problem.answerStep().result();

    assertThat(problem.answer()).endsWith(problem.acceptedUnits().get(0).replace("1", ""));
    for (String unit : problem.acceptedUnits()) {
      double factor = unit.equals("1") ? 1 : QuantityText.factor(unit).doubleValue();
      String number = QuantityText.number(si / factor, 4);
      String answer = unit.equals("1") ? number : number + " " + unit;
      assertThat(problem.check(answer).finding()).as(answer).isEqualTo("agrees");
    }
    assertThatThrownBy(() -> problem.check("3 s")).isInstanceOf(PlanRefusedException.class);
  }

  @ParameterizedTest
  @MethodSource("kindsAndLevels")
  void the_same_seed_makes_the_same_problem_and_another_one_another(ProblemKind kind, Level level) {
    Problem one = Problem.of(kind, level, 17);
    Problem again = Problem.of(kind, level, 17);

    assertThat(again.question()).isEqualTo(one.question());
    assertThat(again.wrongAnswers()).isEqualTo(one.wrongAnswers());
    assertThat(again.qti()).isEqualTo(one.qti());
    assertThat(again.solution().plainText()).isEqualTo(one.solution().plainText());
    assertThat(Problem.of(kind, level, 18).question()).isNotEqualTo(one.question());
  }

  @ParameterizedTest
  @MethodSource("kindsAndLevels")
  void texts_read_well_at_eighty_columns(ProblemKind kind, Level level) {
    Problem problem = Problem.of(kind, level, 3);

    assertThat(problem.plainText().lines()).allMatch(line -> line.length() <= 80);
    assertThat(problem.plainText()).startsWith(problem.title()).contains("to three figures.");
    assertThat(problem.markdown()).contains(problem.title()).contains("to three figures.");
    assertThat(problem.question()).doesNotContain("\n").doesNotContain("  ");
    assertThat(problem.toString()).isEqualTo(problem.title());
  }

  /** The elements that an item of QTI 2.1 has, in their order (1EdTech, from memory). */
  @ParameterizedTest
  @MethodSource("kindsAndLevels")
  void the_quiz_item_has_its_parts(ProblemKind kind, Level level) throws Exception {
    Problem problem = Problem.of(kind, level, 11);
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    Document item =
        factory.newDocumentBuilder().parse(new InputSource(new StringReader(problem.qti())));
    Element root = item.getDocumentElement();

    assertThat(root.getNamespaceURI()).isEqualTo("http://www.imsglobal.org/xsd/imsqti_v2p1");
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < root.getChildNodes().getLength(); i++) {
      parts.add(root.getChildNodes().item(i).getNodeName());
    }
    assertThat(parts.subList(0, 5))
        .containsExactly(
            "responseDeclaration",
            "outcomeDeclaration",
            "outcomeDeclaration",
            "itemBody",
            "responseProcessing");
    int slips = problem.wrongAnswers().size();
    assertThat(parts.subList(5, parts.size())).hasSize(slips + 2).containsOnly("modalFeedback");
    NodeList equal = item.getElementsByTagName("equal");
    assertThat(equal.getLength()).isEqualTo(slips + 1);
    Element right = (Element) equal.item(0);
    assertThat(right.getAttribute("toleranceMode")).isEqualTo("absolute");
    double tolerance = 0.01 * Math.abs(Double.parseDouble(problem.answer().split(" ", 2)[0]));
    assertThat(right.getAttribute("tolerance").split(" "))
        .hasSize(2)
        .allSatisfy(
            most ->
                assertThat(Double.parseDouble(most))
                    .isCloseTo(tolerance, within(1e-9 * tolerance)));
    assertThat(item.getElementsByTagName("textEntryInteraction").getLength()).isOne();
    assertThat(item.getElementsByTagName("correctResponse").item(0).getTextContent())
        .isEqualTo(problem.answer().split(" ", 2)[0]);
    assertThat(item.getElementsByTagName("p").item(0).getTextContent())
        .isEqualTo(problem.question());
    assertThat(item.getElementsByTagName("rubricBlock").item(0).getTextContent())
        .isEqualTo(problem.solution().plainText());
  }

  /** The mean diameter all along is no way to weigh what tapers so much. */
  @Test
  void a_cylinder_of_the_mean_diameter_does_not_agree_for_a_piece_that_tapers() {
    for (long seed = 0; seed < CHECKED; seed++) {
      Problem problem = Problem.of(ProblemKind.WEIGHTS, Level.SECOND, seed);
      Step volume = problem.solution().steps().get(0);
      assertThat(volume.formula().id()).isEqualTo("LOG-1");
      double mean = (volume.input(1) + volume.input(2)) / 2;
      double share = Math.PI / 4 * mean * mean * volume.input(0) / volume.result();

      String cylinder = QuantityText.number(share * problem.answerStep().result(), 4) + " N";
      assertThat(problem.check(cylinder).departure()).as(problem.question()).isPresent();
    }
  }

  /** How hard a hand pulls: common practice, no source. */
  @Test
  void no_hand_is_asked_for_more_than_a_hand_can_do() {
    for (long seed = 0; seed < CHECKED; seed++) {
      Problem problem = Problem.of(ProblemKind.ARRANGEMENTS, Level.SECOND, seed);
      assertThat(problem.question()).contains("lowered").contains("hand");
      assertThat(problem.answerStep().result()).isBetween(20.0, 400.0);
      assertThat(Problem.of(ProblemKind.ARRANGEMENTS, Level.FIRST, seed).question())
          .doesNotContain("person")
          .doesNotContain("hand");
    }
  }

  @Test
  void a_rope_that_turns_by_more_than_half_a_circle_has_no_angle_between_its_legs() {
    int wide = 0;
    for (long seed = 0; seed < CHECKED; seed++) {
      Problem problem = Problem.of(ProblemKind.FRICTION, Level.FIRST, seed);
      if (problem.question().contains("turns 270") || problem.question().contains("turns 360")) {
        wide++;
        assertThat(problem.wrongAnswers())
            .extracting(wrong -> wrong.cause().slip())
            .doesNotContain(Slip.ANGLE_FOR_TURN, Slip.HALF_ANGLE);
      }
    }
    assertThat(wide).isGreaterThan(CHECKED / 6);
  }

  /** The angle between the legs of the ring is the turn at the sheave; the slip is at the ring. */
  @Test
  void equal_numbers_of_two_points_are_not_changed_together() {
    int alike = 0;
    for (long seed = 0; seed < 2000; seed++) {
      Problem problem = Problem.of(ProblemKind.REDIRECTS, Level.THIRD, seed);
      List<Step> steps = problem.solution().steps();
      Step ring = steps.get(0);
      Step sheave =
          steps.stream()
              .filter(step -> step.formula().id().equals("FRI-3"))
              .findFirst()
              .orElseThrow();
      double turn = sheave.input(1);
      if (Math.abs(Math.PI - ring.input(1) - turn) > 1e-9) {
        continue;
      }
      alike++;
      double load = steps.get(1).input(0);
      double slack = load / Math.exp(ring.input(0) * (Math.PI - ring.input(1)));
      double behind = slack / sheave.result();
      double wrong =
          Math.sqrt(slack * slack + behind * behind - 2 * slack * behind * Math.cos(turn));
      assertThat(problem.check(QuantityText.number(wrong, 5) + " N").causes())
          .as(problem.toString())
          .extracting(Cause::slip)
          .contains(Slip.ANGLE_FOR_TURN);
    }
    assertThat(alike).isGreaterThan(50);
  }

  @Test
  void every_kind_has_a_title_of_its_own() {
    assertThat(Stream.of(ProblemKind.values()).map(ProblemKind::title)).doesNotHaveDuplicates();
    assertThat(Problem.of(ProblemKind.BEAMS, Level.THIRD, -4).title())
        .isEqualTo("Beams, level 3, number -4");
  }
}
