package org.boleline.study;

import java.util.Objects;
import org.boleline.internal.sampling.NormalKernel;
import org.boleline.units.QuantityText;

/**
 * How far an input may be off: an interval, or a distribution.
 *
 * <p>An interval says that the input lies between its ends and no more: nothing in between is
 * likelier. A distribution says how likely.
 *
 * <p>Immutable and thread-safe; equality is exact.
 */
public final class Spread {
  private enum Form {
    INTERVAL("interval"),
    UNIFORM("uniform"),
    TRIANGULAR("triangular"),
    NORMAL("normal"),
    LOGNORMAL("lognormal");

    final String text;

    Form(String text) {
      this.text = text;
    }
  }

  /**
   * A value that a share of all draws stays below.
   *
   * @param share the share, above 0 and below 1
   * @param value the value
   */
  public record Quantile(double share, Figure value) {}

  private final Form form;
  private final Figure like;
  private final double first;
  private final double second;
  private final double third;
  private final double least;
  private final double most;

  /** Two ends, and the likeliest value; or mean and deviation (of the logarithm), then 0. */
  private Spread(
      Form form,
      Figure like,
      double first,
      double second,
      double third,
      double least,
      double most) {
    this.form = form;
    this.like = like;
    this.first = first;
    this.second = second;
    this.third = third;
    this.least = least;
    this.most = most;
  }

  private static Spread ends(Form form, Figure least, Figure likeliest, Figure most) {
    least.requireKind(most.kind().orElse(null));
    least.requireKind(likeliest.kind().orElse(null));
    double a = least.si();
    double b = most.si();
    double c = likeliest.si();
    if (!(a < b)) {
      throw new IllegalArgumentException(
          "most: wants more than " + least.text() + ", got " + most.text());
    }
    if (!(a <= c && c <= b)) {
      throw new IllegalArgumentException(
          "likeliest: wants from "
              + least.text()
              + " to "
              + most.text()
              + ", got "
              + likeliest.text());
    }
    return new Spread(form, least, a, b, c, a, b);
  }

  /**
   * Obtains an interval.
   *
   * @param least lower end, not null
   * @param most upper end, above the lower one, of the same kind, not null
   * @return the spread
   * @throws IllegalArgumentException if the ends are not in order or not of one kind
   */
  public static Spread interval(Figure least, Figure most) {
    return ends(Form.INTERVAL, least, least, most);
  }

  /**
   * Obtains a distribution that is even between two ends.
   *
   * @param least lower end, not null
   * @param most upper end, above the lower one, of the same kind, not null
   * @return the spread
   * @throws IllegalArgumentException if the ends are not in order or not of one kind
   */
  public static Spread uniform(Figure least, Figure most) {
    return ends(Form.UNIFORM, least, least, most);
  }

  /**
   * Obtains a distribution whose density rises straight to a likeliest value and falls straight.
   *
   * @param least lower end, not null
   * @param likeliest where it is densest, from the lower to the upper end, not null
   * @param most upper end, above the lower one, not null
   * @return the spread
   * @throws IllegalArgumentException if the figures are not in order or not of one kind
   */
  public static Spread triangular(Figure least, Figure likeliest, Figure most) {
    return ends(Form.TRIANGULAR, least, likeliest, most);
  }

  private static Spread bell(Form form, Figure like, double mean, double deviation) {
    if (!(deviation > 0 && Double.isFinite(deviation) && Double.isFinite(mean))) {
      throw new IllegalArgumentException(
          "deviation: wants a spread above zero, got "
              + (Double.isFinite(deviation) ? QuantityText.number(deviation) : "no finite number"));
    }
    return new Spread(
        form,
        like,
        mean,
        deviation,
        0,
        form == Form.LOGNORMAL ? 0 : Double.NEGATIVE_INFINITY,
        Double.POSITIVE_INFINITY);
  }

  private static double variation(double variationRatio) {
    if (!(variationRatio > 0 && variationRatio <= 2)) {
      throw new IllegalArgumentException(
          "variation: wants a number above 0, to 2, got " + variationRatio);
    }
    return variationRatio;
  }

