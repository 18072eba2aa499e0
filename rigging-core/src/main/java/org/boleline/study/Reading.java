package org.boleline.study;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.drop.CatchLoads;
import org.boleline.drop.DropAnswer;
import org.boleline.drop.DropFound;
import org.boleline.drop.DropNotAnalysed;
import org.boleline.drop.LetRun;
import org.boleline.explain.PlanRefusedException;
import org.boleline.limits.ArrangementChecks;
import org.boleline.plan.Plan;
import org.boleline.rope.Motion;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.ContactResult;
import org.boleline.statics.LostStability;
import org.boleline.statics.NotSolved;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.jspecify.annotations.Nullable;

/**
 * One number of the result of an arrangement: in slow motion, in a drop, or of the checks of the
 * plan's limits, which look at both.
 *
 * <p>It is named as result files name it: by a JSON pointer from the arrangement, such as {@code
 * /stems/0/base/momentMagnitude} or {@code /drop/locked/loadLeg}. For a held load it is read at the
 * end that is about to run; behind {@code /aboutToRise} stands the other end.
 *
 * <p>Immutable and thread-safe; equality is that of the pointer.
 */
public final class Reading {
  private static final String RISE = "/aboutToRise";

  /** Where a number comes from. */
  private sealed interface Origin {}

  private record Slow(Function<Solution, Found> found) implements Origin {}

  private record Drop(Function<DropFound, Found> found) implements Origin {}

  private record Checked(Function<ArrangementChecks, Found> found) implements Origin {}

  private final String pointer;
  private final String name;
  private final @Nullable Kind<?> kind;
  private final Origin origin;

  private Reading(String pointer, String name, @Nullable Kind<?> kind, Origin origin) {
    this.pointer = pointer;
    this.name = name;
    this.kind = kind;
    this.origin = origin;
  }

  private static <Q extends Quantity<Q>> Reading slow(
      String pointer, String name, Kind<Q> kind, Function<Solution, Quantity<Q>> value) {
    return new Reading(
        pointer, name, kind, new Slow(s -> Found.of(Figure.of(value.apply(s), kind))));
  }

  private static Reading slowRatio(String pointer, String name, Function<Solution, Double> value) {
    return new Reading(
        pointer, name, null, new Slow(s -> Found.of(Figure.ofRatio(value.apply(s)))));
  }

  private static <T> Found element(
      List<T> list, int index, String what, Function<T, Found> reading) {
    return index < list.size()
        ? reading.apply(list.get(index))
        : Found.none("there is no " + what + " " + (index + 1) + ", only " + list.size());
  }

  /**
   * Obtains the tension of the load leg.
   *
   * @return the reading {@code /legs/0/tension}
   */
  public static Reading loadLeg() {
    return slow("/legs/0/tension", "load leg", Kind.FORCE, s -> s.legs().get(0).tension());
  }

  /**
   * Obtains the tension at the tail.
   *
   * @return the reading {@code /tail/tension}
   */
  public static Reading tail() {
    return slow("/tail/tension", "tail", Kind.FORCE, Solution::tailTension);
  }

  /**
   * Obtains the tension of the hand behind a lowering device.
   *
   * @return the reading {@code /hand/tension}
   */
  public static Reading hand() {
    return new Reading(
        "/hand/tension",
        "hand",
        Kind.FORCE,
        new Slow(
            s ->
                s.handTension()
                    .map(force -> Found.of(Figure.of(force, Kind.FORCE)))
                    .orElse(Found.none("the tail ends on no lowering device"))));
  }

  /**
   * Obtains the force of the rope on a contact.
   *
   * @param contactIndex index of the contact in the arrangement, zero or more
   * @return the reading {@code /contacts/i/forceMagnitude}
   */
  public static Reading contactForce(int contactIndex) {
    return contact(
        contactIndex,
        "/forceMagnitude",
        "force on point " + (contactIndex + 1),
        ContactResult::forceMagnitude);
  }

  private static Reading contact(
      int index, String member, String name, Function<ContactResult, Quantity<Force>> value) {
    return new Reading(
        "/contacts/" + index(index) + member,
        name,
        Kind.FORCE,
        new Slow(
            s ->
                element(
                    s.contacts(),
                    index,
                    "point",
                    c -> Found.of(Figure.of(value.apply(c), Kind.FORCE)))));
  }

  private static int index(int index) {
    if (index < 0) {
      throw new IllegalArgumentException("index: wants zero or more, got " + index);
    }
    return index;
  }

