package org.boleline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * In which order the rope can be brought into its points, as far as their hardware settles it.
 *
 * <p>Hardware that opens takes the rope at any time, also when both of its ends are made fast.
 * Through hardware that does not, an end of the rope has to pass: so these points come first, one
 * after the other along the rope, before that end is tied.
 *
 * @param thread numbers of the contacts to thread, from 0, in the order in which the end that goes
 *     to the piece passes them: from the tail toward the piece; the other end passes them the other
 *     way round
 * @param layIn numbers of the contacts to lay the rope into, from 0, from the piece toward the tail
 * @param notStated numbers of the contacts of which the plan does not say it
 */
public record SettingUp(List<Integer> thread, List<Integer> layIn, List<Integer> notStated) {
  /**
   * Obtains an order from its parts.
   *
   * @param thread numbers of the contacts to thread, from 0, in the order in which the end that
   *     goes to the piece passes them: from the tail toward the piece; the other end passes them
   *     the other way round
   * @param layIn numbers of the contacts to lay the rope into, from 0, from the piece toward the
   *     tail
   * @param notStated numbers of the contacts of which the plan does not say it
   */
  public SettingUp {
    thread = List.copyOf(thread);
    layIn = List.copyOf(layIn);
    notStated = List.copyOf(notStated);
  }

  /**
   * Obtains the order that the points of an arrangement imply.
   *
   * @source derived: a rope gets into a closed ring by an end only
   * @param arrangement the arrangement, not null
   * @return the order; empty if no contact says whether its hardware opens
   */
  public static Optional<SettingUp> of(Arrangement arrangement) {
    List<Integer> thread = new ArrayList<>();
    List<Integer> layIn = new ArrayList<>();
    List<Integer> notStated = new ArrayList<>();
    for (int i = 0; i < arrangement.contacts().size(); i++) {
      Optional<Boolean> opens = arrangement.contacts().get(i).opens();
      if (opens.isEmpty()) {
        notStated.add(i);
      } else if (opens.get()) {
        layIn.add(i);
      } else {
        thread.add(0, i);
      }
    }
    return thread.isEmpty() && layIn.isEmpty()
        ? Optional.empty()
        : Optional.of(new SettingUp(thread, layIn, notStated));
  }

  /**
   * Returns the order in words, points numbered from 1.
   *
   * @return one to three sentences
   */
  public String sentence() {
    List<String> parts = new ArrayList<>();
    if (!thread.isEmpty()) {
      parts.add(
          "Before it is tied to the piece, thread the end of the rope through "
              + points(thread, ", then ")
              + ".");
    }
    if (!layIn.isEmpty()) {
      parts.add(
          (thread.isEmpty() ? "Lay the rope into " : "Lay it into ")
              + points(layIn, ", ")
              + " at any time.");
    }
    if (!notStated.isEmpty()) {
      parts.add("Not stated for " + points(notStated, ", ") + ".");
    }
    return String.join(" ", parts);
  }

  private static String points(List<Integer> contacts, String between) {
    return (contacts.size() == 1 ? "point " : "points ")
        + contacts.stream().map(i -> Integer.toString(i + 1)).collect(Collectors.joining(between));
  }
}
