package org.boleline.working;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.explain.Formula;
import org.boleline.explain.Step;
import org.boleline.explain.Symbol;
import org.boleline.geometry.IncludedAngle;
import org.boleline.geometry.Turn;
import org.boleline.geometry.Vector;
import org.boleline.plan.Contact;
import org.boleline.plan.Tail;
import org.boleline.rope.ContactTensions;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.rope.TwoLegForce;
import org.boleline.statics.ActingForce;
import org.boleline.statics.ContactResult;
import org.boleline.statics.Leg;
import org.boleline.statics.Share;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;

/**
 * Worksheets that verify the balance of a solved rig by hand.
 *
 * <p>A coupled solution has no single formula. What a person can do is to take its tensions,
 * directions and places, and see that every contact and every part of a stem is in balance.
 */
public final class RigWorksheets {
  private static final int PLACE_FIGURES = 5;

  private RigWorksheets() {}

  /**
   * Makes the worksheet of the rope: at every contact that bears, tension lost to friction and
   * force of both legs, each beside what the solution reports; then the hold at the device.
   *
   * @param solution the solution
   * @return the worksheet
   */
  public static Worksheet ofRope(Solution solution) {
    List<Line> lines = new ArrayList<>();
    boolean raising = solution.motion() == Motion.RAISING;
    int leg = 0;
    for (int i = 0; i < solution.contacts().size(); i++) {
      ContactResult contact = solution.contacts().get(i);
      Contact stated = solution.arrangement().contacts().get(i);
      String name = "Contact " + (i + 1);
      if (!contact.bears()) {
        lines.add(new Line.Remark(name + " hangs slack: the rope does not touch it."));
        continue;
      }
      ContactTensions tensions =
          raising
              ? ContactTensions.fromSlack(stated.hardware(), contact.turn(), contact.tensionIn())
              : ContactTensions.fromTight(stated.hardware(), contact.turn(), contact.tensionIn());
      tensions.steps().forEach(step -> lines.add(new Line.Calculation(name, step)));
      leg++;
      Leg next = solution.legs().get(leg);
      lines.add(
          new Line.TwoRoutes(
              name + ", tension of the leg behind",
              "by friction and the turn",
              last(tensions.steps()),
              "as the solution reports the pull of that leg",
              size(next.pull())));
      TwoLegForce force =
          TwoLegForce.of(
              contact.tensionIn(), contact.tensionOut(), IncludedAngle.from(contact.turn()));
      lines.add(
          new Line.TwoRoutes(
              name + ", force on the point",
              "by both tensions and the angle between the legs",
              force.steps().get(0),
              "as the solution reports it",
              size(contact.force())));
    }
    if (solution.arrangement().tail() instanceof Tail.Device device) {
      FrictionRing bollard = new FrictionRing(device.friction());
      Turn wraps = Turn.ofWraps(device.wraps());
      Quantity<Force> tail = solution.tailTension();
      ContactTensions hand =
          raising
              ? ContactTensions.fromSlack(bollard, wraps, tail)
              : ContactTensions.fromTight(bollard, wraps, tail);
      hand.steps().forEach(step -> lines.add(new Line.Calculation("Hold at the device", step)));
    }
    return Worksheet.of("Rope of arrangement " + solution.id() + ", contact by contact", lines);
  }

  private static Step last(List<Step> steps) {
    return steps.get(steps.size() - 1);
  }

  private static Step size(Vector<Force> force) {
    return EquilibriumFormulas.FORCE_SIZE.step(force.in(Kind.FORCE));
  }

