package org.boleline.study;

import java.util.ArrayList;
import java.util.List;
import org.boleline.drop.CutGeometry;
import org.boleline.explain.PlanRefusedException;
import org.boleline.explain.Refusal;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.DropSpec;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.stem.Diameters;
import org.boleline.stem.PointMass;
import org.boleline.stem.Stem;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.boleline.units.Si;

/**
 * A stem taken down from its tip, piece by piece, each caught on a point below its cut.
 *
 * <p>At each cut the stem ends there. The first contact of the arrangement moves below the cut;
 * other contacts stay if they are below it, and go otherwise. Fall, load leg and the distance from
 * tie to centre of gravity follow from where point and tie are; how the rope is held is that of the
 * arrangement's drop. Pieces are the wood of the stem between two cuts, with the masses that hang
 * on it there; what hangs at the cut stays. Where the stem is not straight, piece and stem about
 * the cut are taken to be, as the stem points at the cut.
 *
 * @param arrangement id of an arrangement with a drop
 * @param lengths lengths of the pieces, from the tip down, each above zero
 * @param tie from the cut up to where the rope is tied to the piece, zero or more
 * @param attachment from the cut down to where the first contact is fixed, zero or more
 * @param reading what is read at each cut, such as the load leg of the rope made fast
 */
public record CutPlan(
    String arrangement, List<Figure> lengths, Figure tie, Figure attachment, Reading reading)
    implements Study {
  /**
   * Makes the question.
   *
   * @param arrangement id of an arrangement with a drop
   * @param lengths lengths of the pieces, from the tip down, each above zero
   * @param tie from the cut up to where the rope is tied to the piece, zero or more
   * @param attachment from the cut down to where the first contact is fixed, zero or more
   * @param reading what is read at each cut
   * @throws IllegalArgumentException if there is no length, or a figure is no length or outside its
   *     range
   */
  public CutPlan {
    lengths = List.copyOf(lengths);
    if (lengths.isEmpty()) {
      throw new IllegalArgumentException("lengths: wants one length for each piece, got none");
    }
    lengths.forEach(length -> length.requireAboveZero("lengths", Kind.LENGTH));
    tie.requireZeroOrMore("tie", Kind.LENGTH);
    attachment.requireZeroOrMore("attachment", Kind.LENGTH);
  }

  @Override
  public String kind() {
    return "cutPlan";
  }

  /**
   * One cut.
   *
   * @param at station of the cut
   * @param length length of the piece
   * @param mass mass of the piece
   * @param fall how far its centre of gravity falls before the rope is taut
   * @param value what is read
   * @param halved the greater of what is read if the piece comes down in two halves
   */
  public record Cut(Figure at, Figure length, Figure mass, Found fall, Found value, Found halved) {}

  /**
   * The answer.
   *
   * @param study what was asked
   * @param cuts the cuts, from the tip down
   */
  public record Answer(CutPlan study, List<Cut> cuts) implements StudyAnswer {
    /**
     * Makes an answer.
     *
     * @param study what was asked
     * @param cuts the cuts, from the tip down
     */
    public Answer {
      cuts = List.copyOf(cuts);
    }
  }

  /**
   * Works the cuts out.
   *
   * @equation as {@link CutGeometry} for the fall, and the reading for its number
   * @validity pieces that are straight, or nearly; the stem that remains is that of the plan up to
   *     the cut
   * @source derived
   * @accuracy as the reading
   * @param plan the plan, not null
   * @return the answer
   * @throws PlanRefusedException if the plan has no such arrangement, it states no drop, or the
   *     pieces are as long as the stem or longer
   */
  @Override
  public Answer answer(Plan plan) {
    Cutting cutting =
        new Cutting(plan, Evaluation.find(plan, arrangement), tie.si(), attachment.si(), reading);
    List<Cut> cuts = new ArrayList<>();
    double top = cutting.length();
    for (Figure length : lengths) {
      double at = top - length.si();
      if (at <= 0) {
        throw refused("/stems", "pieces that leave a part of the stem", "longer ones");
      }
      cuts.add(cutting.cut(top, at));
      top = at;
    }
    return new Answer(this, cuts);
  }

  private static PlanRefusedException refused(String place, String wants, String got) {
    return new PlanRefusedException(List.of(new Refusal(Refusal.Code.CONFLICT, place, wants, got)));
  }

  /** The cutting of one stem. */
  private static final class Cutting {
    private final Plan plan;
    private final Arrangement of;
    private final Stem stem;
    private final DropSpec drop;
    private final double tie;
    private final double attachment;
    private final Reading reading;

    Cutting(Plan plan, Arrangement of, double tie, double attachment, Reading reading) {
      this.plan = plan;
      this.of = of;
      this.tie = tie;
      this.attachment = attachment;
      this.reading = reading;
      String place = "/arrangements/" + plan.arrangements().indexOf(of);
      String id = of.contacts().get(0).stem();
      stem = plan.stems().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
      drop =
          of.drop()
              .orElseThrow(
                  () -> refused(place + "/drop", "a drop that says how it is held", "none"));
    }

    double length() {
      return Si.value(stem.length(), Kind.LENGTH, "length");
    }

    Cut cut(double top, double at) {
      double[] piece = piece(top, at);
      double middle = (top + at) / 2;
      Found upper = value(top, middle);
      Found lower = value(middle, at);
      Found fall = Found.none("the tie is above the piece");
      if (attachment > at) {
        fall = Found.none("the first contact would be below the foot of the stem");
      } else if (tie <= top - at) {
        fall = Found.of(Figure.of(geometry(top, at, piece[1]).fall(), Kind.LENGTH));
      }
      return new Cut(
          Figure.of(at, Kind.LENGTH),
          Figure.of(top - at, Kind.LENGTH),
          Figure.of(piece[0], Kind.MASS),
          fall,
          value(top, at),
          upper.figure().isEmpty() || upper.si() > lower.si() ? upper : lower);
    }

    private Found value(double top, double at) {
      if (tie > top - at) {
        return Found.none("the tie is above the piece");
      }
      if (attachment > at) {
        return Found.none("the first contact would be below the foot of the stem");
      }
      try {
        return reading.value(plan(top, at), of.id());
      } catch (PlanRefusedException e) {
        return Reading.refused(e);
      }
    }

    private CutGeometry geometry(double top, double at, double balance) {
      Contact point = of.contacts().get(0);
      return CutGeometry.builder()
          .cutHeight(Amounts.metres(at)) // of no matter to fall and load leg
          .piece(Amounts.metres(top - at), Amounts.metres(balance))
          .tie(Amounts.metres(tie))
          .attachment(Amounts.metres(attachment))
          .sling(point.sling())
          .offset(point.offset())
          .heading(Stump.of(stem.shape(), at).heading())
          .build();
    }

    private Plan plan(double top, double at) {
      double[] piece = piece(top, at);
      CutGeometry geometry = geometry(top, at, piece[1]);
      List<Contact> contacts = new ArrayList<>();
      Contact first = of.contacts().get(0);
      contacts.add(Input.moved(first, at - attachment));
      for (Contact contact : of.contacts().subList(1, of.contacts().size())) {
        if (!contact.stem().equals(stem.id())
            || Si.value(contact.at(), Kind.LENGTH, "at") < at - attachment) {
          contacts.add(contact);
        }
      }
      DropSpec fall =
          DropSpec.of(geometry.fall(), drop.hold())
              .withTieToCentre(Amounts.metres(Math.abs(piece[1] - tie)))
              .withLoadLeg(geometry.loadLeg());
      return plan.toBuilder()
          .piece(Piece.of(Amounts.kilograms(piece[0])))
          .stems(
              plan.stems().stream().map(s -> s.id().equals(stem.id()) ? remaining(at) : s).toList())
          .arrangements(List.of(of.toBuilder().contacts(contacts).drop(fall).build()))
          .build();
    }

    private Stem remaining(double at) {
      return stem.toBuilder()
          .shape(Stump.of(stem.shape(), at).shape())
          .diameters(Diameters.of(entries(at)))
          .masses(
              stem.masses().stream()
                  .filter(m -> Si.value(m.at(), Kind.LENGTH, "at") <= at)
                  .toList())
          .marks(
              stem.marks().stream().filter(m -> Si.value(m.at(), Kind.LENGTH, "at") <= at).toList())
          .build();
    }

    private List<Diameters.Entry> entries(double at) {
      List<Diameters.Entry> entries = new ArrayList<>();
      for (Diameters.Entry entry : stem.diameters().entries()) {
        if (Si.value(entry.at(), Kind.LENGTH, "at") < at) {
          entries.add(entry);
        }
      }
      Diameters d = stem.diameters();
      double[] stations = d.stations(Kind.LENGTH);
      entries.add(
          Diameters.Entry.of(
              Amounts.metres(at),
              Amounts.metres(Stump.linear(stations, d.outer(Kind.LENGTH), at)),
              Amounts.metres(Stump.linear(stations, d.cavity(Kind.LENGTH), at))));
      return entries;
    }

    /** Mass of the stem and what hangs on it between two stations, and its balance point. */
    private double[] piece(double top, double at) {
      Diameters d = stem.diameters();
      double[] x = d.stations(Kind.LENGTH);
      double[] outer = d.outer(Kind.LENGTH);
      double[] cavity = d.cavity(Kind.LENGTH);
      double volume = 0;
      double moment = 0;
      for (int i = 0; i + 1 < x.length; i++) {
        double low = Math.max(at, x[i]);
        double high = Math.min(top, x[i + 1]);
        if (high > low) {
          // Simpson's rule: exact, since the area is a square of a line
          for (int k = 0; k < 3; k++) {
            double s = low + (high - low) * k / 2;
            double share = (s - x[i]) / (x[i + 1] - x[i]);
            double o = outer[i] + (outer[i + 1] - outer[i]) * share;
            double c = cavity[i] + (cavity[i + 1] - cavity[i]) * share;
            double slice = Math.PI / 4 * (o * o - c * c) * (high - low) * (k == 1 ? 4.0 : 1.0) / 6;
            volume += slice;
            moment += slice * (s - at);
          }
        }
      }
      double density = Si.value(stem.wood().density(), Kind.DENSITY, "density");
      double mass = density * volume;
      double firstMoment = density * moment;
      for (PointMass hung : stem.masses()) {
        double station = Si.value(hung.at(), Kind.LENGTH, "at");
        // rounding may have put what hangs at the tip a little beyond it
        if (station > at && (station <= top || top >= length())) {
          double kilograms = Si.value(hung.mass(), Kind.MASS, "mass");
          mass += kilograms;
          firstMoment += kilograms * (station - at);
        }
      }
      return new double[] {mass, firstMoment / mass};
    }
  }
}
