package org.boleline.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.boleline.plan.Plan;
import org.boleline.plan.SettingUp;
import org.boleline.plan.Tail;
import org.boleline.rope.Bark;
import org.boleline.rope.FrictionRing;
import org.boleline.rope.Sheave;
import org.boleline.statics.Solution;
import org.boleline.statics.StemResult;
import org.boleline.units.Kind;
import org.boleline.units.QuantityText;
import org.boleline.units.Si;
import org.boleline.wood.Log;

/** One force picture under way. Belongs to one thread. */
final class ForceDrawing {
  private static final int UNTOLD = -1;
  private static final double GUTTER = 78;
  private static final double BETWEEN = 34;
  private static final double MOST_LABEL = 150;
  private static final double UNLOADED_WEIGHT = 1;
  private static final double LOADED_WEIGHT = 1.2;
  private static final double FORCE_WEIGHT = 2;
  private static final double THIN = 0.8;
  private static final double MOST_OUT_OF_PLANE = 0.02;

  /** Where along a leg its tension may be lettered, the best place first. */
  private static final List<Double> SHARES = List.of(0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8);

  private final Scene scene;
  private final PictureSpec spec;
  private final PictureUnits units;
  private final Sheet sheet;
  private final Plan plan;
  private final double greatestTension;
  private final int told;
  private int leftOut;

  /** Told is how many labels the sheet says it leaves out; below zero it has no line for that. */
  private ForceDrawing(Solution solution, PictureSpec spec, int told) {
    this.spec = spec;
    this.told = told;
    this.scene = new Scene(solution, spec);
    this.plan = solution.plan();
    units = spec.units();
    greatestTension = scene.legs.stream().mapToDouble(Scene.DrawnLeg::tension).max().orElse(1);
    List<String> headings = new ArrayList<>();
    String title = plan.title().isEmpty() ? "Forces of a rig" : plan.title();
    headings.add(title);
    headings.add(
        solution.id() + ", " + solution.arrangement().motion().text() + ", " + pieceText());
    headings.add(movementText());
    beyondText().ifPresent(headings::add);
    if (!solution.cautions().isEmpty()) {
      headings.add("Read with its cautions.");
    }
    SettingUp.of(solution.arrangement())
        .ifPresent(order -> headings.add("Setting up: " + order.sentence()));
    if (told != UNTOLD) {
      headings.add(toldText());
    }
    sheet = new Sheet(spec, title + ": " + solution.id(), headings, description());
  }

  /** The picture as SVG. */
  static String svg(Solution solution, PictureSpec spec) {
    ForceDrawing drawing = new ForceDrawing(solution, spec, UNTOLD);
    String svg = drawing.drawn();
    // The line that tells of labels left out takes room too, so that their number may change with
    // it, but not any more with what it tells.
    while (drawing.leftOut != Math.max(0, drawing.told)) {
      drawing = new ForceDrawing(solution, spec, drawing.leftOut);
      svg = drawing.drawn();
    }
    return svg;
  }

  private String pieceText() {
    double mass = Si.value(plan.piece().mass(), Kind.MASS, "mass");
    return "piece " + units.mass(mass);
  }

  private String movementText() {
    return spec.magnificationFactor() == 1
        ? "Side view to one scale; movements as they are"
        : "Side view; movements drawn "
            + PictureUnits.number(spec.magnificationFactor())
            + " times as large as they are";
  }

  /** That the tail ends off the sheet, and where. */
  private Optional<String> beyondText() {
    return scene.legs.stream()
        .filter(leg -> leg.beyond().isPresent())
        .map(
            leg ->
                "The tail goes on beyond the sheet: its end lies "
                    + units.length(leg.beyond().getAsDouble())
                    + " from "
                    + spoken(leg.leg().from())
                    + ".")
        .findFirst();
  }

  private String toldText() {
    return told > 0 ? Labels.leftOutText(told) + "; see the table." : "";
  }

