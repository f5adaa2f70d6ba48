package fourpin.sheets.drawings;

import fourpin.boring.BayGrid;
import fourpin.casework.Axis;
import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.casework.Feature;
import fourpin.casework.Feature.Channel;
import fourpin.casework.Feature.Hole;
import fourpin.casework.Part;
import fourpin.measure.Length;
import fourpin.sheets.drawings.Projection.Edge;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Fill;
import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Pen;
import fourpin.sheets.paint.Point;
import fourpin.sheets.paint.RunningDimensions;
import fourpin.sheets.paint.RunningDimensions.Station;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.Side;
import fourpin.sheets.paint.Sketch;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One face of a panel as it lies on the bench with that face up: joints, holes, and running
 * dimensions from one datum, the lower or left end and the front edge, both drawn heavy.
 */
public final class PanelView {

  private static final int LETTERS = 26;

  private final Drafter drafter;
  private final BuiltCase built;
  private final List<BayGrid> grids;
  private final Part part;
  private final Projection view;

  /**
   * @param grids of the case
   * @param face that lies up
   */
  public PanelView(Drafter drafter, BuiltCase built, List<BayGrid> grids, Part part, Face face) {
    this.drafter = drafter;
    this.built = built;
    this.grids = List.copyOf(grids);
    this.part = part;
    this.view = new Projection(face);
  }

  public Drawing draw() {
    return drafter.largest(view.box(part.box()), this::draw);
  }

  /** At whatever scale fills the room, for sheets that are read from the bench. */
  public Drawing fill() {
    return drafter.fill(view.box(part.box()), this::draw);
  }

  /** The pattern of the bay that this face looks into, for uprights with holes. */
  public Optional<BayGrid> grid() {
    return built.bays().stream()
        .filter(bay -> part.mark().equals(view.face() == Face.RIGHT ? bay.left() : bay.right()))
        .map(BaySpace::number)
        .flatMap(number -> grids.stream().filter(g -> g.bay() == number))
        .findFirst()
        .filter(g -> view.face().axis() == Axis.X && !holes(Hole.Use.SUPPORT).isEmpty());
  }

  private Drawing draw(Scale scale) {
    Sketch sketch = new Sketch(scale);
    outline(sketch);
    hiddenChannels(sketch);
    channels().forEach(c -> sketch.rectangle(view.box(c.volume()), Pen.EDGE, Fill.HATCH));
    rowLines(sketch);
    holes().forEach(hole -> hole(sketch, hole));
    datum(sketch);
    dimensions(sketch);
    numbers(sketch);
    labels(sketch);
    String side = view.face().name().toLowerCase(Locale.ROOT);
    return Drawing.toScale(
        Drafter.name(built.order().name(), part.mark(), side),
        built.order().name() + ", " + part.name() + " " + part.mark() + ", " + side + " face up",
        description(),
        scale,
        drafter.note(),
        sketch.marks());
  }

  private String description() {
    return holes(Hole.Use.SUPPORT).size()
        + " holes for shelf supports, "
        + worked().size()
        + " joints. Distances run from the heavy edges.";
  }

  private List<Channel> channels() {
    return channels(part.features().stream().filter(f -> f.face() == view.face()));
  }

  private static List<Channel> channels(Stream<Feature> features) {
    return features
        .flatMap(f -> f instanceof Channel c ? Stream.of(c) : Stream.empty())
        .filter(c -> c.kind() != Channel.Kind.NOTCH)
        .toList();
  }

  /** What is cut from this face, and the notches, which go right through. */
  private List<Channel> worked() {
    return part.features().stream()
        .flatMap(f -> f instanceof Channel c ? Stream.of(c) : Stream.empty())
        .filter(c -> c.face() == view.face() || c.kind() == Channel.Kind.NOTCH)
        .toList();
  }

  private List<Channel> hidden() {
    return channels(part.features().stream().filter(f -> f.face() == view.face().opposite()));
  }

  /** The holes of this face that are not on a level of {@link #grid()}: those of screws, mostly. */
  public List<Hole> otherHoles() {
    return grid().isPresent() ? holes(Hole.Use.SCREW) : holes();
  }

  /**
   * Whether a hole's centre lies on the part itself: half holes come from the blank that the part
   * was ripped from, and a distance beyond its edge would be nowhere to measure.
   */
  public static boolean isBoredHere(Part part, Hole hole) {
    Length across = part.from(part.widthAxis(), hole.centre().along(part.widthAxis()));
    return !across.isNegative() && part.width().total().isAtLeast(across);
  }

  private List<Hole> holes() {
    return part.features().stream()
        .filter(f -> f.face() == view.face())
        .flatMap(f -> f instanceof Hole h ? Stream.of(h) : Stream.empty())
        .toList();
  }

  private List<Hole> holes(Hole.Use use) {
    return holes().stream().filter(h -> h.use() == use).toList();
  }

  private void outline(Sketch sketch) {
    List<Point> outline =
        Silhouette.of(part, view).stream().map(p -> sketch.point(p.x(), p.y())).toList();
    sketch.add(Mark.Path.polygon(outline, Pen.OUTLINE, Fill.WHITE));
  }

  private void hiddenChannels(Sketch sketch) {
    hidden().forEach(c -> sketch.rectangle(view.box(c.volume()), Pen.HIDDEN, Fill.NONE));
  }

  private void rowLines(Sketch sketch) {
    rows()
        .forEach(row -> sketch.line(row.left(), row.bottom(), row.right(), row.top(), Pen.CENTRE));
  }

