package plainsward.terminal;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The real program in a real terminal, held by a tmux server of its own that ends with it. */
final class Tmux implements AutoCloseable {
  private static final int ROWS = 40;
  private static final int POLL_MILLIS = 120;
  private static final int LONGEST_MILLIS = 30_000;
  private static final int COMMAND_SECONDS = 20;

  private final String socket;

  private Tmux(String socket) {
    this.socket = socket;
  }

  /** Whether there is a tmux on this machine. */
  static boolean isHere() {
    try {
      Process asked = new ProcessBuilder("tmux", "-V").redirectErrorStream(true).start();
      return asked.waitFor(COMMAND_SECONDS, TimeUnit.SECONDS) && asked.exitValue() == 0;
    } catch (IOException missing) {
      return false;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  /**
   * Starts the program in a window of so many columns.
   *
   * @param options of the program
   * @param home an empty folder, as home and for the server's socket
   */
  static Tmux start(int columns, List<String> options, Path home)
      throws IOException, InterruptedException {
    Tmux tmux = new Tmux(home.resolve("tmux").toString());
    List<String> program = new ArrayList<>(List.of("env", "-u", "NO_COLOR", "LANG=C.UTF-8"));
    program.add("HOME=" + home);
    program.add(System.getProperty("java.home") + File.separator + "bin" + File.separator + "java");
    program.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    program.add(
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
    program.add(Main.class.getName());
    program.addAll(options);
    List<String> command =
        new ArrayList<>(
            List.of("-f", File.separator + "dev" + File.separator + "null", "-u", "new-session"));
    command.addAll(List.of("-d", "-x", "" + columns, "-y", "" + ROWS));
    command.addAll(program);
    tmux.run(command);
    return tmux;
  }

  /** Types a line and waits until it is answered, which is when the next prompt stands. */
  void say(String line) throws IOException, InterruptedException {
    long prompts = prompts(all());
    run(List.of("send-keys", "-l", line));
    run(List.of("send-keys", "Enter"));
    await(prompts + 1);
  }

  /** Waits until so many prompts stand and nothing moves any more. */
  void await(long prompts) throws IOException, InterruptedException {
    String before = "";
    for (int waited = 0; waited < LONGEST_MILLIS; waited += POLL_MILLIS) {
      Thread.sleep(POLL_MILLIS);
      String now = all();
      if (prompts(now) >= prompts && now.equals(before)) {
        return;
      }
      before = now;
    }
    throw new IOException("the program did not come to rest: " + before);
  }

  private static long prompts(String screen) {
    return screen.lines().filter(line -> line.startsWith(TalkReader.PROMPT.strip())).count();
  }

  /** All that stands on the screen and that has left it at the top. */
  String all() throws IOException, InterruptedException {
    return run(List.of("capture-pane", "-p", "-S", "-"));
  }

  private String run(List<String> arguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("tmux", "-S", socket));
    command.addAll(arguments);
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (!process.waitFor(COMMAND_SECONDS, TimeUnit.SECONDS) || process.exitValue() != 0) {
      throw new IOException(String.join(" ", arguments) + ": " + out);
    }
    return out;
  }

  @Override
  public void close() throws IOException, InterruptedException {
    new ProcessBuilder("tmux", "-S", socket, "kill-server")
        .redirectErrorStream(true)
        .start()
        .waitFor(COMMAND_SECONDS, TimeUnit.SECONDS);
  }
}
