package fourpin.shop.line;

import java.util.concurrent.CountDownLatch;

/**
 * Lets a command end in its own way when it is interrupted (Ctrl-C): it is told, and the program
 * goes only when it has closed this.
 */
final class Interrupt implements AutoCloseable {

  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread hook;

  /**
   * @param told runs in another thread than the command
   */
  Interrupt(Runnable told) {
    hook = new Thread(() -> wait(told), "interrupt");
    Runtime.getRuntime().addShutdownHook(hook);
  }

  private void wait(Runnable told) {
    told.run();
    try {
      done.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    try {
      Runtime.getRuntime().removeShutdownHook(hook);
    } catch (IllegalStateException e) {
      // The program is going already, and waits for this.
      done.countDown();
    }
  }
}
