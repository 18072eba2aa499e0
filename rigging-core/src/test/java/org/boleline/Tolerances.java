package org.boleline;

import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;

/**
 * The tolerances of all tests, each with its reason. Tests use these names, not bare numbers.
 *
 * <p>Relative unless the name says absolute.
 */
public final class Tolerances {
  /** A closed formula against the same value by another route: some tens of roundings. */
  public static final double ROUNDING = 1e-13;

  /**
   * A closed formula against a source that gives an equation or an exact figure. Looser than {@link
   * #ROUNDING} because the other route may lose a few digits by cancellation.
   */
  public static final double EXACT = 1e-9;

  /**
   * The text of an equation, read and evaluated, against its code: some tens of roundings, and a
   * few digits lost where either takes a difference. Absolute for angles.
   */
  public static final double TEXT_AGAINST_CODE = 1e-12;

  /** A relative step to find a slope with: rounding over it is far below the slope. */
  public static final double ROOT_STEP = 1e-6;

  /**
   * Balance of a part of a stem against what the solution reports: own weight is summed over slices
   * of a shape known at stations only, as in the solution's own check.
   */
  public static final double BY_SLICES = 1e-6;

  /** Residual of a solution: largest unbalanced force or moment over the applied load. */
  public static final double RESIDUAL = 1e-9;

  /** A solved case against an independent solution of the same equations. */
  public static final double SOLVED_CASE = 1e-6;

  /**
   * A derivative against a central difference with a step of the cube root of machine precision:
   * truncation and rounding of the difference are both near 1e-10 then, times the curvature.
   */
  public static final double CENTRAL_DIFFERENCE = 1e-7;

  /**
   * A taut rope as a parabola against the catenary, over the square of weight over tension: the
   * chord is shorter than the rope by a 24th of that, and its ends' directions by as much.
   */
  public static final double TAUT_CATENARY = 0.1;

  /** A differential equation solved step by step to 1e-12 against its closed form. */
  public static final double INTEGRATED = 1e-9;

  /** Absolute counterpart of {@link #ROUNDING} for pure numbers and angles of order 1. */
  public static final double ROUNDING_ABSOLUTE = 1e-13;

  /**
   * A path length summed from 2000 great-circle pieces, each replacing an arc of at most 0.015 rad
   * on a small circle: off by a 24th of the cube of the piece, 3e-4 in all at 30 rad. Absolute.
   */
  public static final double SUMMED_CHORDS = 3e-4;

  /** A value printed to six figures: half a unit in the last one. */
  public static final double SIX_FIGURES = 5e-6;

  /**
   * Angle factors of two-leg tables, absolute: printed to two decimals, in places cut off instead
   * of rounded (1.87 for 1.8794, 1.84 for 1.8478), so off by nearly a whole last figure.
   */
  public static final double PRINTED_ANGLE_FACTOR = 0.0095;

  /** Block makers' examples worked with printed factors and rounded to 10 lb. */
  public static final double BLOCK_EXAMPLE = 0.01;

  /** Worked examples rounded to three figures. */
  public static final double THREE_FIGURES = 0.005;

  /** Worked examples rounded to four figures. */
  public static final double FOUR_FIGURES = 0.001;

  /**
   * Friction worked back from tensions printed to 1 kg, absolute: the source prints it to 0.01, and
   * half a kilogram in 35 kg moves it by 0.003 over a quarter to a half turn.
   */
  public static final double FRICTION_FROM_PRINTED_PAIR = 0.006;

  /**
   * Tackle tables of rigging handbooks, absolute: printed to two decimals from a factor that the
   * table does not print; the round factor that fits best leaves this.
   */
  public static final double TACKLE_TABLE = 0.052;

  /** Factors printed to three decimals, absolute; one row is off by more than half a figure. */
  public static final double PRINTED_SLING_FACTOR = 0.0015;

  /** Efficiencies told in round numbers such as "about 50 %", absolute. */
  public static final double ABOUT = 0.05;

  /** A popular text's "about 200 times". */
  public static final double ABOUT_TIMES = 0.1;

  /**
   * The angle between two unit vectors, and what friction makes of it: near a half turn a rounding
   * of the vectors moves the angle by far more. Absolute.
   */
  public static final double ANGLE_OF_VECTORS = 1e-8;

  /**
   * A stem's shape against the one integrated from its moments: the solver promises 1e-7 of the
   * movement, and the cubic between two stations of the profile loses about as much. Relative to
   * the length, and for angles absolute.
   */
  public static final double SHAPE_FROM_MOMENTS = 1e-5;

  /** A greatest stress against the greatest of a fine row of stations: what may lie between two. */
  public static final double BETWEEN_STATIONS = 1e-3;

  /**
   * Moment of own weight from some twenty slices instead of an integral. Of weight times length.
   */
  public static final double THIN_SLICES = 2e-3;

  /** What is left of a stem's give at a modulus of 1e13 Pa and 10 N: turns that differ a little. */
  public static final double ALL_BUT_RIGID = 1e-7;

  /** The same under the full force of a spar, relative: the anchor moves by some thousandths. */
  public static final double STIFF_SPAR = 1e-3;

  /**
   * The same problem in other numbers (turned, mirrored, scaled, in other units): where Newton's
   * method stops, in a stem that has kept most of its stiffness.
   */
  public static final double SAME_SOLUTION = 1e-8;

  /** The same problem cut into other cells: twice the solver's own 1e-7, with some room. */
  public static final double OTHER_CELLS = 5e-7;

  /** Movement in proportion to a load of some newtons: what a second-order term may add. */
  public static final double IN_PROPORTION = 1e-3;