  private static <Q extends Quantity<Q>> Reading stem(
      int index, String member, String what, Kind<Q> kind, Function<StemResult, Quantity<Q>> of) {
    return new Reading(
        "/stems/" + index(index) + member,
        what + " of stem " + (index + 1),
        kind,
        new Slow(
            s -> element(s.stems(), index, "stem", t -> Found.of(Figure.of(of.apply(t), kind)))));
  }

  /**
   * Obtains the moment at the base of a stem, own weight and rigging together.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @return the reading {@code /stems/i/base/momentMagnitude}
   */
  public static Reading baseMoment(int stemIndex) {
    return stem(
        stemIndex,
        "/base/momentMagnitude",
        "base moment",
        Kind.MOMENT,
        s -> s.base().momentMagnitude());
  }

  /**
   * Obtains the moment at the base of a stem that comes of the rigging alone.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @return the reading {@code /stems/i/riggingBase/momentMagnitude}
   */
  public static Reading riggingBaseMoment(int stemIndex) {
    return stem(
        stemIndex,
        "/riggingBase/momentMagnitude",
        "base moment of the rigging",
        Kind.MOMENT,
        s -> s.riggingBase().momentMagnitude());
  }

  /**
   * Obtains the greatest bending stress of a stem.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @return the reading {@code /stems/i/bendingStress/value}
   */
  public static Reading bendingStress(int stemIndex) {
    return stem(
        stemIndex,
        "/bendingStress/value",
        "bending stress",
        Kind.PRESSURE,
        s -> s.bendingStress().value());
  }

  /**
   * Obtains the greatest compression of a fibre of a stem.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @return the reading {@code /stems/i/compressionStress/value}
   */
  public static Reading compressionStress(int stemIndex) {
    return stem(
        stemIndex,
        "/compressionStress/value",
        "compression stress",
        Kind.PRESSURE,
        s -> s.compressionStress().value());
  }

  /**
   * Obtains the greatest tension of a fibre of a stem.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @return the reading {@code /stems/i/tensionStress/value}
   */
  public static Reading tensionStress(int stemIndex) {
    return stem(
        stemIndex,
        "/tensionStress/value",
        "tension stress",
        Kind.PRESSURE,
        s -> s.tensionStress().value());
  }

  /**
   * Obtains how far the tip of a stem moves.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @return the reading {@code /stems/i/tip/movementMagnitude}
   */
  public static Reading tipMovement(int stemIndex) {
    return stem(
        stemIndex,
        "/tip/movementMagnitude",
        "tip movement",
        Kind.LENGTH,
        s -> s.tipMovement().magnitude());
  }

  /**
   * Obtains how far a mark of a stem moves.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @param markIndex index of the mark on the stem, zero or more
   * @return the reading {@code /stems/i/marks/j/movementMagnitude}
   */
  public static Reading markMovement(int stemIndex, int markIndex) {
    return new Reading(
        "/stems/" + index(stemIndex) + "/marks/" + index(markIndex) + "/movementMagnitude",
        "movement of mark " + (markIndex + 1) + " of stem " + (stemIndex + 1),
        Kind.LENGTH,
        new Slow(
            s ->
                element(
                    s.stems(),
                    stemIndex,
                    "stem",
                    t ->
                        element(
                            t.marks(),
                            markIndex,
                            "mark",
                            m -> Found.of(Figure.of(m.movement().magnitude(), Kind.LENGTH))))));
  }

  /**
   * Obtains the multiple of the load at which a stem comes to its strength.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @return the reading {@code /stems/i/loadFactorToStrength}
   */
  public static Reading loadFactorToStrength(int stemIndex) {
    return new Reading(
        "/stems/" + index(stemIndex) + "/loadFactorToStrength",
        "load factor to strength of stem " + (stemIndex + 1),
        null,
        new Slow(
            s ->
                element(
                    s.stems(),
                    stemIndex,
                    "stem",
                    t ->
                        t.strengthReach()
                            .map(reach -> Found.of(Figure.ofRatio(reach.loadFactor())))
                            .orElse(
                                Found.none(
                                    "no strength is known, or none is come to before the end of"
                                        + " the search")))));
  }

  /**
   * Obtains the least stiffness of the loaded stems over that without load.
   *
   * @return the reading {@code /stiffnessRatio}
   */
  public static Reading stiffnessRatio() {
    return slowRatio("/stiffnessRatio", "stiffness ratio", Solution::stiffnessRatio);
  }

