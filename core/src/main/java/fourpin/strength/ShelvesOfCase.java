package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import fourpin.measure.Lazy;
import fourpin.measure.LazyList;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What the shelves of one case do, and what is wrong with them. */
final class ShelvesOfCase {

  private final Job job;
  private final BuiltCase built;
  private final ShelfReader reader;
  private final SupportReader supports;
  private final SideBow bow;
  private final Climate climate;
  private final PlateBending.Memory plates;

  /**
   * @param bow of its sides
   * @param plates those that are bent already
   */
  ShelvesOfCase(
      Job job,
      BuiltCase built,
      ShelfReader reader,
      SupportReader supports,
      SideBow bow,
      Climate climate,
      PlateBending.Memory plates) {
    this.job = job;
    this.built = built;
    this.reader = reader;
    this.supports = supports;
    this.bow = bow;
    this.climate = climate;
    this.plates = plates;
  }

  private Verdict verdict(Part shelf) {
    Candidate now = Candidate.of(reader.read(shelf), supports.limits(shelf, reader));
    return new Verdict(
        shelf.role() == Part.Role.FIXED_SHELF ? now.joined(joints(shelf).end()) : now, plates);
  }

  /** One for each shelf, in the order of the parts. */
  List<ShelfAnswer> answers() {
    List<Part> shelves = reader.shelves();
    Lazy<List<ShelfAnswer.Rest>> rest = Lazy.of(() -> afresh().rest());
    List<Object> likeness = shelves.stream().map(this::likeness).toList();
    return IntStream.range(0, shelves.size())
        .mapToObj(
            i ->
                answer(shelves.get(i), Lazy.of(() -> rest.get().get(i)))
                    .with(shelves.get(likeness.indexOf(likeness.get(i))).mark()))
        .toList();
  }

  private ShelfAnswer answer(Part shelf, Lazy<ShelfAnswer.Rest> rest) {
    Verdict verdict = verdict(shelf);
    return new ShelfFigures(reader.read(shelf), verdict)
        .answer(Beyond.of(verdict, job.unit()), rest);
  }

  /** Whoever looks into what is put off bends plates of their own, since threads share none. */
  private ShelvesOfCase afresh() {
    ShelfReader anew = new ShelfReader(job, built);
    return new ShelvesOfCase(
        job,
        built,
        anew,
        supports,
        new SideBow(job, built, anew, supports),
        climate,
        new PlateBending.Memory());
  }

  /** Shared by all the cures of a shelf, one after the other. */
  private final class Afresh {

    private final Lazy<ShelvesOfCase> shelves = Lazy.of(ShelvesOfCase.this::afresh);

    List<Remedy> list(Function<ShelvesOfCase, List<Remedy>> cures) {
      return LazyList.of(() -> ask(cures));
    }

    private synchronized List<Remedy> ask(Function<ShelvesOfCase, List<Remedy>> cures) {
      return cures.apply(shelves.get());
    }
  }

  private List<ShelfAnswer.Rest> rest() {
    return reader.shelves().stream().map(this::rest).toList();
  }

  private ShelfAnswer.Rest rest(Part shelf) {
    Verdict verdict = verdict(shelf);
    List<Figure> inSides =
        shelf.role() == Part.Role.FIXED_SHELF ? joints(shelf).all() : carried(shelf, verdict).all();
    return new ShelfFigures(reader.read(shelf), verdict)
        .rest(with(hollow(shelf, verdict), inSides));
  }

  private List<Figure> hollow(Part shelf, Verdict verdict) {
    return new HollowShelves(
            job, List.of(shelf), reader.read(shelf), verdict, supports.pin(shelf, reader))
        .figures();
  }

  private static List<Figure> with(List<Figure> more, List<Figure> figures) {
    return Stream.concat(figures.stream(), more.stream()).toList();
  }

  private SupportFigures carried(Part shelf, Verdict verdict) {
    return new SupportFigures(
        reader.read(shelf), verdict, supports.pin(shelf, reader), apart(shelf));
  }

