package org.boleline.picture;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Places labels beside what they name: none over another, none off the sheet, few over lines.
 *
 * <p>One after the other, each where it costs least among places around its anchor: far costs, a
 * line beneath costs more. If all of them are taken, the free place nearest to the anchor. Belongs
 * to one picture and one thread.
 */
final class Labels {
  static final double SIZE = 12;
  static final double LINE_HEIGHT = 14;
  private static final double PADDING = 2;
  private static final double CLEAR = 3;
  private static final double LEADER_FROM = 9;
  private static final double LINE_BENEATH = 60;
  private static final double LEADER_ACROSS = 22;
  private static final double OFF_DIRECTION = 5;
  private static final double STEP = 6;
  private static final double[] DISTANCES = {5, 10, 18, 28, 40, 56, 76, 100, 130, 165};
  private static final int DIRECTIONS = 16;

  /**
   * A label in its place: its lines, the room it takes, and the end of its leader if it has one.
   */
  record Placed(List<String> lines, String kind, Rect room, @Nullable Spot leader) {}

  private record Segment(Spot a, Spot b) {}

  private final Rect area;
  private final List<Segment> drawn = new ArrayList<>();
  private final List<Placed> placed = new ArrayList<>();

  Labels(Rect area) {
    this.area = area;
  }

  /** Lines to keep clear of. */
  void avoid(List<Spot> line) {
    for (int i = 1; i < line.size(); i++) {
      drawn.add(new Segment(line.get(i - 1), line.get(i)));
    }
  }

  List<Placed> placed() {
    return List.copyOf(placed);
  }

  /**
   * Places a label; preferred is the direction from its anchor, of any length, or zero to place it
   * upon its anchor.
   */
  void place(List<String> lines, String kind, Spot anchor, Spot preferred) {
    double width = lines.stream().mapToDouble(l -> Lettering.width(l, SIZE)).max().orElse(0);
    double w = width + 2 * PADDING;
    double h = lines.size() * LINE_HEIGHT + 2 * PADDING;
    @Nullable Rect best = null;
    double least = Double.POSITIVE_INFINITY;
    Rect upon = Rect.around(anchor.x(), anchor.y(), w, h);
    if (preferred.x() == 0 && preferred.y() == 0 && isFree(upon)) {
      best = upon;
      least = beneath(upon);
    }
    for (double away : DISTANCES) {
      if (away > least) {
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
        double cost = away + OFF_DIRECTION * (1 - along(dx, dy, preferred));
        if (cost < least && isFree(room)) {
          cost += beneath(room) + across(room, anchor);
          if (cost < least) {
            least = cost;
            best = room;
          }
        }
      }
    }
    if (best == null) {
      best = anywhere(anchor, w, h);
    }
    if (best != null) {
      Spot near = best.nearest(anchor.x(), anchor.y());
      boolean far = Math.hypot(near.x() - anchor.x(), near.y() - anchor.y()) > LEADER_FROM;
      placed.add(new Placed(List.copyOf(lines), kind, best, far ? anchor : null));
      if (far) {
        drawn.add(new Segment(near, anchor));
      }
    }
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
    Spot near = room.nearest(anchor.x(), anchor.y());
    if (Math.hypot(near.x() - anchor.x(), near.y() - anchor.y()) <= LEADER_FROM) {
      return 0;
    }
    double cost = 0;
    for (Placed other : placed) {
      if (other.room.meets(near, anchor)) {
        cost += LINE_BENEATH;
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
