package fourpin.shop.fields;

import fourpin.shop.edit.Change;
import fourpin.shop.edit.Edit;
import fourpin.shop.edit.JobText;
import fourpin.shop.edit.Route;
import fourpin.shop.edit.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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

  /** Calls what stands there something else. */
  public static Target rename(Route route, String to) {
    return new Target(route, new Change.Rename(to));
  }

  /** Puts one more item at the end of a list, or begins one. */
  public static Target append(JobText text, Route list, Value item) {
    Optional<Value> there = text.value(list);
    if (there.isPresent() && there.get() instanceof Value.Items(var items)) {
      Route end = list.item(items.size() + 1, items.size());
      return new Target(end, new Change.Insert(item));
    }
    List<Value> all = new ArrayList<>(there.stream().toList());
    all.add(item);
    return put(list, Value.list(all));
  }

  /** As edits of the text that the maker saw. */
  public static List<Edit> edits(List<Target> targets, JobText seen) {
    return targets.stream().map(t -> Edit.on(seen, t.route(), t.change())).toList();
  }
}
