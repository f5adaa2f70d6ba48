package fourpin.shop.web;

import fourpin.casework.Finding;
import fourpin.casework.Finding.Remedy;
import fourpin.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A press on a cure, and what is said to it.
 *
 * @param number of the finding, from 0
 * @param which of its remedies, from 0
 */
record Press(int number, int which, Finding finding, Remedy remedy, Will will) {

  private static final Pattern SENT = Pattern.compile("(\\d{1,4})-(\\d{1,4})(-nonetheless)?");

  /** What the maker knows of it. */
  enum Will {
    FIRST,
    /** Having been told what it would spoil. */
    NONETHELESS
  }

  /**
   * @return nothing where it is none on anything that a plan finds
   */
  static Optional<Press> of(String sent, Plan plan) {
    Matcher matcher = SENT.matcher(sent);
    return matcher.matches()
        ? of(
            Integer.parseInt(matcher.group(1)),
            Integer.parseInt(matcher.group(2)),
            matcher.group(3) == null ? Will.FIRST : Will.NONETHELESS,
            plan)
        : Optional.empty();
  }

  private static Optional<Press> of(int number, int which, Will will, Plan plan) {
    return at(plan.findings(), number)
        .flatMap(f -> at(f.remedies(), which).map(r -> new Press(number, which, f, r, will)));
  }

  private static <T> Optional<T> at(List<T> all, int index) {
    return index < all.size() ? Optional.of(all.get(index)) : Optional.empty();
  }

  /** What is sent for it. */
  static String sent(int number, int which) {
    return number + "-" + which;
  }

  static String nonetheless(String sent) {
    return sent + "-nonetheless";
  }

  boolean mustAsk(Curing.Trial.Would would) {
    return will == Will.FIRST && !would.spoilt().isEmpty();
  }

  String notYet() {
    return "Not done yet: it would cure "
        + Remark.label(number)
        + " and spoil something else; see"
        + " there.";
  }

  /** What it would spoil, where it stands in the margin. */
  Typing question(Curing.Trial.Would would) {
    String text =
        "It would cure "
            + Remark.label(number)
            + also(would)
            + ", and bring what would spoil the work: "
            + spoilt(would);
    return new Typing(Map.of(id(sent(number, which)), new Typing.Typed("", Optional.of(text))));
  }

  /** Of what is said at a cure. */
  static String id(String sent) {
    return "cure-" + sent;
  }

  private static String spoilt(Curing.Trial.Would would) {
    return would.spoilt().stream()
        .collect(
            Collectors.groupingBy(Finding::kind, java.util.LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .map(Press::first)
        .collect(Collectors.joining(" "));
  }

  private static String first(List<Finding> alike) {
    String what = DesignPage.capital(alike.getFirst().what());
    String more = alike.size() > 1 ? " And " + (alike.size() - 1) + " more like it." : "";
    return (what.endsWith(".") ? what : what + ".") + more;
  }

  private static String also(Curing.Trial.Would would) {
    return would.besides().isEmpty() ? "" : ", together with: " + besides(would);
  }

  private static String besides(Curing.Trial.Would would) {
    return String.join("; ", would.besides());
  }

  String why(Curing.Trial.Would would) {
    return remedy.what() + also(would);
  }

  String done(Curing.Trial.Would would) {
    String more =
        would.besides().isEmpty() ? "" : " And with it, so that it holds: " + besides(would) + ".";
    return "Done: " + remedy.what() + "." + more + left(would);
  }

  private static String left(Curing.Trial.Would would) {
    return would.spoilt().isEmpty()
        ? ""
        : " It has brought what would spoil the work; see the margin, or take it back.";
  }

  /** To what comes of it on top of what others have changed meanwhile. */
  Desk.Objection objection(Curing.Trial.Would would) {
    return (newest, then) ->
        Curing.isThere(newest, finding)
            ? Curing.unproven(then, finding).or(() -> spoilsMore(would, then))
            : Optional.of(
                "What others have changed since you looked has cured that; nothing was changed.");
  }

  private static Optional<String> spoilsMore(Curing.Trial.Would would, Plan then) {
    return Curing.spoilt(would.then().plan(), then).isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Others have changed this job since you looked, and with that it would spoil something"
                + " else; nothing was changed.");
  }
}
