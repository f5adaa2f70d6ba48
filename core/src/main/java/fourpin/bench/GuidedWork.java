package fourpin.bench;

import fourpin.bench.Step.GuideHole;
import fourpin.measure.Length;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;

/** The guides of a bench, how they lie, and the bit that is set. */
final class GuidedWork {

  private final BiConsumer<Step, String> mishap;
  private final Map<String, Step.MakeGuide> guides = new LinkedHashMap<>();
  private final Map<String, Step.MakeSpacer> spacers = new LinkedHashMap<>();
  private final Map<String, Set<Integer>> masked = new LinkedHashMap<>();
  private final Map<String, Lying> lying = new LinkedHashMap<>();
  private final Set<String> withoutBlock = new HashSet<>();
  private Optional<Step.SetBit> bit = Optional.empty();

  GuidedWork(BiConsumer<Step, String> mishap) {
    this.mishap = mishap;
  }

  /**
   * How a guide lies.
   *
   * @param moved how far it was moved inwards since it was clamped
   * @param bored the holes that were bored through since it was clamped or moved
   */
  private record Lying(
      Step.MakeGuide guide, Step.ClampGuide clamp, Length moved, Set<Integer> bored) {

    /** From the piece's end, or edge, at which the guide was laid. */
    private Length inwards(Step.Against against, Length at, Length size) {
      boolean index =
          against.ofGuide() == Surface.INDEX_END || against.ofGuide() == Surface.INDEX_EDGE;
      return against.gap().plus(index ? at : size.minus(at));
    }

    Length length(GuideHole hole, WorkedPiece piece) {
      Length inwards = inwards(clamp.ends(), hole.along(), guide.length()).plus(moved);
      boolean index = clamp.ends().ofPiece() == Surface.INDEX_END;
      return index ? inwards : piece.length().minus(inwards);
    }

    Length width(GuideHole hole, WorkedPiece piece) {
      Length inwards = inwards(clamp.edges(), hole.across(), guide.width());
      boolean index = clamp.edges().ofPiece() == Surface.INDEX_EDGE;
      return index ? inwards : piece.width().minus(inwards);
    }

    Lying movedBy(GuideHole pin, GuideHole into) {
      Length by = into.along().minus(pin.along());
      boolean index = clamp.ends().ofGuide() == Surface.INDEX_END;
      return new Lying(guide, clamp, moved.plus(index ? by : by.negated()), new HashSet<>());
    }
  }

  void make(Step.MakeGuide make) {
    Optional<String> wrong = wrong(make);
    if (wrong.isPresent()) {
      mishap.accept(make, wrong.get());
    } else {
      guides.put(make.guide(), make);
      masked.put(make.guide(), new LinkedHashSet<>());
    }
  }

  void make(Step.MakeSpacer make) {
    if (!make.size().isPositive() || !make.length().isPositive()) {
      mishap.accept(make, "spacer " + make.spacer() + " has no size");
    } else if (spacers.containsKey(make.spacer())) {
      mishap.accept(make, "spacer " + make.spacer() + " is made already");
    } else {
      spacers.put(make.spacer(), make);
    }
  }

  private Optional<String> wrong(Step.MakeGuide make) {
    String name = "guide " + make.guide();
    if (guides.containsKey(make.guide())) {
      return Optional.of(name + " is made already");
    }
    if (make.holes().stream().map(GuideHole::number).distinct().count() < make.holes().size()) {
      return Optional.of(name + " has two holes of one number");
    }
    return make.holes().stream()
        .filter(h -> !inside(h, make))
        .findFirst()
        .map(h -> "hole " + h.number() + " misses " + name);
  }

  private static boolean inside(GuideHole hole, Step.MakeGuide guide) {
    return new Span(hole.along(), hole.along()).within(guide.length())
        && new Span(hole.across(), hole.across()).within(guide.width());
  }

  void mask(Step.MaskHoles mask) {
    guide(mask, mask.guide())
        .ifPresent(
            guide -> {
              for (int number : mask.numbers()) {
                hole(mask, guide, number)
                    .ifPresent(h -> masked.getOrDefault(mask.guide(), Set.of()).add(h.number()));
              }
            });
  }

  void set(Step.SetBit set) {
    bit = Optional.of(set);
  }

  void clamp(Step.ClampGuide clamp, WorkedPiece piece) {
    lying.remove(clamp.guide());
    guide(clamp, clamp.guide())
        .ifPresent(
            guide ->
                wrong(clamp, guide, piece)
                    .or(() -> notApart(clamp, guide))
                    .ifPresentOrElse(
                        what -> mishap.accept(clamp, what),
                        () -> lying.put(clamp.guide(), lie(clamp, guide))));
  }

