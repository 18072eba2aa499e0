package org.boleline.study;

/** The answer to a study: numbers, each found or with the reason why there is none. */
public sealed interface StudyAnswer
    permits Sweep.Answer,
        BiggestPiece.Answer,
        CutPlan.Answer,
        RunNeeded.Answer,
        WhatChanged.Answer,
        WrapsWindow.Answer,
        BestStations.Answer,
        ForkPull.Answer,
        Trial.Answer,
        FrictionTrial.Answer,
        NoAnswer {
  /**
   * Returns what was asked.
   *
   * @return the study
   */
  Study study();
}
