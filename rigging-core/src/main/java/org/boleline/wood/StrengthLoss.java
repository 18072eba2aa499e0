package org.boleline.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Step;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * What a cavity takes from a section: published indices by name, beside the real loss.
 *
 * <p>The indices are read from two diameters and do not see where the cavity lies. The real losses
 * are of area, second moment of area and section modulus, in the worst direction, and are known for
 * a closed cavity only. Whether a tree is to be worked on is for the competent person on site.
 *
 * <p>Immutable and thread-safe; equality is exact, on section and opening.
 *
 * <pre>{@code
 * StrengthLoss loss = StrengthLoss.of(Section.shell(centimetres(40), centimetres(6)));
 * loss.index(StrengthLossIndex.WAGENER); // 0.343
 * loss.sectionModulusShareLost(); // 0.240: a shell of 0.3 of the radius keeps 76 percent
 * }</pre>
 */
public final class StrengthLoss {
  private final Section section;
  private final double opening;

  private StrengthLoss(Section section, double opening) {
    this.section = section;
    this.opening = opening;
  }

  /**
   * Obtains the loss by a closed cavity.
   *
   * @param section the section, not null
   * @return the loss
   */
  public static StrengthLoss of(Section section) {
    return of(section, Si.of(0, Kind.LENGTH));
  }

  /**
   * Obtains the loss by a cavity with an opening.
   *
   * @param section the section as if the cavity were closed, not null
   * @param opening width of the opening along the bark, from zero to the circumference, not null
   * @return the loss; the real losses are not known if the opening is above zero
   * @throws IllegalArgumentException if the opening is outside its range
   */
  public static StrengthLoss of(Section section, Quantity<Length> opening) {
    double circumference = Math.PI * Si.value(section.outer(), Kind.LENGTH, "outer");
    return new StrengthLoss(
        section, Bounds.between(opening, Kind.LENGTH, 0, circumference, "opening"));
  }

  /**
   * Returns the section.
   *
   * @return the section, as if the cavity were closed
   */
  public Section section() {
    return section;
  }

  /**
   * Returns the width of the opening.
   *
   * @return the width along the bark in metres, zero if the cavity is closed
   */
  public Quantity<Length> opening() {
    return Si.of(opening, Kind.LENGTH);
  }

  /**
   * Returns a published index.
   *
   * @param name which one, not null
   * @return its value, from 0 to 1
   */
  public double index(StrengthLossIndex name) {
    return step(name).result();
  }

  /**
   * Returns the published thresholds that an index has passed.
   *
   * @param name which index, not null
   * @return the thresholds, in the order of the index; empty if it passes none
   */
  public List<Threshold> thresholdsPassed(StrengthLossIndex name) {
    double index = index(name);
    return name.thresholds().stream().filter(threshold -> threshold.isPassedBy(index)).toList();
  }

  /**
   * Returns the real loss of area.
   *
   * @return the share of the area of solid wood that is lost, from 0 to 1; empty if the cavity is
   *     open
   */
  public OptionalDouble areaShareLost() {
    return loss(section.areaShare());
  }

  /**
   * Returns the real loss of second moment of area, in the worst direction.
   *
   * @return the share of that of solid wood that is lost, from 0 to 1; empty if the cavity is open
   */
  public OptionalDouble secondMomentShareLost() {
    return loss(section.secondMomentShare());
  }

  /**
   * Returns the real loss of section modulus, and so of bending strength, in the worst direction.
   *
   * @return the share of that of solid wood that is lost, from 0 to 1; empty if the cavity is open
   */
  public OptionalDouble sectionModulusShareLost() {
    return loss(section.sectionModulusShare());
  }

  /**
   * Returns the steps: those of the section, the real losses of a closed cavity, and the indices.
   *
   * @return the steps, in order
   */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>(section.steps());
    if (opening == 0) {
      steps.add(WoodFormulas.LOSS.step(section.areaShare()));
      steps.add(WoodFormulas.LOSS.step(section.secondMomentShare()));
      steps.add(WoodFormulas.LOSS.step(section.sectionModulusShare()));
    }
    for (StrengthLossIndex name : StrengthLossIndex.values()) {
      steps.add(step(name));
    }
    return List.copyOf(steps);
  }

  private OptionalDouble loss(double left) {
    return opening == 0 ? OptionalDouble.of(WoodFormulas.LOSS.value(left)) : OptionalDouble.empty();
  }

  private Step step(StrengthLossIndex name) {
    double outer = Si.value(section.outer(), Kind.LENGTH, "outer");
    double cavity = Si.value(section.cavity(), Kind.LENGTH, "cavity");
    return switch (name) {
      case WAGENER, CODER -> name.formula().step(outer, cavity);
      case SMILEY_FRAEDRICH ->
          name.formula().step(outer, cavity, WoodFormulas.OPENING_RATIO.value(opening, outer));
      case MATTHECK_SHELL -> section.shellStep();
      case MATTHECK_OPENING -> name.formula().step(opening, outer);
    };
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof StrengthLoss s
        && section.equals(s.section)
        && Double.compare(opening, s.opening) == 0;
  }

  @Override
  public int hashCode() {
    return 31 * section.hashCode() + Double.hashCode(opening);
  }

  @Override
  public String toString() {
    return section + (opening == 0 ? "" : ", opening " + Bounds.text(opening, Kind.LENGTH));
  }
}
