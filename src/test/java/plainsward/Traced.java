package plainsward;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The packed program run under a system-call tracer, and what it was seen to do. */
final class Traced {
  private static final String CALLS =
      "trace=socket,connect,bind,listen,accept,accept4,sendto,sendmsg,sendmmsg,open,openat,openat2,creat,rename,renameat,renameat2,unlink,unlinkat,rmdir,mkdir,"
          + "mkdirat,link,linkat,symlink,symlinkat,truncate,chmod,fchmodat";

  /**
   * Devices, and what the kernel shows of the process itself, where the JVM says what a core holds.
   */
  private static final List<Path> NO_FILES = List.of(Path.of("/dev"), Path.of("/proc/self"));

  private static final Path JAR = Path.of("target", "plainsward.jar");
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
  private static final Pattern USE =
      Pattern.compile("\\b(connect|bind|listen|accept4?|sendto|sendmm?sg)\\(");
  private static final Pattern NAMED = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");

  private final List<String> calls;
  private final String out;

  private Traced(List<String> calls, String out) {
    this.calls = calls;
    this.out = out;
  }

  /** Whether there is a packed program and a tracer that may trace here. */
  static boolean isPossible() throws IOException, InterruptedException {
    return Files.exists(JAR) && works("strace", "-f", "-o", "/dev/null", "true");
  }

  /** Whether a command is there and does what it should. */
  static boolean works(String... command) throws IOException, InterruptedException {
    try {
      Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
      process.getInputStream().readAllBytes();
      return process.waitFor() == 0;
    } catch (IOException notThere) {
      return false;
    }
  }

  /** A run in a folder that is also the user's home. */
  static Traced run(Path folder, String input, String... words) throws Exception {
    Path trace = folder.resolve("trace.txt");
    List<String> command =
        new ArrayList<>(List.of("strace", "-f", "-qq", "-s", "4096", "-e", CALLS, "-o"));
    command.add(trace.toString());
    String out = plain(command, folder, input, words);
    // Of a thread that ends with the process the tracer may see no call at all.
    List<String> calls =
        Files.readAllLines(trace).stream().filter(call -> !call.contains(" ???(")).toList();
    return new Traced(calls, out);
  }

  /** What the program prints, started through a command. */
  static String plain(List<String> through, Path folder, String input, String... words)
      throws Exception {
    List<String> command = new ArrayList<>(through);
    // The JVM's own counters in the folder of temporary files are no doing of the program.
    command.addAll(List.of(JAVA.toString(), "-XX:-UsePerfData", "-jar"));
    command.add(JAR.toAbsolutePath().toString());
    command.addAll(List.of(words));
    Path typed = Files.writeString(folder.resolve("typed.txt"), input);
    File printed = folder.resolve("printed.txt").toFile();
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(folder.toFile())
            .redirectInput(typed.toFile())
            .redirectOutput(printed);
    builder.environment().put("HOME", folder.toString());
    builder.environment().remove("XDG_DATA_HOME");
    Process process = builder.start();
    if (!process.waitFor(2, TimeUnit.MINUTES) || process.exitValue() != 0) {
      process.destroyForcibly();
      throw new IllegalStateException(command + " did not end well");
    }
    return Files.readString(printed.toPath());
  }

  /** What was printed. */
  String out() {
    return out;
  }

  /** How many calls were seen. */
  int count() {
    return calls.size();
  }

  /** The network sockets that were opened, whatever became of them. */
  List<String> sockets() {
    return calls.stream().filter(call -> call.contains("AF_INET")).toList();
  }

  /** What was done with sockets beyond opening them; those of this computer alone do not count. */
  List<String> socketsUsed() {
    return calls.stream()
        .filter(call -> USE.matcher(call).find() && !call.contains("AF_UNIX"))
        .toList();
  }

  /** What was opened for writing, made, moved or deleted outside a folder; devices are no files. */
  List<String> writesOutside(Path folder) {
    return calls.stream()
        .filter(Traced::changes)
        .filter(call -> !isWithin(call, folder.toAbsolutePath().normalize()))
        .toList();
  }

  private static boolean changes(String call) {
    boolean failed = call.contains(" = -1 ");
    boolean opens = call.contains("open(") || call.contains("openat(") || call.contains("openat2(");
    boolean reads =
        opens
            && !call.contains("O_WRONLY")
            && !call.contains("O_RDWR")
            && !call.contains("O_CREAT");
    return !failed
        && !reads
        && call.indexOf('(') > 0
        && !call.contains("socket(")
        && !USE.matcher(call).find();
  }

  private static boolean isWithin(String call, Path folder) {
    Matcher name = NAMED.matcher(call);
    boolean any = false;
    while (name.find()) {
      any = true;
      Path path = folder.resolve(name.group(1)).normalize();
      if (!path.startsWith(folder) && NO_FILES.stream().noneMatch(path::startsWith)) {
        return false;
      }
    }
    return any;
  }
}
