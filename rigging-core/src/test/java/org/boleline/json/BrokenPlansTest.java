package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.plan.Plan;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;

/** Plans broken at random are read or refused, and nothing else happens. */
class BrokenPlansTest {
  private static final List<Json> LEAVES =
      List.of(
          new Json.Text(""),
          new Json.Text("0 m"),
          new Json.Text("-0 m"),
          new Json.Text("1e-300 m"),
          new Json.Text("1e300 m"),
          new Json.Text("-5 m"),
          new Json.Text("12 kg"),
          new Json.Text("1e300 kg"),
          new Json.Text("400 deg"),
          new Json.Text("1e300 rad"),
          new Json.Text("0 Pa"),
          new Json.Text("1e-300 N"),
          new Json.Text("oak"),
          new Json.Text("held"),
          new Json.Text("locked"),
          new Json.Numeral("0"),
          new Json.Numeral("-1"),
          new Json.Numeral("1e999"),
          new Json.Numeral("1e-999"),
          new Json.Numeral("0.5"),
          new Json.Flag(true),
          Json.Null.NULL,
          new Json.Elements(List.of()),
          new Json.Members(Map.of()));

  private static Json everything() {
    Refusals refusals = Refusals.none();
    Json tree = JsonText.parse(PlanTexts.EVERYTHING, refusals);
    refusals.throwIfAny();
    return tree;
  }

  @Property(tries = 2000)
  void a_plan_with_changed_members_is_read_or_refused_at_places_it_has(@ForAll long seed) {
    Random random = new Random(seed);
    Json tree = everything();
    int changes = 1 + random.nextInt(4);
    for (int i = 0; i < changes; i++) {
      tree = broken(tree, random);
    }
    for (Refusal refusal : readOrRefused(JsonText.print(tree))) {
      assertThat(refusal.place().isEmpty() || resolves(tree, parent(refusal.place())))
          .as(refusal.sentence())
          .isTrue();
      assertThat(refusal.sentence()).doesNotContain("NaN", "Infinity", "null:");
    }
  }

  @Property(tries = 1000)
  void a_plan_with_changed_characters_is_read_or_refused(@ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(PlanTexts.EVERYTHING);
    String characters = "{}[]\",:0129.-+eE mkN\\u\u0000\ud800é\n";
    int changes = 1 + random.nextInt(3);
    for (int i = 0; i < changes; i++) {
      int at = random.nextInt(text.length());
      char c = characters.charAt(random.nextInt(characters.length()));
      switch (random.nextInt(3)) {
        case 0 -> text.deleteCharAt(at);
        case 1 -> text.insert(at, c);
        default -> text.setCharAt(at, c);
      }
    }
    readOrRefused(text.toString());
  }

  /** Reads a text; a plan that is read is whole and writes back, else returns the refusals. */
  private static List<Refusal> readOrRefused(String text) {
    Plan plan;
    try {
      plan = PlanReader.read(text);
    } catch (PlanRefusedException e) {
      assertThat(e.refusals()).isNotEmpty();
      assertThat(e.refusals().stream().map(Refusal::place)).doesNotHaveDuplicates();
      return e.refusals();
    }
    assertThat(PlanReader.read(PlanWriter.write(plan))).isEqualTo(plan);
    for (Stem stem : plan.stems()) {
      StemShape shape = stem.shape();
      assertThat(shape.length(Kind.LENGTH)).isFinite().isPositive();
      for (double diameter : stem.diameters().outer(Kind.LENGTH)) {
        assertThat(diameter).isFinite().isPositive();
      }
    }
    return List.of();
  }

  /** Changes one random place of a tree: another leaf, no member, a member of another name. */
  private static Json broken(Json tree, Random random) {
    if (tree instanceof Json.Members members && !members.byName().isEmpty()) {
      List<String> names = new ArrayList<>(members.byName().keySet());
      String name = names.get(random.nextInt(names.size()));
      Map<String, Json> changed = new LinkedHashMap<>(members.byName());
      switch (random.nextInt(12)) {
        case 0 -> changed.remove(name);
        case 1 -> changed.put(name + "x", leaf(random));
        case 2 -> changed.put(name, leaf(random));
        default -> changed.put(name, broken(changed.get(name), random));
      }
      return new Json.Members(changed);
    }
    if (tree instanceof Json.Elements elements && !elements.list().isEmpty()) {
      int index = random.nextInt(elements.list().size());
      List<Json> changed = new ArrayList<>(elements.list());
      switch (random.nextInt(8)) {
        case 0 -> changed.remove(index);
        case 1 -> changed.add(index, changed.get(random.nextInt(changed.size())));
        case 2 -> changed.set(index, leaf(random));
        default -> changed.set(index, broken(changed.get(index), random));
      }
      return new Json.Elements(changed);
    }
    return leaf(random);
  }

  private static Json leaf(Random random) {
    return LEAVES.get(random.nextInt(LEAVES.size()));
  }

  private static String parent(String pointer) {
    return pointer.substring(0, pointer.lastIndexOf('/'));
  }

  /** RFC 6901. */
  private static boolean resolves(Json tree, String pointer) {
    Json here = tree;
    for (String step : pointer.split("/", -1)) {
      if (step.isEmpty() && here == tree) {
        continue;
      }
      String name = step.replace("~1", "/").replace("~0", "~");
      if (here instanceof Json.Members members && members.byName().containsKey(name)) {
        here = members.byName().get(name);
      } else if (here instanceof Json.Elements elements
          && name.matches("0|[1-9][0-9]*")
          && Integer.parseInt(name) < elements.list().size()) {
        here = elements.list().get(Integer.parseInt(name));
      } else {
        return false;
      }
    }
    return true;
  }
}
