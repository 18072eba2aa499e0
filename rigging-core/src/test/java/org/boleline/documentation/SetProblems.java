package org.boleline.documentation;

import java.io.PrintStream;
import org.boleline.working.problem.Level;
import org.boleline.working.problem.Problem;
import org.boleline.working.problem.ProblemKind;

/** The code of docs/how-to/set-problems.md. */
final class SetProblems {
  private SetProblems() {}

  static void question(PrintStream out) {
    // region question
    Problem problem = Problem.of(ProblemKind.REDIRECTS, Level.SECOND, 42);
    out.print(problem.plainText());
    // endregion
  }

  static void checked(PrintStream out) {
    Problem problem = Problem.of(ProblemKind.REDIRECTS, Level.SECOND, 42);
    // region checked
    out.println(problem.answer());
    out.println(problem.check("1103 lbf").finding());
    out.println(problem.check("9.72 kN").finding());
    // endregion
  }

  static void wrong(PrintStream out) {
    Problem problem = Problem.of(ProblemKind.REDIRECTS, Level.SECOND, 42);
    // region wrong
    problem.wrongAnswers().forEach(wrong -> out.println(wrong.value() + ": " + wrong.cause()));
    // endregion
  }
}
