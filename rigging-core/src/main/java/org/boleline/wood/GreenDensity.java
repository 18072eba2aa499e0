package org.boleline.wood;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.boleline.explain.Datum;
import org.boleline.explain.Source;
import org.boleline.explain.Source.Reading;
import org.boleline.explain.Step;
import org.boleline.units.Density;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * Green density of a species: an interval, because no one figure holds for a log.
 *
 * <p>A log is part heartwood, part sapwood, and both dry and wet with the season. The interval runs
 * from the least to the greatest of: heartwood and sapwood, from specific gravity and moisture; and
 * a published figure for whole logs. Tables of different age disagree by up to a fourth. Where only
 * one figure is known, both ends are that figure; the real spread is then not known.
 *
 * <p>Immutable and thread-safe; equality is exact, on the figures and their sources.
 */
public final class GreenDensity {
  private record Figure(String name, double value, Source source, @Nullable Step step) {
    Datum datum() {
      return new Datum(name, Bounds.text(value, Kind.DENSITY), source, null);
    }
  }

  private final List<Figure> figures;
  private final Step middle;

  private GreenDensity(List<Figure> figures) {
    this.figures = List.copyOf(figures);
    double least = figures.stream().mapToDouble(Figure::value).min().orElseThrow();
    double most = figures.stream().mapToDouble(Figure::value).max().orElseThrow();
    this.middle = WoodFormulas.MIDDLE_DENSITY.step(least, most);
  }

  static @Nullable GreenDensity from(Species species) {
    List<Figure> figures = new ArrayList<>();
    Species.@Nullable Entry gravity = species.entry(SpeciesProperty.BASIC_SPECIFIC_GRAVITY);
    if (gravity != null) {
      add(figures, "heartwood", gravity, species.entry(SpeciesProperty.HEARTWOOD_MOISTURE));
      add(figures, "sapwood", gravity, species.entry(SpeciesProperty.SAPWOOD_MOISTURE));
    }
    Species.@Nullable Entry published = species.entry(SpeciesProperty.GREEN_DENSITY);
    if (published != null) {
      figures.add(new Figure("whole logs", published.value(), published.source(), null));
    }
    return figures.isEmpty() ? null : new GreenDensity(figures);
  }

  private static void add(
      List<Figure> figures, String name, Species.Entry gravity, Species.@Nullable Entry moisture) {
    if (moisture == null) {
      return;
    }
    Step step = WoodFormulas.GREEN_DENSITY.step(gravity.value(), moisture.value());
    List<Source> sources = List.of(gravity.source(), moisture.source());
    figures.add(new Figure(name, step.result(), joined("WOO-1", sources), step));
  }

  /** One source for a figure got from several: from memory if one of them is. */
  private static Source joined(String formula, List<Source> sources) {
    List<Source> distinct = sources.stream().distinct().toList();
    String ids = distinct.stream().map(Source::id).collect(Collectors.joining(", "));
    String titles = distinct.stream().map(Source::title).collect(Collectors.joining("; "));
    boolean fromMemory = distinct.stream().anyMatch(s -> s.reading() == Reading.FROM_MEMORY);
    return new Source(
        formula + ": " + ids, titles, fromMemory ? Reading.FROM_MEMORY : Reading.DERIVED);
  }

  /**
   * Returns the least figure known.
   *
   * @return the density in kilograms per cubic metre
   */
  public Quantity<Density> least() {
    return Si.of(middle.input(0), Kind.DENSITY);
  }

  /**
   * Returns the greatest figure known.
   *
   * @return the density in kilograms per cubic metre
   */
  public Quantity<Density> most() {
    return Si.of(middle.input(1), Kind.DENSITY);
  }

  /**
   * Returns the middle of the interval: what is taken where no density is stated.
   *
   * @equation rho = (rho_least + rho_most) / 2 (WOO-4)
   * @validity stands for a log of unknown shares of heartwood and sapwood; weigh a piece to know
   * @source the value never farther than half the interval from either end
   * @accuracy rounding only
   * @return the density in kilograms per cubic metre
   */
  public Quantity<Density> middle() {
    return Si.of(middle.result(), Kind.DENSITY);
  }

  /**
   * Tells in words how the middle was chosen.
   *
   * @return one sentence without a full stop
   */
  public String choice() {
    if (figures.size() == 1) {
      return "the only figure known, "
          + figures.get(0).name()
          + "; tables of different age disagree by up to 25 percent";
    }
    return "half-way between "
        + Bounds.text(middle.input(0), Kind.DENSITY)
        + " and "
        + Bounds.text(middle.input(1), Kind.DENSITY)
        + ", the least and the greatest of "
        + figures.stream().map(Figure::name).collect(Collectors.joining(", "));
  }

  /**
   * Returns the figures that make the interval.
   *
   * @return one to three data: heartwood, sapwood, whole logs, as far as known
   */
  public List<Datum> figures() {
    return figures.stream().map(Figure::datum).toList();
  }

  /**
   * Returns the middle as a datum, for lists of what was taken.
   *
   * @return name {@code density}, the middle, its sources and {@link #choice()} as the spread
   */
  public Datum datum() {
    Source source =
        figures.size() == 1
            ? figures.get(0).source()
            : joined("WOO-4", figures.stream().map(Figure::source).toList());
    return new Datum("density", Bounds.text(middle.result(), Kind.DENSITY), source, choice());
  }

  /**
   * Returns the steps from the data to the middle.
   *
   * @return the steps, in order
   */
  public List<Step> steps() {
    List<Step> steps = new ArrayList<>();
    for (Figure figure : figures) {
      if (figure.step() != null) {
        steps.add(figure.step());
      }
    }
    steps.add(middle);
    return List.copyOf(steps);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof GreenDensity g && figures().equals(g.figures());
  }

  @Override
  public int hashCode() {
    return figures().hashCode();
  }

  @Override
  public String toString() {
    return Bounds.text(middle.result(), Kind.DENSITY) + ", " + choice();
  }
}