  /**
   * The least stiffness ratio, absolute: the solver stops its search by an estimate of 1e-7, which
   * is some ten times too good where friction makes the tangent unsymmetric.
   */
  public static final double LEAST_EIGENVALUE = 1e-5;

  /** A bent stem stated by its leans at some thirty stations: second order in their distance. */
  public static final double MEASURED_LEANS = 1e-4;

  /** A bent stem stated by some thirty points on it: its kinks replace the bends between. */
  public static final double MEASURED_POINTS = 1e-3;

  /** A critical load found on the way to two different full loads. */
  public static final double CRITICAL_LOAD = 1e-6;

  /**
   * The elastica carried from a base reaction to the tip: place over length, moment over base
   * moment.
   */
  public static final double FROM_BASE_TO_TIP = 1e-8;

  /**
   * Linear beam elements of a taper against the bent stem under a load of a thousandth of a newton.
   */
  public static final double BEAM_ELEMENTS = 1e-6;

  /** Greenhill's constant in the form with the diameter, printed as 0.7883. */
  public static final double GREENHILL_CONSTANT = 0.5e-4 / 0.7883;

  /** Where a smooth curve is greatest, absolute in m: flat there, so less sharp than its value. */
  public static final double PLACE_OF_A_FLAT_TOP = 1e-3;

  /** A stem as 20 and as 40 stiff links, extrapolated: a stiffness ratio, absolute. */
  public static final double CHAIN_OF_LINKS = 2e-3;

  /** The same for stems bent into hooks, where a link spans much of a bend. */
  public static final double FAR_BENT_CHAIN = 2e-2;

  /**
   * A catch in equal steps of 2e-5 s against its closed form: second order in the step, which is
   * some hundredths of a radian of its fastest swing, and a start and an end of pull within a step.
   */
  public static final double SMALL_STEPS = 1e-5;

  /**
   * The same for catches drawn at random: some meet a rope that grows taut and slack in a few
   * steps.
   */
  public static final double STEPS_OF_RANDOM_CATCHES = 1e-4;

  /** A stem of 1e-5 kg for one without mass: what damping of its ringing takes. */
  public static final double ALL_BUT_MASSLESS = 1e-4;

  /** What the search for the pattern of passing leaves, in N, and its work, in J. Absolute. */
  public static final double LAID_ROPE = 1e-6;

  /** Free motion in 50 000 exact steps: what rounding adds up to. */
  public static final double ROUNDING_STEPS = 1e-9;

  /** The energy account of a catch in time, over what the fall has given, at any time. */
  public static final double ENERGY_ACCOUNT = 1e-6;

  /** A catch in time against the same model in closed form or seen in another way. */
  public static final double CATCH_IN_TIME = 1e-6;

  /** Catches that a Runge-Kutta 4(5) of independent code worked out: stated to hold to 0.3 %. */
  public static final double INDEPENDENT_STEPS = 0.003;

  /** An energy account in which rounding alone is left open, over some tens of sums. */
  public static final double ACCOUNT = 1e-12;

  /** A sum over 20 000 trapezoids of a smooth curve. */
  public static final double TRAPEZOIDS = 1e-7;

  /** Movement of points by a millionth against the first order in it. */
  public static final double FIRST_ORDER = 1e-5;

  /** The power with which a difference falls, absolute, one decade above its limit. */
  public static final double POWER = 0.02;

  /**
   * Means over ten thousand to a hundred thousand scrambled Sobol points, absolute for numbers of
   * order 1: several times the spread over scrambles.
   */
  public static final double MANY_SAMPLES = 2e-3;

  /** A share from its quantile and back: near the ends, cancellation in 2p - 1 and in erfc. */
  public static final double BACK_FROM_A_TAIL = 1e-6;

  /** Quantiles of another library, which finds some of them by a search to 1e-9 of the value. */
  public static final double OTHER_QUANTILES = 1e-8;

  private Tolerances() {}

  /**
   * Half a unit in the last printed figure: what rounding of a printed value takes away.
   *
   * @param lastFigure value of one unit of the last figure, such as 0.01
   * @return the absolute bound, with room for the doubles themselves
   */
  public static Offset<Double> printedTo(double lastFigure) {
    return Offset.offset(0.5 * lastFigure * (1 + EXACT));
  }

  /**
   * One unit in the last printed figure: for sources that cut figures off instead of rounding.
   *
   * @param lastFigure value of one unit of the last figure, such as 0.01
   * @return the absolute bound, with room for the doubles themselves
   */
  public static Offset<Double> cutOffTo(double lastFigure) {
    return Offset.offset(lastFigure * (1 + EXACT));
  }

  /**
   * A relative bound in the form of the assertion library.
   *
   * @param fraction the bound as a fraction, such as {@link #EXACT}
   * @return the same in percent
   */
  public static Percentage relative(double fraction) {
    return Percentage.withPercentage(100 * fraction);
  }

  /**
   * An absolute bound in the form of the assertion library.
   *
   * @param bound the bound, in the unit of the compared values
   * @return the same as an offset
   */
  public static Offset<Double> absolute(double bound) {
    return Offset.offset(bound);
  }

  /**
   * Places read back from a picture, in metres: its coordinates are written to 1e-5 pixels, and a
   * sheet shows at least ten pixels to the metre unless the site is wider than 70 m.
   */
  public static final double DRAWN = 1e-6;

  /** Lengths on the sheet of a picture, in pixels: a few roundings of its 1e-5. */
  public static final double ON_SHEET = 5e-5;
}
