package org.boleline.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.boleline.units.Amounts.kilograms;
import static org.boleline.units.Amounts.metres;

import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.boleline.explain.Refusal.Code;
import org.boleline.units.Kind;
import org.junit.jupiter.api.Test;

class RefusalsTest {
  private final Refusals refusals = Refusals.none();

  @Test
  void notes_places_as_json_pointers() {
    refusals.at("stems").at(2).at("a/b~c").add(Code.MISSING, "a length", "nothing");

    assertThat(refusals.list())
        .containsExactly(new Refusal(Code.MISSING, "/stems/2/a~1b~0c", "a length", "nothing"));
  }

  @Test
  void keeps_the_first_refusal_of_a_place() {
    refusals.at("mass").add(Code.WRONG_TYPE, "text", "1");
    refusals.at("mass").add(Code.MISSING, "a mass", "nothing");

    assertThat(refusals.list()).extracting(Refusal::code).containsExactly(Code.WRONG_TYPE);
  }

  @Test
  void does_not_call_missing_what_was_stated_wrongly() {
    refusals.at("log").at("length").add(Code.WRONG_TYPE, "text", "1");
    refusals.at("log").add(Code.MISSING, "a log", "nothing");
    refusals.at("logs").add(Code.MISSING, "logs", "nothing");

    assertThat(refusals.list()).extracting(Refusal::place).containsExactly("/log/length", "/logs");
  }

  @Test
  void throws_all_refusals_in_one_exception() {
    refusals.throwIfAny();
    refusals.at("a").add(Code.MISSING, "a length", "nothing");
    refusals.at("b").add(Code.DUPLICATE, "one", "two");

    assertThatThrownBy(refusals::throwIfAny)
        .isInstanceOfSatisfying(
            PlanRefusedException.class, e -> assertThat(e.refusals()).hasSize(2))
        .hasMessage("/a: wants a length, got nothing\n/b: wants one, got two");
  }

  @Test
  void takes_quantities_within_their_bounds() {
    assertThat(refusals.at("a").between(metres(2), Kind.LENGTH, 0, 2)).isEqualTo(2);
    assertThat(refusals.at("b").aboveZero(metres(2), Kind.LENGTH, 2)).isEqualTo(2);
    assertThat(refusals.at("c").number(0.5, 0, 1)).isEqualTo(0.5);
    assertThat(refusals.hasAny()).isFalse();
  }

  @Test
  void takes_minus_zero_for_zero() {
    assertThat(refusals.at("a").between(metres(-0.0), Kind.LENGTH, 0, 2)).isEqualTo(0.0);
    assertThat(refusals.at("c").number(-0.0, 0, 1)).isEqualTo(0.0);
  }

  @Test
  void notes_quantities_outside_their_bounds() {
    refusals.at("a").between(metres(3), Kind.LENGTH, 0, 2);
    refusals.at("b").aboveZero(metres(0), Kind.LENGTH, 2);
    refusals.at("c").number(2.0, 0, 1);
    refusals.at("d").number(Double.NaN, 0, 1);
    refusals.at("e").aboveZero(null, Kind.LENGTH, 2);
    refusals.at("f").name(" ");
    refusals.at("g").name("a\nb");
    refusals.at("h").name("x".repeat(81));

    assertThat(refusals.list())
        .extracting(Refusal::sentence)
        .containsExactly(
            "/a: wants a length from 0 m to 2 m, got 3 m",
            "/b: wants a length above zero to 2 m, got 0 m",
            "/c: wants a number from 0 to 1, got 2",
            "/d: wants a number from 0 to 1, got no finite number",
            "/e: wants a quantity of length like \"12.5 m\" (m, cm, mm, ft, in), got nothing",
            "/f: wants a name of 1 to 80 characters on one line, got blank text",
            "/g: wants a name of 1 to 80 characters on one line, got text of 3 characters",
            "/h: wants a name of 1 to 80 characters on one line, got text of 81 characters");
  }

  @Test
  @SuppressWarnings({"unchecked", "rawtypes"})
  void notes_a_quantity_of_another_kind_that_came_by_a_raw_type() {
    refusals.at("a").between((Quantity<Length>) (Quantity) kilograms(1), Kind.LENGTH, 0, 2);

    assertThat(refusals.list()).extracting(Refusal::code).containsExactly(Code.WRONG_QUANTITY);
  }

  @Test
  void takes_over_what_a_factory_refuses() {
    Refusals ring = refusals.at("ring");
    assertThat(ring.trying(() -> "made")).isEqualTo("made");
    assertThat(
            ring.<String>trying(
                () -> {
                  throw new IllegalArgumentException("linear density: wants more, got 0 kg/m");
                }))
        .isNull();
    assertThat(
            ring.<String>trying(
                () -> {
                  throw new PlanRefusedException(
                      List.of(new Refusal(Code.MISSING, "/at", "a station", "nothing")));
                }))
        .isNull();

    assertThat(refusals.list())
        .containsExactly(
            new Refusal(Code.OUT_OF_RANGE, "/ring/linearDensity", "more", "0 kg/m"),
            new Refusal(Code.MISSING, "/ring/at", "a station", "nothing"));
  }

  @Test
  void lets_an_exception_of_another_form_pass() {
    assertThatThrownBy(
            () ->
                refusals.trying(
                    () -> {
                      throw new IllegalArgumentException("broken");
                    }))
        .hasMessage("broken");
  }
}
