package org.boleline.examples.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Tagline;
import org.boleline.plan.Tail;
import org.boleline.statics.Solution;

/** What two arrangements of a plan state differently. */
final class PlanDifference {
  private static final double SAME = 1e-9;

  /** A point of the first arrangement and the one of the second that stands for it, by index. */
  private record Match(int before, int after) {}

  private final Wording wording;
  private final Arrangement before;
  private final Arrangement after;

  /** Points that stand for each other. */
  private final List<Match> pairs = new ArrayList<>();

  private final List<Integer> removed = new ArrayList<>();
  private final List<Integer> added = new ArrayList<>();

  PlanDifference(Arrangement before, Arrangement after, Wording wording) {
    this.before = before;
    this.after = after;
    this.wording = wording;
    match();
  }

  /** Indexes of the points that the second arrangement has more. */
  List<Integer> added() {
    return List.copyOf(added);
  }

  /** Whether both have as many points. */
  boolean hasSamePoints() {
    return added.isEmpty() && removed.isEmpty();
  }

  /** Whether both run over the same number of points with the same hardware. */
  boolean hasSameHardware() {
    return hasSamePoints()
        && pairs.stream()
            .allMatch(
                p ->
                    before
                        .contacts()
                        .get(p.before())
                        .hardware()
                        .equals(after.contacts().get(p.after()).hardware()));
  }

  /** Whether the point that a point of the second arrangement stands for bore, or is new. */
  boolean boreBefore(int index, Solution state) {
    return pairs.stream()
        .filter(pair -> pair.after() == index)
        .allMatch(pair -> state.contacts().get(pair.before()).bears());
  }

  /** The differences in words, the ones that reach furthest first. */
  List<String> phrases() {
    List<String> phrases = new ArrayList<>();
    if (before.motion() != after.motion()) {
      phrases.add(before.motion().text() + " becomes " + after.motion().text());
    }
    tail(phrases);
    points(phrases);
    hardware(phrases);
    length(phrases, "sling", c -> Wording.metres(c.sling()));
    length(phrases, "offset", c -> Wording.metres(c.offset()));
    ropeWeight(phrases);
    opens(phrases);
    if (!before.tagline().equals(after.tagline())) {
      phrases.add(
          "the load leg hangs "
              + after.tagline().map(PlanDifference::aside).orElse("plumb")
              + " instead of "
              + before.tagline().map(PlanDifference::aside).orElse("plumb"));
    }
    return phrases;
  }

  private static String aside(Tagline line) {
    return Figures.stated(Wording.degrees(line.angle()))
        + "° out of plumb toward azimuth "
        + Figures.stated(Wording.degrees(line.azimuth()))
        + "°";
  }

  /** Finds which point stands for which: those at the same place, then those in between. */
  private void match() {
    List<Contact> a = before.contacts();
    List<Contact> b = after.contacts();
    int[][] common = new int[a.size() + 1][b.size() + 1];
    for (int i = a.size() - 1; i >= 0; i--) {
      for (int j = b.size() - 1; j >= 0; j--) {
        int same = likeness(a.get(i), b.get(j));
        common[i][j] =
            Math.max(
                same == 0 ? 0 : same + common[i + 1][j + 1],
                Math.max(common[i + 1][j], common[i][j + 1]));
      }
    }
    int i = 0;
    int j = 0;
    List<Integer> onlyBefore = new ArrayList<>();
    List<Integer> onlyAfter = new ArrayList<>();
    while (i < a.size() || j < b.size()) {
      int same = i < a.size() && j < b.size() ? likeness(a.get(i), b.get(j)) : 0;
      if (same > 0 && common[i][j] == same + common[i + 1][j + 1]) {
        between(onlyBefore, onlyAfter);
        pairs.add(new Match(i++, j++));
      } else if (j == b.size() || (i < a.size() && common[i + 1][j] >= common[i][j + 1])) {
        onlyBefore.add(i++);
      } else {
        onlyAfter.add(j++);
      }
    }
    between(onlyBefore, onlyAfter);
  }

  private void between(List<Integer> onlyBefore, List<Integer> onlyAfter) {
    int moved = Math.min(onlyBefore.size(), onlyAfter.size());
    for (int k = 0; k < moved; k++) {
      pairs.add(new Match(onlyBefore.get(k), onlyAfter.get(k)));
    }
    removed.addAll(onlyBefore.subList(moved, onlyBefore.size()));
    added.addAll(onlyAfter.subList(moved, onlyAfter.size()));
    onlyBefore.clear();
    onlyAfter.clear();
  }

  /** Zero for another place, one for the same station, two for the same offset from it as well. */
  private static int likeness(Contact a, Contact b) {
    if (!isSamePlace(a, b)) {
      return 0;
    }
    return isSame(Wording.metres(a.offset()), Wording.metres(b.offset())) ? 2 : 1;
  }

  private static boolean isSamePlace(Contact a, Contact b) {
    return a.stem().equals(b.stem()) && isSame(Wording.metres(a.at()), Wording.metres(b.at()));
  }

  private static boolean isSame(double a, double b) {
    return Math.abs(a - b) <= SAME * (1 + Math.abs(a));
  }

