package org.boleline.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The inks of all pictures: the palette of Okabe and Ito for all eyes, and greys.
 *
 * <p>Nothing is told by colour alone: lines differ in dashes and weight too, and carry names.
 */
enum Paint {
  PAPER("#ffffff", "none", "#15181c", "none"),
  INK("#1b1b1b", "none", "#f2f2f2", "none"),
  LETTER("#1b1b1b", "#ffffff", "#f2f2f2", "#15181c"),
  CASING("none", "#ffffff", "none", "#15181c"),
  LINE("none", "#1b1b1b", "none", "#f2f2f2"),
  FAINT("none", "#767676", "none", "#8f959d"),
  STEM("#efe9df", "#1b1b1b", "#37332c", "#f2f2f2"),
  ROPE("none", "#0072b2", "none", "#56b4e9"),
  KNOT("#0072b2", "none", "#56b4e9", "none"),
  PIECE("#d8e8f2", "#0072b2", "#16324a", "#56b4e9"),
  POINT("#ffffff", "#0072b2", "#15181c", "#56b4e9"),
  FORCE("none", "#d55e00", "none", "#e69f00"),
  FORCE_HEAD("#d55e00", "none", "#e69f00", "none"),
  MOVEMENT("none", "#009e73", "none", "#009e73"),
  MOVEMENT_HEAD("#009e73", "none", "#009e73", "none"),
  BOX("#f7ebf2", "#cc79a7", "#3a2531", "#cc79a7"),
  PURPLE("none", "#cc79a7", "none", "#cc79a7"),
  ORANGE("none", "#e69f00", "none", "#e69f00"),
  FILL("#56b4e9", "#1b1b1b", "#0072b2", "#f2f2f2"),
  FILL_INNER("#0072b2", "#1b1b1b", "#56b4e9", "#f2f2f2");

  private final String fill;
  private final String stroke;
  private final String darkFill;
  private final String darkStroke;

  Paint(String fill, String stroke, String darkFill, String darkStroke) {
    this.fill = fill;
    this.stroke = stroke;
    this.darkFill = darkFill;
    this.darkStroke = darkStroke;
  }

  private String className() {
    return "ink-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Attributes of a group or an element in this ink, after its own class if it has one. */
  Object[] attributes(Theme theme, String ownClass, Object... more) {
    boolean dark = theme == Theme.DARK;
    List<Object> out = new ArrayList<>();
    out.add("class");
    out.add(ownClass.isEmpty() ? className() : ownClass + " " + className());
    out.add("fill");
    out.add(dark ? darkFill : fill);
    out.add("stroke");
    out.add(dark ? darkStroke : stroke);
    out.addAll(List.of(more));
    return out.toArray();
  }

  /** Style rules that turn one picture dark where the reader prefers it. */
  static String darkRules(String id) {
    StringBuilder out = new StringBuilder("@media screen and (prefers-color-scheme: dark) {");
    for (Paint paint : values()) {
      out.append(" #").append(id).append(" .").append(paint.className());
      out.append(" { fill: ").append(paint.darkFill);
      out.append("; stroke: ").append(paint.darkStroke).append("; }");
    }
    return out.append(" }").toString();
  }
}
