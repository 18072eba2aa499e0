package org.boleline.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.boleline.explain.PlanRefusedException;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.units.Amounts;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class InputTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/piece/mass",
        "/rope/minimumBreakingStrength",
        "/stems/0/wood/modulusOfElasticity",
        "/stems/0/wood/density",
        "/stems/0/shape/lean",
        "/arrangements/0/contacts/0/at",
        "/arrangements/0/contacts/0/sling",
        "/arrangements/0/contacts/0/offset",
        "/arrangements/0/contacts/0/hardware/ring/friction",
        "/arrangements/0/tail/device/at",
        "/arrangements/0/tail/device/friction",
        "/arrangements/0/tail/device/wraps",
        "/arrangements/0/tail/device/offset",
        "/arrangements/0/drop/fall",
        "/arrangements/0/drop/loadLeg",
        "/arrangements/0/drop/device/handForce",
        "/arrangements/0/drop/device/delay"
      })
  void what_is_put_in_is_read_back_and_nothing_else_moves(String pointer) {
    Plan plan = Plans.rigid();
    Input input = Input.at(plan, pointer);
    assertThat(input.pointer()).isEqualTo(pointer);
    double before = input.value(plan).si();
    double after = 0.9 * before + 0.01;
    Plan changed = input.with(plan, Plans.of(after, input.kindOrNull()));
    assertThat(input.value(changed).si()).isEqualTo(after);
    Plan back = input.with(changed, Plans.of(before, input.kindOrNull()));
    // what was left to a default is stated now: so compare after stating it
    assertThat(back).isEqualTo(input.with(plan, Plans.of(before, input.kindOrNull())));
  }

  @Test
  void a_point_that_moves_keeps_the_way_its_hardware_takes_the_rope() {
    Plan plan = Plans.bending();
    Arrangement first = plan.arrangements().get(0);
    List<Contact> contacts = first.contacts().stream().map(c -> c.withOpens(false)).toList();
    List<Arrangement> stated = new ArrayList<>(plan.arrangements());
    stated.set(0, first.toBuilder().contacts(contacts).build());
    Plan moved =
        Input.station(0, 0)
            .with(
                plan.toBuilder().arrangements(stated).build(),
                Figure.of(Amounts.metres(1), Kind.LENGTH));
    assertThat(moved.arrangements().get(0).contacts().get(0).opens()).contains(false);
  }

  @Test
  void a_tail_point_moves_by_its_coordinates() {
    Plan plan = Plans.bending();
    Input y = Input.at(plan, "/arrangements/0/tail/point/1");
    Plan moved = y.with(plan, Figure.of(Amounts.metres(2), Kind.LENGTH));
    assertThat(y.value(moved).si()).isEqualTo(2);
    assertThat(Input.tailPoint(0, 0).value(moved).si()).isEqualTo(-6);
  }

  @Test
  void a_factor_on_diameters_moves_all_of_them() {
    Plan plan = Plans.bending();
    Input factor = Input.diametersFactor(0);
    assertThat(factor.value(plan)).isEqualTo(Figure.ofRatio(1));
    Plan thick = factor.with(plan, Figure.ofRatio(2));
    assertThat(thick.stems().get(0).diameters().outer(Kind.LENGTH)).containsExactly(0.8, 0.3);
  }

  @Test
  void a_clamped_root_can_be_given_a_stiffness() {
    Plan plan = Plans.bending();
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(() -> Input.rootStiffness(0).value(plan))
        .satisfies(
            e ->
                assertThat(e.refusals().get(0).place())
                    .isEqualTo("/stems/0/root/rotationalStiffness"));
    Plan turning =
        Input.rootStiffness(0)
            .with(plan, Figure.of(Amounts.newtonMetresPerRadian(1e6), Kind.ROTATIONAL_STIFFNESS));
    assertThat(Input.rootStiffness(0).value(turning).si()).isEqualTo(1e6);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/stems/3/wood/density",
        "/arrangements/9/drop/fall",
        "/arrangements/0/contacts/1/at",
        "/arrangements/0/contacts/0/hardware/sheave/efficiency",
        "/arrangements/0/tail/point/0",
        "/piece/log/length"
      })
  void a_number_that_the_plan_does_not_have_is_refused_with_its_place(String pointer) {
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(() -> Input.at(Plans.rigid(), pointer))
        .satisfies(e -> assertThat(pointer).startsWith(e.refusals().get(0).place()));
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(() -> Input.parse(pointer).with(Plans.rigid(), 0.5));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "/piece", "/stems/0", "/stems/00/wood/density", "piece/mass", "/stems/x/id"})
  void what_names_no_number_is_refused(String pointer) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Input.parse(pointer))
        .withMessageStartingWith("input: wants ")
        .withMessageContaining(", got ");
  }

  @Test
  void a_figure_of_another_kind_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Input.pieceMass().with(Plans.rigid(), Figure.of(Amounts.metres(1), Kind.LENGTH)));
  }

  @Test
  void a_number_outside_its_range_is_refused_where_it_stands() {
    assertThatExceptionOfType(PlanRefusedException.class)
        .isThrownBy(
            () ->
                Input.station(0, 0).with(Plans.rigid(), Figure.of(Amounts.metres(13), Kind.LENGTH)))
        .satisfies(
            e ->
                assertThat(e.refusals().get(0).place()).isEqualTo("/arrangements/0/contacts/0/at"));
  }
}
