package plainsward.records;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import plainsward.FuzzClock;

/** Any bytes are outlines of lawns with areas above nought, or are refused in one sentence. */
public final class OutlineFuzz {
  @FuzzTest
  void fuzz(byte[] data) {
    fuzzerTestOneInput(data);
  }

  /** One input, by the name that the fuzzer looks for: the bytes of a GeoJSON file. */
  public static void fuzzerTestOneInput(byte[] data) {
    FuzzClock.within(50, () -> read(data));
  }

  private static void read(byte[] data) {
    try {
      List<Lawn> lawns = Outlines.read(Json.read(data), "lawn");
      for (Lawn lawn : lawns) {
        if (lawn.area().isEmpty() || lawn.area().get().signum() <= 0) {
          throw new AssertionError("no area: " + lawn);
        }
      }
    } catch (FieldFault refused) {
      Refusal.check(refused);
    }
  }
}
