package org.boleline.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.boleline.json.PlanTexts.LEAST;
import static org.boleline.json.PlanTexts.changed;

import org.boleline.plan.Plan;
import org.junit.jupiter.api.Test;

/**
 * The same plan in other units is the same plan.
 *
 * <p>Exact by definition of the international foot, inch and pound (yard and pound agreement,
 * 1959): 1 ft = 0.3048 m, 1 in = 0.0254 m, 1 lb = 0.45359237 kg.
 */
class UnitSystemsTest {
  @Test
  void feet_inches_and_pounds_give_the_same_numbers_as_metres_and_kilograms() {
    Plan us =
        PlanReader.read(
            changed(
                LEAST,
                "\"length\": \"12 m\"",
                "\"length\": \"40 ft\"",
                "\"at\": \"12 m\"",
                "\"at\": \"480 in\"",
                "\"outer\": \"0.36 m\"",
                "\"outer\": \"14 in\"",
                "\"outer\": \"0.16 m\"",
                "\"outer\": \"0.5 ft\"",
                "\"150 kg\"",
                "\"330 lb\"",
                "\"1000 kg/m3\"",
                "\"62.5 lb/ft3\"",
                "\"9 GPa\"",
                "\"1500000 psi\"",
                "\"25 deg\"",
                "\"25 deg\"",
                "\"at\": \"11.5 m\"",
                "\"at\": \"37.5 ft\"",
                "\"4.86 m\"",
                "\"16 ft\""));
    Plan si =
        PlanReader.read(
            changed(
                LEAST,
                "\"length\": \"12 m\"",
                "\"length\": \"12.192 m\"",
                "\"at\": \"12 m\"",
                "\"at\": \"12192 mm\"",
                "\"outer\": \"0.36 m\"",
                "\"outer\": \"35.56 cm\"",
                "\"outer\": \"0.16 m\"",
                "\"outer\": \"0.1524 m\"",
                "\"150 kg\"",
                "\"149.6854821 kg\"",
                // 62.5 * 0.45359237 / 0.3048^3, worked out in decimal arithmetic
                "\"1000 kg/m3\"",
                "\"1001.1539608725087237 kg/m3\"",
                // 1.5e6 * 4.4482216152605 / 0.0254^2
                "\"9 GPa\"",
                "\"10342135939.752542005 Pa\"",
                "\"25 deg\"",
                "\"0.43633231299858239423 rad\"",
                "\"at\": \"11.5 m\"",
                "\"at\": \"11.43 m\"",
                "\"4.86 m\"",
                "\"4.8768 m\""));

    assertThat(us).isEqualTo(si);
    assertThat(PlanWriter.write(us)).isEqualTo(PlanWriter.write(si));
  }
}
