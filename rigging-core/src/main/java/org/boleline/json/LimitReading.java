package org.boleline.json;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.measure.Quantity;
import org.boleline.explain.Refusal;
import org.boleline.explain.Refusals;
import org.boleline.plan.AskedFactor;
import org.boleline.plan.Hitch;
import org.boleline.plan.Limits;
import org.boleline.plan.PartLimit;
import org.boleline.plan.Reduction;
import org.boleline.units.Kind;
import org.jspecify.annotations.Nullable;

/** The limits of a plan file. */
final class LimitReading {
  private LimitReading() {}

  static Limits limits(Members m) {
    return Limits.stated(
        m.quantity("handForce", Kind.FORCE),
        m.objects(
            "factors",
            factor ->
                AskedFactor.stated(
                    factor.text("for", "text"),
                    factor.number("factor"),
                    factor.text("askedBy", "text"),
                    factor.refusals())),
        m.objects("parts", LimitReading::part),
        m.refusals());
  }

  private static PartLimit part(Members m) {
    PartLimit.Builder builder = PartLimit.builder();
    PartLimit.@Nullable Part part =
        word(
            m,
            "part",
            "one of rope, bends, slings, hardware, device, stems, anchorage",
            PartLimit.Part::named);
    state(part, builder::part);
    state(m.text("name", "text"), builder::name);
    if (part != null) {
      capacity(m, part.kind(), builder);
    } else {
      m.has("capacity"); // of what kind, nobody knows
    }
    state(
        word(m, "capacityIs", "\"strength\" or \"workingLoadLimit\"", PartLimit.CapacityIs::named),
        builder::capacityIs);
    state(m.text("place", "text"), builder::place);
    state(m.text("stem", "the id of a stem"), builder::stem);
    state(m.quantity("station", Kind.LENGTH), builder::station);
    state(
        word(m, "demand", "\"static\", \"peak\" or \"run\"", PartLimit.Demand::named),
        builder::demand);
    state(m.object("hitch", LimitReading::hitch), builder::hitch);
    builder.reductions(m.objects("reductions", LimitReading::reduction));
    state(
        word(m, "combined", "\"stacked\" or \"worstOnly\"", Reduction.Combined::named),
        builder::combined);
    return builder.stated(m.refusals());
  }

  private static <Q extends Quantity<Q>> void capacity(
      Members m, Kind<Q> kind, PartLimit.Builder builder) {
    @Nullable Quantity<Q> capacity = m.quantity("capacity", kind);
    if (capacity != null) {
      builder.capacity(capacity, kind);
    }
  }

  private static <T> void state(@Nullable T value, Consumer<T> stating) {
    if (value != null) {
      stating.accept(value);
    }
  }

  private static <T> @Nullable T word(
      Members m, String name, String wants, Function<String, Optional<T>> naming) {
    @Nullable String word = m.text(name, wants);
    if (word == null) {
      return null;
    }
    Optional<T> meaning = naming.apply(word);
    if (meaning.isEmpty()) {
      m.refusals().at(name).add(Refusal.Code.OUT_OF_RANGE, wants, JsonText.quoted(word));
    }
    return meaning.orElse(null);
  }

  private static @Nullable Hitch hitch(Members m) {
    @Nullable String kind = m.oneOf("vertical", "choker", "basket");
    if (kind == null) {
      m.refusals().add(Refusal.Code.MISSING, "one of the members vertical, choker, basket", "none");
      return null;
    }
    return switch (kind) {
      case "choker" ->
          m.object(
              kind,
              choker ->
                  Hitch.Choker.stated(
                      choker.number("kept"),
                      choker.quantity("angle", Kind.ANGLE),
                      choker.refusals()));
      case "basket" ->
          m.object(
              kind,
              legs -> Hitch.Basket.stated(legs.quantity("legs", Kind.ANGLE), legs.refusals()));
      default -> m.object(kind, vertical -> Hitch.Vertical.VERTICAL);
    };
  }

  private static Reduction reduction(Members m) {
    return Reduction.stated(
        m.text("by", "text"),
        m.number("kept"),
        m.quantity("diameter", Kind.LENGTH),
        m.objects(
            "table", row -> new Reduction.AtRatio(required(row, "ratio"), required(row, "kept"))),
        m.text("source", "text"),
        m.refusals());
  }

  private static double required(Members m, String name) {
    @Nullable Double number = m.number(name);
    if (number == null) {
      Refusals at = m.refusals().at(name);
      at.add(Refusal.Code.MISSING, "a number, such as 0.8", "nothing");
      return Double.NaN;
    }
    return number;
  }
}
