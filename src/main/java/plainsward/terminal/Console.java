package plainsward.terminal;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jline.terminal.spi.SystemStream;
import org.jline.terminal.spi.TerminalProvider;

/** What the Java runtime can tell of the terminal without opening it. */
final class Console {
  private static final List<String> TERMINALS = List.of("/dev/pts/", "/dev/tty", "/dev/console");
  private static final int CONSOLE_MAY_BE_NO_TERMINAL = 22;

  private Console() {}

  /** Whether standard input and output both are a terminal. */
  static boolean isTerminal() {
    java.io.Console console = System.console();
    if (console == null) {
      return false;
    }
    return Runtime.version().feature() < CONSOLE_MAY_BE_NO_TERMINAL || saysTerminal(console);
  }

  /** From Java 22 on there always is a console, which has to be asked. */
  private static boolean saysTerminal(java.io.Console console) {
    try {
      Object answer = java.io.Console.class.getMethod("isTerminal").invoke(console);
      return Boolean.TRUE.equals(answer);
    } catch (ReflectiveOperationException notToBeAsked) {
      return false;
    }
  }

  /** Whether standard error is a terminal. */
  static boolean isErrorTerminal() {
    return isSystemTerminal(SystemStream.Error, 2);
  }

  /** Whether standard output is a terminal, whatever the input is. */
  static boolean isOutputTerminal() {
    return isSystemTerminal(SystemStream.Output, 1);
  }

  /**
   * Where the kernel shows what a stream is, that tells; else a library has to be unpacked among
   * the temporary files and loaded, which is slow.
   */
  private static boolean isSystemTerminal(SystemStream stream, int number) {
    Path shown = Path.of("/proc/self/fd", Integer.toString(number));
    try {
      if (Files.isSymbolicLink(shown)) {
        String device = Files.readSymbolicLink(shown).toString();
        return TERMINALS.stream().anyMatch(device::startsWith);
      }
      return TerminalProvider.load("jni").isSystemStream(stream);
    } catch (IOException | LinkageError notToBeAsked) {
      return false;
    }
  }

  /** The terminal's character set as the runtime took it from the locale. */
  static Charset charset() {
    String name =
        System.getProperty("stdout.encoding", System.getProperty("sun.jnu.encoding", "UTF-8"));
    try {
      return Charset.forName(name);
    } catch (IllegalCharsetNameException | UnsupportedCharsetException unknown) {
      return StandardCharsets.US_ASCII;
    }
  }
}
