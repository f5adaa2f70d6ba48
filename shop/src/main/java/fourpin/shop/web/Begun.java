package fourpin.shop.web;

import fourpin.shop.fields.Complaints;
import fourpin.shop.fields.Part;
import fourpin.shop.yaml.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * What was typed to begin a group of keys.
 *
 * @param words by the keys of its blanks
 */
record Begun(Part.Begin begin, Map<String, String> words) {

  /**
   * @param form what the form sends under a name
   */
  static Begun of(Part.Begin begin, UnaryOperator<String> form) {
    Map<String, String> words = new LinkedHashMap<>();
    begin.blanks().forEach(b -> words.put(b.key(), form.apply("b-" + b.key()).strip()));
    return new Begun(begin, words);
  }

  private String word(Part.Blank blank) {
    return Objects.requireNonNullElse(words.get(blank.key()), "");
  }

  /** Everything as it was typed, if something that must be there is not; else nothing. */
  Typing missing() {
    boolean complete =
        begin.blanks().stream()
            .noneMatch(b -> b.must() == Part.Must.BE_STATED && word(b).isEmpty());
    return complete ? Typing.NOTHING : said(this::absent, Optional.empty());
  }

  private Optional<String> absent(Part.Blank blank) {
    return blank.must() == Part.Must.BE_STATED && word(blank).isEmpty()
        ? Optional.of(Typing.sentences("It must be stated", "State " + blank.shown().note()))
        : Optional.empty();
  }

  Typing wrong(String rule, String remedy) {
    return said(_ -> Optional.empty(), Optional.of(Typing.sentences(rule, remedy)));
  }

  /** Everything as it was typed, where somebody else was first. */
  Typing taken(String by) {
    return wrong(by + " has put something there since you looked", "look at it first");
  }

  /** Each problem at its blank; what is about none of them at the whole. */
  Typing wrong(List<Problem> problems) {
    Optional<String> rest =
        problems.stream()
            .filter(p -> begin.blanks().stream().noneMatch(b -> isAbout(p, b)))
            .findFirst()
            .map(Begun::sentences);
    return said(
        b -> problems.stream().filter(p -> isAbout(p, b)).findFirst().map(Begun::sentences), rest);
  }

  private boolean isAbout(Problem problem, Part.Blank blank) {
    return Complaints.isAboutKey(problem, begin.at(), blank.key());
  }

  private static String sentences(Problem problem) {
    return Typing.sentences(problem.rule(), problem.remedy());
  }

  private Typing said(
      java.util.function.Function<Part.Blank, Optional<String>> trouble, Optional<String> whole) {
    Map<String, Typing.Typed> typed = new LinkedHashMap<>();
    begin
        .blanks()
        .forEach(b -> typed.put(b.shown().id(), new Typing.Typed(word(b), trouble.apply(b))));
    typed.put(begin.id(), new Typing.Typed("", whole));
    return new Typing(typed);
  }
}