  private String drawn() {
    Rect body = sheet.body();
    int azimuth = scene.azimuthDegrees();
    List<Place> extremes = scene.extremes(spec);
    View side = new View(false, azimuth, 1, 0, 0);
    View above = new View(true, azimuth, 1, 0, 0);
    Rect sideRoom = bounds(side, extremes);
    Rect aboveRoom = bounds(above, extremes);
    boolean outOfPlane = isOutOfPlane(above);
    Legend legend = new Legend(sheet);
    double legendHeight = 3 * 17;
    double scale = 0;
    Rect views = body;
    // The legend's height hangs on the scale, and the scale on the legend's height: twice is
    // enough.
    for (int pass = 0; pass < 2; pass++) {
      views = new Rect(body.left(), body.top(), body.right(), body.bottom() - legendHeight - 6);
      double gutter = Math.min(GUTTER, 0.12 * body.width());
      double high = sideRoom.height() + (outOfPlane ? aboveRoom.height() : 0);
      double room = views.height() - (outOfPlane ? 2 * BETWEEN : BETWEEN);
      if (room < Sheet.LEAST_ROOM) {
        return sheet.tooSmall();
      }
      double wide = Math.max(sideRoom.width(), outOfPlane ? aboveRoom.width() : 0);
      scale = Math.min((views.width() - 2 * gutter) / wide, room / high);
      legend = legend(scale);
      legendHeight = legend.height(body.width());
    }
    double left = views.middleX() - scale * sideRoom.middleX();
    double spare =
        views.height()
            - scale * (sideRoom.height() + (outOfPlane ? aboveRoom.height() : 0))
            - (outOfPlane ? 2 * BETWEEN : BETWEEN);
    double sideTop = views.top() + BETWEEN / 2 + spare / 2;
    double sideBottom = sideTop + scale * sideRoom.height();
    View drawnSide = new View(false, azimuth, scale, left, sideTop - scale * sideRoom.top());
    Rect sideArea =
        outOfPlane
            ? new Rect(views.left(), views.top(), views.right(), sideBottom + BETWEEN / 2)
            : views;
    view(drawnSide, sideArea);
    if (outOfPlane) {
      double aboveTop = sideBottom + BETWEEN;
      View drawnAbove = new View(true, azimuth, scale, left, aboveTop - scale * aboveRoom.top());
      sheet.write(
          "Plan view, from above", views.left(), sideBottom + BETWEEN / 2 + 11, "font-size", 11);
      view(
          drawnAbove,
          new Rect(views.left(), sideBottom + BETWEEN / 2 + 14, views.right(), views.bottom()));
    }
    legend.draw(new Rect(body.left(), body.bottom() - legendHeight, body.right(), body.bottom()));
    return sheet.end();
  }

