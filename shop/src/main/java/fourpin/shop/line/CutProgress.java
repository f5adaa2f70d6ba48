package fourpin.shop.line;

import fourpin.cutting.Layout;
import fourpin.cutting.Watch;
import fourpin.measure.Figure;
import fourpin.measure.Unit;
import fourpin.plan.CutWatch;
import fourpin.plan.HowNear;
import fourpin.plan.LayoutFigures;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongSupplier;

/**
 * Tells a maker at the terminal how a search gets on, one line that is written over, and ends it
 * after the seconds given or when the maker has seen enough.
 */
final class CutProgress implements CutWatch {

  private static final double NANOS = 1e9;

  /** The rest of the time is for laying the sheets out anew and for writing. */
  private static final double SEARCHED = 0.9;

  private final Optional<PrintWriter> terminal;
  private final LongSupplier nanos;
  private final long start;
  private final double seconds;
  private final Unit unit;
  private final AtomicBoolean enough = new AtomicBoolean();
  private int written;

  /**
   * @param terminal where there is one
   * @param nanos a clock
   * @param seconds for all lots, above zero; empty means as long as the work goes
   * @param unit of areas
   */
  CutProgress(
      Optional<PrintWriter> terminal, LongSupplier nanos, Optional<Integer> seconds, Unit unit) {
    this.terminal = terminal;
    this.nanos = nanos;
    this.start = nanos.getAsLong();
    this.seconds = seconds.map(s -> s * SEARCHED).orElse(Double.POSITIVE_INFINITY);
    this.unit = unit;
  }

  /** The best so far will do, for this lot and all others; from any thread. */
  void enough() {
    enough.set(true);
  }

  private double gone() {
    return (nanos.getAsLong() - start) / NANOS;
  }

  @Override
  public long nanos() {
    return nanos.getAsLong();
  }

  @Override
  public Watch begin(LayoutFigures lot) {
    return new Watch() {
      @Override
      public void better(Layout layout) {
        write(line(lot.what(), lot.of(layout)));
      }

      @Override
      public boolean enough() {
        return enough.get() || gone() >= seconds;
      }
    };
  }

  /** Short, since a line that is broken can't be written over. */
  private String line(String lot, HowNear near) {
    return String.format(
        Locale.ROOT,
        "%s: %s, least %s; %s, least %s; %s (%.0f s; Ctrl-C takes it)",
        lot,
        text(near.sheets()),
        text(near.fewest()),
        text(near.cost()),
        text(near.least()),
        near.gapOfAll().map(gap -> text(gap) + " above").orElse(near.proof().words()),
        gone());
  }

  private String text(Figure figure) {
    return figure.value().text(unit);
  }

  /** The search is over, which a maker who ended it waits for; pages of many parts take a while. */
  void writing() {
    terminal.ifPresent(line -> line.println("Writing the layouts."));
    terminal.ifPresent(PrintWriter::flush);
  }

  /** Takes the line away again. */
  void clear() {
    write("");
    terminal.ifPresent(line -> line.print("\r"));
    terminal.ifPresent(PrintWriter::flush);
  }

  private void write(String text) {
    terminal.ifPresent(
        line -> line.print("\r" + text + " ".repeat(Math.max(0, written - text.length()))));
    terminal.ifPresent(PrintWriter::flush);
    written = text.length();
  }
}
