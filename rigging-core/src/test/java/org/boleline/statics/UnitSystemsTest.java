package org.boleline.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.units.Amounts.degrees;
import static org.boleline.units.Amounts.feet;
import static org.boleline.units.Amounts.inches;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.kilogramsPerCubicMetre;
import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.pascals;
import static org.boleline.units.Amounts.pounds;
import static org.boleline.units.Amounts.poundsPerCubicFoot;
import static org.boleline.units.Amounts.poundsPerSquareInch;
import static org.boleline.units.Amounts.radians;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.boleline.Tolerances;
import org.boleline.geometry.Heading;
import org.boleline.geometry.Vector;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Piece;
import org.boleline.plan.Plan;
import org.boleline.plan.Tail;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Motion;
import org.boleline.stem.Diameters;
import org.boleline.stem.Stem;
import org.boleline.stem.StemShape;
import org.boleline.units.Density;
import org.boleline.units.Kind;
import org.boleline.units.Units;
import org.boleline.wood.WoodProperties;

/** One rig, written in feet, inches, pounds and degrees, and in metres, kilograms and radians. */
class UnitSystemsTest {
  // International foot and avoirdupois pound, exact by definition (Federal Register 24:5348, 1959).
  private static final double FOOT = 0.3048;
  private static final double POUND = 0.45359237;
  private static final double PSI = POUND * Rigs.GRAVITY / (FOOT / 12 * FOOT / 12);

  /** Ways to state the numbers of a rig. */
  private interface Wording {
    Quantity<Length> feetOf(double value);

    Quantity<Length> inchesOf(double value);

    Quantity<Angle> degreesOf(double value);

    Quantity<Mass> poundsOf(double value);

    Quantity<Pressure> psiOf(double value);

    Quantity<Density> poundsPerCubicFootOf(double value);
  }

  private static final Wording US =
      new Wording() {
        @Override
        public Quantity<Length> feetOf(double value) {
          return feet(value);
        }

        @Override
        public Quantity<Length> inchesOf(double value) {
          return inches(value);
        }

        @Override
        public Quantity<Angle> degreesOf(double value) {
          return degrees(value);
        }

        @Override
        public Quantity<Mass> poundsOf(double value) {
          return pounds(value);
        }

        @Override
        public Quantity<Pressure> psiOf(double value) {
          return poundsPerSquareInch(value);
        }

        @Override
        public Quantity<Density> poundsPerCubicFootOf(double value) {
          return poundsPerCubicFoot(value);
        }
      };

  private static final Wording SI =
      new Wording() {
        @Override
        public Quantity<Length> feetOf(double value) {
          return metres(value * FOOT);
        }

        @Override
        public Quantity<Length> inchesOf(double value) {
          return metres(value * FOOT / 12);
        }

        @Override
        public Quantity<Angle> degreesOf(double value) {
          return radians(Math.toRadians(value));
        }

        @Override
        public Quantity<Mass> poundsOf(double value) {
          return kilograms(value * POUND);
        }

        @Override
        public Quantity<Pressure> psiOf(double value) {
          return pascals(value * PSI);
        }

        @Override
        public Quantity<Density> poundsPerCubicFootOf(double value) {
          return kilogramsPerCubicMetre(value * POUND / (FOOT * FOOT * FOOT));
        }
      };

  private static Plan plan(
      Wording in, int length, int lean, int inchesThick, int pounds, int psi, int side) {
    Stem stem =
        Stem.builder("stem")
            .shape(
                StemShape.Straight.of(
                    Heading.of(in.degreesOf(lean), in.degreesOf(2.0 * lean)), in.feetOf(length)))
            .diameters(
                Diameters.tapering(
                    in.feetOf(length), in.inchesOf(inchesThick), in.inchesOf(0.5 * inchesThick)))
            .wood(
                WoodProperties.builder()
                    .modulusOfElasticity(in.psiOf(psi))
                    .density(in.poundsPerCubicFootOf(58.5))
                    .build())
            .build();
    Contact first =
        Contact.of("stem", in.feetOf(length - 1.25), new FrictionRing(0.2))
            .withSling(in.inchesOf(8));
    Contact second =
        Contact.of("stem", in.feetOf(0.5 * length), new FrictionRing(0.2))
            .withOffset(in.inchesOf(3));
    return Plan.builder()
        .title("units")
        .stems(List.of(stem))
        .piece(Piece.of(in.poundsOf(pounds)))
        .arrangements(
            List.of(
                Arrangement.builder("only")
                    .motion(Motion.LOWERING)
                    .contacts(List.of(first, second))
                    .tail(
                        Tail.Point.of(Vector.of(in.feetOf(-2), in.feetOf(side), in.inchesOf(-4.5))))
                    .build()))
        .build();
  }

  @Property(tries = 50)
  void give_the_same_result(
      @ForAll @IntRange(min = 25, max = 55) int length,
      @ForAll @IntRange(min = 5, max = 40) int lean,
      @ForAll @IntRange(min = 11, max = 20) int inchesThick,
      @ForAll @IntRange(min = 30, max = 400) int pounds,
      @ForAll @IntRange(min = 900_000, max = 1_700_000) int psi,
      @ForAll @IntRange(min = -20, max = 20) int side) {
    Solution us = Rigs.sound(plan(US, length, lean, inchesThick, pounds, psi, side));
    Solution si = Rigs.sound(plan(SI, length, lean, inchesThick, pounds, psi, side));
    double[] moved = Rigs.tipMovement(si);
    assertThat(Plain.size(Plain.minus(Rigs.tipMovement(us), moved)))
        .isLessThanOrEqualTo(Tolerances.SAME_SOLUTION * Plain.size(moved));
    double[] moment = si.stems().get(0).base().moment().in(Kind.MOMENT);
    assertThat(Plain.size(Plain.minus(us.stems().get(0).base().moment().in(Kind.MOMENT), moment)))
        .isLessThanOrEqualTo(Tolerances.SAME_SOLUTION * Plain.size(moment));
    assertThat(us.tailTension().to(Units.POUND_FORCE).getValue().doubleValue() * POUND)
        .isCloseTo(
            Rigs.newtons(si.tailTension()) / Rigs.GRAVITY,
            Tolerances.relative(Tolerances.SAME_SOLUTION));
    assertThat(Rigs.stress(us.stems().get(0).compressionStress()))
        .isCloseTo(
            Rigs.stress(si.stems().get(0).compressionStress()),
            Tolerances.relative(Tolerances.SAME_SOLUTION));
  }
}
