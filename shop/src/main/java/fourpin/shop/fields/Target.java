package fourpin.shop.fields;

import fourpin.shop.edit.Change;
import fourpin.shop.edit.Edit;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import java.util.List;

/** One change of a file's text, of those that a wish comes to. */
public record Target(Route route, Change change) {

  /** Puts a value there. */
  public static Target put(Route route, Value value) {
    return new Target(route, new Change.Put(value));
  }

  /** Takes what stands there away. */
  public static Target remove(Route route) {
    return new Target(route, new Change.Remove());
  }

  /** As edits of the text that the maker saw. */
  public static List<Edit> edits(List<Target> targets, JobText seen) {
    return targets.stream().map(t -> Edit.on(seen, t.route(), t.change())).toList();
  }
}