  /**
   * Obtains a normal distribution from its mean and its coefficient of variation.
   *
   * @param mean the mean, not zero, not null
   * @param variationRatio standard deviation over mean, above 0, to 2
   * @return the spread
   * @throws IllegalArgumentException if the ratio is outside that or the mean is zero
   */
  public static Spread normal(Figure mean, double variationRatio) {
    return bell(Form.NORMAL, mean, mean.si(), variation(variationRatio) * Math.abs(mean.si()));
  }

  /**
   * Obtains a normal distribution from its mean and its standard deviation.
   *
   * @param mean the mean, not null
   * @param deviation the standard deviation, above zero, of the same kind, not null
   * @return the spread
   * @throws IllegalArgumentException if the deviation is not above zero or of another kind
   */
  public static Spread normal(Figure mean, Figure deviation) {
    deviation.requireKind(mean.kind().orElse(null));
    return bell(Form.NORMAL, mean, mean.si(), deviation.si());
  }

  /**
   * Obtains a lognormal distribution from its mean and its coefficient of variation.
   *
   * @equation s = sqrt(ln(1 + v^2)); x_50 = m * exp(-s^2 / 2) (RNG-1, RNG-2, docs/theory/ranges.md)
   * @validity inputs above zero
   * @source statistics texts
   * @accuracy rounding only
   * @param mean the mean, above zero, not null
   * @param variationRatio standard deviation over mean, above 0, to 2
   * @return the spread
   * @throws IllegalArgumentException if the ratio is outside that or the mean is not above zero
   */
  public static Spread lognormal(Figure mean, double variationRatio) {
    aboveZero("mean", mean);
    double s = RangeFormulas.LOG_DEVIATION_OF_VARIATION.value(variation(variationRatio));
    return bell(
        Form.LOGNORMAL, mean, Math.log(RangeFormulas.LOGNORMAL_MEDIAN.value(mean.si(), s)), s);
  }

  private static void aboveZero(String name, Figure figure) {
    if (!(figure.si() > 0)) {
      throw new IllegalArgumentException(
          name + ": wants a figure above zero, got " + figure.text());
    }
  }

  /**
   * Obtains a normal distribution from two of its quantiles.
   *
   * @param lower a quantile, not null
   * @param upper one of a greater share and a greater value, not null
   * @return the spread
   * @throws IllegalArgumentException if shares or values are not in order, or not of one kind
   */
  public static Spread normal(Quantile lower, Quantile upper) {
    return quantiles(Form.NORMAL, lower, upper, lower.value().si(), upper.value().si());
  }

  /**
   * Obtains a lognormal distribution from two of its quantiles.
   *
   * @param lower a quantile, its value above zero, not null
   * @param upper one of a greater share and a greater value, not null
   * @return the spread
   * @throws IllegalArgumentException if shares or values are not in order, not above zero, or not
   *     of one kind
   */
  public static Spread lognormal(Quantile lower, Quantile upper) {
    aboveZero("lower", lower.value());
    aboveZero("upper", upper.value());
    return quantiles(
        Form.LOGNORMAL, lower, upper, Math.log(lower.value().si()), Math.log(upper.value().si()));
  }

  private static Spread quantiles(Form form, Quantile lower, Quantile upper, double a, double b) {
    lower.value().requireKind(upper.value().kind().orElse(null));
    if (!(lower.share() > 0 && lower.share() < upper.share() && upper.share() < 1 && a < b)) {
      throw new IllegalArgumentException(
          "upper: wants a greater share and value than the lower quantile, got "
              + upper.value().text());
    }
    double p = NormalKernel.quantile(lower.share());
    double q = NormalKernel.quantile(upper.share());
    double deviation = (b - a) / (q - p);
    return bell(form, lower.value(), a - p * deviation, deviation);
  }

  /**
   * Cuts the distribution off below a figure; what remains is made whole again.
   *
   * @param figure the least value, below all that is allowed above, not null
   * @return the cut distribution
   * @throws IllegalArgumentException if this is an interval, or nothing remains
   */
  public Spread atLeast(Figure figure) {
    return cut("atLeast", figure, figure.si(), most);
  }

