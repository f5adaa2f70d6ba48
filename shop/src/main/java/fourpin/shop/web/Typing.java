package fourpin.shop.web;

import fourpin.shop.fields.Field;
import fourpin.shop.fields.Part;
import java.util.Map;
import java.util.Optional;

/**
 * What was typed and not taken, by the ids of fields and of groups that were to be begun.
 *
 * @param all empty when a page is opened
 */
record Typing(Map<String, Typed> all) {

  static final Typing NOTHING = new Typing(Map.of());

  Typing {
    all = Map.copyOf(all);
  }

  /**
   * One thing that was typed.
   *
   * @param trouble why it was not taken, in sentences; nothing where only what stands beside it was
   *     wrong
   */
  record Typed(String words, Optional<String> trouble) {

    static Typed wrong(String words, String rule, String remedy) {
      return new Typed(words, Optional.of(sentences(rule, remedy)));
    }
  }

  static String sentences(String rule, String remedy) {
    String end = remedy.endsWith("?") ? "" : ".";
    return DesignPage.capital(rule) + ". " + DesignPage.capital(remedy) + end;
  }

  /** What is said above a page whose field somebody else has changed. */
  static String notFirst(String label, String typed) {
    return label + " was not changed to " + shown(typed) + ": somebody else was first.";
  }

  private static String shown(String typed) {
    return typed.isBlank() ? "nothing" : typed.strip();
  }

  /** What was typed into a field that somebody else has changed. @param theirs what stands there */
  static Typing taken(String field, String typed, String by, String theirs) {
    return new Typing(
        Map.of(
            field,
            Typed.wrong(
                typed,
                by + " has changed it to " + theirs + " since you looked",
                "enter yours again if it is to stand")));
  }

  /** What was typed into a field and refused. @param reason in sentences */
  static Typing refused(String field, String typed, String reason) {
    return new Typing(Map.of(field, new Typed(typed, Optional.of(reason))));
  }

  Optional<Typed> find(String id) {
    return Optional.ofNullable(all.get(id));
  }

  FieldPage.Box box(Field.Shown shown) {
    return new FieldPage.Box(
        shown,
        find(shown.id()).map(Typed::words).orElse(shown.written()),
        find(shown.id()).flatMap(Typed::trouble));
  }

  /** What a press on a cure was answered. @param sent by it */
  Optional<String> question(String sent) {
    return find(Press.id(sent)).flatMap(Typed::trouble);
  }

  Optional<String> trouble(Part.Begin begin) {
    return find(begin.id()).flatMap(Typed::trouble);
  }

  boolean isBegun(Part.Begin begin) {
    return find(begin.id()).isPresent();
  }
}
