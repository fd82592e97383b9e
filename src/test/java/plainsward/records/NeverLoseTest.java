package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/** Nothing that was acknowledged is lost, whenever a copy is killed and however many write. */
class NeverLoseTest {
  private static final int WRITES = 500;
  private static final int MOST_BEFORE_KILL = 60;

  @Test
  void killedAtRandomMomentsOf500WritesItLosesNothingAcknowledged(
      @TempDir Path home, TestReporter reporter) throws Exception {
    Random random = new Random(20260501);
    Set<String> ids = new HashSet<>();
    Set<String> lawns = new HashSet<>();
    int acknowledged = 0;
    int kills = 0;
    while (acknowledged < WRITES) {
      List<String> told = killedRun(home, "run" + kills, random);
      kills++;
      acknowledged += told.size();
      RecordBook book = RecordBook.open(home);
      told.stream().filter(t -> t.startsWith("log ")).forEach(t -> ids.add(t.substring(4)));
      told.stream().filter(t -> t.startsWith("lawn ")).forEach(t -> lawns.add(t.substring(5)));
      assertTrue(loggedIds(book).containsAll(ids), "lost an entry at kill " + kills);
      assertTrue(lawnNames(book).containsAll(lawns), "lost a lawn at kill " + kills);
      assertLabelIsWhole(book, told);
      assertEquals(List.of(), book.problems().stream().filter(p -> !p.contains("log")).toList());
    }
    reporter.publishEntry("acknowledged writes", String.valueOf(acknowledged));
    reporter.publishEntry("kills", String.valueOf(kills));
  }

  private static List<String> killedRun(Path home, String name, Random random) throws Exception {
    Child child = Child.start(Child.command(home.toString(), name, "100000", "all"));
    List<String> told = new ArrayList<>();
    int enough = 1 + random.nextInt(MOST_BEFORE_KILL);
    while (told.size() < enough) {
      told.add(child.line());
    }
    LockSupport.parkNanos(random.nextInt(3_000_000));
    child.kill();
    told.addAll(child.rest());
    child.exit();
    String last = told.get(told.size() - 1);
    return last.matches("(log|label|lawn) .+") ? told : told.subList(0, told.size() - 1);
  }

  private static Set<String> loggedIds(RecordBook book) {
    return book.log().entries().stream().map(LogEntry::id).collect(Collectors.toSet());
  }

  private static Set<String> lawnNames(RecordBook book) {
    return book.lawns().stream().map(Lawn::name).collect(Collectors.toSet());
  }

  /** The label that every write replaces is there in full, as the last acknowledged or later. */
  private static void assertLabelIsWhole(RecordBook book, List<String> told) {
    int last =
        told.stream()
            .filter(t -> t.startsWith("label "))
            .mapToInt(t -> Integer.parseInt(t.substring(6)))
            .max()
            .orElse(-1);
    if (last >= 0) {
      Label label = book.label("jug").orElseThrow();
      int found = Integer.parseInt(label.remark().orElseThrow());
      assertTrue(found == last || found == last + 1, found + " after " + last);
      assertEquals(Samples.fullLabel("jug").change().remark(String.valueOf(found)).label(), label);
    }
  }

  @Test
  void twoCopiesThatAppend1000EntriesEachLoseNone(@TempDir Path home, TestReporter reporter)
      throws IOException, InterruptedException {
    long start = System.nanoTime();
    Child one = Child.start(Child.command(home.toString(), "one", "1000", "log"));
    Child two = Child.start(Child.command(home.toString(), "two", "1000", "log"));
    List<String> told = new ArrayList<>(one.rest());
    told.addAll(two.rest());
    assertEquals(0, one.exit());
    assertEquals(0, two.exit());
    RecordBook book = RecordBook.open(home);
    assertEquals(List.of(), book.problems());
    assertEquals(2000, book.log().entries().size());
    assertEquals(
        told.stream()
            .filter(t -> t.startsWith("log "))
            .map(t -> t.substring(4))
            .collect(Collectors.toSet()),
        loggedIds(book));
    assertEquals(2000, book.log().entries().stream().map(LogEntry::who).distinct().count());
    reporter.publishEntry(
        "two copies, ms", String.valueOf((System.nanoTime() - start) / 1_000_000));
  }

  @Test
  void booksOfOneProcessThatAppendAtOnceLoseNone(@TempDir Path home) throws InterruptedException {
    List<Thread> threads = new ArrayList<>();
    for (int t = 0; t < 4; t++) {
      RecordBook book = RecordBook.open(home);
      threads.add(
          new Thread(
              () -> {
                for (int i = 0; i < 50; i++) {
                  book.append(LogEntry.of(Samples.MAY, "jug"));
                }
              }));
    }
    threads.forEach(Thread::start);
    for (Thread thread : threads) {
      thread.join();
    }
    assertEquals(200, RecordBook.open(home).log().entries().size());
  }
}
