package plainsward.records;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** A {@link Writer} in a process of its own. */
final class Child {
  private final Process process;
  private final BufferedReader out;

  private Child(Process process) {
    this.process = process;
    out = process.inputReader(StandardCharsets.UTF_8);
  }

  /** The command that starts a writer. */
  static List<String> command(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    command.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    command.add(Writer.class.getName());
    command.addAll(List.of(arguments));
    return command;
  }

  static Child start(List<String> command) throws IOException {
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    return new Child(builder.start());
  }

  /** The next line that it prints, or null at its end. */
  String line() throws IOException {
    return out.readLine();
  }

  /** All further lines, to its end. */
  List<String> rest() throws IOException {
    List<String> lines = new ArrayList<>();
    for (String line = line(); line != null; line = line()) {
      lines.add(line);
    }
    return lines;
  }

  /** Ends it at this very moment, as a power cut for it alone. */
  void kill() {
    process
        .toHandle()
        .destroyForcibly(); // unlike the process itself, this leaves its output to be read
  }

  int exit() throws InterruptedException {
    return process.waitFor();
  }
}
