package org.boleline.picture;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import org.boleline.plan.Plan;
import org.boleline.statics.ArrangementResult;
import org.boleline.statics.LostStability;
import org.boleline.statics.NotSolved;
import org.boleline.statics.Solution;
import org.boleline.statics.StaticResult;

/**
 * An arrangement under load, drawn to scale: stems without and with the load, the rope and its
 * tensions, the force on every point.
 *
 * <p>Seen from the side, square to the plumb plane that best holds the rig, and from above too
 * where it leaves that plane. A held load is drawn in the state about to run, its numbers with both
 * ends. Where there is no stable state the sheet says so and draws none.
 *
 * <p>Immutable and thread-safe.
 */
public final class ForcePicture {
  private final String svg;

  private ForcePicture(String svg) {
    this.svg = svg;
  }

  /**
   * Obtains the picture of an arrangement.
   *
   * @param result the analysis, not null
   * @param arrangement id of an arrangement of its plan, not null
   * @param spec how the picture is wanted, not null
   * @return the picture
   * @throws IllegalArgumentException if the plan has no such arrangement
   */
  public static ForcePicture of(StaticResult result, String arrangement, PictureSpec spec) {
    requireNonNull(spec, "spec");
    ArrangementResult found =
        result
            .arrangement(requireNonNull(arrangement, "arrangement"))
            .orElseThrow(
                () -> new IllegalArgumentException("arrangement: none named " + arrangement));
    return new ForcePicture(
        found instanceof Solution solution
            ? ForceDrawing.svg(solution, spec)
            : withoutState(result.plan(), found, spec));
  }

  /**
   * Returns the picture.
   *
   * @return an SVG element as text, to be a file of its own or part of a page
   */
  public String svg() {
    return svg;
  }

  private static String withoutState(Plan plan, ArrangementResult found, PictureSpec spec) {
    String why =
        switch (found.outcome()) {
          case UNSTABLE -> lost((LostStability) found);
          default -> "The solver gave up: " + ((NotSolved) found).reason() + ".";
        };
    List<String> headings = new ArrayList<>();
    headings.add(plan.title().isEmpty() ? found.id() : plan.title());
    headings.add(found.id());
    Sheet sheet = new Sheet(spec, headings.get(0) + ": " + found.id(), headings, why);
    Rect body = sheet.body();
    double y = body.top() + 40;
    for (String line : Lettering.lines(why, 13, body.width(), 6)) {
      sheet.write(line, body.left(), y, "font-size", 13);
      y += 18;
    }
    return sheet.end();
  }

  private static String lost(LostStability lost) {
    return lost.ownWeightFactor() < 1
        ? "No stable state: the stems lose stability under "
            + PictureUnits.number(100 * lost.ownWeightFactor())
            + " % of their own weight. Nothing is drawn."
        : "No stable state: the stems lose stability at "
            + PictureUnits.number(100 * lost.loadFactor())
            + " % of the load. Nothing is drawn.";
  }
}
