package org.boleline.picture;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Places labels beside what they name: none over another, none off the sheet, few over lines.
 *
 * <p>One after the other, each where it costs least among places around its anchor: far costs, a
 * line beneath costs more, and so does a place nearer to another thing that is named. If all of
 * them are taken, the free place nearest to the anchor; if there is none, the label is left out and
 * counted. Belongs to one picture and one thread.
 */
final class Labels {
  static final double SIZE = 12;
  static final double LINE_HEIGHT = 14;
  private static final double PADDING = 2;
  private static final double CLEAR = 3;
  private static final double LEADER_FROM = 9;
  private static final double LINE_BENEATH = 60;
  private static final double HEAD_BENEATH = 80;
  private static final double LEADER_ACROSS = 22;
  private static final double LEADER_OVER_LABEL = 120;
  private static final double LATER = 3;
  private static final double OFF_DIRECTION = 5;
  private static final double NEARER_TO_ANOTHER = 18;
  private static final double CLEARLY_NEARER = 4;
  private static final double ONE_THING = 1;
  private static final double STEP = 6;
  private static final double[] DISTANCES = {5, 10, 18, 28, 40, 56, 76, 100, 130, 165};
  private static final int DIRECTIONS = 16;

  /**
   * A label in its place: its lines, the room it takes, what it names, and whether a line leads
   * there.
   */
  record Placed(List<String> lines, String kind, Rect room, Spot anchor, boolean led) {}

  private record Segment(Spot a, Spot b) {}

  private final Rect area;
  private final List<Segment> drawn = new ArrayList<>();
  private final List<Placed> placed = new ArrayList<>();
  private final List<Spot> things = new ArrayList<>();
  private final List<Spot> heads = new ArrayList<>();
  private int leftOut;

  Labels(Rect area) {
    this.area = area;
  }

  /** Lines to keep clear of. */
  void avoid(List<Spot> line) {
    for (int i = 1; i < line.size(); i++) {
      drawn.add(new Segment(line.get(i - 1), line.get(i)));
    }
  }

  /** The head of an arrow, not to be covered. */
  void head(Spot tip) {
    heads.add(tip);
  }

  /** Something that has a label, so that no other label stands nearer to it than to its own. */
  void thing(Spot anchor) {
    things.add(anchor);
  }

  List<Placed> placed() {
    return List.copyOf(placed);
  }

  /** How many labels found no room. */
  int leftOut() {
    return leftOut;
  }

  /** That labels were left out, for the sheet to say. */
  static String leftOutText(int count) {
    return count + (count == 1 ? " label" : " labels") + " left out";
  }

  /**
   * Places a label; preferred is the direction from its anchor, of any length, or zero to place it
   * upon its anchor.
   */
  void place(List<String> lines, String kind, Spot anchor, Spot preferred) {
    place(lines, kind, List.of(anchor), preferred);
  }

  /** Places a label at one of the places that it may name: rather at the first than at the last. */
  void place(List<String> lines, String kind, List<Spot> anchors, Spot preferred) {
    double width = lines.stream().mapToDouble(l -> Lettering.width(l, SIZE)).max().orElse(0);
    double w = width + 2 * PADDING;
    double h = lines.size() * LINE_HEIGHT + 2 * PADDING;
    Spot named = anchors.get(0);
    @Nullable Rect best = null;
    double least = Double.POSITIVE_INFINITY;
    Rect upon = Rect.around(named.x(), named.y(), w, h);
    if (preferred.x() == 0 && preferred.y() == 0 && isFree(upon)) {
      best = upon;
      least = beneath(upon);
    }
    for (int i = 0; i < anchors.size(); i++) {
      Spot anchor = anchors.get(i);
      for (double away : DISTANCES) {
        if (away + i * LATER > least) {
          break; // whatever comes now costs more
        }
        for (int k = 0; k < DIRECTIONS; k++) {
          double angle = 2 * Math.PI * k / DIRECTIONS;
          double dx = StrictMath.cos(angle);
          double dy = StrictMath.sin(angle);
          Rect room =
              Rect.around(
                  anchor.x() + dx * away + Math.max(-1, Math.min(1, 1.5 * dx)) * w / 2,
                  anchor.y() + dy * away + Math.max(-1, Math.min(1, 1.5 * dy)) * h / 2,
                  w,
                  h);
          double cost = away + i * LATER + OFF_DIRECTION * (1 - along(dx, dy, preferred));
          if (cost < least && isFree(room)) {
            cost += beneath(room) + across(room, anchor) + mistaken(room, anchor);
            if (cost < least) {
              least = cost;
              best = room;
              named = anchor;
            }
          }
        }
      }
    }
    if (best == null) {
      best = anywhere(named, w, h);
    }
    if (best == null) {
      leftOut++;
      return;
    }
    boolean led = isLed(best, named);
    placed.add(new Placed(List.copyOf(lines), kind, best, named, led));
    if (led) {
      drawn.add(new Segment(best.nearest(named.x(), named.y()), named));
    }
  }

