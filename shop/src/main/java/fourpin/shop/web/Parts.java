package fourpin.shop.web;

import fourpin.shop.fields.Part;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What of a page has to be shown anew.
 *
 * @param scope whether the page has the same fields as before
 * @param boxes those fields that look different now, where it has
 */
public record Parts(Scope scope, List<FieldPage.Box> boxes) {

  /** Whether fields came or went. */
  public enum Scope {
    ALL_FIELDS,
    SOME_FIELDS
  }

  /** Nothing of it. */
  static final Parts NONE = new Parts(Scope.SOME_FIELDS, List.of());

  /** The whole of it. */
  static final Parts ALL = new Parts(Scope.ALL_FIELDS, List.of());

  public Parts {
    boxes = List.copyOf(boxes);
  }

  public boolean allFields() {
    return scope == Scope.ALL_FIELDS;
  }

  /** Parts by what is to be begun in them; see {@link FieldPage#outline}. */
  static List<String> outline(FieldPage page, List<Part> parts) {
    return parts.stream()
        .flatMap(Part::all)
        .map(p -> p.id() + p.begins().stream().map(b -> b.id() + page.isBegun(b)).toList())
        .toList();
  }

  /**
   * @param touched the field that was written in; it is shown anew in any case
   */
  static Parts between(FieldPage before, FieldPage now, String touched) {
    Map<String, FieldPage.Box> former =
        before.allBoxes().stream().collect(Collectors.toMap(b -> b.shown().id(), b -> b));
    List<FieldPage.Box> boxes = now.allBoxes();
    boolean same =
        before.outline().equals(now.outline())
            && former.size() == boxes.size()
            && boxes.stream().allMatch(b -> former.containsKey(b.shown().id()));
    return new Parts(
        same ? Scope.SOME_FIELDS : Scope.ALL_FIELDS,
        boxes.stream()
            .filter(b -> !b.equals(former.get(b.shown().id())) || b.shown().id().equals(touched))
            .toList());
  }
}
