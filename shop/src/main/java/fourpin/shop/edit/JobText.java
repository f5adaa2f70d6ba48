package fourpin.shop.edit;

import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * The text of a job, with what it means. A change to it keeps comments, order, quotes and layout of
 * all else; each is read back, and what does not come out as it was meant is not made.
 */
public final class JobText {

  private static final String LAYOUT =
      "the file is laid out there in a way that only an editor of text can change";

  private final String text;
  private final Node root;
  private final Value value;

  private JobText(String text, Node root) {
    this.text = text;
    this.root = root;
    this.value = Nodes.value(root);
  }

  /**
   * @param text that the reader of job files could read to its end
   * @throws IllegalArgumentException if it is no YAML
   */
  public static JobText of(String text) {
    return parsed(text)
        .orElseThrow(() -> new IllegalArgumentException("the text of a job cannot be read"));
  }

  private static Optional<JobText> parsed(String text) {
    String unmarked = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return Nodes.parse(unmarked).map(root -> new JobText(text, root));
  }

  /** A new file. @param comment one line on top */
  public static String written(String comment, Value value) {
    return "# " + comment + "\n" + String.join("\n", BlockText.below(value)) + "\n";
  }

  public String text() {
    return text;
  }

  /** What the whole of it means. */
  public Value value() {
    return value;
  }

  public Optional<Value> value(Route route) {
    return value.at(route);
  }

  /** The single value at the end of a way, as it would be written alone. */
  public Optional<String> word(Route route) {
    return value(route)
        .flatMap(v -> v instanceof Value.Text(String w) ? Optional.of(w) : Optional.empty());
  }

  /** Makes a change if what it changes is still there. */
  public Edited with(Edit edit) {
    if (!holds(edit)) {
      return new Edited.Conflict(edit, value(edit.route()));
    }
    if (edit.change() instanceof Change.Rename(String to)
        && value(edit.route().parent().to(to)).isPresent()) {
      return new Edited.Refused(edit, "there is one of this name already");
    }
    return wanted(edit)
        .flatMap(wanted -> spliced(edit).filter(made -> made.value.equals(wanted)))
        .<Edited>map(made -> new Edited.Done(made, inverse(edit, made)))
        .orElseGet(() -> new Edited.Refused(edit, LAYOUT));
  }

  private boolean holds(Edit edit) {
    Optional<Value> now = value(edit.route());
    return leadsOn(edit.route())
        && switch (edit.change()) {
          case Change.Insert _ -> true;
          case Change.Rename _ -> now.isPresent();
          case Change.Put _, Change.Remove _ -> now.equals(edit.before());
        };
  }

  /** Whether each list on the way has still as many items as it had. */
  private boolean leadsOn(Route route) {
    for (int i = 0; i < route.steps().size(); i++) {
      if (route.steps().get(i) instanceof Route.Item(_, int of) && size(route.first(i)) != of) {
        return false;
      }
    }
    return true;
  }

  private int size(Route list) {
    return value(list).map(v -> v instanceof Value.Items(var items) ? items.size() : -1).orElse(-1);
  }

  private Optional<Value> wanted(Edit edit) {
    try {
      return Optional.of(value.with(edit.route(), edit.change()));
    } catch (IllegalArgumentException notThere) {
      return Optional.empty();
    }
  }

  private Optional<JobText> spliced(Edit edit) {
    return new Splice(text).with(root, edit.route(), edit.change()).flatMap(JobText::parsed);
  }

  private Edit inverse(Edit edit, JobText made) {
    Route route = edit.route();
    return switch (edit.change()) {
      case Change.Insert(Value now) ->
          new Edit(resized(route, 1), Optional.of(now), new Change.Remove());
      case Change.Remove() ->
          route.last() instanceof Route.Item
              ? new Edit(
                  resized(route, -1),
                  Optional.empty(),
                  new Change.Insert(edit.before().orElseThrow()))
              : new Edit(route, Optional.empty(), new Change.Put(edit.before().orElseThrow()));
      case Change.Rename(String to) ->
          new Edit(route.parent().to(to), edit.before(), new Change.Rename(route.last().text()));
      case Change.Put(Value now) ->
          edit.before()
              .map(before -> new Edit(route, Optional.of(now), new Change.Put(before)))
              .orElseGet(() -> takenBack(route, made));
    };
  }

  /** With the groups that were made for it. */
  private Edit takenBack(Route route, JobText made) {
    int there = 0;
    while (value(route.first(there + 1)).isPresent()) {
      there++;
    }
    Route first = route.first(there + 1);
    return new Edit(first, made.value(first), new Change.Remove());
  }

  private static Route resized(Route route, int by) {
    return route.last() instanceof Route.Item(int number, int of)
        ? route.parent().item(number, of + by)
        : route;
  }
}
