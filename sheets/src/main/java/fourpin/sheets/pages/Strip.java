package fourpin.sheets.pages;

import fourpin.sheets.paint.Lettering;
import fourpin.sheets.paint.Mark;
import fourpin.sheets.paint.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The least part of a page that is not broken: a line of text, a row of a table, a drawing. Its
 * marks are measured from its own upper left corner, y up, so they lie at y below 0.
 *
 * @param gap millimetres above it, dropped at the head of a page
 * @param start where it may begin
 * @param head what is repeated above it when it begins a page
 * @param columns how many columns side by side it is one strip of; 1 across the page
 */
record Strip(
    double gap,
    double height,
    List<Piece> pieces,
    Start start,
    Optional<Strip> head,
    Optional<Anchor> anchor,
    int columns) {

  /** Where a strip may begin. */
  enum Start {
    ANYWHERE,
    /** On the page of the strip before it. */
    WITH_LAST,
    NEW_PAGE
  }

  /** Marks that belong to one tag; to none if they only decorate. */
  record Piece(Optional<Tag> tag, List<Mark> marks, Optional<Link> link) {

    static Piece of(Tag tag, List<Mark> marks) {
      return new Piece(Optional.of(tag), List.copyOf(marks), Optional.empty());
    }

    static Piece decoration(List<? extends Mark> marks) {
      return new Piece(Optional.empty(), List.copyOf(marks), Optional.empty());
    }

    /** Marks that lead to the place of an anchor when touched. */
    static Piece link(Tag tag, List<Mark> marks, Link link) {
      return new Piece(Optional.of(tag), List.copyOf(marks), Optional.of(link));
    }

    Piece moved(double dx, double dy) {
      return new Piece(tag, Mark.allMoved(marks, dx, dy), link.map(l -> l.moved(dx, dy)));
    }

    /** The same with the number of the page that it leads to. */
    Piece numbered(String page) {
      Mark number = link.orElseThrow().number(page);
      return new Piece(tag, Stream.concat(marks.stream(), Stream.of(number)).toList(), link);
    }
  }

  /**
   * Where a line of the contents leads, and where the number of that page will stand.
   *
   * @param target number of an anchor
   * @param end of the number's baseline
   * @param type that the number is set in
   */
  record Link(int target, Point end, Wrap.Type type) {

    Link moved(double dx, double dy) {
      return new Link(target, end.moved(dx, dy), type);
    }

    Mark number(String page) {
      return Lettering.of(page, type.plain(), type.size())
          .with(Lettering.Align.END, Lettering.Seat.BASELINE)
          .at(end);
    }
  }

  /** A place that bookmarks and links lead to. */
  record Anchor(int number, int level, String title) {}

  Strip {
    pieces = List.copyOf(pieces);
  }

  static Strip of(double height, List<Piece> pieces) {
    return new Strip(0, height, pieces, Start.ANYWHERE, Optional.empty(), Optional.empty(), 1);
  }

  Strip withGap(double newGap) {
    return new Strip(newGap, height, pieces, start, head, anchor, columns);
  }

  Strip starting(Start newStart) {
    return new Strip(gap, height, pieces, newStart, head, anchor, columns);
  }

  Strip under(Strip newHead) {
    return new Strip(gap, height, pieces, start, Optional.of(newHead), anchor, columns);
  }

  Strip anchored(Anchor newAnchor) {
    return new Strip(gap, height, pieces, start, head, Optional.of(newAnchor), columns);
  }

  Strip inColumns(int count) {
    return new Strip(gap, height, pieces, start, head, anchor, count);
  }

  Strip moved(double dx) {
    return new Strip(
        gap,
        height,
        pieces.stream().map(p -> p.moved(dx, 0)).toList(),
        start,
        head.map(h -> h.moved(dx)),
        anchor,
        columns);
  }

  /** The same strip with a label that is read before it. */
  Strip ledBy(Piece label) {
    return new Strip(
        gap,
        height,
        Stream.concat(Stream.of(label), pieces.stream()).toList(),
        start,
        head,
        anchor,
        columns);
  }

  /** The same strip with more marks on it. */
  Strip plus(Piece piece) {
    return new Strip(
        gap,
        height,
        Stream.concat(pieces.stream(), Stream.of(piece)).toList(),
        start,
        head,
        anchor,
        columns);
  }

  /** The strips with all but the first kept on the page of the first, which may begin anywhere. */
  static List<Strip> together(List<Strip> strips) {
    List<Strip> kept = new ArrayList<>();
    for (Strip strip : strips) {
      kept.add(strip.starting(kept.isEmpty() ? Start.ANYWHERE : Start.WITH_LAST));
    }
    return kept;
  }

  /** The strips with a gap above the first. */
  static List<Strip> spaced(double gap, List<Strip> strips) {
    List<Strip> spaced = new ArrayList<>(strips);
    spaced.set(0, spaced.getFirst().withGap(gap));
    return spaced;
  }

  /** All the strips as one that is not broken; what repeats or is led to in them is lost. */
  static Strip solid(List<Strip> strips) {
    List<Piece> pieces = new ArrayList<>();
    double down = 0;
    for (Strip strip : strips) {
      double at = down + (pieces.isEmpty() ? 0 : strip.gap);
      strip.pieces.forEach(piece -> pieces.add(piece.moved(0, -at)));
      down = at + strip.height;
    }
    return of(down, pieces);
  }

  /** The strips in lots that are no higher than stated, each of one strip at least. */
  static List<List<Strip>> inLots(List<Strip> strips, double most) {
    List<List<Strip>> lots = new ArrayList<>(List.of(new ArrayList<>()));
    for (Strip strip : strips) {
      if (height(lots.getLast()) + strip.height > most && !lots.getLast().isEmpty()) {
        lots.add(new ArrayList<>());
      }
      lots.getLast().add(strip);
    }
    return lots;
  }

  static double height(List<Strip> strips) {
    return strips.stream().mapToDouble(s -> s.gap + s.height).sum();
  }
}