  private static Lying lie(Step.ClampGuide clamp, Step.MakeGuide guide) {
    return new Lying(guide, clamp, Length.ZERO, new HashSet<>());
  }

  private Optional<String> wrong(Step.ClampGuide clamp, Step.MakeGuide guide, WorkedPiece piece) {
    String name = "guide " + guide.guide();
    if (!clamp.surface().isBroad() || !areEnds(clamp.ends()) || !areEdges(clamp.edges())) {
      return Optional.of(name + " lies on a face, ends at ends and edges at edges");
    }
    boolean stopped = clamp.ends().ofGuide() == Surface.INDEX_END && guide.block().isPositive();
    if (stopped && withoutBlock.contains(guide.guide())) {
      return Optional.of("the block of " + name + " is off: nothing bears on the end");
    }
    if (stopped && clamp.ends().gap().isPositive()) {
      return Optional.of("the block of " + name + " is in the way: it would lie on the piece");
    }
    Optional<Step.ClampGuide.Side> showing = Looks.showing(piece, clamp);
    if (showing.isEmpty()) {
      return Optional.of("nothing on " + piece.mark() + " says which way its surfaces look");
    }
    return showing
        .filter(s -> s != clamp.showing())
        .map(s -> name + " shows its side " + s + " so");
  }

  /** What is wrong with what lies between guide and piece, if anything. */
  private Optional<String> notApart(Step.ClampGuide clamp, Step.MakeGuide guide) {
    Length atEdge = clamp.edges().gap();
    if (atEdge.isPositive() && clamp.edges().spacer().isEmpty()) {
      return Optional.of("nothing keeps guide " + guide.guide() + " off the edge");
    }
    boolean blocked = clamp.ends().ofGuide() == Surface.INDEX_END && guide.block().isPositive();
    Length atEnd = clamp.ends().gap().negated();
    if (blocked && atEnd.isPositive() && clamp.ends().spacer().isEmpty()) {
      return Optional.of("nothing keeps the block of guide " + guide.guide() + " off the end");
    }
    return notMade(clamp.edges().spacer(), Optional.of(atEdge))
        .or(() -> notMade(clamp.ends().spacer(), Optional.of(atEnd)))
        .or(() -> notMade(clamp.on().flatMap(Step.Rest::spacer), Optional.empty()));
  }

  /**
   * @param gap that it must fill, where the clamping tells
   */
  private Optional<String> notMade(Optional<Step.Between> between, Optional<Length> gap) {
    if (between.isEmpty()) {
      return Optional.empty();
    }
    String name = "spacer " + between.get().spacer();
    Step.MakeSpacer made = spacers.get(between.get().spacer());
    if (made == null) {
      return Optional.of("there is no " + name);
    }
    boolean fits =
        made.size().equals(between.get().size())
            && gap.filter(g -> !g.equals(made.size())).isEmpty();
    return fits ? Optional.empty() : Optional.of(name + " is " + made.size());
  }

  private static boolean areEnds(Step.Against ends) {
    return ends.ofGuide().isEnd() && ends.ofPiece().isEnd();
  }

  private static boolean areEdges(Step.Against edges) {
    return edges.ofGuide().isEdge() && edges.ofPiece().isEdge();
  }

  void takeOff(Step.TakeOffBlock off) {
    Optional<Step.MakeGuide> guide = guide(off, off.guide());
    if (guide.filter(this::hasBlock).isPresent()) {
      withoutBlock.add(off.guide());
    } else if (guide.isPresent()) {
      mishap.accept(off, "there is no block on guide " + off.guide());
    }
  }

  private boolean hasBlock(Step.MakeGuide guide) {
    return guide.block().isPositive() && !withoutBlock.contains(guide.guide());
  }

  void fit(Step.FitBlock fit) {
    if (withoutBlock.remove(fit.guide())) {
      lying.remove(fit.guide());
    } else {
      mishap.accept(fit, "the block of guide " + fit.guide() + " is not off");
    }
  }

  /** A guide that can't be pinned where it should be is not clamped there either. */
  void shift(Step.ShiftGuide shift) {
    Optional<Lying> found = lying(shift, shift.guide(), shift.piece());
    if (found.isPresent()) {
      lying.remove(shift.guide());
      moved(shift, found.get()).ifPresent(moved -> lying.put(shift.guide(), moved));
    }
  }

