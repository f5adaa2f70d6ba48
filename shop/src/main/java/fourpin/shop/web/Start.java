package fourpin.shop.web;

import fourpin.job.Setting;
import fourpin.measure.Length;
import fourpin.measure.LengthReader;
import fourpin.measure.QuantityUnit;
import fourpin.reference.HeldThing;
import fourpin.reference.Reference;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Cases for the room of a survey. What holds up depends on wood, span and load together, which only
 * a plan tells; so there are several drafts, the plainest first.
 */
final class Start {

  /** Bays are not made narrower than a third of what the rule of thumb gives. */
  private static final int MOST_TIMES = 3;

  /** Solid strips on the shelves' edges. */
  private enum Strips {
    NONE(List.of()),
    FRONT(List.of("front")),
    BOTH(List.of("front", "back"));

    private final List<String> edges;

    Strips(List<String> edges) {
      this.edges = edges;
    }
  }

  private final Survey survey;
  private final Optional<Length> roomWidth;
  private final Optional<Length> ceiling;
  private final Optional<Length> roomDepth;
  private final HeldThing thing;
  private final int cases;
  private final Length width;
  private final Length height;

  Start(
      Survey survey,
      Optional<Length> roomWidth,
      Optional<Length> ceiling,
      Optional<Length> roomDepth) {
    this.survey = survey;
    this.roomWidth = roomWidth;
    this.ceiling = ceiling;
    this.roomDepth = roomDepth;
    this.thing =
        Reference.things()
            .find(survey.answer(Survey.HOLDS))
            .orElseGet(() -> Reference.things().rows().getFirst());
    Length wide = roomWidth.map(w -> w.minus(start("beside"))).orElse(start("width"));
    this.cases = 1 + (int) wide.minus(start("step")).wholeTimes(start("widest"));
    this.width = down(wide.over(cases));
    this.height =
        down(
            Length.min(
                ceiling.map(c -> c.minus(start("above"))).orElse(start("height")),
                start("tallest")));
  }

  private Length start(String name) {
    return survey.start(name);
  }

  private String startText(String name) {
    return survey.startText(name);
  }

  private Length down(Length length) {
    Length step = start("step");
    return step.times(length.wholeTimes(step));
  }

  private Length depth() {
    Length wanted = down(Length.max(thing.depth().plus(start("behind")), start("depth")));
    return roomDepth.map(room -> Length.min(down(room), wanted)).orElse(wanted);
  }

  /** Jobs to choose from, the plainest first. */
  List<String> drafts() {
    int fewest = fewestBays();
    int most = mostBays(fewest);
    Stream<String> bare =
        IntStream.rangeClosed(fewest, most).mapToObj(bays -> text(bays, Strips.NONE));
    Stream<String> stiff =
        Stream.of(text(fewest, Strips.FRONT), text(fewest, Strips.BOTH), text(most, Strips.BOTH));
    return Stream.concat(bare, stiff).distinct().toList();
  }

  private Optional<Integer> statedBays() {
    String bays = survey.answer(Survey.BAYS);
    return bays.isEmpty() ? Optional.empty() : Optional.of(Integer.parseInt(bays));
  }

  private int fewestBays() {
    Length span =
        new LengthReader(survey.unit())
            .read(
                survey.inches()
                    ? Setting.SPAN_RULE.inchDefault()
                    : Setting.SPAN_RULE.metricDefault())
            .orThrow();
    return statedBays()
        .orElseGet(() -> (int) Math.clamp(width.wholeTimes(span) + 1, 1, Survey.MOST_BAYS));
  }

  private int mostBays(int fewest) {
    boolean inARow = thing.load().typical().unit() == QuantityUnit.LINE_LOAD;
    Length clear = start(inARow ? "narrowest-bay" : "narrowest-bay-singly");
    Length narrowest = clear.plus(start("panel"));
    int room = (int) Math.min(width.wholeTimes(narrowest), Survey.MOST_BAYS);
    return statedBays().orElseGet(() -> Math.clamp(room, fewest, MOST_TIMES * fewest));
  }

  private int shelves() {
    long openings =
        height.minus(start("kick.height")).wholeTimes(thing.height().plus(start("opening")));
    return (int) Math.clamp(openings - 1, 1, Survey.MOST_BAYS);
  }

