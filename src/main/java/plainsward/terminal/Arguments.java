package plainsward.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * The command line's words as they were typed. Under a locale that is not UTF-8 the runtime loses
 * letters such as ² or °; where the system keeps the bytes of the command line they are read again.
 */
final class Arguments {
  private static final Path KEPT = Path.of("/proc/self/cmdline");

  private Arguments() {}

  /** The same words, with what was lost put back where that can be done. */
  static String[] asTyped(String[] args) {
    boolean lost = Arrays.stream(args).anyMatch(Arguments::isLossy);
    if (!lost || !Files.isReadable(KEPT)) {
      return args;
    }
    try {
      return last(Files.readAllBytes(KEPT), args);
    } catch (IOException notKept) {
      return args;
    }
  }

  private static boolean isLossy(String word) {
    return word.chars().anyMatch(c -> c == 0xFFFD || Character.isSurrogate((char) c));
  }

  /** As many of the last words as there are arguments; each ends in a NUL. */
  static String[] last(byte[] commandLine, String[] args) {
    String[] words = new String(commandLine, StandardCharsets.UTF_8).split("\0", -1);
    int end = words.length - 1;
    return end < args.length ? args : Arrays.copyOfRange(words, end - args.length, end);
  }
}