  private void tail(List<String> phrases) {
    if (before.tail() instanceof Tail.Device a && after.tail() instanceof Tail.Device b) {
      if (!wording.tail(a).equals(wording.tail(b))) {
        phrases.add(
            "the device moves from "
                + wording.place(a.stem(), a.at())
                + " to "
                + wording.place(b.stem(), b.at()));
      }
      if (!isSame(a.wraps(), b.wraps())) {
        phrases.add(
            Wording.wraps(a.wraps())
                + (a.wraps() == 1 ? " becomes " : " become ")
                + Wording.wraps(b.wraps()));
      }
      if (!isSame(a.friction(), b.friction())) {
        phrases.add(
            "the friction of the device goes from "
                + Figures.stated(a.friction())
                + " to "
                + Figures.stated(b.friction()));
      }
      if (!isSame(Wording.metres(a.offset()), Wording.metres(b.offset()))) {
        phrases.add(
            "the device's offset goes from "
                + wording.length(a.offset())
                + " to "
                + wording.length(b.offset()));
      }
    } else if (!before.tail().equals(after.tail())) {
      phrases.add("the tail goes " + toward(after.tail()) + " instead of " + toward(before.tail()));
    }
  }

  private String toward(Tail tail) {
    return (tail instanceof Tail.Down ? "" : "to ") + wording.tail(tail);
  }

  private void points(List<String> phrases) {
    for (Match pair : pairs) {
      Contact a = before.contacts().get(pair.before());
      Contact b = after.contacts().get(pair.after());
      if (!isSamePlace(a, b)) {
        phrases.add(
            "the point at "
                + wording.place(a.stem(), a.at())
                + " moves to "
                + wording.place(b.stem(), b.at()));
      }
    }
    if (!added.isEmpty()) {
      phrases.add(named(after, added) + (added.size() > 1 ? " are added" : " is added"));
    }
    if (!removed.isEmpty()) {
      phrases.add(named(before, removed) + (removed.size() > 1 ? " are left out" : " is left out"));
    }
  }

  private String named(Arrangement arrangement, List<Integer> indexes) {
    String named = wording.contacts(indexes.stream().map(arrangement.contacts()::get).toList());
    return named.contains(",") ? named + "," : named;
  }

  private void hardware(List<String> phrases) {
    Map<String, List<Match>> changes = new LinkedHashMap<>();
    for (Match pair : pairs) {
      Contact a = before.contacts().get(pair.before());
      Contact b = after.contacts().get(pair.after());
      if (!a.hardware().equals(b.hardware())) {
        String key =
            Wording.hardware(a.hardware(), true) + "\n" + Wording.hardware(b.hardware(), true);
        changes.computeIfAbsent(key, k -> new ArrayList<>()).add(pair);
      }
    }
    changes.forEach((key, changed) -> phrases.add(becomes(changed)));
  }

  private String becomes(List<Match> changed) {
    boolean several = changed.size() > 1;
    Contact from = before.contacts().get(changed.get(0).before());
    Contact to = after.contacts().get(changed.get(0).after());
    return Wording.hardware(from.hardware(), several)
        + (several ? " become " : " becomes ")
        + Wording.hardware(to.hardware(), several)
        + at(changed);
  }

  /** Says at which points, unless it is all of them. */
  private String at(List<Match> changed) {
    if (changed.size() == after.contacts().size()) {
      return "";
    }
    return " at "
        + wording.places(changed.stream().map(p -> after.contacts().get(p.after())).toList());
  }

  private void ropeWeight(List<String> phrases) {
    for (boolean counts : new boolean[] {true, false}) {
      List<Match> changed =
          pairs.stream()
              .filter(p -> after.contacts().get(p.after()).hasRopeWeight() == counts)
              .filter(p -> before.contacts().get(p.before()).hasRopeWeight() != counts)
              .toList();
      if (!changed.isEmpty()) {
        phrases.add(
            "the weight of the rope behind the "
                + (changed.size() > 1 ? "points" : "point")
                + at(changed)
                + (counts ? " counts" : " no longer counts"));
      }
    }
  }

  /** Whether the rope is laid in or threaded: it changes no force, but the order of work. */
  private void opens(List<String> phrases) {
    for (boolean laidIn : new boolean[] {true, false}) {
      List<Match> changed =
          pairs.stream()
              .filter(p -> after.contacts().get(p.after()).opens().equals(Optional.of(laidIn)))
              .filter(p -> before.contacts().get(p.before()).opens().equals(Optional.of(!laidIn)))
              .toList();
      if (!changed.isEmpty()) {
        phrases.add(
            "the rope is "
                + (laidIn ? "laid in instead of threaded" : "threaded instead of laid in")
                + at(changed));
      }
    }
  }

  private void length(List<String> phrases, String what, Function<Contact, Double> metres) {
    Map<String, List<Match>> changes = new LinkedHashMap<>();
    for (Match pair : pairs) {
      double a = metres.apply(before.contacts().get(pair.before()));
      double b = metres.apply(after.contacts().get(pair.after()));
      if (!isSame(a, b)) {
        String key =
            "from " + wording.units().statedLength(a) + " to " + wording.units().statedLength(b);
        changes.computeIfAbsent(key, k -> new ArrayList<>()).add(pair);
      }
    }
    changes.forEach(
        (change, changed) ->
            phrases.add(
                (changed.size() > 1 ? "the " + what + "s go " : "the " + what + " goes ")
                    + change
                    + at(changed)));
  }
}
