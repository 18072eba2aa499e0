package org.boleline.study;

/**
 * A study that does not fit its plan.
 *
 * @param study what was asked
 * @param reason why there is no answer, in words
 */
public record NoAnswer(Study study, String reason) implements StudyAnswer {}
