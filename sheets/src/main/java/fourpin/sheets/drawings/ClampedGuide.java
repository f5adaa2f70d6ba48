package fourpin.sheets.drawings;

import fourpin.boring.way.Clamping;
import fourpin.boring.way.Clamping.Bearing;
import fourpin.boring.way.Clamping.Reach;
import fourpin.boring.way.Guide;
import fourpin.boring.way.Guide.GuideHole;
import fourpin.casework.Face;
import fourpin.casework.Feature.Channel;
import fourpin.casework.Part;
import fourpin.casework.Point;
import fourpin.measure.Length;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Dimensions;
import fourpin.sheets.paint.Dimensions.Span;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.RunningDimensions;
import fourpin.sheets.paint.RunningDimensions.Station;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import fourpin.sheets.paint.Typeface;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One clamping of a guide on a panel: the guide grey under the panel's lines, the block hatched,
 * the holes that are bored with their numbers, the others crossed out, each further place of the
 * guide dashed with the hole of its pin black.
 */
final class ClampedGuide {

  private static final double ASIDE = 0.8;
  private static final double PIN = 1.6;

  /** Of the numbers called at the bench. */
  private static final double LARGE = 4;

  private final Drafter drafter;
  private final Part part;
  private final Guide guide;
  private final Clamping clamping;
  private final Projection view;

  ClampedGuide(Drafter drafter, Part part, Guide guide, Clamping clamping) {
    this.drafter = drafter;
    this.part = part;
    this.guide = guide;
    this.clamping = clamping;
    this.view = new Projection(clamping.face());
  }

  /** The panel that the block stands on. */
  void below(Sketch sketch, Part support) {
    Box box = view.box(support.box());
    sketch.rectangle(box, Pen.HIDDEN, Fill.BACK_HATCH);
    sketch.add(
        Drafter.small(support.mark())
            .with(Lettering.Align.MIDDLE, Lettering.Seat.MIDDLE)
            .backed()
            .at(sketch.onPaper(box).centre()));
  }

  /** All but the labels. */
  void draw(Sketch sketch) {
    List<GuidePlace> places = places();
    sketch.rectangle(places.getFirst().body(), Pen.EDGE, Fill.SHADE);
    places
        .subList(1, places.size())
        .forEach(p -> sketch.rectangle(p.body(), Pen.HIDDEN, Fill.NONE));
    spacers(sketch);
    if (clamping.bearing() instanceof Bearing.End) {
      places.getFirst().drawBlock(sketch);
    }
    panel(sketch);
    places.getFirst().columns().forEach(c -> line(sketch, c));
    for (int i = 0; i < places.size(); i++) {
      holes(sketch, places.get(i), clamping.reaches().get(i));
      numbers(sketch, places.get(i), clamping.reaches().get(i), besideGuide(sketch, i));
    }
    datum(sketch);
    dimensions(sketch);
  }

  /** The guide where it is clamped first, and wherever it is moved to. */
  private List<GuidePlace> places() {
    double end = part.box().at(Face.BOTTOM).mm();
    return clamping.zeros(guide).stream()
        .map(zero -> new GuidePlace(guide, index(), hand(), end + zero.mm()))
        .toList();
  }

  private int hand() {
    return clamping.face() == Face.RIGHT ? 1 : -1;
  }

  private double index() {
    Length front =
        clamping.edge() == Face.FRONT
            ? part.box().at(Face.FRONT).plus(clamping.across())
            : part.box().at(Face.BACK).minus(clamping.across()).minus(guide.width());
    return view.u(new Point(Length.ZERO, front, Length.ZERO));
  }

  private void panel(Sketch sketch) {
    List<fourpin.sheets.paint.Point> outline =
        Silhouette.of(part, view).stream().map(p -> sketch.point(p.x(), p.y())).toList();
    sketch.add(Mark.Path.polygon(outline, Pen.OUTLINE, Fill.NONE));
    channels(clamping.face())
        .forEach(c -> sketch.rectangle(view.box(c.volume()), Pen.EDGE, Fill.NONE));
    channels(clamping.face().opposite())
        .forEach(c -> sketch.rectangle(view.box(c.volume()), Pen.HIDDEN, Fill.NONE));
  }

