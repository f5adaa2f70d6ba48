package fourpin.cutting;

import fourpin.measure.Length;
import fourpin.measure.Unit;
import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One sheet on the {@link VirtualSaw}; does its own arithmetic, in picometres from the near corner
 * of the sheet.
 */
final class SawnSheet {

  /** A rectangle of wood, dust or waste. */
  private record Block(String what, long x0, long y0, long x1, long y1) {
    BigInteger area() {
      return BigInteger.valueOf(x1 - x0).multiply(BigInteger.valueOf(y1 - y0));
    }

    boolean meets(Block other) {
      return x0 < other.x1 && other.x0 < x1 && y0 < other.y1 && other.y0 < y1;
    }

    boolean within(long length, long width) {
      return x0 >= 0 && y0 >= 0 && x1 <= length && y1 <= width && x0 < x1 && y0 < y1;
    }

    Block part(String name, Direction direction, long from, long to) {
      return direction == Direction.RIP
          ? new Block(name, x0, y0 + from, x1, y0 + to)
          : new Block(name, x0 + from, y0, x0 + to, y1);
    }

    long extent(Direction direction) {
      return direction == Direction.RIP ? y1 - y0 : x1 - x0;
    }
  }

  /**
   * A block to be sawn, and the way and the number of the stage of the cut that made it.
   *
   * @param toStraighten all that goes at its near edge before it may be ripped
   */
  private record Job(
      Node node, Block block, Optional<Direction> made, int stage, Length toStraighten) {

    Job next(Node node, Block block, Direction cut, int stage) {
      return new Job(node, block, Optional.of(cut), stage, toStraighten);
    }
  }

  private final SheetProblem problem;
  private final Map<String, Part> asked;
  private final SheetPattern pattern;
  private final int number;
  private final long kerf;
  private final List<Fault> faults = new ArrayList<>();
  private final List<Block> kept = new ArrayList<>();
  private final List<String> parts = new ArrayList<>();
  private final List<SawnSets.Cut> cut = new ArrayList<>();
  private BigInteger lost = BigInteger.ZERO;
  private final List<Direction> ways = new ArrayList<>();

  /**
   * @param asked the parts of the problem by their marks
   */
  SawnSheet(SheetProblem problem, Map<String, Part> asked, SheetPattern pattern, int number) {
    this.problem = problem;
    this.asked = asked;
    this.pattern = pattern;
    this.number = number;
    kerf = problem.saw().kerf().picometres();
    saw(trim());
    checkFirst();
    checkStock();
    checkPlaces();
    checkArea();
    faults.addAll(SawnSets.check(problem, number, cut));
  }

  List<Fault> faults() {
    return faults;
  }

  /** The marks of the parts cut, one for each piece. */
  List<String> parts() {
    return parts;
  }

  private long length() {
    return pattern.sheet().length().picometres();
  }

  private long width() {
    return pattern.sheet().width().picometres();
  }

  private void checkStock() {
    if (!problem.stock().contains(pattern.sheet())) {
      faults.add(new Fault.UnknownSheet(number, pattern.sheet().name()));
    }
  }

  private Job trim() {
    Map<Edge, Long> done = new EnumMap<>(Edge.class);
    Node node = pattern.root();
    while (node instanceof Node.TrimOff trim) {
      done.merge(trim.edge(), trim.off().picometres(), Long::sum);
      node = trim.rest();
    }
    Length rough = pattern.sheet().roughEdge();
    long near = done.getOrDefault(Edge.NEAR_EDGE, 0L);
    boolean straightened =
        near == problem.saw().trim().nearEdge().picometres() + rough.picometres();
    for (Edge edge : Edge.values()) {
      Length asked = problem.saw().trim().at(edge);
      long off = done.getOrDefault(edge, 0L);
      if (off != asked.picometres() && !(straightened && edge == Edge.NEAR_EDGE)) {
        faults.add(new Fault.WrongTrim(number, edge, asked, pm(off)));
      }
    }
    Length left = straightened ? Length.ZERO : rough;
    return new Job(node, trimmed(done), Optional.empty(), 0, left);
  }

