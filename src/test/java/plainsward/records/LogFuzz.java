package plainsward.records;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import plainsward.FuzzClock;

/** Any lines are entries of a log or are refused, and an entry is read as it was written. */
public final class LogFuzz {
  @FuzzTest
  void fuzz(byte[] data) {
    fuzzerTestOneInput(data);
  }

  /** One input, by the name that the fuzzer looks for: the bytes of a log. */
  public static void fuzzerTestOneInput(byte[] data) {
    FuzzClock.within(50, () -> readAll(new String(data, StandardCharsets.ISO_8859_1)));
  }

  private static void readAll(String bytes) {
    Log log = new Log();
    String[] lines = bytes.split("\n", -1);
    for (int i = 0; i < lines.length; i++) {
      read(log, lines[i].getBytes(StandardCharsets.ISO_8859_1), i + 1);
    }
    log.undone();
    log.latest().ifPresent(entry -> log.inYear(entry.lawn().orElse(""), entry.label(), 2026));
  }

  private static void read(Log log, byte[] bytes, int number) {
    try {
      LogLine line = LogLine.read(Json.read(bytes), number);
      log.take(line);
      if (line instanceof LogLine.Applied applied) {
        byte[] written = LogLine.tree(applied.entry()).line().getBytes(StandardCharsets.UTF_8);
        if (!LogLine.read(Json.read(written), number).equals(line)) {
          throw new AssertionError(line + " is not read as it was written");
        }
      }
    } catch (FieldFault refused) {
      Refusal.check(refused);
    }
  }
}
