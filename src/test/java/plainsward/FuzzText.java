package plainsward;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * Text for a fuzzer's bytes. The first byte chooses: two bits how the others are read (UTF-8, words
 * of the trade, words with no space between, UTF-16), one whether what they make is said again and
 * again until it is as long as a question may be.
 */
public final class FuzzText {
  /** The longest text, in characters: a little more than the program reads. */
  public static final int LONGEST = 10_100;

  private static final List<String> WORDS = words();

  private FuzzText() {}

  private static List<String> words() {
    try {
      return Files.readAllLines(Path.of("src", "test", "resources", "fuzz", "words.txt"));
    } catch (IOException missing) {
      throw new IllegalStateException(missing);
    }
  }

  /** The text of these bytes. */
  public static String of(byte[] data) {
    if (data.length == 0) {
      return "";
    }
    byte[] rest = Arrays.copyOfRange(data, 1, data.length);
    String text =
        switch (data[0] & 3) {
          case 0 -> new String(rest, StandardCharsets.UTF_8);
          case 1 -> spoken(rest, " ");
          case 2 -> spoken(rest, "");
          default -> new String(rest, StandardCharsets.UTF_16BE);
        };
    boolean again = (data[0] & 4) != 0 && !text.isEmpty();
    String whole = again ? text.repeat(LONGEST / text.length() + 1) : text;
    return whole.length() > LONGEST ? whole.substring(0, LONGEST) : whole;
  }

  private static String spoken(byte[] data, String gap) {
    StringBuilder text = new StringBuilder();
    for (byte b : data) {
      int word = b & 0xff;
      text.append(word < WORDS.size() ? WORDS.get(word) : "\n").append(gap);
    }
    return text.toString();
  }
}