  /**
   * Cuts the distribution off above a figure; what remains is made whole again.
   *
   * @param figure the greatest value, above all that is allowed below, not null
   * @return the cut distribution
   * @throws IllegalArgumentException if this is an interval, or nothing remains
   */
  public Spread atMost(Figure figure) {
    return cut("atMost", figure, least, figure.si());
  }

  private Spread cut(String name, Figure figure, double from, double to) {
    figure.requireKind(like.kind().orElse(null));
    if (isInterval() || !(share(to) - share(from) > 0)) {
      throw new IllegalArgumentException(
          name + ": wants a cut that leaves some of a distribution, got " + figure.text());
    }
    return new Spread(form, like, first, second, third, from, to);
  }

  /**
   * Tells whether this is an interval, of which no chances follow.
   *
   * @return true for an interval; false for a distribution
   */
  public boolean isInterval() {
    return form == Form.INTERVAL;
  }

  /** Returns a figure of what this is a spread of. */
  Figure like() {
    return like;
  }

  /**
   * Returns the value that a share of all draws stays below.
   *
   * <p>Of an interval: the value at that share of its length; a place in it, not a chance.
   *
   * @param share the share, above 0 and below 1
   * @return the value, of the kind of the input
   * @throws IllegalArgumentException if the share is not between 0 and 1
   */
  public Figure quantile(double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("share: wants a number above 0 and below 1, got " + share);
    }
    return Figure.of(at(share), like.kind().orElse(null));
  }

  /** The same in the SI unit, unchecked. */
  double at(double u) {
    if (form == Form.INTERVAL) {
      return u == 1 ? second : first + u * (second - first);
    }
    boolean whole = share(least) <= 0 && share(most) >= 1;
    double p = whole ? u : share(least) + u * (share(most) - share(least));
    return Math.min(Math.max(inverse(p), least), most);
  }

  private double inverse(double p) {
    return switch (form) {
      case INTERVAL, UNIFORM -> first + p * (second - first);
      case TRIANGULAR -> {
        double width = second - first;
        double rising = third - first;
        yield p * width <= rising
            ? first + Math.sqrt(p * width * rising)
            : second - Math.sqrt((1 - p) * width * (second - third));
      }
      case NORMAL -> first + second * normal(p);
      case LOGNORMAL -> Math.exp(first + second * normal(p));
    };
  }

  /** Within what a double can tell from 0 and 1. */
  private static double normal(double p) {
    return NormalKernel.quantile(Math.min(Math.max(p, 0x1p-53), 1 - 0x1p-53));
  }

  /** Share of draws below a value before any cut. */
  private double share(double x) {
    return switch (form) {
      case INTERVAL, UNIFORM -> Math.min(Math.max((x - first) / (second - first), 0), 1);
      case TRIANGULAR -> {
        double width = second - first;
        if (x <= first || x >= second) {
          yield x <= first ? 0 : 1;
        }
        yield x < third
            ? (x - first) * (x - first) / (width * (third - first))
            : 1 - (second - x) * (second - x) / (width * (second - third));
      }
      case NORMAL -> NormalKernel.share((x - first) / second);
      case LOGNORMAL -> x <= 0 ? 0 : NormalKernel.share((Math.log(x) - first) / second);
    };
  }

  /**
   * Returns the spread in words.
   *
   * @return for instance {@code normal, median 8 GPa, 5 to 95 percent: 6 GPa to 10 GPa}
   */
  public String words() {
    return form == Form.INTERVAL
        ? "interval, " + text(first) + " to " + text(second)
        : form.text
            + ", median "
            + text(at(0.5))
            + ", 5 to 95 percent: "
            + text(at(0.05))
            + " to "
            + text(at(0.95));
  }

  private String text(double si) {
    return Figure.of(si, like.kind().orElse(null)).rounded();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Spread s
        && form == s.form
        && like.kind().equals(s.like.kind())
        && Double.compare(first, s.first) == 0
        && Double.compare(second, s.second) == 0
        && Double.compare(third, s.third) == 0
        && Double.compare(least, s.least) == 0
        && Double.compare(most, s.most) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(form, like.kind(), first, second, third, least, most);
  }

  @Override
  public String toString() {
    return words();
  }
}
