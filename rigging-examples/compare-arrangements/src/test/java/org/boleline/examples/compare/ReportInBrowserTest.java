package org.boleline.examples.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.boleline.examples.pages.Browser;
import org.boleline.statics.Statics;
import org.boleline.study.StudyPlan;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The report in a real browser; screenshots and prints are left in {@code target/screenshots}. */
class ReportInBrowserTest {
  /** A4 and Letter, in centimetres: ISO 216, and ANSI/ASME Y14.1 (from memory). */
  private static final double[][] PAPERS = {{21.0, 29.7}, {21.59, 27.94}};

  private static final double MARGIN = 1.2;
  private static final double PIXELS = 96 / 2.54;

  @TempDir static Path folder;
  private static Browser browser;

  private static final Map<String, StudyPlan> PLANS =
      Map.of(
          "hornbeam", Plans.asked(Plans.HORNBEAM),
          "mixed", Plans.asked(Plans.MIXED),
          "spruce", Plans.ASKING);

  @BeforeAll
  static void start() throws Exception {
    String missing = Browser.missing();
    if (!missing.isEmpty()) {
      System.out.println("SKIPPED: the report is not tested in a browser: " + missing);
    }
    assumeTrue(missing.isEmpty(), missing);
    browser = Browser.start(Files.createDirectories(folder.resolve("profile")));
  }

  @AfterAll
  static void stop() {
    if (browser != null) {
      browser.close();
    }
  }

  private static void open(StudyPlan plan, String name, UnitSystem units) throws Exception {
    Path report = folder.resolve(name + ".html");
    Findings findings = Findings.of(Statics.analyse(plan.plan())).answering(plan);
    Files.writeString(report, Report.write(plan, findings, units));
    browser.open(report.toUri().toString());
  }

  private static void nothingSticksOut(String name) {
    assertThat(browser.run("return document.documentElement.scrollWidth - innerWidth").asInt())
        .as("nothing sticks out at %s", name)
        .isLessThanOrEqualTo(0);
  }

  @Test
  void axe_finds_no_fault_at_any_size_and_theme() throws Exception {
    for (Map.Entry<String, StudyPlan> plan : PLANS.entrySet()) {
      open(plan.getValue(), plan.getKey(), UnitSystem.SI);
      for (String theme : List.of("light", "dark")) {
        for (int width : new int[] {390, 1280}) {
          String name = "report-" + plan.getKey() + "-" + width + "-" + theme;
          browser.size(width, 900, width < 1000);
          browser.theme(theme);
          browser.screenshot(name, true);
          assertThat(browser.accessibilityFaults()).as(name).isEmpty();
          nothingSticksOut(name);
        }
      }
    }
    assertThat(browser.complaints()).allMatch(line -> line.contains("willReadFrequently")); // axe
  }

  @Test
  void prints_on_both_papers_without_cut_tables_and_pictures() throws Exception {
    browser.theme("light");
    for (Map.Entry<String, StudyPlan> plan : PLANS.entrySet()) {
      open(plan.getValue(), "print", UnitSystem.US);
      for (double[] paper : PAPERS) {
        String name = "report-" + plan.getKey() + "-" + (int) paper[1];
        int width = (int) ((paper[0] - 2 * MARGIN) * PIXELS);
        double height = (paper[1] - 2 * MARGIN) * PIXELS;
        browser.size(width, (int) height, false);
        browser.onPaper(true);
        nothingSticksOut(name);
        assertThat(
                browser.run(
                    "return [...document.querySelectorAll('table, svg')].filter(e =>"
                        + " e.getBoundingClientRect().right > innerWidth + 0.5).map(e =>"
                        + " e.textContent.slice(0, 60))"))
            .as("nothing is wider than %s", name)
            .isEmpty();
        assertThat(
                browser
                    .run(
                        "return Math.max(...[...document.querySelectorAll('figure, tbody:not(.texts"
                            + " tbody)')].map(e => e.getBoundingClientRect().height))")
                    .asDouble())
            .as("pictures and groups of rows on one sheet of %s", name)
            .isLessThan(height);
        browser.onPaper(false);
        assertThat(browser.print(name, paper[0], paper[1])).as(name).isBetween(5, 40);
      }
    }
  }
}
