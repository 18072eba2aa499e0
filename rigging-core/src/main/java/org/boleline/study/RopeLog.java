package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * What a rope had to take, cut by cut, as worked out.
 *
 * <p>It does not replace inspection. Wear, knots, bends, wet and sunlight are not in it, and
 * makers' rules for retiring a rope come first.
 *
 * <p>Immutable and thread-safe.
 */
public final class RopeLog {
  /**
   * One pull.
   *
   * @param cut what the crew calls the cut
   * @param state the state with the greatest tension, such as {@code catch, let run}; empty if
   *     there is none
   * @param peak the greatest tension anywhere in the rope, or why there is none
   * @param strengthShare the peak over the stated breaking strength, or why there is none
   */
  public record Pull(String cut, String state, Found peak, Found strengthShare) {}

  private final String rope;
  private final double strength;
  private final List<Pull> pulls;
  private final @Nullable LifeCurve curve;

  private RopeLog(String rope, double strength, List<Pull> pulls, @Nullable LifeCurve curve) {
    this.rope = rope;
    this.strength = strength;
    this.pulls = List.copyOf(pulls);
    this.curve = curve;
  }

  /**
   * Obtains an empty log.
   *
   * @param rope what the rope is called, not null
   * @param breakingStrength its stated minimum breaking strength, above zero, not null
   * @return the log
   * @throws IllegalArgumentException if the strength is not above zero
   */
  public static RopeLog of(String rope, Quantity<Force> breakingStrength) {
    double strength = Si.value(breakingStrength, Kind.FORCE, "breakingStrength");
    if (!(strength > 0 && Double.isFinite(strength))) {
      throw new IllegalArgumentException("breakingStrength: wants a force above zero");
    }
    return new RopeLog(requireNonNull(rope, "rope"), strength, List.of(), null);
  }

  /**
   * Returns this log with one more cut: the greatest tension over its slow states and its catch, as
   * the plan states that.
   *
   * @param cut what the crew calls it, not null
   * @param evaluation the arrangement that was used, not null
   * @return the longer log; without a figure if the arrangement has none
   */
  public RopeLog with(String cut, Evaluation evaluation) {
    @Nullable Peak peak = Peak.greatest(evaluation);
    return peak == null
        ? with(cut, "", Reading.loadLeg().value(evaluation))
        : with(cut, peak.state(), Found.of(Figure.of(peak.tension(), Kind.FORCE)));
  }

  /**
   * Returns this log with one more pull, as measured.
   *
   * @param cut what the crew calls it, not null
   * @param measured the greatest tension, zero or more, not null
   * @return the longer log
   * @throws IllegalArgumentException if the tension is below zero
   */
  public RopeLog with(String cut, Quantity<Force> measured) {
    Figure figure = Figure.of(measured, Kind.FORCE);
    if (figure.si() < 0) {
      throw new IllegalArgumentException("measured: wants zero or more, got " + figure.text());
    }
    return with(cut, "measured", Found.of(figure));
  }

  private RopeLog with(String cut, String state, Found peak) {
    List<Pull> longer = new ArrayList<>(pulls);
    Found share = peak.figure().isPresent() ? Found.of(Figure.ofRatio(peak.si() / strength)) : peak;
    longer.add(new Pull(requireNonNull(cut, "cut"), state, peak, share));
    return new RopeLog(rope, strength, longer, curve);
  }

  /**
   * Returns this log with a curve of pulls to the end of life, which the user answers for.
   *
   * @param newCurve the curve, not null
   * @return the log
   */
  public RopeLog withCurve(LifeCurve newCurve) {
    return new RopeLog(rope, strength, pulls, requireNonNull(newCurve, "newCurve"));
  }

  /**
   * Returns the pulls.
   *
   * @return the pulls, in the order they were added
   */
  public List<Pull> pulls() {
    return pulls;
  }

  /**
   * Returns the share of the rope's life that the pulls have used by the user's curve, added up.
   *
   * @equation D = 1 / N (RNG-8, docs/theory/ranges.md)
   * @validity as the curve's; order of pulls and rest are left out
   * @source texts on fatigue; the curve is the user's
   * @accuracy unknown: an order of magnitude at best
   * @return the sum, 0 for an empty log; or why there is none: no curve was given, a pull has no
   *     figure, or one is above the curve
   */
  public Found damage() {
    if (curve == null) {
      return Found.none("no curve of pulls to the end of life was given");
    }
    double sum = 0;
    for (Pull pull : pulls) {
      Found damage =
          pull.strengthShare().figure().isPresent()
              ? curve.damage(pull.strengthShare().si())
              : pull.strengthShare();
      if (damage.figure().isEmpty()) {
        return Found.none("cut " + pull.cut() + ": " + damage.reason().orElseThrow());
      }
      sum += damage.si();
    }
    return Found.of(Figure.ofRatio(sum));
  }

  /**
   * Returns the log in parts.
   *
   * @return a line for each pull under the name of the rope; then the sum of damage, if there is a
   *     curve, and what the log leaves out
   */
  public RecordSection section() {
    List<RecordLine> lines = new ArrayList<>();
    lines.add(
        new RecordLine("Stated breaking strength", Figure.of(strength, Kind.FORCE).rounded()));
    for (Pull pull : pulls) {
      lines.add(
          new RecordLine(
              "Cut " + pull.cut(),
              pull.peak()
                  .figure()
                  .map(
                      peak ->
                          peak.rounded()
                              + ", "
                              + Figure.ofRatio(pull.strengthShare().si()).rounded()
                              + " of the strength ("
                              + pull.state()
                              + ")")
                  .orElseGet(() -> "no figure: " + pull.peak().reason().orElseThrow())));
    }
    if (curve != null) {
      Found damage = damage();
      lines.add(
          new RecordLine(
              "Damage by the curve of " + curve.source().id(),
              damage
                  .figure()
                  .map(Figure::rounded)
                  .orElseGet(() -> "no sum: " + damage.reason().orElseThrow())));
    }
    lines.add(
        new RecordLine(
            "Left out",
            "wear, knots, bends, wet, sunlight, order of pulls and rest; inspection and the maker's"
                + " rules for retiring the rope come first"));
    return new RecordSection("Rope: " + rope, lines);
  }

  /**
   * Returns the log as plain text.
   *
   * @return lines without ends
   */
  public List<String> lines() {
    return section().print();
  }

  @Override
  public String toString() {
    return rope + ", " + pulls.size() + " pulls";
  }
}
