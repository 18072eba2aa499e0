// Four ways to rig the same piece: what the tail, the points and the friction do.
//
// From the top of the project, after mvn -q -DskipTests package:
//
//   jshell --feedback silent --class-path rigging-examples/coursework/target/coursework.jar \
//     rigging-examples/coursework/src/main/jshell/four-arrangements.jsh
//
// It ends at a prompt, with everything below at hand: change an arrangement and show it again.
//
// The tree is invented. These are exercises: on a tree, local codes, makers' instructions and the
// competent person on site decide.

import static org.boleline.units.Amounts.*
import javax.measure.Quantity
import javax.measure.Unit
import org.boleline.geometry.*
import org.boleline.plan.*
import org.boleline.rope.*
import org.boleline.statics.*
import org.boleline.stem.*
import org.boleline.units.*
import org.boleline.wood.*

// The tree: a hornbeam that leans 16 degrees at the ground and 45 at the tip.

StemShape.Station station(double along, double lean) {
  return StemShape.Station.of(metres(along), Heading.of(degrees(lean), degrees(0)));
}

Diameters.Entry diameter(double along, double across) {
  return Diameters.Entry.of(metres(along), metres(across));
}

StemShape shape = StemShape.ByStations.of(List.of(
    station(0, 16), station(3, 20), station(6, 27), station(9, 36), station(12, 45)))

Diameters diameters = Diameters.of(List.of(
    diameter(0, 0.36), diameter(3, 0.33), diameter(6, 0.29), diameter(9, 0.24), diameter(12, 0.19)))

WoodProperties wood = WoodProperties.builder().
    modulusOfElasticity(gigapascals(8.0)).
    density(kilogramsPerCubicMetre(990)).
    compressionStrength(megapascals(16)).
    build()

Stem hornbeam = Stem.builder("hornbeam").
    shape(shape).
    diameters(diameters).
    wood(wood).
    root(Root.Turning.of(newtonMetresPerRadian(0.8e6))).
    marks(List.of(Mark.of("outer point", metres(11.6)))).
    build()

// The points: a sheave turns with the rope, a ring lets it slip over its edge.

Contact sheave(double along) {
  return Contact.of("hornbeam", metres(along), new Sheave(0.95)).withSling(metres(0.20));
}

Contact ring(double along) {
  return Contact.of("hornbeam", metres(along), new FrictionRing(0.25)).withSling(metres(0.20));
}

// The tail: to a person right below the point, or to a lowering device at the foot of the stem.

Tail straightDown = Tail.Down.DOWN
Tail atTheFoot = Tail.Device.of("hornbeam", metres(0.8), 0.18, 2)

Arrangement arrangement(String name, Motion motion, Tail tail, Contact... points) {
  return Arrangement.builder(name).
      motion(motion).contacts(List.of(points)).tail(tail).build();
}

// What is asked of each.

Solution solve(Arrangement arrangement) {
  Plan plan = Plan.builder().
      title("Four ways to rig the same piece").
      stems(List.of(hornbeam)).
      piece(Piece.of(kilograms(95))).
      arrangements(List.of(arrangement)).
      build();
  return Statics.analyse(plan).arrangements().get(0).solution().orElseThrow();
}

<Q extends Quantity<Q>> double in(Unit<Q> unit, Quantity<Q> quantity) {
  return quantity.to(unit).getValue().doubleValue();
}

void show(Arrangement arrangement) {
  Solution solution = solve(arrangement);
  StemResult stem = solution.stem("hornbeam").orElseThrow();
  System.out.printf(Locale.ROOT, "%-30s %7.0f %7.0f %7.0f %7.2f %7.0f%n",
      arrangement.id(),
      in(Units.NEWTON, solution.tailTension()),
      in(Units.NEWTON, solution.handTension().orElse(solution.tailTension())),
      in(Units.NEWTON, solution.contacts().get(0).forceMagnitude()),
      in(Units.KILONEWTON_METRE, stem.base().momentMagnitude()),
      1000 * in(Units.METRE, stem.marks().get(0).movement().magnitude()));
}

void heading(String text) {
  System.out.printf(Locale.ROOT, "%n%s%n%n%-30s %7s %7s %7s %7s %7s%n%-30s %7s %7s %7s %7s %7s%n",
      text, "", "tail", "hold", "force", "base", "tip", "", "N", "N", "N", "kN.m", "mm");
}

System.out.println("""
    95 kg hang on a rope over the outer point of a leaning hornbeam: 932 N.

    tail   tension of the rope behind the last point
    hold   pull of the hand on it, behind the wraps if there are any
    force  on the outer point
    base   moment at the ground
    tip    how far the outer point moves

    Write down what you expect before you read on.""")

heading("1. Where does the tail end? A sheave, the tail straight down or along the stem.")
show(arrangement("sheave, tail straight down", Motion.LOWERING, straightDown, sheave(11.6)))
show(arrangement("sheave, device at the foot", Motion.LOWERING, atTheFoot, sheave(11.6)))

heading("2. How many points? One sheave, then three along the stem.")
show(arrangement("one sheave", Motion.LOWERING, atTheFoot, sheave(11.6)))
show(arrangement("three sheaves", Motion.LOWERING, atTheFoot, sheave(11.6), sheave(8.0), sheave(4.5)))

heading("3. Sheaves or rings? The same three places, lowering.")
show(arrangement("three sheaves", Motion.LOWERING, atTheFoot, sheave(11.6), sheave(8.0), sheave(4.5)))
show(arrangement("three rings", Motion.LOWERING, atTheFoot, ring(11.6), ring(8.0), ring(4.5)))

heading("4. And when the piece must go up? The tail is pulled at the foot.")
Tail pulled = Tail.Device.of("hornbeam", metres(0.8), 0.18, 0)
show(arrangement("three sheaves, lowering", Motion.LOWERING, pulled, sheave(11.6), sheave(8.0), sheave(4.5)))
show(arrangement("three sheaves, raising", Motion.RAISING, pulled, sheave(11.6), sheave(8.0), sheave(4.5)))
show(arrangement("three rings, lowering", Motion.LOWERING, pulled, ring(11.6), ring(8.0), ring(4.5)))
show(arrangement("three rings, raising", Motion.RAISING, pulled, ring(11.6), ring(8.0), ring(4.5)))

System.out.println("""

    Why it is so: docs/course/6-more-points.md. Now try your own, for instance
      show(arrangement("mine", Motion.LOWERING, atTheFoot, ring(11.6), sheave(8)))
    and leave with /exit. On a tree, local codes, makers' instructions and the
    competent person on site decide.""")
