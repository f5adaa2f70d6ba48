package fourpin.shop.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A shop's network between a device and a server, without leaving this machine: it passes on what
 * it cannot read, and can be away for a while.
 */
final class Relay implements AutoCloseable {

  /** Whether what is sent arrives. */
  enum Line {
    UP,
    AWAY
  }

  private final ServerSocket door;
  private final int server;
  private final Set<Socket> open = ConcurrentHashMap.newKeySet();
  private volatile Line line = Line.UP;

  private Relay(ServerSocket door, int server) {
    this.door = door;
    this.server = server;
  }

  /**
   * @param server port of the server on this machine
   */
  static Relay to(int server) {
    try {
      Relay relay = new Relay(new ServerSocket(0, 0, InetAddress.getLoopbackAddress()), server);
      Thread.ofVirtual().start(relay::welcome);
      return relay;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  int port() {
    return door.getLocalPort();
  }

  /** Lines that are open are cut when it goes away. */
  void is(Line wanted) {
    line = wanted;
    if (wanted == Line.AWAY) {
      open.forEach(Relay::shut);
    }
  }

  private static void shut(Socket socket) {
    try {
      socket.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void welcome() {
    while (!door.isClosed()) {
      try {
        Socket client = door.accept();
        Thread.ofVirtual().start(() -> pass(client));
      } catch (SocketException e) {
        return; // closed
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }

  private void pass(Socket client) {
    open.add(client);
    try (client) {
      if (line == Line.AWAY) {
        return;
      }
      try (Socket there = new Socket(InetAddress.getLoopbackAddress(), server)) {
        Thread.ofVirtual().start(() -> pour(client, there));
        there.getInputStream().transferTo(client.getOutputStream());
      }
    } catch (IOException e) {
      // One of the two has gone, as on any network.
      return;
    } finally {
      open.remove(client);
    }
  }

  private static void pour(Socket client, Socket there) {
    try {
      client.getInputStream().transferTo(there.getOutputStream());
      there.shutdownOutput();
    } catch (IOException e) {
      // The answer is through, and the line was shut.
      return;
    }
  }

  @Override
  public void close() {
    shutDoor();
    open.forEach(Relay::shut);
  }

  private void shutDoor() {
    try {
      door.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
