package fourpin.bench;

import fourpin.bench.BenchRun.Mishap;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Does what the steps say, on virtual wood, knowing nothing of what it is for. What can't be done
 * (a piece that was never cut, a cut beside the wood, a hole deeper than the piece, a mark that is
 * not on the stick) is left undone and reported.
 */
public final class VirtualBench {

  private final Map<String, WorkedPiece> pieces = new LinkedHashMap<>();
  private final Map<String, Step.MarkStick> sticks = new LinkedHashMap<>();
  private final List<Mishap> mishaps = new ArrayList<>();
  private final GuidedWork guides = new GuidedWork(this::mishap);
  private final SquaredLines lines = new SquaredLines(this::mishap);

  private VirtualBench() {}

  public static BenchRun run(List<Step> steps) {
    VirtualBench bench = new VirtualBench();
    steps.forEach(bench::run);
    return new BenchRun(Collections.unmodifiableMap(bench.pieces), bench.mishaps);
  }

  private void run(Step step) {
    switch (step) {
      case Step.CutToSize cut -> cut(cut);
      case Step.MarkStick mark -> sticks.put(mark.stick(), mark);
      case Step.SquareAcross across -> squareAcross(across);
      case Step.MarkSurfaces mark ->
          piece(step, mark.piece()).ifPresent(p -> put(p.labelled(mark.labels())));
      case Step.Band band -> piece(step, band.piece()).ifPresent(p -> put(p.banded(band)));
      case Step.Channel channel -> piece(step, channel.piece()).ifPresent(p -> channel(p, channel));
      case Step.Passes passes -> piece(step, passes.piece()).ifPresent(p -> passes(p, passes));
      case Step.Crosscut cut -> piece(step, cut.piece()).ifPresent(p -> crosscut(p, cut));
      case Step.Rip rip -> piece(step, rip.piece()).ifPresent(p -> rip(p, rip));
      case Step.BoreRow row -> piece(step, row.piece()).ifPresent(p -> bore(p, row));
      case Step.BoreAtFence row -> piece(step, row.piece()).ifPresent(p -> bore(p, row));
      case Step.MakeGuide make -> guides.make(make);
      case Step.MakeSpacer make -> guides.make(make);
      case Step.MaskHoles mask -> guides.mask(mask);
      case Step.SetBit bit -> guides.set(bit);
      case Step.ClampGuide clamp ->
          piece(step, clamp.piece()).ifPresent(p -> guides.clamp(clamp, p));
      case Step.TakeOffBlock off -> guides.takeOff(off);
      case Step.FitBlock fit -> guides.fit(fit);
      case Step.ShiftGuide shift -> guides.shift(shift);
      case Step.BoreThrough bore ->
          piece(step, bore.piece()).ifPresent(p -> put(p.without(guides.bore(bore, p))));
    }
  }

  private void cut(Step.CutToSize cut) {
    if (pieces.containsKey(cut.piece())) {
      mishap(cut, cut.piece() + " is cut already");
    } else if (!cut.length().isPositive() || !cut.width().isPositive()) {
      mishap(cut, cut.piece() + " has no size");
    } else {
      put(WorkedPiece.cut(cut));
    }
  }

  private void put(WorkedPiece piece) {
    pieces.put(piece.mark(), piece);
  }

  private Optional<WorkedPiece> piece(Step step, String mark) {
    Optional<WorkedPiece> piece = Optional.ofNullable(pieces.get(mark));
    if (piece.isEmpty()) {
      mishap(step, "there is no piece marked " + mark);
    }
    return piece;
  }

  private void mishap(Step step, String what) {
    mishaps.add(new Mishap(step, what));
  }

  private void channel(WorkedPiece piece, Step.Channel channel) {
    Removal.Block block = block(piece, channel);
    boolean inside =
        block.length().within(piece.length())
            && block.width().within(piece.width())
            && block.thickness().within(piece.thickness());
    if (inside) {
      put(piece.without(List.of(block)));
    } else {
      mishap(channel, "the cut for " + channel.purpose() + " misses " + piece.mark());
    }
  }

  private static Removal.Block block(WorkedPiece piece, Step.Channel c) {
    Span along = c.along();
    Span across = c.across();
    return switch (c.surface()) {
      case FACE -> block(c, along, across, near(c));
      case REVERSE -> block(c, along, across, far(c, piece.thickness()));
      case INDEX_EDGE -> block(c, along, near(c), across);
      case FAR_EDGE -> block(c, along, far(c, piece.width()), across);
      case INDEX_END -> block(c, near(c), along, across);
      case FAR_END -> block(c, far(c, piece.length()), along, across);
    };
  }

  private static Removal.Block block(Step.Channel c, Span length, Span width, Span thickness) {
    return new Removal.Block(c.shape(), c.surface(), length, width, thickness, c.purpose());
  }

  private static Span near(Step.Channel channel) {
    return new Span(Length.ZERO, channel.depth());
  }

  private static Span far(Step.Channel channel, Length whole) {
    return new Span(whole.minus(channel.depth()), whole);
  }

