package plainsward.terminal;

import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;

/**
 * Shows on standard error that something goes on, and how far it is, once it has taken half a
 * second; only where standard error is a terminal. What it wrote is wiped off at the end.
 */
final class Waiting implements AutoCloseable {
  private static final long PATIENCE_MILLIS = 500;
  private static final long STEP_MILLIS = 200;
  private static final int BAR = 20;
  private static final String TURNS = "|/-\\";

  private final Out err;
  private final String what;
  private final BooleanSupplier isTerminal;
  private final AtomicLong done = new AtomicLong();
  private final AtomicLong total = new AtomicLong();
  private final boolean moves;
  private final Thread shower = new Thread(this::show, "waiting");
  private int widest;

  private Waiting(Out err, String what, boolean moves, BooleanSupplier isTerminal) {
    this.err = err;
    this.moves = moves;
    this.what = what;
    this.isTerminal = isTerminal;
    shower.setDaemon(true);
  }

  /**
   * Begins to wait.
   *
   * @param err standard error
   * @param what what goes on, as in "reading your notes"
   * @param moves whether it may change on the screen; else it is said once, for a screen reader
   * @param isTerminal whether standard error is a terminal; asked only where it takes long
   */
  static Waiting on(Out err, String what, boolean moves, BooleanSupplier isTerminal) {
    Waiting waiting = new Waiting(err, what, moves, isTerminal);
    waiting.shower.start();
    return waiting;
  }

  /** Tells how many are done, and of how many; 0 where that is not known. */
  void at(long finished, long all) {
    done.set(finished);
    total.set(all);
  }

  private void show() {
    try {
      Thread.sleep(PATIENCE_MILLIS);
      if (!moves && isTerminal.getAsBoolean()) {
        err.line("Please wait: " + what + ".");
        err.flush();
      }
      for (int turn = 0; moves && isTerminal.getAsBoolean(); turn++) {
        write(text(turn));
        Thread.sleep(STEP_MILLIS);
      }
    } catch (InterruptedException over) {
      Thread.currentThread().interrupt();
    }
  }

  private String text(int turn) {
    long finished = done.get();
    long all = total.get();
    if (all <= 0) {
      String count = finished == 0 ? "" : String.format(Locale.US, ", %,d done", finished);
      return TURNS.charAt(turn % TURNS.length()) + " " + what + count;
    }
    int full = (int) (BAR * Math.min(finished, all) / all);
    String bar = "#".repeat(full) + ".".repeat(BAR - full);
    return String.format(Locale.US, "[%s] %s, %,d of %,d", bar, what, finished, all);
  }

  private synchronized void write(String text) {
    String wiped = " ".repeat(Math.max(0, widest - text.length()));
    widest = Math.max(widest, text.length());
    err.text("\r" + text + wiped);
    err.flush();
  }

  /** Wipes off what was shown. */
  @Override
  public void close() {
    shower.interrupt();
    synchronized (this) {
      if (widest > 0) {
        err.text("\r" + " ".repeat(widest) + "\r");
        err.flush();
        widest = 0;
      }
    }
    try {
      shower.join(PATIENCE_MILLIS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
