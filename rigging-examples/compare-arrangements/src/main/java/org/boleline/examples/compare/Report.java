package org.boleline.examples.compare;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.Drops;
import org.boleline.explain.Formula;
import org.boleline.json.ResultWriter;
import org.boleline.picture.BendingStrip;
import org.boleline.picture.CatchPlot;
import org.boleline.picture.ForcePicture;
import org.boleline.picture.PictureSpec;
import org.boleline.picture.RangePlot;
import org.boleline.picture.Theme;
import org.boleline.rope.Motion;
import org.boleline.statics.ArrangementResult;
import org.boleline.stem.Stem;
import org.boleline.study.StudyPlan;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.working.Line;
import org.boleline.working.PlanWorksheets;
import org.boleline.working.Worksheet;

/**
 * All that is to be told of a plan as one page of HTML, which loads nothing, holds its pictures,
 * and prints on A4 and Letter.
 */
final class Report {
  private static final int WIDTH = 400;
  private static final int STRIP_WIDTH = 480;
  private static final int HEIGHT = 600;
  private static final int ROW = 40;
  private static final int CAUSE_ROW = 19;
  private static final int RANGE_HEAD = 190;
  private static final int LEAST_HEIGHT = 320;
  private static final int STRIP = 620;
  private static final int CATCH = 860;

  /** Between samples of a catch in time: a curve of 400 pixels needs no more. */
  private static final Quantity<Time> EVERY = Amounts.seconds(0.01);

  /** Length of the greatest arrow over that of the longest stem. */
  private static final double ARROW = 0.4;

  private final StudyPlan plan;
  private final Findings findings;
  private final UnitSystem units;
  private final Comparison comparison;
  private final Html html = new Html();
  private final HtmlTables tables = new HtmlTables(html);
  private final List<Section> sections = new ArrayList<>();
  private int pictures;

  private record Section(String id, String heading, Runnable body) {}

  private Report(StudyPlan plan, Findings findings, UnitSystem units) {
    this.plan = plan;
    this.findings = findings;
    this.units = units;
    comparison = Comparison.of(findings, units);
  }

  /** Returns the page of a plan and what was found of it; the same for the same. */
  static String write(StudyPlan plan, Findings findings, UnitSystem units) {
    Report report = new Report(plan, findings, units);
    report.sections();
    return report.page();
  }

  private void sections() {
    Comparison c = comparison;
    add("arrangements", "Arrangements", true, () -> tables.entries(c.arrangements()));
    add("numbers", "Numbers side by side", true, () -> numbers("Slow, steady motion", c.table()));
    add("cautions", "Cautions", !c.cautions().isEmpty(), () -> tables.entries(c.cautions()));
    add("forces", "Forces on the points", true, this::forces);
    add("bending", "Bending along the stems", true, this::bending);
    add(
        "changes",
        "What changes from one to the next, and why",
        !c.changes().isEmpty(),
        this::changes);
    add("catches", "Catches", !c.catches().rows().isEmpty(), this::catches);
    add("limits", "Limits", !c.limits().rows().isEmpty(), this::limits);
    add("ranges", "How far the figures may be off", !c.ranges().rows().isEmpty(), this::ranges);
    add("studies", "Studies that the plan asks for", !c.studies().isEmpty(), this::studies);
    add("plan", "The plan", true, this::plan);
    add(
        "taken",
        "Taken without being stated",
        !c.taken().isEmpty(),
        () -> tables.entries(c.taken()));
    add("sources", "Formulas and their sources", true, this::sources);
    add("record", "For the competent person on site", true, this::blank);
  }

  private void add(String id, String heading, boolean wanted, Runnable body) {
    if (wanted) {
      sections.add(new Section(id, heading, body));
    }
  }