  /**
   * Obtains the largest unbalanced force over the load.
   *
   * @return the reading {@code /residual/force}
   */
  public static Reading residualForce() {
    return slowRatio("/residual/force", "residual force", Solution::residualForceRatio);
  }

  /**
   * Obtains the largest unbalanced moment over load times length.
   *
   * @return the reading {@code /residual/moment}
   */
  public static Reading residualMoment() {
    return slowRatio("/residual/moment", "residual moment", Solution::residualMomentRatio);
  }

  private static <Q extends Quantity<Q>> Reading drop(
      String member, String name, Kind<Q> kind, Function<DropFound, Quantity<Q>> value) {
    return new Reading(
        "/drop/" + member,
        name,
        kind,
        new Drop(found -> Found.of(Figure.of(value.apply(found), kind))));
  }

  /** What a catch gives: locked, or let run. */
  private enum Way {
    LOCKED("locked", "made fast"),
    LET_RUN("letRun", "let run");

    final String member;
    final String words;

    Way(String member, String words) {
      this.member = member;
      this.words = words;
    }

    Found loads(DropFound found, Function<CatchLoads, Found> reading) {
      return this == LOCKED
          ? reading.apply(found.loads())
          : run(found, r -> reading.apply(r.loads()));
    }

    static Found run(DropFound found, Function<LetRun, Found> reading) {
      return found.letRun().map(reading).orElse(Found.none("the drop states no rope that runs"));
    }

    static Found stopped(DropFound found, Function<LetRun.Stopped, Found> reading) {
      return run(
          found,
          r ->
              r instanceof LetRun.Stopped stopped
                  ? reading.apply(stopped)
                  : Found.none("the piece never stops"));
    }
  }

  private static Reading catchLoadLeg(Way way) {
    return new Reading(
        "/drop/" + way.member + "/loadLeg",
        "load leg of the catch, " + way.words,
        Kind.FORCE,
        new Drop(found -> way.loads(found, l -> Found.of(Figure.of(l.loadLeg(), Kind.FORCE)))));
  }

  private static Reading catchPointForce(Way way, int index) {
    return new Reading(
        "/drop/" + way.member + "/contacts/" + index(index) + "/forceMagnitude",
        "force on bearing point " + (index + 1) + " in the catch, " + way.words,
        Kind.FORCE,
        new Drop(
            found ->
                way.loads(
                    found,
                    l ->
                        element(
                            l.points(),
                            index,
                            "bearing point",
                            p -> Found.of(Figure.of(p.magnitude(), Kind.FORCE))))));
  }

  private static Reading catchBaseMoment(Way way, int stem) {
    return new Reading(
        "/drop/" + way.member + "/stems/" + index(stem) + "/baseMomentMagnitude",
        "base moment of the rope on stem " + (stem + 1) + " in the catch, " + way.words,
        Kind.MOMENT,
        new Drop(
            found ->
                way.loads(
                    found,
                    l ->
                        element(
                            found.baseMoments(l),
                            stem,
                            "stem",
                            m -> Found.of(Figure.of(m.magnitude(), Kind.MOMENT))))));
  }

  private static Reading letRunOf(
      String member, String name, Function<LetRun.Stopped, Quantity<Length>> value) {
    return new Reading(
        "/drop/letRun/" + member,
        name,
        Kind.LENGTH,
        new Drop(
            found -> Way.stopped(found, r -> Found.of(Figure.of(value.apply(r), Kind.LENGTH)))));
  }

  /**
   * Obtains the greatest tension of the load leg when the rope is made fast.
   *
   * @return the reading {@code /drop/locked/loadLeg}
   */
  public static Reading lockedLoadLeg() {
    return catchLoadLeg(Way.LOCKED);
  }

  /**
   * Obtains the greatest force on a point when the rope is made fast.
   *
   * @param pointIndex index among the points that the rope bears on, from the piece, zero or more
   * @return the reading {@code /drop/locked/contacts/i/forceMagnitude}
   */
  public static Reading lockedPointForce(int pointIndex) {
    return catchPointForce(Way.LOCKED, pointIndex);
  }

  /**
   * Obtains the greatest moment of the rope about the base of a stem when the rope is made fast.
   *
   * @param stemIndex index of the stem in the plan, zero or more
   * @return the reading {@code /drop/locked/stems/i/baseMomentMagnitude}
   */
  public static Reading lockedBaseMoment(int stemIndex) {
    return catchBaseMoment(Way.LOCKED, stemIndex);
  }

