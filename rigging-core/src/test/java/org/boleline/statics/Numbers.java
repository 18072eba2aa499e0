package org.boleline.statics;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.boleline.explain.Caution;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Plan;
import org.boleline.units.Kind;

/**
 * All that a result holds, field by field, as text that is exact to the last bit.
 *
 * <p>Reads private fields, so that nothing is forgotten when a result grows. The plan itself is
 * left out.
 */
final class Numbers {
  private final List<String> lines = new ArrayList<>();
  private final boolean cautions;

  private Numbers(boolean cautions) {
    this.cautions = cautions;
  }

  /** Every number and word of a result. */
  static List<String> of(Object result) {
    Numbers numbers = new Numbers(true);
    numbers.add("", result);
    return numbers.lines;
  }

  /** The same without cautions, which name the place of the arrangement in the plan. */
  static List<String> withoutCautions(Object result) {
    Numbers numbers = new Numbers(false);
    numbers.add("", result);
    return numbers.lines;
  }

  private void add(String name, Object value) {
    if (value instanceof Plan || value instanceof Arrangement) {
      return;
    }
    if (value instanceof Caution && !cautions) {
      return;
    }
    if (value instanceof Double number) {
      lines.add(name + " " + Double.toHexString(number));
    } else if (value == null
        || value instanceof String
        || value instanceof Number
        || value instanceof Boolean
        || value instanceof Enum<?>
        || value instanceof Kind<?>) {
      lines.add(name + " " + value);
    } else if (value instanceof Optional<?> optional) {
      add(name, optional.orElse(null));
    } else if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        add(name + "/" + i, list.get(i));
      }
    } else if (value instanceof Map<?, ?> map) {
      new TreeMap<Object, Object>(map).forEach((key, entry) -> add(name + "/" + key, entry));
    } else if (value.getClass().isArray()) {
      for (int i = 0; i < Array.getLength(value); i++) {
        add(name + "/" + i, Array.get(value, i));
      }
    } else if (value.getClass().getName().startsWith("org.boleline.")) {
      addFields(name, value);
    } else {
      throw new AssertionError("unknown in a result: " + value.getClass() + " at " + name);
    }
  }

  private void addFields(String name, Object value) {
    for (Field field : value.getClass().getDeclaredFields()) {
      if (Modifier.isStatic(field.getModifiers())) {
        continue;
      }
      field.setAccessible(true);
      try {
        add(name + "/" + field.getName(), field.get(value));
      } catch (IllegalAccessException e) {
        throw new AssertionError(e);
      }
    }
  }
}
