package fourpin.shop.yaml;

import java.util.List;
import java.util.Optional;

/** A value in a file, with the place where it starts. */
public sealed interface Yaml {

  Place place();

  /** What it is, for messages: "a list". */
  String what();

  /** One value as it was written; whether it is a number is for its reader to say. */
  record Text(Place place, String text, Quotes quotes) implements Yaml {

    /** Whether nothing was given: no text, or YAML's word for nothing. */
    public boolean isNothing() {
      return quotes == Quotes.NONE
          && switch (text) {
            case "", "~", "null", "Null", "NULL" -> true;
            default -> false;
          };
    }

    @Override
    public String what() {
      return isNothing() ? "nothing" : "a single value";
    }
  }

  /** Whether a value stands between quotes. */
  enum Quotes {
    NONE,
    AROUND
  }

  /** A list. */
  record Items(Place place, List<Yaml> items) implements Yaml {
    public Items {
      items = List.copyOf(items);
    }

    @Override
    public String what() {
      return "a list";
    }
  }

  /** Keys with values, in file order, each key once. */
  record Entries(Place place, Layout layout, List<Entry> entries) implements Yaml {
    public Entries {
      entries = List.copyOf(entries);
    }

    public Optional<Entry> entry(String key) {
      return entries.stream().filter(e -> e.key().text().equals(key)).findFirst();
    }

    @Override
    public String what() {
      return "a group of keys";
    }
  }

  /** Whether entries stand between braces, where a comma ends a value. */
  enum Layout {
    LINES,
    BRACES
  }

  /** One key with its value. */
  record Entry(Text key, Yaml value) {}
}
