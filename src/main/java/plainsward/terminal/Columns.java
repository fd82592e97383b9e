package plainsward.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;

/**
 * The terminal's width for a single reply, without opening the terminal, which would take longer
 * than the reply.
 */
final class Columns {
  private static final int USUAL = 80;
  private static final int PATIENCE_MILLIS = 500;

  private Columns() {}

  /** What COLUMNS says, else what the terminal's own settings say, else 80. */
  static int of(Surroundings around) {
    int said = number(around.variable("COLUMNS").orElse(""));
    return said > 0 ? said : asked();
  }

  private static int asked() {
    try {
      Process stty =
          new ProcessBuilder("stty", "size")
              .redirectInput(ProcessBuilder.Redirect.INHERIT)
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!stty.waitFor(PATIENCE_MILLIS, TimeUnit.MILLISECONDS)) {
        stty.destroyForcibly();
        return USUAL;
      }
      String size = new String(stty.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
      int columns = number(size.substring(size.indexOf(' ') + 1));
      return columns > 0 ? columns : USUAL;
    } catch (IOException noSuchProgram) {
      return USUAL;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return USUAL;
    }
  }

  private static int number(String text) {
    String digits = text.strip();
    boolean whole =
        !digits.isEmpty()
            && digits.length() < 6
            && digits.chars().allMatch(c -> c >= '0' && c <= '9');
    return whole ? Integer.parseInt(digits) : 0;
  }
}
