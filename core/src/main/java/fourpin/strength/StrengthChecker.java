package fourpin.strength;

import fourpin.casework.BuiltCase;
import fourpin.casework.Finding;
import fourpin.casework.Part;
import fourpin.job.Job;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** From casework to what it carries. */
public final class StrengthChecker {

  private StrengthChecker() {}

  /** Checks every shelf, and every side for its free height. */
  public static Strength check(Job job, List<BuiltCase> cases) {
    List<ShelfAnswer> answers = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    for (BuiltCase built : cases) {
      ShelfReader reader = new ShelfReader(job, built);
      for (Part shelf : reader.shelves()) {
        answers.add(new ShelfFigures(reader.read(shelf)).answer());
      }
      alike(reader)
          .forEach(shelves -> findings.addAll(new ShelfFindings(job, reader, shelves).all()));
      findings.addAll(TallSides.of(job, built));
    }
    return new Strength(answers, findings);
  }

  /** Shelves that are alike in all that matters here are found fault with together. */
  private static List<List<Part>> alike(ShelfReader reader) {
    Map<Object, List<Part>> groups = new LinkedHashMap<>();
    for (Part shelf : reader.shelves()) {
      ShelfOnSupports read = reader.read(shelf);
      List<Object> key = List.of(read.loaded(), read.limits(), shelf.material(), shelf.role());
      groups.computeIfAbsent(key, _ -> new ArrayList<>()).add(shelf);
    }
    return List.copyOf(groups.values());
  }
}
