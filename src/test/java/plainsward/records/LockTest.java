package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A second running copy that holds the lock. */
class LockTest {
  @TempDir Path home;

  /** Holds the lock of a home until its input ends. */
  static final class Holder {
    private Holder() {}

    /** Argument: the home. */
    public static void main(String[] arguments) {
      Path home = Path.of(arguments[0]);
      new Guard(home, Duration.ofSeconds(5))
          .alone(
              home,
              () -> {
                System.out.println("held");
                System.out.flush();
                return System.in.read();
              });
    }
  }

  @Test
  void whileAnotherCopyWritesNothingIsSavedAndAllIsReadAndThenItGoesOn() throws Exception {
    RecordBook.open(home).save(Label.named("jug").label());
    RecordBook.open(home).append(LogEntry.of(Samples.MAY, "jug"));
    Process holder = hold();
    try {
      RecordBook book = RecordBook.open(home, Duration.ofMillis(100), new Disk());
      assertBusy(() -> book.append(LogEntry.of(Samples.MAY, "jug")));
      assertBusy(() -> book.save(Label.named("can").label()));
      assertBusy(book::undoLast);
      assertBusy(() -> book.forgetLabel("jug"));
      assertEquals(1, book.labels().size());
      assertEquals(1, book.log().entries().size());
      assertEquals(List.of(), book.problems());
    } finally {
      holder.getOutputStream().close();
      holder.waitFor();
    }
    RecordBook.open(home).append(LogEntry.of(Samples.MAY, "jug"));
    assertEquals(2, RecordBook.open(home).log().entries().size());
  }

  @Test
  void aCopyThatWasKilledWhileItHeldTheLockLocksNobodyOut() throws Exception {
    Process holder = hold();
    holder.destroyForcibly().waitFor();
    RecordBook.open(home).append(LogEntry.of(Samples.MAY, "jug"));
    assertEquals(1, RecordBook.open(home).log().entries().size());
  }

  @Test
  void aWriterWaitsBrieflyForAnother() throws Exception {
    Process holder = hold();
    Thread release =
        new Thread(
            () -> {
              try {
                Thread.sleep(200);
                holder.getOutputStream().close();
              } catch (IOException | InterruptedException fault) {
                throw new IllegalStateException(fault);
              }
            });
    release.start();
    RecordBook.open(home).append(LogEntry.of(Samples.MAY, "jug"));
    release.join();
    assertEquals(1, RecordBook.open(home).log().entries().size());
  }

  private Process hold() throws IOException {
    List<String> command = Child.command(home.toString());
    command.set(command.indexOf(Writer.class.getName()), Holder.class.getName());
    Process holder =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    assertEquals("held", holder.inputReader().readLine());
    return holder;
  }

  private void assertBusy(org.junit.jupiter.api.function.Executable write) {
    RecordFault fault = assertThrows(RecordFault.class, write);
    assertEquals(RecordFault.Why.BUSY, fault.why());
    assertTrue(fault.getMessage().contains(home.toString()));
    assertTrue(fault.getMessage().contains("another running copy of Plainsward"));
  }
}
