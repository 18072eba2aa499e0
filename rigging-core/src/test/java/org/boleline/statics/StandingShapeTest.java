package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.radians;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.measure.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.boleline.Tolerances;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.rope.FrictionRing;
import org.boleline.stem.Diameters;
import org.boleline.stem.ShapeIs;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Kind;

/**
 * The shape that a stress-free stem takes under its own weight, measured and stated as standing, is
 * the same stem: the same answers, but for what is lost between the places measured.
 */
@Domain(LeaningRig.Domain.class)
@Domain(DomainContext.Global.class)
class StandingShapeTest {
  /** The profile of the stem under own weight and next to no load. */
  private static StemProfile standing(LeaningRig rig) {
    return Rigs.solution(rig.stem(), rig.over(new FrictionRing(0.2)), 1e-6)
        .stems()
        .get(0)
        .profile();
  }

  private static void assertAlike(Solution found, Solution wanted, double allowed) {
    double[] moved = Rigs.tipMovement(wanted);
    assertThat(Plain.size(Plain.minus(Rigs.tipMovement(found), moved)))
        .isLessThanOrEqualTo(allowed * Plain.size(moved));
    double[] moment = wanted.stems().get(0).base().moment().in(Kind.MOMENT);
    assertThat(
            Plain.size(Plain.minus(found.stems().get(0).base().moment().in(Kind.MOMENT), moment)))
        .isLessThanOrEqualTo(allowed * Plain.size(moment));
    double load = Rigs.newtons(wanted.legs().get(0).tension());
    for (int j = 0; j < wanted.contacts().size(); j++) {
      assertThat(
              Plain.size(
                  Plain.minus(
                      found.contacts().get(j).force().in(Kind.FORCE),
                      wanted.contacts().get(j).force().in(Kind.FORCE))))
          .isLessThanOrEqualTo(allowed * load);
    }
    assertThat(Rigs.stress(found.stems().get(0).bendingStress()))
        .isCloseTo(
            Rigs.stress(wanted.stems().get(0).bendingStress()), Tolerances.relative(allowed));
  }

  @Property(tries = 25)
  void measured_by_leans_is_the_same_stem(@ForAll LeaningRig rig) {
    StemProfile profile = standing(rig);
    double[] at = profile.stations(Kind.LENGTH);
    double[][] directions = profile.directions();
    List<StemShape.Station> stations = new ArrayList<>();
    for (int i = 0; i < at.length; i++) {
      double[] t = directions[i];
      double lean = Math.atan2(Math.hypot(t[0], t[1]), t[2]);
      stations.add(
          StemShape.Station.of(
              metres(at[i]), Heading.of(radians(lean), radians(Math.atan2(t[1], t[0])))));
    }
    Stem.Builder measured =
        rig.stem().shape(StemShape.ByStations.of(stations)).shapeIs(ShapeIs.AS_STANDING);
    assertAlike(
        Rigs.sound(measured, rig.aside(new FrictionRing(0.2)), rig.weight()),
        rig.solution(rig.aside(new FrictionRing(0.2))),
        Tolerances.MEASURED_LEANS);
  }

  @Property(tries = 25)
  void measured_by_points_is_the_same_stem(@ForAll LeaningRig rig) {
    StemProfile profile = standing(rig);
    double[][] places = profile.unloadedPositions(Kind.LENGTH);
    List<Vector<Length>> points =
        Arrays.stream(places).map(p -> Vector.ofSi(Kind.LENGTH, p)).toList();
    // Chords are shorter than the arc: stations along them shrink a little.
    StemShape.ByPoints line = StemShape.ByPoints.of(points);
    double length = line.length(Kind.LENGTH);
    Stem.Builder measured =
        rig.stem()
            .shape(line)
            .shapeIs(ShapeIs.AS_STANDING)
            .diameters(
                Diameters.tapering(
                    metres(length), metres(rig.base()), metres(rig.taper() * rig.base())));
    assertAlike(
        Rigs.sound(
            measured,
            Rigs.through(
                    new FrictionRing(0.2),
                    rig.points().stream().mapToDouble(x -> x * length).toArray())
                .tail(Rigs.point(0, rig.side() * LeaningRig.LENGTH, 0)),
            rig.weight()),
        rig.solution(rig.aside(new FrictionRing(0.2))),
        Tolerances.MEASURED_POINTS);
  }
}