  /**
   * Obtains the room below the piece that it needs when the rope is made fast.
   *
   * @return the reading {@code /drop/locked/clearanceNeeded}
   */
  public static Reading lockedClearance() {
    return drop(
        "locked/clearanceNeeded",
        "clearance needed, made fast",
        Kind.LENGTH,
        DropFound::clearanceNeeded);
  }

  /**
   * Obtains the greatest tension of the load leg when the rope runs as stated.
   *
   * @return the reading {@code /drop/letRun/loadLeg}
   */
  public static Reading letRunLoadLeg() {
    return catchLoadLeg(Way.LET_RUN);
  }

  /**
   * Obtains the greatest force on a point when the rope runs as stated.
   *
   * @param pointIndex index among the points that the rope bears on, from the piece, zero or more
   * @return the reading {@code /drop/letRun/contacts/i/forceMagnitude}
   */
  public static Reading letRunPointForce(int pointIndex) {
    return catchPointForce(Way.LET_RUN, pointIndex);
  }

  /**
   * Obtains how far the rope runs.
   *
   * @return the reading {@code /drop/letRun/run}
   */
  public static Reading run() {
    return letRunOf("run", "run", LetRun.Stopped::run);
  }

  /**
   * Obtains the room below the piece that it needs when the rope runs as stated.
   *
   * @return the reading {@code /drop/letRun/clearanceNeeded}
   */
  public static Reading letRunClearance() {
    return letRunOf(
        "clearanceNeeded", "clearance needed, let run", LetRun.Stopped::clearanceNeeded);
  }

  /**
   * Obtains the demand over the capacity of one check of the plan's limits.
   *
   * @param checkIndex index of the check in the result of the arrangement, zero or more
   * @return the reading {@code /checks/i/used}
   */
  public static Reading checkUsed(int checkIndex) {
    return new Reading(
        "/checks/" + index(checkIndex) + "/used",
        "demand over capacity of check " + (checkIndex + 1),
        null,
        new Checked(
            c ->
                element(
                    c.checks(),
                    checkIndex,
                    "check",
                    check -> Found.of(Figure.ofRatio(check.usedShare())))));
  }

  /**
   * Obtains the greatest demand over capacity among the plan's limits: that of the weakest link.
   *
   * @return the reading {@code /mostUsed}
   */
  public static Reading mostUsed() {
    return new Reading(
        "/mostUsed",
        "greatest demand over capacity",
        null,
        new Checked(
            c ->
                c.weakest()
                    .map(check -> Found.of(Figure.ofRatio(check.usedShare())))
                    .orElse(Found.none("the limits of the plan check nothing here"))));
  }

  /**
   * Obtains the greatest demand over capacity times the factor that is asked for: at most 1 where
   * all factors that the plan asks for are met.
   *
   * @return the reading {@code /mostUsedOfAsked}
   */
  public static Reading mostUsedOfAsked() {
    return new Reading(
        "/mostUsedOfAsked",
        "greatest demand over capacity times the factor asked",
        null,
        new Checked(
            c ->
                c.mostUsedOfAskedShare().stream()
                    .mapToObj(share -> Found.of(Figure.ofRatio(share)))
                    .findFirst()
                    .orElse(Found.none("no factor is asked for what is checked here"))));
  }

  private static final Pattern INDEXED = Pattern.compile("(.*?)/(0|[1-9][0-9]{0,3})(/.*)");

  /**
   * Obtains a reading by its name in result files.
   *
   * @param pointer a JSON pointer from the arrangement's object of a result file, not null
   * @return the reading
   * @throws IllegalArgumentException if it names no number that can be read
   */
  public static Reading parse(String pointer) {
    requireNonNull(pointer, "pointer");
    if (pointer.startsWith(RISE)) {
      return parse(pointer.substring(RISE.length())).aboutToRise();
    }
    @Nullable Reading found = plain(pointer);
    Matcher indexed = INDEXED.matcher(pointer);
    if (found == null && indexed.matches()) {
      found = at(indexed.group(1), Integer.parseInt(indexed.group(2)), indexed.group(3));
    }
    if (found == null) {
      throw new IllegalArgumentException(
          "reading: wants the place of a number in a result, such as"
              + " \"/stems/0/base/momentMagnitude\", got \""
              + pointer
              + "\"");
    }
    return found;
  }

