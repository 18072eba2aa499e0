package org.boleline.drop;

import java.util.List;
import org.boleline.explain.Caution;
import org.boleline.explain.Step;

/**
 * What every answer to a run has.
 *
 * @param locked the locked catch
 * @param loads the greatest loads
 * @param slip slip tension in newtons
 * @param steps the steps
 * @param cautions the cautions
 */
record RunAnswer(
    Caught locked, CatchLoads loads, double slip, List<Step> steps, List<Caution> cautions) {}
