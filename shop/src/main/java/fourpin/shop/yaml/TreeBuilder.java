package fourpin.shop.yaml;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;

/** Builds the tree from the parser's events; refuses repeats, tags and too much of anything. */
final class TreeBuilder {

  /** A job file goes seven deep. */
  private static final int MOST_DEPTH = 20;

  /** A hundred cases of twelve bays take about a fifth. */
  private static final int MOST_VALUES = 50_000;

  /** Carries what was found so far out of a file that is not worth reading on. */
  static final class Stop extends RuntimeException {
    private static final long serialVersionUID = 1;
    private final transient List<Problem> problems;

    Stop(List<Problem> problems) {
      super(null, null, false, false);
      this.problems = List.copyOf(problems);
    }

    List<Problem> problems() {
      return problems;
    }
  }

  private final Iterator<Event> events;
  private final FileKind file;
  private final List<Problem> problems = new ArrayList<>();
  private int values;
  private Place reached = Place.START;

  TreeBuilder(Iterator<Event> events, FileKind file) {
    this.events = events;
    this.file = file;
  }

  Tree tree() {
    expect(Event.ID.StreamStart);
    Event first = next();
    if (!(first instanceof DocumentStartEvent)) {
      throw stop(Place.START, "the file", "it is empty", file.start());
    }
    Yaml root = value(next(), Path.top(file), 0);
    expect(Event.ID.DocumentEnd);
    refuseMore(next());
    return new Tree(entries(root), problems);
  }

  private Event next() {
    Event event = events.next();
    reached = place(event);
    return event;
  }

  /** Where the last thing starts that could be read. */
  Place reached() {
    return reached;
  }

  private void expect(Event.ID id) {
    Event event = next();
    if (event.getEventId() != id) {
      throw new IllegalStateException("the parser gave " + event + " in place of " + id);
    }
  }

  private void refuseMore(Event event) {
    if (event.getEventId() != Event.ID.StreamEnd) {
      throw stop(
          place(event),
          "the file",
          "a second document starts here",
          "keep one " + file.word() + " in a file, without a line of --- in it");
    }
  }

  private Optional<Yaml.Entries> entries(Yaml root) {
    if (root instanceof Yaml.Entries found) {
      return Optional.of(found);
    }
    problems.add(
        new Problem(
            root.place(),
            "the file",
            "a " + file.word() + " file is a group of keys, not " + root.what(),
            file.line()));
    return Optional.empty();
  }

  private Yaml value(Event event, Path path, int depth) {
    if (++values > MOST_VALUES) {
      throw stop(place(event), "the file", "it holds more than 50,000 values", file.tooLarge());
    }
    if (depth > MOST_DEPTH) {
      throw stop(
          place(event),
          "the file",
          "values stand more than 20 deep here",
          "close the braces and brackets before");
    }
    refuseTag(event, path);
    return switch (event) {
      case ScalarEvent scalar -> text(scalar);
      case SequenceStartEvent list -> items(list, path, depth);
      case MappingStartEvent mapping -> entries(mapping, path, depth);
      case AliasEvent alias -> alias(alias, path);
      default -> throw new IllegalStateException("the parser gave " + event + " as a value");
    };
  }

  private static Yaml.Text text(ScalarEvent scalar) {
    return new Yaml.Text(
        place(scalar), scalar.getValue(), scalar.isPlain() ? Yaml.Quotes.NONE : Yaml.Quotes.AROUND);
  }

  private Yaml items(SequenceStartEvent list, Path path, int depth) {
    List<Yaml> items = new ArrayList<>();
    for (Event e = next(); e.getEventId() != Event.ID.SequenceEnd; e = next()) {
      items.add(value(e, path.item(items.size() + 1), depth + 1));
    }
    return new Yaml.Items(place(list), items);
  }

  private Yaml entries(MappingStartEvent mapping, Path path, int depth) {
    Map<String, Yaml.Entry> entries = new LinkedHashMap<>();
    for (Event e = next(); e.getEventId() != Event.ID.MappingEnd; e = next()) {
      Yaml.Text key = key(e, path, depth);
      Yaml value = value(next(), path.to(key.text()), depth + 1);
      Yaml.Entry former = entries.putIfAbsent(key.text(), new Yaml.Entry(key, value));
      if (former != null) {
        refuse(
            key.place(),
            path.to(key.text()),
            "it is stated twice, first on line " + former.key().place().line(),
            "keep one of them");
      }
    }
    boolean braces = mapping.getFlowStyle() == org.snakeyaml.engine.v2.common.FlowStyle.FLOW;
    return new Yaml.Entries(
        place(mapping),
        braces ? Yaml.Layout.BRACES : Yaml.Layout.LINES,
        List.copyOf(entries.values()));
  }

  private Yaml.Text key(Event event, Path path, int depth) {
    Yaml key = value(event, path, depth + 1);
    if (key instanceof Yaml.Text text) {
      if (text.text().equals("<<")) {
        refuse(
            text.place(), path.to("<<"), "keys are not merged into others", "write them out here");
      }
      return text;
    }
    throw stop(
        key.place(),
        path.name(),
        "a key is a word, not " + key.what(),
        "put quotes round a value that starts with { or [");
  }

  private Yaml alias(AliasEvent alias, Path path) {
    refuse(place(alias), path, "a value is not repeated by *" + alias.getAlias(), file.repeat());
    return new Yaml.Text(place(alias), "", Yaml.Quotes.NONE);
  }

  private void refuseTag(Event event, Path path) {
    Optional<String> tag =
        switch (event) {
          case ScalarEvent scalar -> scalar.getTag();
          case CollectionStartEvent collection -> collection.getTag();
          default -> Optional.empty();
        };
    tag.ifPresent(
        t ->
            refuse(
                place(event),
                path,
                "a value has no tag like " + Problem.quoted(t),
                "leave out what starts with !"));
    if (event instanceof NodeEvent node && !(event instanceof AliasEvent)) {
      node.getAnchor()
          .ifPresent(
              a -> refuse(place(event), path, "a value has no anchor like &" + a, "leave it out"));
    }
  }

  private void refuse(Place place, Path path, String rule, String remedy) {
    problems.add(new Problem(place, path.name(), rule, remedy));
  }

  private Stop stop(Place place, String thing, String rule, String remedy) {
    List<Problem> all = new ArrayList<>(problems);
    all.add(new Problem(place, thing, rule, remedy));
    return new Stop(all);
  }

  private static Place place(Event event) {
    return event
        .getStartMark()
        .map(m -> new Place(m.getLine() + 1, m.getColumn() + 1))
        .orElse(Place.START);
  }
}