  private static @Nullable Reading plain(String pointer) {
    return switch (pointer) {
      case "/legs/0/tension" -> loadLeg();
      case "/tail/tension" -> tail();
      case "/hand/tension" -> hand();
      case "/stiffnessRatio" -> stiffnessRatio();
      case "/mostUsed" -> mostUsed();
      case "/mostUsedOfAsked" -> mostUsedOfAsked();
      case "/residual/force" -> residualForce();
      case "/residual/moment" -> residualMoment();
      case "/drop/locked/loadLeg" -> lockedLoadLeg();
      case "/drop/locked/clearanceNeeded" -> lockedClearance();
      case "/drop/locked/stretch" ->
          drop("locked/stretch", "stretch, made fast", Kind.LENGTH, DropFound::stretch);
      case "/drop/locked/overWeight" ->
          new Reading(
              pointer,
              "load leg over weight, made fast",
              null,
              new Drop(found -> Found.of(Figure.ofRatio(found.overWeightRatio()))));
      case "/drop/letRun/loadLeg" -> letRunLoadLeg();
      case "/drop/letRun/run" -> run();
      case "/drop/letRun/clearanceNeeded" -> letRunClearance();
      default -> null;
    };
  }

  private static @Nullable Reading at(String list, int index, String member) {
    return switch (list) {
      case "/contacts" ->
          switch (member) {
            case "/forceMagnitude" -> contactForce(index);
            case "/tensionIn" ->
                contact(
                    index, member, "tension into point " + (index + 1), ContactResult::tensionIn);
            case "/tensionOut" ->
                contact(
                    index,
                    member,
                    "tension out of point " + (index + 1),
                    ContactResult::tensionOut);
            default -> null;
          };
      case "/stems" -> ofStem(index, member);
      case "/checks" -> member.equals("/used") ? checkUsed(index) : null;
      case "/drop/locked/contacts" ->
          member.equals("/forceMagnitude") ? lockedPointForce(index) : null;
      case "/drop/letRun/contacts" ->
          member.equals("/forceMagnitude") ? letRunPointForce(index) : null;
      case "/drop/locked/stems" ->
          member.equals("/baseMomentMagnitude") ? lockedBaseMoment(index) : null;
      case "/drop/letRun/stems" ->
          member.equals("/baseMomentMagnitude") ? catchBaseMoment(Way.LET_RUN, index) : null;
      default -> null;
    };
  }

  private static @Nullable Reading ofStem(int index, String member) {
    Matcher mark = INDEXED.matcher(member);
    if (mark.matches()) {
      return mark.group(1).equals("/marks") && mark.group(3).equals("/movementMagnitude")
          ? markMovement(index, Integer.parseInt(mark.group(2)))
          : null;
    }
    return switch (member) {
      case "/base/momentMagnitude" -> baseMoment(index);
      case "/riggingBase/momentMagnitude" -> riggingBaseMoment(index);
      case "/bendingStress/value" -> bendingStress(index);
      case "/compressionStress/value" -> compressionStress(index);
      case "/tensionStress/value" -> tensionStress(index);
      case "/tip/movementMagnitude" -> tipMovement(index);
      case "/loadFactorToStrength" -> loadFactorToStrength(index);
      default -> null;
    };
  }

  /**
   * Obtains the same reading at the other end of a held load, where it is about to rise.
   *
   * @return the reading
   * @throws IllegalArgumentException if this one is of a drop, or at that end already
   */
  public Reading aboutToRise() {
    if (!(origin instanceof Slow slow) || pointer.startsWith(RISE)) {
      throw new IllegalArgumentException(
          "reading: wants one of slow motion behind " + RISE + ", got \"" + pointer + "\"");
    }
    return new Reading(
        RISE + pointer,
        name + ", about to rise",
        kind,
        new Slow(
            s ->
                s.otherEnd()
                    .map(slow.found)
                    .orElse(Found.none("the load is not held: it has one end only"))));
  }

  /**
   * Tells which end of a held load is read. Names of readings say it only of the other end, so what
   * is told of a held load wants this beside the name.
   *
   * @param motion of the arrangement that is read, not null
   * @return {@code about to run} or {@code about to rise}; empty if the load is not held, or the
   *     number is of a drop or of checks, which look at both ends
   */
  public Optional<String> end(Motion motion) {
    requireNonNull(motion, "motion");
    return motion == Motion.HELD && origin instanceof Slow
        ? Optional.of(pointer.startsWith(RISE) ? "about to rise" : "about to run")
        : Optional.empty();
  }

