package org.boleline.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.boleline.explain.Step;
import org.boleline.statics.Share;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Why the moment at the base of a stem is what it is: the free body of the stem in numbers, each
 * force by its arm.
 *
 * @param parts one for each origin that acts, in the order of the result; they add up to the moment
 * @param sentence the same in one sentence
 */
public record Why(List<Part> parts, String sentence) {
  /**
   * What one origin adds.
   *
   * @param origin where it comes from
   * @param force magnitude of its force
   * @param moment its part of the moment, along the whole; negative where it relieves
   * @param arm moment over force; none for a couple without a force
   * @param steps the steps that gave moment and arm
   */
  public record Part(
      Share.Origin origin, Figure force, Figure moment, Found arm, List<Step> steps) {
    /**
     * Makes a part.
     *
     * @param origin where it comes from
     * @param force magnitude of its force
     * @param moment its part of the moment, along the whole; negative where it relieves
     * @param arm moment over force; none for a couple without a force
     * @param steps the steps that gave moment and arm
     */
    public Part {
      steps = List.copyOf(steps);
    }
  }

  /**
   * Makes it.
   *
   * @param parts one for each origin that acts
   * @param sentence the same in one sentence
   */
  public Why {
    parts = List.copyOf(parts);
  }

  /**
   * Explains the moment at the base of a stem.
   *
   * @equation M = sum of p, p = a . m / M, r = p / F (STU-2, STU-3, docs/theory/studies.md)
   * @validity any stable state
   * @source statics
   * @accuracy as the result; the parts add up to it to 1e-9
   * @param stem the stem in a stable state, not null
   * @return the explanation; without parts if the moment is zero
   */
  public static Why of(StemResult stem) {
    double[] whole = new double[3];
    for (Share share : stem.shares()) {
      double[] m = share.moment().in(Kind.MOMENT);
      for (int d = 0; d < 3; d++) {
        whole[d] += m[d];
      }
    }
    double size = Math.sqrt(whole[0] * whole[0] + whole[1] * whole[1] + whole[2] * whole[2]);
    List<Part> parts = new ArrayList<>();
    StringBuilder sentence = new StringBuilder("base moment ").append(print(size)).append(" N.m");
    if (size > 0) {
      for (Share share : stem.shares()) {
        Part part = part(share, whole);
        if (part.force.si() > 0 || part.moment.si() != 0) {
          sentence.append(parts.isEmpty() ? " = " : " + ").append(words(part));
          parts.add(part);
        }
      }
    }
    return new Why(parts, sentence.toString());
  }

  private static Part part(Share share, double[] whole) {
    double[] m = share.moment().in(Kind.MOMENT);
    double force = Si.value(share.force().magnitude(), Kind.FORCE, "force");
    List<Step> steps = new ArrayList<>();
    Step along = StudyFormulas.PART_ALONG.step(m[0], m[1], m[2], whole[0], whole[1], whole[2]);
    steps.add(along);
    Found arm = Found.none("no force");
    if (force > 0) {
      Step step = StudyFormulas.ARM.step(along.result(), force);
      steps.add(step);
      arm = Found.of(Figure.of(step.result(), Kind.LENGTH));
    }
    return new Part(
        share.origin(),
        Figure.of(force, Kind.FORCE),
        Figure.of(along.result(), Kind.MOMENT),
        arm,
        steps);
  }

  private static String words(Part part) {
    String name = part.origin.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    return part.arm.figure().isEmpty()
        ? name + " " + print(part.moment.si()) + " N.m"
        : name + " " + print(part.force.si()) + " N x " + print(part.arm.si()) + " m";
  }

  private static String print(double value) {
    return QuantityText.number(value, 4);
  }
}
