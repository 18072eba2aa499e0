package org.boleline.picture;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.Extreme;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;
import org.boleline.statics.StemProfile;
import org.boleline.statics.StemResult;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * Bending moment and fibre stress along a stem, of all arrangements on shared axes.
 *
 * <p>The greatest of each is marked with its station: often it is not at the base. A held load has
 * two lines: about to run and about to rise. Immutable and thread-safe.
 */
public final class BendingStrip {
  private final String svg;

  private BendingStrip(String svg) {
    this.svg = svg;
  }

  /**
   * Obtains the strip of one stem.
   *
   * @param result the analysis, not null
   * @param stem id of a stem of its plan, not null
   * @param spec how the picture is wanted; it uses size, theme and units, not null
   * @return the strip; arrangements without a stable state are left out and named
   * @throws IllegalArgumentException if the plan has no such stem
   */
  public static BendingStrip of(StaticResult result, String stem, PictureSpec spec) {
    requireNonNull(stem, "stem");
    requireNonNull(spec, "spec");
    Stem stated =
        result.plan().stems().stream()
            .filter(s -> s.id().equals(stem))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("stem: none named " + stem));
    List<Line> lines = new ArrayList<>();
    List<String> left = new ArrayList<>();
    for (int i = 0; i < result.arrangements().size(); i++) {
      ArrangementResult arrangement = result.arrangements().get(i);
      if (arrangement instanceof Solution solution) {
        String number = Integer.toString(i + 1);
        Solution rise = solution.otherEnd().orElse(null);
        if (rise == null) {
          lines.add(new Line(number, number + " ", stated, solution, stem));
        } else {
          lines.add(new Line(number + " run", number + " about to run: ", stated, solution, stem));
          lines.add(new Line(number + " rise", number + " about to rise: ", stated, rise, stem));
        }
      } else {
        left.add((i + 1) + " " + arrangement.id());
      }
    }
    return new BendingStrip(drawn(result, stated, spec, lines, left));
  }

  /**
   * Returns the picture.
   *
   * @return an SVG element as text, to be a file of its own or part of a page
   */
  public String svg() {
    return svg;
  }

  /** What is drawn of one arrangement, or of one end of a held one, in SI units. */
  private static final class Line {
    final String mark;
    final String name;
    final Extreme extreme;
    final double greatestMoment;
    final double momentAt;
    final List<Double> stations = new ArrayList<>();
    final List<Double> moments = new ArrayList<>();
    final List<Double> stressStations = new ArrayList<>();
    final List<Double> stresses = new ArrayList<>();

    Line(String mark, String before, Stem stated, Solution solution, String stem) {
      this.mark = mark;
      name = before + solution.id();
      StemResult found = solution.stem(stem).orElseThrow();
      StemProfile profile = found.profile();
      double[] at = profile.stations(Kind.LENGTH);
      double[][] moment = profile.moments(Kind.MOMENT);
      double[] bending = profile.bendingStress(Kind.PRESSURE);
      double[] axial = profile.axialStress(Kind.PRESSURE);
      int most = 0;
      for (int i = 0; i < at.length; i++) {
        stations.add(at[i]);
        moments.add(Place.of(moment[i]).length());
        most = moments.get(i) > moments.get(most) ? i : most;
        stressStations.add(at[i]);
        stresses.add(bending[i] + Math.abs(axial[i]));
        above(stated.diameters(), at[i], bending[i], Math.abs(axial[i]));
      }
      greatestMoment = moments.get(most);
      momentAt = at[most];
      extreme =
          pascals(found.tensionStress()) > pascals(found.compressionStress())
              ? found.tensionStress()
              : found.compressionStress();
    }

    /** Where the section steps, the stress just above: the same moment and force on it. */
    private void above(Diameters diameters, double at, double bending, double axial) {
      double[] entries = diameters.stations(Kind.LENGTH);
      double[] outer = diameters.outer(Kind.LENGTH);
      double[] cavity = diameters.cavity(Kind.LENGTH);
      for (int i = 1; i < entries.length; i++) {
        if (entries[i] == at && entries[i - 1] == at) {
          stressStations.add(at);
          stresses.add(
              bending * modulus(outer[i - 1], cavity[i - 1]) / modulus(outer[i], cavity[i])
                  + axial * area(outer[i - 1], cavity[i - 1]) / area(outer[i], cavity[i]));
        }
      }
    }

    private static double modulus(double outer, double cavity) {
      return (Math.pow(outer, 4) - Math.pow(cavity, 4)) / outer;
    }

    private static double area(double outer, double cavity) {
      return outer * outer - cavity * cavity;
    }

    double stressAt() {
      return Si.value(extreme.at(), Kind.LENGTH, "at");
    }
  }

  private static double pascals(Extreme extreme) {
    return Si.value(extreme.value(), Kind.PRESSURE, "stress");
  }

  private static String drawn(
      StaticResult result, Stem stem, PictureSpec spec, List<Line> lines, List<String> left) {
    PictureUnits units = spec.units();
    List<String> headings = new ArrayList<>();
    headings.add(result.plan().title().isEmpty() ? "Bending" : result.plan().title());
    headings.add("Bending along " + stem.id() + ", from its base to its tip");
    if (!left.isEmpty()) {
      headings.add("Without a stable state, and not drawn: " + String.join("; ", left));
    }
    StringBuilder words = new StringBuilder();
    for (Line line : lines) {
      words.append(line.name).append(": greatest moment ");
      words.append(units.moment(line.greatestMoment)).append(at(line.momentAt, units));
      words.append(", greatest fibre stress ").append(units.stress(pascals(line.extreme)));
      words.append(at(line.stressAt(), units)).append(". ");
    }
    Sheet sheet = new Sheet(spec, headings.get(0) + ": bending", headings, words.toString());
    Legend legend = Chart.legend(sheet, lines.stream().map(line -> line.name).toList());
    Rect body = sheet.body();
    double foot = body.bottom() - legend.height(body.width());
    List<Rect> panels = Chart.panels(new Rect(body.left(), body.top(), body.right(), foot - 6), 2);
    if (Chart.isTooSmall(panels.get(0))) {
      return sheet.tooSmall();
    }
    double length = units.lengths(Si.value(stem.length(), Kind.LENGTH, "length"));
    Chart moments = new Chart(sheet, panels.get(0), length);
    Chart stresses = new Chart(sheet, panels.get(1), length);
    for (Line line : lines) {
      moments.add(
          line.stations.stream().mapToDouble(units::lengths).toArray(),
          line.moments.stream().mapToDouble(units::moments).toArray());
      stresses.add(
          line.stressStations.stream().mapToDouble(units::lengths).toArray(),
          line.stresses.stream().mapToDouble(units::stresses).toArray());
      moments.mark(
          units.lengths(line.momentAt),
          units.moments(line.greatestMoment),
          line.mark,
          units.momentUnit(),
          at(line.momentAt, units));
      stresses.mark(
          units.lengths(line.stressAt()),
          units.stresses(pascals(line.extreme)),
          line.mark,
          units.stressUnit(),
          at(line.stressAt(), units));
    }
    String across = "station along the stem, " + units.lengthUnit();
    moments.draw("moment, " + units.momentUnit(), across);
    moments.end();
    stresses.draw("fibre stress |N|/A + M/Z, " + units.stressUnit(), across);
    stresses.end();
    legend.draw(new Rect(body.left(), foot, body.right(), body.bottom()));
    return sheet.end();
  }

  private static String at(double metres, PictureUnits units) {
    return " at " + PictureUnits.number(units.lengths(metres)) + " " + units.lengthUnit();
  }
}
