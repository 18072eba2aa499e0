package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.boleline.json.ResultWriter;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.Sheave;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Same plan, same bits: on every run, in every thread, under every default locale. */
class DeterminismTest {
  private static final int THREADS = 8;

  private static Plan plan() {
    LeaningRig rig = new LeaningRig(0.4, 0.2, 0.3, 34, 0.5, List.of(0.95, 0.6, 0.35), 0.3, 0.4);
    List<Arrangement> arrangements = new ArrayList<>();
    arrangements.add(rig.aside(new FrictionRing(0.25)).id("rings").motion(Motion.HELD).build());
    arrangements.add(rig.aside(new Sheave(0.95)).id("sheaves").motion(Motion.RAISING).build());
    arrangements.add(
        rig
            .changed(LeaningRig.Change.NONE, new FrictionRing(0.2), Motion.LOWERING)
            .arrangements()
            .get(0)
            .toBuilder()
            .id("slings")
            .build());
    return rig.plan(rig.aside(new FrictionRing(0.25))).toBuilder()
        .arrangements(arrangements)
        .build();
  }

  /** All numbers of the result, and the bytes of its file. */
  private static List<String> everything(Plan plan) {
    StaticResult result = Statics.analyse(plan);
    List<String> all = new ArrayList<>();
    for (ArrangementResult arrangement : result.arrangements()) {
      arrangement.solution().ifPresent(Rigs::sound);
      all.addAll(Numbers.of(arrangement));
    }
    all.add(ResultWriter.write(result));
    return all;
  }

  @Test
  void an_analysis_that_could_be_given_up_gives_the_same_or_nothing() {
    int[] asked = {0};
    StaticResult whole = Statics.analyse(plan(), () -> ++asked[0] > 3);
    assertThat(asked[0]).isEqualTo(3);
    assertThat(ResultWriter.write(whole)).isEqualTo(ResultWriter.write(Statics.analyse(plan())));
    assertThatExceptionOfType(CancellationException.class)
        .isThrownBy(() -> Statics.analyse(plan(), () -> ++asked[0] > 5));
    assertThat(asked[0]).isEqualTo(6);
  }

  @Test
  void runs_repeat_bit_for_bit() {
    List<String> first = everything(plan());
    assertThat(first).hasSizeGreaterThan(1000);
    for (int i = 0; i < 3; i++) {
      assertThat(everything(plan())).isEqualTo(first);
    }
  }

  @Test
  void eight_threads_agree() throws Exception {
    Plan shared = plan();
    List<String> alone = everything(plan());
    ExecutorService pool = Executors.newFixedThreadPool(THREADS);
    try {
      List<Callable<List<String>>> tasks = new ArrayList<>();
      for (int i = 0; i < 2 * THREADS; i++) {
        tasks.add(() -> everything(shared));
      }
      for (Future<List<String>> found : pool.invokeAll(tasks)) {
        assertThat(found.get()).isEqualTo(alone);
      }
    } finally {
      pool.shutdownNow();
    }
  }

  /** Commas, dotless i and Arabic digits are what trips formatting in these. */
  @ParameterizedTest
  @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG"})
  void the_default_locale_does_not_matter(String tag) {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.ROOT);
    try {
      List<String> root = everything(plan());
      Locale.setDefault(Locale.forLanguageTag(tag));
      assertThat(everything(plan())).isEqualTo(root);
    } finally {
      Locale.setDefault(before);
    }
  }
}
