package org.boleline.picture;

import java.util.ArrayList;
import java.util.List;

/**
 * How places of the site come to the sheet: seen from the side, square to a plumb plane, or from
 * above.
 *
 * <p>To the right runs the azimuth of the plane. Up the sheet runs up, or, seen from above, the
 * direction a quarter turn counter-clockwise from that azimuth.
 *
 * @param above whether the view is from above
 * @param azimuthDegrees azimuth of the plane, whole degrees
 * @param scale pixels to the metre
 * @param left where the origin of the site is on the sheet
 * @param top where the origin of the site is on the sheet
 */
record View(boolean above, int azimuthDegrees, double scale, double left, double top) {
  /** Metres to the right and up the sheet, for a scale of one. */
  Spot flat(Place place) {
    double cos = cos(azimuthDegrees);
    double sin = cos(azimuthDegrees - 90);
    return new Spot(
        place.x() * cos + place.y() * sin, above ? place.y() * cos - place.x() * sin : place.z());
  }

  /** The cosine, without a rounding error at whole quarter turns. */
  private static double cos(int degrees) {
    return switch (Math.floorMod(degrees, 360)) {
      case 0 -> 1;
      case 90, 270 -> 0;
      case 180 -> -1;
      default -> StrictMath.cos(StrictMath.toRadians(degrees));
    };
  }

  Spot on(Place place) {
    Spot flat = flat(place);
    return new Spot(left + scale * flat.x(), top - scale * flat.y());
  }

  List<Spot> on(List<Place> places) {
    List<Spot> out = new ArrayList<>();
    for (Place place : places) {
      out.add(on(place));
    }
    return out;
  }
}