  private Optional<Lying> moved(Step.ShiftGuide shift, Lying lies) {
    Optional<GuideHole> pin = open(shift, lies.guide(), shift.pin());
    Optional<GuideHole> into = open(shift, lies.guide(), shift.into());
    if (pin.isEmpty() || into.isEmpty()) {
      return Optional.empty();
    }
    if (hasBlock(lies.guide())) {
      mishap.accept(shift, "the block of guide " + shift.guide() + " is in the way");
      return Optional.empty();
    }
    if (!lies.bored().contains(shift.into())) {
      mishap.accept(shift, "nothing was bored through hole " + shift.into() + " for the pin");
      return Optional.empty();
    }
    if (!pin.get().across().equals(into.get().across())) {
      mishap.accept(shift, "with the pin in, guide " + shift.guide() + " leaves its edge");
      return Optional.empty();
    }
    return Optional.of(lies.movedBy(pin.get(), into.get()));
  }

  /** The holes that are made; none if the work can't be done as said. */
  List<Removal.Bore> bore(Step.BoreThrough bore, WorkedPiece piece) {
    Optional<Lying> lies = lying(bore, bore.guide(), bore.piece());
    if (lies.isEmpty()) {
      return List.of();
    }
    Optional<String> wrong = wrong(lies.get().guide(), piece);
    if (wrong.isPresent()) {
      mishap.accept(bore, wrong.get());
      return List.of();
    }
    List<Removal.Bore> bores = new ArrayList<>();
    for (int number : bore.numbers()) {
      open(bore, lies.get().guide(), number)
          .flatMap(h -> bore(bore, lies.get(), h, piece))
          .ifPresent(bores::add);
    }
    return bores;
  }

  private Optional<String> wrong(Step.MakeGuide guide, WorkedPiece piece) {
    if (bit.isEmpty()) {
      return Optional.of("no bit is set");
    }
    Length depth = bit.get().stop().minus(guide.thickness());
    if (!depth.isPositive()) {
      return Optional.of("the stop lets the bit no deeper than guide " + guide.guide());
    }
    return depth.isMoreThan(piece.thickness())
        ? Optional.of("holes " + depth + " deep go beyond " + piece.mark())
        : Optional.empty();
  }

  private Optional<Removal.Bore> bore(
      Step.BoreThrough bore, Lying lies, GuideHole hole, WorkedPiece piece) {
    Step.SetBit set = bit.orElseThrow();
    Length length = lies.length(hole, piece);
    Length width = lies.width(hole, piece);
    if (set.runs().isMoreThan(hole.diameter())) {
      mishap.accept(bore, set.tool() + " does not go into hole " + hole.number());
      return Optional.empty();
    }
    if (!new Span(length, length).within(piece.length())
        || !new Span(width, width).within(piece.width())) {
      mishap.accept(bore, "hole " + hole.number() + " lies beside " + piece.mark());
      return Optional.empty();
    }
    lies.bored().add(hole.number());
    return Optional.of(
        new Removal.Bore(
            lies.clamp().surface(),
            length,
            width,
            set.diameter(),
            set.stop().minus(lies.guide().thickness()),
            bore.purpose()));
  }

  private Optional<Step.MakeGuide> guide(Step step, String mark) {
    Optional<Step.MakeGuide> guide = Optional.ofNullable(guides.get(mark));
    if (guide.isEmpty()) {
      mishap.accept(step, "there is no guide " + mark);
    }
    return guide;
  }

  private Optional<Lying> lying(Step step, String guide, String piece) {
    Optional<Lying> lies =
        Optional.ofNullable(lying.get(guide)).filter(l -> l.clamp().piece().equals(piece));
    if (lies.isEmpty()) {
      mishap.accept(step, "guide " + guide + " is not clamped on " + piece);
    }
    return lies;
  }

  private Optional<GuideHole> hole(Step step, Step.MakeGuide guide, int number) {
    Optional<GuideHole> hole = guide.holes().stream().filter(h -> h.number() == number).findFirst();
    if (hole.isEmpty()) {
      mishap.accept(step, "guide " + guide.guide() + " has no hole " + number);
    }
    return hole;
  }

  /** A hole that is there and not masked. */
  private Optional<GuideHole> open(Step step, Step.MakeGuide guide, int number) {
    if (masked.getOrDefault(guide.guide(), Set.of()).contains(number)) {
      mishap.accept(step, "hole " + number + " of guide " + guide.guide() + " is masked");
      return Optional.empty();
    }
    return hole(step, guide, number);
  }
}
