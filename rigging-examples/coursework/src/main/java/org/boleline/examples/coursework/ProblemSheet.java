package org.boleline.examples.coursework;

import java.util.List;
import org.boleline.working.problem.Problem;
import org.boleline.working.problem.WrongAnswer;

/** Problems one after the other, then their solutions, as Markdown. */
final class ProblemSheet {
  private final List<Problem> problems;

  ProblemSheet(List<Problem> problems) {
    this.problems = List.copyOf(problems);
  }

  String markdown(boolean solutions) {
    StringBuilder text = new StringBuilder("# Problems\n");
    for (int i = 0; i < problems.size(); i++) {
      Problem problem = problems.get(i);
      text.append("\n## ").append(i + 1).append(". ").append(problem.title()).append("\n\n");
      text.append(problem.question()).append("\n\n");
      text.append(units(problem)).append(", to three figures.\n");
    }
    if (solutions) {
      text.append("\n# Solutions\n");
      for (int i = 0; i < problems.size(); i++) {
        solution(text, i + 1, problems.get(i));
      }
    }
    text.append("\nThese are exercises with invented numbers. On a tree, local codes, makers' ");
    text.append("instructions and the competent person on site decide.\n");
    return text.toString();
  }

  private static String units(Problem problem) {
    List<String> units = problem.acceptedUnits();
    return units.equals(List.of("1"))
        ? "Answer with a number"
        : "Answer in " + String.join(", ", units);
  }

  private static void solution(StringBuilder text, int number, Problem problem) {
    text.append("\n## ").append(number).append(". ").append(problem.title()).append("\n\n");
    text.append("**").append(problem.answer()).append("**\n\n");
    text.append("| if the answer is | it is |\n|---|---|\n");
    for (WrongAnswer wrong : problem.wrongAnswers()) {
      text.append("| ").append(wrong.value()).append(" | ").append(wrong.cause()).append(" |\n");
    }
    // the worksheet brings headings of its own: two levels down
    problem
        .solution()
        .markdown()
        .lines()
        .forEach(line -> text.append('\n').append(line.startsWith("#") ? "##" + line : line));
    text.append('\n');
  }
}
