package fourpin.shop.yaml;

import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;

/** The parser's complaints in a maker's words. */
final class Syntax {

  /**
   * @param sign what the parser's complaint holds
   */
  private record Saying(String sign, String rule, String remedy) {}

  static final String UNREADABLE = "the file cannot be read from here on";
  static final String CHECK =
      "check the indents, quotes and brackets of this line and the one above";

  private static final Saying OTHER = new Saying("", UNREADABLE, CHECK);

  private static final List<Saying> SAYINGS =
      List.of(
          new Saying("TAB", "a tab stands where lines are indented", "indent with spaces"),
          new Saying(
              "mapping values are not allowed here",
              "a colon stands where no key can be",
              "give each key a line of its own, indented like its neighbours, or put quotes round a value that holds a colon"),
          new Saying(
              "sequence entries are not allowed here",
              "a list starts where none can be",
              "start the list on a line of its own below the key"),
          new Saying(
              "mapping keys are not allowed here",
              "a question mark stands where no key can be",
              "put quotes round the value"),
          new Saying(
              "could not find expected ':'",
              "a line without a colon stands among keys",
              "write it as key: value, or put quotes round a value of several lines"),
          new Saying(
              "scanning a quoted scalar found unexpected end of stream",
              "a quote is opened and not closed",
              "close it with the same sign; an inch mark is safest in single quotes, '31 1/2\"'"),
          new Saying(
              "found unexpected document separator",
              "a quote is opened and not closed before ---",
              "close it with the same sign"),
          new Saying(
              "found unknown escape character",
              "a backslash between double quotes",
              "use single quotes"),
          new Saying(
              "escape sequence of", "a backslash between double quotes", "use single quotes"),
          new Saying(
              "expected ',' or ']'",
              "a bracket is opened and not closed, or a comma is missing",
              "close the list with ], with commas between its items"),
          new Saying(
              "expected ',' or '}'",
              "a brace is opened and not closed, or a comma is missing",
              "close the group with }, with commas between its keys"),
          new Saying(
              "cannot start any token",
              "a value starts with a sign that YAML keeps for itself",
              "put quotes round the value"),
          new Saying(
              "expected <block end>, but found '<scalar>'",
              "something stands after a closed quote",
              "quote the whole value; inside single quotes write a quote twice, 'it''s'"),
          new Saying(
              "while parsing a block mapping",
              "this line is not indented like the keys above it",
              "give keys of one group the same indent"),
          new Saying(
              "while parsing a block collection",
              "this line is not indented like the items above it",
              "give items of one list the same indent"),
          new Saying(
              "undefined alias",
              "a value that starts with * repeats another",
              "write the value out"),
          new Saying("scanning an alias", "a value starts with *", "put quotes round the value"),
          new Saying("scanning an anchor", "a value starts with &", "put quotes round the value"),
          new Saying("scanning a tag", "a value starts with !", "put quotes round the value"),
          new Saying(
              "expected the node content",
              "a value is expected here",
              "write the value, or close the bracket or brace"),
          new Saying(
              "<document start>",
              "something stands outside the keys of the file",
              "leave out lines that start with % or ..."),
          new Saying(
              "directive", "a line starts with %", "leave it out, or put quotes round the value"),
          new Saying(
              "scanning a block scalar",
              "a value starts with | or >",
              "write the value on one line"));

  private Syntax() {}

  /** Where to look: where a quote, bracket or brace was opened that the file never closes. */
  static Place place(MarkedYamlEngineException e) {
    String problem = e.getProblem();
    boolean open = problem.contains("end of stream") || problem.contains("<stream end>");
    Optional<Mark> start = open ? e.getContextMark() : Optional.empty();
    return start
        .or(e::getProblemMark)
        .map(m -> new Place(m.getLine() + 1, m.getColumn() + 1))
        .orElse(Place.START);
  }

  static String rule(MarkedYamlEngineException e) {
    return saying(e).rule();
  }

  static String remedy(MarkedYamlEngineException e) {
    return saying(e).remedy();
  }

  private static Saying saying(MarkedYamlEngineException e) {
    String complaint = e.getContext() + " " + e.getProblem();
    return SAYINGS.stream().filter(s -> complaint.contains(s.sign())).findFirst().orElse(OTHER);
  }
}
