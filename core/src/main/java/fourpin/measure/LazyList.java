package fourpin.measure;

import java.util.AbstractList;
import java.util.Iterator;
import java.util.List;
import java.util.RandomAccess;
import java.util.Spliterator;
import java.util.function.Supplier;

/**
 * An unmodifiable list that is worked out when it is first looked into: for what only some readers
 * of a larger value want to see. See {@link Lazy}.
 */
public final class LazyList<E> extends AbstractList<E> implements RandomAccess {

  private final Lazy<List<E>> list;

  private LazyList(Supplier<List<E>> work) {
    this.list = Lazy.of(() -> List.copyOf(work.get()));
  }

  public static <E> List<E> of(Supplier<List<E>> work) {
    return new LazyList<>(work);
  }

  /** Like {@link List#copyOf}, but without looking into a list that is not worked out yet. */
  public static <E> List<E> copyOf(List<E> list) {
    return list instanceof LazyList<E> ? list : List.copyOf(list);
  }

  @Override
  public E get(int index) {
    return list.get().get(index);
  }

  @Override
  public int size() {
    return list.get().size();
  }

  @Override
  public Iterator<E> iterator() {
    return list.get().iterator();
  }

  @Override
  public Spliterator<E> spliterator() {
    return list.get().spliterator();
  }
}
