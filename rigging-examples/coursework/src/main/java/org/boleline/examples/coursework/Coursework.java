package org.boleline.examples.coursework;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.json.ResultWriter;
import org.boleline.working.check.HandCheck;
import org.boleline.working.check.HandSheet;
import org.boleline.working.check.Tolerance;
import org.boleline.working.problem.Level;
import org.boleline.working.problem.Problem;
import org.boleline.working.problem.ProblemKind;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.TypeConversionException;

/** Problem sheets for a class, and checks of what comes back. */
@Command(
    name = "coursework",
    description = "Problems on the mechanics of tree rigging, and checks of their calculations.",
    footer = {
      "",
      "Exit status: 0 printed, or the calculation agrees; 1 it parts from ours; 2 refused, with the"
          + " reasons on standard error; 3 a fault of the program.",
      "",
      "These are exercises with invented numbers. On a tree, local codes, makers' instructions and"
          + " the competent person on site decide."
    },
    mixinStandardHelpOptions = true,
    exitCodeOnExecutionException = Coursework.FAULT,
    scope = CommandLine.ScopeType.INHERIT,
    sortOptions = false)
public final class Coursework {
  static final int DONE = 0;
  static final int PARTS = 1;
  static final int REFUSED = 2;
  static final int FAULT = 3;

  private static final int MOST_BYTES = 1_000_000;

  private final PrintWriter out;
  private final PrintWriter err;

  private Coursework(PrintWriter out, PrintWriter err) {
    this.out = out;
    this.err = err;
  }

  /**
   * Runs the program. It writes UTF-8: its pages are files for others to read.
   *
   * @param arguments the command line
   */
  public static void main(String[] arguments) {
    PrintWriter out = writer(new FileOutputStream(FileDescriptor.out));
    PrintWriter err = writer(new FileOutputStream(FileDescriptor.err));
    System.exit(run(out, err, arguments));
  }

  private static PrintWriter writer(OutputStream stream) {
    return new PrintWriter(stream, false, StandardCharsets.UTF_8);
  }

  static int run(PrintWriter out, PrintWriter err, String... arguments) {
    CommandLine line = new CommandLine(new Coursework(out, err));
    line.getCommandSpec().version("coursework " + ResultWriter.libraryVersion());
    line.registerConverter(Level.class, Coursework::level);
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.setExpandAtFiles(false);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    line.setOut(out);
    line.setErr(err);
    int status = arguments.length == 0 ? line.execute("--help") : line.execute(arguments);
    out.flush();
    err.flush();
    return status;
  }

  @Command(
      name = "sheet",
      description = "Prints a problem of each kind, then the solutions, as Markdown.")
  int sheet(
      @Option(names = "--level", paramLabel = "1|2|3", defaultValue = "1", description = "how hard")
          Level level,
      @Option(
              names = "--seed",
              paramLabel = "NUMBER",
              defaultValue = "1",
              description = "another number, other problems")
          long seed,
      @Option(names = "--questions-only", description = "leaves the solutions out")
          boolean questionsOnly) {
    ProblemSheet sheet =
        new ProblemSheet(
            Arrays.stream(ProblemKind.values())
                .map(kind -> Problem.of(kind, level, seed))
                .toList());
    out.print(sheet.markdown(!questionsOnly));
    return DONE;
  }

  @Command(name = "item", description = "Prints a problem as an item of the QTI 2.1 quiz format.")
  int item(
      @Parameters(paramLabel = "KIND", description = "${COMPLETION-CANDIDATES}") ProblemKind kind,
      @Parameters(paramLabel = "LEVEL", description = "1, 2 or 3") Level level,
      @Parameters(paramLabel = "NUMBER", description = "the seed of its sheet") long seed) {
    out.print(Problem.of(kind, level, seed).qti());
    return DONE;
  }

  @Command(
      name = "check",
      description = "Holds a person's steps against the worked solution of a problem.")
  int check(
      @Parameters(paramLabel = "KIND", description = "${COMPLETION-CANDIDATES}") ProblemKind kind,
      @Parameters(paramLabel = "LEVEL", description = "1, 2 or 3") Level level,
      @Parameters(paramLabel = "NUMBER", description = "the seed of its sheet") long seed,
      @Parameters(
              paramLabel = "FILE",
              description = "the steps, as comma-separated values: step,value,figures")
          Path file) {
    Problem problem = Problem.of(kind, level, seed);
    try {
      HandCheck check =
          HandCheck.of(
              problem.solution(),
              HandSheet.read(text(file)),
              Tolerance.relative(problem.toleranceRatio()));
      out.print(check.worksheet().plainText());
      return check.departure().isPresent() ? PARTS : DONE;
    } catch (PlanRefusedException e) {
      return refused(e.refusals().stream().map(Refusal::sentence).toArray(String[]::new));
    } catch (IOException e) {
      return refused(file + ": wants a text file (UTF-8) of at most " + MOST_BYTES + " bytes");
    }
  }

  private static String text(Path file) throws IOException {
    try (InputStream stream = Files.newInputStream(file)) {
      byte[] bytes = stream.readNBytes(MOST_BYTES + 1);
      if (bytes.length > MOST_BYTES) {
        throw new IOException("too long");
      }
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    }
  }

  private static Level level(String number) {
    return Arrays.stream(Level.values())
        .filter(level -> number.equals(String.valueOf(level.number())))
        .findFirst()
        .orElseThrow(() -> new TypeConversionException("wants 1, 2 or 3, got " + number));
  }

  /** Tells why, without letting a file write commands to the terminal. */
  private int refused(String... reasons) {
    for (String reason : reasons) {
      err.println(reason.replaceAll("\\p{Cntrl}", "?"));
    }
    return REFUSED;
  }
}