  private Block trimmed(Map<Edge, Long> done) {
    Block rest =
        new Block(
            "trimmed sheet",
            done.getOrDefault(Edge.NEAR_END, 0L),
            done.getOrDefault(Edge.NEAR_EDGE, 0L),
            length() - done.getOrDefault(Edge.FAR_END, 0L),
            width() - done.getOrDefault(Edge.FAR_EDGE, 0L));
    lost = lost.add(new Block("sheet", 0, 0, length(), width()).area().subtract(rest.area()));
    return rest;
  }

  private void saw(Job first) {
    Deque<Job> open = new ArrayDeque<>(List.of(first));
    while (!open.isEmpty()) {
      Job job = open.pop();
      switch (job.node) {
        case Node.Cut cut -> cut(cut, job, open);
        case Node.TrimOff trim -> open.push(straighten(trim, job));
        case Node.Finished finished -> {
          checkStages(job, problem.ties().matched(finished.mark()).isPresent());
          finish(finished, job.block);
        }
        case Node.Offcut offcut -> {
          checkStages(job, false);
          keep("offcut", job.block);
        }
        case Node.Dust dust -> faults.add(new Fault.DustForPiece(number));
      }
    }
  }

  /** The only trimming after the first cut: the near edge of a piece that is to be ripped. */
  private Job straighten(Node.TrimOff trim, Job job) {
    if (trim.edge() != Edge.NEAR_EDGE || job.toStraighten.isZero()) {
      faults.add(new Fault.LateTrim(number, trim.edge()));
      return new Job(trim.rest(), job.block, job.made, job.stage, job.toStraighten);
    }
    if (!trim.off().equals(job.toStraighten)) {
      faults.add(new Fault.WrongTrim(number, trim.edge(), job.toStraighten, trim.off()));
    }
    long off = trim.off().picometres();
    long extent = job.block.extent(Direction.RIP);
    lost = lost.add(job.block.part("edge", Direction.RIP, 0, off).area());
    Block rest = job.block.part("piece", Direction.RIP, off, extent);
    return new Job(trim.rest(), rest, job.made, job.stage, Length.ZERO);
  }

  private void cut(Node.Cut cut, Job job, Deque<Job> open) {
    Block block = job.block;
    if (cut.direction() == Direction.RIP && !job.toStraighten.isZero()) {
      faults.add(new Fault.RoughAtFence(number, cut.fence()));
    }
    int stage = job.made.equals(Optional.of(cut.direction())) ? job.stage : job.stage + 1;
    checkLimits(cut.direction(), block);
    long extent = block.extent(cut.direction());
    long fence = cut.fence().picometres();
    if (fence <= 0 || fence >= extent) {
      faults.add(new Fault.CutOutsidePiece(number, cut.direction(), cut.fence(), pm(extent)));
      return;
    }
    long beyond = extent - fence;
    long taken = Math.min(kerf, beyond);
    if (cut.kerf().picometres() != taken) {
      faults.add(new Fault.WrongKerf(number, cut.direction(), cut.fence(), cut.kerf(), pm(taken)));
    }
    lost = lost.add(block.part("kerf", cut.direction(), fence, fence + taken).area());
    if (beyond > taken) {
      Block far = block.part("piece", cut.direction(), fence + taken, extent);
      far(cut, job.next(cut.far(), far, cut.direction(), stage), open);
    } else if (!(cut.far() instanceof Node.Dust)) {
      faults.add(new Fault.PieceFromDust(number, cut.direction(), cut.fence()));
    }
    Block near = block.part("piece", cut.direction(), 0, fence);
    open.push(job.next(cut.near(), near, cut.direction(), stage));
  }

  private void checkLimits(Direction direction, Block block) {
    SawLimits limits = problem.saw().limits();
    long along = block.extent(direction == Direction.RIP ? Direction.CROSSCUT : Direction.RIP);
    Optional<Length> most =
        direction == Direction.RIP ? limits.longestRip() : limits.widestCrosscut();
    most.filter(length -> along > length.picometres())
        .ifPresent(
            length -> faults.add(new Fault.CutTooLong(number, direction, pm(along), length)));
    ways.add(direction);
  }