  /** The line of each row, from its lowest hole to its highest and a little beyond. */
  private List<Box> rows() {
    Map<Double, Box> rows = new TreeMap<>();
    for (Hole hole : holes(Hole.Use.SUPPORT)) {
      double u = view.u(hole.centre());
      double v = view.v(hole.centre());
      double beyond = 2 * hole.diameter().mm();
      rows.merge(u, new Box(u, v - beyond, u, v + beyond), Box::with);
    }
    return List.copyOf(rows.values());
  }

  private void hole(Sketch sketch, Hole hole) {
    double u = view.u(hole.centre());
    double v = view.v(hole.centre());
    double arm = hole.diameter().mm();
    sketch.circle(u, v, hole.diameter().mm(), Pen.EDGE, Fill.WHITE);
    if (hole.use() == Hole.Use.SCREW) {
      sketch
          .line(u - arm, v, u + arm, v, Pen.DIMENSION)
          .line(u, v - arm, u, v + arm, Pen.DIMENSION);
    }
  }

  private void datum(Sketch sketch) {
    Box box = view.box(part.box());
    double u = datumAtRight() ? box.right() : box.left();
    double v = datumAtTop() ? box.top() : box.bottom();
    sketch.line(u, box.bottom(), u, box.top(), Pen.DATUM);
    sketch.line(box.left(), v, box.right(), v, Pen.DATUM);
  }

  private boolean datumAtRight() {
    return view.front() == Edge.RIGHT;
  }

  private boolean datumAtTop() {
    return view.front() == Edge.TOP;
  }

  private void dimensions(Sketch sketch) {
    Box work = sketch.onPaper(view.box(part.box()));
    double u = datumAtRight() ? work.right() : work.left();
    double v = datumAtTop() ? work.top() : work.bottom();
    Scale scale = sketch.scale();
    List<Hole> holes = holes();
    sketch.addAll(
        RunningDimensions.beside(
            Side.LEFT,
            work.left(),
            v,
            thinned(
                stations(
                    scale,
                    view.up(),
                    holes.stream().map(h -> h.centre().along(view.up())).toList()))));
    sketch.addAll(
        RunningDimensions.beside(
            Side.ABOVE,
            work.top(),
            u,
            thinned(
                stations(
                    scale,
                    view.across(),
                    holes.stream()
                        .filter(h -> isBoredHere(part, h))
                        .map(h -> h.centre().along(view.across()))
                        .toList()))));
    sketch.addAll(
        RunningDimensions.beside(
            Side.RIGHT, work.right(), v, stations(scale, view.up(), edges(view.up()))));
    sketch.addAll(
        RunningDimensions.beside(
            Side.BELOW, work.bottom(), u, stations(scale, view.across(), edges(view.across()))));
  }

  /**
   * Both edges of every joint that does not run over the whole panel in this direction, and the
   * panel's far edge.
   */
  private List<Length> edges(Axis axis) {
    List<Length> edges = new ArrayList<>(List.of(part.box().high().along(axis)));
    for (Channel channel : worked()) {
      edges.add(channel.volume().low().along(axis));
      edges.add(channel.volume().high().along(axis));
    }
    return edges;
  }

  /**
   * Each place once, without the datum itself. Every datum is the low side of its axis: the left
   * end, the front edge, the foot; the view puts it where it belongs.
   */
  private List<Station> stations(Scale scale, Axis axis, Collection<Length> places) {
    TreeMap<Length, Station> stations = new TreeMap<>();
    for (Length place : places) {
      Length distance = part.from(axis, place);
      if (!distance.isZero()) {
        stations.put(distance, new Station(onPaper(scale, axis, place), drafter.number(distance)));
      }
    }
    return List.copyOf(stations.values());
  }

  private double onPaper(Scale scale, Axis axis, Length place) {
    double sign = axis == Axis.Y && (datumAtRight() || datumAtTop()) ? -1 : 1;
    return scale.toPaper(sign * place.mm());
  }

  private static List<Station> thinned(List<Station> stations) {
    return Thinned.of(stations.stream().map(Station::along).toList()).among(stations);
  }

  /** The numbers of the holes beside the front row, as often as there is room. */
  private void numbers(Sketch sketch) {
    grid().ifPresent(grid -> numbers(sketch, grid));
  }

  private void numbers(Sketch sketch, BayGrid grid) {
    double front =
        view.u(new fourpin.casework.Point(Length.ZERO, grid.rows().getFirst().y(), Length.ZERO));
    Thinned numbered =
        Thinned.of(
            grid.levels().stream().map(l -> sketch.scale().toPaper(l.height().mm())).toList());
    double aside = datumAtRight() ? -1.5 : 1.5;
    Lettering.Align align = datumAtRight() ? Lettering.Align.END : Lettering.Align.START;
    for (BayGrid.Level level : numbered.among(grid.levels())) {
      Point at = sketch.point(front, level.height().mm()).moved(aside, 0);
      sketch.add(
          Drafter.small(Integer.toString(level.number()))
              .with(align, Lettering.Seat.MIDDLE)
              .at(at));
    }
  }

  private void labels(Sketch sketch) {
    PanelLabels labels = new PanelLabels(sketch, view, part);
    Stream.concat(worked().stream(), hidden().stream()).forEach(labels::keepOff);
    rows().forEach(labels::keepOffRow);
    holes().forEach(labels::keepOff);
    labels.draw(joints());
  }

  /** The joints of this face and the notches, with the letters that name them on the drawing. */
  public List<Joint> joints() {
    List<Channel> channels = worked();
    return IntStream.range(0, channels.size())
        .mapToObj(i -> new Joint(letter(i), channels.get(i)))
        .toList();
  }

  /** A joint and the letter that stands beside it. */
  public record Joint(String letter, Channel channel) {}

  /** a to z, then a2 to z2 and so on. */
  private static String letter(int index) {
    String letter = Character.toString('a' + index % LETTERS);
    return index < LETTERS ? letter : letter + (index / LETTERS + 1);
  }
}
