package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.job.Job;
import fourpin.measure.Figure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** From casework to what it carries. */
public final class StrengthChecker {

  private final Job job;
  private final PlateBending.Memory plates = new PlateBending.Memory();
  private final List<ShelfAnswer> answers = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  private StrengthChecker(Job job) {
    this.job = job;
  }

  /** Checks every shelf as a beam and as a plate, and every side for its free height. */
  public static Strength check(Job job, List<BuiltCase> cases) {
    StrengthChecker checker = new StrengthChecker(job);
    cases.forEach(checker::check);
    return new Strength(checker.answers, checker.findings);
  }

  private void check(BuiltCase built) {
    ShelfReader reader = new ShelfReader(job, built);
    List<Part> shelves = reader.shelves();
    shelves.forEach(shelf -> answers.add(answer(reader.read(shelf))));
    for (List<Part> alike : grouped(shelves, shelf -> asBeam(reader, shelf))) {
      findings.addAll(new ShelfFindings(job, reader, alike).all());
    }
    for (List<Part> alike : grouped(shelves, shelf -> ShelfPlate.of(reader.read(shelf)))) {
      ShelfOnSupports read = reader.read(alike.getFirst());
      plate(read).ifPresent(a -> findings.addAll(new PlateFindings(job, alike, read, a).all()));
    }
    findings.addAll(TallSides.of(job, built));
  }

  private ShelfAnswer answer(ShelfOnSupports read) {
    List<Figure> asPlate = plate(read).map(p -> new PlateFigures(read, p).all()).orElse(List.of());
    return new ShelfFigures(read).answer(asPlate);
  }

  private Optional<PlateAnswer> plate(ShelfOnSupports read) {
    return ShelfPlate.of(read).map(plates::of);
  }

  private static Object asBeam(ShelfReader reader, Part shelf) {
    ShelfOnSupports read = reader.read(shelf);
    return List.of(read.loaded(), read.limits(), shelf.material(), shelf.role());
  }

  /** Shelves that are alike in all that matters are found fault with together. */
  private static List<List<Part>> grouped(List<Part> shelves, Function<Part, Object> likeness) {
    Map<Object, List<Part>> groups = new LinkedHashMap<>();
    for (Part shelf : shelves) {
      groups.computeIfAbsent(likeness.apply(shelf), _ -> new ArrayList<>()).add(shelf);
    }
    return List.copyOf(groups.values());
  }
}
