package org.boleline.documentation;

import static org.boleline.units.Amounts.metres;
import static org.boleline.units.Amounts.seconds;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.boleline.drop.DropFound;
import org.boleline.drop.Drops;
import org.boleline.drop.TimedCatch;
import org.boleline.geometry.Box;
import org.boleline.geometry.Vector;
import org.boleline.json.MotionWriter;
import org.boleline.json.PlanReader;
import org.boleline.picture.BendingStrip;
import org.boleline.picture.CatchPlot;
import org.boleline.picture.ForcePicture;
import org.boleline.picture.PictureSpec;
import org.boleline.picture.Theme;
import org.boleline.plan.Arrangement;
import org.boleline.plan.Contact;
import org.boleline.plan.Plan;
import org.boleline.statics.StaticResult;
import org.boleline.statics.Statics;

/** The code and the drawings of docs/how-to/draw-a-plan.md. */
final class Drawings {
  private static final String RINGS = "three rings, device at the base";

  private Drawings() {}

  /** The drawings by the names of their files. */
  static Map<String, String> all() {
    Plan plan = plan();
    StaticResult result = Statics.analyse(plan);
    Map<String, String> drawings = new LinkedHashMap<>();
    drawings.put("forces.svg", forces(result));
    drawings.put("bending.svg", bending(result));
    drawings.put("catch.svg", caught(result, new StringBuilder()));
    return drawings;
  }

  /** The demo's plan, with the first and the last ring closed and the one between that opens. */
  private static Plan plan() {
    try {
      Plan plan = PlanReader.read(PlanFiles.hornbeam());
      return plan.toBuilder()
          .arrangements(
              plan.arrangements().stream()
                  .map(a -> a.id().equals(RINGS) ? withOpening(a) : a)
                  .toList())
          .build();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Arrangement withOpening(Arrangement rings) {
    Contact outer = rings.contacts().get(0);
    Contact middle = rings.contacts().get(1);
    Contact inner = rings.contacts().get(2);
    return rings.toBuilder()
        .contacts(List.of(outer.withOpens(false), middle.withOpens(true), inner.withOpens(false)))
        .build();
  }

  private static String forces(StaticResult result) {
    // region forces
    Box glasshouse =
        Box.between(
            Vector.of(metres(1.6), metres(-2.5), metres(0)),
            Vector.of(metres(4.2), metres(2.5), metres(2.9)));
    PictureSpec spec = PictureSpec.STANDARD.withTheme(Theme.AUTO).withBox("glasshouse", glasshouse);
    String svg = ForcePicture.of(result, "three rings, device at the base", spec).svg();
    // endregion
    return svg;
  }

  private static String bending(StaticResult result) {
    // region bending
    PictureSpec wide = PictureSpec.STANDARD.withTheme(Theme.AUTO).withSheet(720, 720);
    String svg = BendingStrip.of(result, "hornbeam", wide).svg();
    // endregion
    return svg;
  }

  static String caught(StaticResult result, StringBuilder motion) {
    PictureSpec spec = PictureSpec.STANDARD.withTheme(Theme.AUTO);
    // region catch
    String id = "three rings, device at the base";
    DropFound drop = (DropFound) Drops.analyse(result).drop(id).orElseThrow();
    TimedCatch.Followed sampled = Drops.sampled(result, id, seconds(0.01)).orElseThrow();
    String svg = CatchPlot.of(drop, sampled, spec).svg();
    String frames = MotionWriter.write(drop, sampled); // JSON, for a moving picture
    // endregion
    motion.append(frames);
    return svg;
  }
}
