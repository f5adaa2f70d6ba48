package fourpin.shop.fields;

import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import fourpin.shop.file.Form;
import fourpin.shop.file.Key;
import fourpin.shop.file.Kind;
import fourpin.shop.file.ListOf;
import fourpin.shop.file.Named;
import fourpin.shop.file.OneOf;
import fourpin.shop.file.Short;
import fourpin.shop.file.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** The fields of a file, as its forms describe them and its text states them. */
public final class FileFields {

  private final JobText text;
  private final Form<?> file;
  private final Looks looks;
  private final Beginnings beginnings;

  /**
   * @param file the form of the whole file
   */
  public FileFields(JobText text, Form<?> file, Known known) {
    this.text = text;
    this.file = file;
    this.looks = new Looks(known);
    this.beginnings = new Beginnings(text, looks);
  }

  /**
   * Some keys of a group that is there.
   *
   * @param id before those of all its fields, and of no other part of the page
   * @param keys that are shown, in the order of the form
   */
  public Part part(String id, String title, Route at, Form<?> form, Collection<String> keys) {
    Slot slot = new Slot(text, at, "");
    Filling filling = new Filling(id, form, slot);
    form.keys().stream().filter(k -> keys.contains(k.name())).forEach(filling::add);
    return filling.part(title, "", Optional.empty());
  }

  /**
   * Things under names, each to be called something else, left out, or begun with once more.
   *
   * @param id before those of all its fields
   * @param thing what stands under each name
   */
  public Part names(String id, String title, Route at, Form<?> thing) {
    Set<String> names =
        text.value(at).orElseThrow() instanceof Value.Group(var things)
            ? things.keySet()
            : Set.of();
    List<Part> each =
        names.stream().map(name -> name(id, at.to(name), names.size(), thing)).toList();
    Part.Begin more =
        beginnings.named(Ids.below(id, "more"), "Add: " + Ids.bare(thing.what()), at, thing);
    return new Part(id, title, "", List.of(), each, List.of(more), Optional.empty());
  }

  private Part name(String id, Route at, int of, Form<?> thing) {
    String name = at.last().text();
    String below = Ids.below(id, name);
    return new Part(
        below,
        name,
        Ids.bare(thing.what()),
        List.of(called(below, at, thing.what())),
        List.of(),
        List.of(beginnings.copied(Ids.below(below, "more"), "Add: one like " + name, at)),
        of > 1 ? Optional.of(Target.remove(at)) : Optional.empty());
  }

  /** The name of a thing; all that calls it so follows. */
  private Field called(String below, Route at, String what) {
    String name = at.last().text();
    Field.Shown shown =
        new Field.Shown(
            Ids.below(below, "name"), "Name of " + name, List.of(), name, "", Beginnings.NAME_NOTE);
    return new Field(shown, at, typed -> renamed(at, typed.strip(), what));
  }

  private List<Target> renamed(Route at, String to, String what) {
    List<Target> targets = new ArrayList<>();
    for (Route call : new References(text, what, at.last().text()).in(file)) {
      targets.add(Target.put(call, Value.of(to)));
    }
    targets.add(Target.rename(at, to));
    return targets;
  }

  /**
   * A single key that is put into the text by another hand.
   *
   * @param written what it states now; empty for nothing
   * @param at where its problems are
   */
  public Field field(
      String id,
      Form<?> form,
      String key,
      String written,
      Route at,
      Function<Optional<Value>, List<Target>> put) {
    Key<?> found = form.keys().stream().filter(k -> k.name().equals(key)).findFirst().orElseThrow();
    Word<?> word = Looks.word(found.kind()).orElseThrow();
    return new Field(
        looks.field(id, form, found, word, written),
        at,
        typed -> put.apply(value(typed.strip(), found.kind())));
  }

  private static Optional<Value> value(String typed, Kind<?> kind) {
    return typed.isEmpty() ? Optional.empty() : Optional.of(written(typed, kind));
  }

  /** Where a list may stand, commas part its items. */
  static Value written(String typed, Kind<?> kind) {
    return kind instanceof ListOf<?> ? Field.listed(typed) : Value.of(typed);
  }