  /**
   * Makes the worksheet of a cut through a stem: force and moment from everything above the cut,
   * beside what the solution reports there.
   *
   * @param solution the solution
   * @param stem the id of the stem
   * @param at where it is cut; the nearest station of the result's profile is taken
   * @return the worksheet
   * @throws IllegalArgumentException if the plan has no such stem
   */
  public static Worksheet ofCut(Solution solution, String stem, Quantity<Length> at) {
    Cut cut = new Cut(solution, stem, at);
    List<Line> lines = new ArrayList<>(cut.lines());
    double[] force = cut.result.profile().forces(Kind.FORCE)[cut.index];
    double[] moment = cut.result.profile().moments(Kind.MOMENT)[cut.index];
    lines.add(
        new Line.TwoRoutes(
            "Force in the section",
            "from everything above the cut",
            EquilibriumFormulas.FORCE_SIZE.step(cut.force),
            "as the solution reports it",
            EquilibriumFormulas.FORCE_SIZE.step(force)));
    lines.add(
        new Line.TwoRoutes(
            "Moment in the section",
            "from everything above the cut",
            EquilibriumFormulas.MOMENT_SIZE.step(cut.moment),
            "as the solution reports it",
            EquilibriumFormulas.MOMENT_SIZE.step(moment)));
    return Worksheet.of(
        "Stem " + stem + " of arrangement " + solution.id() + ", cut at " + metres(cut.station),
        lines);
  }

  /**
   * Makes the worksheet of a stem's base: the parts that its moment is made of, and the moment by
   * two routes, from the stem and the rope as one body and from everything that acts on the stem;
   * then force and moment at the base, at every contact and half way to it, by hand beside those
   * that the solution reports. {@link #ofCut} shows each of these cuts whole.
   *
   * @param solution the solution
   * @param stem the id of the stem
   * @return the worksheet
   * @throws IllegalArgumentException if the plan has no such stem
   */
  public static Worksheet ofBase(Solution solution, String stem) {
    Cut cut = new Cut(solution, stem, Si.of(0, Kind.LENGTH));
    Rows forces = new Rows(EquilibriumFormulas.FORCE_SUM);
    Rows moments = new Rows(EquilibriumFormulas.MOMENT_SUM);
    double[] force = cut.ownForce.clone();
    double[] moment = cut.ownMoment.clone();
    for (Share share : cut.result.shares()) {
      String name = name(share);
      double[] f = share.force().in(Kind.FORCE);
      double[] m = share.moment().in(Kind.MOMENT);
      forces.add(name, f);
      moments.add(name, m);
      for (int i = 0; i < 3 && share.origin() != Share.Origin.OWN_WEIGHT; i++) {
        force[i] = EquilibriumFormulas.FORCE_SUM.value(force[i], f[i]);
        moment[i] = EquilibriumFormulas.MOMENT_SUM.value(moment[i], m[i]);
      }
    }
    forces.against(minus(cut.result.base().force().in(Kind.FORCE)));
    moments.against(minus(cut.result.base().moment().in(Kind.MOMENT)));
    double[] reported = cut.result.base().moment().in(Kind.MOMENT);
    List<Line> lines = new ArrayList<>();
    lines.add(
        new Line.Remark(
            "Stem and rope as one body: where the rope runs through points of this stem, its"
                + " tensions there are inside, and only what comes in from outside counts. Moments"
                + " are about the base. The solution reports what the ground does to the base: as"
                + " great, with turned signs. The rows \"reported\" have them turned back."));
    lines.add(forces.table("Forces on stem and rope", EquilibriumFormulas.FORCES));
    lines.add(moments.table("Their moments about the base", EquilibriumFormulas.MOMENTS));
    lines.add(new Line.Remark("The stem alone, cut at its base:"));
    lines.addAll(cut.lines());
    lines.add(
        new Line.Calculation(
            "What the ground does to the base, as reported",
            EquilibriumFormulas.MOMENT_SIZE.step(reported)));
    lines.add(
        new Line.TwoRoutes(
            "Base moment",
            "stem and rope as one body, own weight by slices",
            EquilibriumFormulas.MOMENT_SIZE.step(moment),
            "the stem alone, every contact by itself",
            EquilibriumFormulas.MOMENT_SIZE.step(cut.moment)));
    lines.add(
        new Line.TwoRoutes(
            "Force on the base",
            "stem and rope as one body, own weight by slices",
            EquilibriumFormulas.FORCE_SIZE.step(force),
            "the stem alone, every contact by itself",
            EquilibriumFormulas.FORCE_SIZE.step(cut.force)));
    lines.add(sections(solution, stem));
    return Worksheet.of("Base of stem " + stem + " of arrangement " + solution.id(), lines);
  }

