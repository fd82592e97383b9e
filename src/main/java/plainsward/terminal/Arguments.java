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
  private Arguments() {}

  /** The same words, with what was lost put back where that can be done. */
  static String[] asTyped(String[] args) {
    for (String word : args) {
      if (isLossy(word)) {
        return again(args);
      }
    }
    return args;
  }

  private static String[] again(String[] args) {
    Path kept = Path.of("/proc/self/cmdline");
    try {
      return Files.isReadable(kept) ? last(Files.readAllBytes(kept), args) : args;
    } catch (IOException notKept) {
      return args;
    }
  }

  private static boolean isLossy(String word) {
    for (int i = 0; i < word.length(); i++) {
      char c = word.charAt(i);
      if (c == 0xFFFD || Character.isSurrogate(c)) {
        return true;
      }
    }
    return false;
  }

  /** As many of the last words as there are arguments; each ends in a NUL. */
  static String[] last(byte[] commandLine, String[] args) {
    String[] words = new String(commandLine, StandardCharsets.UTF_8).split("\0", -1);
    int end = words.length - 1;
    return end < args.length ? args : Arrays.copyOfRange(words, end - args.length, end);
  }
}
