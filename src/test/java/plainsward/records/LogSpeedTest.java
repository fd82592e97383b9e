package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

class LogSpeedTest {
  private static final int ENTRIES = 100_000;
  private static final LocalDate START = LocalDate.of(2020, 1, 1);
  private static final double MOST_MILLISECONDS = 50;

  @Test
  void aLogOf100000EntriesSaysWhenAgainInUnder50Milliseconds(
      @TempDir Path home, TestReporter reporter) throws IOException {
    write(home.resolve("log.jsonl"));
    RecordBook book = RecordBook.open(home);
    Label label = Label.named("label 7").interval(Period.ofDays(30)).label();
    long loading = System.nanoTime();
    assertEquals(ENTRIES, book.log().entries().size());
    long loaded = System.nanoTime();
    times(book, label);
    double[] warm = times(book, label);
    double usual = warm[warm.length / 2];
    double slow = warm[warm.length * 95 / 100];
    reporter.publishEntry("loading ms", String.valueOf((loaded - loading) / 1_000_000));
    reporter.publishEntry("usual answer ms", String.valueOf(usual));
    reporter.publishEntry("95 of 100 answers within ms", String.valueOf(slow));
    assertTrue(slow < MOST_MILLISECONDS, "95 of 100 answers within: " + slow + " ms");
  }

  /** How long each answer takes, sorted; the odd slow one is the machine's, not the log's. */
  private static double[] times(RecordBook book, Label label) {
    double[] times = new double[200];
    for (int lawn = 0; lawn < times.length; lawn++) {
      long start = System.nanoTime();
      boolean known = book.log().next("lawn " + lawn, label).isPresent();
      times[lawn] = (System.nanoTime() - start) / 1e6;
      assertTrue(known);
    }
    Arrays.sort(times);
    return times;
  }

  private static void write(Path log) throws IOException {
    try (BufferedWriter out = Files.newBufferedWriter(log)) {
      for (int i = 0; i < ENTRIES; i++) {
        LogEntry entry =
            Samples.entry(START.plusDays(i % 3000), "lawn " + i % 200, "label " + i / 200 % 10)
                .withProduct(Samples.flOz("6"))
                .withArea(Samples.sqFt(4000))
                .withId("e" + i);
        out.write(LogLine.tree(entry).line() + "\n");
      }
    }
  }
}
