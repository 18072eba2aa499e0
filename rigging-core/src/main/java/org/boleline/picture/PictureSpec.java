package org.boleline.picture;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Force;
import javax.measure.quantity.Length;
import org.boleline.geometry.Box;
import org.boleline.units.Kind;
import org.boleline.units.Si;
import org.jspecify.annotations.Nullable;

/**
 * How a picture is wanted: size, theme, units, scales, and what else to show.
 *
 * <p>Immutable and thread-safe.
 */
public final class PictureSpec {
  /** Light, metric, true to scale, on a sheet of 720 by 960 pixels: 190.5 mm by 254 mm. */
  public static final PictureSpec STANDARD =
      new PictureSpec("picture", 720, 960, Theme.LIGHT, PictureUnits.METRIC, 1, 0, null, List.of());

  private static final Pattern ID = Pattern.compile("[A-Za-z][A-Za-z0-9_-]{0,79}");
  private static final int LEAST_SIDE = 320;
  private static final int MOST_SIDE = 10_000;
  private static final double MOST_MAGNIFICATION = 1000;

  /**
   * Something on the site to stay clear of.
   *
   * @param name what it is, in a few words
   * @param box where it is
   */
  public record NamedBox(String name, Box box) {
    /**
     * Obtains a named box.
     *
     * @param name what it is, in a few words
     * @param box where it is
     */
    public NamedBox {
      requireNonNull(name, "name");
      requireNonNull(box, "box");
    }
  }

  private final String id;
  private final int width;
  private final int height;
  private final Theme theme;
  private final PictureUnits units;
  private final double magnification;
  private final double forcePerMetre;
  private final @Nullable Double ground;
  private final List<NamedBox> boxes;

  private PictureSpec(
      String id,
      int width,
      int height,
      Theme theme,
      PictureUnits units,
      double magnification,
      double forcePerMetre,
      @Nullable Double ground,
      List<NamedBox> boxes) {
    this.id = id;
    this.width = width;
    this.height = height;
    this.theme = theme;
    this.units = units;
    this.magnification = magnification;
    this.forcePerMetre = forcePerMetre;
    this.ground = ground;
    this.boxes = List.copyOf(boxes);
  }

  /**
   * Returns this with another id, so that several pictures may stand in one page.
   *
   * @param newId a letter, then letters, digits, {@code _} and {@code -}, at most 80 in all
   * @return the wishes
   * @throws IllegalArgumentException if the id has another form
   */
  public PictureSpec withId(String newId) {
    if (!ID.matcher(newId).matches()) {
      throw new IllegalArgumentException("id: wants a letter, then letters and digits");
    }
    return new PictureSpec(
        newId, width, height, theme, units, magnification, forcePerMetre, ground, boxes);
  }

  /**
   * Returns this on a sheet of another size; the letters keep theirs.
   *
   * @param newWidth width in CSS pixels, from 320 to 10000
   * @param newHeight height in CSS pixels, from 320 to 10000
   * @return the wishes
   * @throws IllegalArgumentException if a side is outside its range
   */
  public PictureSpec withSheet(int newWidth, int newHeight) {
    for (int side : new int[] {newWidth, newHeight}) {
      if (side < LEAST_SIDE || side > MOST_SIDE) {
        throw new IllegalArgumentException(
            "sheet: wants sides of " + LEAST_SIDE + " to " + MOST_SIDE + " pixels, got " + side);
      }
    }
    return new PictureSpec(
        id, newWidth, newHeight, theme, units, magnification, forcePerMetre, ground, boxes);
  }

  /**
   * Returns this in another theme.
   *
   * @param newTheme the theme, not null
   * @return the wishes
   */
  public PictureSpec withTheme(Theme newTheme) {
    requireNonNull(newTheme, "theme");
    return new PictureSpec(
        id, width, height, newTheme, units, magnification, forcePerMetre, ground, boxes);
  }

