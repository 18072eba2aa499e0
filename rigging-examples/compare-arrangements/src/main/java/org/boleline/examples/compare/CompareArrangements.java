package org.boleline.examples.compare;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.OptionalInt;
import org.boleline.drop.Drops;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.json.PlanReader;
import org.boleline.json.ResultWriter;
import org.boleline.limits.Checks;
import org.boleline.statics.Outcome;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;
import org.boleline.study.StudyPlan;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Solves a rigging plan and prints its arrangements side by side. */
@Command(
    name = "compare-arrangements",
    sortOptions = false,
    mixinStandardHelpOptions = true,
    versionProvider = CompareArrangements.Version.class,
    description = {
      "Solves a rigging plan and prints its arrangements side by side: tensions, forces on each"
          + " point, movement, base moment, stress, and what changes from one to the next; below them"
          + " the catches of the drops that the plan states, the parts of the rig against the limits"
          + " that it states, and the answers to the studies that it asks for.",
      ""
    },
    footer = {
      "",
      "Exit status: 0 solved; 1 the plan cannot be read, or the answer not be written; 2 the plan or"
          + " the command line is refused, with the reasons on standard error; 3 an arrangement is"
          + " unstable or could not be solved. A drop that never stops, or was not worked out, changes"
          + " nothing in it.",
      "",
      "The numbers do not say whether work may be done: local codes, the makers' instructions and"
          + " the competent person on site do."
    })
public final class CompareArrangements {
  static final int SOLVED = 0;
  static final int FAILED = 1;
  static final int REFUSED = 2;
  static final int NOT_ALL_STABLE = 3;

