package fourpin.shop.web.guard;

import fourpin.shop.store.Device;

/** Who asks. */
public sealed interface Visitor {

  /** A browser on the machine that serves. */
  record Host() implements Visitor {
    @Override
    public String name() {
      return "this machine";
    }
  }

  /** A paired device on the network. */
  record Paired(Device device) implements Visitor {
    @Override
    public String name() {
      return device.name();
    }
  }

  /** A device that is not paired, or no longer. */
  record Stranger() implements Visitor {
    @Override
    public String name() {
      return "a device that is not paired";
    }
  }

  /** What revisions and ticks call the device. */
  String name();
}
