package org.boleline.study;

import org.boleline.plan.Plan;

/** A question that can be asked of a plan, by a member of its list of studies or in code. */
public sealed interface Study
    permits Sweep,
        BiggestPiece,
        CutPlan,
        RunNeeded,
        WhatChanged,
        WrapsWindow,
        BestStations,
        ForkPull,
        Trial,
        FrictionTrial {
  /**
   * Returns what kind of question it is, as in plan files.
   *
   * @return for instance {@code sweep}
   */
  String kind();

  /**
   * Answers the question.
   *
   * @param plan the plan, not null
   * @return the answer
   * @throws org.boleline.explain.PlanRefusedException if the question does not fit the plan
   */
  StudyAnswer answer(Plan plan);
}
