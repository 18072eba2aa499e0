package org.boleline.drop;

import java.util.List;
import org.boleline.explain.Caution;

/** What the analysis says of the drop of one arrangement: found, or why not. */
public sealed interface DropAnswer permits DropFound, DropNotAnalysed {
  /**
   * Returns the id of the arrangement.
   *
   * @return the id
   */
  String id();

  /**
   * Returns what is to be read with care.
   *
   * @return the cautions, each with its place in the plan
   */
  List<Caution> cautions();
}
