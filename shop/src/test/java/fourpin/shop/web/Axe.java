package fourpin.shop.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Has axe-core judge the page that a browser shows, by the rules of WCAG 2.2, levels A and AA. */
final class Axe {

  private static final String SCRIPT = script();

  /** One line for each element that breaks a rule, and one if no rule was found to hold. */
  private static final String JUDGE =
      """
      const done = arguments[arguments.length - 1];
      axe.run(document, {runOnly: arguments[0], resultTypes: ["violations"]}).then(
        (r) => done(r.passes.length === 0 ? ["no rule was tried"] : r.violations.flatMap((v) =>
          v.nodes.map((n) => v.id + ": " + n.html + " " + n.failureSummary))),
        (e) => done([String(e)]));
      """;

  private Axe() {}

  static List<String> violations(Browser browser) {
    return judge(
        browser, List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"));
  }

  /** By the rule that asks for colours only. */
  static List<String> contrasts(Browser browser) {
    return judge(browser, List.of("color-contrast"));
  }

  /**
   * @param which tags or names of rules
   */
  private static List<String> judge(Browser browser, List<String> which) {
    browser.define("axe", SCRIPT);
    return browser.wordsLater(JUDGE, which);
  }

  private static String script() {
    try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