  private String text(int bays, Strips strips) {
    Map<String, Value> job = new LinkedHashMap<>();
    String title = survey.answer(Survey.TITLE);
    job.put("title", Value.of(title.isEmpty() ? "New case" : title));
    job.put("unit", Value.of(survey.inches() ? "inch" : "mm"));
    Map<String, Value> room = new LinkedHashMap<>();
    roomWidth.ifPresent(w -> room.put("width", Value.of(survey.answer(Survey.WIDTH))));
    ceiling.ifPresent(c -> room.put("ceiling", Value.of(survey.answer(Survey.CEILING))));
    roomDepth.ifPresent(d -> room.put("depth", Value.of(survey.answer(Survey.DEPTH))));
    if (!room.isEmpty()) {
      job.put("room", Value.group(room));
    }
    job.put("materials", materials(strips));
    job.put("stock", stock(strips));
    job.put("cases", Value.group(Map.of("case", aCase(bays, strips))));
    return JobText.written(
        "Made from the answers to a few questions; change whatever you like.", Value.group(job));
  }

  private Value materials(Strips strips) {
    Map<String, Value> materials = new LinkedHashMap<>();
    String answer = survey.answer(Survey.WOOD);
    String wood = Survey.WOODS.contains(answer) ? answer : Survey.WOODS.getFirst();
    materials.put("panel", words("kind", "sheet", "of", wood, "thickness", startText("panel")));
    materials.put(
        "back", words("kind", "sheet", "of", backOf(wood), "thickness", startText("back")));
    if (strips != Strips.NONE) {
      materials.put(
          "strip",
          words("kind", "board", "of", startText("strip.of"), "thickness", startText("panel")));
    }
    return Value.group(materials);
  }

  private static String backOf(String wood) {
    return wood.startsWith("plywood") ? "plywood, birch throughout" : "MDF";
  }

  private Value stock(Strips strips) {
    Map<String, Value> stock = new LinkedHashMap<>();
    stock.put("sheets", Value.list(List.of(piece("panel", "sheet"), piece("back", "sheet"))));
    if (strips != Strips.NONE) {
      stock.put("boards", Value.list(List.of(piece("strip", "board"))));
    }
    return Value.group(stock);
  }

  private Value piece(String material, String form) {
    return words(
        "material",
        material,
        "length",
        startText(form + ".length"),
        "width",
        startText(form + ".width"));
  }

  private Value aCase(int bays, Strips strips) {
    Map<String, Value> stated = new LinkedHashMap<>();
    if (cases > 1) {
      stated.put("quantity", Value.of(cases));
    }
    stated.put(
        "outside",
        words("width", number(width), "height", number(height), "depth", number(depth())));
    stated.put("material", Value.of("panel"));
    stated.put("bays", bays(bays));
    stated.put("shelves", shelves(strips));
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
    stated.put("back", back(bays));
    stated.put("kick", words("height", startText("kick.height"), "material", "panel"));
    stated.put("settings", settings(bays));
    return Value.group(stated);
  }

  private String number(Length length) {
    return survey.style().number(length);
  }

  /** In a partition the holes of both sides would meet: every second bay has its own rows. */
  private Value bays(int bays) {
    Value plain = Value.group(new LinkedHashMap<>());
    Value back = words("rows-back", startText("rows-back"));
    return bays == 1
        ? Value.of(bays)
        : Value.list(
            IntStream.rangeClosed(1, bays).mapToObj(bay -> bay % 2 == 0 ? back : plain).toList());
  }

  /** What partitions bring down goes on to the floor by blocks behind the kick. */
  private Value settings(int bays) {
    return bays == 1
        ? words("hole-depth", startText("hole-depth"))
        : words(
            "hole-depth",
            startText("hole-depth"),
            "front-row",
            startText("front-row"),
            Setting.BEHIND_KICK.key(),
            "blocks");
  }

  private Value shelves(Strips strips) {
    if (strips == Strips.NONE) {
      return Value.of(shelves());
    }
    Map<String, Value> edging = new LinkedHashMap<>();
    edging.put("strip", Value.of("strip"));
    edging.put("thickness", Value.of(startText("panel")));
    edging.put("height", Value.of(startText("strip.height")));
    edging.put("edges", Value.list(strips.edges.stream().map(Value::of).toList()));
    Map<String, Value> shelves = new LinkedHashMap<>();
    shelves.put("count", Value.of(shelves()));
    shelves.put("edging", Value.group(edging));
    return Value.group(shelves);
  }

  /** One that is wider than a sheet meets on the partitions. */
  private Value back(int bays) {
    String kind = survey.answer(Survey.BACK).equals("applied") ? "applied" : "groove";
    boolean fits = width.isLessThan(start("one-back"));
    return bays == 1 || fits
        ? words("kind", kind, "material", "back")
        : words("kind", kind, "material", "back", "pieces", "by-bay");
  }

  private static Value words(String... keysAndWords) {
    Map<String, Value> group = new LinkedHashMap<>();
    for (int i = 0; i < keysAndWords.length; i += 2) {
      group.put(keysAndWords[i], Value.of(keysAndWords[i + 1]));
    }
    return Value.group(group);
  }
}
