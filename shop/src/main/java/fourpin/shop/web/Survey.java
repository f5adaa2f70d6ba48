package fourpin.shop.web;

import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.LengthStyle;
import fourpin.measure.Reading;
import fourpin.measure.Unit;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * From a few answers to a whole job: a case that can be built, to be changed afterwards.
 *
 * @param answers by the names of the questions; what is missing or blank is not answered
 */
record Survey(Map<String, String> answers) {

  static final String TITLE = "title";
  static final String UNIT = "unit";
  static final String WIDTH = "width";
  static final String CEILING = "ceiling";
  static final String DEPTH = "depth";
  static final String HOLDS = "holds";
  static final String WOOD = "wood";
  static final String BACK = "back";
  static final String BAYS = "bays";

  private static final int LONGEST_TITLE = 80;
  private static final int MOST_BAYS = 12;

  /** What a case is made of, as it is sold nearly everywhere. */
  static final List<String> WOODS =
      List.of(
          "plywood, birch throughout",
          "plywood, veneer core",
          "plywood, MDF core",
          "MDF",
          "particleboard");

  static final List<String> BACKS = List.of("groove", "applied", "none");

  Survey {
    answers = Map.copyOf(answers);
  }

  /** A job's text, or what is wrong at which question. */
  sealed interface Outcome {
    record Job(String text) implements Outcome {}

    record Wrong(Map<String, Reading.Bad<Length>> troubles) implements Outcome {}
  }

  String answer(String question) {
    return answers.getOrDefault(question, "").strip();
  }

  private boolean inches() {
    return !answer(UNIT).equals("mm");
  }

  private Unit unit() {
    return inches() ? Unit.INCH : Unit.MILLIMETRE;
  }

  Outcome job() {
    Map<String, Reading.Bad<Length>> troubles = new LinkedHashMap<>();
    if (answer(TITLE).codePointCount(0, answer(TITLE).length()) > LONGEST_TITLE) {
      troubles.put(TITLE, bad("it has more than 80 characters", "shorten it"));
    }
    Optional<Length> width = length(WIDTH, "least-width", "most-width", troubles);
    Optional<Length> ceiling = length(CEILING, "least-ceiling", "most-ceiling", troubles);
    Optional<Length> depth = length(DEPTH, "least-depth", "most-depth", troubles);
    if (!answer(BAYS).isEmpty() && !answer(BAYS).matches("[1-9]|1[0-2]")) {
      troubles.put(
          BAYS, bad("it is a whole number from 1 to 12 here", "leave it empty if you don't mind"));
    }
    return troubles.isEmpty()
        ? new Outcome.Job(new Start(width, ceiling, depth).text())
        : new Outcome.Wrong(troubles);
  }

  private static Reading.Bad<Length> bad(String rule, String remedy) {
    return new Reading.Bad<>(rule, remedy);
  }

  private Optional<Length> length(
      String question, String least, String most, Map<String, Reading.Bad<Length>> troubles) {
    if (answer(question).isEmpty()) {
      return Optional.empty();
    }
    return switch (new LengthReader(unit()).read(answer(question))) {
      case Reading.Bad<Length> bad -> {
        troubles.put(question, bad);
        yield Optional.empty();
      }
      case Reading.Good<Length>(Length l)
          when l.isLessThan(start(least)) || l.isMoreThan(start(most)) -> {
        troubles.put(
            question,
            bad(
                "it is from "
                    + style().text(start(least))
                    + " to "
                    + style().text(start(most))
                    + " here",
                "check the number and its unit"));
        yield Optional.empty();
      }
      case Reading.Good<Length>(Length l) -> Optional.of(l);
    };
  }

  private Length start(String name) {
    return new LengthReader(unit()).read(startText(name)).orThrow();
  }

  private String startText(String name) {
    return Starts.of(inches()).get(name);
  }

  private LengthStyle style() {
    return inches() ? new LengthStyle(Unit.INCH, 16) : new LengthStyle(Unit.MILLIMETRE, 1);
  }

  /** A case for the room. */
  private final class Start {

    private final Optional<Length> roomWidth;
    private final Optional<Length> ceiling;
    private final Optional<Length> roomDepth;
    private final HeldThing thing;
    private final Length width;
    private final Length height;

    Start(Optional<Length> roomWidth, Optional<Length> ceiling, Optional<Length> roomDepth) {
      this.roomWidth = roomWidth;
      this.ceiling = ceiling;
      this.roomDepth = roomDepth;
      this.thing =
          Reference.things()
              .find(answer(HOLDS))
              .orElseGet(() -> Reference.things().rows().getFirst());
      this.width =
          least(roomWidth.map(w -> w.minus(start("beside"))), start("widest"), start("width"));
      this.height =
          least(ceiling.map(c -> c.minus(start("above"))), start("tallest"), start("height"));
    }

