package fourpin.shop.web;

import fourpin.boring.BayGrid;
import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.casework.Place;
import fourpin.job.CaseOrder;
import fourpin.measure.Length;
import fourpin.sheets.drawings.CaseViews;
import fourpin.sheets.drawings.Drafter;
import fourpin.sheets.drawings.Flag;
import fourpin.sheets.packet.Words;
import fourpin.sheets.paint.Box;
import fourpin.sheets.paint.Drawing;
import fourpin.sheets.paint.Scale;
import fourpin.sheets.paint.SvgWriter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The drawing of a case with what can be taken hold of on it.
 *
 * @param svg the front of the case, as in the packet, with the places of its findings
 * @param frame what the picture covers, as an SVG view box
 */
public record Board(String svg, String frame, List<Handle> handles) {

  /** Room for the drawing, mm on paper; a screen shows it at about twice that size. */
  private static final double WIDTH = 190;

  private static final double HEIGHT = 165;

  public Board {
    handles = List.copyOf(handles);
  }

  /**
   * A shelf to be taken hold of; places are in the millimetres of the picture.
   *
   * @param shelf its number in the bay, from the bottom, from 1
   * @param level that it lies on, of the levels from 1
   * @param lowest level that it can be moved to without touching the shelf below it
   * @param highest level that it can be moved to without touching the shelf above it
   * @param tops where its upper face is drawn for each level, with blanks between
   * @param heights the same as heights above the foot of the case, with bars between
   */
  public record Handle(
      String id,
      String mark,
      int bay,
      int shelf,
      int level,
      int lowest,
      int highest,
      String x,
      String y,
      String width,
      String height,
      String tops,
      String heights,
      String at) {}

  static Optional<Board> of(State state, CaseOrder order) {
    return state.built(order).map(built -> of(state, built));
  }

  private static Board of(State state, BuiltCase built) {
    Drawing front =
        new CaseViews(Drafter.of(state.job(), WIDTH, HEIGHT), built).front(flags(state, built));
    Box frame = SvgWriter.frame(front);
    List<Handle> handles = new ArrayList<>();
    for (BayGrid grid : state.plan().grids()) {
      if (grid.caseName().equals(built.order().name())) {
        handles.addAll(handles(new Words(state.job()), built, grid, front.scale()));
      }
    }
    return new Board(
        SvgWriter.write(front),
        mm(frame.left())
            + " "
            + mm(-frame.top())
            + " "
            + mm(frame.width())
            + " "
            + mm(frame.height()),
        handles);
  }

  private static List<Flag> flags(State state, BuiltCase built) {
    List<Flag> flags = new ArrayList<>();
    List<Finding> findings = state.plan().findings();
    for (int i = 0; i < findings.size(); i++) {
      Finding finding = findings.get(i);
      Place place = finding.place();
      boolean here = place.caseName().equals(built.order().name());
      if (here && finding.severity() != Finding.Severity.NOTE) {
        String label = Remark.label(i);
        place
            .spot()
            .or(() -> place.part().map(mark -> built.part(mark).box()))
            .ifPresent(spot -> flags.add(new Flag(label, spot)));
      }
    }
    return flags;
  }

  private static List<Handle> handles(Words words, BuiltCase built, BayGrid grid, Scale scale) {
    List<BayGrid.Seat> rising =
        grid.seats().stream().sorted(Comparator.comparing(BayGrid.Seat::level)).toList();
    List<Part> shelves = rising.stream().map(seat -> built.part(seat.shelf())).toList();
    List<Handle> handles = new ArrayList<>();
    for (int i = 0; i < rising.size(); i++) {
      handles.add(handle(words, grid, scale, rising.get(i), shelves, i));
    }
    return handles;
  }

  private static Handle handle(
      Words words, BayGrid grid, Scale scale, BayGrid.Seat seat, List<Part> shelves, int index) {
    Part part = shelves.get(index);
    Length thick = part.thickness();
    List<Length> tops = grid.levels().stream().map(l -> l.underside().plus(thick)).toList();
    int level = place(grid, seat);
    return new Handle(
        "shelf-" + grid.bay() + "-" + (index + 1),
        seat.shelf(),
        grid.bay(),
        index + 1,
        level,
        index == 0 ? 1 : Math.min(level, lowest(tops, part, shelves.get(index - 1))),
        index == shelves.size() - 1
            ? tops.size()
            : Math.max(level, highest(tops, shelves.get(index + 1))),
        mm(scale.toPaper(part.box().low().x().mm())),
        mm(-scale.toPaper(part.box().high().z().mm())),
        mm(scale.toPaper(part.box().high().x().mm() - part.box().low().x().mm())),
        mm(scale.toPaper(thick.mm())),
        tops.stream().map(t -> mm(-scale.toPaper(t.mm()))).collect(Collectors.joining(" ")),
        tops.stream().map(words::length).collect(Collectors.joining("|")),
        words.length(part.box().high().z()));
  }

  /** The first level on which a shelf, its strip and all, clears the one below it; from 1. */
  private static int lowest(List<Length> tops, Part shelf, Part below) {
    Length needed = below.box().high().z().plus(shelf.thickness()).plus(shelf.hang());
    return 1 + (int) tops.stream().takeWhile(needed::isMoreThan).count();
  }

  /** The last level on which a shelf clears the one above it; from 1. */
  private static int highest(List<Length> tops, Part above) {
    Length most = above.box().low().z().minus(above.hang());
    return (int) tops.stream().takeWhile(most::isAtLeast).count();
  }

  /** Levels that were left out keep their numbers to themselves. */
  private static int place(BayGrid grid, BayGrid.Seat seat) {
    List<Integer> numbers = grid.levels().stream().map(BayGrid.Level::number).toList();
    return numbers.indexOf(seat.level()) + 1;
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }
}
