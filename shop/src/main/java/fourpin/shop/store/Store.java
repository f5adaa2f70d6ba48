package fourpin.shop.store;

/**
 * All that a shop keeps. May be used by many threads at once. What a method has returned from is on
 * the disk and outlasts a power cut.
 *
 * @see StoreException for what goes wrong at the disk or the server
 */
public interface Store extends AutoCloseable {

  Documents documents();

  Ticks ticks();

  Rack rack();

  Layouts layouts();

  Devices devices();

  @Override
  void close();
}
