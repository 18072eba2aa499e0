package org.boleline.study;

/**
 * Looks on while a study of ranges runs, and may stop it.
 *
 * <p>Both methods are called from the threads that do the work; progress never by two at once.
 */
public interface RangeWatch {
  /** Looks at nothing and stops nothing. */
  RangeWatch NONE = new RangeWatch() {};

  /**
   * Is told how far the study is.
   *
   * @param doneCount evaluations done, growing from call to call
   * @param allCount evaluations there will be
   */
  default void progress(int doneCount, int allCount) {}

  /**
   * Tells whether the study shall stop; asked before each evaluation.
   *
   * @return true to stop it
   */
  default boolean isCancelled() {
    return false;
  }
}