  /** The form of a group that may be one of several kinds. */
  static Optional<Form<?>> form(Kind<?> kind, Value thing) {
    return switch (kind) {
      case Form<?> form -> Optional.of(form);
      case OneOf<?>(_, var forms)
          when thing.at(Route.of(OneOf.KEY)).orElse(Value.of(""))
              instanceof Value.Text(String word) ->
          Optional.ofNullable(forms.get(word));
      default -> Optional.empty();
    };
  }

  /** A group of keys with its fields and parts. */
  private final class Filling {
    private final String id;
    private final Form<?> form;
    private final Slot slot;
    private final List<Field> fields = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Part.Begin> begins = new ArrayList<>();

    Filling(String id, Form<?> form, Slot slot) {
      this.id = id;
      this.form = form;
      this.slot = slot;
    }

    Part part(String title, String note, Optional<Target> leave) {
      return new Part(id, title, note, fields, parts, begins, leave);
    }

    Filling all() {
      form.keys().forEach(this::add);
      return this;
    }

    void add(Key<?> key) {
      Optional<Word<?>> word = Looks.word(key.kind());
      if (word.isEmpty()) {
        addGroup(key, key.kind());
      } else if (!(isOneWord(word.get()) && key.name().equals(OneOf.KEY))) {
        fields.add(field(key, word.get()));
      }
    }

    /** The kind of a tool is fixed once it is there: its other keys hang on it. */
    private static boolean isOneWord(Word<?> word) {
      return word.shape() instanceof Word.Shape.Choice(var words) && words.size() == 1;
    }

    private Field field(Key<?> key, Word<?> word) {
      String fieldId = Ids.below(id, key.name());
      Field.Shown shown = looks.field(fieldId, form, key, word, slot.written(key.name()));
      return new Field(shown, slot.route().to(key.name()), typed -> stated(key, typed.strip()));
    }

    private List<Target> stated(Key<?> key, String typed) {
      Optional<Value> value = value(typed, key.kind());
      List<Target> targets = new ArrayList<>(slot.with(key.name(), value));
      if (value.isPresent()) {
        others(key).forEach(other -> targets.addAll(slot.with(other.name(), Optional.empty())));
      }
      return targets;
    }

    /** Keys that are there and stand for the same, so that they go when this one comes. */
    private List<Key<?>> others(Key<?> key) {
      List<Key<?>> others = new ArrayList<>();
      form.picks().stream()
          .filter(p -> p.keys().contains(key))
          .flatMap(p -> p.keys().stream())
          .filter(k -> k != key && slot.value(k.name()).isPresent())
          .forEach(others::add);
      return others;
    }

    private void addGroup(Key<?> key, Kind<?> kind) {
      String below = Ids.below(id, key.name());
      Route at = slot.route().to(key.name());
      switch (kind) {
        case Short<?, ?>(_, String shortKey, _, Form<?> full) ->
            addForm(key, below, new Slot(text, at, shortKey), full);
        case Form<?> group -> addForm(key, below, new Slot(text, at, ""), group);
        case ListOf<?>(Form<?> item, _) -> parts.add(list(key, below, at, item));
        case Named<?> named -> parts.add(named(key, below, at, named));
        default -> {}
      }
    }

    private void addForm(Key<?> key, String below, Slot at, Form<?> group) {
      boolean there = at.value().isPresent();
      boolean needed = form.picks().stream().anyMatch(p -> isPicked(p, key));
      if (there || !needsMore(group)) {
        boolean optional = there && key.need() == Key.Need.OPTIONAL && !needed;
        parts.add(
            new Filling(below, group, at)
                .all()
                .part(
                    Ids.label(key.name()),
                    key.meaning(),
                    optional ? Optional.of(Target.remove(at.route())) : Optional.empty()));
      } else if (isChoiceOfGroups(group)) {
        parts.add(
            new Filling(below, group, at)
                .all()
                .part(Ids.label(key.name()), key.meaning(), Optional.empty()));
      } else {
        begins.add(begin(key, below, at.route(), group));
      }
    }