  /** Bounds on a sheet of one pixel to the metre whose origin is the site's. */
  private static Rect bounds(View view, List<Place> places) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (Place place : places) {
      Spot p = view.on(place);
      left = Math.min(left, p.x());
      right = Math.max(right, p.x());
      top = Math.min(top, p.y());
      bottom = Math.max(bottom, p.y());
    }
    return new Rect(left, top, right, bottom);
  }

  private boolean isOutOfPlane(View above) {
    List<Place> middle = new ArrayList<>();
    scene.stems.forEach(stem -> middle.addAll(stem.loaded()));
    scene.points.forEach(point -> middle.add(point.position()));
    scene.legs.forEach(leg -> middle.add(leg.end()));
    return bounds(above, middle).height() > Math.max(0.1, MOST_OUT_OF_PLANE * scene.size);
  }

  private Legend legend(double scale) {
    Legend legend = new Legend(sheet);
    double bar = PictureUnits.round(units.lengths(90 / scale));
    legend.scaleBar(
        PictureUnits.number(bar) + " " + units.lengthUnit(), bar / units.lengths(1) * scale);
    double force = PictureUnits.round(units.forces(70 * scene.forcePerMetre / scale));
    legend.arrow(
        PictureUnits.number(force) + " " + units.forceUnit() + " on a point",
        force / units.forces(1) / scene.forcePerMetre * scale,
        Paint.FORCE,
        Paint.FORCE_HEAD,
        FORCE_WEIGHT);
    legend.line("stem, loaded", Paint.LINE, LOADED_WEIGHT, "none");
    legend.line("unloaded", Paint.FAINT, UNLOADED_WEIGHT, "5 3");
    legend.line("rope: the wider, the tighter", Paint.ROPE, 2.5, "none");
    legend.arrow("movement", 22, Paint.MOVEMENT, Paint.MOVEMENT_HEAD, 1.2);
    if (scene.legs.stream().anyMatch(Scene.DrawnLeg::goesOn)) {
      legend.broken("the rope goes on", Paint.ROPE, 2.5);
    }
    if (!spec.boxes().isEmpty()) {
      legend.line("box to clear", Paint.BOX, 1.5, "8 3 2 3");
    }
    if (scene.solution.otherEnd().isPresent()) {
      legend.note("held: drawn about to run, numbers from one end to the other");
    }
    return legend;
  }

  private void view(View view, Rect area) {
    sheet
        .svg()
        .open(
            "g",
            "class",
            view.above() ? "view view-above" : "view view-side",
            "data-scale",
            QuantityText.number(view.scale()),
            "data-left",
            QuantityText.number(view.left()),
            "data-top",
            QuantityText.number(view.top()),
            "data-azimuth",
            view.azimuthDegrees(),
            "data-magnification",
            QuantityText.number(spec.magnificationFactor()),
            "data-force-per-metre",
            QuantityText.number(scene.forcePerMetre));
    Labels labels = new Labels(area);
    things(view, labels);
    for (PictureSpec.NamedBox box : spec.boxes()) {
      box(view, area, box, labels);
    }
    if (!view.above()) {
      scene.ground.ifPresent(level -> ground(view, area, level, labels));
    }
    scene.stems.forEach(stem -> unloaded(view, stem));
    scene.stems.forEach(stem -> loaded(view, stem, labels));
    scene.marks.forEach(mark -> movement(view, mark, labels));
    scene.points.forEach(point -> hanging(view, point));
    scene.legs.forEach(leg -> leg(view, leg, labels));
    scene.tagline.ifPresent(end -> tagline(view, end, labels));
    piece(view, labels);
    scene.points.forEach(point -> point(view, point, labels));
    scene.points.forEach(point -> force(view, point, labels));
    if (view.above()) {
      scene.points.forEach(
          p ->
              labels.place(
                  List.of(p.place().equals("device") ? "device" : p.name().split(" ", 2)[0]),
                  "number",
                  view.on(p.position()),
                  new Spot(0, -1)));
    } else {
      letters(view, labels);
    }
    sheet.labels(labels);
    leftOut += labels.leftOut();
    sheet.svg().close();
  }

  private void box(View view, Rect area, PictureSpec.NamedBox box, Labels labels) {
    double[] least = box.box().least().in(Kind.LENGTH);
    double[] most = box.box().most().in(Kind.LENGTH);
    List<Place> corners = new ArrayList<>();
    for (int i = 0; i < 8; i++) {
      corners.add(
          new Place(
              (i & 1) == 0 ? least[0] : most[0],
              (i & 2) == 0 ? least[1] : most[1],
              (i & 4) == 0 ? least[2] : most[2]));
    }
    Rect all = bounds(view, corners);
    Rect seen =
        new Rect(
            Math.max(area.left(), all.left()),
            Math.max(area.top(), all.top()),
            Math.min(area.right(), all.right()),
            Math.min(area.bottom(), all.bottom()));
    if (seen.width() <= 0 || seen.height() <= 0) {
      return;
    }
    sheet.leaf(
        "rect",
        Paint.BOX,
        "box",
        "x",
        seen.left(),
        "y",
        seen.top(),
        "width",
        seen.width(),
        "height",
        seen.height(),
        "stroke-width",
        1.5,
        "stroke-dasharray",
        "8 3 2 3",
        "data-name",
        box.name());
    List<Spot> outline =
        List.of(
            new Spot(seen.left(), seen.bottom()),
            new Spot(seen.left(), seen.top()),
            new Spot(seen.right(), seen.top()),
            new Spot(seen.right(), seen.bottom()));
    labels.avoid(outline);
    if (!view.above()) {
      labels.place(
          text(box.name()), "box-name", new Spot(seen.middleX(), seen.middleY()), new Spot(0, 0));
    }
  }

  private void ground(View view, Rect area, double level, Labels labels) {
    double y = view.on(new Place(0, 0, level)).y();
    List<Spot> line = List.of(new Spot(area.left(), y), new Spot(area.right(), y));
    sheet.leaf("path", Paint.FAINT, "ground", "stroke-width", 1.5, "d", Svg.line(line));
    StringBuilder ticks = new StringBuilder();
    for (double x = area.left() + 8; x < area.right(); x += 12) {
      ticks.append(ticks.isEmpty() ? "M" : " M").append(Svg.number(x)).append(' ');
      ticks.append(Svg.number(y)).append(" l-5 5");
    }
    sheet.leaf("path", Paint.FAINT, "", "stroke-width", THIN, "d", ticks.toString());
    labels.avoid(line);
  }

  private List<Spot> outline(View view, List<Place> axis, List<Double> radii) {
    List<Spot> line = view.on(axis);
    List<Spot> left = new ArrayList<>();
    List<Spot> right = new ArrayList<>();
    for (int i = 0; i < line.size(); i++) {
      Spot a = line.get(Math.max(0, i - 1));
      Spot b = line.get(Math.min(line.size() - 1, i + 1));
      double size = Math.hypot(b.x() - a.x(), b.y() - a.y());
      double nx = size > 1e-9 ? (a.y() - b.y()) / size : 1;
      double ny = size > 1e-9 ? (b.x() - a.x()) / size : 0;
      double r = radii.get(i) * view.scale();
      Spot p = line.get(i);
      left.add(new Spot(p.x() + r * nx, p.y() + r * ny));
      right.add(0, new Spot(p.x() - r * nx, p.y() - r * ny));
    }
    left.addAll(right);
    return left;
  }

  private void unloaded(View view, Scene.DrawnStem stem) {
    sheet.leaf(
        "path",
        Paint.FAINT,
        "stem-unloaded",
        "stroke-width",
        UNLOADED_WEIGHT,
        "stroke-dasharray",
        "5 3",
        "d",
        Svg.line(outline(view, stem.unloaded(), stem.radii())) + " Z");
  }

  private void loaded(View view, Scene.DrawnStem stem, Labels labels) {
    List<Spot> outline = outline(view, stem.loaded(), stem.radii());
    sheet.leaf(
        "path",
        Paint.STEM,
        "stem-loaded",
        "stroke-width",
        LOADED_WEIGHT,
        "stroke-linejoin",
        "round",
        "d",
        Svg.line(outline) + " Z");
    StringBuilder stations = new StringBuilder();
    for (double s : stem.stations()) {
      stations.append(stations.isEmpty() ? "" : " ").append(QuantityText.number(s));
    }
    for (boolean withLoad : new boolean[] {false, true}) {
      List<Spot> axis = view.on(withLoad ? stem.loaded() : stem.unloaded());
      sheet.leaf(
          "path",
          Paint.FAINT,
          withLoad ? "axis axis-loaded" : "axis axis-unloaded",
          "stroke-width",
          0.5,
          "stroke-opacity",
          withLoad ? "1" : "0.5",
          "stroke-dasharray",
          "8 2 1 2",
          "data-stem",
          stem.result().id(),
          "data-stations",
          stations,
          "d",
          Svg.line(axis));
    }
    labels.avoid(outline);
  }

  private void movement(View view, Scene.DrawnMark mark, Labels labels) {
    Spot from = view.on(mark.from());
    Spot to = view.on(mark.to());
    sheet.arrow(
        from,
        to,
        Paint.MOVEMENT,
        Paint.MOVEMENT_HEAD,
        "movement",
        "stroke-width",
        1.2,
        "data-stem",
        mark.stem(),
        "data-name",
        mark.name());
    labels.avoid(List.of(from, to));
  }

  /** The arm and the sling that a point hangs by. */
  private void hanging(View view, Scene.DrawnPoint point) {
    List<Spot> line =
        view.on(
            point.bears()
                ? List.of(point.axis(), point.attachment(), point.position())
                : List.of(point.axis(), point.attachment()));
    sheet.leaf(
        "path",
        Paint.LINE,
        "sling",
        "stroke-width",
        1.6,
        "stroke-dasharray",
        point.bears() ? "none" : "2 2",
        "d",
        Svg.line(line));
  }

  private void leg(View view, Scene.DrawnLeg leg, Labels labels) {
    Spot a = view.on(leg.begin());
    Spot b = view.on(leg.end());
    sheet.leaf(
        "line",
        Paint.ROPE,
        "leg",
        "x1",
        a.x(),
        "y1",
        a.y(),
        "x2",
        b.x(),
        "y2",
        b.y(),
        "stroke-width",
        Math.rint(100 * (1 + 3 * leg.tension() / greatestTension)) / 100,
        "stroke-linecap",
        "round",
        "data-from",
        leg.leg().from(),
        "data-to",
        leg.leg().to(),
        "data-tension",
        QuantityText.number(leg.tension()),
        "data-broken",
        leg.broken());
    if (leg.goesOn()) {
      sheet.breakMark(a, b);
    } else if (leg.leg().to().equals("tail")) {
      sheet.leaf("circle", Paint.KNOT, "tail", "cx", b.x(), "cy", b.y(), "r", 3.0);
    }
    labels.avoid(List.of(a, b));
  }

  private void tagline(View view, Place end, Labels labels) {
    List<Spot> line = view.on(List.of(scene.piece, end));
    sheet.leaf(
        "path",
        Paint.ROPE,
        "tagline",
        "stroke-width",
        1.2,
        "stroke-dasharray",
        "3 3",
        "d",
        Svg.line(line));
    labels.avoid(line);
    if (!view.above()) {
      labels.place(List.of("tagline"), "tagline-name", line.get(1), new Spot(0, 1));
    }
  }

  private void piece(View view, Labels labels) {
    Spot p = view.on(scene.piece);
    double half = 8;
    List<Spot> outline = new ArrayList<>();
    if (plan.piece().log().isPresent() && !view.above()) {
      Log log = plan.piece().log().get();
      double large = view.scale() * Si.value(log.largeEnd(), Kind.LENGTH, "largeEnd") / 2;
      double small = view.scale() * Si.value(log.smallEnd(), Kind.LENGTH, "smallEnd") / 2;
      double length = view.scale() * Si.value(log.length(), Kind.LENGTH, "length");
      half = length / 2;
      outline.add(new Spot(p.x() - small, p.y()));
      outline.add(new Spot(p.x() + small, p.y()));
      outline.add(new Spot(p.x() + large, p.y() + length));
      outline.add(new Spot(p.x() - large, p.y() + length));
    } else {
      double top = view.above() ? p.y() - half : p.y();
      outline.add(new Spot(p.x() - half, top));
      outline.add(new Spot(p.x() + half, top));
      outline.add(new Spot(p.x() + half, top + 2 * half));
      outline.add(new Spot(p.x() - half, top + 2 * half));
    }
    sheet.leaf(
        "path",
        Paint.PIECE,
        "piece",
        "stroke-width",
        1.2,
        "stroke-linejoin",
        "round",
        "d",
        Svg.line(outline) + " Z");
    labels.avoid(outline);
  }

  private void point(View view, Scene.DrawnPoint point, Labels labels) {
    Spot p = view.on(point.position());
    boolean round = point.hardware() instanceof Sheave || point.hardware() instanceof FrictionRing;
    sheet.open(
        Paint.POINT,
        "point",
        "stroke-width",
        1.6,
        "data-place",
        point.place(),
        "data-x",
        p.x(),
        "data-y",
        p.y(),
        "data-bears",
        point.bears());
    if (round) {
      // Hardware that opens is drawn with a gap: 26 of its 31.4 pixels, the gap to the left.
      sheet
          .svg()
          .leaf(
              "circle",
              "cx",
              p.x(),
              "cy",
              p.y(),
              "r",
              5.0,
              "stroke-dasharray",
              Boolean.TRUE.equals(point.opens()) ? "13 5.4 13 0" : "none");
      if (point.hardware() instanceof Sheave) {
        sheet.leaf("circle", Paint.KNOT, "", "cx", p.x(), "cy", p.y(), "r", 1.8);
      }
    } else if (point.place().equals("device")) {
      sheet.svg().leaf("rect", "x", p.x() - 4, "y", p.y() - 7, "width", 8.0, "height", 14.0);
    } else if (point.hardware() instanceof Bark) {
      sheet.svg().leaf("rect", "x", p.x() - 4, "y", p.y() - 4, "width", 8.0, "height", 8.0);
    } else {
      sheet.svg().leaf("circle", "cx", p.x(), "cy", p.y(), "r", 3.5);
    }
    sheet.close();
    labels.avoid(List.of(new Spot(p.x() - 5, p.y()), new Spot(p.x() + 5, p.y())));
  }

  private void force(View view, Scene.DrawnPoint point, Labels labels) {
    if (!point.bears()) {
      return;
    }
    Spot a = view.on(point.position());
    Spot b = view.on(scene.tip(point));
    sheet.leaf(
        "line",
        Paint.CASING,
        "",
        "x1",
        a.x(),
        "y1",
        a.y(),
        "x2",
        b.x(),
        "y2",
        b.y(),
        "stroke-width",
        FORCE_WEIGHT + 2.5);
    sheet.arrow(
        a,
        b,
        Paint.FORCE,
        Paint.FORCE_HEAD,
        "force",
        "stroke-width",
        FORCE_WEIGHT,
        "data-place",
        point.place(),
        "data-force",
        QuantityText.number(point.force().x())
            + " "
            + QuantityText.number(point.force().y())
            + " "
            + QuantityText.number(point.force().z()));
    labels.avoid(List.of(a, b));
    labels.head(b);
  }

  private List<String> text(String... lines) {
    double room = Math.min(MOST_LABEL, 0.4 * spec.width());
    List<String> out = new ArrayList<>();
    for (String line : lines) {
      out.add(Lettering.cut(line, Labels.SIZE, room));
    }
    return out;
  }

  /** All that has a name in a view, before the first is lettered. */
  private void things(View view, Labels labels) {
    scene.points.forEach(point -> labels.thing(view.on(point.position())));
    if (!view.above()) {
      scene.marks.forEach(mark -> labels.thing(view.on(mark.to())));
      scene.stems.forEach(stem -> labels.thing(base(view, stem)));
      labels.thing(view.on(scene.piece));
      scene.tagline.ifPresent(end -> labels.thing(view.on(end)));
    }
  }

  /** Points first, then stems, then legs: who comes first lies nearest. */
  private void letters(View view, Labels labels) {
    for (Scene.DrawnPoint point : scene.points) {
      Spot p = view.on(point.position());
      Spot b = view.on(scene.tip(point));
      String name = point.name() + takesRope(point);
      labels.place(
          text(name, point.bears() ? forceText(point) : "slack"),
          "force-name",
          p,
          point.bears() ? new Spot(b.x() - p.x(), b.y() - p.y()) : new Spot(1, 0));
    }
    for (Scene.DrawnMark mark : scene.marks) {
      labels.place(
          text(mark.name(), "moves " + units.length(mark.moved())),
          "mark-name",
          view.on(mark.to()),
          new Spot(1, -1));
    }
    double middle =
        scene.stems.stream().mapToDouble(s -> base(view, s).x()).average().orElseThrow();
    for (Scene.DrawnStem stem : scene.stems) {
      StemResult result = stem.result();
      Spot base = base(view, stem);
      labels.place(
          text(
              "base" + (scene.stems.size() > 1 ? " of " + result.id() : ""),
              units.moment(Si.value(result.base().momentMagnitude(), Kind.MOMENT, "moment"))),
          "base-name",
          base,
          new Spot(base.x() > middle ? 1 : -1, -0.3));
    }
    labels.place(
        text("piece", units.mass(Si.value(plan.piece().mass(), Kind.MASS, "mass"))),
        "piece-name",
        view.on(scene.piece),
        new Spot(0, 1));
    if (scene.solution.arrangement().tail() instanceof Tail.Device device) {
      tailText(view, labels, device);
    }
    // Their numbers stand without a name: a name beside a leg is not mistaken for one of them.
    scene.legs.forEach(leg -> labels.thing(along(view, leg, 0.5)));
    for (Scene.DrawnLeg leg : scene.legs) {
      Spot a = view.on(leg.begin());
      Spot b = view.on(leg.end());
      labels.place(
          text(units.force(leg.tension(), leg.other())),
          "leg-name",
          SHARES.stream().map(share -> along(view, leg, share)).toList(),
          new Spot(Math.abs(b.y() - a.y()), Math.abs(b.x() - a.x())));
    }
  }

  private static Spot base(View view, Scene.DrawnStem stem) {
    return view.on(stem.loaded().get(0));
  }

  private static Spot along(View view, Scene.DrawnLeg leg, double share) {
    Spot a = view.on(leg.begin());
    Spot b = view.on(leg.end());
    return new Spot(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y()));
  }

  private void tailText(View view, Labels labels, Tail.Device device) {
    scene
        .solution
        .handTension()
        .ifPresent(
            hand -> {
              double here = Scene.newtons(hand);
              double other =
                  scene
                      .solution
                      .otherEnd()
                      .flatMap(Solution::handTension)
                      .map(Scene::newtons)
                      .orElse(here);
              labels.place(
                  text("hand " + units.force(here, other), "behind " + wraps(device.wraps())),
                  "hand-name",
                  view.on(scene.points.get(scene.points.size() - 1).position()),
                  new Spot(-1, 0.2));
            });
  }

  private static String wraps(double wraps) {
    return wraps == 0 ? "no wraps" : PictureUnits.number(wraps) + (wraps == 1 ? " wrap" : " wraps");
  }

  private static String takesRope(Scene.DrawnPoint point) {
    return point.opens() == null ? "" : point.opens() ? ", opens" : ", threaded";
  }

  private String forceText(Scene.DrawnPoint point) {
    return units.force(point.force().length(), point.otherForce());
  }

  /** The whole picture in words, for those who hear it. */
  private String description() {
    StringBuilder out = new StringBuilder();
    out.append("Arrangement ").append(scene.solution.id()).append(", ");
    out.append(scene.solution.arrangement().motion().text()).append(", ");
    out.append(pieceText()).append(".");
    for (Scene.DrawnLeg leg : scene.legs) {
      out.append(" Rope from ").append(spoken(leg.leg().from())).append(" to ");
      out.append(spoken(leg.leg().to())).append(": ");
      out.append(units.force(leg.tension(), leg.other())).append('.');
    }
    beyondText().ifPresent(text -> out.append(' ').append(text));
    for (Scene.DrawnPoint point : scene.points) {
      out.append(" Point ").append(point.name()).append(takesRope(point)).append(": ");
      out.append(point.bears() ? "force on the stem " + forceText(point) : "slack").append('.');
    }
    SettingUp.of(scene.solution.arrangement())
        .ifPresent(order -> out.append(" Setting up: ").append(order.sentence()));
    for (Scene.DrawnMark mark : scene.marks) {
      out.append(' ').append(mark.name()).append(" moves ").append(units.length(mark.moved()));
      out.append('.');
    }
    for (Scene.DrawnStem stem : scene.stems) {
      out.append(" Moment at the base of ").append(stem.result().id()).append(": ");
      out.append(
          units.moment(Si.value(stem.result().base().momentMagnitude(), Kind.MOMENT, "moment")));
      out.append('.');
    }
    if (told > 0) {
      out.append(' ').append(toldText());
    }
    scene.solution.cautions().forEach(c -> out.append(" Caution: ").append(c.sentence()));
    return out.toString();
  }

  private String spoken(String place) {
    return place.startsWith("contacts/")
        ? "point " + (Integer.parseInt(place.substring("contacts/".length())) + 1)
        : "the " + place;
  }
}