  /**
   * Makes the worksheet that adds up the shares of the base moment one after the other, about each
   * axis, with its size as the solution reports it as a second route.
   *
   * @param solution the solution
   * @param stem id of the stem
   * @return the worksheet
   * @throws IllegalArgumentException if the plan has no such stem
   */
  public static Worksheet ofShares(Solution solution, String stem) {
    StemResult result =
        solution
            .stem(stem)
            .orElseThrow(
                () -> new IllegalArgumentException("stem: wants one of the plan, got " + stem));
    List<Line> lines = new ArrayList<>();
    double[] sums = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      for (Share share : result.shares()) {
        Step step =
            EquilibriumFormulas.MOMENT_SUM.step(sums[axis], share.moment().in(Kind.MOMENT)[axis]);
        String about = "About " + "xyz".charAt(axis) + ", with " + name(share);
        lines.add(new Line.Calculation(about, step));
        sums[axis] = step.result();
      }
    }
    lines.add(
        new Line.TwoRoutes(
            "Base moment",
            "share by share",
            EquilibriumFormulas.MOMENT_SIZE.step(sums),
            "as the solution reports it",
            EquilibriumFormulas.MOMENT_SIZE.step(result.base().moment().in(Kind.MOMENT))));
    return Worksheet.of(
        "Base moment of stem " + stem + " of arrangement " + solution.id() + ", share by share",
        lines);
  }

  private static String name(Share share) {
    return share.origin().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** Force and moment at the base, at every contact and half way between, by hand and reported. */
  private static Line.Table sections(Solution solution, String stem) {
    TreeSet<Double> stations = new TreeSet<>(Set.of(0.0));
    for (ContactResult contact : solution.contacts()) {
      if (contact.stem().equals(stem)) {
        double at = Si.value(contact.at(), Kind.LENGTH, "at");
        stations.addAll(List.of(at / 2, at));
      }
    }
    List<String> names = new ArrayList<>();
    List<double[]> rows = new ArrayList<>();
    for (double at : stations) {
      Cut cut = new Cut(solution, stem, Si.of(at, Kind.LENGTH));
      double[] force = cut.result.profile().forces(Kind.FORCE)[cut.index];
      double[] moment = cut.result.profile().moments(Kind.MOMENT)[cut.index];
      names.add("cut at " + metres(cut.station));
      rows.add(
          new double[] {
            EquilibriumFormulas.FORCE_SIZE.value(cut.force),
            EquilibriumFormulas.FORCE_SIZE.value(force),
            EquilibriumFormulas.MOMENT_SIZE.value(cut.moment),
            EquilibriumFormulas.MOMENT_SIZE.value(moment)
          });
    }
    return new Line.Table(
        "The stem alone, section by section",
        List.of(
            EquilibriumFormulas.FORCE_SUM,
            EquilibriumFormulas.FORCE_SIZE,
            EquilibriumFormulas.MOMENT_SUM,
            EquilibriumFormulas.MOMENT_SIZE),
        EquilibriumFormulas.SECTIONS,
        names,
        rows.toArray(new double[0][]));
  }

  private static String metres(double value) {
    return QuantityText.number(value, PLACE_FIGURES) + " m";
  }

  private static double[] minus(double[] a) {
    return new double[] {0 - a[0], 0 - a[1], 0 - a[2]};
  }

  /** What acts on a stem above a cut. */
  private static final class Cut {
    final StemResult result;
    final int index;
    final double station;
    final double[] place;
    final double[] force;
    final double[] moment;
    final double[] ownForce = new double[3];
    final double[] ownMoment = new double[3];
    private final Rows forces = new Rows(EquilibriumFormulas.FORCE_SUM);
    private final Rows arms = new Rows(EquilibriumFormulas.FORCE_SUM);
    private final Rows moments = new Rows(EquilibriumFormulas.MOMENT_SUM);

    Cut(Solution solution, String stem, Quantity<Length> at) {
      List<ActingForce> above = solution.forcesAbove(stem, at);
      result = solution.stem(stem).orElseThrow();
      double[] stations = result.profile().stations(Kind.LENGTH);
      double wanted = Si.value(at, Kind.LENGTH, "at");
      int nearest = 0;
      for (int i = 1; i < stations.length; i++) {
        if (Math.abs(stations[i] - wanted) < Math.abs(stations[nearest] - wanted)) {
          nearest = i;
        }
      }
      index = nearest;
      station = stations[nearest];
      place = result.profile().positions(Kind.LENGTH)[nearest];
      for (ActingForce one : above) {
        double[] f = one.force().in(Kind.FORCE);
        double[] p = one.position().in(Kind.LENGTH);
        double x = EquilibriumFormulas.ARM.value(p[0], place[0]);
        double y = EquilibriumFormulas.ARM.value(p[1], place[1]);
        double z = EquilibriumFormulas.ARM.value(p[2], place[2]);
        forces.add(one.from(), f);
        arms.add(one.from(), new double[] {x, y, z});
        double[] m = {
          EquilibriumFormulas.MOMENT_X.value(y, z, f[1], f[2]),
          EquilibriumFormulas.MOMENT_Y.value(x, z, f[0], f[2]),
          EquilibriumFormulas.MOMENT_Z.value(x, y, f[0], f[1])
        };
        moments.add(one.from(), m);
        if (one.from().equals(ActingForce.OWN_WEIGHT)) {
          System.arraycopy(f, 0, ownForce, 0, 3);
          System.arraycopy(m, 0, ownMoment, 0, 3);
        }
      }
      force = forces.sum.clone();
      moment = moments.sum.clone();
      forces.against(result.profile().forces(Kind.FORCE)[nearest]);
      moments.against(result.profile().moments(Kind.MOMENT)[nearest]);
    }

    List<Line> lines() {
      return List.of(
          new Line.Remark(
              "The cut is at station "
                  + metres(station)
                  + ", where the loaded axis passes x = "
                  + metres(place[0])
                  + ", y = "
                  + metres(place[1])
                  + ", z = "
                  + metres(place[2])
                  + ". Own weight stands for all slices above the cut, on the plumb line through"
                  + " their centre of gravity. Rows: what acts above, its sum, what the solution"
                  + " reports, and the difference."),
          forces.table("Forces above the cut", EquilibriumFormulas.FORCES),
          new Line.Table(
              "Arms from the cut to the forces",
              List.of(EquilibriumFormulas.ARM),
              EquilibriumFormulas.ARMS,
              arms.names,
              arms.numbers()),
          moments.table(
              "Moments about the cut",
              EquilibriumFormulas.MOMENTS,
              EquilibriumFormulas.MOMENT_X,
              EquilibriumFormulas.MOMENT_Y,
              EquilibriumFormulas.MOMENT_Z));
    }
  }

  /** Rows of three numbers with their running sum. */
  private static final class Rows {
    final List<String> names = new ArrayList<>();
    final double[] sum = new double[3];
    private final Formula adding;
    private final List<double[]> rows = new ArrayList<>();

    Rows(Formula adding) {
      this.adding = adding;
    }

    void add(String name, double[] row) {
      names.add(name);
      rows.add(row);
      for (int i = 0; i < 3; i++) {
        sum[i] = adding.value(sum[i], row[i]);
      }
    }

    void against(double[] reported) {
      names.addAll(List.of("sum", "reported", "difference"));
      rows.add(sum.clone());
      rows.add(reported);
      rows.add(new double[] {sum[0] - reported[0], sum[1] - reported[1], sum[2] - reported[2]});
    }

    double[][] numbers() {
      return rows.toArray(new double[0][]);
    }

    Line.Table table(String title, List<Symbol> columns, Formula... others) {
      List<Formula> formulas = new ArrayList<>(List.of(others));
      formulas.add(adding);
      return new Line.Table(title, formulas, columns, names, numbers());
    }
  }
}