    private Length least(Optional<Length> room, Length most, Length otherwise) {
      return down(room.map(r -> Length.min(r, most)).orElse(otherwise));
    }

    private Length down(Length length) {
      Length step = start("step");
      return step.times(length.wholeTimes(step));
    }

    private Length depth() {
      Length wanted = down(Length.max(thing.depth().plus(start("behind")), start("depth")));
      return roomDepth.map(room -> Length.min(down(room), wanted)).orElse(wanted);
    }

    private int bays() {
      if (!answer(BAYS).isEmpty()) {
        return Integer.parseInt(answer(BAYS));
      }
      Length span =
          new LengthReader(unit())
              .read(inches() ? Setting.SPAN_RULE.inchDefault() : Setting.SPAN_RULE.metricDefault())
              .orThrow();
      return (int) Math.clamp(width.wholeTimes(span) + 1, 1, MOST_BAYS);
    }

    private int shelves() {
      long openings =
          height.minus(start("kick.height")).wholeTimes(thing.height().plus(start("opening")));
      return (int) Math.clamp(openings - 1, 1, MOST_BAYS);
    }

    String text() {
      Map<String, Value> job = new LinkedHashMap<>();
      job.put("title", Value.of(answer(TITLE).isEmpty() ? "New case" : answer(TITLE)));
      job.put("unit", Value.of(inches() ? "inch" : "mm"));
      Map<String, Value> room = new LinkedHashMap<>();
      roomWidth.ifPresent(w -> room.put("width", Value.of(answer(WIDTH))));
      ceiling.ifPresent(c -> room.put("ceiling", Value.of(answer(CEILING))));
      roomDepth.ifPresent(d -> room.put("depth", Value.of(answer(DEPTH))));
      if (!room.isEmpty()) {
        job.put("room", Value.group(room));
      }
      job.put("materials", materials());
      job.put("stock", stock());
      job.put("cases", Value.group(Map.of("case", aCase())));
      return JobText.written(
          "Made from the answers to a few questions; change whatever you like.", Value.group(job));
    }

    private Value materials() {
      Map<String, Value> materials = new LinkedHashMap<>();
      String wood = WOODS.contains(answer(WOOD)) ? answer(WOOD) : WOODS.getFirst();
      materials.put("panel", words("kind", "sheet", "of", wood, "thickness", startText("panel")));
      materials.put(
          "back", words("kind", "sheet", "of", backOf(wood), "thickness", startText("back")));
      return Value.group(materials);
    }

    private String backOf(String wood) {
      return wood.startsWith("plywood") ? "plywood, birch throughout" : "MDF";
    }

    private Value stock() {
      return Value.group(Map.of("sheets", Value.list(List.of(sheet("panel"), sheet("back")))));
    }

    private Value sheet(String material) {
      return words(
          "material",
          material,
          "length",
          startText("sheet.length"),
          "width",
          startText("sheet.width"));
    }

    private Value aCase() {
      Map<String, Value> stated = new LinkedHashMap<>();
      stated.put(
          "outside",
          words(
              "width",
              style().number(width),
              "height",
              style().number(height),
              "depth",
              style().number(depth())));
      stated.put("material", Value.of("panel"));
      stated.put("bays", Value.of(bays()));
      stated.put("shelves", Value.of(shelves()));
      stated.put(
          "supports",
          Value.group(
              Map.of(
                  "pins",
                  words(
                      "diameter",
                      startText("pins.diameter"),
                      "stem",
                      startText("pins.stem"),
                      "reach",
                      startText("pins.reach")))));
      stated.put("holds", Value.of(thing.name()));
      if (!answer(BACK).equals("none")) {
        String kind = answer(BACK).equals("applied") ? "applied" : "groove";
        stated.put("back", words("kind", kind, "material", "back"));
      }
      stated.put("kick", words("height", startText("kick.height"), "material", "panel"));
      stated.put("settings", words("hole-depth", startText("hole-depth")));
      return Value.group(stated);
    }

    private static Value words(String... keysAndWords) {
      Map<String, Value> group = new LinkedHashMap<>();
      for (int i = 0; i < keysAndWords.length; i += 2) {
        group.put(keysAndWords[i], Value.of(keysAndWords[i + 1]));
      }
      return Value.group(group);
    }
  }
}
