package org.boleline.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Modifier;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KindTest {
  static List<Kind<?>> kinds() {
    return Arrays.stream(Kind.class.getFields())
        .filter(field -> Modifier.isStatic(field.getModifiers()))
        .<Kind<?>>map(
            field -> {
              try {
                return (Kind<?>) field.get(null);
              } catch (IllegalAccessException e) {
                throw new AssertionError(field.getName(), e);
              }
            })
        .toList();
  }

  static Stream<Kind<?>> each() {
    return kinds().stream();
  }

  @ParameterizedTest
  @MethodSource("each")
  void the_first_symbol_is_the_ucum_code_of_the_si_unit(Kind<?> kind) {
    assertThat(QuantityText.symbols(kind).get(0)).isEqualTo(kind.ucum());
    assertThat(QuantityText.factor(kind.ucum())).isEqualByComparingTo("1");
  }

  @ParameterizedTest
  @MethodSource("each")
  void what_is_wanted_can_be_said_for_every_kind(Kind<?> kind) {
    assertThat(QuantityText.wants(kind)).contains(kind.name()).contains("12.5 " + kind.ucum());
  }

  @Test
  void names_tell_the_kinds_apart() {
    assertThat(kinds().stream().map(Kind::name)).doesNotHaveDuplicates().hasSize(20);
  }
}