  private Stream<Channel> channels(Face face) {
    return part.features().stream()
        .filter(f -> f.face() == face)
        .flatMap(f -> f instanceof Channel c ? Stream.of(c) : Stream.empty())
        .filter(c -> c.kind() != Channel.Kind.NOTCH);
  }

  /** What keeps the guide off the end or the edge that it is set from. */
  private void spacers(Sketch sketch) {
    Box body = places().getFirst().body();
    Box panel = view.box(part.box());
    double under = underEnd().mm();
    if (under != 0) {
      sketch.rectangle(
          new Box(
              body.left(),
              body.bottom() + Math.min(under, 0),
              body.right(),
              body.bottom() + Math.max(under, 0)),
          Pen.EDGE,
          Fill.CROSS_HATCH);
    }
    if (clamping.across().isPositive()) {
      double from = inner() == Side.RIGHT ? panel.left() : body.right();
      double to = inner() == Side.RIGHT ? body.left() : panel.right();
      sketch.rectangle(
          new Box(from, panel.bottom(), to, Math.min(panel.top(), body.top())),
          Pen.EDGE,
          Fill.CROSS_HATCH);
    }
  }

  /** From the guide's zero up to what it bears on: thickness of a spacer, negative downwards. */
  private Length underEnd() {
    return switch (clamping.bearing()) {
      case Bearing.End _ -> clamping.along().negated();
      case Bearing.PanelBelow below -> below.spacer().negated();
    };
  }

  private static void line(Sketch sketch, Box line) {
    sketch.line(line.left(), line.bottom(), line.right(), line.top(), Pen.CENTRE);
  }

  private void holes(Sketch sketch, GuidePlace place, Reach reach) {
    if (reach.step().isEmpty()) {
      guide.holes().stream()
          .filter(h -> !reach.holes().contains(h.number()))
          .forEach(h -> place.crossOut(sketch, h));
    }
    reach.holes().forEach(number -> hole(sketch, place, guide.hole(number)));
    reach.step().ifPresent(step -> pin(sketch, place, guide.hole(step.pin())));
  }

  private static void hole(Sketch sketch, GuidePlace place, GuideHole hole) {
    sketch.circle(place.u(hole), place.v(hole), hole.diameter().mm(), Pen.EDGE, Fill.WHITE);
  }

  private static void pin(Sketch sketch, GuidePlace place, GuideHole hole) {
    double size = Math.max(hole.diameter().mm(), sketch.scale().toReal(PIN));
    sketch.circle(place.u(hole), place.v(hole), size, Pen.OUTLINE, Fill.SOLID);
  }

  /**
   * First and last large, since they are what is called at the bench.
   *
   * @param aside where they stand beside the guide
   */
  private void numbers(Sketch sketch, GuidePlace place, Reach reach, double aside) {
    List<Integer> numbers = reach.holes();
    List<Double> heights =
        numbers.stream().map(n -> sketch.scale().toPaper(place.v(guide.hole(n)))).toList();
    for (int number : Thinned.of(heights).among(numbers)) {
      boolean end = number == numbers.getFirst() || number == numbers.getLast();
      double at = heights.get(numbers.indexOf(number));
      if (!end && isNearEnd(at, heights)) {
        continue;
      }
      String name = Integer.toString(number);
      Lettering words = end ? Lettering.of(name, Typeface.BOLD, LARGE) : Drafter.label(name);
      double from =
          reach.step().isEmpty() ? beside(sketch, place, guide.hole(number), words) : aside;
      sketch.add(
          words
              .with(
                  inner() == Side.LEFT ? Lettering.Align.END : Lettering.Align.START,
                  Lettering.Seat.MIDDLE)
              .at(new fourpin.sheets.paint.Point(from, at)));
    }
  }

  /** Where the large number at an end leaves no room for a small one. */
  private static boolean isNearEnd(double at, List<Double> heights) {
    double least = Math.min(Math.abs(at - heights.getFirst()), Math.abs(at - heights.getLast()));
    return least < LARGE;
  }

