package fourpin.strength;

import fourpin.casework.Finding.Stated;
import fourpin.casework.Part;
import fourpin.job.Edging;
import fourpin.job.Job;
import fourpin.job.Material;
import fourpin.job.Material.Kind;
import fourpin.measure.Gravity;
import fourpin.measure.Length;
import fourpin.strength.Made.Layers;
import fourpin.strength.Made.Stripped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What a shelf might be made of to keep within its limits, over its span or a shorter one. */
final class MadeCures {

  /** Strips are tried in steps that a saw is set to, up to so many times the shelf's thickness. */
  private static final Length STEP_INCHES = Length.inches(1, 4);

  private static final Length STEP_METRIC = Length.mm(5);
  private static final int TALLEST_STRIP = 4;

  /** Plates sag more by their edges than beams: so many thicknesses on, one that may hold does. */
  private static final int BEYOND_BEAM = 6;

  private final Job job;
  private final ShelfReader reader;
  private final ShelfOnSupports shelf;
  private final Part part;
  private final Material material;
  private final Candidate base;
  private final int count;
  private final CureCheck check;
  private final Prices prices;
  private final ShelfStock stock;

  /**
   * @param part the shelf as it is
   * @param base what is to hold, made as that is
   * @param count how many such take its place
   */
  MadeCures(Job job, ShelfReader reader, Part part, Candidate base, int count, CureCheck check) {
    this.job = job;
    this.reader = reader;
    this.shelf = reader.read(part);
    this.part = part;
    this.material = reader.material(part);
    this.base = base;
    this.count = count;
    this.check = check;
    this.prices = new Prices(job);
    double shorter = shelf.loaded().length() - base.beam().length();
    this.stock = new ShelfStock(job, reader, part, shorter);
  }

  List<Cure> all() {
    return kinds().stream().flatMap(Optional::stream).toList();
  }

  /** One of each kind, in the same order for every span. */
  List<Optional<Cure>> kinds() {
    return material.kind() == Kind.GLASS
        ? List.of(thicker())
        : List.of(
            lengthwise(),
            thicker(),
            doubled(),
            strip(Stripped.FRONT),
            strip(Stripped.FRONT_AND_BACK));
  }

  /** The stiffest of each kind, with why it fails, where it does. */
  List<String> failing() {
    Stream<Optional<String>> all =
        material.kind() == Kind.GLASS
            ? Stream.of(thickest().flatMap(this::failsPlain))
            : Stream.of(thickest().flatMap(this::failsPlain), failsDoubled(), failsStripped());
    return all.flatMap(Optional::stream).toList();
  }

  private Optional<Material> thickest() {
    Stream<Material> glass =
        material.kind() == Kind.GLASS ? Thicknesses.above(material, job.unit()) : Stream.of();
    return Stream.concat(thickerOnes(), glass).max(Comparator.comparing(Material::thickness));
  }

  private Optional<String> failsPlain(Material thick) {
    return fails(
        "made of '%s', %s,".formatted(thick.name(), job.style().text(thick.thickness())),
        plain(thick));
  }

  private Optional<String> failsDoubled() {
    return sheets().stream()
        .filter(m -> m.layers().isEmpty())
        .reduce((_, last) -> last)
        .flatMap(
            sheet ->
                fails("of two layers of '%s'".formatted(sheet.name()), edged(sheet, Layers.TWO)));
  }

  private Optional<String> failsStripped() {
    Material sheet = sheets().getLast();
    Length height = step().times(tallest(sheet));
    return board(Stripped.FRONT_AND_BACK)
        .map(board -> Made.stripped(sheet, board, depth(), height, Stripped.FRONT_AND_BACK))
        .flatMap(
            made ->
                fails(
                    "with strips %s high on both edges of '%s'"
                        .formatted(job.style().text(height), sheet.name()),
                    made));
  }

  private Optional<String> fails(String made, Made by) {
    return check.why(verdict(by)).map(why -> made + " it " + why);
  }

  private Length step() {
    return job.unit().customary() ? STEP_INCHES : STEP_METRIC;
  }

  private int tallest(Material sheet) {
    return (int) sheet.thickness().times(TALLEST_STRIP).wholeTimes(step());
  }

  /** What the job file can't say is done by hand, and the plan does not count it. */
  private String byHand() {
    return part.role() == Part.Role.FIXED_SHELF
        ? " (by hand: a job file states this for all panels of a case only, so it is in no cut list)"
        : "";
  }

  private double depth() {
    return shelf.section().depth();
  }