  /** How far the sides of a shelf come apart. */
  private Apart apart(Part shelf) {
    double span = reader.read(shelf).span().value().value();
    return new Apart(
        bow.at(shelf), bow.creep(shelf), climate.apart(shelf, span), climate.shrinking(shelf));
  }

  private JointFigures joints(Part shelf) {
    return new JointFigures(
        job,
        reader.settings(),
        shelf,
        built.part(reader.space(shelf).left()),
        JointLoad.of(shelf, reader.read(shelf)),
        built.order().fixedShelfJoint());
  }

  /** Shelves that are alike in all that matters are found fault with together. */
  List<Finding> findings() {
    Map<Object, List<Part>> groups = new LinkedHashMap<>();
    reader
        .shelves()
        .forEach(s -> groups.computeIfAbsent(likeness(s), _ -> new ArrayList<>()).add(s));
    return groups.values().stream().flatMap(alike -> findings(alike).stream()).toList();
  }

  private Object likeness(Part shelf) {
    ShelfOnSupports read = reader.read(shelf);
    return List.of(
        read.loaded(),
        read.bearing(),
        read.limits(),
        read.doubt(),
        read.standing(),
        shelf.material(),
        shelf.role(),
        supports.pin(shelf, reader));
  }

  private List<Finding> findings(List<Part> alike) {
    Part first = alike.getFirst();
    ShelfOnSupports read = reader.read(first);
    Verdict verdict = verdict(first);
    Optional<PinInSide> pin = supports.pin(first, reader);
    Afresh afresh = new Afresh();
    List<Remedy> ofShelf = afresh.list(s -> s.cures(first));
    List<Remedy> ofSupports = afresh.list(s -> s.supportCures(first));
    Function<Over, List<Remedy>> ofTipping = row -> afresh.list(s -> s.tippingCures(first, row));
    List<Remedy> ofSlipping = afresh.list(s -> s.slippingCures(first));
    List<Finding> all = new ArrayList<>();
    all.addAll(new ShelfFindings(job, reader, alike, verdict, ofShelf).all());
    all.addAll(new PlateFindings(job, alike, read, verdict, ofTipping).all());
    verdict.shelf().cases().uneven().stream()
        .map(of -> new UnevenFindings(job, alike, read, verdict, of, ofShelf))
        .forEach(uneven -> all.addAll(uneven.all()));
    all.addAll(
        new SupportFindings(
                job,
                alike,
                read,
                carried(first, verdict),
                supports,
                pin,
                new SupportFindings.Ways(ofSupports, ofSlipping))
            .all());
    all.addAll(new HollowShelves(job, alike, read, verdict, pin).findings());
    if (first.role() == Part.Role.FIXED_SHELF) {
      all.addAll(new JointFindings(job, built.order().name(), alike, joints(first)).all());
    }
    return all;
  }

  private List<Remedy> cures(Part shelf) {
    NewRocking rocking = rocking(shelf);
    CureCheck check = CureCheck.ofShelf(job, rocking, plates);
    return new ShelfCures(job, reader, shelf, rocking.now(), check).all();
  }

  private List<Remedy> tippingCures(Part shelf, Over row) {
    return new TippingCures(job, reader, shelf, row, rocking(shelf), plates).all();
  }

  private List<Remedy> supportCures(Part shelf) {
    NewRocking rocking = rocking(shelf);
    CureCheck check = CureCheck.ofSupports(job, rocking, plates);
    ShelfCures ofShelf = new ShelfCures(job, reader, shelf, rocking.now(), check);
    return new SupportCures(job, reader, supports, shelf, rocking, plates, ofShelf).all();
  }

  private List<Remedy> slippingCures(Part shelf) {
    return supports
        .pin(shelf, reader)
        .map(pin -> carried(shelf, verdict(shelf)).engaged(pin))
        .map(now -> new SlippingCures(job, supports, bow, shelf, verdict(shelf), plates, now).all())
        .orElse(List.of());
  }

  private NewRocking rocking(Part shelf) {
    return new NewRocking(job, reader.read(shelf).doubt().low().number(), verdict(shelf));
  }
}
