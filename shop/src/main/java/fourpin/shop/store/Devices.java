package fourpin.shop.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Paired devices. They are in no backup: a restored store asks for pairing anew. */
public interface Devices {

  /**
   * Those whose pairing has not expired, by name.
   *
   * @param now those that expire at this moment or before are gone
   */
  List<Device> all(Instant now);

  /**
   * Keeps a device.
   *
   * @param tokenDigest of the secret that it will show; the secret itself is not kept
   * @param name is made different from those of other devices by a number
   */
  Device pair(String name, String tokenDigest, Instant now, Instant expires);

  /** The device that shows this secret; nothing if there is none, or its pairing has expired. */
  Optional<Device> with(String tokenDigest, Instant now);

  /** Ends a pairing at once. */
  void unpair(String id);
}
