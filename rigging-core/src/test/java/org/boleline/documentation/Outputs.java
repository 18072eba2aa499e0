package org.boleline.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

/** What the pages show as printed: each under a name, worked out by the library when asked for. */
final class Outputs {
  private static final Map<String, Consumer<PrintStream>> ALL = new TreeMap<>();

  static {
    ALL.put("check-by-hand/cautions", CheckByHand::cautions);
    ALL.put("check-by-hand/finding", CheckByHand::finding);
    ALL.put("check-by-hand/names", CheckByHand::names);
    ALL.put("check-by-hand/refused", CheckByHand::refused);
    ALL.put("check-by-hand/spread", CheckByHand::spread);
    ALL.put("check-by-hand/table", CheckByHand::table);
    ALL.put("check-by-hand/whole", CheckByHand::whole);
    ALL.put("course/beam", Course::beam);
    ALL.put("course/both-ways", Course::bothWays);
    ALL.put("course/catch-friction", Course::catchFriction);
    ALL.put("course/catches", Course::catches);
    ALL.put("course/cavity", Course::cavity);
    ALL.put("course/chain", Course::chain);
    ALL.put("course/lowering", Course::lowering);
    ALL.put("course/multipliers", Course::multipliers);
    ALL.put("course/raising", Course::raising);
    ALL.put("course/thicker", Course::thicker);
    ALL.put("course/two-legs", Course::twoLegs);
    ALL.put("course/weight", Course::weight);
    ALL.put("course/wraps", Course::wraps);
    ALL.put("first-plan/rope", FirstPlan::rope);
    ALL.put("first-plan/stem", FirstPlan::stemResult);
    ALL.put("first-plan/shares", FirstPlan::shares);
    ALL.put("first-plan/compared", FirstPlan::compared);
    ALL.put("first-plan/taken", FirstPlan::taken);
    ALL.put("first-plan/cautions", FirstPlan::cautions);
    ALL.put("own-species/wood", OwnSpecies::wood);
    ALL.put("own-species/refused", OwnSpecies::refused);
    ALL.put("plan-files/readme", PlanFiles::readme);
    ALL.put("plan-files/catches", PlanFiles::catches);
    ALL.put("plan-files/refused", PlanFiles::refusedFirstPlan);
    ALL.put("set-problems/checked", SetProblems::checked);
    ALL.put("set-problems/question", SetProblems::question);
    ALL.put("set-problems/wrong", SetProblems::wrong);
    ALL.put("show-working/contact", ShowWorking::contact);
    ALL.put("show-working/cut", ShowWorking::cut);
    ALL.put("show-working/log", ShowWorking::log);
    ALL.put("show-working/plan", ShowWorking::plan);
    ALL.put("show-working/rules", ShowWorking::rules);
  }

  private Outputs() {}

  static List<String> names() {
    return List.copyOf(ALL.keySet());
  }

  static String of(String name) {
    Consumer<PrintStream> output = ALL.get(name);
    assertThat(output).as("output named %s", name).isNotNull();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (PrintStream out = new PrintStream(bytes, false, StandardCharsets.UTF_8)) {
      output.accept(out);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }
}
