package fourpin.shop.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The way from the top of a job to a value. An item of a list knows how many there were when the
 * way was described, so that it is not followed in a list that has grown or shrunk since.
 *
 * <p>As text: {@code cases.bookcase.bays.2of3.width}.
 */
public record Route(List<Step> steps) {

  /** One step. */
  public sealed interface Step {
    String text();
  }

  /** To what stands under a key. */
  public record Key(String name) implements Step {
    @Override
    public String text() {
      return name;
    }
  }

  /**
   * To an item of a list.
   *
   * @param number from 1
   * @param of how many the list has
   */
  public record Item(int number, int of) implements Step {
    @Override
    public String text() {
      return number + "of" + of;
    }
  }

  public static final Route TOP = new Route(List.of());

  public Route {
    steps = List.copyOf(steps);
  }

  public static Route of(String... keys) {
    Route route = TOP;
    for (String key : keys) {
      route = route.to(key);
    }
    return route;
  }

  public Route to(String key) {
    return plus(new Key(key));
  }

  public Route item(int number, int of) {
    return plus(new Item(number, of));
  }

  private Route plus(Step step) {
    List<Step> all = new ArrayList<>(steps);
    all.add(step);
    return new Route(all);
  }

  public boolean isEmpty() {
    return steps.isEmpty();
  }

  public Step last() {
    return steps.getLast();
  }

  /** All but the last step. */
  public Route parent() {
    return first(steps.size() - 1);
  }

  public Route first(int count) {
    return new Route(steps.subList(0, count));
  }

  public String text() {
    return steps.stream().map(Step::text).collect(Collectors.joining("."));
  }
}