  /** Of what it is made of, all parts of which keep its stiffer way along. */
  private Optional<Cure> lengthwise() {
    return Optional.of(material)
        .filter(Matters::isCutEitherWay)
        .map(Material::lengthwise)
        .map(stock::plain)
        .flatMap(this::lengthwise);
  }

  private Optional<Cure> lengthwise(Taken taken) {
    String what =
        "state 'grain: lengthwise' for '%s', so that its parts are cut along the sheet"
            .formatted(material.name());
    return cure(what, plain(taken.of()), Optional.empty(), taken)
        .map(cure -> cure.costing("parts that are not turned on the sheet"));
  }

  /**
   * The thinnest of the job's other materials that holds, of what the stock gives first; else as
   * thick as it has to be.
   */
  private Optional<Cure> thicker() {
    return thickerOnes()
        .map(stock::plain)
        .sorted(Taken.READIEST)
        .flatMap(taken -> thicker(taken).stream())
        .findFirst()
        .or(this::unlisted);
  }

  /** Of the same material, where the job has nothing thicker that holds. */
  private Optional<Cure> unlisted() {
    return Thicknesses.above(material, job.unit())
        .dropWhile(thick -> CureCheck.bendsFar(candidate(plain(thick))))
        .limit(BEYOND_BEAM)
        .flatMap(thick -> unlisted(thick).stream())
        .findFirst();
  }

  /** Its strips stay. */
  private Made plain(Material of) {
    return edged(of, Layers.ONE);
  }

  private Made edged(Material of, Layers layers) {
    return Made.edged(base.beam().section(), reader.pieces(part), of, layers);
  }

  private Optional<Cure> unlisted(Material thick) {
    return cure(
            Thicknesses.words(thick, job.style().text(thick.thickness())) + byHand(),
            plain(thick),
            Optional.empty(),
            new Taken(StockFit.Given.CUT, thick))
        .map(Cure::unpriced);
  }

  private Stream<Material> thickerOnes() {
    boolean glass = material.kind() == Kind.GLASS;
    return job.materials().stream()
        .filter(m -> (m.kind() == Kind.GLASS) == glass)
        .filter(m -> m.thickness().isMoreThan(material.thickness()))
        .sorted(Comparator.comparing(Material::thickness));
  }

  private Optional<Cure> thicker(Taken taken) {
    Material thick = taken.of();
    String what =
        "make it of '" + thick.name() + "', " + job.style().text(thick.thickness()) + byHand();
    return cure(what, plain(thick), shelvesOf(Optional.of(thick.name()), Optional.empty()), taken)
        .map(cure -> cure.told(reader.climate().swelling(part, thick)));
  }

  /** Two layers of its own material, or of the first other sheet material with which it holds. */
  private Optional<Cure> doubled() {
    return sheets().stream()
        .filter(m -> m.layers().isEmpty())
        .map(stock::doubled)
        .sorted(Taken.READIEST)
        .flatMap(taken -> doubled(taken).stream())
        .findFirst();
  }

  private Optional<Cure> doubled(Taken taken) {
    Material sheet = taken.of();
    String what = "glue two layers of '" + sheet.name() + "' together" + byHand();
    return cure(what, edged(sheet, Layers.TWO), doubledShelves(sheet), taken);
  }

  /** Layers bend as their rows in the tables do, whatever the job states of a material itself. */
  private Optional<Stated> doubledShelves(Material sheet) {
    return Optional.<Stated>of(new Stated.ShelvesDoubled(sheet.name()))
        .filter(_ -> part.role() == Part.Role.SHELF)
        .filter(_ -> sheet.stiffness().isEmpty() && sheet.density().isEmpty())
        .filter(_ -> sheet.strength().isEmpty());
  }

  /** The shelf's own material, then the job's thicker sheets, thinnest first. */
  private List<Material> sheets() {
    List<Material> all = new ArrayList<>(List.of(material));
    job.materials().stream()
        .filter(m -> m.kind() == Kind.SHEET && m.thickness().isMoreThan(material.thickness()))
        .sorted(Comparator.comparing(Material::thickness))
        .forEach(all::add);
    return all;
  }

  /**
   * The lowest strip of one of the job's boards that holds, on the thinnest sheet that does; of
   * what the stock gives first.
   */
  private Optional<Cure> strip(Stripped edges) {
    return board(edges).flatMap(board -> strip(board, edges));
  }

  private Optional<Cure> strip(Material board, Stripped edges) {
    return sheets().stream()
        .sorted(Comparator.comparing(sheet -> taken(sheet, board, step(), edges).given()))
        .flatMap(sheet -> strip(sheet, board, edges).stream())
        .findFirst();
  }

