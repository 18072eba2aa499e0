package org.boleline.drop;

import java.util.List;
import java.util.Map;
import org.boleline.explain.Caution;
import org.boleline.explain.CautionCode;

/**
 * A drop that was not worked out.
 *
 * @param id id of the arrangement
 * @param reason why not, in words
 * @param cautions one caution that says so
 */
public record DropNotAnalysed(String id, String reason, List<Caution> cautions)
    implements DropAnswer {
  /**
   * Makes the answer; the cautions are copied.
   *
   * @param id id of the arrangement
   * @param reason why not, in words
   * @param cautions one caution that says so
   */
  public DropNotAnalysed {
    cautions = List.copyOf(cautions);
  }

  static DropNotAnalysed because(String id, int index, String reason) {
    return new DropNotAnalysed(
        id,
        reason,
        List.of(
            new Caution(
                CautionCode.DROP_NOT_ANALYSED,
                "/arrangements/" + index + "/drop",
                Map.of("why", reason))));
  }
}