  /**
   * Returns the name that people read. It counts from one, as people do; pointers count from zero.
   *
   * @return for instance {@code base moment of stem 1}
   */
  public String name() {
    return name;
  }

  /** Returns the name, and for a held load the end that is read. */
  String nameIn(Motion motion) {
    return pointer.startsWith(RISE) ? name : end(motion).map(end -> name + ", " + end).orElse(name);
  }

  /**
   * Returns the name in result files.
   *
   * @return a JSON pointer from the arrangement
   */
  public String pointer() {
    return pointer;
  }

  /**
   * Returns what the number is of.
   *
   * @return the kind; empty for a pure number
   */
  public Optional<Kind<?>> kind() {
    return Optional.ofNullable(kind);
  }

  /** Returns the kind, or null for a pure number. */
  @Nullable Kind<?> kindOrNull() {
    return kind;
  }

  /**
   * Tells whether the number comes of a drop alone.
   *
   * @return true if it does; false for slow motion and for checks
   */
  public boolean isOfDrop() {
    return origin instanceof Drop;
  }

  /** Tells whether the number comes of the checks of the plan's limits. */
  boolean isOfChecks() {
    return origin instanceof Checked;
  }

  /** Tells whether the number asks how much more load reaches a strength. */
  boolean isOfStrength() {
    return pointer.endsWith("/loadFactorToStrength");
  }

  /**
   * Reads the number.
   *
   * @param of what was evaluated, not null
   * @return the number; none if the arrangement is not stable, was not solved, or gives no such
   *     number
   */
  public Found value(Evaluation of) {
    if (origin instanceof Slow slow) {
      return ofSlow(of.slow(), slow.found);
    }
    if (origin instanceof Checked checked) {
      return of.checks()
          .map(c -> c.whyNot().isEmpty() ? checked.found.apply(c) : Found.none(c.whyNot()))
          .orElse(Found.none("the plan states no limits, or they were left out"));
    }
    Drop drop = (Drop) origin;
    @Nullable DropAnswer answer = of.drop().orElse(null);
    if (answer instanceof DropFound found) {
      return drop.found.apply(found);
    }
    return Found.none(
        answer instanceof DropNotAnalysed not
            ? "the drop was not analysed: " + not.reason()
            : "the arrangement states no drop, or it was left out");
  }

  private static Found ofSlow(ArrangementResult result, Function<Solution, Found> reading) {
    if (result instanceof Solution solution) {
      return reading.apply(solution);
    }
    if (result instanceof LostStability lost) {
      double own = lost.ownWeightFactor();
      return Found.none(
          own < 1
              ? "unstable under "
                  + QuantityText.number(own, 3)
                  + " of its own weight, before the load"
              : "unstable at " + QuantityText.number(lost.loadFactor(), 3) + " of the load");
    }
    return Found.none("not solved: " + ((NotSolved) result).reason());
  }

  /**
   * Evaluates a plan and reads the number.
   *
   * @param plan the plan, not null
   * @param arrangement id of the arrangement, not null
   * @return the number; none, with all reasons, if the plan cannot be analysed
   */
  public Found value(Plan plan, String arrangement) {
    return values(plan, arrangement, List.of(this)).get(0);
  }

  /** Evaluates a plan once for several readings; a refused plan has none. */
  static List<Found> values(Plan plan, String arrangement, List<Reading> readings) {
    try {
      Evaluation evaluation = Evaluation.of(plan, arrangement, readings);
      return readings.stream().map(reading -> reading.value(evaluation)).toList();
    } catch (PlanRefusedException e) {
      return readings.stream().map(reading -> refused(e)).toList();
    }
  }

  /** Reads with one input replaced; an input outside its range gives no figures. */
  static List<Found> values(
      Plan plan, String arrangement, List<Reading> readings, Input input, double si) {
    try {
      return values(input.with(plan, si), arrangement, readings);
    } catch (PlanRefusedException e) {
      return readings.stream().map(reading -> refused(e)).toList();
    }
  }

  /** Says why a refused plan has no figure. */
  static Found refused(PlanRefusedException e) {
    return Found.none(
        "the plan is refused: "
            + String.join("; ", e.refusals().stream().map(r -> r.sentence()).toList()));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Reading r && pointer.equals(r.pointer);
  }

  @Override
  public int hashCode() {
    return pointer.hashCode();
  }

  @Override
  public String toString() {
    return pointer;
  }
}
