package org.boleline.plan;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.rope.Motion;
import org.jspecify.annotations.Nullable;

/**
 * One way to rig the piece: the path of the rope from the piece to its end, and the motion.
 *
 * <p>The load leg hangs plumb under the first contact unless a tagline is stated. Immutable and
 * thread-safe; equality is exact, on what was stated.
 */
public final class Arrangement {
  private final String id;
  private final Motion motion;
  private final List<Contact> contacts;
  private final Tail tail;
  private final @Nullable Tagline tagline;
  private final @Nullable DropSpec drop;

  private Arrangement(Builder builder, Refusals refusals) {
    this.id = refusals.at("id").name(builder.id);
    this.motion =
        refusals
            .at("motion")
            .present(builder.motion, "\"lowering\", \"raising\" or \"held\"", Motion.LOWERING);
    this.contacts = builder.contacts;
    this.tail =
        refusals
            .at("tail")
            .present(
                builder.tail, "one of {\"point\"}, {\"direction\"}, {\"device\"}", Tail.Down.DOWN);
    this.tagline = builder.tagline;
    this.drop = builder.drop;
    if (contacts.isEmpty()) {
      refusals.at("contacts").add(Refusal.Code.MISSING, "at least one contact", "none");
    } else if (contacts.size() > Bounds.CONTACTS) {
      refusals
          .at("contacts")
          .add(
              Refusal.Code.OUT_OF_RANGE,
              "at most " + Bounds.CONTACTS + " contacts",
              "" + contacts.size());
    }
    if (drop != null
        && drop.hold() instanceof DropSpec.ByHand
        && builder.tail != null
        && !(tail instanceof Tail.Device)) {
      refusals
          .at("drop")
          .at("device")
          .add(
              Refusal.Code.CONFLICT,
              "handForce beside a tail that ends on a device: the hand holds behind its wraps",
              "a tail without a device");
    }
  }

  /**
   * Obtains a builder of an arrangement.
   *
   * @param id name of the arrangement, unique in its plan, one line of at most 80 characters, not
   *     null
   * @return the builder
   */
  public static Builder builder(String id) {
    return new Builder().id(id);
  }

  /**
   * Obtains a builder that holds nothing yet, not even an id.
   *
   * @return the builder
   */
  public static Builder builder() {
    return new Builder();
  }

  /**
   * Returns a builder that holds all of this arrangement.
   *
   * @return the builder
   */
  public Builder toBuilder() {
    Builder builder = builder(id).motion(motion).contacts(contacts).tail(tail);
    builder.tagline = tagline;
    builder.drop = drop;
    return builder;
  }

  /**
   * Returns the name of the arrangement.
   *
   * @return the id, unique in its plan
   */
  public String id() {
    return id;
  }

  /**
   * Returns what the load is about to do.
   *
   * @return the motion
   */
  public Motion motion() {
    return motion;
  }

  /**
   * Returns the redirects of the rope.
   *
   * @return 1 to 24 contacts, from the piece toward the tail
   */
  public List<Contact> contacts() {
    return contacts;
  }

  /**
   * Returns where the rope ends.
   *
   * @return the tail
   */
  public Tail tail() {
    return tail;
  }

  /**
   * Returns the line that holds the load leg out of plumb.
   *
   * @return the tagline; empty if the load leg hangs plumb
   */
  public Optional<Tagline> tagline() {
    return Optional.ofNullable(tagline);
  }

  /**
   * Returns how the piece drops.
   *
   * @return the drop; empty if none is stated
   */
  public Optional<DropSpec> drop() {
    return Optional.ofNullable(drop);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Arrangement a
        && id.equals(a.id)
        && motion == a.motion
        && contacts.equals(a.contacts)
        && tail.equals(a.tail)
        && Objects.equals(tagline, a.tagline)
        && Objects.equals(drop, a.drop);
  }

  @Override
  public int hashCode() {
    return Objects.hash(id, motion, contacts, tail, tagline, drop);
  }

  @Override
  public String toString() {
    return "arrangement " + id + ", " + motion.text() + " over " + contacts + ", " + tail;
  }

  /** Builds an arrangement. Belongs to one thread. */
  public static final class Builder {
    private @Nullable String id;
    private @Nullable Motion motion;
    private List<Contact> contacts = List.of();
    private @Nullable Tail tail;
    private @Nullable Tagline tagline;
    private @Nullable DropSpec drop;

    private Builder() {}

    /**
     * States the name.
     *
     * @param id unique in its plan, one line of at most 80 characters, not null
     * @return this builder
     */
    public Builder id(String id) {
      this.id = requireNonNull(id, "id");
      return this;
    }

    /**
     * States what the load is about to do.
     *
     * @param motion the motion, not null
     * @return this builder
     */
    public Builder motion(Motion motion) {
      this.motion = requireNonNull(motion, "motion");
      return this;
    }

    /**
     * States the redirects of the rope, in place of those stated before.
     *
     * @param contacts 1 to 24 contacts, from the piece toward the tail, not null
     * @return this builder
     */
    public Builder contacts(List<Contact> contacts) {
      this.contacts = List.copyOf(contacts);
      return this;
    }

    /**
     * States where the rope ends.
     *
     * @param tail the tail, not null
     * @return this builder
     */
    public Builder tail(Tail tail) {
      this.tail = requireNonNull(tail, "tail");
      return this;
    }

    /**
     * States a line that holds the load leg out of plumb.
     *
     * @param tagline the tagline, not null
     * @return this builder
     */
    public Builder tagline(Tagline tagline) {
      this.tagline = requireNonNull(tagline, "tagline");
      return this;
    }

    /**
     * States how the piece drops.
     *
     * @param drop the drop, not null
     * @return this builder
     */
    public Builder drop(DropSpec drop) {
      this.drop = requireNonNull(drop, "drop");
      return this;
    }

    /**
     * Returns the arrangement.
     *
     * @return the arrangement
     * @throws org.boleline.explain.PlanRefusedException if a part is missing or outside its range:
     *     with all reasons, their places relative to the arrangement
     */
    public Arrangement build() {
      return Refusals.check(this::stated);
    }

    /**
     * Returns the arrangement as stated, for readers of files.
     *
     * @param refusals notes what is wrong, at the arrangement
     * @return the arrangement
     */
    public Arrangement stated(Refusals refusals) {
      return new Arrangement(this, refusals);
    }
  }
}
