package fourpin.shop.web;

import fourpin.shop.fields.Complaints;
import fourpin.shop.fields.Part;
import fourpin.shop.yaml.Problem;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What was typed to begin a group of keys.
 *
 * @param words by the keys of its blanks
 */
record Begun(Part.Begin begin, Map<String, String> words) {

  static Begun of(Part.Begin begin, Asked asked) {
    Map<String, String> words = new LinkedHashMap<>();
    begin.blanks().forEach(b -> words.put(b.key(), asked.form("b-" + b.key()).strip()));
    return new Begun(begin, words);
  }

  private String word(Part.Blank blank) {
    return Objects.requireNonNullElse(words.get(blank.key()), "");
  }

  /** Everything as it was typed, if something that must be there is not; else nothing. */
  Map<String, DesignPage.Typed> missing() {
    boolean complete =
        begin.blanks().stream()
            .noneMatch(b -> b.must() == Part.Must.BE_STATED && word(b).isEmpty());
    return complete ? Map.of() : said(this::absent, Optional.empty());
  }

  private Optional<String> absent(Part.Blank blank) {
    return blank.must() == Part.Must.BE_STATED && word(blank).isEmpty()
        ? Optional.of(
            DesignPage.Typed.sentences("It must be stated", "State " + blank.shown().note()))
        : Optional.empty();
  }

  Map<String, DesignPage.Typed> wrong(String rule, String remedy) {
    return said(_ -> Optional.empty(), Optional.of(DesignPage.Typed.sentences(rule, remedy)));
  }

  /** Each problem at its blank; what is about none of them at the whole. */
  Map<String, DesignPage.Typed> wrong(List<Problem> problems) {
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
    return DesignPage.Typed.sentences(problem.rule(), problem.remedy());
  }

  private Map<String, DesignPage.Typed> said(
      java.util.function.Function<Part.Blank, Optional<String>> trouble, Optional<String> whole) {
    Map<String, DesignPage.Typed> typed = new LinkedHashMap<>();
    begin
        .blanks()
        .forEach(b -> typed.put(b.shown().id(), new DesignPage.Typed(word(b), trouble.apply(b))));
    typed.put(begin.id(), new DesignPage.Typed("", whole));
    return typed;
  }
}
