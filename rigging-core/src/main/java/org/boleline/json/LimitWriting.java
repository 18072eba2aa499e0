package org.boleline.json;

import javax.measure.Quantity;
import org.boleline.plan.Hitch;
import org.boleline.plan.Limits;
import org.boleline.plan.PartLimit;
import org.boleline.plan.Reduction;
import org.boleline.units.Kind;

/** The limits of a plan as plan files state them. */
final class LimitWriting {
  private LimitWriting() {}

  static ObjectBuilder limits(Limits limits) {
    ObjectBuilder object =
        new ObjectBuilder().putStated("handForce", limits.handForce(), Kind.FORCE);
    if (!limits.factors().isEmpty()) {
      object.putAll(
          "factors",
          limits.factors(),
          factor ->
              new ObjectBuilder()
                  .put("for", factor.part())
                  .put("factor", factor.factor())
                  .put("askedBy", factor.askedBy())
                  .build());
    }
    if (!limits.parts().isEmpty()) {
      object.putAll("parts", limits.parts(), part -> part(part).build());
    }
    return object;
  }

  private static ObjectBuilder part(PartLimit part) {
    ObjectBuilder object =
        new ObjectBuilder().put("part", part.part().text()).put("name", part.name());
    putCapacity(object, part, part.part().kind());
    if (part.part().kind() == Kind.FORCE && part.capacity(Kind.FORCE).isPresent()) {
      object.put("capacityIs", part.capacityIs().text());
    }
    part.place().ifPresent(place -> object.put("place", place));
    part.stem().ifPresent(stem -> object.put("stem", stem));
    object.putStated("station", part.station(), Kind.LENGTH);
    part.demand().ifPresent(demand -> object.put("demand", demand.text()));
    part.hitch().ifPresent(hitch -> object.put("hitch", hitch(hitch)));
    if (!part.reductions().isEmpty()) {
      object.putAll("reductions", part.reductions(), LimitWriting::reduction);
    }
    part.combined().ifPresent(combined -> object.put("combined", combined.text()));
    return object;
  }

  private static <Q extends Quantity<Q>> void putCapacity(
      ObjectBuilder object, PartLimit part, Kind<Q> kind) {
    object.putStated("capacity", part.capacity(kind), kind);
  }

  private static ObjectBuilder hitch(Hitch hitch) {
    ObjectBuilder inner = new ObjectBuilder();
    if (hitch instanceof Hitch.Choker choker) {
      inner.put("kept", choker.keptShare()).putStated("angle", choker.angle(), Kind.ANGLE);
      return new ObjectBuilder().put("choker", inner);
    }
    if (hitch instanceof Hitch.Basket basket) {
      inner.putStated("legs", basket.legs().angle(), Kind.ANGLE);
      return new ObjectBuilder().put("basket", inner);
    }
    return new ObjectBuilder().put("vertical", inner);
  }

  private static Json reduction(Reduction reduction) {
    ObjectBuilder object = new ObjectBuilder().put("by", reduction.by());
    reduction.keptShare().ifPresent(share -> object.put("kept", share));
    object.putStated("diameter", reduction.diameter(), Kind.LENGTH);
    if (!reduction.table().isEmpty()) {
      object.putAll(
          "table",
          reduction.table(),
          row ->
              new ObjectBuilder().put("ratio", row.ratio()).put("kept", row.keptShare()).build());
    }
    if (!reduction.source().isEmpty()) {
      object.put("source", reduction.source());
    }
    return object.build();
  }
}