  private static final String STANDARD_INPUT = "-";

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "PLAN",
      description =
          "A plan file (rigging-plan/1), or - for standard input. Left out: the built-in"
              + " demonstration, an invented hornbeam over a glasshouse.")
  private @Nullable String file;

  @Option(
      names = "--units",
      paramLabel = "si|us",
      defaultValue = "si",
      converter = Units.class,
      description = "Units of the table: si (default) or us.")
  private UnitSystem units = UnitSystem.SI;

  @Option(
      names = "--json",
      description = "Print the result as JSON (rigging-result/1, SI units, UTF-8) instead.")
  private boolean json;

  @Option(
      names = "--working",
      description =
          "Print the results as hand calculations instead: rope, bases, drops, limits, and rules of"
              + " thumb beside them. Not with --json.")
  private boolean working;

  @Option(
      names = "--report",
      paramLabel = "FILE.html",
      description =
          "Write a report instead: one HTML file with pictures, tables, the plan and sources, to"
              + " look at and to print. A file of that name is overwritten. Not with --json or"
              + " --working.")
  private @Nullable String report;

  private CompareArrangements() {}

  /**
   * Runs the program.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    Charset charset = charset();
    PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false, charset);
    PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, charset);
    System.exit(run(args, System.in, out, err, charset));
  }

  /** What standard output is written in. */
  private static Charset charset() {
    for (String name : new String[] {"stdout.encoding", "sun.stdout.encoding", "native.encoding"}) {
      String charset = System.getProperty(name);
      if (charset != null && Charset.isSupported(charset)) {
        return Charset.forName(charset);
      }
    }
    return Charset.defaultCharset();
  }

  /** Runs the program on given streams and returns its exit status. */
  static int run(String[] args, InputStream in, PrintStream out, PrintStream err, Charset charset) {
    CompareArrangements program = new CompareArrangements();
    // The parser takes as long to start as the six arrangements to solve: not for nothing.
    OptionalInt ending = args.length == 0 ? OptionalInt.empty() : program.parse(args, out, err);
    return ending.orElseGet(() -> program.answer(in, out, err, charset));
  }

  /** Reads the command line; the exit status, if that is all there was to do. */
  private OptionalInt parse(String[] args, PrintStream out, PrintStream err) {
    CommandLine line = new CommandLine(this);
    line.setUsageHelpWidth(Page.WIDTH);
    line.setExpandAtFiles(false);
    try {
      line.parseArgs(args);
    } catch (CommandLine.ParameterException e) {
      err.println("compare-arrangements: " + Page.clean(String.valueOf(e.getMessage())));
      err.println("Try --help.");
      return OptionalInt.of(REFUSED);
    }
    String wrong = wrong();
    if (!wrong.isEmpty()) {
      err.println("compare-arrangements: " + wrong);
      err.println("Try --help.");
      return OptionalInt.of(REFUSED);
    }
    if (line.isUsageHelpRequested()) {
      out.print(line.getUsageMessage(CommandLine.Help.Ansi.OFF));
      return OptionalInt.of(SOLVED);
    }
    if (line.isVersionHelpRequested()) {
      out.println("compare-arrangements " + ResultWriter.libraryVersion());
      return OptionalInt.of(SOLVED);
    }
    return OptionalInt.empty();
  }

  /** What is wrong with options that are each right; empty if nothing is. */
  private String wrong() {
    List<String> wanted = new ArrayList<>();
    if (json) {
      wanted.add("--json");
    }
    if (working) {
      wanted.add("--working");
    }
    if (report != null) {
      wanted.add("--report");
    }
    if (wanted.size() > 1) {
      return "wants one of --json, --working and --report, got " + Wording.join(wanted);
    }
    return report == null || report.toLowerCase(Locale.ROOT).endsWith(".html")
        ? ""
        : "--report: wants a name that ends in .html, got " + Page.clean(report);
  }

  private int answer(InputStream in, PrintStream out, PrintStream err, Charset charset) {
    try {
      StudyPlan plan = plan(in);
      StaticResult result = Statics.analyse(plan.plan());
      if (report != null) {
        return report(report, plan, result, out, err);
      }
      if (json) {
        Findings findings = Findings.of(result).answering(plan);
        out.writeBytes(
            ResultWriter.write(findings.checks(), findings.answers(), findings.ranges())
                .getBytes(StandardCharsets.UTF_8));
      } else if (working) {
        Checks checks = Checks.of(Drops.analyse(result));
        out.print(WorkingPage.print(checks, units, Glyphs.of(charset)));
      } else {
        out.print(
            Page.print(
                Comparison.of(Findings.of(result).answering(plan), units), Glyphs.of(charset)));
      }
      out.flush();
      if (out.checkError()) {
        err.println("compare-arrangements: the answer could not be written");
        return FAILED;
      }
      return status(result);
    } catch (PlanRefusedException e) {
      for (Refusal refusal : e.refusals()) {
        err.println(Page.clean(refusal.sentence()));
      }
      return REFUSED;
    } catch (IOException | InvalidPathException e) {
      err.println("compare-arrangements: cannot read " + Page.clean(String.valueOf(file)) + why(e));
      return FAILED;
    } catch (RuntimeException | AssertionError | StackOverflowError | OutOfMemoryError e) {
      err.println(
          "compare-arrangements: this is a fault of the program, not of the plan; please report it"
              + " with the plan: "
              + Page.clean(e.toString()));
      return FAILED;
    }
  }

  private static int status(StaticResult result) {
    boolean stable = result.arrangements().stream().allMatch(a -> a.outcome() == Outcome.STABLE);
    return stable ? SOLVED : NOT_ALL_STABLE;
  }

  private int report(
      String name, StudyPlan plan, StaticResult result, PrintStream out, PrintStream err) {
    String page = Report.write(plan, Findings.withCauses(result).answering(plan), units);
    try {
      Files.writeString(Path.of(name), page);
    } catch (IOException | InvalidPathException e) {
      err.println("compare-arrangements: cannot write " + Page.clean(name) + why(e));
      return FAILED;
    }
    out.println("Report written to " + Page.clean(name));
    out.flush();
    return status(result);
  }

  private StudyPlan plan(InputStream in) throws IOException {
    if (file == null) {
      try (InputStream demo = CompareArrangements.class.getResourceAsStream("hornbeam.json")) {
        return PlanReader.readWithStudies(Objects.requireNonNull(demo, "hornbeam.json"));
      }
    }
    if (file.equals(STANDARD_INPUT)) {
      return PlanReader.readWithStudies(in);
    }
    try (InputStream stream = Files.newInputStream(Path.of(file))) {
      return PlanReader.readWithStudies(stream);
    }
  }

  private static String why(Exception e) {
    if (e instanceof NoSuchFileException) {
      return ": there is no such file";
    }
    if (e instanceof AccessDeniedException) {
      return ": access is denied";
    }
    return e.getMessage() == null ? "" : ": " + Page.clean(e.getMessage());
  }

  /** Reads the choice of units. */
  static final class Units implements CommandLine.ITypeConverter<UnitSystem> {
    @Override
    public UnitSystem convert(String value) {
      return switch (value.toLowerCase(Locale.ROOT)) {
        case "si" -> UnitSystem.SI;
        case "us" -> UnitSystem.US;
        default -> throw new CommandLine.TypeConversionException("wants si or us, got " + value);
      };
    }
  }

  /** Says the version. */
  static final class Version implements CommandLine.IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"compare-arrangements " + ResultWriter.libraryVersion()};
    }
  }
}
