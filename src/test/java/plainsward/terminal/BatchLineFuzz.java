package plainsward.terminal;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;

/** Any bytes are lines, and any line is a question, a talk, or refused in one clean sentence. */
public final class BatchLineFuzz {
  private static final int LONGEST = 5000;

  @FuzzTest
  void fuzz(byte[] data) {
    fuzzerTestOneInput(data);
  }

  /** One input, by the name that the fuzzer looks for: the bytes of a batch. */
  public static void fuzzerTestOneInput(byte[] data) {
    LineSource lines = new LineSource(new ByteArrayInputStream(data), LONGEST);
    try {
      Optional<LineSource.Line> line = lines.next();
      while (line.isPresent()) {
        read(line.get());
        line = lines.next();
      }
    } catch (IOException impossible) {
      throw new AssertionError(impossible);
    }
  }

  private static void read(LineSource.Line line) {
    try {
      BatchLine asked = BatchLine.read(line.text());
      asked
          .id()
          .ifPresent(
              id ->
                  JsonLine.of(
                      json -> {
                        json.writeStartObject();
                        json.writeFieldName("id");
                        json.writeRawValue(id);
                        json.writeEndObject();
                      }));
    } catch (Unreadable refused) {
      String told = JsonLine.error(refused.getMessage(), line.number());
      ScreenCheck.json(told);
    }
  }
}
