package plainsward.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import plainsward.trade.TextRows;

/** The room's own texts, which come with the program. */
final class Texts {
  private Texts() {}

  /** The text of this file, its lines ended by {@code \n}. */
  static String of(String file) {
    return TextRows.text(file).orElseGet(() -> read(file));
  }

  private static String read(String file) {
    try (InputStream in = Texts.class.getResourceAsStream("/terminal/" + file)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its file terminal/" + file);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException fault) {
      throw new UncheckedIOException("terminal/" + file + " can't be read", fault);
    }
  }
}
