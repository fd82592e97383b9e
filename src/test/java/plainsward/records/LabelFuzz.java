package plainsward.records;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import plainsward.FuzzClock;

/** Any bytes are a label or are refused in one sentence, and a label is read as it was written. */
public final class LabelFuzz {
  @FuzzTest
  void fuzz(byte[] data) {
    fuzzerTestOneInput(data);
  }

  /** One input, by the name that the fuzzer looks for: the bytes of a label's file. */
  public static void fuzzerTestOneInput(byte[] data) {
    FuzzClock.within(50, () -> read(data));
  }

  private static void read(byte[] data) {
    try {
      Label label = LabelReader.read(Json.read(data));
      byte[] written = LabelWriter.tree(label).text().getBytes(StandardCharsets.UTF_8);
      Label again = LabelReader.read(Json.read(written));
      if (!again.equals(label)) {
        throw new AssertionError(label + " was written and read as " + again);
      }
    } catch (FieldFault refused) {
      Refusal.check(refused);
    }
  }
}
