package org.boleline.examples.compare;

/** Solves a rigging plan and prints its arrangements side by side. */
public final class CompareArrangements {

  private CompareArrangements() {}

  /**
   * Runs the program.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    System.out.println("usage: compare-arrangements [plan.json] [--json] [--units si|us]");
  }
}