  /**
   * What is cut one way only has no other way to begin with, where that is allowed; nor is a board
   * asked for one that is cut round defects.
   */
  private void checkFirst() {
    SawLimits limits = problem.saw().limits();
    boolean round = !pattern.sheet().defects().isEmpty();
    boolean both = !round && ways.contains(Direction.RIP) && ways.contains(Direction.CROSSCUT);
    ways.stream()
        .limit(1)
        .filter(way -> both ? limits.barsFirst(way) : limits.barsAlone(way))
        .forEach(way -> faults.add(new Fault.WrongFirstCut(number, way)));
  }

  /** A matched set counts as one part, so that parting it may take one stage more. */
  private void checkStages(Job job, boolean inSet) {
    int most = problem.saw().limits().stages();
    if (job.stage - (inSet ? 1 : 0) > most) {
      faults.add(new Fault.TooManyStages(number, job.stage, most));
    }
  }

  private void far(Node.Cut cut, Job far, Deque<Job> open) {
    if (cut.far() instanceof Node.Dust) {
      Length left = pm(far.block.extent(cut.direction()));
      faults.add(new Fault.PieceForgotten(number, cut.direction(), cut.fence(), left));
    } else {
      open.push(far);
    }
  }

  private void finish(Node.Finished finished, Block block) {
    parts.add(finished.mark());
    keep(finished.mark(), block);
    cut.add(
        new SawnSets.Cut(finished.mark(), finished.lay(), block.x0, block.y0, block.x1, block.y1));
    pattern.sheet().defects().stream()
        .filter(defect -> block.meets(place(defect)))
        .forEach(d -> faults.add(new Fault.OnDefect(number, finished.mark(), d)));
    Optional.ofNullable(asked.get(finished.mark()))
        .ifPresentOrElse(
            part -> compare(part, finished.lay(), block),
            () -> faults.add(new Fault.UnknownPart(number, finished.mark())));
  }

  private static Block place(Defect defect) {
    long x = defect.x().picometres();
    long y = defect.y().picometres();
    return new Block(
        "defect", x, y, x + defect.length().picometres(), y + defect.width().picometres());
  }

  private void compare(Part part, Lay lay, Block block) {
    long alongPart = block.extent(lay == Lay.STRAIGHT ? Direction.CROSSCUT : Direction.RIP);
    long acrossPart = block.extent(lay == Lay.STRAIGHT ? Direction.RIP : Direction.CROSSCUT);
    if (alongPart != part.length().picometres() || acrossPart != part.width().picometres()) {
      faults.add(new Fault.WrongSize(number, part.mark(), pm(alongPart), pm(acrossPart)));
    }
    if (!grainAllows(part, pattern.sheet(), lay)) {
      faults.add(new Fault.WrongGrain(number, part.mark()));
    }
  }

  static boolean grainAllows(Part part, StockSheet sheet, Lay lay) {
    return part.grain() == Grain.FREE
        || switch (sheet.grain()) {
          case NONE -> true;
          case ALONG_LENGTH -> lay == Lay.STRAIGHT;
          case ALONG_WIDTH -> lay == Lay.TURNED;
        };
  }

  private void keep(String what, Block block) {
    kept.add(new Block(what, block.x0, block.y0, block.x1, block.y1));
  }

  /**
   * Everything kept lies on the sheet and nothing on anything else: by sweeping along the sheet.
   */
  private void checkPlaces() {
    List<Block> sorted = new ArrayList<>(kept);
    sorted.sort(Comparator.comparingLong(Block::x0));
    for (int i = 0; i < sorted.size(); i++) {
      Block block = sorted.get(i);
      if (!block.within(length(), width())) {
        faults.add(new Fault.OutsideSheet(number, block.what));
      }
      for (int j = i + 1; j < sorted.size() && sorted.get(j).x0 < block.x1; j++) {
        if (block.meets(sorted.get(j))) {
          faults.add(new Fault.Overlap(number, block.what, sorted.get(j).what));
        }
      }
    }
  }

  private void checkArea() {
    BigInteger accounted = kept.stream().map(Block::area).reduce(lost, BigInteger::add);
    BigInteger whole = new Block("sheet", 0, 0, length(), width()).area();
    if (!accounted.equals(whole)) {
      faults.add(new Fault.AreaDoesNotBalance(number, whole.toString(), accounted.toString()));
    }
  }

  private static Length pm(long picometres) {
    return new Length(picometres, Unit.MILLIMETRE);
  }
}
