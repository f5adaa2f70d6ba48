package fourpin.shop.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;

/**
 * A shop's network between a device and a server, without leaving this machine. It says of each
 * request that it came by way of it (Via, RFC 9110, 7.6.3), so that the guard takes whoever asks
 * for a device and not for the machine itself; and it can be away for a while.
 */
final class Relay implements AutoCloseable {

  /** Whether what is sent arrives. */
  enum Line {
    UP,
    AWAY
  }

  private static final String END_OF_HEAD = "\r\n\r\n";

  private final ServerSocket door;
  private final int server;
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

  String origin() {
    return "http://127.0.0.1:" + door.getLocalPort();
  }

  void is(Line wanted) {
    line = wanted;
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

  /** One request and its answer; the browser comes anew for the next. */
  private void pass(Socket client) {
    try (client) {
      if (line == Line.AWAY) {
        return;
      }
      try (Socket there = new Socket(InetAddress.getLoopbackAddress(), server)) {
        there.getOutputStream().write(marked(head(client.getInputStream())));
        Thread.ofVirtual().start(() -> pour(client, there));
        there.getInputStream().transferTo(client.getOutputStream());
      }
    } catch (IOException e) {
      // One of the two has gone, as on any network.
      return;
    }
  }

  private static String head(InputStream in) throws IOException {
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    while (!head.toString(StandardCharsets.ISO_8859_1).endsWith(END_OF_HEAD)) {
      int next = in.read();
      if (next < 0) {
        throw new IOException("no request");
      }
      head.write(next);
    }
    return head.toString(StandardCharsets.ISO_8859_1);
  }

  private static byte[] marked(String head) {
    String ours = "\r\nVia: 1.1 relay\r\nConnection: close\r\n";
    return head.replaceFirst("(?i)\r\nConnection: [^\r]*(?=\r\n)", "")
        .replaceFirst("\r\n", ours)
        .getBytes(StandardCharsets.ISO_8859_1);
  }

  /** What follows the head. */
  private static void pour(Socket client, Socket there) {
    try {
      OutputStream out = there.getOutputStream();
      client.getInputStream().transferTo(out);
    } catch (IOException e) {
      // The answer is through, and the line was shut.
      return;
    }
  }

  @Override
  public void close() {
    try {
      door.close();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
