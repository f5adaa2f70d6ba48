package fourpin.shop.fields;

import fourpin.measure.Reading;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.file.Form;
import fourpin.shop.file.Key;
import fourpin.shop.file.Kind;
import fourpin.shop.file.OneOf;
import fourpin.shop.file.Word;
import fourpin.shop.file.Word.Shape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SequencedMap;
import java.util.function.Function;

/** Groups that are not there yet: what must be typed, and what that comes to in the file. */
record Beginnings(JobText text, Looks looks) {

  private static final String NAME = "name";

  /** What the name of a thing is. */
  static final String NAME_NOTE = "what the rest calls it";

  /** A group under a key of its own. @param instead what goes when it comes */
  Part.Begin group(
      String id, String title, String note, Route at, Form<?> form, List<Target> instead) {
    Blanks blanks = blanks(id, form);
    return new Part.Begin(
        id,
        title,
        note,
        blanks.all(),
        at,
        typed -> {
          List<Target> targets = new ArrayList<>();
          targets.add(Target.put(at, blanks.value(typed)));
          targets.addAll(instead);
          return Reading.good(targets);
        });
  }

  /** One more of a list. */
  Part.Begin item(String id, String title, Route list, Form<?> form) {
    Blanks blanks = blanks(id, form);
    return new Part.Begin(
        id,
        title,
        "",
        blanks.all(),
        list,
        typed -> Reading.good(List.of(Target.append(text, list, blanks.value(typed)))));
  }

  /** One more under a name of the maker's. */
  Part.Begin named(String id, String title, Route all, Form<?> form) {
    Blanks blanks = blanks(id, form);
    List<Part.Blank> withName = new ArrayList<>();
    withName.add(name(id));
    withName.addAll(blanks.all());
    return new Part.Begin(
        id, title, "", withName, all, typed -> placed(all, blanks.value(typed), typed));
  }

  /** One more that is all like another but for its name. */
  Part.Begin copied(String id, String title, Route like) {
    Value value = text.value(like).orElseThrow();
    Route all = like.parent();
    return new Part.Begin(
        id, title, "", List.of(name(id)), all, typed -> placed(all, value, typed));
  }

  private static Part.Blank name(String id) {
    return new Part.Blank(
        NAME,
        new Field.Shown(Ids.below(id, NAME), "Name", List.of(), "", "", NAME_NOTE),
        Part.Must.BE_STATED);
  }

  private Reading<List<Target>> placed(Route all, Value value, Map<String, String> typed) {
    Route at = all.to(typed.getOrDefault(NAME, "").strip());
    return text.value(at).isPresent()
        ? Reading.bad("there is one of this name already", "choose another name")
        : Reading.good(List.of(Target.put(at, value)));
  }

  /**
   * What is typed for a group.
   *
   * @param fixed what can only be one word, and is not asked
   */
  private record Blanks(
      List<Part.Blank> all, Map<String, String> fixed, Map<String, Kind<?>> kinds) {

    Value value(Map<String, String> typed) {
      SequencedMap<String, Value> group = new LinkedHashMap<>();
      fixed.forEach((key, word) -> put(group, key, Value.of(word)));
      for (Part.Blank blank : all) {
        String word = typed.getOrDefault(blank.key(), "").strip();
        if (!word.isEmpty()) {
          Kind<?> kind = Objects.requireNonNull(kinds.get(blank.key()));
          put(group, blank.key(), FileFields.written(word, kind));
        }
      }
      return Value.group(group);
    }

    /** Keys with points go into groups of their own. */
    private static void put(SequencedMap<String, Value> group, String path, Value value) {
      int point = path.indexOf('.');
      if (point < 0) {
        group.put(path, value);
        return;
      }
      String head = path.substring(0, point);
      SequencedMap<String, Value> inner =
          new LinkedHashMap<>(
              group.get(head) instanceof Value.Group(var e) ? e : new LinkedHashMap<>());
      put(inner, path.substring(point + 1), value);
      group.put(head, Value.group(inner));
    }
  }

  private Blanks blanks(String id, Form<?> form) {
    Blanks blanks = new Blanks(new ArrayList<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
    collect(id, form, "", blanks);
    return blanks;
  }

  private void collect(String id, Form<?> form, String before, Blanks into) {
    for (Key<?> key : form.keys()) {
      if (key.need() == Key.Need.REQUIRED) {
        collect(id, form, key, before + key.name(), Part.Must.BE_STATED, into);
      } else if (form.picks().stream().anyMatch(p -> isNeeded(p, key))) {
        collect(id, form, key, before + key.name(), Part.Must.MAY_BE_LEFT, into);
      }
    }
  }

  private static boolean isNeeded(Form.Pick pick, Key<?> key) {
    return pick.take() == Form.Take.EXACTLY_ONE && pick.keys().contains(key);
  }

  private void collect(
      String id, Form<?> form, Key<?> key, String path, Part.Must must, Blanks into) {
    if (key.kind() instanceof Form<?> inner) {
      collect(id, inner, path + ".", into);
      return;
    }
    Optional<Word<?>> word = Looks.word(key.kind());
    if (word.isEmpty()) {
      return;
    }
    if (word.get().shape() instanceof Shape.Choice(var words) && words.size() == 1) {
      into.fixed().put(path, words.getFirst());
      return;
    }
    into.kinds().put(path, key.kind());
    into.all()
        .add(
            new Part.Blank(
                path, looks.blank(Ids.below(id, path), form, path, key, word.get()), must));
  }

  /** One beginning for each kind. */
  List<Part.Begin> ofKinds(String id, Route all, OneOf<?> one) {
    Function<Map.Entry<String, ? extends Form<?>>, Part.Begin> begin =
        e -> named(Ids.below(id, e.getKey()), "Add " + e.getValue().what(), all, e.getValue());
    return one.forms().entrySet().stream().map(begin).toList();
  }
}
