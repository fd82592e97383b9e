package plainsward;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/**
 * Holds work to a time on one core. What takes longer is done again many times, since a virtual
 * machine is slow at first and is stopped at times; the shortest time counts.
 */
public final class FuzzClock {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final int AGAIN = 40;

  /** How many times slower code is while a fuzzer watches it ({@code -Dfuzz.slower=8}). */
  private static final int SLOWER = Integer.getInteger("fuzz.slower", 1);

  private FuzzClock() {}

  /**
   * Does the work; an error where it can't be done in time.
   *
   * @param millis the most it may take, in milliseconds of the processor
   */
  public static void within(long millis, Runnable work) {
    long limit = millis * 1_000_000 * SLOWER;
    long best = nanos(work);
    for (int i = 0; i < AGAIN && best > limit; i++) {
      best = Math.min(best, nanos(work));
    }
    if (best > limit) {
      throw new AssertionError("took " + best / 1_000_000 + " ms, over " + millis);
    }
  }

  private static long nanos(Runnable work) {
    long start = THREADS.getCurrentThreadCpuTime();
    work.run();
    return THREADS.getCurrentThreadCpuTime() - start;
  }
}