  /** Beside the hole where there is room on the guide, else beside the guide. */
  private double beside(Sketch sketch, GuidePlace place, GuideHole hole, Lettering words) {
    double off = sketch.scale().toPaper(hole.diameter().mm()) / 2 + ASIDE;
    double centre = sketch.scale().toPaper(place.u(hole));
    double guide = besideGuide(sketch, 0);
    double room = Math.abs(guide - centre) - ASIDE;
    return off + words.width() > room ? guide : centre + (inner() == Side.LEFT ? -off : off);
  }

  /**
   * Of the places of the guide by turns near it and further off, so that the first number of one,
   * which is a hole above the last of the place before, does not run into it.
   */
  private double besideGuide(Sketch sketch, int place) {
    Box body = sketch.onPaper(places().getFirst().body());
    double off = ASIDE + place % 2 * (widest() + ASIDE);
    return inner() == Side.LEFT ? body.left() - off : body.right() + off;
  }

  private double widest() {
    String last = Integer.toString(guide.holes().getLast().number());
    return Lettering.of(last, Typeface.BOLD, LARGE).width();
  }

  /** From the edge that the guide is set from into the panel. */
  private Side inner() {
    return (clamping.edge() == Face.FRONT) == (clamping.face() == Face.RIGHT)
        ? Side.RIGHT
        : Side.LEFT;
  }

  private Side outer() {
    return inner() == Side.RIGHT ? Side.LEFT : Side.RIGHT;
  }

  /** The lower end and the edge that the guide is set from. */
  private void datum(Sketch sketch) {
    Box box = view.box(part.box());
    double u = inner() == Side.RIGHT ? box.left() : box.right();
    sketch.line(u, box.bottom(), u, box.top(), Pen.DATUM);
    sketch.line(box.left(), box.bottom(), box.right(), box.bottom(), Pen.DATUM);
  }

  private void dimensions(Sketch sketch) {
    Box drawn = sketch.extent();
    Box work = sketch.onPaper(view.box(part.box()));
    double edge = outer() == Side.LEFT ? drawn.left() : drawn.right();
    sketch.addAll(RunningDimensions.beside(outer(), edge, work.bottom(), stations(sketch)));
    sketch.addAll(Dimensions.beside(Side.BELOW, drawn.bottom(), across(sketch, work)));
  }

  /** The first and the last hole of each place, from the lower end: what is checked afterwards. */
  private List<Station> stations(Sketch sketch) {
    TreeMap<Length, Station> stations = new TreeMap<>();
    for (int i = 0; i < clamping.reaches().size(); i++) {
      List<Integer> holes = clamping.reaches().get(i).holes();
      for (int number : List.of(holes.getFirst(), holes.getLast())) {
        Length up = clamping.up(guide, i, number);
        stations.put(up, station(sketch, up));
      }
    }
    return List.copyOf(stations.values());
  }

  private Station station(Sketch sketch, Length up) {
    double height = part.box().at(Face.BOTTOM).mm() + up.mm();
    return new Station(sketch.scale().toPaper(height), drafter.number(up));
  }

  /** The spacer at the edge, or how far the guide stands over it. */
  private List<Span> across(Sketch sketch, Box work) {
    if (clamping.across().isZero()) {
      return List.of();
    }
    Box body = sketch.onPaper(places().getFirst().body());
    double panel = inner() == Side.RIGHT ? work.left() : work.right();
    double edge = inner() == Side.RIGHT ? body.left() : body.right();
    return List.of(
        new Span(
            Math.min(panel, edge), Math.max(panel, edge), drafter.number(clamping.across().abs())));
  }

  /** The words on the panel where the finished drawing leaves room. */
  void label(Sketch sketch) {
    PanelLabels labels = new PanelLabels(sketch, view, part);
    channels(clamping.face()).forEach(labels::keepOff);
    channels(clamping.face().opposite()).forEach(labels::keepOff);
    for (GuidePlace place : places()) {
      place.columns().forEach(labels::keepOffRow);
      Box body = place.body();
      labels.keepOffRow(new Box(body.left(), body.bottom(), body.left(), body.top()));
      labels.keepOffRow(new Box(body.right(), body.bottom(), body.right(), body.top()));
    }
    labels.draw(List.of());
  }
}