  /**
   * Returns this lettered in other units.
   *
   * @param newUnits the units, not null
   * @return the wishes
   */
  public PictureSpec withUnits(PictureUnits newUnits) {
    requireNonNull(newUnits, "units");
    return new PictureSpec(
        id, width, height, theme, newUnits, magnification, forcePerMetre, ground, boxes);
  }

  /**
   * Returns this with movements drawn larger than they are; the picture says so.
   *
   * @param factor how many times larger, from 1 (true to scale) to 1000
   * @return the wishes
   * @throws IllegalArgumentException if the factor is outside its range
   */
  public PictureSpec withMagnification(double factor) {
    if (!(factor >= 1 && factor <= MOST_MAGNIFICATION)) {
      throw new IllegalArgumentException("magnification: wants 1 to 1000, got " + factor);
    }
    return new PictureSpec(id, width, height, theme, units, factor, forcePerMetre, ground, boxes);
  }

  /**
   * Returns this with a stated scale of forces, so that pictures can be compared.
   *
   * @param perMetre the force whose arrow is as long as one metre of the site, above zero, not null
   * @return the wishes
   * @throws IllegalArgumentException if the force is not above zero
   */
  public PictureSpec withForceScale(Quantity<Force> perMetre) {
    double newForce = Si.valueAboveZero(perMetre, Kind.FORCE, "perMetre");
    return new PictureSpec(id, width, height, theme, units, magnification, newForce, ground, boxes);
  }

  /**
   * Returns this with the ground at a stated level.
   *
   * @param level its height in the plan's axes, not null
   * @return the wishes
   */
  public PictureSpec withGround(Quantity<Length> level) {
    double newGround = Si.value(level, Kind.LENGTH, "level");
    return new PictureSpec(
        id, width, height, theme, units, magnification, forcePerMetre, newGround, boxes);
  }

  /**
   * Returns this with one more box to stay clear of.
   *
   * @param name what it is, in a few words, not null
   * @param box where it is, not null
   * @return the wishes
   */
  public PictureSpec withBox(String name, Box box) {
    List<NamedBox> more = new ArrayList<>(boxes);
    more.add(new NamedBox(name, box));
    return new PictureSpec(
        id, width, height, theme, units, magnification, forcePerMetre, ground, more);
  }

  /**
   * Returns the id of the picture in its page.
   *
   * @return the id
   */
  public String id() {
    return id;
  }

  /**
   * Returns the width of the sheet.
   *
   * @return the width in CSS pixels
   */
  public int width() {
    return width;
  }

  /**
   * Returns the height of the sheet.
   *
   * @return the height in CSS pixels
   */
  public int height() {
    return height;
  }

  /**
   * Returns the theme.
   *
   * @return the theme
   */
  public Theme theme() {
    return theme;
  }

  /**
   * Returns the units of the lettering.
   *
   * @return the units
   */
  public PictureUnits units() {
    return units;
  }

  /**
   * Returns how many times larger movements are drawn.
   *
   * @return 1 for true to scale
   */
  public double magnificationFactor() {
    return magnification;
  }

  /**
   * Returns the scale of forces.
   *
   * @return the force in newtons whose arrow is as long as one metre of the site; empty if the
   *     picture chooses
   */
  public Optional<Quantity<Force>> forceScale() {
    return forcePerMetre == 0 ? Optional.empty() : Optional.of(Si.of(forcePerMetre, Kind.FORCE));
  }

  /**
   * Returns the level of the ground.
   *
   * @return its height in metres; empty for the level of the lowest base of a stem where that is
   *     zero and nothing of the rig lies below it, and otherwise for no ground
   */
  public Optional<Quantity<Length>> ground() {
    return ground == null ? Optional.empty() : Optional.of(Si.of(ground, Kind.LENGTH));
  }

  /**
   * Returns the boxes to stay clear of.
   *
   * @return the boxes
   */
  public List<NamedBox> boxes() {
    return boxes;
  }
}