  /** What passes leave is one channel only where the deepest of them cover its whole floor. */
  private void passes(WorkedPiece piece, Step.Passes passes) {
    PassedChannel.of(passes)
        .ifPresentOrElse(
            c -> channel(piece, c),
            () ->
                mishap(
                    passes,
                    "the passes for " + passes.purpose() + " leave a ridge in " + piece.mark()));
  }

  private void crosscut(WorkedPiece piece, Step.Crosscut cut) {
    if (!cut.end().isEnd() || !cut.length().isPositive()) {
      mishap(cut, "a length of " + piece.mark() + " is kept from one of its ends");
    } else if (!piece.length().isMoreThan(cut.length())) {
      mishap(cut, piece.mark() + " is not long enough to cut to " + cut.length());
    } else {
      Length rest = piece.length().minus(cut.length());
      boolean index = cut.end() == Surface.INDEX_END;
      put(
          piece.cutOff(
              index ? new Span(Length.ZERO, cut.length()) : new Span(rest, piece.length())));
    }
  }

  private void rip(WorkedPiece piece, Step.Rip rip) {
    Length from = rip.width().plus(rip.kerf());
    if (!rip.width().isPositive() || !piece.width().isMoreThan(from)) {
      mishap(rip, piece.mark() + " is not wide enough to rip");
    } else if (pieces.containsKey(rip.first()) || pieces.containsKey(rip.second())) {
      mishap(rip, rip.first() + " or " + rip.second() + " is there already");
    } else {
      pieces.remove(piece.mark());
      put(piece.ripped(rip.first(), new Span(Length.ZERO, rip.width())));
      put(piece.ripped(rip.second(), new Span(from, piece.width())));
    }
  }

  /** The fence gives the row's distance from either edge. */
  private void bore(WorkedPiece piece, Step.BoreAtFence row) {
    boolean index = row.edge() == Surface.INDEX_EDGE;
    if (!index && row.edge() != Surface.FAR_EDGE) {
      mishap(row, "an edge runs along a fence, not " + row.edge().words());
      return;
    }
    bore(
        piece,
        new Step.BoreRow(
            row.piece(),
            row.surface(),
            Step.BoreRow.Line.ALONG,
            index ? row.offset() : piece.width().minus(row.offset()),
            row.spacing(),
            row.diameter(),
            row.depth(),
            row.purpose()));
  }

  private void bore(WorkedPiece piece, Step.BoreRow row) {
    if (!row.surface().isBroad()) {
      mishap(row, "rows are bored into the face or the reverse, not " + row.surface().words());
      return;
    }
    if (row.depth().isMoreThan(piece.thickness())) {
      mishap(row, "holes " + row.depth() + " deep go beyond " + piece.mark());
      return;
    }
    List<Removal.Bore> bores = new ArrayList<>();
    for (Length at : distances(row)) {
      bore(piece, row, at).ifPresent(bores::add);
    }
    put(piece.without(bores));
  }

  private List<Length> distances(Step.BoreRow row) {
    return switch (row.spacing()) {
      case Spacing.Each each -> each.distances();
      case Spacing.FromStick stick -> fromStick(row, row.piece(), stick);
      case Spacing.OnLines on -> lines.on(row, row.piece(), row.surface(), on.numbers());
    };
  }

  private void squareAcross(Step.SquareAcross across) {
    List<WorkedPiece> laid =
        across.panels().stream().flatMap(l -> piece(across, l.piece()).stream()).toList();
    if (laid.size() == across.panels().size()) {
      String both = String.join(" and ", across.panels().stream().map(Step.Laid::piece).toList());
      lines.square(across, laid, fromStick(across, both, across.marks()));
    }
  }

  private List<Length> fromStick(Step step, String what, Spacing.FromStick from) {
    Step.MarkStick stick = sticks.get(from.stick());
    if (stick == null || !(from.datum().isZero() || stick.ends().contains(from.datum()))) {
      mishap(step, "stick " + from.stick() + " has no mark for the end of " + what);
      return List.of();
    }
    List<Length> distances = new ArrayList<>();
    for (int number : from.numbers()) {
      if (number < 1 || number > stick.marks().size()) {
        mishap(step, "stick " + from.stick() + " has no mark " + number);
      } else {
        distances.add(stick.marks().get(number - 1).minus(from.datum()));
      }
    }
    return distances;
  }

  private Optional<Removal.Bore> bore(WorkedPiece piece, Step.BoreRow row, Length at) {
    boolean along = row.line() == Step.BoreRow.Line.ALONG;
    Length length = along ? at : row.offset();
    Length width = along ? row.offset() : at;
    boolean onPiece =
        new Span(length, length).within(piece.length())
            && new Span(width, width).within(piece.width());
    if (!onPiece) {
      mishap(row, "a hole of the " + row.purpose() + " misses " + piece.mark());
      return Optional.empty();
    }
    return Optional.of(
        new Removal.Bore(row.surface(), length, width, row.diameter(), row.depth(), row.purpose()));
  }
}