  private String page() {
    html.open("html", "lang", "en").open("head");
    html.single("meta", "charset", "utf-8");
    html.single("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.single("meta", "name", "color-scheme", "content", "light dark");
    html.open("title").words(comparison.title()).close();
    html.open("style").markup(style()).close();
    html.close().open("body").open("header");
    html.open("h1").words(comparison.title()).close();
    html.open("p").words(comparison.setting()).close();
    html.open("p", "class", "standing").words(comparison.standing()).close();
    html.close();
    html.open("nav", "aria-label", "Parts of this report").open("ul");
    for (Section section : sections) {
      html.open("li").text("a", section.heading(), "href", "#" + section.id()).close();
    }
    html.close().close().open("main");
    for (Section section : sections) {
      html.open("section", "id", section.id(), "class", section.id());
      html.open("h2").words(section.heading()).close();
      section.body().run();
      html.close();
    }
    html.close().open("footer");
    html.open("p").words(comparison.standing()).close();
    html.open("p")
        .words(
            "Worked out by version "
                + ResultWriter.libraryVersion()
                + " of the library, from a plan in the format rigging-plan/1.")
        .close();
    return html.close().close().close().end();
  }

  private static String style() {
    try (InputStream style = Report.class.getResourceAsStream("report.css")) {
      return new String(
          Objects.requireNonNull(style, "report.css").readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException("reading from the class path", e);
    }
  }

  private void paragraph(String text) {
    html.open("p").words(text).close();
  }

  private void heading(String text) {
    html.open("h3").words(text).close();
  }

  private void numbers(String caption, Table table) {
    tables.numbers(caption + "; the columns are the arrangements by their numbers", table);
  }

  private PictureSpec spec(int height) {
    pictures++;
    return PictureSpec.STANDARD
        .withId("picture-" + pictures)
        .withSheet(WIDTH, height)
        .withTheme(Theme.AUTO)
        .withUnits(units.ofPictures());
  }

  private void figure(String caption, String svg) {
    html.open("figure").open("figcaption").words(caption).close().markup(svg).close();
  }

  private void forces() {
    paragraph(
        "Each arrangement to scale, without the load (dashed) and with it. Beside the stem a force is"
            + " as long in all pictures. A load that is held is drawn in the state about to run.");
    html.open("div", "class", "pictures");
    int number = 0;
    for (ArrangementResult result : findings.statics().arrangements()) {
      number++;
      figure(
          number + " " + Page.clean(result.id()),
          ForcePicture.of(findings.statics(), result.id(), forceScale(spec(HEIGHT))).svg());
    }
    html.close();
  }

  /** One scale for all: the greatest force is an arrow of two fifths of the longest stem. */
  private PictureSpec forceScale(PictureSpec spec) {
    double greatest =
        findings.statics().arrangements().stream()
            .flatMap(result -> result.solution().stream())
            .flatMap(solution -> solution.contacts().stream())
            .mapToDouble(contact -> Triple.size(contact.force().in(Kind.FORCE)))
            .max()
            .orElse(0);
    double longest =
        findings.plan().stems().stream()
            .mapToDouble(stem -> Wording.metres(stem.length()))
            .max()
            .orElseThrow();
    return greatest > 0 ? spec.withForceScale(Amounts.newtons(greatest / (ARROW * longest))) : spec;
  }

  private void bending() {
    paragraph(
        "Moment and fibre stress along each stem, all arrangements on the same axes. The greatest is"
            + " marked; often it is not at the base."
            + (findings.plan().arrangements().stream().anyMatch(way -> way.motion() == Motion.HELD)
                ? " A load that is held has two lines: about to run, and about to rise."
                : ""));
    html.open("div", "class", "pictures");
    for (Stem stem : findings.plan().stems()) {
      figure(
          "Stem " + Page.clean(stem.id()),
          BendingStrip.of(findings.statics(), stem.id(), spec(STRIP).withSheet(STRIP_WIDTH, STRIP))
              .svg());
    }
    html.close();
  }

  private void changes() {
    tables.entries(comparison.changes());
    if (!comparison.shares().isEmpty()) {
      heading("What each change adds, in shares that do not depend on an order");
      tables.entries(comparison.shares());
    }
  }

  private void catches() {
    paragraph(comparison.catchText());
    tables.numbers("Catches of the drops that the plan states", comparison.catches());
    html.open("div", "class", "pictures");
    for (int i = 0; i < findings.drops().drops().size(); i++) {
      DropAnswer answer = findings.drops().drops().get(i).orElse(null);
      if (answer instanceof DropFound drop && drop.inTime().isPresent()) {
        String caption = i + 1 + " " + Page.clean(drop.id()) + ", in time";
        Drops.sampled(findings.statics(), drop.id(), EVERY)
            .ifPresent(
                followed -> figure(caption, CatchPlot.of(drop, followed, spec(CATCH)).svg()));
      }
    }
    html.close();
  }

  private void limits() {
    paragraph(comparison.limitText());
    tables.numbers("Limits that the plan states", comparison.limits());
    heading("Weakest link");
    tables.entries(comparison.weakest());
    if (!comparison.asked().isEmpty()) {
      heading("Factors asked");
      tables.entries(comparison.asked());
    }
  }

  private void ranges() {
    paragraph(comparison.rangeText());
    tables.numbers("Ranges of the headline figures", comparison.ranges());
    paragraph(RangeRows.barText());
    html.open("div", "class", "pictures");
    for (RangeRows.Bars bars : RangeRows.bars(findings)) {
      int high = RANGE_HEAD + ROW * bars.spreads().size() + CAUSE_ROW * bars.causes().size();
      figure(
          bars.title(),
          RangePlot.of(
                  bars.title(),
                  bars.spreads(),
                  bars.widest(),
                  bars.causes(),
                  spec(Math.max(LEAST_HEIGHT, high)))
              .svg());
    }
    html.close();
    heading("Ranges that the plan states");
    tables.entries(comparison.stated());
  }

  private void studies() {
    paragraph(StudyRows.text());
    int number = 0;
    for (StudyRows.Told study : comparison.studies()) {
      number++;
      heading(study.question());
      if (!study.table().rows().isEmpty()) {
        tables.numbers("Answer to study " + number, study.table());
      }
      if (!study.entries().isEmpty()) {
        tables.entries(study.entries());
      }
    }
  }

  private void plan() {
    PlanTables.write(plan, units, html, tables);
  }

  /** Every formula that a number of this plan went through, once. */
  private void sources() {
    Map<String, Formula> used = new TreeMap<>();
    for (Worksheet sheet : PlanWorksheets.of(findings.checks())) {
      sheet.steps().forEach(step -> used.put(step.formula().id(), step.formula()));
      for (Line line : sheet.lines()) {
        if (line instanceof Line.Table table) {
          table.formulas().forEach(formula -> used.put(formula.id(), formula));
        }
      }
    }
    paragraph(
        "Formulas that numbers of this report went through, as their worksheets show them; the"
            + " coupled balance of rope and stems is checked by them, not found. Symbols, ranges and"
            + " derivations stand in the documents of the library.");
    tables.texts(
        "Formulas",
        List.of("id", "what it gives", "formula", "source"),
        used.values().stream()
            .map(
                formula ->
                    List.of(
                        formula.id(),
                        formula.result().meaning(),
                        formula.text(),
                        Notes.source(formula.source())))
            .toList());
  }

  /** What no program can know, to be filled in by hand. */
  private void blank() {
    paragraph(
        "To be filled in on site, by whoever decides there. What is measured or found otherwise than"
            + " the plan states changes the numbers above.");
    html.open("dl", "class", "blank");
    for (String line :
        List.of("Name and qualification", "Date, time and weather", "Tree and place")) {
      html.open("dt").words(line).close().open("dd").close();
    }
    for (String field :
        List.of(
            "Looked at: roots, base, stem, unions, cavities, decay",
            "Measured or found otherwise than the plan states",
            "Rope, slings and hardware: makers' instructions, wear, last inspection",
            "Drop zone, people, and what to do if it goes wrong",
            "Decision, and what it depends on")) {
      html.open("dt").words(field).close().open("dd", "class", "high").close();
    }
    html.open("dt").words("Signature").close().open("dd").close();
    html.close();
  }
}
