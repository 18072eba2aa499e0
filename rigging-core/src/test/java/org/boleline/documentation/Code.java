package org.boleline.documentation;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.boleline.explain.Datum;
import org.boleline.explain.Formula;
import org.boleline.explain.Source;
import org.boleline.wood.Species;
import org.boleline.wood.SpeciesPack;

/** What the code of the library holds that pages must name. */
final class Code {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .importPackages("org.boleline");

  private Code() {}

  /**
   * All constants of a type in all classes, private ones too, in order of class and declaration.
   */
  static <T> List<T> constants(Class<T> type) {
    List<T> found = new ArrayList<>();
    CLASSES.stream()
        .sorted(Comparator.comparing(c -> c.getName()))
        .filter(c -> c.getFields().stream().anyMatch(f -> f.getRawType().isEquivalentTo(type)))
        .forEach(
            c -> {
              for (Field field : c.reflect().getDeclaredFields()) {
                if (field.getType() == type && Modifier.isStatic(field.getModifiers())) {
                  found.add(type.cast(value(field)));
                }
              }
            });
    return found;
  }

  static Object constant(String className, String field) {
    try {
      return value(Class.forName(className).getDeclaredField(field));
    } catch (ReflectiveOperationException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }

  private static Object value(Field field) {
    try {
      field.setAccessible(true);
      return field.get(null);
    } catch (IllegalAccessException e) {
      throw new LinkageError(e.getMessage(), e);
    }
  }

  /** All equations, in order of class and declaration. */
  static List<Formula> formulas() {
    return constants(Formula.class);
  }

  /** All sources: of equations, of data, of defaults. */
  static Set<Source> sources() {
    Set<Source> sources = new LinkedHashSet<>();
    formulas().forEach(formula -> sources.add(formula.source()));
    sources.addAll(constants(Source.class));
    for (SpeciesPack pack : List.of(SpeciesPack.standard(), SpeciesPack.europeanFromMemory())) {
      for (Species species : pack.all()) {
        species.data().stream().map(Datum::source).forEach(sources::add);
      }
    }
    return sources;
  }

  /** The Java sources of the library. */
  static List<Path> files() {
    try (var files = java.nio.file.Files.walk(Docs.file("rigging-core/src/main/java"))) {
      return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
