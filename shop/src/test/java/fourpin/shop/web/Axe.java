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
      const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"];
      axe.run(document, {runOnly: {type: "tag", values: tags}, resultTypes: ["violations"]}).then(
        (r) => done(r.passes.length === 0 ? ["no rule was tried"] : r.violations.flatMap((v) =>
          v.nodes.map((n) => v.id + ": " + n.html + " " + n.failureSummary))),
        (e) => done([String(e)]));
      """;

  private Axe() {}

  static List<String> violations(Browser browser) {
    browser.define("axe", SCRIPT);
    return browser.wordsLater(JUDGE);
  }

  private static String script() {
    try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
