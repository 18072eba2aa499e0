package org.boleline.study;

/** The answer to a study: numbers, each found or with the reason why there is none. */
public sealed interface StudyAnswer
    permits Sweep.Answer,
        BiggestPiece.Answer,
        WhatChanged.Answer,
        WrapsWindow.Answer,
        BestStations.Answer,
        NoAnswer {
  /**
   * Returns what was asked.
   *
   * @return the study
   */
  Study study();
}