    private static boolean isPicked(Form.Pick pick, Key<?> key) {
      return pick.take() == Form.Take.EXACTLY_ONE && pick.keys().contains(key);
    }

    private Part.Begin begin(Key<?> key, String below, Route at, Form<?> group) {
      List<Target> instead =
          others(key).stream().map(k -> Target.remove(slot.route().to(k.name()))).toList();
      String title = Ids.label(key.name());
      return beginnings.group(
          below,
          instead.isEmpty() ? "Add: " + title : title + " instead",
          key.meaning(),
          at,
          group,
          instead);
    }

    /** Whether a group cannot be there with nothing in it. */
    private static boolean needsMore(Form<?> group) {
      return group.keys().stream().anyMatch(k -> k.need() == Key.Need.REQUIRED)
          || group.picks().stream().anyMatch(p -> p.take() == Form.Take.EXACTLY_ONE);
    }

    /** Whether a group only holds one of several others. */
    private static boolean isChoiceOfGroups(Form<?> group) {
      return group.keys().stream().allMatch(k -> k.kind() instanceof Form);
    }

    private Part list(Key<?> key, String below, Route at, Form<?> item) {
      Optional<Value> there = text.value(at);
      List<Part> each = new ArrayList<>();
      if (there.isPresent() && there.get() instanceof Value.Items(var items)) {
        for (int n = 1; n <= items.size(); n++) {
          each.add(item(below, n, at.item(n, items.size()), at, items.size(), item));
        }
      } else if (there.isPresent()) {
        each.add(item(below, 1, at, at, 1, item));
      }
      Part.Begin more =
          beginnings.item(Ids.below(below, "more"), "Add: " + Ids.bare(item.what()), at, item);
      return new Part(
          below,
          Ids.label(key.name()),
          key.meaning(),
          List.of(),
          each,
          List.of(more),
          Optional.empty());
    }

    private Part item(String below, int number, Route at, Route list, int of, Form<?> item) {
      return new Filling(Ids.below(below, Integer.toString(number)), item, new Slot(text, at, ""))
          .all()
          .part(
              Ids.label(Ids.bare(item.what())) + " " + number,
              "",
              Optional.of(Target.remove(of == 1 ? list : at)))
          .after(number == 1 ? List.of() : earlier(list, number, of));
    }

    /** What comes first in a list may count: of equal stock the first is taken. */
    private List<Target> earlier(Route list, int number, int of) {
      Route at = list.item(number, of);
      Route before = list.item(number - 1, of);
      return List.of(
          Target.put(before, text.value(at).orElseThrow()),
          Target.put(at, text.value(before).orElseThrow()));
    }

    private Part named(Key<?> key, String below, Route at, Named<?> named) {
      List<Part> each = new ArrayList<>();
      Optional<Value> there = text.value(at);
      if (there.isPresent() && there.get() instanceof Value.Group(var things)) {
        boolean last = things.size() == 1 && key.need() == Key.Need.OPTIONAL;
        things.forEach(
            (name, thing) ->
                form(named.thing(), thing)
                    .ifPresent(
                        f ->
                            each.add(
                                thing(
                                    below,
                                    name,
                                    last ? at : at.to(name),
                                    at.to(name),
                                    named.what(),
                                    f))));
      }
      return new Part(
          below,
          Ids.label(key.name()),
          key.meaning(),
          List.of(),
          each,
          more(Ids.below(below, "more"), at, named.thing()),
          Optional.empty());
    }

    private Part thing(
        String below, String name, Route leave, Route at, String what, Form<?> thing) {
      Filling filling = new Filling(Ids.below(below, name), thing, new Slot(text, at, ""));
      filling.fields.add(called(filling.id, at, what));
      return filling.all().part(name, Ids.bare(thing.what()), Optional.of(Target.remove(leave)));
    }

    private List<Part.Begin> more(String below, Route all, Kind<?> thing) {
      return switch (thing) {
        case Form<?> one ->
            List.of(beginnings.named(below, "Add: " + Ids.bare(one.what()), all, one));
        case OneOf<?> kinds -> beginnings.ofKinds(below, all, kinds);
        default -> List.of();
      };
    }
  }
}
