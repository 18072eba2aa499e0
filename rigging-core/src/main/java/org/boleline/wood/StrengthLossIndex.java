package org.boleline.wood;

import java.util.List;
import org.boleline.explain.Formula;
import org.boleline.wood.Threshold.Side;

/**
 * Published indices of strength loss by decay, by name, with the thresholds their sources give.
 *
 * <p>They differ: one takes the third power of the diameters, another the fourth, a third looks at
 * the shell alone. None is the real loss of a section with an off-centre or open cavity. {@link
 * StrengthLoss} sets them beside the real loss.
 */
public enum StrengthLossIndex {
  /** Wagener 1963: third power of cavity over outer diameter. */
  WAGENER,

  /** Coder 1989: fourth power of cavity over outer diameter. */
  CODER,

  /** Smiley and Fraedrich 1992: third power, with a share for an opening. */
  SMILEY_FRAEDRICH,

  /**
   * Mattheck and others 1992, closed cavity: thinnest shell over radius.
   *
   * <p>Often misread. With a cavity in the centre, 0.30 is 49 percent of the area lost, but only 24
   * percent of the section modulus: 76 percent of the bending moment is left.
   */
  MATTHECK_SHELL,

  /** Mattheck and others 1992, open cavity: opening over circumference; a third is 120 degrees. */
  MATTHECK_OPENING;

  /**
   * Returns the equation.
   *
   * @return the formula
   */
  public Formula formula() {
    return switch (this) {
      case WAGENER -> WoodFormulas.WAGENER_INDEX;
      case CODER -> WoodFormulas.CODER_INDEX;
      case SMILEY_FRAEDRICH -> WoodFormulas.SMILEY_FRAEDRICH_INDEX;
      case MATTHECK_SHELL -> WoodFormulas.SHELL_RATIO;
      case MATTHECK_OPENING -> WoodFormulas.OPENING_RATIO;
    };
  }

  /**
   * Returns the thresholds that the source gives.
   *
   * @return at least one
   */
  public List<Threshold> thresholds() {
    return switch (this) {
      case WAGENER -> List.of(at("act", 0.33, Side.AT_OR_ABOVE));
      case CODER ->
          List.of(at("caution, to 0.44", 0.20, Side.AT_OR_ABOVE), at("hazard", 0.50, Side.ABOVE));
      case SMILEY_FRAEDRICH -> List.of(at("act", 0.33, Side.AT_OR_ABOVE));
      case MATTHECK_SHELL -> List.of(at("closed cavity: thin shell", 0.30, Side.BELOW));
      case MATTHECK_OPENING ->
          List.of(
              at("open cavity: more than 120 degrees of the circumference", 1.0 / 3, Side.ABOVE));
    };
  }

  private Threshold at(String meaning, double ratio, Side side) {
    return new Threshold(meaning, ratio, side, formula().source());
  }
}