  private Taken taken(Material sheet, Material board, Length height, Stripped edges) {
    return stock.stripped(sheet, Made.panel(board, depth(), edges), board, height);
  }

  /**
   * The first that the stock gives strips of, of those that leave a panel between them and the
   * supports their place under it.
   */
  private Optional<Material> board(Stripped edges) {
    StripRoom room = reader.stripRoom(part, base.bearing());
    return stock
        .boards()
        .filter(board -> room.has(board, edges) && Made.panel(board, depth(), edges) > 0)
        .min(Comparator.comparing(m -> stock.strip(m, step()).given()));
  }

  private Optional<Cure> strip(Material sheet, Material board, Stripped edges) {
    Length step = step();
    return lowest(
            n -> Made.stripped(sheet, board, depth(), step.times(n), edges),
            (int) sheet.thickness().wholeTimes(step),
            tallest(sheet))
        .map(steps -> strip(sheet, board, step.times(steps), edges));
  }

  private Cure strip(Material sheet, Material board, Length height, Stripped edges) {
    return cured(
        words(sheet, board, height, edges),
        Made.stripped(sheet, board, depth(), height, edges),
        job.materials().contains(board)
            ? shelvesOf(
                Optional.of(sheet.name()).filter(_ -> !sheet.equals(material)),
                Optional.of(strip(board, height, edges)))
            : Optional.empty(),
        taken(sheet, board, height, edges));
  }

  /**
   * How many steps the lowest strip has that holds. A taller strip never sags more, so that halving
   * finds the lowest one that is near; only from that one on they are bent on the fine mesh.
   *
   * @param made with a strip of so many steps
   * @param low steps that are too few, or no strip
   */
  private Optional<Integer> lowest(IntFunction<Made> made, int low, int most) {
    if (most <= low || isFar(made.apply(most))) {
      return Optional.empty();
    }
    int far = low;
    int near = most;
    while (near - far > 1) {
      int middle = (far + near) / 2;
      boolean isFar = isFar(made.apply(middle));
      far = isFar ? middle : far;
      near = isFar ? near : middle;
    }
    return IntStream.rangeClosed(near, most)
        .filter(steps -> check.holds(verdict(made.apply(steps))))
        .boxed()
        .findFirst();
  }

  private static Edging strip(Material board, Length height, Stripped edges) {
    return new Edging(Edging.Kind.STRIP, board.name(), board.thickness(), height, edges.edges());
  }

  /** A job file states adjustable shelves for themselves, and fixed ones with their case only. */
  private Optional<Stated> shelvesOf(Optional<String> of, Optional<Edging> strip) {
    return Optional.<Stated>of(new Stated.ShelvesOf(of, strip))
        .filter(_ -> part.role() == Part.Role.SHELF);
  }

  private String words(Material sheet, Material board, Length height, Stripped edges) {
    return "%sglue a strip of '%s'%s, %s x %s, to %s over its whole length%s"
        .formatted(
            sheet.equals(material) ? "" : "make it of '" + sheet.name() + "' and ",
            board.name(),
            job.materials().contains(board) ? "" : " (the job states no boards yet)",
            job.style().number(board.thickness()),
            job.style().text(height),
            edges.words(),
            byHand());
  }

  private boolean holds(Made made) {
    return !isFar(made) && check.holds(verdict(made));
  }

  private boolean isFar(Made made) {
    return check.isFar(candidate(made));
  }

  private Verdict verdict(Made made) {
    return check.verdict(candidate(made));
  }

  private Candidate candidate(Made made) {
    return base.made(made.section(), reader.limits(made.panel()));
  }

  private Optional<Cure> cure(String what, Made made, Optional<Stated> stated, Taken taken) {
    return holds(made) ? Optional.of(cured(what, made, stated, taken)) : Optional.empty();
  }

  private Cure cured(String what, Made made, Optional<Stated> stated, Taken taken) {
    double before = shelf.loaded().length();
    double length = count * base.beam().length();
    Optional<Double> now = prices.of(reader.pieces(part), before);
    Optional<Double> then = prices.of(made.pieces(), length);
    return taken.bars(
        new Cure(
            what + taken.words() + ": " + check.outcome(verdict(made)),
            then.flatMap(t -> now.map(n -> t - n)),
            (made.section().weight() * length - shelf.section().weight() * before)
                / Gravity.STANDARD,
            "",
            stated));
  }
}
