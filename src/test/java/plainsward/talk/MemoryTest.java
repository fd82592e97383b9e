package plainsward.talk;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** A support desk keeps one conversation open all day: it must not grow. */
class MemoryTest {
  private static final int EARLY = 1_000;
  private static final int LATE = 10_000;
  private static final long MOST_GROWTH = 8L << 20;
  private static final long LONGEST = 60;

  private static final List<String> TURNS =
      List.of(
          "4%d00 sq ft at 1.%d oz per thousand",
          "what about %d%d00?",
          "the front is %d%d00",
          "the blue jug is 1.%d%d oz per thousand",
          "in a %d gallon",
          "how much is that in ml",
          "no, i meant 3%d00",
          "when can i spray again");

  @Test
  void tenThousandTurnsTakeNoMoreMemoryThanAThousand() {
    long start = worked();
    Conversation talk = TalkCheck.conversation("us", "2026-05-01");
    talk(talk, 0, EARLY);
    long early = used();
    talk(talk, EARLY, LATE);
    long late = used();
    long seconds = (worked() - start) / 1_000_000_000L;
    System.out.printf(
        "heap kept: %,d at %d turns, %,d at %d; %d s of work%n", early, EARLY, late, LATE, seconds);
    assertTrue(late - early < MOST_GROWTH, () -> "grew by " + (late - early) + " bytes");
    assertTrue(seconds < LONGEST, () -> "took " + seconds + " s of work");
    assertNotNull(talk.answer("start over"));
  }

  /** The thread's own work, so that other work on the machine doesn't count. */
  private static long worked() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static void talk(Conversation talk, int from, int to) {
    for (int i = from; i < to; i++) {
      String turn = TURNS.get(i % TURNS.size());
      talk.answer(String.format(Locale.ROOT, turn, i % 9 + 1, i / 9 % 9 + 1));
    }
  }

  private static long used() {
    Runtime runtime = Runtime.getRuntime();
    for (int i = 0; i < 3; i++) {
      System.gc();
    }
    return runtime.totalMemory() - runtime.freeMemory();
  }
}
