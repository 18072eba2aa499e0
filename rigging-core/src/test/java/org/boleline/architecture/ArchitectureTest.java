package org.boleline.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.simpleNameEndingWith;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.codeUnits;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.lang.reflect.Executable;
import java.lang.reflect.Parameter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.boleline.units.Kind;
import org.jspecify.annotations.NullMarked;

/** The rules of the house that a compiler does not check. DEVELOPERS.md says them in words. */
@AnalyzeClasses(packages = "org.boleline", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
  private static final String ROOT = "org.boleline";
  private static final String INTERNAL = ROOT + ".internal..";
  private static final String UNITS = ROOT + ".units..";
  private static final String EXPLAIN = ROOT + ".explain..";
  private static final String WOOD = ROOT + ".wood..";
  private static final String JSON = ROOT + ".json..";

  /** Lowest first; packages on one floor do not import each other. */
  private static final List<Set<String>> FLOORS =
      List.of(
          Set.of("internal"),
          Set.of("units"),
          Set.of("geometry", "explain"),
          Set.of("wood", "rope"),
          Set.of("stem"),
          Set.of("plan"),
          Set.of("statics"),
          Set.of("drop"),
          Set.of("limits"),
          Set.of("study"),
          Set.of("working"),
          Set.of("json", "picture"));

  /** Words in the names of pure numbers; only these may be a bare double at the public edge. */
  private static final Set<String> PURE_NUMBERS =
      Set.of(
          "count",
          "efficiency",
          "exponent",
          "factor",
          "fraction",
          "friction",
          "index",
          "moisture",
          "multiplier",
          "percent",
          "ratio",
          "residual",
          "share",
          "wraps");

  /** Calls whose answer hangs on the machine, the country, the time or luck. */
  private static final Set<String> CALLS_WITH_A_DEFAULT =
      Set.of(
          "java.io.ByteArrayOutputStream.toString()",
          "java.io.InputStreamReader.<init>(java.io.InputStream)",
          "java.io.OutputStreamWriter.<init>(java.io.OutputStream)",
          "java.io.PrintStream.<init>(java.io.OutputStream)",
          "java.io.PrintStream.format(java.lang.String, [Ljava.lang.Object;)",
          "java.io.PrintStream.printf(java.lang.String, [Ljava.lang.Object;)",
          "java.io.PrintWriter.<init>(java.io.OutputStream)",
          "java.io.PrintWriter.format(java.lang.String, [Ljava.lang.Object;)",
          "java.io.PrintWriter.printf(java.lang.String, [Ljava.lang.Object;)",
          "java.lang.Math.random()",
          "java.lang.String.<init>([B)",
          "java.lang.String.<init>([B, int, int)",
          "java.lang.String.format(java.lang.String, [Ljava.lang.Object;)",
          "java.lang.String.formatted([Ljava.lang.Object;)",
          "java.lang.String.getBytes()",
          "java.lang.String.toLowerCase()",
          "java.lang.String.toUpperCase()",
          "java.lang.System.currentTimeMillis()",
          "java.lang.System.getProperty(java.lang.String)",
          "java.lang.System.getProperty(java.lang.String, java.lang.String)",
          "java.lang.System.getenv(java.lang.String)",
          "java.lang.System.lineSeparator()",
          "java.lang.System.nanoTime()",
          "java.nio.charset.Charset.defaultCharset()",
          "java.text.DecimalFormat.<init>()",
          "java.text.DecimalFormat.<init>(java.lang.String)",
          "java.text.DecimalFormatSymbols.<init>()",
          "java.text.DecimalFormatSymbols.getInstance()",
          "java.text.MessageFormat.<init>(java.lang.String)",
          "java.text.MessageFormat.format(java.lang.String, [Ljava.lang.Object;)",
          "java.text.NumberFormat.getInstance()",
          "java.text.NumberFormat.getIntegerInstance()",
          "java.text.NumberFormat.getNumberInstance()",
          "java.text.NumberFormat.getPercentInstance()",
          "java.time.ZoneId.systemDefault()",
          "java.util.Formatter.<init>()",
          "java.util.Formatter.<init>(java.lang.Appendable)",
          "java.util.Locale.getDefault()",
          "java.util.Locale.getDefault(java.util.Locale$Category)",
          "java.util.Random.<init>()",
          "java.util.SplittableRandom.<init>()",
          "java.util.TimeZone.getDefault()",
          "java.util.UUID.randomUUID()");

  // Packages

  @ArchTest static final ArchRule imports_point_down = classes().should(importOnlyLowerFloors());

  @ArchTest
  static final ArchRule kernels_have_no_cycles =
      slices().matching(ROOT + ".internal.(*)..").should().beFreeOfCycles().allowEmptyShould(true);

  @ArchTest
  static final ArchRule every_package_states_its_purpose_and_is_null_marked =
      classes().should(liveInANullMarkedPackage());

  // Units

  @ArchTest
  static final ArchRule kernels_know_no_units =
      noClasses()
          .that()
          .resideInAPackage(INTERNAL)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("javax.measure..", "tech.units..", "tech.uom..")
          .allowEmptyShould(true);

  @ArchTest
  static final ArchRule only_units_knows_the_implementation_of_units =
      noClasses()
          .that()
          .resideOutsideOfPackage(UNITS)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("tech.units..", "tech.uom..", "javax.measure.format..");

  @ArchTest
  static final ArchRule nobody_reads_units_with_the_parsers_of_the_implementation =
      classes()
          .should(
              notAccess("parse units by other code than our own", ArchitectureTest::parsesUnits));

  @ArchTest
  static final ArchRule no_value_keeps_a_quantity =
      fields()
          .that()
          .areNotStatic()
          .should()
          .notHaveRawType(assignableTo(Quantity.class))
          .because("equality of quantities depends on their unit; keep SI doubles");

  @ArchTest
  static final ArchRule a_bare_double_at_the_public_edge_is_a_pure_number =
      codeUnits()
          .that()
          .arePublic()
          .and()
          .areDeclaredInClassesThat()
          .arePublic()
          .and()
          .areDeclaredInClassesThat(
              // explain: its numbers stand beside the symbol that names their unit
              not(
                  resideInAPackage(UNITS)
                      .or(resideInAPackage(INTERNAL).or(resideInAPackage(EXPLAIN)))))
          .should(nameEveryBareDoubleAsAPureNumber());

  // Libraries

  @ArchTest
  static final ArchRule only_json_knows_jackson =
      noClasses()
          .that()
          .resideOutsideOfPackage(JSON)
          .should()
          .dependOnClassesThat()
          .resideInAPackage("com.fasterxml..");

  @ArchTest
  static final ArchRule commons_math_stays_behind_the_public_edge =
      codeUnits()
          .that()
          .arePublic()
          .and()
          .areDeclaredInClassesThat()
          .resideOutsideOfPackage(INTERNAL)
          .should(notShow("org.apache.commons.math3"));

  // State

  @ArchTest
  static final ArchRule no_public_field_but_constants =
      fields()
          .that()
          .arePublic()
          .should()
          .beStatic()
          .andShould()
          .beFinal()
          .andShould(notBeAnArray());

  @ArchTest
  static final ArchRule no_global_variable =
      fields()
          .that()
          .areStatic()
          .and()
          .doNotHaveModifier(JavaModifier.SYNTHETIC)
          .should()
          .beFinal()
          .andShould()
          .notHaveRawType(
              assignableTo(java.util.Random.class)
                  .or(assignableTo(java.util.AbstractMap.class))
                  .or(assignableTo(java.util.AbstractCollection.class))
                  .or(assignableTo(StringBuilder.class))
                  .or(assignableTo(ThreadLocal.class))
                  .or(resideInAPackage("java.util.concurrent.atomic"))
                  .or(resideInAPackage("java.text")));

  @ArchTest
  static final ArchRule public_types_do_not_change =
      fields()
          .that()
          .areNotStatic()
          .and()
          .areDeclaredInClassesThat()
          .arePublic()
          .and()
          .areDeclaredInClassesThat(
              not(simpleNameEndingWith("Builder").or(resideInAPackage(INTERNAL))))
          .should()
          .beFinal();

  @ArchTest
  static final ArchRule accessors_are_bare_nouns =
      noMethods().that().areNotPrivate().should().haveNameMatching("(get|set)[A-Z].*");

  @ArchTest
  static final ArchRule no_random_or_machine_dependent_call =
      classes()
          .should(
              notAccess(
                  "use a default of the machine, the time or luck",
                  access -> CALLS_WITH_A_DEFAULT.contains(access.getTarget().getFullName())));

  // What a library leaves to its host

  @ArchTest
  static final ArchRule no_standard_streams =
      GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

  @ArchTest
  static final ArchRule no_general_exceptions =
      GeneralCodingRules.NO_CLASSES_SHOULD_THROW_GENERIC_EXCEPTIONS;

  @ArchTest
  static final ArchRule no_logging =
      noClasses()
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.util.logging..", "org.slf4j..", "org.apache.logging..");

  @ArchTest
  static final ArchRule no_clock =
      noClasses()
          .should()
          .callMethodWhere(
              describe(
                  "the call asks for the time",
                  call ->
                      call.getTargetOwner().getPackageName().startsWith("java.time")
                          && call.getName().equals("now")))
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.time\\.Clock|java\\.util\\.(Date|Calendar|Timer)");

  @ArchTest
  static final ArchRule no_file_or_network_outside_json =
      noClasses()
          .that()
          .resideOutsideOfPackage(JSON)
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..", "javax.net..")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.io\\.(File.*|RandomAccessFile|PrintStream|Console)")
          .orShould()
          .dependOnClassesThat()
          .haveNameMatching("java\\.lang\\.(Process.*|Runtime)|java\\.util\\.Scanner");

  @ArchTest
  static final ArchRule resources_are_read_in_wood_and_json_only =
      noClasses()
          .that()
          .resideOutsideOfPackages(WOOD, JSON)
          .should()
          .callMethodWhere(
              describe(
                  "the call reads a resource",
                  call ->
                      Set.of("java.lang.Class", "java.lang.ClassLoader", "java.lang.Module")
                              .contains(call.getTargetOwner().getName())
                          && call.getName().startsWith("getResource")));

  @ArchTest
  static final ArchRule no_thread_is_started =
      noClasses()
          .should()
          .dependOnClassesThat()
          .haveNameMatching(
              "java\\.lang\\.Thread|java\\.util\\.concurrent\\.(Executors?|ForkJoinPool|Completable.*)");

  // How the rules look

  private static ArchCondition<JavaClass> importOnlyLowerFloors() {
    return new ArchCondition<>("import only packages on lower floors") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        String from = topPackage(item);
        if (floor(from) < 0) {
          events.add(SimpleConditionEvent.violated(item, item.getName() + " stands on no floor"));
          return;
        }
        for (Dependency dependency : item.getDirectDependenciesFromSelf()) {
          JavaClass target = dependency.getTargetClass().getBaseComponentType();
          if (!target.getPackageName().startsWith(ROOT + ".")) {
            continue;
          }
          String to = topPackage(target);
          if (!to.equals(from) && floor(to) >= floor(from)) {
            events.add(SimpleConditionEvent.violated(item, dependency.getDescription()));
          }
        }
      }
    };
  }

  /** Returns the first name below the root package, such as "internal". */
  private static String topPackage(JavaClass item) {
    String name = item.getPackageName();
    if (!name.startsWith(ROOT + ".")) {
      return "";
    }
    String below = name.substring(ROOT.length() + 1);
    int dot = below.indexOf('.');
    return dot < 0 ? below : below.substring(0, dot);
  }

  private static int floor(String topPackage) {
    for (int i = 0; i < FLOORS.size(); i++) {
      if (FLOORS.get(i).contains(topPackage)) {
        return i;
      }
    }
    return -1;
  }

  private static ArchCondition<JavaClass> liveInANullMarkedPackage() {
    return new ArchCondition<>("live in a package with a package-info that is @NullMarked") {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        if (!item.getPackage().isAnnotatedWith(NullMarked.class)) {
          events.add(
              SimpleConditionEvent.violated(
                  item, item.getPackageName() + " has no package-info with @NullMarked"));
        }
      }
    };
  }

  private static ArchCondition<JavaClass> notAccess(
      String what, Predicate<JavaAccess<?>> forbidden) {
    return new ArchCondition<>("not " + what) {
      @Override
      public void check(JavaClass item, ConditionEvents events) {
        for (JavaAccess<?> access : item.getAccessesFromSelf()) {
          if (forbidden.test(access)) {
            events.add(SimpleConditionEvent.violated(item, access.getDescription()));
          }
        }
      }
    };
  }

  private static boolean parsesUnits(JavaAccess<?> access) {
    JavaClass owner = access.getTargetOwner();
    boolean inUnits =
        owner.getPackageName().startsWith("javax.measure")
            || owner.getPackageName().startsWith("tech.u");
    String call = access.getTarget().getFullName();
    return inUnits
        && (access.getName().equals("parse")
            || call.contains(".getQuantity(java.lang.CharSequence")
            || owner.getSimpleName().endsWith("Format"));
  }

  private static ArchCondition<JavaCodeUnit> nameEveryBareDoubleAsAPureNumber() {
    return new ArchCondition<>("give a bare double only to a pure number") {
      @Override
      public void check(JavaCodeUnit item, ConditionEvents events) {
        if (takesAUnit(item)) {
          return;
        }
        if (item instanceof JavaMethod
            && isDouble(item.getRawReturnType())
            && !isPureNumber(item.getName())) {
          events.add(SimpleConditionEvent.violated(item, "returns a bare double: " + item));
        }
        for (Parameter parameter : reflect(item).getParameters()) {
          boolean bare =
              Set.of(double.class, double[].class, Double.class).contains(parameter.getType());
          if (bare && !isPureNumber(parameter.getName())) {
            events.add(
                SimpleConditionEvent.violated(
                    item, "takes a bare double '" + parameter.getName() + "': " + item));
          }
        }
      }
    };
  }

  private static Executable reflect(JavaCodeUnit item) {
    return item instanceof JavaMethod method
        ? method.reflect()
        : ((JavaConstructor) item).reflect();
  }

  private static boolean takesAUnit(JavaCodeUnit item) {
    return item.getRawParameterTypes().stream()
        .anyMatch(type -> type.isAssignableTo(Unit.class) || type.isAssignableTo(Kind.class));
  }

  private static boolean isDouble(JavaClass type) {
    return type.isEquivalentTo(double.class)
        || type.isEquivalentTo(double[].class)
        || type.isEquivalentTo(Double.class)
        || type.isEquivalentTo(OptionalDouble.class);
  }

  private static boolean isPureNumber(String name) {
    return Stream.of(name.split("(?=[A-Z])"))
        .map(word -> word.toLowerCase(Locale.ROOT))
        .anyMatch(PURE_NUMBERS::contains);
  }

  private static ArchCondition<JavaCodeUnit> notShow(String packageName) {
    return new ArchCondition<>("not show " + packageName + " in the signature") {
      @Override
      public void check(JavaCodeUnit item, ConditionEvents events) {
        Stream.concat(
                item.getRawParameterTypes().stream(),
                Stream.concat(
                    Stream.of(item.getRawReturnType()), item.getExceptionTypes().stream()))
            .filter(type -> type.getBaseComponentType().getPackageName().startsWith(packageName))
            .forEach(
                type -> events.add(SimpleConditionEvent.violated(item, item + " shows " + type)));
      }
    };
  }

  private static ArchCondition<JavaField> notBeAnArray() {
    return new ArchCondition<>("not be an array") {
      @Override
      public void check(JavaField item, ConditionEvents events) {
        if (item.getRawType().isArray()) {
          events.add(SimpleConditionEvent.violated(item, item + " is an array, which can change"));
        }
      }
    };
  }
}
