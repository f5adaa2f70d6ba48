package fourpin.sheets.packet;

import fourpin.casework.BaySpace;
import fourpin.casework.BuiltCase;
import fourpin.casework.Face;
import fourpin.job.Setting;
import fourpin.plan.CleatBlank;
import fourpin.plan.Plan;
import fourpin.plan.PlannedStep;
import fourpin.plan.PlannedStep.FaceUp;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What is done to the faces that lie up together: the steps of the plan that name them, word for
 * word. They stand here alone, beside their picture, and the list of all steps refers to them by
 * number and title. Printed twice they would be ticked off twice, or on one sheet and not the
 * other.
 *
 * @param faces at least one
 * @param steps at least one
 */
record DrillingSheet(BuiltCase built, List<FaceUp> faces, List<PlannedStep> steps) {

  DrillingSheet {
    faces = List.copyOf(faces);
    steps = List.copyOf(steps);
  }

  private record Key(String caseName, List<FaceUp> faces) {}

  /** In the order of work. */
  static List<DrillingSheet> of(Plan plan) {
    Map<Key, List<PlannedStep>> sheets = new LinkedHashMap<>();
    for (PlannedStep step : plan.steps()) {
      if (!step.sheet().isEmpty() && !DrillingSetUp.holds(step)) {
        Key key = new Key(step.caseName(), step.sheet());
        sheets.computeIfAbsent(key, _ -> new ArrayList<>()).add(step);
      }
    }
    List<DrillingSheet> list = new ArrayList<>();
    sheets.forEach(
        (key, steps) -> list.add(new DrillingSheet(built(plan, key), key.faces(), steps)));
    return list;
  }

  private static BuiltCase built(Plan plan, Key key) {
    return plan.cases().stream()
        .filter(c -> c.order().name().equals(key.caseName()))
        .findFirst()
        .orElseThrow();
  }

  String title() {
    String what =
        blanks().isEmpty()
            ? faces.stream().map(this::title).collect(Collectors.joining(", and "))
            : blanksTitle();
    return built.order().name() + ": " + what;
  }

  private String blanksTitle() {
    List<CleatBlank> blanks = blanks();
    return (blanks.size() == 1 ? "cleat blank " : "cleat blanks ")
        + Words.list(blanks.stream().map(b -> b.wood().mark()).toList())
        + ", bay "
        + blanks.getFirst().bay(built);
  }

  /** The blanks for cleat strips that lie on it; of a stack the uppermost first. */
  List<CleatBlank> blanks() {
    return faces.stream()
        .flatMap(up -> CleatBlank.of(built).stream().filter(b -> b.wood().mark().equals(up.part())))
        .toList();
  }

  private String title(FaceUp up) {
    boolean stands = built.order().settings().choice(Setting.DRILL).equals("after-assembly");
    OptionalInt bay = bay(up);
    return built.part(up.part()).name()
        + " "
        + up.part()
        + ", "
        + Words.lower(up.face())
        + (stands ? " face" : " face up")
        + (bay.isPresent() ? ", bay " + bay.getAsInt() : "");
  }

  /** Number of the bay that a face looks into, or that a blank is for. */
  OptionalInt bay(FaceUp up) {
    return blanks().isEmpty() ? lookedInto(up) : OptionalInt.of(blanks().getFirst().bay(built));
  }

  private OptionalInt lookedInto(FaceUp up) {
    return IntStream.rangeClosed(1, built.bays().size())
        .filter(number -> upright(built.bays().get(number - 1), up.face()).equals(up.part()))
        .findFirst();
  }

  private static String upright(BaySpace bay, Face face) {
    return face == Face.RIGHT ? bay.left() : bay.right();
  }

  /** How the panel lies, and whatever else holds for all of the sheet. */
  List<PlannedStep> lying() {
    return steps.stream().filter(s -> s.typed().isEmpty()).toList();
  }

  /** What is bored. */
  List<PlannedStep> worked() {
    return steps.stream().filter(s -> !s.typed().isEmpty()).toList();
  }
}