  /** Whether a label needs a line to what it names: it is far, or something else is as near. */
  private boolean isLed(Rect room, Spot anchor) {
    return away(room, anchor) > LEADER_FROM || mistaken(room, anchor) > 0;
  }

  private static double away(Rect room, Spot spot) {
    return room.nearest(spot.x(), spot.y()).distance(spot);
  }

  /** What a place costs that is nearer to another thing, or about as near. */
  private double mistaken(Rect room, Spot anchor) {
    double own = away(room, anchor) + CLEARLY_NEARER;
    double cost = 0;
    for (Spot thing : things) {
      double other = away(room, thing);
      if (other < own && thing.distance(anchor) > ONE_THING) {
        cost += Math.min(LINE_BENEATH, NEARER_TO_ANOTHER + own - other);
      }
    }
    return cost;
  }

  private static double along(double dx, double dy, Spot preferred) {
    double size = Math.hypot(preferred.x(), preferred.y());
    return size == 0 ? 0 : (dx * preferred.x() + dy * preferred.y()) / size;
  }

  private boolean isFree(Rect room) {
    if (!area.holds(room)) {
      return false;
    }
    for (Placed other : placed) {
      if (room.meets(other.room)) {
        return false;
      }
    }
    return true;
  }

  private double beneath(Rect room) {
    Rect clear = room.grown(CLEAR - PADDING);
    double cost = 0;
    for (Spot head : heads) {
      cost += away(clear, head) == 0 ? HEAD_BENEATH : 0;
    }
    for (Segment segment : drawn) {
      if (clear.meets(segment.a, segment.b)) {
        double size = Math.hypot(segment.b.x() - segment.a.x(), segment.b.y() - segment.a.y());
        cost += Math.min(LINE_BENEATH, 6 + 2 * size * clear.share(segment.a, segment.b));
      }
    }
    return cost;
  }

  /** What a leader costs that runs over other labels or lines. */
  private double across(Rect room, Spot anchor) {
    if (!isLed(room, anchor)) {
      return 0;
    }
    Spot near = room.nearest(anchor.x(), anchor.y());
    double cost = 0;
    for (Placed other : placed) {
      if (other.room.meets(near, anchor)) {
        cost += LEADER_OVER_LABEL;
      }
    }
    Spot before =
        new Spot(
            anchor.x() + 0.1 * (near.x() - anchor.x()), anchor.y() + 0.1 * (near.y() - anchor.y()));
    for (Segment segment : drawn) {
      if (cross(near, before, segment.a, segment.b)) {
        cost += LEADER_ACROSS;
      }
    }
    return cost;
  }

  private static boolean cross(Spot a, Spot b, Spot c, Spot d) {
    return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
  }

  private static double side(Spot a, Spot b, Spot p) {
    return Math.signum((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x()));
  }

  private @Nullable Rect anywhere(Spot anchor, double w, double h) {
    @Nullable Rect best = null;
    double least = Double.POSITIVE_INFINITY;
    for (double y = area.top(); y + h <= area.bottom(); y += STEP) {
      for (double x = area.left(); x + w <= area.right(); x += STEP) {
        Rect room = new Rect(x, y, x + w, y + h);
        double away = Math.hypot(room.middleX() - anchor.x(), room.middleY() - anchor.y());
        if (away < least && isFree(room)) {
          away += beneath(room);
          if (away < least) {
            least = away;
            best = room;
          }
        }
      }
    }
    return best;
  }
}
